#pragma once

#include <numbers>

#include "core/motion/axis_model.h"

/// A direct-current motor as our model sees it: 1.5 times the phase equation, V_dc = R_dc·i + K·ω
/// with V_dc = 1.5·Vp and R_dc = 1.5·R. So worked examples of direct-current motors bind our
/// envelope. Limits that an example has none of are infinite.
namespace gazewright::tests {

inline MotorDrive direct_current_motor(double constant_NmpA, double resistance_ohm,
                                       double voltage_V) {
  return {.torque_constant_NmpA = constant_NmpA,
          .phase_resistance_ohm = resistance_ohm / 1.5,
          .phase_inductance_H = 0,
          .pole_pairs = 1,
          .current_limit_A = kInfinity,
          .bus_voltage_V = voltage_V * std::numbers::sqrt3 / 1.5,
          .modulation_limit = 1,
          .supply_current_limit_A = kInfinity};
}
/// A motor that gives this torque at any speed.
inline MotorDrive torque_source(double torque_Nm) {
  MotorDrive drive = direct_current_motor(1, 0, 1e6);
  drive.current_limit_A = torque_Nm;
  return drive;
}

constexpr double kRadpsPerRpm = 2 * std::numbers::pi / 60;

}  // namespace gazewright::tests
