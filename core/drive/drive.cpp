#include "core/drive/drive.h"

#include <algorithm>
#include <cmath>
#include <numbers>

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

/// Largest i with (R·i + e)² + (X·i)² ≤ Vp²; the root is written without a difference of like
/// numbers.
double driving_bus_A(double R_ohm, double X_ohm, double e_V, double phase_V) {
  if (e_V >= phase_V) return 0;
  const double room_V2 = (phase_V - e_V) * (phase_V + e_V);
  const double below_V2 =
      R_ohm * e_V + std::sqrt(R_ohm * R_ohm * phase_V * phase_V + X_ohm * X_ohm * room_V2);
  return below_V2 > 0 ? room_V2 / below_V2 : kInfinity;
}

/// Largest i with 1.5·i·(R·i + e) ≤ V·I_supply.
double supply_A(const MotorDrive& drive, double e_V) {
  if (std::isinf(drive.supply_current_limit_A)) return kInfinity;
  const double room_W = drive.bus_voltage_V * drive.supply_current_limit_A / 1.5;
  const double below_V = e_V + std::sqrt(e_V * e_V + 4 * drive.phase_resistance_ohm * room_W);
  if (below_V > 0) return 2 * room_W / below_V;
  return drive.phase_resistance_ohm > 0 ? 0 : kInfinity;  // no power to give, or none needed
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
  const double by_supply_A = supply_A(drive, e_V);
  LimitedCurrent limit{drive.current_limit_A, CurrentLimit::current};
  if (bus_A < limit.current_A) limit = {bus_A, CurrentLimit::bus_voltage};
  if (by_supply_A < limit.current_A) limit = {by_supply_A, CurrentLimit::supply_current};
  return limit;
}

double driving_current_A(const MotorDrive& drive, double motor_speed_radps) {
  return driving_limit(drive, motor_speed_radps).current_A;
}

/// Larger root of (R·i − e)² + (X·i)² = Vp².
double braking_current_A(const MotorDrive& drive, double motor_speed_radps) {
  const double R_ohm = drive.phase_resistance_ohm;
  const double X_ohm = reactance_ohm(drive, motor_speed_radps);
  const double e_V = back_emf_V(drive, motor_speed_radps), phase_V = drive.phase_voltage_V();
  const double room_V2 = (phase_V - e_V) * (phase_V + e_V);  // negative above the no-load speed
  const double impedance_ohm2 = R_ohm * R_ohm + X_ohm * X_ohm;
  if (impedance_ohm2 == 0) return room_V2 >= 0 ? drive.current_limit_A : 0;
  const double under_root_V4 = R_ohm * R_ohm * phase_V * phase_V + X_ohm * X_ohm * room_V2;
  if (under_root_V4 < 0) return 0;
  return std::min((R_ohm * e_V + std::sqrt(under_root_V4)) / impedance_ohm2, drive.current_limit_A);
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
