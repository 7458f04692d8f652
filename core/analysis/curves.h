#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"

namespace gazewright {

/// Curves of one axis for plots; each is empty where its inputs are missing.
AxisCurves curves_of(Context& context, Axis axis);

/// Torque at the output that a motor torque gives through the gear at its sign of power: η·N·T
/// driving, N·T/η_back braking, at most the gearbox's peak. [N·m]
double output_torque_Nm(const AxisModel& model, double motor_torque_Nm, double motor_speed_radps);

}  // namespace gazewright
