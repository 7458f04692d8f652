#pragma once

#include <optional>

#include "core/rig/rig.h"

namespace gazewright {

/// Routing `twist`: 2·rating·free length, the rating each way from the untwisted state.
double twist_travel_rad(double twist_rating_radpm, double free_length_m);
/// What the cable allows end to end for its routing; +infinity: nothing limits, empty: unknown.
/// [rad]
std::optional<double> cable_travel_rad(const Cable& cable);

}  // namespace gazewright
