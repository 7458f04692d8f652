#pragma once

#include "core/motion/axis_model.h"
#include "core/travel/travel.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/random_bodies.h"

/// Random axes and travels, and what a mirror makes of them.
namespace gazewright::tests {

/// From a puppet's eye to a searchlight; gravity from none to more than the motor can hold.
inline AxisModel random_axis(tests::Random& random) {
  AxisModel axis = small_axis();
  axis.drive.phase_resistance_ohm = random.log_uniform(0.02, 2);
  axis.drive.current_limit_A = random.log_uniform(3, 60);
  axis.gear.ratio = random.log_uniform(1, 100);
  axis.gear.efficiency = random.uniform(0.6, 1);
  axis.gear.back_efficiency = random.uniform(0.4, 1);
  axis.gear.drag_Nm = random.log_uniform(1e-3, 0.1);
  axis.gear.viscous_Nmsprad = random.log_uniform(1e-6, 1e-4);
  axis.load.inertia_kgm2 = random.log_uniform(1e-4, 1);
  axis.load.coulomb_Nm = random.log_uniform(1e-3, 1);
  axis.load.viscous_Nmsprad = random.log_uniform(1e-4, 0.1);
  const double weight_Nm = random.log_uniform(1e-3, 3);
  axis.load.gravity = {.cos_Nm = random.uniform(-1, 1) * weight_Nm,
                       .sin_Nm = random.uniform(-1, 1) * weight_Nm,
                       .constant_Nm = random.uniform(-0.2, 0.2) * weight_Nm};
  axis.load.cable_stiffness_Nmprad = random.uniform(0, 1) < 0.5 ? 0 : random.log_uniform(1e-3, 1);
  axis.load.cable_centre_rad = random.uniform(-1, 1);
  return axis;
}

inline Travel random_travel(tests::Random& random) {
  Travel travel;
  travel.centre_rad = random.uniform(-1, 1);
  travel.stops_rad = random.uniform(0.5, 8);
  travel.soft_rad = random.uniform(0.3, 1) * *travel.stops_rad;
  travel.cable_rad = random.uniform(0.5, 10);
  travel.usable_rad = std::min(*travel.soft_rad, *travel.cable_rad);
  return travel;
}

/// φ becomes −φ: the pull is −pull(−φ).
inline AxisModel mirrored(AxisModel axis) {
  axis.load.gravity.cos_Nm = -axis.load.gravity.cos_Nm;
  axis.load.gravity.constant_Nm = -axis.load.gravity.constant_Nm;
  axis.load.cable_centre_rad = -axis.load.cable_centre_rad;
  return axis;
}
inline Travel mirrored(Travel travel) {
  travel.centre_rad = -travel.centre_rad;
  return travel;
}

}  // namespace gazewright::tests
