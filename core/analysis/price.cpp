#include "core/analysis/price.h"

#include <algorithm>

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
  return now->margin && then.margin && *then.margin < *now->margin - kClearlyLess;
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

void add_prices(std::vector<Finding>& findings, const Rig& rig, const std::stop_token& stop) {
  for (Finding& finding : findings) {
    for (Remedy& remedy : finding.remedies) {
      if (stop.stop_requested()) return;
      if (remedy.path.empty()) continue;
      remedy.price = price_of(remedied(rig, remedy), finding.axis, findings, stop);
      if (!remedy.price.empty())
        remedy.text = words("%1, but then this fails: %2", remedy.text, remedy.price);
    }
    std::stable_sort(finding.remedies.begin(), finding.remedies.end(),
                     [](const Remedy& a, const Remedy& b) { return a.is_free() && !b.is_free(); });
    if (finding.remedies.size() > kMostRemedies) finding.remedies.resize(kMostRemedies);
  }
}

}  // namespace gazewright
