#include <gtest/gtest.h>

#include <cmath>

#include "core/drive/drive.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

/// Drives from a watch motor to a traction motor; one in eight each without resistance, inductance
/// or supply limit.
MotorDrive random_drive(Random& random) {
  MotorDrive drive;
  drive.bus_voltage_V = random.log_uniform(1, 800);
  drive.modulation_limit = random.uniform(0.5, 1.15);
  drive.torque_constant_NmpA = torque_constant_NmpA(random.log_uniform(0.1, 1000));
  const double current_A = random.log_uniform(0.1, 500);
  drive.current_limit_A = current_A;
  drive.phase_resistance_ohm =
      random.chance(0.125) ? 0 : drive.bus_voltage_V / current_A * random.log_uniform(1e-3, 3);
  drive.pole_pairs = 1 + random.below(20);
  const double no_load_radps = 1.5 * drive.phase_voltage_V() / drive.torque_constant_NmpA;
  drive.phase_inductance_H = random.chance(0.125)
                                 ? 0
                                 : drive.bus_voltage_V / current_A * random.log_uniform(1e-3, 3) /
                                       (drive.pole_pairs * no_load_radps);
  drive.supply_current_limit_A =
      random.chance(0.125) ? kInfinity : current_A * random.log_uniform(0.01, 3);
  return drive;
}

double no_load_radps(const MotorDrive& drive) {
  return 1.5 * drive.phase_voltage_V() / drive.torque_constant_NmpA;
}
/// Any speed up to three times no-load; one in ten standstill, one in ten a hair below no-load.
double random_speed_radps(Random& random, const MotorDrive& drive) {
  if (random.chance(0.1)) return 0;
  const double sign = random.chance(0.5) ? 1 : -1;
  if (random.chance(0.1)) return sign * no_load_radps(drive) * (1 - random.log_uniform(1e-14, 0.1));
  return sign * no_load_radps(drive) * random.log_uniform(1e-4, 3);
}

/// (R·i ± e)² + (X·i)² − Vp² with e² − Vp² as a product, over Vp²: positive where the bus cannot do
/// it. `sign` +1 driving, −1 braking.
double bus_excess(const MotorDrive& d, double i_A, double speed_radps, int sign) {
  const double e_V = d.torque_constant_NmpA * std::abs(speed_radps) / 1.5, Vp = d.phase_voltage_V();
  const double X_ohm = d.pole_pairs * std::abs(speed_radps) * d.phase_inductance_H;
  const double Z2 = d.phase_resistance_ohm * d.phase_resistance_ohm + X_ohm * X_ohm;
  return (Z2 * i_A * i_A + sign * 2 * d.phase_resistance_ohm * i_A * e_V -
          (Vp - e_V) * (Vp + e_V)) /
         (Vp * Vp);
}
/// Power over what the supply gives, −1 where there is no such limit.
double supply_excess(const MotorDrive& d, double i_A, double speed_radps) {
  if (std::isinf(d.supply_current_limit_A)) return -1;
  const double e_V = d.torque_constant_NmpA * std::abs(speed_radps) / 1.5;
  return 1.5 * i_A * (d.phase_resistance_ohm * i_A + e_V) /
             (d.bus_voltage_V * d.supply_current_limit_A) -
         1;
}

// Rounding of the constraints: about ten roundings of 1.1e-16 on terms of size 1 (driving) or 10
// (braking at 3 times no-load).
constexpr double kDrivingRounding = 2e-15, kBrakingRounding = 3e-14;

TEST(DrivingCurrent, MeetsEveryLimitAndOneOfThemExactly) {
  Random random(91);
  int by[3] = {};
  for (int round = 0; round < 20000; ++round) {
    const MotorDrive drive = random_drive(random);
    const double speed = random_speed_radps(random, drive);
    const LimitedCurrent limit = driving_limit(drive, speed);
    ASSERT_TRUE(limit.current_A >= 0 && limit.current_A <= drive.current_limit_A);
    if (limit.current_A > 0) {
      ASSERT_LE(bus_excess(drive, limit.current_A, speed, +1), tol(kDrivingRounding));
      ASSERT_LE(supply_excess(drive, limit.current_A, speed), tol(kDrivingRounding));
    }
    const double more_A = 1.000001 * limit.current_A;
    switch (limit.by) {
      case CurrentLimit::current:
        ASSERT_EQ(limit.current_A, drive.current_limit_A);
        break;
      case CurrentLimit::bus_voltage:
        if (more_A > 0) {
          ASSERT_GT(bus_excess(drive, more_A, speed, +1), 0);
        } else {  // at no-load speed and above
          ASSERT_GE(bus_excess(drive, 0, speed, +1), 0);
        }
        break;
      case CurrentLimit::supply_current:
        ASSERT_GT(supply_excess(drive, more_A, speed), 0);
        break;
    }
    ++by[static_cast<int>(limit.by)];
  }
  for (int count : by) EXPECT_GT(count, 1000);  // every limit had its turn
}

