#pragma once

#include <optional>

#include "core/analysis/sweep.h"
#include "core/motion/limits_in_force.h"

namespace gazewright {

/// What the move runs out of towards either end of a sweep: the limit that is in force for the
/// largest part of the fastest move at the least ratio that can make the move, and at the largest.
/// Empty where inputs are missing, where there is no move, or where the flat band goes to that end.
struct RatioEnds {
  std::optional<MoveLimit> below, above;
};
/// @param sweep  of this rig and axis
RatioEnds ratio_ends(const Rig& rig, Axis axis, const RatioSweep& sweep);

}  // namespace gazewright
