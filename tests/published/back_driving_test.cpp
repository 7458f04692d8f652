#include <gtest/gtest.h>

#include "core/motion/rigid_move.h"
#include "tests/published/direct_current.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

/// A weight on a drum that turns a geared flywheel: it falls with r·(m·g·r)/(J_drum + m·r² +
/// N²·J/η_back).
double falling_mps2(double weight_N, double mass_kg, double radius_m, double drum_kgm2,
                    double flywheel_kgm2, double ratio, double back_efficiency) {
  AxisModel m{.drive = tests::torque_source(0),
              .gear = {.ratio = ratio,
                       .efficiency = 0.5,
                       .back_efficiency = back_efficiency,
                       .rotor_inertia_kgm2 = flywheel_kgm2},
              .load = {.inertia_kgm2 = drum_kgm2 + mass_kg * radius_m * radius_m, .gravity = {}},
              .control = {}};
  return radius_m * rigid_acceleration_radps2(m, 0, 1, weight_N * radius_m);
}

TEST(BackDrivenGear, AddsItsLossesToTheInertiaThatTheLoadSees) {
  // Source: R.S. Khurmi, J.K. Gupta, Theory of Machines, ex. 3.13, p. 50: 75 kg on a drum of 0.3 m,
  // 100 kg·m², 6:1 to 5 kg·m²: 0.231 m/s² without loss, 0.216 m/s² at 0.9.
  EXPECT_NEAR(falling_mps2(75 * 9.81, 75, 0.3, 100, 5, 6, 1), 0.231, tol(5e-4));
  EXPECT_NEAR(falling_mps2(75 * 9.81, 75, 0.3, 100, 5, 6, 0.9), 0.216, tol(5e-4));
}

TEST(BackDrivenGear, DoesTheSameInPounds) {
  // Source: T. Bevan, The Theory of Machines, ex. 10, p. 48: 150 lb on 8 in, 200 and 15 lb·ft²,
  // 5:1: 3.35 and 3.14 ft/s² (32.2 ft/s²).
  EXPECT_NEAR(falling_mps2(150 * 32.2, 150, 8.0 / 12, 200, 15, 5, 1), 3.35, tol(0.01));
  EXPECT_NEAR(falling_mps2(150 * 32.2, 150, 8.0 / 12, 200, 15, 5, 0.9), 3.14, tol(0.01));
}

}  // namespace
}  // namespace gazewright
