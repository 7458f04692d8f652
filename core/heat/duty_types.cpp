#include "core/heat/duty_types.h"

#include <cmath>

namespace gazewright {

double short_time_factor(double time_s, double thermal_time_s, double constant_to_copper) {
  const double reached = -std::expm1(-time_s / thermal_time_s);
  return std::sqrt((1 + constant_to_copper) / reached - constant_to_copper);
}

double intermittent_factor(double on_s, double off_s, double heating_time_s,
                           double cooling_time_s) {
  const double on = on_s / heating_time_s, off = off_s / cooling_time_s;
  return std::sqrt(std::expm1(-(on + off)) / std::expm1(-on));
}

}  // namespace gazewright
