#include "core/travel/homing.h"

#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

constexpr double kTurn_rad = 2 * std::numbers::pi;

}  // namespace

double homing_spacing_rad(double ratio) { return kTurn_rad / ratio; }

double homing_candidates(double travel_rad, double ratio) {
  // A travel that is a whole number of spacings but for rounding counts as that number.
  constexpr double kRounding = 1e-12;
  return std::ceil(travel_rad / homing_spacing_rad(ratio) * (1 - kRounding));
}

}  // namespace gazewright
