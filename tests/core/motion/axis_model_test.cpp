#include "core/motion/axis_model.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

void fill(AxisParts& parts) {
  parts.motor.speed_constant_radpsV = si_quantity(40);
  parts.motor.phase_resistance_ohm = si_quantity(0.06);
  parts.motor.phase_inductance_H = si_quantity(30e-6);
  parts.motor.pole_pairs = si_quantity(7);
  parts.motor.rotor_inertia_kgm2 = si_quantity(1.2e-5);
  parts.motor.peak_current_A = si_quantity(45);
  parts.drive.current_limit_A = si_quantity(30);
  parts.drive.control_rate_Hz = si_quantity(8000);
  parts.drive.current_bandwidth_Hz = si_quantity(1000);
  parts.drive.modulation_limit = si_quantity(0.95);
  parts.drive.speed_limit_radps = si_quantity(kInfinity);
  parts.gearbox.ratio = si_quantity(18);
  parts.gearbox.efficiency = si_quantity(0.9);
  parts.gearbox.back_efficiency = si_quantity(0.88);
  parts.gearbox.inertia_kgm2 = si_quantity(1.3e-6);
  parts.gearbox.backlash_rad = si_quantity(0.005);
  parts.gearbox.stiffness_Nmprad = si_quantity(900);
  parts.gearbox.damping_Nmsprad = si_quantity(0.4);
  parts.gearbox.drag_Nm = si_quantity(0.006);
  parts.gearbox.viscous_Nmsprad = si_quantity(20e-6);
  parts.gearbox.peak_torque_Nm = si_quantity(kInfinity);
  parts.gearbox.input_speed_limit_radps = si_quantity(kInfinity);
  parts.encoder.at = {"motor"};
  parts.encoder.bits = si_quantity(14);
  parts.friction.coulomb_Nm = si_quantity(0.04);
  parts.friction.viscous_Nmsprad = si_quantity(0.004);
  parts.loop.position_gain_1ps = si_quantity(30);
  parts.loop.speed_gain_Nmsprad = si_quantity(0.9);
  parts.loop.speed_integral_gain_Nmprad = si_quantity(12);
  parts.loop.speed_limit_radps = si_quantity(15);
  parts.loop.estimator_bandwidth_Hz = si_quantity(400);
}

Rig nodding_rig() {
  Rig rig;
  rig.supply.voltage_V = si_quantity(24);
  rig.supply.current_limit_A = si_quantity(kInfinity);
  rig.stand.lean_rad = si_quantity(0);
  fill(rig.pan);
  fill(rig.tilt);
  for (Quantity& coordinate : rig.tilt_axis_at_m) coordinate = si_quantity(0);
  const auto at = [](double x, double y, double z) {
    return std::array{si_quantity(x), si_quantity(y), si_quantity(z)};
  };
  rig.on_pan = {{"arm", si_quantity(0.5), at(0, 0.1, 0), Point{}}};
  rig.on_tilt = {{"camera", si_quantity(0.2), at(0.05, 0, 0), Ball{si_quantity(0.04)}}};
  return rig;
}
AxisModel model_of(const Rig& rig, Axis axis) { return axis_model(rig, rig_bodies(rig), axis); }

TEST(AxisModel, TakesEachAxisItsOwnInertiaAndGravity) {
  const Rig rig = nodding_rig();
  const double ball_kgm2 = 0.4 * 0.2 * 0.02 * 0.02, lever_kgm2 = 0.2 * 0.05 * 0.05;
  const AxisModel pan = model_of(rig, Axis::pan), tilt = model_of(rig, Axis::tilt);
  EXPECT_NEAR(pan.load.inertia_kgm2, 0.5 * 0.01 + ball_kgm2 + lever_kgm2, tol(1e-17));
  EXPECT_NEAR(tilt.load.inertia_kgm2, ball_kgm2 + lever_kgm2, tol(1e-18));
  EXPECT_EQ(pan.load.gravity.at(1), 0);
  EXPECT_NEAR(tilt.load.gravity.at(0), -0.2 * 9.80665 * 0.05, tol(1e-16));
}

