#include "core/travel/soft_limits.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/motion/slowing.h"
#include "core/motion/step.h"
#include "tests/core/motion/small_axis.h"
#include "tests/core/travel/random_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::braked_at;
using tests::Random;
using tests::random_axis;
using tests::random_travel;
using tests::small_axis;

Travel travel_between(double stops_rad, double inset_rad, double centre_rad = 0) {
  Travel travel;
  travel.centre_rad = centre_rad;
  travel.stops_rad = stops_rad;
  travel.soft_rad = std::max(0.0, stops_rad - 2 * inset_rad);
  travel.cable_rad = kInfinity;
  travel.usable_rad = travel.soft_rad;
  return travel;
}

TEST(SpeedOverTravel, AtConstantDecelerationIsTheRootOfTwiceTheWay) {
  const SpeedOverTravel speeds = speed_over_travel(braked_at(200), travel_between(4, 0.3, 0.5));
  for (const End end : kEnds) {
    const SpeedBound& soft = speeds.soft(end);
    ASSERT_EQ(soft.angle_rad.size(), 61u);
    EXPECT_TRUE(std::ranges::is_sorted(soft.angle_rad));
    for (std::size_t i = 0; i < soft.angle_rad.size(); ++i) {
      const double way = sign_of(end) * (0.5 + sign_of(end) * 1.7 - soft.angle_rad[i]);
      EXPECT_NEAR(soft.speed_radps[i], std::sqrt(400 * std::max(0.0, way)), tol(1e-6));
    }
  }
}

// ½Jω² = brake times way and what winds the cables, ½k(limit² − place²) from where they are
// untwisted.
TEST(SpeedOverTravel, OnACableTakesTheSpringsEnergyToo) {
  AxisModel axis = braked_at(200);
  axis.load.cable_stiffness_Nmprad = 60;
  axis.load.cable_centre_rad = 0.5;
  const SpeedOverTravel speeds = speed_over_travel(axis, travel_between(4, 0.3, 0.5));
  for (const End end : kEnds) {
    const SpeedBound& stop = speeds.stop(end);
    ASSERT_EQ(stop.angle_rad.size(), 61u);
    for (std::size_t i = 0; i < stop.angle_rad.size(); ++i) {
      const double place = sign_of(end) * (stop.angle_rad[i] - 0.5);
      const double energy = 300 * (2 - place) + 30 * (4 - place * place);
      EXPECT_NEAR(stop.speed_radps[i], std::sqrt(std::max(0.0, energy / 0.75)), tol(1e-5)) << place;
    }
  }
}

TEST(SpeedOverTravel, IsCappedByTheTopSpeed) {
  AxisModel axis = braked_at(200);
  axis.drive_speed_limit_radps = 15;
  const SpeedOverTravel speeds = speed_over_travel(axis, travel_between(4, 0.3));
  EXPECT_EQ(speeds.stop(End::most).speed_radps.front(), 15);
  EXPECT_EQ(speeds.stop(End::least).speed_radps.back(), 15);
  EXPECT_EQ(std::ranges::max(speeds.soft(End::most).speed_radps), 15);
}

TEST(SpeedOverTravel, AllowsNoSpeedIntoAPlaceWhereGravityWins) {
  AxisModel axis = braked_at(200);
  axis.load.gravity = {.cos_Nm = 0, .sin_Nm = 400};  // pushes outwards beyond asin(300/400)
  const SpeedOverTravel speeds = speed_over_travel(axis, travel_between(3, 0));
  const double lost_rad = std::asin(0.75);
  EXPECT_EQ(bound_at_radps(speeds.stop(End::most), lost_rad + 0.05), 0);
  EXPECT_GT(bound_at_radps(speeds.stop(End::most), lost_rad - 0.1), 1);
}

TEST(SpeedOverTravel, IsEmptyWithoutStops) {
  Travel travel = travel_between(4, 0.3);
  travel.stops_rad = travel.soft_rad = kInfinity;
  EXPECT_TRUE(speed_over_travel(small_axis(), travel).soft(End::most).angle_rad.empty());
  travel.stops_rad = travel.soft_rad = std::nullopt;
  EXPECT_TRUE(speed_over_travel(small_axis(), travel).stop(End::least).angle_rad.empty());
}

TEST(SpeedOverTravel, AgreesWithTheBrakingAngleWhereGravityIsTheSameEverywhere) {
  Random random(41);
  int compared = 0;
  for (int rig = 0; rig < 60; ++rig) {
    AxisModel axis = random_axis(random);
    axis.load.gravity = {};
    axis.load.cable_stiffness_Nmprad = 0;
    const Travel travel = random_travel(random);
    const SpeedOverTravel speeds = speed_over_travel(axis, travel);
    const double top = top_speed_radps(axis);
    const double limit = end_angle_rad(travel, *travel.stops_rad, End::most);
    const SpeedBound& bound = speeds.stop(End::most);
    for (std::size_t i = 0; i + 1 < bound.angle_rad.size(); ++i) {
      if (bound.speed_radps[i] >= top) continue;
      const auto angle = stopping_angle_rad(axis, Slowing::braking, bound.speed_radps[i], 0);
      ASSERT_TRUE(angle);
      // The first step is 1/3600 of the travel; where viscous friction is strong it is wrong by
      // less than a tenth of that. The later ones: Runge-Kutta's error over the envelope's kinks.
      EXPECT_NEAR(*angle, limit - bound.angle_rad[i],
                  tol(1e-3 * *angle + *travel.stops_rad / 36000));
      ++compared;
    }
  }
  EXPECT_GT(compared, 300);
}

