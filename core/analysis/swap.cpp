#include "core/analysis/swap.h"

#include <algorithm>
#include <utility>

#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kTightBelow = 0.15;

std::optional<double> settle_s(Context& context, Axis axis) {
  if (!context.missing(kSettle, axis).empty()) return std::nullopt;
  return context.step(axis).figures.settle_time_s;
}

std::optional<double> shortest_s(Context& context, Axis axis) {
  if (!context.missing(kRigidMove, axis).empty()) return std::nullopt;
  const auto& move = context.fastest(axis);
  return move ? std::optional(move->time_s) : std::nullopt;
}

std::string said(const std::optional<double>& time_s) {
  return time_s ? say(*time_s, "s", "ms") : words("never");
}

/// "pan would settle in 95.6 ms (now 86.4 ms)", where one of both may never settle.
std::string said(Axis axis, const std::optional<double>& swapped_s,
                 const std::optional<double>& now_s) {
  const std::string now = said(now_s), name = words(name_of(axis));
  return swapped_s ? words("%1 would settle in %2 (now %3)", name, said(swapped_s), now)
                   : words("%1 would never settle (now %2)", name, now);
}

/// What both axes lack for a time.
std::vector<std::string> missing_for_times(Context& context) {
  std::vector<std::string> all;
  for (const Axis axis : kAxes)
    for (std::string& path : context.missing(kSettle, axis))
      if (std::ranges::find(all, path) == all.end()) all.push_back(std::move(path));
  return all;
}

std::string text_of(const Swap& swap, Context& context) {
  constexpr std::size_t kNamed = 3;
  if (const auto missing = missing_for_times(context); !missing.empty())
    return words("what exchanging the gearboxes would do is not known: %1",
                 say_needs(missing, kNamed));
  const auto& [pan, tilt] = swap.axis;
  if (pan.settle_now_s && pan.settle_swapped_s && tilt.settle_now_s && tilt.settle_swapped_s)
    return words(
        "with the gearboxes exchanged pan would settle in %1 (now %2), tilt in %3 (now %4)",
        said(pan.settle_swapped_s), said(pan.settle_now_s), said(tilt.settle_swapped_s),
        said(tilt.settle_now_s));
  return words("with the gearboxes exchanged %1, %2",
               said(Axis::pan, pan.settle_swapped_s, pan.settle_now_s),
               said(Axis::tilt, tilt.settle_swapped_s, tilt.settle_now_s));
}

/// The slower of both axes; empty where one has no time.
std::optional<double> slower(const std::optional<double>& a, const std::optional<double>& b) {
  return a && b ? std::optional(std::max(*a, *b)) : std::nullopt;
}

}  // namespace

Rig with_gearboxes_swapped(Rig rig) {
  std::swap(rig.pan.gearbox, rig.tilt.gearbox);
  return rig;
}

Swap swap_of(Context& context, const Rig& rig, const std::stop_token& stop) {
  Swap swap;
  Context swapped(with_gearboxes_swapped(rig), stop);
  for (const Axis axis : kAxes) {
    auto& of = swap.axis[static_cast<std::size_t>(axis)];
    of = {settle_s(context, axis), settle_s(swapped, axis), shortest_s(context, axis),
          shortest_s(swapped, axis)};
  }
  swap.text = text_of(swap, context);
  return swap;
}

Finding swap_finding(const Swap& swap) {
  const auto& [pan, tilt] = swap.axis;
  Finding finding;
  finding.id = "gearboxes.swap";
  finding.what = words("Each gearbox is on its better axis");
  finding.part = "pan.gearbox";
  finding.si_unit = "s";
  finding.unit = "ms";
  finding.because = swap.text;
  finding.demand = slower(pan.settle_now_s, tilt.settle_now_s);
  finding.capacity = slower(pan.settle_swapped_s, tilt.settle_swapped_s);
  if (!finding.demand && !finding.capacity) return finding;
  if (finding.demand && finding.capacity) finding.margin = *finding.capacity / *finding.demand - 1;
  // With one arrangement missing its time, that one never settles: both have the same inputs.
  const double margin = finding.margin.value_or(finding.demand ? kInfinity : -1);
  finding.verdict = margin < kTightBelow ? Verdict::tight : Verdict::holds;
  if (margin < 0) {
    finding.remedies = {{words("exchanging the gearboxes would make the slower axis settle in %1",
                               said(finding.capacity)),
                         "swap", 0}};
  }
  return finding;
}

}  // namespace gazewright