TEST(AxisModel, CarriesEveryFieldAcross) {
  Rig rig = nodding_rig();
  rig.tilt.encoder.at = {"output"};
  const AxisModel m = model_of(rig, Axis::tilt);
  EXPECT_DOUBLE_EQ(m.drive.torque_constant_NmpA, std::numbers::sqrt3 / 2 / 40);
  EXPECT_EQ(m.drive.current_limit_A, 30);
  EXPECT_EQ(m.drive.phase_resistance_ohm, 0.06);
  EXPECT_EQ(m.drive.phase_inductance_H, 30e-6);
  EXPECT_EQ(m.drive.pole_pairs, 7);
  EXPECT_EQ(m.drive.bus_voltage_V, 24);
  EXPECT_EQ(m.drive.modulation_limit, 0.95);
  EXPECT_EQ(m.drive.supply_current_limit_A, kInfinity);
  EXPECT_EQ(m.gear.ratio, 18);
  EXPECT_EQ(m.gear.efficiency, 0.9);
  EXPECT_EQ(m.gear.back_efficiency, 0.88);
  EXPECT_DOUBLE_EQ(m.gear.rotor_inertia_kgm2, 1.33e-5);
  EXPECT_EQ(m.gear.backlash_rad, 0.005);
  EXPECT_EQ(m.gear.stiffness_Nmprad, 900);
  EXPECT_EQ(m.gear.damping_Nmsprad, 0.4);
  EXPECT_EQ(m.gear.drag_Nm, 0.006);
  EXPECT_EQ(m.gear.viscous_Nmsprad, 20e-6);
  EXPECT_EQ(m.load.coulomb_Nm, 0.04);
  EXPECT_EQ(m.load.viscous_Nmsprad, 0.004);
  EXPECT_EQ(m.control.control_rate_Hz, 8000);
  EXPECT_EQ(m.control.current_bandwidth_Hz, 1000);
  EXPECT_EQ(m.control.encoder_counts, 16384);
  EXPECT_TRUE(m.control.encoder_at_output);
  EXPECT_EQ(m.control.position_gain_1ps, 30);
  EXPECT_EQ(m.control.speed_gain_Nmsprad, 0.9);
  EXPECT_EQ(m.control.speed_integral_gain_Nmprad, 12);
  EXPECT_EQ(m.control.speed_limit_radps, 15);
  EXPECT_EQ(m.control.estimator_bandwidth_Hz, 400);
  EXPECT_DOUBLE_EQ(m.reflected_inertia_kgm2(), 18 * 18 * 1.33e-5);
  EXPECT_FALSE(model_of(rig, Axis::pan).control.encoder_at_output);
}

TEST(AxisModel, NeverTurnsAMissingLimitIntoAKnownOne) {
  Rig rig = nodding_rig();
  rig.pan.drive.current_limit_A = {};
  EXPECT_TRUE(std::isnan(model_of(rig, Axis::pan).drive.current_limit_A));
  rig = nodding_rig();
  rig.pan.motor.peak_current_A = {};
  EXPECT_TRUE(std::isnan(model_of(rig, Axis::pan).drive.current_limit_A));
}

TEST(StallTorque, IsWhatTheEnvelopeGivesThroughTheGear) {
  const AxisModel m = model_of(nodding_rig(), Axis::pan);
  EXPECT_NEAR(stall_torque_Nm(m), 0.9 * 18 * std::numbers::sqrt3 / 2 / 40 * 30, tol(1e-14));
}

TEST(StallTorque, IsHeldByTheGearboxPeakTorque) {
  AxisModel m = model_of(nodding_rig(), Axis::pan);
  m.gear.peak_torque_Nm = 5;
  EXPECT_EQ(stall_torque_Nm(m), 5);
  EXPECT_NEAR(m.gear_torque_limit_Nm() * m.gear.efficiency * m.gear.ratio, 5, tol(2e-15));
}

