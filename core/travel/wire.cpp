#include "core/travel/wire.h"

#include <numbers>

namespace gazewright {
namespace {

constexpr double kMil_m = 25.4e-6;
constexpr double kCircularMilPerAmpere = 700;  // a circular mil is the area of a circle of 1 mil

}  // namespace

double wire_resistance_ohmpm(double copper_diameter_m, double temperature_K) {
  const double area_m2 = std::numbers::pi / 4 * copper_diameter_m * copper_diameter_m;
  return kCopper_ohmm * (1 + kCopper_1pK * (temperature_K - kCopperReference_K)) / area_m2;
}

double wire_drop_V(double current_A, double resistance_ohmpm, double one_way_m) {
  return 2 * current_A * resistance_ohmpm * one_way_m;
}

double wire_rating_A(double copper_diameter_m) {
  const double mils = copper_diameter_m / kMil_m;
  return mils * mils / kCircularMilPerAmpere;
}

}  // namespace gazewright
