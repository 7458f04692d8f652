#include "core/travel/travel.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

constexpr double kTurn_rad = 2 * std::numbers::pi;

std::optional<double> stops_rad(const Stops& stops) {
  if (stops.presence == Presence::none) return kInfinity;
  if (!stops.tab_width_m.si || !stops.post_width_m.si || !stops.radius_m.si) return {};
  return stop_travel_rad(*stops.tab_width_m.si, *stops.post_width_m.si, *stops.radius_m.si);
}

std::optional<double> cable_rad(const Cable& cable) {
  if (cable.presence == Presence::none) return kInfinity;
  const bool twists = cable.routing.value.empty() || cable.routing.value == "twist";
  if (!twists || !cable.twist_rating_radpm.si || !cable.free_length_m.si) return {};
  return twist_travel_rad(*cable.twist_rating_radpm.si, *cable.free_length_m.si);
}

std::optional<double> soft_rad(const Stops& stops, std::optional<double> between_stops_rad) {
  if (stops.presence == Presence::none) return kInfinity;
  if (!between_stops_rad || !stops.soft_inset_rad.si) return {};
  return std::max(0.0, *between_stops_rad - 2 * *stops.soft_inset_rad.si);
}

}  // namespace

std::optional<double> stop_travel_rad(double tab_width_m, double post_width_m, double radius_m) {
  const double tab = tab_width_m / (2 * radius_m), post = post_width_m / (2 * radius_m);
  if (!(tab >= 0 && tab <= 1 && post >= 0 && post <= 1)) return {};
  return kTurn_rad - 2 * std::asin(tab) - 2 * std::asin(post);
}

double twist_travel_rad(double twist_rating_radpm, double free_length_m) {
  return 2 * twist_rating_radpm * free_length_m;
}

Travel travel_of(const AxisParts& parts) {
  Travel travel;
  if (parts.stops.presence == Presence::given)
    travel.centre_rad = parts.stops.centre_rad.si.value_or(0);
  travel.stops_rad = stops_rad(parts.stops);
  travel.cable_rad = cable_rad(parts.cable);
  travel.soft_rad = soft_rad(parts.stops, travel.stops_rad);
  if (travel.soft_rad && travel.cable_rad)
    travel.usable_rad = std::min(*travel.soft_rad, *travel.cable_rad);
  return travel;
}

double stop_energy_J(double inertia_kgm2, double speed_radps) {
  return inertia_kgm2 * speed_radps * speed_radps / 2;
}

double stop_torque_Nm(double inertia_kgm2, double speed_radps, double stiffness_Nmprad,
                      double motor_torque_Nm) {
  return speed_radps * std::sqrt(stiffness_Nmprad * inertia_kgm2) + motor_torque_Nm;
}

double homing_spacing_rad(double ratio) { return kTurn_rad / ratio; }

double homing_candidates(double travel_rad, double ratio) {
  // A travel that is a whole number of spacings but for rounding counts as that number.
  constexpr double kRounding = 1e-12;
  return std::ceil(travel_rad / homing_spacing_rad(ratio) * (1 - kRounding));
}

}  // namespace gazewright
