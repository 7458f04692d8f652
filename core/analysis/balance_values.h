#pragma once

#include "core/analysis/scan.h"
#include "core/bodies/bodies.h"

namespace gazewright {

class Context;

/// Gravity on an axis with the other axis at the angle where that is largest.
struct WorstGravity {
  Interval own;        ///< travel that it is taken over: usable, a turn at most [rad]
  GravityCurve curve;  ///< against the own angle, the other axis at `other_rad`
  double other_rad = 0;
  double torque_Nm = 0;  ///< largest magnitude
  double at_rad = 0;     ///< own angle there
};
/// @pre all that decides the load, on_pan, tilt.axis_at and stand.lean have values.
const WorstGravity& worst_gravity(Context& context, Axis axis);

}  // namespace gazewright
