#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/travel/travel.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(HardStop, HoldsTheImpactOfTwoRotorsThroughASpring) {
  // Source: Khurmi & Gupta, Theory of Machines, ex. 3.21, p. 67: 22.5 and 67.5 kg·m² meet at 150
  // rpm through 225 N·m/rad: 2081 N·m, 246.5°; the peak torque 968 N·m is that twist times the
  // stiffness. Two free rotors meet as one of J₁J₂/(J₁ + J₂).
  const double inertia_kgm2 = 22.5 * 67.5 / (22.5 + 67.5), stiffness_Nmprad = 225;
  const double speed_radps = 150 * 2 * std::numbers::pi / 60;
  EXPECT_NEAR(stop_energy_J(inertia_kgm2, speed_radps), 2081, tol(5e-4 * 2081));
  const double peak_Nm = stop_torque_Nm(inertia_kgm2, speed_radps, stiffness_Nmprad, 0);
  EXPECT_NEAR(peak_Nm, 968, tol(5e-4 * 968));
  EXPECT_NEAR(peak_Nm / stiffness_Nmprad * 180 / std::numbers::pi, 246.5, tol(5e-4 * 246.5));
}

}  // namespace
}  // namespace gazewright
