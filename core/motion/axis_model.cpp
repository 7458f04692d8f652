#include "core/motion/axis_model.h"

#include <algorithm>
#include <cmath>

#include "core/motion/cable_torque.h"

namespace gazewright {
namespace {

/// The lesser, NaN where either is missing (std::min would drop one of them).
double lesser(double a, double b) { return std::isnan(b) || b < a ? b : a; }

MotorDrive motor_drive(const Rig& rig, const AxisParts& parts) {
  return {.torque_constant_NmpA = torque_constant_NmpA(parts.motor.speed_constant_radpsV.value()),
          .phase_resistance_ohm = parts.motor.phase_resistance_ohm.value(),
          .phase_inductance_H = parts.motor.phase_inductance_H.value(),
          .pole_pairs = parts.motor.pole_pairs.value(),
          .current_limit_A =
              lesser(parts.drive.current_limit_A.value(), parts.motor.peak_current_A.value()),
          .motor_peak_is_least =
              parts.motor.peak_current_A.value() < parts.drive.current_limit_A.value(),
          .bus_voltage_V = rig.supply.voltage_V.value(),
          .modulation_limit = parts.drive.modulation_limit.value(),
          .supply_current_limit_A = rig.supply.current_limit_A.value()};
}

GearTrain gear_train(const AxisParts& parts) {
  const Gearbox& gear = parts.gearbox;
  return {.ratio = gear.ratio.value(),
          .efficiency = gear.efficiency.value(),
          .back_efficiency = gear.back_efficiency.value(),
          .rotor_inertia_kgm2 = parts.motor.rotor_inertia_kgm2.value() + gear.inertia_kgm2.value(),
          .backlash_rad = gear.backlash_rad.value(),
          .stiffness_Nmprad = gear.stiffness_Nmprad.value(),
          .damping_Nmsprad = gear.damping_Nmsprad.value(),
          .drag_Nm = gear.drag_Nm.value(),
          .viscous_Nmsprad = gear.viscous_Nmsprad.value(),
          .peak_torque_Nm = gear.peak_torque_Nm.value(),
          .input_speed_limit_radps = gear.input_speed_limit_radps.value()};
}

AxisControl axis_control(const AxisParts& parts) {
  return {.control_rate_Hz = parts.drive.control_rate_Hz.value(),
          .current_bandwidth_Hz = parts.drive.current_bandwidth_Hz.value(),
          .encoder_counts = std::exp2(parts.encoder.bits.value()),
          .encoder_at_output = parts.encoder.at.value == "output",
          .position_gain_1ps = parts.loop.position_gain_1ps.value(),
          .speed_gain_Nmsprad = parts.loop.speed_gain_Nmsprad.value(),
          .speed_integral_gain_Nmprad = parts.loop.speed_integral_gain_Nmprad.value(),
          .speed_limit_radps =
              lesser(parts.loop.speed_limit_radps.value(), parts.drive.speed_limit_radps.value()),
          .estimator_bandwidth_Hz = parts.loop.estimator_bandwidth_Hz.value(),
          .speed_feed_forward = parts.loop.speed_feed_forward.value(),
          .acceleration_feed_forward = parts.loop.acceleration_feed_forward.value(),
          .acceleration_limit_radps2 = parts.loop.acceleration_limit_radps2.value(),
          .jerk_limit_radps3 = parts.loop.jerk_limit_radps3.value()};
}

/// Friction and gravity that the motor must overcome to leave the rest pose, at the output. [N·m]
double held_back_Nm(const AxisModel& model) {
  return model.load.coulomb_Nm + std::abs(model.load.gravity.at(0));
}

}  // namespace

AxisModel axis_model(const Rig& rig, const RigBodies& bodies, Axis axis) {
  const AxisParts& parts = rig.axis(axis);
  const int row = axis == Axis::pan ? 0 : 1;
  return {.drive = motor_drive(rig, parts),
          .gear = gear_train(parts),
          .load = {.inertia_kgm2 = mass_matrix_kgm2(bodies, 0)(row, row),
                   .coulomb_Nm = parts.friction.coulomb_Nm.value() + cable_friction_Nm(parts.cable),
                   .viscous_Nmsprad = parts.friction.viscous_Nmsprad.value(),
                   .gravity = gravity_curve(bodies, axis),
                   .cable_stiffness_Nmprad = cable_stiffness_Nmprad(parts.cable),
                   .cable_centre_rad = untwisted_rad(parts)},
          .control = axis_control(parts),
          .drive_speed_limit_radps = parts.drive.speed_limit_radps.value()};
}

double AxisLoad::largest_pull_Nm(double least_rad, double most_rad) const {
  GravityCurve with_cables = gravity;
  with_cables.constant_Nm += cable_stiffness_Nmprad * cable_centre_rad;
  return with_cables.largest_Nm(least_rad, most_rad, -cable_stiffness_Nmprad);
}

bool is_same(AxisModel a, AxisModel b) {
  for (double AxisControl::*limit :
       {&AxisControl::acceleration_limit_radps2, &AxisControl::jerk_limit_radps3})
    if (std::isnan(a.control.*limit) && std::isnan(b.control.*limit))
      a.control.*limit = b.control.*limit = 0;
  return a == b;
}

AxisModel counted_from(AxisModel model, double angle_rad) {
  GravityCurve& gravity = model.load.gravity;
  const double c = std::cos(angle_rad), s = std::sin(angle_rad), cos_Nm = gravity.cos_Nm;
  gravity.cos_Nm = c * cos_Nm + s * gravity.sin_Nm;
  gravity.sin_Nm = c * gravity.sin_Nm - s * cos_Nm;
  model.load.cable_centre_rad -= angle_rad;
  return model;
}

double count_rad(const AxisModel& model) {
  return 2 * std::numbers::pi / model.control.encoder_counts /
         (model.control.encoder_at_output ? 1 : model.gear.ratio);
}

double stall_torque_Nm(const AxisModel& model) {
  return lesser(model.gear.efficiency * model.gear.ratio * model.drive.torque_constant_NmpA *
                    driving_current_A(model.drive, 0),
                model.gear.peak_torque_Nm);
}

double top_speed_radps(const AxisModel& model) {
  // Kt·ω_m/1.5 = Vp at zero current.
  const double motor_radps = 1.5 * model.drive.phase_voltage_V() / model.drive.torque_constant_NmpA;
  return lesser(lesser(motor_radps, model.gear.input_speed_limit_radps) / model.gear.ratio,
                model.drive_speed_limit_radps);
}

double peak_acceleration_radps2(const AxisModel& model) {
  return (stall_torque_Nm(model) - held_back_Nm(model)) /
         (model.load.inertia_kgm2 + model.gear.efficiency * model.reflected_inertia_kgm2());
}

double best_acceleration_ratio(const AxisModel& model) {
  const double torque_Nm = model.drive.torque_constant_NmpA * driving_current_A(model.drive, 0);
  const double rotor_kgm2 = model.gear.efficiency * model.gear.rotor_inertia_kgm2;
  if (torque_Nm == 0 || rotor_kgm2 == 0) return kInfinity;
  const double hold_ratio = held_back_Nm(model) / (model.gear.efficiency * torque_Nm);
  return hold_ratio + std::hypot(hold_ratio, std::sqrt(model.load.inertia_kgm2 / rotor_kgm2));
}

}  // namespace gazewright
