#include "core/motion/smoothness.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "core/motion/loop.h"
#include "core/units/angle.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using Complex = std::complex<double>;
using tests::linear_axis;
using tests::small_axis;

/// One inertia behind a gear that hardly bends, control that hardly delays.
AxisModel rigid_axis() {
  AxisModel axis = linear_axis();
  axis.gear.stiffness_Nmprad = 1e6;
  axis.gear.damping_Nmsprad = 200;
  axis.control.control_rate_Hz = 2e5;
  axis.control.current_bandwidth_Hz = axis.control.estimator_bandwidth_Hz = 2e4;
  return axis;
}
double inertia_kgm2(const AxisModel& axis) {
  return axis.load.inertia_kgm2 + axis.reflected_inertia_kgm2();
}

// φ/d = N/(J·s² + (ks + ki/s)·(kp + s)) for one inertia. Up to 60 rad/s estimator, current loop and
// delay turn the phase by 60·(2/(2π·2e4) + 1.5/2e5) = 1.4e-3 of a radian.
TEST(Compliance, OfARigidAxisIsThatOfItsGains) {
  const AxisModel axis = rigid_axis();
  const AxisControl& c = axis.control;
  for (const double w : {0.5, 5.0, 20.0, 60.0}) {
    const Complex s(0, w);
    const Complex loops =
        (c.speed_gain_Nmsprad + c.speed_integral_gain_Nmprad / s) * (c.position_gain_1ps + s);
    const Complex expected = axis.gear.ratio / (inertia_kgm2(axis) * s * s + loops);
    EXPECT_NEAR(std::abs(compliance_radpNm(axis, w) / expected), 1, tol(2e-3)) << w;
  }
}

TEST(ReadingGain, IsOneForSlowErrorsAndFallsForQuickOnes) {
  for (const bool at_output : {false, true}) {
    AxisModel axis = small_axis();
    axis.control.encoder_at_output = at_output;
    EXPECT_NEAR(std::abs(reading_gain(axis, 0.01)), 1, tol(1e-3)) << at_output;
    EXPECT_LT(std::abs(reading_gain(axis, kPi * 7000)), 0.01) << at_output;
  }
}

// Routh's condition for J·s³ + (ks + b)·s² + (ki + ks·kp)·s + ki·kp, b the load's viscous friction:
// (ks + b)·(ki + ks·kp) > J·ki·kp. Delays of 2e-5 s at the crossover's 200 rad/s move it by 1 %.
TEST(Steadiness, OfARigidAxisEndsAtRouthsCondition) {
  const AxisModel axis = rigid_axis();
  const AxisControl& c = axis.control;
  const double ks = c.speed_gain_Nmsprad, kp = c.position_gain_1ps,
               ki = c.speed_integral_gain_Nmprad;
  const double falling = ks - inertia_kgm2(axis) * ki * kp / (ki + ks * kp);
  EXPECT_TRUE(is_steady(axis, 0));
  EXPECT_TRUE(is_steady(axis, -0.98 * falling));
  EXPECT_FALSE(is_steady(axis, -1.02 * falling));
}

// Both look at the same sampled loop: where the margins say stable, the poles lie inside.
TEST(Steadiness, AgreesWithTheSpeedLoopsMargins) {
  std::mt19937 random(2024);
  std::uniform_real_distribution<double> decades(-1.5, 1.5);
  int steady = 0, swinging = 0;
  for (int i = 0; i < 60; ++i) {
    AxisModel axis = small_axis();
    axis.control.speed_gain_Nmsprad *= std::pow(10, decades(random));
    axis.control.position_gain_1ps = 1e-3;  // leaves the speed loop alone
    const LoopMargins margins = speed_loop_margins(axis);
    if (!margins.phase_margin_rad || !margins.gain_margin) continue;
    const double least = std::min(*margins.phase_margin_rad, *margins.gain_margin - 1);
    if (std::abs(least) < 0.02) continue;  // on the edge
    EXPECT_EQ(is_steady(axis, 0), least > 0) << i << ": " << axis.control.speed_gain_Nmsprad;
    (least > 0 ? steady : swinging)++;
  }
  EXPECT_GT(steady, 10);
  EXPECT_GT(swinging, 5);
}

