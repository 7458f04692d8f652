#pragma once

#include <optional>

#include "core/analysis/context.h"

/// The task's move the other way round, where weight or a lean makes it another one.
namespace gazewright {

/// The step of the design goes the positive way: tilt upwards. One that weight helps up is slower
/// down.
struct MoveBack {
  bool differs = false;            ///< gravity at the rest pose is 1 % of the stall torque or more
  std::optional<double> settle_s;  ///< of the camera, where it is on a bracket; empty: never
};
/// @pre kSettle
const MoveBack& move_back(Context& context, Axis axis);

/// For trials: the same of a simulation that ends at `within_s` where it can.
MoveBack move_back_within(Context& context, Axis axis, double within_s);

}  // namespace gazewright
