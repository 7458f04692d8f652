#include "core/travel/stops.h"

#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

constexpr double kTurn_rad = 2 * std::numbers::pi;

}  // namespace

std::optional<double> stop_travel_rad(double tab_width_m, double post_width_m, double radius_m) {
  const double tab = tab_width_m / (2 * radius_m), post = post_width_m / (2 * radius_m);
  if (!(tab >= 0 && tab <= 1 && post >= 0 && post <= 1)) return {};
  return kTurn_rad - 2 * std::asin(tab) - 2 * std::asin(post);
}

std::optional<double> travel_between_stops_rad(const Stops& stops) {
  if (stops.presence == Presence::none) return kInfinity;
  if (!stops.tab_width_m.si || !stops.post_width_m.si || !stops.radius_m.si) return {};
  return stop_travel_rad(*stops.tab_width_m.si, *stops.post_width_m.si, *stops.radius_m.si);
}

double stop_energy_J(double inertia_kgm2, double speed_radps) {
  return inertia_kgm2 * speed_radps * speed_radps / 2;
}

double stop_torque_Nm(double inertia_kgm2, double speed_radps, double stiffness_Nmprad,
                      double motor_torque_Nm) {
  return speed_radps * std::sqrt(stiffness_Nmprad * inertia_kgm2) + motor_torque_Nm;
}

}  // namespace gazewright
