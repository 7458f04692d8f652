#include "core/motion/limits_in_force.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

#include "tests/core/motion/small_axis.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::linear_axis;
using tests::Random;
using tests::small_axis;

double sum(const LimitShares& shares) { return std::accumulate(shares.begin(), shares.end(), 0.0); }

/// Of a step until it stays within 0.2 % of its move.
LimitShares step_shares(const AxisModel& axis, double move_rad) {
  const Trace trace = simulate_step(axis, move_rad, 2);
  const double settle_s =
      step_figures(trace, move_rad, 2e-3 * std::abs(move_rad)).settle_time_s.value();
  return limit_shares(limits_in_force(axis, trace, move_rad, settle_s), trace.sample_time_s,
                      settle_s)
      .value();
}

/// Inertias alone, gains sound for them: 1 N·m per rad/s on 5e-3 kg·m² crosses at 200 rad/s.
AxisModel free_axis() {
  AxisModel axis = linear_axis();
  axis.gear.ratio = 10;
  axis.gear.rotor_inertia_kgm2 = 2e-5;
  axis.load.inertia_kgm2 = 3e-3;
  axis.gear.stiffness_Nmprad = 1e5;
  axis.gear.damping_Nmsprad = 5;
  axis.control.speed_gain_Nmsprad = 1;
  axis.control.speed_integral_gain_Nmprad = 0;
  axis.control.position_gain_1ps = 30;
  return axis;
}

/// Every limit but these has no part.
void expect_only(const LimitShares& shares, std::initializer_list<MoveLimit> limits) {
  for (std::size_t i = 0; i < kMoveLimits; ++i) {
    const auto limit = static_cast<MoveLimit>(i);
    if (std::find(limits.begin(), limits.end(), limit) == limits.end())
      EXPECT_EQ(shares[i], 0) << name_of(limit);
    else
      EXPECT_GT(shares[i], 0.02) << name_of(limit);
  }
  EXPECT_NEAR(sum(shares), 1, tol(1e-12));  // a few thousand terms, each rounded to 1e-16
}

// Without a limit a cascade of gains kp and ks is free all the way; with the drive's current as the
// only one, torque is cut until u = ks·(kp·(θ − φ) − ω) falls to the limit. Under constant
// acceleration α, ω = α·t and φ = α·t²/2, so that is the root of kp·(θ − α·t²/2) − α·t = T/ks.
TEST(LimitsInForce, WithNothingButACurrentLimitItIsTheCurrentUntilTheCommandFallsBelowIt) {
  AxisModel axis = free_axis();
  expect_only(step_shares(axis, 0.7), {MoveLimit::loop});
  axis.drive.current_limit_A = 20;
  const double torque_Nm = 10 * 20 * axis.drive.torque_constant_NmpA;
  const double alpha = torque_Nm / (3e-3 + 100 * 2e-5), kp = 30, move = 3;
  const double c = kp * move - torque_Nm;
  const double wanted_s = (std::sqrt(alpha * alpha + 2 * kp * alpha * c) - alpha) / (kp * alpha);
  const Trace trace = simulate_step(axis, move, 1);
  const auto limits = limits_in_force(axis, trace, move, 1);
  const auto first = std::find(limits.begin() + 2, limits.end(), MoveLimit::loop);
  // One sample of computing delay, and the current loop's and the estimator's lag (0.16 ms and 0.4
  // ms) shift torque and speed: within 1 ms of some 40.
  EXPECT_GT(wanted_s, 0.02);
  EXPECT_NEAR(double(first - limits.begin()) * trace.sample_time_s, wanted_s, 1e-3);
  expect_only(step_shares(axis, move), {MoveLimit::drive_current, MoveLimit::loop});
  axis.drive.motor_peak_is_least = true;
  expect_only(step_shares(axis, move), {MoveLimit::motor_current, MoveLimit::loop});
}

TEST(LimitsInForce, WithNothingButTheGearboxsTorqueItIsThat) {
  AxisModel axis = free_axis();
  axis.gear.peak_torque_Nm = 3;
  const LimitShares gear = step_shares(axis, 1);
  expect_only(gear, {MoveLimit::gear_torque, MoveLimit::loop});
  // The same torque as a current: the same step, only the name differs.
  axis.gear.peak_torque_Nm = kInfinity;
  axis.drive.current_limit_A = 3 / (10 * axis.drive.torque_constant_NmpA);
  EXPECT_DOUBLE_EQ(share_of(step_shares(axis, 1), MoveLimit::drive_current),
                   share_of(gear, MoveLimit::gear_torque));
}

