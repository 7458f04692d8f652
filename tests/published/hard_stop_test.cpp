#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/travel/impact.h"
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
  const Impact impact =
      impact_of({.stiffness_Nmprad = stiffness_Nmprad}, inertia_kgm2, speed_radps, 0);
  EXPECT_NEAR(impact.torque_Nm, 968, tol(5e-4 * 968));
  EXPECT_NEAR(impact.press_rad * 180 / std::numbers::pi, 246.5, tol(5e-4 * 246.5));
}

// The energy balance does not know turning from sliding: below, masses, forces and stiffnesses of
// straight springs stand for inertias, torques and stiffnesses of turning ones.

constexpr double kGravity_mps2 = 9.81;  // as the books take it
constexpr double kInch_m = 0.0254, kPound_kg = 0.45359237;

/// A weight that falls from a height: it arrives with √(2gh) and goes on pushing.
Impact fallen(double mass_kg, double height_m, double stiffness_Npm) {
  return impact_of({.stiffness_Nmprad = stiffness_Npm}, mass_kg,
                   std::sqrt(2 * kGravity_mps2 * height_m), mass_kg * kGravity_mps2);
}

TEST(HardStop, HoldsAWeightThatFallsOnABar) {
  // Source: J. M. Gere, Mechanics of Materials, ex. 2-16, p. 133: 20 kg from 150 mm onto a bar of
  // 2 m by 15 mm across, 210 GPa: 1.79 mm, 188.13 MPa.
  const double area_m2 = std::numbers::pi * 0.015 * 0.015 / 4;
  const Impact impact = fallen(20, 0.150, 210e9 * area_m2 / 2);
  EXPECT_NEAR(impact.press_rad, 1.79e-3, tol(0.3e-2 * 1.79e-3));
  EXPECT_NEAR(impact.torque_Nm / area_m2, 188.13e6, tol(0.3e-2 * 188.13e6));
}

TEST(HardStop, BearsTwiceATorqueThatIsLaidOnAtOnce) {
  // Source: R. C. Hibbeler, Mechanics of Materials, ex. 14.8, p. 743: 150 kip on a tube of 3 and
  // 2.5 in radius, 12 in long, 1e4 ksi: 0.0208 in eased on, 0.0417 in laid on at once.
  const double stiffness_kippin = 1e4 * std::numbers::pi * (3 * 3 - 2.5 * 2.5) / 12;
  EXPECT_NEAR(150 / stiffness_kippin, 0.0208, tol(1e-3 * 0.0417));
  const Impact impact = impact_of({.stiffness_Nmprad = stiffness_kippin}, 1, 0, 150);
  EXPECT_NEAR(impact.press_rad, 0.0417, tol(1e-3 * 0.0417));
}

TEST(HardStop, HoldsABlockThatRunsIntoAPost) {
  // Source: Hibbeler, ex. 14.10, p. 745: 80 t at 0.2 m/s into a post of 200 mm square, 1.5 m up,
  // 200 GPa: 11.62 mm.
  const double area_moment_m4 = std::pow(0.2, 4) / 12;
  const double stiffness_Npm = 3 * 200e9 * area_moment_m4 / std::pow(1.5, 3);
  const Impact impact = impact_of({.stiffness_Nmprad = stiffness_Npm}, 80e3, 0.2, 0);
  EXPECT_NEAR(impact.press_rad, 11.62e-3, tol(1e-3 * 11.62e-3));
}

TEST(HardStop, HoldsACarThatRunsIntoABar) {
  // Source: T. H. Wentzell, Machine Design, ex. 7.2, p. 139: 2000 lb at 5 mph into a bar of 2 in
  // across by 36 in, 30e6 psi: 0.1238 in, 103 166 psi.
  constexpr double kPsi_Pa = 6894.757293168, kMph_mps = 0.44704;
  const double area_m2 = std::numbers::pi * std::pow(2 * kInch_m, 2) / 4;
  const double stiffness_Npm = 30e6 * kPsi_Pa * area_m2 / (36 * kInch_m);
  const Impact impact =
      impact_of({.stiffness_Nmprad = stiffness_Npm}, 2000 * kPound_kg, 5 * kMph_mps, 0);
  EXPECT_NEAR(impact.press_rad / kInch_m, 0.1238, tol(1e-3 * 0.1238));
  EXPECT_NEAR(impact.torque_Nm / area_m2 / kPsi_Pa, 103166, tol(1e-3 * 103166));
}

}  // namespace
}  // namespace gazewright
