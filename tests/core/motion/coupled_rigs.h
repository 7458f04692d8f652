#pragma once

#include "core/motion/coupled.h"
#include "tests/core/motion/small_axis.h"

namespace gazewright::tests {

/// Two small axes with a load that ties them: the tilt axis misses the pan axis, the camera sits
/// off both, and its tensor has products.
inline CoupledModel tied_axes() {
  CoupledModel model{{small_axis(), small_axis()}, {}};
  RigBodies& bodies = model.bodies;
  bodies.on_tilt.mass_kg = 0.2;
  bodies.on_tilt.p_OC_m = {0.005, 0.002, 0.003};
  bodies.on_tilt.I_O_kgm2 << 4e-4, 5e-5, -3e-5, 5e-5, 6e-4, 4e-5, -3e-5, 4e-5, 5e-4;
  bodies.on_pan.mass_kg = 0.4;
  bodies.on_pan.p_OC_m = {0.01, 0.02, 0.08};
  bodies.on_pan.I_O_kgm2 = Eigen::Vector3d(2e-3, 2e-3, 1e-3).asDiagonal();
  bodies.p_PT_m = {0.01, 0.02, 0.1};
  return model;
}

/// Two small axes whose loads know nothing of each other: balanced and round about the tilt axis.
inline CoupledModel untied_axes() {
  CoupledModel model{{small_axis(), small_axis()}, {}};
  RigBodies& bodies = model.bodies;
  bodies.on_tilt.mass_kg = 0.2;
  bodies.on_tilt.I_O_kgm2 = Eigen::Vector3d(4e-4, 6e-4, 4e-4).asDiagonal();
  bodies.on_pan.mass_kg = 0.4;
  bodies.on_pan.I_O_kgm2 = Eigen::Vector3d(2e-3, 2e-3, 1e-3).asDiagonal();
  model.axis[0].load.inertia_kgm2 = 1.4e-3;
  model.axis[1].load.inertia_kgm2 = 6e-4;
  for (AxisModel& axis : model.axis) axis.load.gravity = {};
  return model;
}

}  // namespace gazewright::tests
