#include "core/loads/carried.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

constexpr int kPoses = 33;  // over a turn a pose is missed by at most 5.7°: 0.5 % of a magnitude

/// Mass and first and second moments ∫r dm, ∫r·rᵀ dm about the origin of a frame.
struct Moments {
  double mass_kg = 0;
  Eigen::Vector3d first_kgm = Eigen::Vector3d::Zero();
  Eigen::Matrix3d second_kgm2 = Eigen::Matrix3d::Zero();
};

Moments moments_of(const MassProperties& body) {
  return {body.mass_kg, body.mass_kg * body.p_OC_m,
          body.I_O_kgm2.trace() / 2 * Eigen::Matrix3d::Identity() - body.I_O_kgm2};
}

/// Turned by the tilt angle: from T into axes of P, about the same origin.
Moments tilted(const Moments& m, double tilt_rad) {
  const double c = std::cos(tilt_rad), s = std::sin(tilt_rad);
  Eigen::Matrix3d R;
  R << c, 0, -s, 0, 1, 0, s, 0, c;
  return {m.mass_kg, R * m.first_kgm, R * m.second_kgm2 * R.transpose()};
}

/// Factor of a mass and its arm about an axis: √(α² + ω⁴), tangential and centripetal. [rad/s²]
double about_axis(const AxisMotion& m) {
  return std::hypot(m.acceleration_radps2, m.speed_radps * m.speed_radps);
}

struct Push {
  double radial_N = 0, axial_N = 0, moment_Nm = 0;
};

/// On the bearings of pan, whose axis is z of P. `t` tilts about the point `at` of P; see the
/// handbook for the terms.
Push on_pan(const Moments& fixed, const Moments& t, const Eigen::Vector3d& at,
            const BothMotions& motion, double lean_rad, bool with_weight) {
  const double mass = fixed.mass_kg + t.mass_kg;
  const Eigen::Vector3d first = fixed.first_kgm + t.first_kgm + t.mass_kg * at;
  const double off_kgm = std::hypot(first.x(), first.y());
  if (with_weight) {
    const double along = kStandardGravity_mps2 * std::abs(std::cos(lean_rad));
    return {mass * kStandardGravity_mps2 * std::abs(std::sin(lean_rad)), mass * along,
            along * off_kgm};
  }
  const Eigen::Matrix3d second = fixed.second_kgm2 + t.second_kgm2 + at * t.first_kgm.transpose() +
                                 t.first_kgm * at.transpose() + t.mass_kg * at * at.transpose();
  const double height = mass > 0 ? first.z() / mass : 0;
  const double turning = about_axis(motion.pan);
  const double uneven_kgm2 =
      std::hypot(second(0, 2) - height * first.x(), second(1, 2) - height * first.y());
  const double a = motion.tilt.acceleration_radps2;
  const double w2 = motion.tilt.speed_radps * motion.tilt.speed_radps;
  const double both = 2 * motion.pan.speed_radps * motion.tilt.speed_radps;
  const Eigen::Vector3d& s = t.first_kgm;
  const Eigen::Matrix3d& S = t.second_kgm2;
  const double h = at.z() - height;
  double tilting_Nm = 0;
  for (const double sign : {-a, a}) {
    const double x = std::abs(sign * (S(0, 1) + at.y() * s.x()) - w2 * (S(1, 2) + at.y() * s.z())) +
                     std::abs(both * (S(2, 2) + h * s.z()));
    const double y =
        sign * (S(0, 0) + S(2, 2) + h * s.z() + at.x() * s.x()) + w2 * (h * s.x() - at.x() * s.z());
    tilting_Nm = std::max(tilting_Nm, std::hypot(x, y));
  }
  return {off_kgm * turning +
              std::hypot(a * std::abs(s.z()) + w2 * std::abs(s.x()), both * std::abs(s.z())),
          a * std::abs(s.x()) + w2 * std::abs(s.z()), uneven_kgm2 * turning + tilting_Nm};
}

