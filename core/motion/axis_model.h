#pragma once

#include <cmath>
#include <limits>
#include <numbers>

#include "core/bodies/bodies.h"
#include "core/drive/drive.h"
#include "core/rig/rig.h"

/// One axis as plain numbers: what the equations of design section 5 need and nothing else.
namespace gazewright {

struct GearTrain {
  double ratio = 1;  ///< N, motor speed over output speed
  double efficiency = 1, back_efficiency = 1;
  double rotor_inertia_kgm2 = 0;  ///< J_m: rotor + gearbox, at the input
  double backlash_rad = 0, stiffness_Nmprad = 0,
         damping_Nmsprad = 0;               ///< at the output; backlash is the full gap
  double drag_Nm = 0, viscous_Nmsprad = 0;  ///< at the input
  double peak_torque_Nm = kInfinity;        ///< at the output
  double input_speed_limit_radps = kInfinity;
  bool operator==(const GearTrain&) const = default;
};
struct AxisLoad {
  double inertia_kgm2 = 0;
  double coulomb_Nm = 0, viscous_Nmsprad = 0;  ///< the cables' friction is in coulomb_Nm
  GravityCurve gravity;
  double cable_stiffness_Nmprad = 0;  ///< of the cables, see core/motion/cable_torque.h
  double cable_centre_rad = 0;        ///< angle from the rest pose at which they are untwisted

  /// Torque of the cables' twist at an angle from the rest pose, along +φ. [N·m]
  double cable_Nm(double angle_rad) const {
    return -cable_stiffness_Nmprad * (angle_rad - cable_centre_rad);
  }
  /// All that pulls at an angle from the rest pose, whatever the speed: gravity and cables. [N·m]
  double pull_Nm(double angle_rad) const { return gravity.at(angle_rad) + cable_Nm(angle_rad); }
  /// Largest magnitude of that between two angles. [N·m] @pre finite
  double largest_pull_Nm(double least_rad, double most_rad) const;
  bool operator==(const AxisLoad&) const = default;
};
/// For limits that follow from the rest where nobody entered them.
inline constexpr double kNotEntered = std::numeric_limits<double>::quiet_NaN();
/// Friction that changes its sign at standstill grows straight up to these speeds of motor and load
/// (design section 5).
inline constexpr double kMotorSlope_radps = 0.5, kLoadSlope_radps = 0.01;
struct AxisControl {
  double control_rate_Hz = 0, current_bandwidth_Hz = 0;
  double encoder_counts = 0;  ///< 2^bits
  bool encoder_at_output = false;
  double position_gain_1ps = 0, speed_gain_Nmsprad = 0, speed_integral_gain_Nmprad = 0;
  double speed_limit_radps = kInfinity, estimator_bandwidth_Hz = 0;
  double speed_feed_forward = 0, acceleration_feed_forward = 0;
  double acceleration_limit_radps2 = kNotEntered, jerk_limit_radps3 = kNotEntered;

  /// Part of the estimate's gap that one sample closes: a of ω += a·(Δφ/dt − ω).
  double estimator_blend() const {
    return -std::expm1(-2 * std::numbers::pi * estimator_bandwidth_Hz * (1 / control_rate_Hz));
  }
  bool operator==(const AxisControl&) const = default;
};
struct AxisModel {
  MotorDrive drive;
  GearTrain gear;
  AxisLoad load;
  AxisControl control;
  double drive_speed_limit_radps = kInfinity;  ///< drive.speed_limit, output side

  double reflected_inertia_kgm2() const {
    return gear.ratio * gear.ratio * gear.rotor_inertia_kgm2;
  }
  /// Largest motor torque that the gearbox's peak torque allows, peak/(η·N). [N·m]
  double gear_torque_limit_Nm() const {
    return gear.peak_torque_Nm / (gear.efficiency * gear.ratio);
  }
  bool operator==(const AxisModel&) const = default;
};

/// Whether all numbers are equal, limits that nobody entered among them; never where others are
/// NaN.
bool is_same(AxisModel a, AxisModel b);

/// Numbers of one axis, with defaults already in `rig` (see with_defaults). Missing values become
/// NaN; the figures' list of inputs keeps them from being used. `load` is the inertia at θ = 0 and
/// gravity with the other axis at rest.
AxisModel axis_model(const Rig& rig, const RigBodies& bodies, Axis axis);

/// The same axis with its angle counted from another one.
AxisModel counted_from(AxisModel model, double angle_rad);

/// One count of the encoder at the output. [rad]
double count_rad(const AxisModel& model);
/// η·N·Kt·i at standstill from the envelope, at most the gearbox's peak torque. [N·m]
double stall_torque_Nm(const AxisModel& model);
/// Where the envelope reaches zero torque, m·V·KV/N, at most input_speed_limit/N and drive speed
/// limit. [rad/s] at the output
double top_speed_radps(const AxisModel& model);
/// (stall torque − coulomb − |gravity at rest pose|)/(load + η·reflected). [rad/s²]; may be
/// negative: cannot move. The cables' spring is left out, their friction is in.
double peak_acceleration_radps2(const AxisModel& model);
/// Ratio that maximises peak acceleration without the peak-torque cap; closed form, see Khurmi &
/// Gupta ex. 3.17 and the handbook.
double best_acceleration_ratio(const AxisModel& model);

}  // namespace gazewright
