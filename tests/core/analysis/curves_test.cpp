#include "core/analysis/curves.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/heat/copper.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

/// Torque against speed with the winding cold and hot, and what it bears for long.
namespace gazewright {
namespace {

using tests::owl;

/// The owl's pan with a torque that only voltage and resistance limit: no inductance, no limits of
/// current or gear.
Rig bare_owl() {
  Rig rig = owl();
  rig.supply.current_limit_A = si_quantity(1e9);
  rig.pan.motor.phase_inductance_H = si_quantity(0);
  rig.pan.motor.peak_current_A = rig.pan.drive.current_limit_A = si_quantity(1e9);
  rig.pan.gearbox.peak_torque_Nm = si_quantity(1e9);
  return rig;
}

AxisCurves pan_of(const Rig& rig, bool quick = false) {
  return analyse(rig, {.remedies = false, .quick = quick}).of(Axis::pan);
}

// Copper at 20 °C and at 120 °C: 255 and 355 over its constant of 235. Source: IEC 60034-1,
// resistance method (from memory).
constexpr double kHotOverCold = 355.0 / 255;

TEST(HotEnvelope, IsOhmsLawWithTheResistanceAtTheLimit) {
  const AxisCurves curves = pan_of(bare_owl());
  const double kv_radpsV = 410 * 2 * std::numbers::pi / 60;
  const double kt = std::sqrt(3) / 2 / kv_radpsV, phase_V = 0.95 * 24 / std::sqrt(3);
  const double hot_ohm = 0.062 * kHotOverCold;
  EXPECT_DOUBLE_EQ(curves.winding_limit_K, 393.15);
  ASSERT_FALSE(curves.hot_envelope.speed_radps.empty());
  for (std::size_t i = 0; i < curves.hot_envelope.speed_radps.size(); ++i) {
    const double back_V = kt * 18 * curves.hot_envelope.speed_radps[i] / 1.5;
    const double current_A = std::max(0.0, phase_V - back_V) / hot_ohm;
    // the last one is a difference of two numbers near 13 V: 13·ε/R of current
    EXPECT_NEAR(curves.hot_envelope.driving_Nm[i], 0.9 * 18 * kt * current_A, tol(1e-10));
  }
}

TEST(HotEnvelope, LosesAsMuchAsTheResistanceGrowsWhereVoltageLimits) {
  const AxisCurves curves = pan_of(bare_owl());
  for (const std::size_t at : {0U, 40U, 80U, 110U}) {
    EXPECT_NEAR(curves.envelope.driving_Nm[at] / curves.hot_envelope.driving_Nm[at], kHotOverCold,
                tol(1e-12));
    EXPECT_NEAR(curves.envelope.braking_Nm[at] / curves.hot_envelope.braking_Nm[at], kHotOverCold,
                tol(1e-12));
  }
}

TEST(HotEnvelope, IsTheColdOneWhereTheCurrentLimitDecidesAndNeverAboveIt) {
  const AxisCurves curves = pan_of(owl());
  ASSERT_EQ(curves.hot_envelope.driving_Nm.size(), curves.envelope.driving_Nm.size());
  EXPECT_DOUBLE_EQ(curves.hot_envelope.driving_Nm[0], curves.envelope.driving_Nm[0]);
  bool is_less = false;
  for (std::size_t i = 0; i < curves.envelope.driving_Nm.size(); ++i) {
    EXPECT_LE(curves.hot_envelope.driving_Nm[i], curves.envelope.driving_Nm[i]) << i;
    is_less = is_less || curves.hot_envelope.driving_Nm[i] < 0.9 * curves.envelope.driving_Nm[i];
  }
  EXPECT_TRUE(is_less);
}

TEST(HotEnvelope, IsLeftOutWhereTheLimitIsNotKnownAndWhileDragging) {
  EXPECT_TRUE(pan_of(owl(), true).hot_envelope.speed_radps.empty());
  Rig rig = owl();
  rig.pan.motor.winding_limit_K = {};
  const AxisCurves curves = pan_of(rig);
  EXPECT_FALSE(curves.envelope.speed_radps.empty());
  EXPECT_TRUE(curves.hot_envelope.speed_radps.empty());
  EXPECT_EQ(curves.lasting_torque_Nm, 0);
}

/// Steady: 90 K over the air at 30 °C through 4.1 K/W is the loss of hot copper, 1.5·R·i².
TEST(LastingTorque, KeepsTheWindingAtItsLimit) {
  const AxisCurves curves = pan_of(owl());
  const double kt = std::sqrt(3) / 2 / (410 * 2 * std::numbers::pi / 60);
  const double current_A = curves.lasting_torque_Nm / (0.9 * 18 * kt);
  EXPECT_NEAR(1.5 * 0.062 * kHotOverCold * current_A * current_A * 4.1, 90, tol(1e-10));
}

TEST(LastingTorque, IsNoneWhereTheAirIsAsHotAsTheLimit) {
  Rig rig = owl();
  rig.surroundings.temperature_K = si_quantity(393.15);
  EXPECT_EQ(pan_of(rig).lasting_torque_Nm, 0);
}

}  // namespace
}  // namespace gazewright
