#pragma once

#include "core/motion/lane_run.h"

/// The attempts of LaneRun at a step; the sources of lanes include this.
namespace gazewright {

template <class Wide>
inline void LaneRun<Wide>::explicit_attempt(Mask at) {
  const Mask is_whole = (done_s_ == 0) & (h_ >= sample_s_);
  const Mask ends = done_s_ + h_ >= sample_s_ * kAllButAll;
  h_ = keep(at & ends, sample_s_ - done_s_, h_);
  LagParts<Wide> parts = whole_;
  if (!all_of(is_whole | !at)) {
    const LagParts<Wide> some(lag_1ps_, h_);
    for (int i = 0; i < 5; ++i) parts.stage[i] = keep(is_whole, parts.stage[i], some.stage[i]);
  }
  const auto acceleration = [&](int stage, Pair p, Pair v) __attribute__((always_inline)) {
    return dynamics_.acceleration(command_Nm_ + gap_Nm_ * parts.stage[stage], p, v);
  };
  const AxisStateOf<Wide> from{angle_, speed_, torque_Nm_};
  Pair last;
  const MotionStep<Wide> to = explicit_step(acceleration, from, radps2_, h_, last);
  const Wide error = tolerance_.error_of(to, speed_);
  const Mask region =
      dynamics_.region(command_Nm_ + gap_Nm_ * parts.end(), to.angle_rad, to.speed_radps);
  to_angle_ = select(at, to.angle_rad, to_angle_);
  to_speed_ = select(at, to.speed_radps, to_speed_);
  to_radps2_ = select(at, last, to_radps2_);
  error_ = keep(at, error, error_);
  end_part_ = keep(at, parts.end(), end_part_);
  whole_step_ = select(at, is_whole, whole_step_);
  ends_ = select(at, ends, ends_);
  to_region_ = select(at, region, to_region_);
  const Mask leaves = at & (region != region_) & (error > kWorthCutting) & (error < kHopeless);
  if (any_of(leaves)) to_phase(leaves, kCut);
  judge(at & !leaves);
}

template <class Wide>
inline void LaneRun<Wide>::cut_attempt(Mask at) {
  const LeavingStep<Wide> leaving{angle_,    speed_,     radps2_,     gap_Nm_,  to_angle_,
                                  to_speed_, to_radps2_, command_Nm_, lag_1ps_, end_part_};
  const Wide cut_s =
      most_of(h_ * part_within_region(dynamics_, leaving, h_), kShortestCut * sample_s_);
  const Mask cuts = at & (h_ - cut_s > kShortestCut * sample_s_);
  uncut_s_ = keep(cuts, most_of(uncut_s_, h_), uncut_s_);
  h_ = keep(cuts, cut_s, h_);
  again(cuts);
  judge(at & !cuts);
}

template <class Wide>
inline void LaneRun<Wide>::judge(Mask at) {
  if (!any_of(at)) return;
  const Mask bad = at & (error_ > 1) & (h_ > kShortestCut * sample_s_);
  const Mask good = at & !bad, over = good & ends_, goes_on = good & !ends_;
  const Wide longer_s = h_ * step_factor(error_);
  const Wide next_s = most_of(keep(ends_ & whole_step_, h_, longer_s), uncut_s_);
  next_explicit_s_ =
      keep(over, most_of(next_s, next_explicit_s_), keep(goes_on, next_s, next_explicit_s_));
  angle_ = select(good, to_angle_, angle_);
  speed_ = select(good, to_speed_, speed_);
  radps2_ = select(good, to_radps2_, radps2_);
  region_ = select(good, to_region_, region_);
  done_s_ = keep(good, done_s_ + h_, done_s_);
  gap_Nm_ = keep(good, gap_Nm_ * end_part_, gap_Nm_);
  h_ = keep(bad, longer_s, keep(goes_on, next_s, h_));
  uncut_s_ = keep(goes_on, Wide{}, uncut_s_);
  if (any_of(over)) {
    settle_costs(over, kExplicitCost * steps_, cost_explicit_, cost_stiff_);
    end_sample(over);
  }
  again(bad | goes_on);
}

template <class Wide>
inline void LaneRun<Wide>::again(Mask at) {
  if (!any_of(at)) return;
  steps_ = keep(at, steps_ + 1, steps_);
  const Mask fails = at & (steps_ > most_steps_);
  to_phase(at & !fails, kExplicit);
  if (!any_of(fails)) return;
  settle_costs(fails, kExplicitCost * most_steps_, cost_explicit_, cost_stiff_);
  angle_ = select(fails, from_angle_, angle_);
  speed_ = select(fails, from_speed_, speed_);
  begin_stiff(fails);
}

template <class Wide>
inline void LaneRun<Wide>::stiff_attempt(Mask at) {
  steps_ = keep(at, steps_ + 1, steps_);
  allowed_ = keep(at & (steps_ > kMostStiffSteps), allowed_ * 3, allowed_);
  const Mask ends = done_s_ + h_ >= sample_s_ * kAllButAll;
  h_ = keep(at & ends, sample_s_ - done_s_, h_);
  const TorqueLag<Wide> lag{command_Nm_, start_gap_Nm_, lag_1ps_};
  const Wide start_Nm = lag.at(done_s_);
  const auto slopes =
      dynamics_.slopes(start_Nm, lag_1ps_ * (command_Nm_ - start_Nm), angle_, speed_);
  const auto acceleration = [&](double c, Pair p, Pair v) __attribute__((always_inline)) {
    return dynamics_.acceleration(lag.at(done_s_ + c * h_), p, v);
  };
  const MotionStep<Wide> to = stiff_step(acceleration, slopes, angle_, speed_, h_);
  const Wide error = tolerance_.error_of(to, speed_) / allowed_;
  const Wide next_s = most_of(h_ * step_factor(error), kLeastStep * sample_s_);
  const Mask good = at & !(error > 1), over = good & ends;
  angle_ = select(good, to.angle_rad, angle_);
  speed_ = select(good, to.speed_radps, speed_);
  done_s_ = keep(good, done_s_ + h_, done_s_);
  next_stiff_s_ = keep(good, keep(ends, most_of(next_s, next_stiff_s_), next_s), next_stiff_s_);
  h_ = keep(at, next_s, h_);
  if (!any_of(over)) return;
  settle_costs(over, kStiffCost * steps_, cost_stiff_, cost_explicit_);
  end_sample(over);
}

template <class Wide>
inline void LaneRun<Wide>::settle_costs(Mask at, Wide cost, Wide& used, Wide& other) {
  used = keep(at, (used + cost) * 0.5, used);
  other = keep(at, other * kForgetting, other);
  const Mask stiff = !(cost_explicit_ <= most_of(cost_stiff_, all<Wide>(kWorthWhile)));
  is_stiff_ = select(at, stiff, is_stiff_);
}

}  // namespace gazewright
