#pragma once

#include <optional>
#include <string>

#include "core/analysis/context.h"
#include "core/analysis/scan.h"
#include "core/travel/impact.h"

/// An axis while the other one stands where that is worst. Figures take the other axis at rest, as
/// design section 6 has it; what must not break or hurt is judged here.
namespace gazewright {

/// The usable travel, a whole turn where it is not known. [rad]
Interval usable_or_turn(Context& context, Axis axis);

struct WorstPose {
  AxisModel model;  ///< with the largest load and the largest pull, if of two poses with both
  double load_at_rad = 0, pull_at_rad = 0;  ///< of the other axis
  bool is_heavier = false;                  ///< the load is larger than with the other at rest
};
/// @pre <load> is there. Not within Context::prepare().
const WorstPose& worst_pose(Context& context, Axis axis);

/// Gravity and cables between the stops, the other axis where it is worst. [N·m]
double worst_pull_Nm(Context& context, Axis axis);

/// Where that is not the pose at rest: "; with tilt at 64°, where its load is largest: 53.5 g·m²".
std::string say_worst_load(Context& context, Axis axis);

}  // namespace gazewright