TEST(LimitsInForce, WithNothingButALowBusItIsTheVoltage) {
  AxisModel axis = free_axis();
  axis.drive.bus_voltage_V = 9;
  expect_only(step_shares(axis, 1), {MoveLimit::voltage, MoveLimit::loop});
}

TEST(LimitsInForce, WithNothingButAWeakSupplyItIsTheSupply) {
  AxisModel axis = free_axis();
  axis.drive.bus_voltage_V = 1e4;  // volts enough; the supply's power is V·I
  axis.drive.supply_current_limit_A = 40 / 1e4;
  expect_only(step_shares(axis, 1), {MoveLimit::supply, MoveLimit::loop});
}

// ω_cmd is cut while kp·(θ − φ) > limit: until the last limit/kp of the way. Speed approaches the
// limit with J/ks = 5 ms, which the cruise runs late by.
TEST(LimitsInForce, WithNothingButASpeedLimitItIsThatForTheCruise) {
  AxisModel axis = free_axis();
  axis.control.speed_limit_radps = 5;
  const double move = 2, cruise_s = (move - 5.0 / 30) / 5;
  const Trace trace = simulate_step(axis, move, 2);
  const auto limits = limits_in_force(axis, trace, move, 2);
  const auto cruising = std::count(limits.begin(), limits.end(), MoveLimit::speed);
  EXPECT_NEAR(double(cruising) * trace.sample_time_s, cruise_s + 5e-3, 1e-3);
  expect_only(step_shares(axis, move), {MoveLimit::speed, MoveLimit::loop});
}

TEST(LimitsInForce, InAWideGapTheFreeSamplesAreThoseOfTheGapWhereTheTeethAreApart) {
  AxisModel axis = small_axis();
  axis.load.gravity = {};
  axis.gear.backlash_rad = 0.03;
  const Trace trace = simulate_step(axis, 0.5, 0.6);
  const auto limits = limits_in_force(axis, trace, 0.5, 0.6);
  for (std::size_t k = 0; k < limits.size(); ++k) {
    const double twist = trace.motor_angle_rad[k] / axis.gear.ratio - trace.angle_rad[k];
    if (limits[k] == MoveLimit::gap) {
      ASSERT_LT(std::abs(twist), 0.015);
    }
    if (limits[k] == MoveLimit::loop) {
      ASSERT_GE(std::abs(twist), 0.015);
    }
  }
  EXPECT_GT(std::count(limits.begin(), limits.end(), MoveLimit::gap), 200);
  EXPECT_GT(std::count(limits.begin(), limits.end(), MoveLimit::loop), 200);
}

TEST(LimitsInForce, OfAnAxisOfAnyScaleAddUpToOne) {
  Random random(31);
  for (int i = 0; i < 60; ++i) {
    AxisModel axis = small_axis();
    axis.gear.ratio = random.log_uniform(0.01, 1000);
    axis.gear.backlash_rad = random.log_uniform(1e-5, 0.1);
    axis.load.inertia_kgm2 = random.log_uniform(1e-6, 1);
    axis.drive.current_limit_A = random.log_uniform(0.1, 1e3);
    axis.drive.bus_voltage_V = random.log_uniform(1, 1e3);
    axis.drive.supply_current_limit_A =
        random.chance(0.3) ? kInfinity : random.log_uniform(0.1, 50);
    axis.control.speed_limit_radps = random.chance(0.3) ? kInfinity : random.log_uniform(0.5, 100);
    axis.control.encoder_at_output = random.chance(0.5);
    const double until_s = random.uniform(0.001, 0.05);
    const Trace trace = simulate_step(axis, 0.5, 0.05);
    const auto limits = limits_in_force(axis, trace, 0.5, until_s);
    ASSERT_LE(limits.size(), trace.time_s.size());
    const auto shares = limit_shares(limits, trace.sample_time_s, until_s);
    ASSERT_TRUE(shares) << i;
    EXPECT_NEAR(sum(*shares), 1, tol(1e-12)) << i;
  }
}

TEST(LimitsInForce, OfNoTimeHaveNoShares) {
  const AxisModel axis = small_axis();
  const Trace trace = simulate_step(axis, 0.5, 0.01);
  EXPECT_TRUE(limits_in_force(axis, trace, 0.5, 0).empty());
  EXPECT_FALSE(limit_shares({}, trace.sample_time_s, 0));
}

