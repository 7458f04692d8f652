#include "core/bodies/two_axis.h"

#include <algorithm>
#include <cmath>
#include <numbers>

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

double GravityCurve::largest_Nm(double least_rad, double most_rad, double slope_Nmprad) const {
  const auto magnitude = [&](double q) { return std::abs(at(q) + slope_Nmprad * q); };
  double largest = std::max(magnitude(least_rad), magnitude(most_rad));
  const double swing_Nm = std::hypot(cos_Nm, sin_Nm);
  if (swing_Nm == 0 || !(std::abs(slope_Nmprad) <= swing_Nm)) return largest;
  // Level where sin(q − phase) = slope/swing. From turn to turn such a place only gains what the
  // slope adds, so the first and the last of a kind tell.
  constexpr double kTurn_rad = 2 * std::numbers::pi;
  const double phase = std::atan2(sin_Nm, cos_Nm), aside = std::asin(slope_Nmprad / swing_Nm);
  for (const double level : {phase + aside, phase + std::numbers::pi - aside}) {
    const double first = level + kTurn_rad * std::ceil((least_rad - level) / kTurn_rad);
    const double last = level + kTurn_rad * std::floor((most_rad - level) / kTurn_rad);
    if (first <= last) largest = std::max({largest, magnitude(first), magnitude(last)});
  }
  return largest;
}

/// gravity_torque_Nm, its terms sorted by cos q and sin q.
GravityCurve gravity_curve(const RigBodies& bodies, Axis axis, double other_rad) {
  const double c = std::cos(other_rad), s = std::sin(other_rad);
  const double forward_mps2 = kStandardGravity_mps2 * std::sin(bodies.lean_rad);
  const double down_mps2 = kStandardGravity_mps2 * std::cos(bodies.lean_rad);
  const Eigen::Vector3d tilt_kgm = bodies.on_tilt.mass_kg * bodies.on_tilt.p_OC_m;
  if (axis == Axis::tilt)
    return {.cos_Nm = -forward_mps2 * c * tilt_kgm.z() - down_mps2 * tilt_kgm.x(),
            .sin_Nm = -forward_mps2 * c * tilt_kgm.x() + down_mps2 * tilt_kgm.z()};
  const Eigen::Vector3d still_kgm =
      bodies.on_pan.mass_kg * bodies.on_pan.p_OC_m + bodies.on_tilt.mass_kg * bodies.p_PT_m;
  const double x_kgm = still_kgm.x() + c * tilt_kgm.x() - s * tilt_kgm.z();
  return {.cos_Nm = -forward_mps2 * (still_kgm.y() + tilt_kgm.y()),
          .sin_Nm = -forward_mps2 * x_kgm};
}

std::vector<double> telling_poses_rad(const RigBodies& bodies, Axis axis, double least_rad,
                                      double most_rad) {
  const Eigen::Vector3d& centre = bodies.on_tilt.p_OC_m;
  // Tilt's torque goes with cos ψ, pan's with x·cos θ − z·sin θ.
  const double phase = axis == Axis::tilt ? 0 : std::atan2(-centre.z(), centre.x());
  std::vector<double> poses{least_rad, most_rad};
  const double first = phase + std::numbers::pi * std::ceil((least_rad - phase) / std::numbers::pi);
  for (const double pose : {first, first + std::numbers::pi})
    if (pose <= most_rad) poses.push_back(pose);
  return poses;
}

}  // namespace gazewright
