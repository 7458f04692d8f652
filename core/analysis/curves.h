#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"

namespace gazewright {

/// Curves of one axis for plots; each is empty where its inputs are missing.
AxisCurves curves_of(Context& context, Axis axis);

/// The axis with its copper at this temperature: R = R20·(235 + θ)/255 with θ in °C, the phase
/// resistance of the rig being that at 20 °C. The torque constant stays: how much weaker the
/// magnets get is no input of the rig (handbook: drive).
AxisModel with_winding_at(AxisModel model, double winding_K);

/// Torque at the output that a motor torque gives through the gear at its sign of power: η·N·T
/// driving, N·T/η_back braking, at most the gearbox's peak. [N·m]
double output_torque_Nm(const AxisModel& model, double motor_torque_Nm, double motor_speed_radps);

}  // namespace gazewright
