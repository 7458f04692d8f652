#include "core/motion/slowing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::braked_at;
using tests::flywheel;
using tests::small_axis;

// ω²/2α: 10 rad/s at 200 rad/s² need 14.3°. Uniformly decelerated motion, any mechanics text.
TEST(BrakingAngle, AtConstantDecelerationIsHalfTheSquareOfTheSpeedOverIt) {
  const auto angle = stopping_angle_rad(braked_at(200), Slowing::braking, 10, 0);
  ASSERT_TRUE(angle);
  EXPECT_NEAR(*angle, 0.25, tol(1e-14));
  EXPECT_NEAR(*angle * 180 / std::numbers::pi, 14.3, tol(0.05));
}

TEST(BrakingAngle, CountsGravityThatPushesOn) {
  // 300 N·m of braking less 60 of gravity on 1.5 kg·m²: 160 rad/s².
  EXPECT_NEAR(*stopping_angle_rad(braked_at(200), Slowing::braking, 10, 60), 100 / 320.0,
              tol(1e-14));
  EXPECT_FALSE(stopping_angle_rad(braked_at(200), Slowing::braking, 10, 301));
}

TEST(SpeedLeft, IsTheRootOfWhatTheRoomDoesNotTake) {
  const AxisModel axis = braked_at(200);
  EXPECT_NEAR(speed_left_radps(axis, Slowing::braking, 10, 0.09, 0), std::sqrt(100 - 36.0),
              tol(1e-12));
  EXPECT_EQ(speed_left_radps(axis, Slowing::braking, 10, 0.25 * (1 + 1e-12), 0), 0);
  EXPECT_EQ(speed_left_radps(axis, Slowing::braking, 10, 0, 0), 10);
  // Gravity of 450 N·m against 300: it gains 100 rad/s².
  EXPECT_NEAR(speed_left_radps(axis, Slowing::braking, 10, 0.22, 450), 12, tol(1e-12));
}

TEST(SpeedLeft, NeedsTheRestOfTheBrakingAngle) {
  const AxisModel axis = small_axis();
  const double push = 0.02;
  for (const double speed : {2.0, 8.0, 15.0}) {
    const double whole_rad = *stopping_angle_rad(axis, Slowing::braking, speed, push);
    for (const double part : {0.1, 0.5, 0.9}) {
      const double left = speed_left_radps(axis, Slowing::braking, speed, part * whole_rad, push);
      const double rest_rad = *stopping_angle_rad(axis, Slowing::braking, left, push);
      EXPECT_NEAR(rest_rad / whole_rad, 1 - part, tol(1e-6)) << speed;
    }
  }
}

// A train that its cables pull on with 0.2 N·m against T: φ = ω²·J/(2·(T − 0.2)).
TEST(BrakingAngle, CountsCablesThatPushOn) {
  AxisModel axis = braked_at(200);
  axis.load.cable_stiffness_Nmprad = 50;
  axis.load.cable_centre_rad = 0.3;
  const double push = axis.load.largest_pull_Nm(-0.5, 1.1);  // 0.8 rad off the centre
  EXPECT_NEAR(*stopping_angle_rad(axis, Slowing::braking, 10, push), 100 * 1.5 / 2 / (300 - 40),
              tol(1e-13));
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

}  // namespace
}  // namespace gazewright