TEST(FastestMoveShares, OfATorqueThatSpeedDoesNotChangeAreAllCurrent) {
  AxisModel axis = free_axis();
  axis.drive.current_limit_A = 20;
  const auto shares = fastest_move_shares(axis, 0.7);
  ASSERT_TRUE(shares);
  EXPECT_EQ(share_of(*shares, MoveLimit::voltage) + share_of(*shares, MoveLimit::supply), 0);
  EXPECT_NEAR(share_of(*shares, MoveLimit::drive_current), 1, tol(1e-9));
}

// Without resistance and inductance the current's limit holds until the back-EMF meets the bus, and
// the cruise at that speed is the voltage's: θ/ω + ω/α in all, of which 2·ω/α is not the cruise.
TEST(FastestMoveShares, OfATrapezoidAreVoltageInTheCruise) {
  AxisModel axis = free_axis();
  axis.drive.current_limit_A = 20;
  axis.drive.phase_resistance_ohm = 1e-9;
  axis.drive.phase_inductance_H = 0;
  const double top = 8, alpha = 200 * axis.drive.torque_constant_NmpA / 5e-3, move = 0.5;
  axis.drive.bus_voltage_V = axis.drive.torque_constant_NmpA * top * axis.gear.ratio / 1.5 *
                             std::sqrt(3.0) / axis.drive.modulation_limit;
  const auto shares = fastest_move_shares(axis, move);
  ASSERT_TRUE(shares);
  const double whole_s = move / top + top / alpha;
  // The path's knee lies between two of 400 points, and no straight piece follows it.
  EXPECT_NEAR(share_of(*shares, MoveLimit::drive_current), 2 * top / alpha / whole_s, 5e-3);
  EXPECT_NEAR(sum(*shares), 1, tol(1e-9));
}

TEST(FastestMoveShares, AreEmptyWhereThereIsNoMove) {
  AxisModel axis = small_axis();
  EXPECT_FALSE(fastest_move_shares(axis, 0));
  axis.load.coulomb_Nm = 1e3;
  EXPECT_FALSE(fastest_move_shares(axis, 0.5));
}

/// The axis with one of its limits raised by a quarter.
AxisModel eased(AxisModel axis, MoveLimit limit) {
  switch (limit) {
    case MoveLimit::gear_torque:
      axis.gear.peak_torque_Nm *= 1.25;
      break;
    case MoveLimit::voltage:
      axis.drive.bus_voltage_V *= 1.25;
      axis.drive.supply_current_limit_A /= 1.25;  // the supply's power stays
      break;
    case MoveLimit::supply:
      axis.drive.supply_current_limit_A *= 1.25;
      break;
    default:
      axis.drive.current_limit_A *= 1.25;
  }
  return axis;
}

TEST(FastestMoveShares, RaisingTheLimitInForceNeverMakesTheShortestTimeLonger) {
  Random random(32);
  int moves = 0, shorter = 0;
  for (int i = 0; i < 150; ++i) {
    AxisModel axis = small_axis();
    axis.gear.ratio = random.log_uniform(1, 100);
    axis.gear.peak_torque_Nm = random.log_uniform(0.5, 50);
    axis.load.inertia_kgm2 = random.log_uniform(1e-5, 1e-1);
    axis.drive.current_limit_A = random.log_uniform(3, 100);
    axis.drive.bus_voltage_V = random.log_uniform(6, 60);
    axis.drive.supply_current_limit_A = random.log_uniform(0.5, 30);
    const double move_rad = random.log_uniform(0.05, 3);
    const auto before = fastest_move(axis, move_rad);
    const auto shares = fastest_move_shares(axis, move_rad);
    ASSERT_EQ(before.has_value(), shares.has_value());
    if (!before) continue;
    ++moves;
    EXPECT_NEAR(sum(*shares), 1, tol(1e-9)) << i;
    for (std::size_t k = 0; k < kMoveLimits; ++k) {
      const auto limit = static_cast<MoveLimit>(k);
      const auto after = fastest_move(eased(axis, limit), move_rad);
      ASSERT_TRUE(after) << i << name_of(limit);
      // Two integrations in steps of 1e-6 of the move each, some tens of them.
      EXPECT_LE(after->time_s, before->time_s * (1 + 1e-5)) << i << ' ' << name_of(limit);
      if ((*shares)[k] > 0.1) {
        EXPECT_LT(after->time_s, before->time_s * (1 - 1e-4)) << i << ' ' << name_of(limit);
        ++shorter;
      }
    }
  }
  EXPECT_GT(moves, 100);
  EXPECT_GT(shorter, 150);
}

}  // namespace
}  // namespace gazewright