TEST(DrivingCurrent, NeverGrowsWithSpeed) {
  Random random(92);
  for (int round = 0; round < 3000; ++round) {
    const MotorDrive drive = random_drive(random);
    const double slow = random.uniform(0, 2) * no_load_radps(drive);
    const double fast = slow * (1 + random.log_uniform(1e-6, 1));
    // Two evaluations of one falling function: a few roundings of 1.1e-16.
    EXPECT_LE(driving_current_A(drive, fast), driving_current_A(drive, slow) * (1 + tol(4e-15)));
  }
}

TEST(BrakingCurrent, IsTheLargestThatTheBusVoltageHolds) {
  Random random(93);
  int inside = 0, none = 0;
  for (int round = 0; round < 20000; ++round) {
    const MotorDrive drive = random_drive(random);
    const double speed = random_speed_radps(random, drive);
    const double current_A = braking_current_A(drive, speed);
    ASSERT_TRUE(current_A >= 0 && current_A <= drive.current_limit_A);
    if (current_A == 0) {  // no current brings the voltage within the bus: its least is above zero
      for (double try_A = 1e-6; try_A < 1e6; try_A *= 1.3)
        ASSERT_GT(bus_excess(drive, try_A, speed, -1), 0);
      ++none;
    } else if (current_A < drive.current_limit_A) {
      ASSERT_LE(bus_excess(drive, current_A, speed, -1), tol(kBrakingRounding));
      ASSERT_GT(bus_excess(drive, 1.000001 * current_A, speed, -1), 0);
      ++inside;
    }
  }
  EXPECT_GT(inside, 500);  // each outcome had its turn
  EXPECT_GT(none, 500);
}

TEST(BrakingCurrent, IsNotBoundByTheSupply) {
  Random random(94);
  for (int round = 0; round < 300; ++round) {
    const MotorDrive drive = random_drive(random);
    MotorDrive starved = drive;
    starved.supply_current_limit_A = 0;
    const double speed = random_speed_radps(random, drive);
    EXPECT_EQ(braking_current_A(starved, speed), braking_current_A(drive, speed));
    if (speed != 0) {
      EXPECT_EQ(driving_current_A(starved, speed), 0);
    }
  }
}

TEST(TorqueRange, MirrorsWithTheDirectionOfTurning) {
  Random random(95);
  for (int round = 0; round < 1000; ++round) {
    const MotorDrive drive = random_drive(random);
    const double speed = random_speed_radps(random, drive);
    const TorqueRange forwards = torque_range(drive, speed),
                      backwards = torque_range(drive, -speed);
    EXPECT_EQ(forwards.most_Nm, -backwards.least_Nm);
    EXPECT_EQ(forwards.least_Nm, -backwards.most_Nm);
    EXPECT_LE(forwards.least_Nm, forwards.most_Nm);
  }
}

TEST(TorqueRange, GivesDrivingTorqueAlongTheSpeedAndBrakingTorqueAgainstIt) {
  Random random(96);
  for (int round = 0; round < 1000; ++round) {
    const MotorDrive drive = random_drive(random);
    const double speed = std::abs(random_speed_radps(random, drive));
    const TorqueRange range = torque_range(drive, speed);
    EXPECT_EQ(range.most_Nm, drive.torque_constant_NmpA * driving_current_A(drive, speed));
    const double against_A =
        speed == 0 ? driving_current_A(drive, speed) : braking_current_A(drive, speed);
    EXPECT_EQ(range.least_Nm, -drive.torque_constant_NmpA * against_A);
  }
}

TEST(TorqueRange, OnlyWidensWithVoltage) {
  Random random(97);
  for (int round = 0; round < 3000; ++round) {
    const MotorDrive drive = random_drive(random);
    MotorDrive higher = drive;
    higher.bus_voltage_V *= 1 + random.log_uniform(1e-6, 10);
    const double speed = random_speed_radps(random, drive);
    const TorqueRange low = torque_range(drive, speed), high = torque_range(higher, speed);
    const double rounding_Nm =
        tol(4e-15) * drive.torque_constant_NmpA * drive.current_limit_A;  // a few roundings
    EXPECT_GE(high.most_Nm, low.most_Nm - rounding_Nm);
    EXPECT_LE(high.least_Nm, low.least_Nm + rounding_Nm);
  }
}

TEST(BusPower, IsNegativeWhenTheBrakeReturnsMoreThanTheWindingBurns) {
  MotorDrive drive{.torque_constant_NmpA = 0.06, .phase_resistance_ohm = 0.1};
  // 1.5·0.1·4² − 0.06·4·100 = 2.4 − 24 W
  EXPECT_NEAR(bus_power_W(drive, -4, 100), -21.6, tol(1e-14));
  EXPECT_NEAR(bus_power_W(drive, 4, 100), 26.4, tol(1e-14));
  EXPECT_NEAR(bus_power_W(drive, 4, 0), 2.4, tol(1e-15));
}

}  // namespace
}  // namespace gazewright
