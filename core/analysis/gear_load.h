#pragma once

#include <string>

#include "core/analysis/context.h"
#include "core/motion/tooth_load.h"

/// What figures and checks of the gearbox in motion share.
namespace gazewright {

/// Of the step, up to its settling; of the whole trace where it never settles. @pre kStep
const ToothPeak& step_tooth_peak(Context& context, Axis axis);
/// Whether the step's loop runs away: its torques then say nothing.
bool step_runs_away(Context& context, Axis axis);

/// Root mean cube over the duty's moves, or the task's move where there is no list.
struct DutyTooth {
  std::string because;  ///< why there is none; else empty
  double mean_Nm = 0;
};
/// @pre kDutyMoves; not in a quick analysis
const DutyTooth& duty_tooth(Context& context, Axis axis);

}  // namespace gazewright
