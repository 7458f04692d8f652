#pragma once

#include <optional>

#include "core/rig/rig.h"

namespace gazewright {

/// 2π − 2·asin(tab/2r) − 2·asin(post/2r); empty where tab or post is wider than 2r.
std::optional<double> stop_travel_rad(double tab_width_m, double post_width_m, double radius_m);
/// Travel between the hard stops of the given kind; +infinity: no stops, empty: unknown. [rad]
std::optional<double> travel_between_stops_rad(const Stops& stops);

/// Energy that a hard stop takes when the axis runs into it with everything that turns. [J]
double stop_energy_J(double inertia_kgm2, double speed_radps);
/// Peak torque in a linear stop that takes this energy, plus what the motor goes on pushing:
/// ω·√(k·J) + T. [N·m] A motor that held T right up to the peak would bring T + √(T² + kJω²), at
/// most T more; at speed it cannot.
double stop_torque_Nm(double inertia_kgm2, double speed_radps, double stiffness_Nmprad,
                      double motor_torque_Nm);

}  // namespace gazewright
