#pragma once

#include "core/motion/axis_model.h"

/// An axis whose drive has lost control: a lost encoder, a wrong commutation, a wire off.
namespace gazewright {

/// Speed after `way_rad` from rest under the full driving torque that current limit, bus voltage
/// and supply allow, train rigid. The drive's own speed limit does not bind: it needs a speed that
/// is right. Gravity and cables are left out. 0 where the torque does not overcome friction.
/// [rad/s] at the output. @pre way_rad is finite and above 0
double runaway_speed_radps(const AxisModel& model, double way_rad);

}  // namespace gazewright
