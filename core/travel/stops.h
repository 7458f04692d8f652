#pragma once

#include <optional>

#include "core/rig/rig.h"

namespace gazewright {

/// Angle that a part of this width takes on the circle on which stops meet, 2·asin(width/2r); empty
/// where it is negative or wider than 2r. [rad]
std::optional<double> angle_taken_rad(double width_m, double radius_m);

/// Kind tab: 2π − 2·asin(tab/2r) − 2·asin(post/2r); empty where tab or post is wider than 2r.
std::optional<double> stop_travel_rad(double tab_width_m, double post_width_m, double radius_m);
/// Kind trailing, `trailers` loose tabs between tab and post: (n + 1)·2π − tab − post − 2·n·loose
/// tab, each as the angle it takes; empty where one is wider than 2r.
std::optional<double> trailing_travel_rad(double tab_width_m, double post_width_m, double radius_m,
                                          double trailers, double trailer_width_m);
/// Kind window: window − 2·asin(tab/2r); empty where the tab does not fit into the window.
std::optional<double> window_travel_rad(double tab_width_m, double window_rad, double radius_m);
/// Travel between the hard stops of the given kind; +infinity: no stops, empty: unknown or there is
/// none. May be more than a turn for kind trailing. [rad]
std::optional<double> travel_between_stops_rad(const Stops& stops);

/// Energy that a hard stop takes when the axis runs into it with everything that turns. [J]
double stop_energy_J(double inertia_kgm2, double speed_radps);
/// Peak torque in a linear stop that takes this energy, plus what the motor goes on pushing:
/// ω·√(k·J) + T. [N·m] A motor that held T right up to the peak would bring T + √(T² + kJω²), at
/// most T more; at speed it cannot.
double stop_torque_Nm(double inertia_kgm2, double speed_radps, double stiffness_Nmprad,
                      double motor_torque_Nm);

}  // namespace gazewright