TEST(SpeedOverTravel, AMirroredAxisMirrorsItAndTheStopComesAfterTheSoftLimit) {
  Random random(42);
  for (int rig = 0; rig < 200; ++rig) {
    const AxisModel axis = random_axis(random);
    const Travel travel = random_travel(random);
    const SpeedOverTravel here = speed_over_travel(axis, travel);
    const SpeedOverTravel there = speed_over_travel(tests::mirrored(axis), tests::mirrored(travel));
    EXPECT_NEAR(worst_pull_Nm(axis.load, travel),
                worst_pull_Nm(tests::mirrored(axis).load, tests::mirrored(travel)), tol(1e-12));
    const SpeedBound &a = here.soft(End::most), &b = there.soft(End::least);
    ASSERT_EQ(a.angle_rad.size(), b.angle_rad.size());
    const double top = top_speed_radps(axis);
    for (std::size_t i = 0; i < a.angle_rad.size(); ++i) {
      const std::size_t j = a.angle_rad.size() - 1 - i;
      EXPECT_NEAR(a.angle_rad[i], -b.angle_rad[j], tol(1e-12));
      EXPECT_NEAR(a.speed_radps[i], b.speed_radps[j], tol(1e-9 * top));
      EXPECT_LE(a.speed_radps[i], top);
    }
  }
}

/// With a huge position gain the loop asks for full speed right up to the target and for full speed
/// back from there on: what it overshoots is what it needs to stop.
TEST(LeastInset, IsHowFarTheSimulatedAxisRunsOnWhenItBrakesAsHardAsItCan) {
  AxisModel axis = small_axis();
  axis.load.gravity = {};
  axis.gear.backlash_rad = 0;
  axis.gear.stiffness_Nmprad = 1e5;
  axis.gear.damping_Nmsprad = 4;
  axis.control.position_gain_1ps = 1e6;
  axis.control.speed_gain_Nmsprad = 2.5;
  axis.control.speed_integral_gain_Nmprad = 0;
  for (const double limit : {6.0, 11.0, 15.0}) {
    axis.control.speed_limit_radps = limit;
    const double move = 2;
    const Trace trace = simulate_step(axis, move, 0.6);
    const auto passed = std::ranges::find_if(trace.angle_rad, [&](double a) { return a >= move; });
    ASSERT_NE(passed, trace.angle_rad.end());
    const double speed = trace.speed_radps[std::size_t(passed - trace.angle_rad.begin())];
    EXPECT_NEAR(speed, limit, 0.06 * limit);
    const double ran_on = *std::max_element(trace.angle_rad.begin(), trace.angle_rad.end()) - move;
    const double braking = *stopping_angle_rad(axis, Slowing::braking, speed, 0);
    const double needed = braking + unbraked_angle_rad(axis, speed);
    // The target is passed somewhere inside a sample: up to one period less is lost. Beyond that
    // the spring of the gear (0.1 mrad) and its swing are left out: 2 % of the braking.
    EXPECT_LE(ran_on, needed + tol(0.02 * braking)) << limit;
    EXPECT_GE(ran_on, needed - speed / axis.control.control_rate_Hz - tol(0.02 * braking)) << limit;
  }
}

TEST(WorstPull, IsTheLargestBetweenTheStops) {
  AxisLoad load{.gravity = {.cos_Nm = 2, .sin_Nm = 0, .constant_Nm = 0.5}};
  EXPECT_DOUBLE_EQ(worst_pull_Nm(load, travel_between(1, 0)), 2.5);
  EXPECT_DOUBLE_EQ(worst_pull_Nm(load, travel_between(1, 0, std::numbers::pi / 2)),
                   2 * std::sin(0.5) + 0.5);
  EXPECT_DOUBLE_EQ(worst_pull_Nm(load, {}), 2.5) << "stops unknown: all angles";
  load.gravity = {};
  load.cable_stiffness_Nmprad = 0.4;
  load.cable_centre_rad = 1;
  EXPECT_DOUBLE_EQ(worst_pull_Nm(load, travel_between(3, 0, 1)), 0.4 * 1.5);
  Travel without_stops;
  without_stops.stops_rad = kInfinity;
  without_stops.cable_rad = 20;
  without_stops.centre_rad = 1;
  EXPECT_DOUBLE_EQ(worst_pull_Nm(load, without_stops), 0.4 * 10) << "as far as the cable goes";
}

TEST(WorstPull, OfRandomAxesIsThatOfAScan) {
  Random random(43);
  for (int i = 0; i < 100; ++i) {
    const AxisLoad load = random_axis(random).load;
    const Travel travel = random_travel(random);
    double scanned = 0;
    for (int k = 0; k <= 4000; ++k) {
      const double angle = travel.centre_rad + *travel.stops_rad * (k / 4000.0 - 0.5);
      scanned = std::max(scanned, std::abs(load.pull_Nm(angle)));
    }
    const double worst = worst_pull_Nm(load, travel);
    // amplitude·(step/2)²/2: steps of 2 mrad, weights up to 4.2 N·m
    EXPECT_NEAR(worst, scanned, tol(3e-6));
    EXPECT_GE(worst, scanned * (1 - 1e-12));
  }
}

}  // namespace
}  // namespace gazewright
