#pragma once

#include <algorithm>
#include <cmath>

#include "core/motion/drive_train.h"
#include "core/motion/rosenbrock.h"

/// The equations of motion of design section 5 with their constants worked out beforehand.
namespace gazewright {

/// Motor torque within the torque-speed envelope and the gearbox's peak torque.
class ActingTorque {
 public:
  explicit ActingTorque(const AxisModel& model)
      : drive_(model.drive),
        most_A_(std::min(model.drive.current_limit_A,
                         model.gear_torque_limit_Nm() / model.drive.torque_constant_NmpA)),
        phase_V2_(model.drive.phase_voltage_V() * model.drive.phase_voltage_V()),
        supply_W_(model.drive.bus_voltage_V * model.drive.supply_current_limit_A / 1.5),
        emf_Vsprad_(model.drive.torque_constant_NmpA / 1.5),
        reactance_ohmsprad_(model.drive.pole_pairs * model.drive.phase_inductance_H),
        per_torque_constant_(1 / model.drive.torque_constant_NmpA) {}

  /// The torque nearest to `wanted_Nm` that may act. Most calls end without a square root: the
  /// wanted current is tried in the voltage and power limits first.
  double at(double wanted_Nm, double motor_radps) const {
    const double wanted_A = std::abs(wanted_Nm) * per_torque_constant_;
    const double current_A = std::min(wanted_A, most_A_);
    const bool driving = wanted_Nm * motor_radps >= 0;
    const double w = std::abs(motor_radps);
    const double e_V = driving ? emf_Vsprad_ * w : -emf_Vsprad_ * w;
    const double in_phase_V = drive_.phase_resistance_ohm * current_A + e_V;
    const double quadrature_V = reactance_ohmsprad_ * w * current_A;
    const bool allowed = in_phase_V * in_phase_V + quadrature_V * quadrature_V <= phase_V2_ &&
                         (!driving || current_A * in_phase_V <= supply_W_);
    if (allowed && current_A == wanted_A) return wanted_Nm;
    const double least_A = allowed ? current_A : std::min(current_A, limit_A(driving, w));
    return std::copysign(drive_.torque_constant_NmpA * least_A, wanted_Nm);
  }

 private:
  double limit_A(bool driving, double w) const {
    return driving ? driving_current_A(drive_, w) : braking_current_A(drive_, w);
  }

  MotorDrive drive_;
  double most_A_, phase_V2_, supply_W_, emf_Vsprad_, reactance_ohmsprad_, per_torque_constant_;
};

/// Motor and load with the gear between them. A step starts at φ = 0, so gravity and cables are
/// taken at φ − move/2.
class AxisDynamics {
 public:
  using Number = double;

  AxisDynamics(const AxisModel& model, double move_rad)
      : acting_torque(model),
        train_({&model}),
        load_(model.load),
        per_load_(1 / model.load.inertia_kgm2),
        gravity_at_rad_(-move_rad / 2),
        untwisted_rad_(model.load.cable_centre_rad + move_rad / 2),
        weighs_(model.load.gravity.cos_Nm != 0 || model.load.gravity.sin_Nm != 0) {
    centre(0);
  }

  /// Prepares the series of gravity about this angle; it is exact to 1e-8 of itself within 0.02
  /// rad.
  void centre(double angle_rad) {
    if (std::abs(angle_rad - centre_rad_) < 2e-3) return;
    centre_rad_ = angle_rad;
    if (!weighs_) return;
    const double q = angle_rad + gravity_at_rad_, c = std::cos(q), s = std::sin(q);
    gravity_Nm_ = load_.gravity.cos_Nm * c + load_.gravity.sin_Nm * s;
    gravity_slope_Nmprad_ = load_.gravity.sin_Nm * c - load_.gravity.cos_Nm * s;
  }

  double gravity_Nm(double angle_rad) const {
    if (!weighs_) return load_.gravity.constant_Nm;
    const double x = angle_rad - centre_rad_, x2 = x * x;
    if (x2 > 4e-4) return load_.gravity.at(angle_rad + gravity_at_rad_);
    return load_.gravity.constant_Nm + gravity_Nm_ * (1 - x2 / 2) +
           gravity_slope_Nmprad_ * x * (1 - x2 / 6);
  }

  /// Torque of the cables' twist, untwisted at their centre. [N·m]
  double cable_Nm(double angle_rad) const {
    return -load_.cable_stiffness_Nmprad * (angle_rad - untwisted_rad_);
  }

  /// (dω_m/dt, dω/dt) with the torque T_e that the current loop would give. [rad/s²]
  [[gnu::always_inline]] MotorAndLoad acceleration(double torque_Nm, MotorAndLoad angle,
                                                   MotorAndLoad speed) const {
    const double tooth = train_.tooth_torque_Nm(angle, speed);
    const double acting = acting_torque.at(torque_Nm, speed.motor);
    const double load =
        train_.moving_Nm(tooth, speed.load) + gravity_Nm(angle.load) + cable_Nm(angle.load);
    return {train_.motor_radps2(acting, tooth, speed.motor), load * per_load_};
  }

  /// A number for the branch of each of the model's case distinctions, the envelope's among them.
  unsigned region(double torque_Nm, MotorAndLoad angle, MotorAndLoad speed) const {
    const bool limited = acting_torque.at(torque_Nm, speed.motor) != torque_Nm;
    return train_.region(angle, speed) << 1 | bits_of(limited);
  }

  AccelerationSlopes<2> slopes(double torque_Nm, double torque_slope_Nmps, MotorAndLoad angle,
                               MotorAndLoad speed) const;

  ActingTorque acting_torque;

 private:
  DriveTrain<double> train_;
  AxisLoad load_;
  double per_load_, gravity_at_rad_, untwisted_rad_;
  bool weighs_;
  double centre_rad_ = kInfinity, gravity_Nm_ = 0, gravity_slope_Nmprad_ = 0;
};

}  // namespace gazewright
