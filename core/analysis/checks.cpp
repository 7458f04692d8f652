#include "core/analysis/checks.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kTightBelow = 0.15;
constexpr double kMostMargin = 1e6;
/// Demand and capacity that differ by less are equal: a limit that was set to a capacity reads back
/// through two units, at some 1e-16 each.
constexpr double kRounding = 1e-9;

}  // namespace

std::vector<const Check*> axis_checks() {
  std::vector<const Check*> all;
  for (const auto checks :
       {motion_checks(),    loop_checks(),         coupling_checks(), travel_checks(),
        cable_checks(),     cable_torque_checks(), wire_checks(),     stop_checks(),
        power_off_checks(), homing_checks(),       encoder_checks(),  gear_checks(),
        reach_checks(),     smooth_checks(),       tracking_checks(), heat_checks(),
        supply_checks(),    bearing_checks(),      joint_checks(),    arm_checks(),
        stand_checks(),     balance_checks(),      budget_checks()}) {
    for (const Check& check : checks) all.push_back(&check);
  }
  return all;
}

Compared moot(std::string because) {
  return {std::nullopt, std::nullopt, std::move(because), Compared::Outcome::moot};
}

Compared absent() { return {std::nullopt, std::nullopt, {}, Compared::Outcome::absent}; }

std::optional<double> margin_of(const Compared& compared) {
  if (!compared.demand || !compared.capacity) return std::nullopt;
  if (*compared.demand <= 0) return kMostMargin;
  const double margin = *compared.capacity / *compared.demand - 1;
  return std::abs(margin) <= kRounding ? 0 : std::clamp(margin, -kMostMargin, kMostMargin);
}

Verdict verdict_of(const Compared& compared) {
  if (compared.outcome == Compared::Outcome::impossible) return Verdict::fails;
  if (compared.outcome == Compared::Outcome::moot || compared.outcome == Compared::Outcome::absent)
    return Verdict::holds;
  const auto margin = margin_of(compared);
  if (compared.outcome == Compared::Outcome::doubtful && margin.value_or(0) >= 0)
    return Verdict::tight;
  if (!margin) return Verdict::unknown;
  if (*margin < 0) return Verdict::fails;
  return *margin < kTightBelow ? Verdict::tight : Verdict::holds;
}

std::optional<Finding> find(const Check& check, Context& context, Axis axis) {
  Finding finding;
  finding.id = for_axis(check.id, axis);
  if (check.id.starts_with("<axis>")) finding.axis = axis;
  finding.what = words(check.what);
  finding.part = for_axis(check.part, axis);
  finding.si_unit = check.si_unit;
  finding.unit = check.unit;
  if (const auto missing = context.missing(check.inputs, axis); !missing.empty()) {
    finding.because = say_needs(missing);
    return finding;
  }
  Compared compared = check.compare(context, axis);
  if (compared.outcome == Compared::Outcome::absent) return std::nullopt;
  if (compared.capacity && std::isinf(*compared.capacity))
    compared = moot(words("no limit is stated"));
  finding.verdict = verdict_of(compared);
  finding.margin = margin_of(compared);
  if (finding.verdict == Verdict::tight && finding.margin.value_or(0) >= kTightBelow)
    finding.margin.reset();  // doubtful: the numbers are not what it rests on
  finding.demand = compared.demand;
  finding.capacity = compared.capacity;
  finding.because = words(compared.because);
  return finding;
}

}  // namespace gazewright
