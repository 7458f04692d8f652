#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/motion/axis_model.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(TwoAxisDynamics, MatchesAnIntersectingGimbalWithItsNoseDownAngle) {
  // Lagrange's equations for a pan-tilt with intersecting axes; structure as B. Ekstrand, Equations
  // of motion for a two-axes gimbal system, IEEE Trans. Aerosp. Electron. Syst. 37(3) 2001; numbers
  // recomputed with a numerical Lagrangian. There the tilt angle counts nose down, so tilt angle,
  // rate, acceleration and torque change sign here; torques at 9.81 m/s² are scaled to ours.
  RigBodies bodies;
  bodies.on_pan.I_O_kgm2(2, 2) = 2e-4;
  bodies.on_tilt.mass_kg = 0.1;
  bodies.on_tilt.p_OC_m = {0.004, 0, 0.002};
  bodies.on_tilt.I_O_kgm2 << 1e-4, 0, -1.5e-5, 0, 3e-4, 0, -1.5e-5, 0, 3.5e-4;
  const double tilt_rad = -std::numbers::pi / 6;
  const Eigen::Vector2d rate{2, -3}, acceleration{5, -4};
  const Eigen::Matrix2d M = mass_matrix_kgm2(bodies, tilt_rad);
  EXPECT_NEAR(M(0, 0), 5.00490e-4, tol(5e-10));
  EXPECT_EQ(M(0, 1), 0);

  const Eigen::Vector2d gravity = gravity_torque_Nm(bodies, 0, tilt_rad) * 9.81 / 9.80665;
  const Eigen::Vector2d torque_Nm =
      M * acceleration + velocity_torque_Nm(bodies, tilt_rad, rate) - gravity;
  EXPECT_NEAR(torque_Nm(0), 1.293414e-3, tol(1e-6 * 1.3e-3));
  EXPECT_NEAR(-torque_Nm(1), -2.776270e-3, tol(1e-6 * 2.8e-3));
}

TEST(TwoAxisDynamics, AGearedRotorAddsItsInertiaTimesTheSquareOfItsRatio) {
  // Source: B. Siciliano, L. Sciavicco, L. Villani, G. Oriolo, Robotics, Springer 2009,
  // section 7.3.2 (parameters from memory): second link of 50 kg at 0.5 m with 10 kg·m², ratio 100,
  // rotor 0.01 kg·m²: b22 = 122.5 kg·m². The tilt axis alone is that link.
  Rig rig;
  Tensor tensor;
  for (Quantity& element : tensor.element_kgm2) element = si_quantity(0);
  tensor.element_kgm2[1] = si_quantity(10);
  rig.on_tilt = {
      {"link", si_quantity(50), {si_quantity(0.5), si_quantity(0), si_quantity(0)}, tensor}};
  for (Quantity& coordinate : rig.tilt_axis_at_m) coordinate = si_quantity(0);
  rig.stand.lean_rad = si_quantity(0);
  rig.tilt.gearbox.ratio = si_quantity(100);
  rig.tilt.motor.rotor_inertia_kgm2 = si_quantity(0.01);
  rig.tilt.gearbox.inertia_kgm2 = si_quantity(0);
  const AxisModel tilt = axis_model(rig, rig_bodies(rig), Axis::tilt);
  EXPECT_DOUBLE_EQ(tilt.load.inertia_kgm2 + tilt.reflected_inertia_kgm2(), 122.5);
}

TEST(Encoder, HasAStepOfAFullTurnOverItsCounts) {
  // Arithmetic, 360°/2^bits: 12, 14 and 16 bits.
  const double bits[] = {12, 14, 16}, step_deg[] = {0.087891, 0.021973, 0.0054932};
  for (int i = 0; i < 3; ++i) {
    Rig rig;
    rig.pan.encoder.bits = si_quantity(bits[i]);
    const AxisModel pan = axis_model(rig, rig_bodies(rig), Axis::pan);
    EXPECT_NEAR(360 / pan.control.encoder_counts, step_deg[i], tol(1e-4 * step_deg[i]));
  }
}

}  // namespace
}  // namespace gazewright
