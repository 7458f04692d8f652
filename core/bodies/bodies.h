#pragma once

#include <Eigen/Core>
#include <vector>

#include "core/rig/rig.h"

/// Mass properties of the two groups of bodies, and the rigid-body terms of the two-axis rig.
namespace gazewright {

inline constexpr double kStandardGravity_mps2 = 9.80665;

/// A rigid body or a group of them: C is its centre of mass, O the origin of the frame it is given
/// in.
struct MassProperties {
  double mass_kg = 0;
  Eigen::Vector3d p_OC_m = Eigen::Vector3d::Zero();
  Eigen::Matrix3d I_O_kgm2 =
      Eigen::Matrix3d::Zero();  ///< about O, tensor elements (products with their sign)
};

/// About the body's own centre, axes of the carrier. Source: handbook tables of solids
/// (resources/handbook/bodies.md).
/// @pre every quantity the shape needs has a value.
Eigen::Matrix3d inertia_about_centre_kgm2(const Shape& shape, double mass_kg);
/// The sum of bodies about the origin of their frame (parallel-axis theorem).
MassProperties combined(const std::vector<Body>& bodies);
/// Whether a tensor can belong to a body: positive semi-definite and each principal moment at most
/// the sum of the others.
bool is_possible_inertia(const Eigen::Matrix3d& inertia_kgm2);

/// Both groups, ready for the two-axis model. Angles: pan ψ about +z of B, tilt θ about −y of P
/// (positive looks up).
struct RigBodies {
  MassProperties on_pan;                             ///< in P
  MassProperties on_tilt;                            ///< in T
  Eigen::Vector3d p_PT_m = Eigen::Vector3d::Zero();  ///< origin of T in P (tilt.axis_at)
  double lean_rad = 0;
};
/// @pre masses, centres, shapes, axis_at and lean have values.
RigBodies rig_bodies(const Rig& rig);

/// M(q) of the bodies alone (no rotors), q = (ψ, θ); shape (2,2) [kg·m²].
Eigen::Matrix2d mass_matrix_kgm2(const RigBodies& bodies, double tilt_rad);
/// Torque of gravity on (pan, tilt) along +ψ and +θ: minus the gradient of the potential energy.
/// [N·m]
Eigen::Vector2d gravity_torque_Nm(const RigBodies& bodies, double pan_rad, double tilt_rad);
/// C(q, q̇)q̇: what M(q)q̈ + C q̇ = τ + gravity needs. [N·m]
Eigen::Vector2d velocity_torque_Nm(const RigBodies& bodies, double tilt_rad,
                                   const Eigen::Vector2d& rate_radps);

/// Gravity torque of one axis against its own angle, the other held still: exactly cos_Nm·cos q +
/// sin_Nm·sin q + constant_Nm.
struct GravityCurve {
  double cos_Nm = 0, sin_Nm = 0, constant_Nm = 0;
  double at(double angle_rad) const;
  /// Largest magnitude of at(q) + slope·q between two angles, exact; a slope adds a spring.
  /// @pre least <= most, both finite. [N·m]
  double largest_Nm(double least_rad, double most_rad, double slope_Nmprad = 0) const;
  bool operator==(const GravityCurve&) const = default;
};
/// @param other_rad  angle of the other axis.
GravityCurve gravity_curve(const RigBodies& bodies, Axis axis, double other_rad = 0);
/// Angles of the other axis at one of which gravity on `axis` is largest, whatever its own angle:
/// the torque follows a sinusoid of the other angle as a straight line does, so it is largest where
/// that is least or most. @param least_rad, most_rad  travel of the other axis, finite.
std::vector<double> telling_poses_rad(const RigBodies& bodies, Axis axis, double least_rad,
                                      double most_rad);

}  // namespace gazewright
