#include "core/motion/coupled_dynamics.h"

namespace gazewright {

CoupledDynamics::CoupledDynamics(const CoupledModel& model, PanTilt from_rad)
    : acting_torque(model.axis[0], model.axis[1]),
      train_({&model.axis[0], &model.axis[1]}),
      equations_(model.bodies),
      at_rad_{from_rad.pan, from_rad.tilt} {
  for (int lane = 0; lane < 2; ++lane) {
    const AxisLoad& load = model.axis[static_cast<std::size_t>(lane)].load;
    cable_stiffness_Nmprad_[lane] = load.cable_stiffness_Nmprad;
    untwisted_rad_[lane] = load.cable_centre_rad - at_rad_[lane];
  }
  centre(BothAxes{});
}

BothAxes CoupledDynamics::pull_Nm(BothAxes angle_rad) const {
  const BothAxes q = angle_rad + at_rad_;
  const PanTilt weight = equations_.gravity_torque_Nm(Turn::of(q[0]), Turn::of(q[1]));
  return BothAxes{weight.pan, weight.tilt} + cable_Nm(angle_rad);
}

/// Stiff parts by their formulas, through M⁻¹. What the bodies add is smooth and is taken by
/// differences, and so is the envelope, where each motor's speed may change the other's torque.
CoupledDynamics::Slopes CoupledDynamics::slopes(BothAxes torque_Nm, BothAxes torque_slope_Nmps,
                                                Pair angle, Pair speed) const {
  const TrainSlopes<BothAxes> train = train_.slopes(angle, speed);
  const BothAxes moving = train_.moving_Nm(train_.tooth_torque_Nm(angle, speed), speed.load);
  const BothAxes acting = acting_torque.at(torque_Nm, speed.motor);
  const BothAxes rest = load_radps2(moving, angle.load, speed.load);
  const BothAxes per_rotor = train_.per_rotor();
  Slopes out;
  out.by_position.setZero();
  out.by_speed.setZero();
  out.by_time.setZero();
  constexpr double kAngle_rad = 1e-6, kTime_s = 1e-7;
  for (int k = 0; k < 2; ++k) {  // the axis whose angles and speeds change
    BothAxes one{};
    one[k] = 1;
    const BothAxes per_Nm = load_radps2(moving + one, angle.load, speed.load) - rest;  // of M⁻¹
    const double drift = 1e-6 * std::max(1.0, std::abs(speed.motor[k]));
    const double load_drift = 1e-6 * std::max(1.0, std::abs(speed.load[k]));
    const BothAxes envelope =
        (acting_torque.at(torque_Nm, speed.motor + drift * one) - acting) / drift;
    const BothAxes by_angle =
        (load_radps2(moving, angle.load + kAngle_rad * one, speed.load) - rest) / kAngle_rad;
    const BothAxes by_speed =
        (load_radps2(moving, angle.load, speed.load + load_drift * one) - rest) / load_drift;
    out.by_position(k, k) = train.motor_by_angle.motor[k] * per_rotor[k];
    out.by_position(k, 2 + k) = train.motor_by_angle.load[k] * per_rotor[k];
    out.by_speed(k, k) = train.motor_by_speed.motor[k] * per_rotor[k];
    out.by_speed(k, 2 + k) = train.motor_by_speed.load[k] * per_rotor[k];
    for (int row = 0; row < 2; ++row) {
      out.by_speed(row, k) += std::min(envelope[row], 0.0) * per_rotor[row];
      out.by_position(2 + row, k) = train.load_by_angle.motor[k] * per_Nm[row];
      out.by_position(2 + row, 2 + k) = train.load_by_angle.load[k] * per_Nm[row] + by_angle[row];
      out.by_speed(2 + row, k) = train.load_by_speed.motor[k] * per_Nm[row];
      out.by_speed(2 + row, 2 + k) = train.load_by_speed.load[k] * per_Nm[row] + by_speed[row];
    }
  }
  const BothAxes later = acting_torque.at(torque_Nm + kTime_s * torque_slope_Nmps, speed.motor);
  const BothAxes by_time = (later - acting) / kTime_s * per_rotor;
  out.by_time[0] = by_time[0];
  out.by_time[1] = by_time[1];
  return out;
}

}  // namespace gazewright