TEST(TopSpeed, IsModulationTimesVoltageTimesSpeedConstantOverTheRatio) {
  const AxisModel m = model_of(nodding_rig(), Axis::pan);
  EXPECT_NEAR(top_speed_radps(m), 0.95 * 24 * 40 / 18, tol(4e-14));
  EXPECT_EQ(driving_current_A(m.drive, 1.0001 * 18 * top_speed_radps(m)), 0);
  EXPECT_GT(driving_current_A(m.drive, 0.9999 * 18 * top_speed_radps(m)), 0);
}

TEST(TopSpeed, IsHeldByTheGearboxInputAndByTheDrive) {
  AxisModel m = model_of(nodding_rig(), Axis::pan);
  m.gear.input_speed_limit_radps = 360;
  EXPECT_EQ(top_speed_radps(m), 20);
  m.drive_speed_limit_radps = 12;
  EXPECT_EQ(top_speed_radps(m), 12);
}

TEST(PeakAcceleration, IsNegativeWhereTheMotorCannotLiftTheCamera) {
  AxisModel m = model_of(nodding_rig(), Axis::tilt);
  EXPECT_GT(peak_acceleration_radps2(m), 0);
  m.gear.peak_torque_Nm = 0.05;  // friction 0.04 and gravity 0.098 N·m
  EXPECT_LT(peak_acceleration_radps2(m), 0);
}

TEST(BestAccelerationRatio, IsBetterThanItsNeighbours) {
  Random random(101);
  for (int round = 0; round < 500; ++round) {
    AxisModel m = model_of(nodding_rig(), Axis::tilt);
    m.gear.efficiency = random.uniform(0.3, 1);
    m.gear.rotor_inertia_kgm2 = random.log_uniform(1e-7, 1e-3);
    m.load.inertia_kgm2 = random.log_uniform(1e-5, 10);
    m.load.coulomb_Nm = random.chance(0.2) ? 0 : random.log_uniform(1e-3, 10);
    m.load.gravity = {.cos_Nm = random.uniform(-1, 1), .sin_Nm = 5, .constant_Nm = 0};
    const double best = best_acceleration_ratio(m);
    const auto acceleration = [&](double ratio) {
      m.gear.ratio = ratio;
      return peak_acceleration_radps2(m);
    };
    // One part in a hundred off the top costs about 5e-5: far above rounding.
    EXPECT_GT(acceleration(best), acceleration(0.99 * best));
    EXPECT_GT(acceleration(best), acceleration(1.01 * best));
  }
}

TEST(BestAccelerationRatio, IgnoresTheGearboxPeakTorque) {
  AxisModel m = model_of(nodding_rig(), Axis::pan);
  const double best = best_acceleration_ratio(m);
  m.gear.peak_torque_Nm = 0.1;
  EXPECT_EQ(best_acceleration_ratio(m), best);
}

TEST(AxisModel, IsTheSameWhereEveryNumberIsAndOnlyLimitsAreNotEntered) {
  const AxisModel m = model_of(with_defaults(tests::owl()), Axis::pan);
  ASSERT_TRUE(std::isnan(m.control.jerk_limit_radps3));
  EXPECT_TRUE(is_same(m, m));
  AxisModel other = m;
  other.gear.ratio += 1e-9;
  EXPECT_FALSE(is_same(m, other));
  other = m;
  other.control.jerk_limit_radps3 = 5;
  EXPECT_FALSE(is_same(m, other));
  other = m;
  other.load.gravity.cos_Nm += 1e-12;
  EXPECT_FALSE(is_same(m, other));
  other.load.inertia_kgm2 = std::nan("");
  EXPECT_FALSE(is_same(other, other)) << "an input is missing";
}

TEST(BestAccelerationRatio, HasNoEndWithoutTorqueOrWithoutRotor) {
  AxisModel m = model_of(nodding_rig(), Axis::pan);
  m.gear.rotor_inertia_kgm2 = 0;
  EXPECT_EQ(best_acceleration_ratio(m), kInfinity);
  m = model_of(nodding_rig(), Axis::pan);
  m.drive.current_limit_A = 0;
  EXPECT_EQ(best_acceleration_ratio(m), kInfinity);
}

}  // namespace
}  // namespace gazewright
