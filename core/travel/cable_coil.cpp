#include "core/travel/cable_coil.h"

#include <algorithm>
#include <cmath>

#include "core/units/angle.h"

namespace gazewright {
namespace {

double squared(double x) { return x * x; }

}  // namespace

const char* coil_problem(const Coil& coil) {
  if (!(coil.wall_radius_m > coil.hub_radius_m))
    return "the wall of the coil is not outside its hub";
  if (!(coil_fill(coil) <= 1)) return "the coil does not fit between hub and wall";
  return "";
}

double coil_fill(const Coil& coil) {
  return coil.length_m * coil.thickness_m /
         (kPi * (squared(coil.wall_radius_m) - squared(coil.hub_radius_m)));
}

// Both are length over mean circumference: no difference of nearly equal numbers.
double coil_turns_on_hub(const Coil& coil) {
  const double outside_m =
      std::sqrt(squared(coil.hub_radius_m) + coil.length_m * coil.thickness_m / kPi);
  return coil.length_m / (kPi * (outside_m + coil.hub_radius_m));
}

double coil_turns_at_wall(const Coil& coil) {
  const double inside_m = std::sqrt(
      std::max(0.0, squared(coil.wall_radius_m) - coil.length_m * coil.thickness_m / kPi));
  return coil.length_m / (kPi * (coil.wall_radius_m + inside_m));
}

double coil_travel_rad(const Coil& coil) {
  return std::max(0.0, 2 * kPi * (coil_turns_on_hub(coil) - coil_turns_at_wall(coil)));
}

}  // namespace gazewright
