#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "core/rig/rig.h"

namespace gazewright {

/// What one part adds to the inertia about an axis at θ = 0, seen at the output.
struct InertiaShare {
  QString name;
  double inertia_kgm2 = 0;
  bool is_rotor = false;  ///< rotor or gearbox, reflected through the gear
};

/// All shares about an axis, largest first: each body by itself through core/bodies, then rotor and
/// gearbox times N². They add up to <axis>.inertia.load plus <axis>.inertia.rotor_reflected.
/// @param rig  with defaults filled in. Empty where a mass, a place, a shape or the gear is
/// missing.
std::optional<std::vector<InertiaShare>> inertia_shares(const Rig& rig, Axis axis);

}  // namespace gazewright
