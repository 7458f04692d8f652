#pragma once

#include <Eigen/Core>

/// The field of an encoder magnet: a disc magnetised across its diameter, its axis on the shaft,
/// with a sensor facing it that reads the direction of the field in its own plane.
namespace gazewright {

struct DiscMagnet {
  double diameter_m = 0, thickness_m = 0, remanence_T = 0;
};

/// Flux density at a place outside the magnet. [T]
/// @param p_FP_m  frame F: origin at the middle of the face towards the sensor, x along the
///                magnetisation, z out of that face
/// Uniform magnetisation M = Br/μ₀ leaves the surface charge M·cosφ on the rim and none elsewhere;
/// the height of the rim is integrated in closed form, its circumference by the rectangle rule
/// (periodic, so its error falls with (r/R)³²). Left out: iron nearby, which bends the field.
/// @pre the place is not on the rim.
/// Source: magnetic surface charge, any text on magnetostatics; handbook: homing.
Eigen::Vector3d magnet_field_T(const DiscMagnet& magnet, const Eigen::Vector3d& p_FP_m);

/// Magnitude on the axis, in the plane of the face, `gap_m` off it:
/// (Br/4)·[(z + L)/√((z + L)² + R²) − z/√(z² + R²)]. Outside the magnet the field's gradient tensor
/// has no trace, so it is half of what a disc magnetised along its axis gives there. [T]
double magnet_axis_field_T(const DiscMagnet& magnet, double gap_m);

/// Largest error of the angle that a point sensor reads, its constant part set to zero: half the
/// range over a turn of the magnet, for the worst direction of tilt against offset. [rad], at the
/// encoder's own shaft.
/// @param offset_m  from the magnet's axis to the sensing point, standing still while the magnet
///                  turns. An offset of the magnet alone, turning with the shaft before a sensor on
///                  the axis, gives a constant part only; so this is the worse of the two.
/// @param tilt_rad  between the sensor's plane and the magnet's face
/// Covers fields and geometry. Left out: sensors that take differences between elements some
/// millimetres apart, stray fields, iron, a magnet magnetised askew.
/// @pre offset_m < diameter_m / 2, gap_m > 0
double magnet_angle_error_rad(const DiscMagnet& magnet, double gap_m, double offset_m,
                              double tilt_rad);

/// Largest error of a ring or scale read at its rim, whose centre is `offset_m` off the axis: e/R.
/// [rad] For small e/R; the exact value is asin(e/R).
double eccentricity_error_rad(double offset_m, double radius_m);

}  // namespace gazewright
