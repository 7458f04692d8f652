#include "core/travel/stops.h"

#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

constexpr double kTurn_rad = 2 * std::numbers::pi;

}  // namespace

std::optional<double> angle_taken_rad(double width_m, double radius_m) {
  const double half_chord = width_m / (2 * radius_m);
  if (!(half_chord >= 0 && half_chord <= 1)) return {};
  return 2 * std::asin(half_chord);
}

std::optional<double> stop_travel_rad(double tab_width_m, double post_width_m, double radius_m) {
  const auto tab = angle_taken_rad(tab_width_m, radius_m);
  const auto post = angle_taken_rad(post_width_m, radius_m);
  if (!tab || !post) return {};
  return kTurn_rad - *tab - *post;
}

std::optional<double> trailing_travel_rad(double tab_width_m, double post_width_m, double radius_m,
                                          double trailers, double trailer_width_m) {
  const auto tab_and_post = stop_travel_rad(tab_width_m, post_width_m, radius_m);
  const auto trailer = angle_taken_rad(trailer_width_m, radius_m);
  if (!tab_and_post || !trailer) return {};
  return *tab_and_post + trailers * (kTurn_rad - 2 * *trailer);
}

std::optional<double> window_travel_rad(double tab_width_m, double window_rad, double radius_m) {
  const auto tab = angle_taken_rad(tab_width_m, radius_m);
  if (!tab || !(window_rad >= *tab)) return {};
  return window_rad - *tab;
}

std::optional<double> travel_between_stops_rad(const Stops& stops) {
  if (stops.presence == Presence::none) return kInfinity;
  // A missing value is NaN, which none of these has an answer for.
  const double tab_m = stops.tab_width_m.value(), radius_m = stops.radius_m.value();
  if (stops.kind.value == "window")
    return window_travel_rad(tab_m, stops.window_rad.value(), radius_m);
  const double post_m = stops.post_width_m.value();
  if (stops.kind.value != "trailing") return stop_travel_rad(tab_m, post_m, radius_m);
  return trailing_travel_rad(tab_m, post_m, radius_m, stops.trailers.si.value_or(1),
                             stops.trailer_width_m.value());
}

double stop_energy_J(double inertia_kgm2, double speed_radps) {
  return inertia_kgm2 * speed_radps * speed_radps / 2;
}

double stop_torque_Nm(double inertia_kgm2, double speed_radps, double stiffness_Nmprad,
                      double motor_torque_Nm) {
  return speed_radps * std::sqrt(stiffness_Nmprad * inertia_kgm2) + motor_torque_Nm;
}

}  // namespace gazewright
