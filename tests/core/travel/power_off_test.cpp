#include "core/travel/power_off.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/travel/slowing.h"
#include "core/travel/soft_limits.h"
#include "tests/core/travel/random_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using testing::Random;
using tests::linear_axis;
using tests::random_axis;
using tests::random_travel;
using tests::small_axis;

/// 2 kg·m² without friction.
AxisModel flywheel() {
  AxisModel axis = linear_axis();
  axis.gear.ratio = 1;
  axis.gear.rotor_inertia_kgm2 = 0.5;
  axis.load.inertia_kgm2 = 1.5;
  return axis;
}

// Textbook retardation: J·dω/dt = −c − bω (e.g. run-down tests of machines; from memory).
TEST(Coasting, AgainstSlidingFrictionTakesTheEnergyOverTheTorque) {
  AxisModel axis = flywheel();
  axis.load.coulomb_Nm = 0.8;
  EXPECT_NEAR(*stopping_angle_rad(axis, Slowing::open, 6, 0), 36 * 2 / 1.6, tol(1e-12));
  EXPECT_NEAR(*stopping_angle_rad(axis, Slowing::open, 6, 0.3), 36 * 2 / 1.0, tol(1e-12));
  EXPECT_FALSE(stopping_angle_rad(axis, Slowing::open, 6, 0.81));
}

TEST(Coasting, AgainstViscousFrictionAloneTurnsSpeedTimesInertiaOverIt) {
  AxisModel axis = flywheel();
  axis.load.viscous_Nmsprad = 0.4;
  EXPECT_NEAR(*stopping_angle_rad(axis, Slowing::open, 6, 0), 6 * 2 / 0.4, tol(1e-12));
}

TEST(Coasting, AgainstBothIsTheKnownLogarithm) {
  AxisModel axis = flywheel();
  const double c = axis.load.coulomb_Nm = 0.8, b = axis.load.viscous_Nmsprad = 0.4;
  const double exact = 2 / b * (6 - c / b * std::log(1 + b * 6 / c));
  EXPECT_NEAR(*stopping_angle_rad(axis, Slowing::open, 6, 0), exact, tol(1e-9 * exact));
}

TEST(Coasting, NeverEndsWhereNothingSlowsIt) {
  EXPECT_FALSE(stopping_angle_rad(flywheel(), Slowing::open, 6, 0));
}

// A heavy load turns the gearbox: rotor and drag count 1/η_back times (Khurmi & Gupta, ex. 3.13).
TEST(Coasting, DrivesRotorAndDragBackThroughTheGear) {
  AxisModel axis = flywheel();
  axis.gear.ratio = 5;
  axis.gear.back_efficiency = 0.8;
  axis.gear.efficiency = 0.5;
  axis.gear.rotor_inertia_kgm2 = 0.01;
  axis.gear.drag_Nm = 0.06;
  axis.load.coulomb_Nm = 0.1;
  const double slowing = (5 * 0.06 / 0.8 + 0.1) / (1.5 + 25 * 0.01 / 0.8);
  EXPECT_NEAR(*stopping_angle_rad(axis, Slowing::open, 6, 0), 36 / (2 * slowing), tol(1e-11));
}

TEST(ShortedMotor, BrakesWithTheSquareOfItsMotorConstantPerSpeedWhileSlow) {
  AxisModel axis = flywheel();
  axis.drive.phase_inductance_H = 0;
  const double km =
      motor_constant_NmpsqrtW(axis.drive.torque_constant_NmpA, axis.drive.phase_resistance_ohm);
  EXPECT_DOUBLE_EQ(shorted_torque_Nm(axis.drive, 7), km * km * 7);
  EXPECT_NEAR(*stopping_angle_rad(axis, Slowing::shorted, 6, 0), 6 * 2 / (km * km),
              tol(1e-9 * 12 / (km * km)));
}

TEST(ShortedMotor, TurnsAllOfItsPowerIntoCopperLoss) {
  const MotorDrive drive = small_axis().drive;
  for (const double speed : {1.0, 100.0, 316.0, 1000.0, 5000.0}) {
    const double e = drive.torque_constant_NmpA * speed / 1.5;
    const double x = drive.pole_pairs * speed * drive.phase_inductance_H;
    const double current = e / std::hypot(drive.phase_resistance_ohm, x);
    const double loss_W = 1.5 * drive.phase_resistance_ohm * current * current;
    EXPECT_NEAR(shorted_torque_Nm(drive, speed) * speed, loss_W, tol(1e-12 * loss_W));
  }
  // Most where reactance and resistance are alike: Kt²/(3·p·L).
  const double best = drive.phase_resistance_ohm / drive.pole_pairs / drive.phase_inductance_H;
  EXPECT_NEAR(
      shorted_torque_Nm(drive, best),
      std::pow(drive.torque_constant_NmpA, 2) / 3 / drive.pole_pairs / drive.phase_inductance_H,
      tol(1e-12));
  EXPECT_LT(shorted_torque_Nm(drive, 2 * best), shorted_torque_Nm(drive, best));
  EXPECT_LT(shorted_torque_Nm(drive, best / 2), shorted_torque_Nm(drive, best));
}

TEST(ShortedMotor, SinksAtTheSpeedWhereItsTorqueBalancesTheWeight) {
  AxisModel axis = flywheel();
  axis.drive.phase_inductance_H = 0;
  const double km2 =
      std::pow(axis.drive.torque_constant_NmpA, 2) / 1.5 / axis.drive.phase_resistance_ohm;
  EXPECT_NEAR(*sinking_speed_radps(axis, Slowing::shorted, 3 * km2, 10), 3, tol(1e-9));
  EXPECT_FALSE(sinking_speed_radps(axis, Slowing::shorted, 11 * km2, 10)) << "faster than that";
  EXPECT_FALSE(sinking_speed_radps(axis, Slowing::open, 0, 10)) << "nothing pushes";
}

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
    const double gravity = worst_gravity_Nm(axis.load.gravity, travel);
    const auto open = stopping_angle_rad(axis, Slowing::open, top, gravity);
    const auto shorted = stopping_angle_rad(axis, Slowing::shorted, top, gravity);
    if (gravity < friction_hold_Nm(axis)) {
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
