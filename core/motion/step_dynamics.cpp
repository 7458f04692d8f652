#include "core/motion/step_dynamics.h"

namespace gazewright {

AccelerationSlopes<2> AxisDynamics::slopes(double torque_Nm, double torque_slope_Nmps,
                                           MotorAndLoad angle, MotorAndLoad speed) const {
  const TrainSlopes<double> train = train_.slopes(angle, speed);
  const double drift = 1e-6 * std::max(1.0, std::abs(speed.motor));
  const double acting = acting_torque.at(torque_Nm, speed.motor);
  const double envelope = (acting_torque.at(torque_Nm, speed.motor + drift) - acting) / drift;

  AccelerationSlopes<2> out;
  out.by_position << train.motor_by_angle.motor, train.motor_by_angle.load,
      train.load_by_angle.motor, train.load_by_angle.load;
  out.by_position(1, 1) += (weighs_ ? gravity_slope_Nmprad_ : 0) - load_.cable_stiffness_Nmprad;
  out.by_speed << train.motor_by_speed.motor + std::min(envelope, 0.0), train.motor_by_speed.load,
      train.load_by_speed.motor, train.load_by_speed.load;
  out.by_time << (acting == torque_Nm ? torque_slope_Nmps : 0), 0;
  for (auto* row : {&out.by_position, &out.by_speed}) {
    row->row(0) *= train_.per_rotor();
    row->row(1) *= per_load_;
  }
  out.by_time[0] *= train_.per_rotor();
  return out;
}

}  // namespace gazewright
