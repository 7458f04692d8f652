#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/rig/rig.h"

/// How far the tilt may turn before a body meets another one.
namespace gazewright {

/// Two solids nearer than this count as touching. [m]
inline constexpr double kTouching_m = 1e-4;

struct Contact {
  double tilt_rad = 0;         ///< where they meet
  std::string tilting, other;  ///< names; "stand" for what the rig stands on
};

/// The first contact each way of tilt 0, within half a turn; empty: nothing is met. Pan does not
/// matter: what tilts meets what pan carries at the same tilt for every pan, and the stand counts
/// as the round one that its corners just reach, with its top at the mounting plane. Where its
/// width or height is missing it counts as a floor without end.
struct Clearance {
  std::optional<Contact> down, up;
  std::vector<std::string> without_shape;  ///< bodies that are left out: a point, an inertia only
  std::vector<std::pair<std::string, std::string>>
      joined;  ///< pairs that touch at tilt 0 already, so on purpose (a hub in its arm): left out
};
/// @pre sizes and places of all shapes and tilt.axis_at have values; bodies without are left out.
Clearance clearance_of(const Rig& rig);

}  // namespace gazewright
