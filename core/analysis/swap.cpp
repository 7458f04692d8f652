#include "core/analysis/swap.h"

#include <algorithm>
#include <utility>

#include "core/analysis/gain_effect.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

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

/// The slower of both axes; empty where one has no time.
std::optional<double> slower(const std::optional<double>& a, const std::optional<double>& b) {
  return a && b ? std::optional(std::max(*a, *b)) : std::nullopt;
}

void look_at(SwapStudy& study, Context& now, Context& swapped, Axis axis) {
  const auto a = static_cast<std::size_t>(axis);
  const GainOutcome &advised_now = outcome_advised(now, axis),
                    &advised_swapped = outcome_advised(swapped, axis);
  study.is_advised[a] = advised_now.is_simulated && advised_swapped.is_simulated;
  study.settle_today_s[a] = outcome_today(now, axis).settle_s;
  Swap::PerAxis& of = study.swap.axis[a];
  of.shortest_now_s = shortest_s(now, axis);
  of.shortest_swapped_s = shortest_s(swapped, axis);
  if (!study.is_advised[a]) {
    of.settle_now_s = study.settle_today_s[a];
    of.settle_swapped_s = outcome_today(swapped, axis).settle_s;
    return;
  }
  of.settle_now_s = advised_now.settle_s;
  of.settle_swapped_s = advised_swapped.settle_s;
  const std::vector<FieldValue>& gains = swapped.advice(axis).values;
  study.gains.insert(study.gains.end(), gains.begin(), gains.end());
}

std::string gains_used(const std::array<bool, 2>& is_advised) {
  const auto [pan, tilt] = is_advised;
  if (pan && tilt) return words("with gains advised for each");
  if (pan) return words("with gains advised for pan and today's for tilt");
  return tilt ? words("with gains advised for tilt and today's for pan")
              : words("with today's gains");
}

std::string text_of(const SwapStudy& study, const std::vector<std::string>& missing) {
  constexpr std::size_t kNamed = 3;
  if (!missing.empty())
    return words("what exchanging the gearboxes would do is not known: %1",
                 say_needs(missing, kNamed));
  const auto& [pan, tilt] = study.swap.axis;
  const std::string gains = gains_used(study.is_advised);
  if (pan.settle_now_s && pan.settle_swapped_s && tilt.settle_now_s && tilt.settle_swapped_s)
    return words(
        "%1, with the gearboxes exchanged pan would settle in %2 (now %3), tilt in %4 (now %5)",
        gains, said(pan.settle_swapped_s), said(pan.settle_now_s), said(tilt.settle_swapped_s),
        said(tilt.settle_now_s));
  return words("%1, with the gearboxes exchanged %2, %3", gains,
               said(Axis::pan, pan.settle_swapped_s, pan.settle_now_s),
               said(Axis::tilt, tilt.settle_swapped_s, tilt.settle_now_s));
}

}  // namespace

Rig with_gearboxes_swapped(Rig rig) {
  std::swap(rig.pan.gearbox, rig.tilt.gearbox);
  return rig;
}

SwapStudy study_swap(Context& context, const Rig& rig, const std::stop_token& stop) {
  SwapStudy study;
  Context swapped(with_gearboxes_swapped(rig), stop);
  for (const Axis axis : kAxes) look_at(study, context, swapped, axis);
  const std::vector<std::string> missing = missing_for_times(context);
  study.is_known = missing.empty();
  study.swap.text = text_of(study, missing);
  return study;
}

Finding swap_finding(const SwapStudy& study) {
  const auto& [pan, tilt] = study.swap.axis;
  Finding finding;
  finding.id = "gearboxes.swap";
  finding.what = words("Each gearbox is on its better axis");
  finding.part = "pan.gearbox";
  finding.si_unit = "s";
  finding.unit = "ms";
  finding.because = study.swap.text;
  finding.demand = slower(pan.settle_now_s, tilt.settle_now_s);
  finding.capacity = slower(pan.settle_swapped_s, tilt.settle_swapped_s);
  if (!finding.demand && !finding.capacity) {
    if (study.is_known) finding.verdict = Verdict::tight;
    return finding;
  }
  // With one arrangement missing its time, that one never settles: both have the same inputs. No
  // margin of the finding: which is better says nothing of how far it holds.
  const double margin = finding.demand && finding.capacity ? *finding.capacity / *finding.demand - 1
                        : finding.demand                   ? kInfinity
                                                           : -1;
  finding.verdict = margin < 0 ? Verdict::tight : Verdict::holds;
  const auto today = slower(study.settle_today_s[0], study.settle_today_s[1]);
  if (margin < 0 && !(today && *today <= *finding.capacity)) {
    const std::string time = say(*finding.capacity, "s", "ms");
    finding.remedies = {
        {study.gains.empty()
             ? words("exchanging the gearboxes would make the slower axis settle in %1", time)
             : words("exchanging the gearboxes and taking the gains advised for them would make "
                     "the slower axis settle in %1",
                     time),
         "swap", 0, study.gains}};
  }
  return finding;
}

}  // namespace gazewright
