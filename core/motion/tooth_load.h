#pragma once

#include "core/motion/step.h"

/// What the teeth of the gearbox carry in a simulated move.
namespace gazewright {

/// At the control samples up to a time. `input_radps` is the largest speed of the motor, which
/// turns alone while it crosses the gap.
struct ToothPeak {
  double torque_Nm = 0, at_s = 0, input_radps = 0;
};
/// Torque of the teeth on the load: stiffness times wind-up and what they damp, as the step has
/// it. A magnitude. @param until_s  rows after it are not looked at
ToothPeak tooth_peak(const AxisModel& model, const Trace& trace, double until_s);

/// Sums for the root mean cube of the teeth's torque, every angle that the output turns counted
/// alike: wear goes with teeth that mesh, so what is held at rest does not count.
struct ToothWear {
  double cube_Nm3rad = 0, angle_rad = 0;

  void add(const ToothWear& more, double times = 1);
  double mean_Nm() const;  ///< (∫|τ|³·dφ / ∫dφ)^⅓; 0 where nothing turned
};
/// Of a whole trace, by the rectangle rule over its samples.
ToothWear tooth_wear(const AxisModel& model, const Trace& trace);

}  // namespace gazewright
