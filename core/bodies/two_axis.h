#pragma once

#include <Eigen/Core>
#include <cmath>

#include "core/bodies/bodies.h"

/// The equations of bodies.md with their constants worked out beforehand, for simulations: they
/// take the cosines and sines of the angles, which hardly change from step to step.
namespace gazewright {

/// Cosine and sine of an angle.
struct Turn {
  double c = 1, s = 0;

  static Turn of(double angle_rad) { return {std::cos(angle_rad), std::sin(angle_rad)}; }
  /// Turned on by an angle, by series within 0.02 rad: exact to 1e-13.
  Turn by(double x) const {
    const double x2 = x * x;
    if (!(x2 <= 4e-4)) return on({std::cos(x), std::sin(x)});
    const double cosine = 1 - x2 / 2 * (1 - x2 / 12), sine = x * (1 - x2 / 6 * (1 - x2 / 20));
    return on({cosine, sine});
  }

 private:
  Turn on(Turn by) const { return {c * by.c - s * by.s, s * by.c + c * by.s}; }
};

/// A number of pan and one of tilt.
struct PanTilt {
  double pan = 0, tilt = 0;
};
inline PanTilt operator+(PanTilt a, PanTilt b) { return {a.pan + b.pan, a.tilt + b.tilt}; }
inline PanTilt operator-(PanTilt a, PanTilt b) { return {a.pan - b.pan, a.tilt - b.tilt}; }
inline PanTilt operator*(double x, PanTilt a) { return {x * a.pan, x * a.tilt}; }

/// M and its slopes by θ.
struct MassTerms {
  double pan_kgm2, both_kgm2, tilt_kgm2;   ///< M11, M12, M22
  double pan_slope_kgm2, both_slope_kgm2;  ///< dM11/dθ, dM12/dθ; M22 is constant

  /// C(q, q̇)q̇. [N·m]
  PanTilt velocity_torque_Nm(PanTilt rate_radps) const {
    const double pan = rate_radps.pan, tilt = rate_radps.tilt;
    return {(pan_slope_kgm2 * pan + both_slope_kgm2 * tilt) * tilt,
            -pan_slope_kgm2 * pan * pan / 2};
  }
  /// M⁻¹ · torque. [rad/s²]; not finite where the bodies have no inertia about some axis.
  PanTilt accelerations_radps2(PanTilt torque_Nm) const {
    const double per_det = 1 / (pan_kgm2 * tilt_kgm2 - both_kgm2 * both_kgm2);
    return {(tilt_kgm2 * torque_Nm.pan - both_kgm2 * torque_Nm.tilt) * per_det,
            (pan_kgm2 * torque_Nm.tilt - both_kgm2 * torque_Nm.pan) * per_det};
  }
};

class TwoAxisEquations {
 public:
  explicit TwoAxisEquations(const RigBodies& bodies);

  MassTerms mass(Turn tilt) const {
    const auto [c, s] = tilt;
    const double forward_kgm = c * x_kgm_ - s * z_kgm_, up_kgm = s * x_kgm_ + c * z_kgm_;
    const double xy = s * c, xx = s * s, zz = c * c;
    return {
        .pan_kgm2 = pan_kgm2_ + 2 * at_x_m_ * forward_kgm + xx * Ixx_ + 2 * xy * Ixz_ + zz * Izz_,
        .both_kgm2 = at_y_m_ * up_kgm - (s * Ixy_ + c * Iyz_),
        .tilt_kgm2 = Iyy_,
        .pan_slope_kgm2 = -2 * at_x_m_ * up_kgm + 2 * xy * (Ixx_ - Izz_) + 2 * (zz - xx) * Ixz_,
        .both_slope_kgm2 = at_y_m_ * forward_kgm - (c * Ixy_ - s * Iyz_)};
  }
  /// Torque of gravity along +ψ and +θ. [N·m]
  PanTilt gravity_torque_Nm(Turn pan, Turn tilt) const {
    const double tilt_forward_kgm = tilt.c * x_kgm_ - tilt.s * z_kgm_;
    const double tilt_up_kgm = tilt.s * x_kgm_ + tilt.c * z_kgm_;
    return {-forward_mps2_ * (pan.s * (all_x_kgm_ + tilt_forward_kgm) + pan.c * all_y_kgm_),
            -forward_mps2_ * pan.c * tilt_up_kgm - down_mps2_ * tilt_forward_kgm};
  }
  /// q̈ under torques at the outputs. [rad/s²]
  PanTilt accelerations_radps2(Turn pan, Turn tilt, PanTilt rate_radps, PanTilt torque_Nm) const {
    const MassTerms m = mass(tilt);
    return m.accelerations_radps2(torque_Nm + gravity_torque_Nm(pan, tilt) -
                                  m.velocity_torque_Nm(rate_radps));
  }
  /// Whether gravity depends on the pan angle.
  bool leans() const { return forward_mps2_ != 0; }

 private:
  double Ixx_, Iyy_, Izz_, Ixy_, Ixz_, Iyz_;  // of the tilt bodies about T, in T
  double x_kgm_, z_kgm_;                      // their first moment about T, in T
  double at_x_m_, at_y_m_;                    // origin of T in P
  double pan_kgm2_;                           // the part of M11 that does not change
  double all_x_kgm_, all_y_kgm_;  // first moment about the pan axis less what turns with tilt, in P
  double forward_mps2_, down_mps2_;  // gravity in B
};

}  // namespace gazewright
