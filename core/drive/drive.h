#pragma once

#include "core/rig/rig.h"

/// Motor, drive and supply as numbers: constants and the torque-speed envelope of design section 5.
namespace gazewright {

/// Everything the envelope needs. Currents and voltages are phase amplitudes.
struct MotorDrive {
  double torque_constant_NmpA = 0;  ///< per ampere of phase-current amplitude
  double phase_resistance_ohm = 0, phase_inductance_H = 0, pole_pairs = 0;
  double current_limit_A = 0;        ///< min of drive limit and motor peak
  bool motor_peak_is_least = false;  ///< it is the motor's peak that limits
  double bus_voltage_V = 0, modulation_limit = 0;
  double supply_current_limit_A = 0;  ///< may be infinite

  double phase_voltage_V() const;  ///< m·V/√3
  bool operator==(const MotorDrive&) const = default;
};

/// Kt = (√3/2)·60/(2π·KV) for KV in rpm per volt of line-to-line amplitude, i.e. (√3/2)/KV in SI.
/// [N·m/A]
double torque_constant_NmpA(double speed_constant_radpsV);
/// Km = Kt/√(1.5·R). [N·m/√W]
double motor_constant_NmpsqrtW(double torque_constant, double phase_resistance_ohm);

/// Largest phase-current amplitude that current limit, bus voltage and (driving only) the supply's
/// current limit allow. [A], never negative.
double driving_current_A(const MotorDrive& drive, double motor_speed_radps);
double braking_current_A(const MotorDrive& drive, double motor_speed_radps);

/// What limits the current, in the order of section 5; for marks on curves.
enum class CurrentLimit { current, bus_voltage, supply_current };
struct LimitedCurrent {
  double current_A;
  CurrentLimit by;
};
LimitedCurrent driving_limit(const MotorDrive& drive, double motor_speed_radps);

/// Range of motor torque that may act at a (signed) motor speed, before the gearbox's peak torque.
/// [N·m]
struct TorqueRange {
  double least_Nm, most_Nm;
};
TorqueRange torque_range(const MotorDrive& drive, double motor_speed_radps);

/// Electrical power from the bus (negative: returned): 1.5·R·i² + T·ω. [W]
double bus_power_W(const MotorDrive& drive, double current_A, double motor_speed_radps);

}  // namespace gazewright
