#pragma once

#include <cmath>
#include <functional>

#include "core/bodies/bodies.h"
#include "core/rig/rig.h"

/// What the bearings of an axis carry: weight and inertia of all that the axis turns. Derivation
/// and what is left out: resources/handbook/loads.md.
namespace gazewright {

/// The fastest that an axis turns and speeds up or slows down, magnitudes at the output.
struct AxisMotion {
  double speed_radps = 0, acceleration_radps2 = 0;
};
/// Of both axes at the same time.
struct BothMotions {
  AxisMotion pan, tilt;
};
/// By tilt angle: pan speeds up the quicker the nearer the load is to its axis.
using MotionAt = std::function<BothMotions(double tilt_rad)>;

/// Magnitudes, each at its own worst pose and sign: radial force through the point of the axis
/// beside the centre of mass, force along the axis, moment across the axis about that point. The
/// torque along the axis is the drive's. Weight and each motion are added as magnitudes, which is
/// cautious.
struct CarriedLoad {
  double radial_N = 0, axial_N = 0, moment_Nm = 0;  ///< of weight and motion together
  double weight_radial_N = 0, weight_axial_N = 0, weight_moment_Nm = 0;

  /// Moment about a place of the axis that is so far from where the radial force acts, cautious.
  double moment_at_Nm(double away_m) const { return radial_N * std::abs(away_m) + moment_Nm; }
};

/// Worst over any pan angle and the tilt angles between `least` and `most`, both axes at their
/// fastest and speeding up or slowing down at once. Spinning rotors are left out.
/// Source: Newton's and Euler's laws for the bodies as points; checked against differences of
/// turned point masses in the tests. @pre least <= most, both finite.
CarriedLoad carried_load(const RigBodies& bodies, Axis axis, const MotionAt& motion,
                         double least_tilt_rad, double most_tilt_rad);

/// Where the centre of mass of all that an axis turns lies along that axis, from the origin of T,
/// where the lens is taken to be: up (pan, tilt at 0) or to the left (tilt). [m]
double centre_along_axis_m(const RigBodies& bodies, Axis axis);

}  // namespace gazewright
