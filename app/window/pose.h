#pragma once

#include "core/analysis/analysis.h"

namespace gazewright {

/// Where both axes point at a moment of their steps; each move is centred on the rest pose. NaN, or
/// an axis without a step: at rest.
struct Pose {
  double pan_rad = 0, tilt_rad = 0;
  double of(Axis axis) const { return axis == Axis::pan ? pan_rad : tilt_rad; }
};
Pose pose_at(const Analysis& analysis, double time_s);

}  // namespace gazewright
