#pragma once

namespace gazewright {

/// Output angles that fit one encoder reading at the motor: 2π/N apart, ceil(travel/spacing) of
/// them.
double homing_spacing_rad(double ratio);
double homing_candidates(double travel_rad, double ratio);

}  // namespace gazewright
