#pragma once

#include "core/motion/lane_run.h"

/// The attempts of LaneRun at a step; the sources of lanes include this.
namespace gazewright {

template <class Wide>
inline void LaneRun<Wide>::series_attempt(Mask at) {
  const Mask is_whole = (done_s_ == 0) & (h_ >= sample_s_);
  const TorqueLag<Wide> lag{command_Nm_, gap_Nm_, lag_1ps_};
  const MotionSeries<Wide> series = motion_series(dynamics_, angle_, speed_, lag, h_);
  const Wide end =
      all_of(is_whole | !at) ? whole_end_ : select(is_whole, whole_end_, decay_of(lag_1ps_ * h_));
  const SeriesPart<Wide> to = part_of_series(dynamics_, series, tolerance_, lag, h_, end);
  part_ = keep(at, to.part, part_);
  const Mask good = at & (to.error < kSenseless), leaves = good & to.leaves;
  if (any_of(leaves)) to_phase(leaves, kCut);
  go(good & !leaves, to.angle_rad, to.speed_radps, to.lag_part);
  const Mask bad = at & !good;
  if (!any_of(bad)) return;
  h_ = keep(bad, h_ * part_, h_);
  again(bad);
}

template <class Wide>
inline void LaneRun<Wide>::cut_attempt(Mask at) {
  const TorqueLag<Wide> lag{command_Nm_, gap_Nm_, lag_1ps_};
  const MotionSeries<Wide> series = motion_series(dynamics_, angle_, speed_, lag, h_);
  part_ = keep(at, part_within_branch(dynamics_, series, lag, h_, part_), part_);
  go(at, series.angle(part_), series.speed(part_), decay_of(lag_1ps_ * (h_ * part_)));
}

template <class Wide>
inline void LaneRun<Wide>::go(Mask at, Pair to_angle, Pair to_speed, Wide lag_part) {
  if (!any_of(at)) return;
  angle_ = select(at, to_angle, angle_);
  speed_ = select(at, to_speed, speed_);
  const Mask over = at & (part_ == 1) & (done_s_ + h_ >= sample_s_ * kAllButAll);
  const Mask goes_on = at & !over;
  if (any_of(goes_on)) {
    done_s_ = keep(goes_on, done_s_ + h_ * part_, done_s_);
    gap_Nm_ = keep(goes_on, gap_Nm_ * lag_part, gap_Nm_);
    h_ = keep(goes_on, sample_s_ - done_s_, h_);
    again(goes_on);
  }
  if (!any_of(over)) return;
  settle_costs(over, kSeriesCost * steps_, cost_series_, cost_stiff_);
  end_sample(over);
}

template <class Wide>
inline void LaneRun<Wide>::again(Mask at) {
  steps_ = keep(at, steps_ + 1, steps_);
  const Mask fails = at & (steps_ > most_steps_);
  to_phase(at & !fails, kSeries);
  if (!any_of(fails)) return;
  settle_costs(fails, kSeriesCost * most_steps_, cost_series_, cost_stiff_);
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
  settle_costs(over, kStiffCost * steps_, cost_stiff_, cost_series_);
  end_sample(over);
}

template <class Wide>
inline void LaneRun<Wide>::settle_costs(Mask at, Wide cost, Wide& used, Wide& other) {
  used = keep(at, (used + cost) * 0.5, used);
  other = keep(at, other * kForgetting, other);
  const Mask stiff = !(cost_series_ <= most_of(cost_stiff_, all<Wide>(kWorthWhile)));
  is_stiff_ = select(at, stiff, is_stiff_);
}

}  // namespace gazewright
