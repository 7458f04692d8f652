#include "core/heat/duty_types.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/heat/copper.h"
#include "tests/support/tol.h"

/// Duty types with two capacities and copper fed back.
namespace gazewright {
namespace {

constexpr double kPhase_ohm = 0.2, kLimit_K = 393.15;

MotorThermal motor(double copper_perK = kCopper_perK) {
  return {.to_housing_KpW = 1,
          .to_air_KpW = 3,
          .winding_time_s = 20,
          .housing_time_s = 600,
          .air_K = 303.15,
          .copper_perK = copper_perK};
}

double lasting_A() { return std::sqrt(lasting_copper20_W(motor(), kLimit_K) / (1.5 * kPhase_ohm)); }

TEST(DutyTypes, TheShortTimeCurrentIsThatOfIntegratingBothEquations) {
  // SciPy 1.10.1: solve_ivp (Radau, rtol 1e-12) over 600 s and 60 s, brentq for the current.
  EXPECT_NEAR(short_time_current_A(motor(), kPhase_ohm, kLimit_K, 600, 100), 9.1500154212,
              tol(1e-8));
  EXPECT_NEAR(short_time_current_A(motor(), kPhase_ohm, kLimit_K, 60, 100), 14.6307295681,
              tol(1e-8));
}

TEST(DutyTypes, TheWindingBearsLessThanOneTimeConstantWouldSay) {
  // For a minute, 1/√(1 − e^(−60/600)) of the lasting current: a third less holds. 14.63 by SciPy.
  const double of_one_A = lasting_A() / std::sqrt(1 - std::exp(-0.1));
  EXPECT_NEAR(of_one_A, 23.79, tol(0.01));
  EXPECT_LT(short_time_current_A(motor(), kPhase_ohm, kLimit_K, 60, 100), of_one_A * 2 / 3);
}

TEST(DutyTypes, TheShortTimeCurrentInClosedFormWithoutFeedback) {
  // A housing that stays cold, no feedback: θ = P·R_wh·(1 − e^(−t/20 s)) with P = 1.5·0.2·i².
  MotorThermal cold = motor(0);
  cold.to_air_KpW = 1e-9;
  const double current_A = std::sqrt(90 / (1 - std::exp(-1.5)) / 0.3);
  EXPECT_NEAR(short_time_current_A(cold, kPhase_ohm, kLimit_K, 30, 100), current_A, tol(1e-6));
}

TEST(DutyTypes, TheIntermittentCurrentIsThatOfIntegratingBothEquations) {
  // SciPy 1.10.1: the cycle's affine map by solve_ivp (Radau, rtol 1e-12), brentq for the current.
  EXPECT_NEAR(intermittent_current_A(motor(), kPhase_ohm, kLimit_K, 10, 30, 100), 13.6108649144,
              tol(1e-7));
}

TEST(DutyTypes, AFastCycleBearsTheLastingCurrentAsItsRms) {
  // A millisecond against 20 s: the temperatures do not swing.
  EXPECT_NEAR(intermittent_current_A(motor(), kPhase_ohm, kLimit_K, 25e-5, 75e-5, 100),
              2 * lasting_A(), tol(1e-3));
  EXPECT_NEAR(intermittent_current_A(motor(), kPhase_ohm, kLimit_K, 5, 0, 100), lasting_A(),
              tol(1e-9));
}

TEST(DutyTypes, NothingAboveWhatMotorAndDriveLetThrough) {
  EXPECT_EQ(short_time_current_A(motor(), kPhase_ohm, kLimit_K, 10, 9), 9);
  EXPECT_EQ(intermittent_current_A(motor(), kPhase_ohm, kLimit_K, 1, 99, 9), 9);
  EXPECT_EQ(short_time_current_A(motor(), kPhase_ohm, kLimit_K, 600, 2), 2);  // below the lasting
  EXPECT_EQ(short_time_current_A(motor(), kPhase_ohm, 300, 600, 9), 0) << "the air is hotter";
  EXPECT_EQ(intermittent_current_A(motor(), kPhase_ohm, 300, 1, 1, 9), 0);
}

}  // namespace
}  // namespace gazewright
