#include "core/motion/series_step.h"
#include "core/motion/step_advance.h"

namespace gazewright {

template <>
bool SampleAdvance<AxisDynamics>::explicit_sample(State& state, const TorqueLag<double>& lag) {
  State at = state;
  TorqueLag<double> now = lag;
  double done_s = 0, h = sample_s_;
  const int most_steps = most_series(sample_s_);
  for (int steps = 1; steps <= most_steps; ++steps) {
    const bool whole = done_s == 0 && h >= sample_s_;
    const auto series = motion_series(dynamics_, at.angle_rad, at.speed_radps, now, h);
    SeriesPart<double> to = part_of_series(dynamics_, series, tolerance_, now, h,
                                           whole ? whole_.end() : decay_of(now.rate_1ps * h));
    if (!(to.error < kSenseless)) {
      h *= to.part;
      continue;
    }
    if (to.leaves) {
      to.part = part_within_branch(dynamics_, series, now, h, to.part);
      to.angle_rad = series.angle(to.part);
      to.speed_radps = series.speed(to.part);
      to.lag_part = decay_of(now.rate_1ps * (h * to.part));
    }
    at.angle_rad = to.angle_rad;
    at.speed_radps = to.speed_radps;
    if (to.part == 1 && done_s + h >= sample_s_ * kAllButAll) {
      settle_costs(kExplicit, kSeriesCost * steps);
      state = at;
      return true;
    }
    done_s += h * to.part;
    now.gap_Nm *= to.lag_part;
    h = sample_s_ - done_s;
  }
  settle_costs(kExplicit, kSeriesCost * most_steps);
  return false;
}

}  // namespace gazewright
