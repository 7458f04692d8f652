#pragma once

#include "core/motion/axis_model.h"
#include "core/travel/travel.h"

/// What the axis does when power drops: the drive lets go and the motor's phases are open. Cogging
/// of the motor is left out (it holds a little more).
namespace gazewright {

/// Torque at the output that friction holds against: coulomb + N·drag/η_back, the drag driven back
/// from the output. Static friction is taken to be no more than sliding friction. +infinity where
/// the gearbox locks itself (η_back 0). [N·m]
double friction_hold_Nm(const AxisModel& model);

/// Largest speed with which the axis can coast into a hard stop after power dropped at top speed
/// anywhere between the soft limits, gravity and cables as they are at each angle; 0 where it
/// always comes to rest before. @pre stops and soft limits are known and finite. [rad/s]
double coasting_stop_speed_radps(const AxisModel& model, const Travel& travel);
/// The same after power dropped at `from_radps`.
double coasting_stop_speed_radps(const AxisModel& model, const Travel& travel, double from_radps);

}  // namespace gazewright
