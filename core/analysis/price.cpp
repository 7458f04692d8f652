#include "core/analysis/price.h"

#include <algorithm>
#include <atomic>
#include <thread>
#include <utility>

#include "core/analysis/counterweight.h"
#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::size_t kMostRemedies = 3;
/// A finding that fails already fails more where its margin falls by this much.
constexpr double kClearlyLess = 0.05;

bool fails_more(const Finding& then, std::span<const Finding> findings) {
  if (then.verdict != Verdict::fails) return false;
  const auto now = std::ranges::find(findings, then.id, &Finding::id);
  if (now == findings.end() || now->verdict != Verdict::fails) return true;
  if (!now->margin) return false;  // it could not be worse
  return !then.margin || *then.margin < *now->margin - kClearlyLess;
}

std::string say_failing(const Finding& finding, std::optional<Axis> axis) {
  const std::string what = finding.axis && finding.axis != axis
                               ? words("%1: %2", words(name_of(*finding.axis)), finding.what)
                               : finding.what;
  if (!finding.demand || !finding.capacity) return what;
  return words("%1 (demand %2, capacity %3)", what,
               say(*finding.demand, finding.si_unit, finding.unit),
               say(*finding.capacity, finding.si_unit, finding.unit));
}

void say_prices(Finding& finding) {
  std::vector<Remedy>& remedies = finding.remedies;
  std::stable_sort(remedies.begin(), remedies.end(),
                   [](const Remedy& a, const Remedy& b) { return a.is_free() && !b.is_free(); });
  if (remedies.size() > kMostRemedies) remedies.resize(kMostRemedies);
  for (Remedy& remedy : remedies) remedy.text = with_price(remedy.text, remedy.price);
}

}  // namespace

Rig remedied(const Rig& rig, const Remedy& remedy) {
  Rig changed = rig;
  if (auto whole = with_whole_remedy(rig, remedy)) {
    changed = std::move(*whole);
  } else {
    find_quantity(changed, remedy.path)->si = remedy.value_si;
  }
  for (const FieldValue& other : remedy.also)
    find_quantity(changed, other.path)->si = other.value_si;
  return changed;
}

std::string price_of(const Rig& changed, std::optional<Axis> axis,
                     std::span<const Finding> findings, const std::stop_token& stop) {
  const Analysis then = analyse(changed, {.remedies = false, .quick = true}, stop);
  if (stop.stop_requested()) return {};
  const auto worst = std::ranges::find_if(
      then.findings, [&](const Finding& finding) { return fails_more(finding, findings); });
  return worst == then.findings.end() ? std::string() : say_failing(*worst, axis);
}

std::string with_price(const std::string& change, const std::string& price) {
  return price.empty() ? change : words("%1, but then this fails: %2", change, price);
}

void add_prices(std::vector<Finding>& findings, const Rig& rig, const std::stop_token& stop) {
  std::vector<std::pair<const Finding*, Remedy*>> asked;
  for (Finding& finding : findings)
    for (Remedy& remedy : finding.remedies)
      if (!remedy.path.empty()) asked.emplace_back(&finding, &remedy);
  std::atomic<std::size_t> next = 0;
  const auto run = [&] {
    for (std::size_t i = next++; i < asked.size() && !stop.stop_requested(); i = next++) {
      const auto [finding, remedy] = asked[i];
      remedy->price = price_of(remedied(rig, *remedy), finding->axis, findings, stop);
    }
  };
  {
    const std::jthread aside(run);
    run();
  }
  for (Finding& finding : findings) say_prices(finding);
}

}  // namespace gazewright
