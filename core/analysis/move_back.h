#pragma once

#include <optional>

#include "core/motion/axis_model.h"

namespace gazewright {

class Context;

/// The task's move the other way round, from its end to its start. The step of the design goes the
/// positive way: tilt upwards. One that weight or a cable helps there is slower back.
struct MoveBack {
  bool differs = false;  ///< weight and cable pull by 1 % of the stall torque or more at rest
  std::optional<double> settle_s;  ///< of the camera, where it is on a bracket; empty: never
};
/// @param within_s  may end there where a later settling is of no interest; infinity: never
/// @pre kSettle
MoveBack move_back_within(Context& context, Axis axis, double within_s);

}  // namespace gazewright