// The friction falls by falling/vs·2x·exp(−x²), x = v/vs; at the limit that is what Routh allows.
TEST(SlowLimits, StickSlipEndsWhereTheFrictionFallsAsTheLoopsStand) {
  const AxisModel axis = rigid_axis();
  const AxisControl& c = axis.control;
  const double falling =
      c.speed_gain_Nmsprad -
      inertia_kgm2(axis) * c.speed_integral_gain_Nmprad * c.position_gain_1ps /
          (c.speed_integral_gain_Nmprad + c.speed_gain_Nmsprad * c.position_gain_1ps);
  const SlowParts parts{.falling_Nm = 0.03, .stribeck_radps = 0.01};
  const auto limits = slow_limits(axis, parts);
  ASSERT_TRUE(limits);
  const double x = limits->friction_radps / parts.stribeck_radps;
  EXPECT_GT(x, std::numbers::sqrt2 / 2);
  EXPECT_NEAR(0.03 / 0.01 * 2 * x * std::exp(-x * x) / falling, 1, tol(0.02));  // delays, as above
  EXPECT_EQ(slow_limits(axis, {.falling_Nm = 0.005, .stribeck_radps = 0.01})->friction_radps, 0);
}

TEST(SlowLimits, CoggingEndsWhereItsRippleIsAsFastAsTheAxis) {
  const AxisModel axis = small_axis();
  const SlowParts parts{.cogging_Nm = 0.006, .cogging_per_turn = 84, .stribeck_radps = 0.01};
  const double slowest = slow_limits(axis, parts)->cogging_radps;
  ASSERT_GT(slowest, 0);
  const auto ripple_part = [&](double speed) {  // amplitude of the ripple's speed over the speed
    return cogging_ripple_rad(axis, parts, speed) * 84 * axis.gear.ratio;
  };
  EXPECT_NEAR(ripple_part(slowest), 1, tol(1e-6));  // 40 bisections of a grid step
  for (const double faster : {1.05, 1.3, 2.0, 5.0, 30.0})
    EXPECT_LT(ripple_part(slowest * faster), 1) << faster;
  const SlowParts weak{.cogging_Nm = 1e-7, .cogging_per_turn = 84, .stribeck_radps = 0.01};
  EXPECT_EQ(slow_limits(axis, weak)->cogging_radps, 0);
}

TEST(SlowLimits, WorstCoggingIsTheLargestOfAFineScan) {
  const AxisModel axis = small_axis();
  const SlowParts parts{.cogging_Nm = 0.006, .cogging_per_turn = 84, .stribeck_radps = 0.01};
  const WorstRipple worst = worst_cogging(axis, parts);
  double largest = 0;
  for (double speed = 1e-4; speed < 10; speed *= 1.0005)
    largest = std::max(largest, cogging_ripple_rad(axis, parts, speed));
  EXPECT_NEAR(worst.ripple_rad / largest, 1, tol(1e-4));
  EXPECT_NEAR(cogging_ripple_rad(axis, parts, worst.speed_radps), worst.ripple_rad, tol(1e-12));
}

// 2^14 counts, ratio 18, estimator 400 Hz at 8 kHz.
TEST(SlowLimits, OneCountInASampleIsSoMuchSpeed) {
  const AxisModel axis = small_axis();
  EXPECT_NEAR(count_rad(axis), 2 * kPi / 16384 / 18, tol(1e-18));
  const double blend = 1 - std::exp(-2 * kPi * 400 / 8000);
  EXPECT_NEAR(speed_resolution_radps(axis), blend * 8000 * count_rad(axis), tol(1e-12));
  const double slowest = slow_limits(axis, {.stribeck_radps = 0.01})->encoder_radps;
  // The ripple count/π·|gain| at 2π·speed/count is half as fast as ... the axis: gain 1/2.
  EXPECT_NEAR(encoder_ripple_rad(axis, slowest) / (count_rad(axis) / kPi), 0.5, tol(1e-6));
}

TEST(SlowLimits, AreNoneWhereTheLoopsSwingByThemselves) {
  AxisModel axis = small_axis();
  axis.control.speed_gain_Nmsprad = 300;
  EXPECT_FALSE(slow_limits(axis, {.stribeck_radps = 0.01}));
  axis.control.speed_gain_Nmsprad = std::nan("");
  EXPECT_FALSE(slow_limits(axis, {.stribeck_radps = 0.01}));
}

}  // namespace
}  // namespace gazewright
