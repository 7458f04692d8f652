#include <gtest/gtest.h>

#include <cmath>

#include "tests/published/direct_current.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::direct_current_motor;
using tests::kRadpsPerRpm;

double no_load_rpm(const MotorDrive& drive) {
  const AxisModel model{.drive = drive, .gear = {}, .load = {}, .control = {}};
  return top_speed_radps(model) / kRadpsPerRpm;
}
double torque_Nm(const MotorDrive& drive, double rpm) {
  return torque_range(drive, rpm * kRadpsPerRpm).most_Nm;
}

TEST(TorqueConstant, PerAmpereOfPhaseAmplitudeIs8Point27OverTheSpeedConstant) {
  // Source: e_LL = √3·p·λ·ω and T = 1.5·p·λ·i (R. Krishnan, Permanent Magnet Synchronous and
  // Brushless DC Motor Drives, CRC Press 2010; derivation from memory). 8.27/KV is the usual
  // printed form, three digits.
  const double constant = torque_constant_NmpA(100 * kRadpsPerRpm);
  EXPECT_NEAR(constant, 8.27 / 100, tol(5e-5));  // half a unit of the last printed digit
  EXPECT_NEAR(constant, std::sqrt(3) / 2 * 60 / (2 * std::numbers::pi * 100), tol(1e-16));
}

TEST(TorqueConstant, IsHalfTheRootOfThreeOfTheSixStepConstant) {
  // Six-step: Kt = Ke = 60/(2π·KV), 0.095493 N·m/A at 100 rpm/V (an identity of SI units).
  EXPECT_NEAR(torque_constant_NmpA(100 * kRadpsPerRpm) / 0.095493, 0.866025, tol(1e-5));
}

TEST(MotorConstant, IsTorqueOverTheRootOfTheCopperLoss) {
  // Definition Km = T/√P = K/√R. A direct-current motor of 0.0274 N·m/A and 4 Ω: 0.0137 N·m/√W
  // (derived). R = R_dc/1.5.
  EXPECT_NEAR(motor_constant_NmpsqrtW(0.0274, 4 / 1.5), 0.0137, tol(1e-17));
}

TEST(NoLoadSpeed, OfAPermanentMagnetMotor) {
  // Source: S.P. Burman, Special Electrical Machines, ex. 4.1, p. 216: 0.12 N·m/A, 48 V; the book
  // truncates 3819.7 to 3819 rpm.
  EXPECT_NEAR(no_load_rpm(direct_current_motor(0.12, 1, 48)), 3819.7, tol(0.1));
}

TEST(NoLoadSpeed, FromTheStallTorqueAndCurrent) {
  // Source: Burman, ex. 4.2, p. 216: 1 N·m at 5 A, 28 V: 1337 rpm.
  EXPECT_NEAR(no_load_rpm(direct_current_motor(1.0 / 5, 1, 28)), 1337, tol(0.5));
}

TEST(StallTorque, OfABrushlessMotorWithTwoPhasesInSeries) {
  // Source: Burman, ex. 4.4, p. 217: 0.12 N·m/A, 48 V less 2 V in the switches, 2·0.15 Ω: 153.33
  // A, 18.4 N·m.
  const MotorDrive motor = direct_current_motor(0.12, 2 * 0.15, 48 - 2);
  EXPECT_NEAR(driving_current_A(motor, 0), 153.33, tol(0.005));
  EXPECT_NEAR(torque_Nm(motor, 0), 18.4, tol(0.05));
}

TEST(SpeedUnderLoad, OfAMotorAtHalfItsVoltage) {
  // Source: inputs of Burman, ex. 4.5, p. 218: 120 V at 6000 rpm, now 60 V, 2.5 Ω, 0.5 N·m. The
  // book's own answer is said to be inaccurate; 2672.75 rpm is the closed form.
  const double constant = 120 / (6000 * kRadpsPerRpm);
  const MotorDrive motor = direct_current_motor(constant, 2.5, 60);
  // 0.05 rpm times the slope K²/R of 1.5e-3 N·m/rpm.
  EXPECT_NEAR(torque_Nm(motor, 2672.75), 0.5, tol(0.05 * 1.5e-3));
}

TEST(SpeedUnderLoad, AndStallTorqueOfASeparatelyExcitedMotor) {
  // Source: B.S. Guru, H.R. Hiziroglu, Electric Machinery and Transformers, ex. 12.1, p. 662: K =
  // 95·0.004, 40 V, 0.8 Ω: stall 19 N·m; 941.7 rpm (printed 942) at 1.2 N·m.
  const MotorDrive motor = direct_current_motor(95 * 0.004, 0.8, 40);
  EXPECT_NEAR(torque_Nm(motor, 0), 19, tol(1e-14));
  EXPECT_NEAR(torque_Nm(motor, 941.7), 1.2, tol(0.1 * 0.019));  // 0.1 rpm, K²/R = 0.019 N·m/rpm
}

TEST(MaximumPower, IsAQuarterOfStallTorqueTimesNoLoadSpeed) {
  // Source: A. Hughes, B. Drury, Electric Motors and Drives (from memory): 24 V, 1 Ω, 0.05 N·m/A
  // without friction: 144 W, at half the no-load speed.
  const MotorDrive motor = direct_current_motor(0.05, 1, 24);
  double most_W = 0, at_radps = 0;
  for (double w = 0; w <= 480; w += 0.5)
    if (const double power_W = w * torque_range(motor, w).most_Nm; power_W > most_W) {
      most_W = power_W;
      at_radps = w;
    }
  EXPECT_NEAR(most_W, 144, tol(1e-12));
  EXPECT_EQ(at_radps, 240);
}

TEST(MaximumEfficiency, IsTheSquareOfOneLessTheRootOfTheCurrentRatio) {
  // Source: the usual result for a direct-current motor (Hughes & Drury, from memory): 24 V, 1 Ω,
  // 0.05 N·m/A, 0.2 A without load: (1 − √(0.2/24))² = 0.825759 at √(0.2·24) = 2.190890 A.
  const MotorDrive motor = direct_current_motor(0.05, 1, 24);
  double best = 0, at_A = 0;
  for (double w = 400; w <= 479; w += 0.001) {
    const double i_A = driving_current_A(motor, w);
    const double efficiency =
        motor.torque_constant_NmpA * (i_A - 0.2) * w / bus_power_W(motor, i_A, w);
    if (efficiency > best) {
      best = efficiency;
      at_A = i_A;
    }
  }
  EXPECT_NEAR(best, 0.825759, tol(5e-7));
  EXPECT_NEAR(at_A, 2.190890, tol(0.001 * 0.05));  // one step of the scan
}

}  // namespace
}  // namespace gazewright
