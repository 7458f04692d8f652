#include "core/tracking/eye.h"

#include <cmath>

namespace gazewright {

double saccade_time_s(double move_rad) { return 2.2e-3 * (move_rad / kDegree_rad) + 21e-3; }

double longer_saccade_time_s(double move_rad) { return 2.7e-3 * (move_rad / kDegree_rad) + 23e-3; }

double saccade_peak_radps(double move_rad) {
  return -551 * kDegree_rad * std::expm1(-move_rad / (14 * kDegree_rad));
}

}  // namespace gazewright
