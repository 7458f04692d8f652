#include "core/loads/stand.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <numbers>

#include "core/bodies/moved.h"

namespace gazewright {
CarriedByStand carried_by(const StandBody& stand, const RigBodies& bodies) {
  const MassProperties &pan = bodies.on_pan, &tilt = bodies.on_tilt;
  const Eigen::Vector3d& at = bodies.p_PT_m;
  const double mass = pan.mass_kg + tilt.mass_kg;
  if (mass == 0) return {};
  const double swing = tilt.mass_kg * std::hypot(tilt.p_OC_m.x(), tilt.p_OC_m.z());
  const Eigen::Vector3d still = pan.mass_kg * pan.p_OC_m + tilt.mass_kg * at;
  const double forward = std::abs(still.x()) + swing;
  const double left = still.y() + tilt.mass_kg * tilt.p_OC_m.y();
  return {mass, std::hypot(forward, left) / mass, stand.height_m + (still.z() + swing) / mass};
}

Tipping tipping_of(const StandBody& stand, const CarriedByStand& carried, double lean_rad) {
  const double g = kStandardGravity_mps2, lean = std::abs(lean_rad);
  const double weight_N = g * (stand.mass_kg + carried.mass_kg);
  const double offset_Nm = g * carried.mass_kg * carried.aside_m;
  const double height_Nm =
      g * (stand.mass_kg * stand.height_m / 2 + carried.mass_kg * carried.above_foot_m);
  const double holding_Nm = weight_N * stand.half_width_m;
  return {std::cos(lean) * holding_Nm, std::cos(lean) * offset_Nm + std::sin(lean) * height_Nm,
          std::atan2(holding_Nm - offset_Nm, height_Nm)};
}

SwayInertia sway_inertia(const StandBody& stand, const RigBodies& bodies) {
  const Eigen::Vector3d up(0, 0, stand.height_m);
  const Eigen::Matrix3d inertia = seen_from(bodies.on_pan, -up).I_O_kgm2 +
                                  seen_from(bodies.on_tilt, -up - bodies.p_PT_m).I_O_kgm2;
  const double own = stand.mass_kg * stand.height_m * stand.height_m / 3;
  return {inertia(1, 1) + own, std::max(inertia(0, 0), inertia(1, 1)) + own};
}

double SwaySpring::frequency_Hz() const {
  return std::sqrt(stiffness_Nmprad / inertia_kgm2) / (2 * std::numbers::pi);
}

Swayed swayed_by(const SwaySpring& spring, std::span<const double> torque_Nm, double sample_s,
                 double still_after_s) {
  // x'' + 2ζω x' + ω² x = T/J as one complex number z = x' − s̄·x with z' = s·z + T/J.
  const double w = 2 * std::numbers::pi * spring.frequency_Hz();
  const double z = std::min(spring.damping_ratio, 0.999);
  const double wd = w * std::sqrt(1 - z * z);
  const std::complex<double> s(-z * w, wd), turn = std::exp(s * sample_s), push = (turn - 1.0) / s;
  std::complex<double> state = 0;
  Swayed swayed;
  bool is_after = false;
  for (std::size_t i = 0; i < torque_Nm.size(); ++i) {
    const double t = static_cast<double>(i) * sample_s;
    if (!is_after && t >= still_after_s) {
      is_after = true;
      swayed.left_rad = std::abs(state) / wd;
    }
    state = turn * state + push * (torque_Nm[i] / spring.inertia_kgm2);
    const double angle = std::abs(state.imag()) / wd;
    swayed.largest_rad = std::max(swayed.largest_rad, angle);
    if (is_after) swayed.left_rad = std::max(swayed.left_rad, angle);
  }
  if (!is_after) swayed.left_rad = std::abs(state) / wd;
  return swayed;
}

}  // namespace gazewright
