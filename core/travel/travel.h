#pragma once

#include <optional>

#include "core/rig/rig.h"

/// How far an axis may turn. Angles end to end [rad].
namespace gazewright {

/// 2π − 2·asin(tab/2r) − 2·asin(post/2r); empty where tab or post is wider than 2r.
std::optional<double> stop_travel_rad(double tab_width_m, double post_width_m, double radius_m);
/// Routing `twist`: 2·rating·free length, the rating each way from the untwisted state.
double twist_travel_rad(double twist_rating_radpm, double free_length_m);

/// What is left between limits. Every span is centred on `centre_rad` (the cable's untwisted state
/// is taken there).
struct Travel {
  double centre_rad = 0;
  std::optional<double> stops_rad, cable_rad, soft_rad,
      usable_rad;  ///< +infinity: no such limit (none); empty: unknown
  double least_rad() const { return centre_rad - usable_rad.value_or(0) / 2; }
  double most_rad() const { return centre_rad + usable_rad.value_or(0) / 2; }
};
Travel travel_of(const AxisParts& parts);

/// Energy that a hard stop takes when the axis runs into it with everything that turns. [J]
double stop_energy_J(double inertia_kgm2, double speed_radps);
/// Peak torque in a linear stop that takes this energy, plus what the motor goes on pushing:
/// ω·√(k·J) + T. [N·m] A motor that held T right up to the peak would bring T + √(T² + kJω²), at
/// most T more; at speed it cannot.
double stop_torque_Nm(double inertia_kgm2, double speed_radps, double stiffness_Nmprad,
                      double motor_torque_Nm);

/// Output angles that fit one encoder reading at the motor: 2π/N apart, ceil(travel/spacing) of
/// them.
double homing_spacing_rad(double ratio);
double homing_candidates(double travel_rad, double ratio);

}  // namespace gazewright
