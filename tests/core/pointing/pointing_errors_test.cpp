#include "core/pointing/pointing_errors.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "core/pointing/picture.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::small_axis;
constexpr double kDegree = std::numbers::pi / 180;

TEST(ReadingErrors, GoThroughTheRatioAtTheMotorOnly) {
  // 14 bits: half a count is 180°/16384 = 0.010986°.
  const AxisModel axis = small_axis();
  const ReadingError motor = reading_error(axis, 0.5 * kDegree, false);
  const ReadingError output = reading_error(axis, 0.5 * kDegree, true);
  EXPECT_NEAR(motor.half_width_rad(), 0.510986 / 18 * kDegree, tol(1e-9));
  EXPECT_NEAR(output.half_width_rad(), 0.510986 * kDegree, tol(1e-8));
  EXPECT_NEAR(output.deviation_rad(),
              std::hypot(0.5 / std::sqrt(2), 0.010986 / std::sqrt(3)) * kDegree, tol(1e-8));
}

TEST(BearingPlay, TiltsTheShaftByPlayOverSpacing) {
  // Public rule of geometry: 10 µm in each of two bearings 40 mm apart are 0.25 mrad = 0.86'.
  EXPECT_NEAR(pair_tilt_rad(10e-6, 40e-3), 0.25e-3, tol(1e-10));
  EXPECT_EQ(pair_tilt_rad(0, 40e-3), 0);
  EXPECT_NEAR(ring_tilt_rad(20e-6, 50e-3), 0.4e-3, tol(1e-10));
}

TEST(FrictionErrors, AreTheWindupAndHalfAJump) {
  AxisModel axis = small_axis();
  const FrictionError error = friction_error(axis, 0.02);
  EXPECT_DOUBLE_EQ(error.windup_rad, 0.06 / 900);
  EXPECT_DOUBLE_EQ(error.stuck_rad, 0.02 * (1 / (0.9 * 30 + 12) + 1.0 / 900));
  axis.control.speed_integral_gain_Nmprad = 0;
  EXPECT_DOUBLE_EQ(friction_error(axis, 0.02).stuck_rad, 0.06 / 27);
}

TEST(LoopDroop, IsThereWithoutAnIntegralOnly) {
  AxisModel axis = small_axis();
  EXPECT_EQ(loop_droop_rad(axis, 0.1), 0);
  axis.control.speed_integral_gain_Nmprad = 0;
  EXPECT_DOUBLE_EQ(loop_droop_rad(axis, 0.1), 0.1 / 27);
}

TEST(PullRange, IsThatOfACloseScan) {
  std::mt19937 random(3);
  std::uniform_real_distribution<double> torque(-2, 2), angle(-3, 3), stiffness(0, 1);
  for (int i = 0; i < 200; ++i) {
    AxisLoad load;
    load.gravity = {torque(random), torque(random), 0};
    load.cable_stiffness_Nmprad = i % 2 == 0 ? 0 : stiffness(random);
    load.cable_centre_rad = angle(random);
    const double a = angle(random), b = a + 1.5 + angle(random) / 2.1;
    const PullRange range = pull_range(load, a, b);
    double least = kInfinity, most = -kInfinity;
    constexpr int kPoints = 4000;
    for (int k = 0; k <= kPoints; ++k) {
      const double pull = load.pull_Nm(a + (b - a) * k / kPoints);
      least = std::min(least, pull), most = std::max(most, pull);
    }
    // A peak is missed by half a step at most: h²/8·|V''| = (3/4000)²/8·2.9 = 2e-7.
    EXPECT_NEAR(range.least_Nm, least, tol(3e-7)) << i;
    EXPECT_NEAR(range.most_Nm, most, tol(3e-7)) << i;
  }
}

TEST(PullRange, PressesTheTeethTogetherOnlyWithOneSign) {
  EXPECT_EQ((PullRange{-0.1, 0.2}.steady_Nm()), 0);
  EXPECT_EQ((PullRange{0.1, 0.2}.steady_Nm()), 0.1);
  EXPECT_EQ((PullRange{-0.3, -0.2}.steady_Nm()), 0.2);
  EXPECT_EQ((PullRange{-0.3, 0.2}.largest_Nm()), 0.3);
}

TEST(Picture, SmearsAndLeansByTheTurnMeanwhile) {
  // 600°/s for 5 ms at 1920 px over 60° (f = 1662.77 px) are 87 px; rows spread over 10 ms lean
  // twice that. One pixel is slid at 1/(5 ms·1662.77 px) = 6.892°/s.
  EXPECT_NEAR(blur_px(600 * kDegree, 5e-3, 1662.77), 87.06, tol(0.005));
  EXPECT_DOUBLE_EQ(skew_px(600 * kDegree, 10e-3, 1662.77),
                   2 * blur_px(600 * kDegree, 5e-3, 1662.77));
  EXPECT_NEAR(one_pixel_speed_radps(5e-3, 1662.77), 6.8915 * kDegree, tol(1e-5));
  EXPECT_NEAR(at_target_m(0.5 * kDegree, 2.5), 21.817e-3, tol(1e-6));
}

}  // namespace
}  // namespace gazewright
