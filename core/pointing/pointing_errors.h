#pragma once

#include <algorithm>
#include <cmath>

#include "core/motion/axis_model.h"

/// Errors of one axis at its output, each as its largest size each way. [rad]
/// Derivations: resources/handbook/pointing.md.
namespace gazewright {

/// What the reading is off by: the encoder's error and half a count, of its own shaft, through the
/// ratio where it is at the motor.
struct ReadingError {
  double error_rad = 0;       ///< ≥ 0, comes once a turn: arcsine
  double half_count_rad = 0;  ///< rectangular
  double half_width_rad() const { return error_rad + half_count_rad; }
  double deviation_rad() const;
};
ReadingError reading_error(const AxisModel& model, double error_rad, bool at_output);

/// Angle by which the shaft of two bearings may lie askew: each gives way by half its radial play,
/// to opposite sides. @param play_m  of one bearing, from side to side; @param spacing_m > 0
double pair_tilt_rad(double play_m, double spacing_m);
/// The same of one bearing that bears the moment: its rings gape by half the axial play each side.
/// @param pitch_diameter_m > 0
double ring_tilt_rad(double axial_play_m, double pitch_diameter_m);

/// What friction holds at standstill: it leaves the gear wound up by up to the breakaway torque,
/// which an encoder at the output sees, and the loops off their aim.
struct FrictionError {
  double windup_rad = 0;  ///< breakaway/stiffness
  double stuck_rad = 0;   ///< half a jump of stick-slip; without an integral breakaway/(Kv·Kp)
};
/// @param falling_Nm  breakaway less Coulomb friction, >= 0. @pre gains and stiffness > 0
FrictionError friction_error(const AxisModel& model, double falling_Nm);

/// What a lasting torque moves loops without an integral by; 0 where there is one. [rad]
double loop_droop_rad(const AxisModel& model, double torque_Nm);

/// Least and most of what gravity and the cables' spring pull with, along +φ. [N·m]
struct PullRange {
  double least_Nm = 0, most_Nm = 0;
  double largest_Nm() const { return std::max(std::abs(least_Nm), std::abs(most_Nm)); }
  /// What presses the teeth together everywhere: 0 where the pull changes its sign.
  double steady_Nm() const { return std::max({0.0, least_Nm, -most_Nm}); }
};
/// Over a stretch of angles at the output. @pre finite, least <= most
PullRange pull_range(const AxisLoad& load, double least_rad, double most_rad);

}  // namespace gazewright
