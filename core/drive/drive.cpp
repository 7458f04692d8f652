#include "core/drive/drive.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/drive/current_limits.h"

// Derivation of every formula here: resources/handbook/drive.md.
namespace gazewright {
namespace {

/// Back-EMF, phase amplitude. [V]
double back_emf_V(const MotorDrive& drive, double motor_speed_radps) {
  return drive.torque_constant_NmpA * std::abs(motor_speed_radps) / 1.5;
}

/// p·|ω|·L. [Ω]
double reactance_ohm(const MotorDrive& drive, double motor_speed_radps) {
  return drive.pole_pairs * std::abs(motor_speed_radps) * drive.phase_inductance_H;
}

/// Power that the supply's current limit leaves, over 1.5. [W]
double supply_room_W(const MotorDrive& drive) {
  return drive.bus_voltage_V * drive.supply_current_limit_A / 1.5;
}

}  // namespace

double MotorDrive::phase_voltage_V() const {
  return modulation_limit * bus_voltage_V / std::numbers::sqrt3;
}

double torque_constant_NmpA(double speed_constant_radpsV) {
  return std::numbers::sqrt3 / 2 / speed_constant_radpsV;
}

double motor_constant_NmpsqrtW(double torque_constant, double phase_resistance_ohm) {
  return torque_constant / std::sqrt(1.5 * phase_resistance_ohm);
}

LimitedCurrent driving_limit(const MotorDrive& drive, double motor_speed_radps) {
  const double e_V = back_emf_V(drive, motor_speed_radps);
  const double bus_A =
      driving_bus_A(drive.phase_resistance_ohm, reactance_ohm(drive, motor_speed_radps), e_V,
                    drive.phase_voltage_V());
  const double by_supply_A = supply_A(drive.phase_resistance_ohm, e_V, supply_room_W(drive));
  LimitedCurrent limit{drive.current_limit_A, CurrentLimit::current};
  if (bus_A < limit.current_A) limit = {bus_A, CurrentLimit::bus_voltage};
  if (by_supply_A < limit.current_A) limit = {by_supply_A, CurrentLimit::supply_current};
  return limit;
}

double driving_current_A(const MotorDrive& drive, double motor_speed_radps) {
  return driving_limit(drive, motor_speed_radps).current_A;
}

double braking_current_A(const MotorDrive& drive, double motor_speed_radps) {
  return braking_bus_A(drive.phase_resistance_ohm, reactance_ohm(drive, motor_speed_radps),
                       back_emf_V(drive, motor_speed_radps), drive.phase_voltage_V(),
                       drive.current_limit_A);
}

TorqueRange torque_range(const MotorDrive& drive, double motor_speed_radps) {
  const double driving_Nm =
      drive.torque_constant_NmpA * driving_current_A(drive, motor_speed_radps);
  if (motor_speed_radps == 0) return {-driving_Nm, driving_Nm};
  const double braking_Nm =
      drive.torque_constant_NmpA * braking_current_A(drive, motor_speed_radps);
  return motor_speed_radps > 0 ? TorqueRange{-braking_Nm, driving_Nm}
                               : TorqueRange{-driving_Nm, braking_Nm};
}

double bus_power_W(const MotorDrive& drive, double current_A, double motor_speed_radps) {
  return 1.5 * drive.phase_resistance_ohm * current_A * current_A +
         drive.torque_constant_NmpA * current_A * motor_speed_radps;
}

}  // namespace gazewright
