#include "core/tracking/outer_loop.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gazewright {

double gain_ceiling_1ps(double dead_time_s, double phase_margin_rad) {
  return (std::numbers::pi / 2 - phase_margin_rad) / dead_time_s;
}

double ramp_lag_rad(double speed_radps, double gain_1ps, double late_s, double feed_forward) {
  return speed_radps * (1 / gain_1ps + late_s) * (1 - feed_forward);
}

double blind_cone_rad(double speed_mps, double distance_m, double most_radps, double most_radps2) {
  // pan = atan(v·t/r) has its largest acceleration at t = r/(v·√3).
  const double of_acceleration = std::sqrt(3 * std::numbers::sqrt3 / 8 / most_radps2);
  const double nearest_m = speed_mps * std::max(1 / most_radps, of_acceleration);
  return std::asin(std::min(nearest_m / distance_m, 1.0));
}

}  // namespace gazewright
