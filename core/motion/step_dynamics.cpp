#include "core/motion/step_dynamics.h"

namespace gazewright {

AccelerationSlopes<2> AxisDynamics::slopes(double torque_Nm, double torque_slope_Nmps,
                                           MotorAndLoad angle, MotorAndLoad speed) const {
  const double tooth = tooth_torque_Nm(angle, speed);
  const double stiffness = tooth == 0 ? 0 : gear_.stiffness_Nmprad;
  const double damping = tooth == 0 ? 0 : gear_.damping_Nmsprad;
  const double sat = std::clamp(2 * speed.motor, -1.0, 1.0);
  const double loss = tooth * speed.motor >= 0 ? driving_loss_ : back_driving_loss_;
  // Motor torque per tooth torque, loss included.
  const double tooth_on_motor = -per_ratio_ * (1 + std::copysign(loss, tooth) * sat);
  const double friction =
      std::abs(speed.motor) < 0.5 ? 2 * (gear_.drag_Nm + std::abs(tooth) * per_ratio_ * loss) : 0;
  const double drift = 1e-6 * std::max(1.0, std::abs(speed.motor));
  const double acting = acting_torque.at(torque_Nm, speed.motor);
  const double envelope = (acting_torque.at(torque_Nm, speed.motor + drift) - acting) / drift;
  const double rubbing = std::abs(speed.load) < 0.01 ? 100 * load_.coulomb_Nm : 0;

  AccelerationSlopes<2> out;
  out.by_position << tooth_on_motor * stiffness * per_ratio_, -tooth_on_motor * stiffness,
      stiffness * per_ratio_, -stiffness;
  out.by_position(1, 1) += (weighs_ ? gravity_slope_Nmprad_ : 0) - load_.cable_stiffness_Nmprad;
  out.by_speed << tooth_on_motor * damping * per_ratio_ - friction - gear_.viscous_Nmsprad +
                      std::min(envelope, 0.0),
      -tooth_on_motor * damping, damping * per_ratio_, -damping - rubbing - load_.viscous_Nmsprad;
  out.by_time << (acting == torque_Nm ? torque_slope_Nmps : 0), 0;
  for (auto* row : {&out.by_position, &out.by_speed}) {
    row->row(0) *= per_rotor_;
    row->row(1) *= per_load_;
  }
  out.by_time[0] *= per_rotor_;
  return out;
}

}  // namespace gazewright
