#include "core/bodies/two_axis.h"

// Derivation of every formula here: resources/handbook/bodies.md.
namespace gazewright {

TwoAxisEquations::TwoAxisEquations(const RigBodies& bodies) {
  const MassProperties &pan = bodies.on_pan, &tilt = bodies.on_tilt;
  const Eigen::Matrix3d& I = tilt.I_O_kgm2;
  const Eigen::Vector3d moment_kgm = tilt.mass_kg * tilt.p_OC_m;  // in T, about the tilt axis
  const Eigen::Vector3d& a = bodies.p_PT_m;
  Ixx_ = I(0, 0), Iyy_ = I(1, 1), Izz_ = I(2, 2);
  Ixy_ = I(0, 1), Ixz_ = I(0, 2), Iyz_ = I(1, 2);
  x_kgm_ = moment_kgm.x(), z_kgm_ = moment_kgm.z();
  at_x_m_ = a.x(), at_y_m_ = a.y();
  pan_kgm2_ = pan.I_O_kgm2(2, 2) + tilt.mass_kg * (a.x() * a.x() + a.y() * a.y()) +
              2 * a.y() * moment_kgm.y();
  all_x_kgm_ = pan.mass_kg * pan.p_OC_m.x() + tilt.mass_kg * a.x();
  all_y_kgm_ = pan.mass_kg * pan.p_OC_m.y() + tilt.mass_kg * a.y() + moment_kgm.y();
  forward_mps2_ = kStandardGravity_mps2 * std::sin(bodies.lean_rad);  // along x of B
  down_mps2_ = kStandardGravity_mps2 * std::cos(bodies.lean_rad);
}

Eigen::Matrix2d mass_matrix_kgm2(const RigBodies& bodies, double tilt_rad) {
  const MassTerms m = TwoAxisEquations(bodies).mass(Turn::of(tilt_rad));
  Eigen::Matrix2d matrix;
  matrix << m.pan_kgm2, m.both_kgm2, m.both_kgm2, m.tilt_kgm2;
  return matrix;
}

Eigen::Vector2d velocity_torque_Nm(const RigBodies& bodies, double tilt_rad,
                                   const Eigen::Vector2d& rate_radps) {
  const MassTerms m = TwoAxisEquations(bodies).mass(Turn::of(tilt_rad));
  const PanTilt torque = m.velocity_torque_Nm({rate_radps(0), rate_radps(1)});
  return {torque.pan, torque.tilt};
}

Eigen::Vector2d gravity_torque_Nm(const RigBodies& bodies, double pan_rad, double tilt_rad) {
  const PanTilt torque =
      TwoAxisEquations(bodies).gravity_torque_Nm(Turn::of(pan_rad), Turn::of(tilt_rad));
  return {torque.pan, torque.tilt};
}

double GravityCurve::at(double angle_rad) const {
  return cos_Nm * std::cos(angle_rad) + sin_Nm * std::sin(angle_rad) + constant_Nm;
}

/// gravity_torque_Nm with the other angle 0, its terms sorted by cos q and sin q.
GravityCurve gravity_curve(const RigBodies& bodies, Axis axis) {
  const double forward_mps2 = kStandardGravity_mps2 * std::sin(bodies.lean_rad);
  const double down_mps2 = kStandardGravity_mps2 * std::cos(bodies.lean_rad);
  const Eigen::Vector3d tilt_kgm = bodies.on_tilt.mass_kg * bodies.on_tilt.p_OC_m;
  if (axis == Axis::tilt)
    return {.cos_Nm = -forward_mps2 * tilt_kgm.z() - down_mps2 * tilt_kgm.x(),
            .sin_Nm = -forward_mps2 * tilt_kgm.x() + down_mps2 * tilt_kgm.z()};
  const Eigen::Vector3d all_kgm = bodies.on_pan.mass_kg * bodies.on_pan.p_OC_m + tilt_kgm +
                                  bodies.on_tilt.mass_kg * bodies.p_PT_m;
  return {.cos_Nm = -forward_mps2 * all_kgm.y(), .sin_Nm = -forward_mps2 * all_kgm.x()};
}

}  // namespace gazewright
