#include "core/drive/drive.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/tol.h"

namespace gazewright {
namespace {

MotorDrive outrunner() {
  return {.torque_constant_NmpA = 0.02,
          .phase_resistance_ohm = 0.06,
          .phase_inductance_H = 30e-6,
          .pole_pairs = 7,
          .current_limit_A = 30,
          .bus_voltage_V = 24,
          .modulation_limit = 0.95,
          .supply_current_limit_A = 15};
}
double no_load_radps(const MotorDrive& drive) {
  return 1.5 * drive.phase_voltage_V() / drive.torque_constant_NmpA;
}

TEST(DrivingLimit, NamesWhatLimits) {
  MotorDrive drive = outrunner();
  EXPECT_EQ(driving_limit(drive, 0).by, CurrentLimit::current);
  EXPECT_EQ(driving_limit(drive, 0.5 * no_load_radps(drive)).by, CurrentLimit::supply_current);
  EXPECT_EQ(driving_limit(drive, 0.99 * no_load_radps(drive)).by, CurrentLimit::bus_voltage);
}

TEST(DrivingCurrent, WithoutInductanceFallsInAStraightLine) {
  MotorDrive drive = outrunner();
  drive.phase_inductance_H = 0;
  drive.current_limit_A = drive.supply_current_limit_A = kInfinity;
  for (double part : {0.0, 0.1, 0.5, 0.9}) {
    const double expected_A = (1 - part) * drive.phase_voltage_V() / drive.phase_resistance_ohm;
    EXPECT_NEAR(driving_current_A(drive, part * no_load_radps(drive)), expected_A,
                tol(1e-15) * 10 * expected_A);  // ten roundings
  }
}

TEST(DrivingCurrent, WithoutResistanceIsWhatTheReactanceLeaves) {
  MotorDrive drive = outrunner();
  drive.phase_resistance_ohm = 0;
  drive.current_limit_A = drive.supply_current_limit_A = kInfinity;
  const double w = 0.6 * no_load_radps(drive);
  // e = 0.6 Vp leaves √(1 − 0.36) = 0.8 Vp across the reactance.
  const double expected_A = 0.8 * drive.phase_voltage_V() / (7 * w * 30e-6);
  EXPECT_NEAR(driving_current_A(drive, w), expected_A, tol(1e-14) * expected_A);
}

TEST(DrivingCurrent, WithoutAnyImpedanceIsTheDrivesLimitUpToNoLoadSpeedAndThenNothing) {
  MotorDrive drive = outrunner();
  drive.phase_resistance_ohm = drive.phase_inductance_H = 0;
  drive.supply_current_limit_A = kInfinity;
  EXPECT_EQ(driving_current_A(drive, 0), 30);
  EXPECT_EQ(driving_current_A(drive, 0.999 * no_load_radps(drive)), 30);
  EXPECT_EQ(driving_current_A(drive, 1.001 * no_load_radps(drive)), 0);
  EXPECT_EQ(braking_current_A(drive, 0.999 * no_load_radps(drive)), 30);
  EXPECT_EQ(braking_current_A(drive, 1.001 * no_load_radps(drive)), 0);
}

TEST(DrivingCurrent, OfALosslessMotorOnALimitedSupplyIsPowerOverSpeed) {
  MotorDrive drive = outrunner();
  drive.phase_resistance_ohm = drive.phase_inductance_H = 0;
  const double w = 0.8 * no_load_radps(drive);
  EXPECT_NEAR(driving_current_A(drive, w), 24 * 15 / (0.02 * w), tol(1e-14));
}

TEST(DrivingCurrent, NearsTheUnlimitedSupplyAsItsLimitGrows) {
  MotorDrive drive = outrunner();
  const double w = 0.7 * no_load_radps(drive);
  drive.current_limit_A = kInfinity;
  drive.supply_current_limit_A = kInfinity;
  const double unlimited_A = driving_current_A(drive, w);
  drive.supply_current_limit_A = 1e12;
  EXPECT_EQ(driving_current_A(drive, w), unlimited_A);
}

TEST(DrivingCurrent, IsZeroWhereTheSupplyGivesNothing) {
  MotorDrive drive = outrunner();
  drive.supply_current_limit_A = 0;
  EXPECT_EQ(driving_current_A(drive, 0), 0);
  EXPECT_EQ(driving_current_A(drive, 100), 0);
}

TEST(Currents, StayFiniteAndSignedAtTheEdgesOfNumbers) {
  for (double resistance : {0.0, 1e-12, 1e6})
    for (double inductance : {0.0, 1e-12, 1.0})
      for (double supply : {0.0, 1e-9, kInfinity})
        for (double speed : {0.0, 1e-300, 1e-9, 1e3, 1e9, 1e150}) {
          MotorDrive drive = outrunner();
          drive.phase_resistance_ohm = resistance;
          drive.phase_inductance_H = inductance;
          drive.supply_current_limit_A = supply;
          for (double current_A :
               {driving_current_A(drive, speed), braking_current_A(drive, speed)})
            EXPECT_TRUE(current_A >= 0 && current_A <= 30)
                << current_A << " A at R " << resistance << ", L " << inductance << ", supply "
                << supply << ", speed " << speed;
        }
}

}  // namespace
}  // namespace gazewright
