#pragma once

#include <optional>

#include "core/rig/rig.h"
#include "core/travel/cable.h"
#include "core/travel/homing.h"
#include "core/travel/stops.h"

/// How far an axis may turn. Angles end to end [rad].
namespace gazewright {

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

}  // namespace gazewright
