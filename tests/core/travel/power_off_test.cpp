#include "core/travel/power_off.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/motion/slowing.h"
#include "core/travel/soft_limits.h"
#include "tests/core/travel/random_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::flywheel;
using tests::Random;
using tests::random_axis;
using tests::random_travel;
using tests::small_axis;

TEST(FrictionHold, IsWhereTheRigidTrainJustStartsToTurnBack) {
  Random random(44);
  for (int i = 0; i < 200; ++i) {
    const AxisModel axis = random_axis(random);
    const double hold = friction_hold_Nm(axis);
    EXPECT_LT(slowing_radps2(axis, Slowing::open, 0, hold * (1 + 1e-9)), 0);
    EXPECT_GT(slowing_radps2(axis, Slowing::open, 0, hold * (1 - 1e-9)), 0);
  }
  AxisModel locked = small_axis();
  locked.gear.back_efficiency = 0;
  EXPECT_EQ(friction_hold_Nm(locked), kInfinity);
}

TEST(CoastingIntoTheStop, LeavesTheSpeedThatTheRoomDoesNotTake) {
  AxisModel axis = flywheel();
  axis.load.coulomb_Nm = 0.8;
  axis.drive_speed_limit_radps = 3;
  Travel travel;
  travel.stops_rad = 12;
  travel.soft_rad = 2;  // 5 rad of room: ω² = 9 − 2·(0.8/2)·5
  EXPECT_NEAR(coasting_stop_speed_radps(axis, travel), std::sqrt(5.0), tol(1e-12));
  travel.stops_rad = 26;
  EXPECT_EQ(coasting_stop_speed_radps(axis, travel), 0);
}

TEST(CoastingIntoTheStop, CountsTheFallFromTheWorstPlace) {
  AxisModel axis = flywheel();
  axis.drive_speed_limit_radps = 3;
  // A pendulum with its top at 0: from there to the stop at ±1.5 it gains 2·(m·g·l)·(1 − cos)/J.
  axis.load.gravity = {.cos_Nm = 0, .sin_Nm = 4};
  Travel travel;
  travel.stops_rad = 3;
  travel.soft_rad = 2.4;
  EXPECT_NEAR(coasting_stop_speed_radps(axis, travel),
              std::sqrt(9 + 2 * 4 * (1 - std::cos(1.5)) / 2), tol(2e-4));
}

// ½J(ω₀² − ω²) = friction over the room and what winds the cables: ½k(4² − 3²).
TEST(CoastingIntoTheStop, WindsTheCablesUp) {
  AxisModel axis = flywheel();
  axis.load.coulomb_Nm = 0.8;
  axis.load.cable_stiffness_Nmprad = 0.5;
  axis.load.cable_centre_rad = 0.3;
  axis.drive_speed_limit_radps = 3;
  Travel travel;
  travel.centre_rad = 0.3;
  travel.stops_rad = 8;
  travel.soft_rad = 6;
  EXPECT_NEAR(coasting_stop_speed_radps(axis, travel), std::sqrt(9 - 0.8 - 0.25 * (16 - 9)),
              tol(1e-12));
  // Untwisted beyond a stop, it pulls into it: from the other soft limit on, 7 rad before.
  axis.load.cable_centre_rad = 4.3;
  const double gained = 0.25 * 49 - 0.8 * 7;  // friction takes less than the spring until 2.7
  EXPECT_NEAR(coasting_stop_speed_radps(axis, travel), std::sqrt(9 + gained), tol(1e-10));
}

TEST(CoastingIntoTheStop, MirrorsAndIsWorseWithoutThePhasesShorted) {
  Random random(45);
  int coasts = 0;
  for (int rig = 0; rig < 300; ++rig) {
    const AxisModel axis = random_axis(random);
    const Travel travel = random_travel(random);
    const double top = top_speed_radps(axis);
    const double here = coasting_stop_speed_radps(axis, travel);
    EXPECT_NEAR(here, coasting_stop_speed_radps(tests::mirrored(axis), tests::mirrored(travel)),
                tol(1e-9 * top));
    const double pull = worst_pull_Nm(axis.load, travel);
    const auto open = stopping_angle_rad(axis, Slowing::open, top, pull);
    const auto shorted = stopping_angle_rad(axis, Slowing::shorted, top, pull);
    if (pull < friction_hold_Nm(axis)) {
      EXPECT_LT(here, top);
    }
    if (!open) continue;
    ++coasts;
    ASSERT_TRUE(shorted);
    EXPECT_LT(*shorted, *open);
    if (*open < 0.999 * (*travel.stops_rad - *travel.soft_rad) / 2) {
      EXPECT_EQ(here, 0);
    }
  }
  EXPECT_GT(coasts, 50);
}

}  // namespace
}  // namespace gazewright