/// On the bearings of tilt, whose axis is y of P through `at`.
Push on_tilt(const Moments& t, const Eigen::Vector3d& at, const BothMotions& motion,
             double lean_rad, bool with_weight) {
  const Eigen::Vector3d& s = t.first_kgm;
  const Eigen::Matrix3d& S = t.second_kgm2;
  const double off_kgm = std::hypot(s.x(), s.z());
  if (with_weight) {
    const double along = kStandardGravity_mps2 * std::abs(std::sin(lean_rad));
    return {t.mass_kg * kStandardGravity_mps2, t.mass_kg * along, along * off_kgm};
  }
  const double side = t.mass_kg > 0 ? s.y() / t.mass_kg : 0;
  const double turning = about_axis(motion.tilt);
  const double a = motion.pan.acceleration_radps2;
  const double w2 = motion.pan.speed_radps * motion.pan.speed_radps;
  const double both = 2 * motion.pan.speed_radps * motion.tilt.speed_radps;
  const double x_kgm = std::abs(s.x() + t.mass_kg * at.x());
  const double y_kgm = std::abs(s.y() + t.mass_kg * at.y());
  double swept_Nm = 0;
  for (const double sign : {-a, a}) {
    for (const double cross : {-both, both}) {
      const double x =
          sign * (S(0, 2) + at.x() * s.z()) - w2 * (S(1, 2) + at.y() * s.z()) - cross * S(2, 2);
      const double z = -sign * (S(0, 0) + at.x() * s.x() + S(1, 1) - side * s.y()) +
                       w2 * s.x() * (at.y() + side) + cross * S(0, 2);
      swept_Nm = std::max(swept_Nm, std::hypot(x, z));
    }
  }
  return {off_kgm * turning + a * y_kgm + w2 * x_kgm,
          a * x_kgm + w2 * y_kgm + both * std::abs(s.z()),
          std::hypot(S(0, 1) - side * s.x(), S(1, 2) - side * s.z()) * turning + swept_Nm};
}

}  // namespace

CarriedLoad carried_load(const RigBodies& bodies, Axis axis, const MotionAt& motion_at,
                         double least_tilt_rad, double most_tilt_rad) {
  const Moments fixed = moments_of(bodies.on_pan), in_T = moments_of(bodies.on_tilt);
  CarriedLoad worst;
  const auto take = [](double& place, double value) { place = std::max(place, value); };
  for (int i = 0; i < kPoses; ++i) {
    const double part = double(i) / (kPoses - 1);
    const double tilt_rad = least_tilt_rad + part * (most_tilt_rad - least_tilt_rad);
    const Moments t = tilted(in_T, tilt_rad);
    const BothMotions motion = motion_at(tilt_rad);
    const auto push = [&](bool with_weight) {
      return axis == Axis::pan
                 ? on_pan(fixed, t, bodies.p_PT_m, motion, bodies.lean_rad, with_weight)
                 : on_tilt(t, bodies.p_PT_m, motion, bodies.lean_rad, with_weight);
    };
    const Push weight = push(true), moving = push(false);
    take(worst.weight_radial_N, weight.radial_N);
    take(worst.weight_axial_N, weight.axial_N);
    take(worst.weight_moment_Nm, weight.moment_Nm);
    take(worst.radial_N, weight.radial_N + moving.radial_N);
    take(worst.axial_N, weight.axial_N + moving.axial_N);
    take(worst.moment_Nm, weight.moment_Nm + moving.moment_Nm);
  }
  return worst;
}

double centre_along_axis_m(const RigBodies& bodies, Axis axis) {
  const MassProperties &fixed = bodies.on_pan, &tilts = bodies.on_tilt;
  if (axis == Axis::tilt) return tilts.p_OC_m.y();
  const double mass_kg = fixed.mass_kg + tilts.mass_kg;
  if (mass_kg <= 0) return 0;
  return (fixed.mass_kg * (fixed.p_OC_m.z() - bodies.p_PT_m.z()) +
          tilts.mass_kg * tilts.p_OC_m.z()) /
         mass_kg;
}

}  // namespace gazewright
