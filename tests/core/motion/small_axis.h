#pragma once

#include "core/motion/axis_model.h"

namespace gazewright::tests {

/// A small axis of invented data with everything in it: gap, losses, friction, gravity.
inline AxisModel small_axis() {
  AxisModel axis;
  axis.drive = {.torque_constant_NmpA = 0.02017,
                .phase_resistance_ohm = 0.062,
                .phase_inductance_H = 28e-6,
                .pole_pairs = 7,
                .current_limit_A = 30,
                .bus_voltage_V = 24,
                .modulation_limit = 0.95,
                .supply_current_limit_A = 15};
  axis.gear = {.ratio = 18,
               .efficiency = 0.9,
               .back_efficiency = 0.88,
               .rotor_inertia_kgm2 = 1.3e-5,
               .backlash_rad = 0.0046,
               .stiffness_Nmprad = 900,
               .damping_Nmsprad = 0.4,
               .drag_Nm = 6e-3,
               .viscous_Nmsprad = 20e-6,
               .peak_torque_Nm = 12};
  axis.load = {.inertia_kgm2 = 6e-4,
               .coulomb_Nm = 0.04,
               .viscous_Nmsprad = 0.004,
               .gravity = {.cos_Nm = -0.02, .sin_Nm = -0.001}};
  axis.control = {.control_rate_Hz = 8000,
                  .current_bandwidth_Hz = 1000,
                  .encoder_counts = 16384,
                  .position_gain_1ps = 30,
                  .speed_gain_Nmsprad = 0.9,
                  .speed_integral_gain_Nmprad = 12,
                  .speed_limit_radps = 15.7,
                  .estimator_bandwidth_Hz = 400};
  return axis;
}

/// The same without gap, losses, friction, gravity and limits: linear but for the encoder's counts.
inline AxisModel linear_axis() {
  AxisModel axis = small_axis();
  axis.drive.current_limit_A = 1e30;
  axis.drive.bus_voltage_V = 1e30;
  axis.drive.supply_current_limit_A = kInfinity;
  axis.gear.efficiency = axis.gear.back_efficiency = 1;
  axis.gear.backlash_rad = axis.gear.drag_Nm = axis.gear.viscous_Nmsprad = 0;
  axis.gear.peak_torque_Nm = kInfinity;
  axis.load.coulomb_Nm = axis.load.viscous_Nmsprad = 0;
  axis.load.gravity = {};
  axis.control.encoder_counts = 0x1p40;
  axis.control.speed_limit_radps = kInfinity;
  return axis;
}

/// 2 kg·m² without friction.
inline AxisModel flywheel() {
  AxisModel axis = linear_axis();
  axis.gear.ratio = 1;
  axis.gear.rotor_inertia_kgm2 = 0.5;
  axis.load.inertia_kgm2 = 1.5;
  return axis;
}

/// 1.5 kg·m² that their motor brakes at the same rate at any speed.
inline AxisModel braked_at(double radps2) {
  AxisModel axis = flywheel();
  axis.load.inertia_kgm2 = 1;
  axis.drive.current_limit_A = 1.5 * radps2 / axis.drive.torque_constant_NmpA;
  return axis;
}

}  // namespace gazewright::tests
