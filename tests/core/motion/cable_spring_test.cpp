#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/motion/loop.h"
#include "core/motion/rigid_move.h"
#include "core/motion/step.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

/// The load on its cables' spring: free swings, steps, moves and loops against closed forms.
namespace gazewright {
namespace {

using tests::linear_axis;
using tests::Random;
using tests::small_axis;

/// Nobody steers, nothing rubs.
AxisModel free_axis(double cable_Nmprad, double centre_rad) {
  AxisModel axis = linear_axis();
  axis.control.position_gain_1ps = axis.control.speed_gain_Nmsprad =
      axis.control.speed_integral_gain_Nmprad = 0;
  axis.gear.damping_Nmsprad = 0;
  axis.load.cable_stiffness_Nmprad = cable_Nmprad;
  axis.load.cable_centre_rad = centre_rad;
  return axis;
}

// In a gap wider than its swing the load hangs on the cable alone: from rest at
// −move/2 it has come a·(1 − cos ωt) after t, with a = centre + move/2 and ω = √(k/J_L).
TEST(CableSpring, SwingsTheFreeLoadAtTheRootOfStiffnessOverInertia) {
  AxisModel axis = free_axis(0.4, 0.05);
  axis.gear.backlash_rad = 3;
  const double move = 0.7, a = 0.05 + move / 2;
  const double w = std::sqrt(0.4 / axis.load.inertia_kgm2);
  const Trace trace = simulate_step(axis, move, 0.6);
  ASSERT_GT(0.6 * w, 4 * std::numbers::pi);  // more than two swings
  for (std::size_t i = 0; i < trace.time_s.size(); ++i) {
    ASSERT_NEAR(trace.angle_rad[i], a * (1 - std::cos(w * trace.time_s[i])), tol(1e-6)) << i;
    ASSERT_NEAR(trace.speed_radps[i], a * w * std::sin(w * trace.time_s[i]), tol(w * 1e-6)) << i;
  }
}

double energy_J(const AxisModel& axis, double move_rad, const Trace& trace, std::size_t i) {
  const double n = axis.gear.ratio, dt = trace.sample_time_s;
  const double motor_radps = (trace.motor_angle_rad[i - 2] - 8 * trace.motor_angle_rad[i - 1] +
                              8 * trace.motor_angle_rad[i + 1] - trace.motor_angle_rad[i + 2]) /
                             (12 * dt);
  const double off = trace.angle_rad[i] - move_rad / 2 - axis.load.cable_centre_rad;
  const double wound = trace.motor_angle_rad[i] / n - trace.angle_rad[i];
  return (axis.load.inertia_kgm2 * std::pow(trace.speed_radps[i], 2) +
          axis.gear.rotor_inertia_kgm2 * motor_radps * motor_radps +
          axis.load.cable_stiffness_Nmprad * off * off +
          axis.gear.stiffness_Nmprad * wound * wound) /
         2;
}

// The motor's speed is a difference over five samples: its error is (ω·dt)⁴/30, 1.2e-6 at the
// train's fastest swing on the gear's spring, 617 rad/s.
TEST(CableSpring, KeepsTheEnergyOfMotorAndLoad) {
  Random random(71);
  for (int round = 0; round < 8; ++round) {
    AxisModel axis = free_axis(random.log_uniform(0.05, 20), random.uniform(-0.5, 0.5));
    axis.gear.stiffness_Nmprad = random.log_uniform(30, 200);
    const double move = random.uniform(0.2, 1.5);
    const Trace trace = simulate_step(axis, move, 0.6);
    const double start =
        axis.load.cable_stiffness_Nmprad / 2 * std::pow(move / 2 + axis.load.cable_centre_rad, 2);
    for (std::size_t i = 2; i + 2 < trace.time_s.size(); i += 11)
      ASSERT_NEAR(energy_J(axis, move, trace, i) / start, 1, tol(5e-6)) << round << ' ' << i;
  }
}

// The stiff method knows the spring too: a rate of 1e5/s in the gear's damper makes it take over.
// Wound tight through the damper both inertias swing as one.
TEST(CableSpring, SwingsMotorAndLoadAsOneBehindAStiffGear) {
  AxisModel axis = free_axis(2, 0);
  axis.gear.stiffness_Nmprad = 1e7;
  axis.gear.damping_Nmsprad = 3000;
  const double both = axis.load.inertia_kgm2 + axis.reflected_inertia_kgm2();
  const double move = 0.7, w = std::sqrt(2 / both);
  const Trace trace = simulate_step(axis, move, 0.3);
  ASSERT_GT(0.3 * w, std::numbers::pi);
  // The gear gives way by 2/1e7 of the angle.
  for (std::size_t i = 0; i < trace.time_s.size(); ++i)
    ASSERT_NEAR(trace.angle_rad[i], move / 2 * (1 - std::cos(w * trace.time_s[i])), tol(2e-6)) << i;
}

AxisModel steered_axis(double cable_Nmprad, double centre_rad, double integral_gain_Nmprad) {
  AxisModel axis = linear_axis();
  axis.control.encoder_at_output = true;
  axis.control.speed_integral_gain_Nmprad = integral_gain_Nmprad;
  axis.gear.damping_Nmsprad = 4;
  axis.load.cable_stiffness_Nmprad = cable_Nmprad;
  axis.load.cable_centre_rad = centre_rad;
  return axis;
}

// At rest position and speed gain make kp·ks·(move − φ), the cable k·(φ − move/2 − centre): they
// meet off the target.
TEST(CableSpring, HoldsAStepWithoutIntegralGainOffItsTarget) {
  for (const double k : {0.05, 1.0, 15.0}) {
    const AxisModel axis = steered_axis(k, -0.1, 0);
    const double move = 0.7;
    const double held = axis.control.position_gain_1ps * axis.control.speed_gain_Nmsprad;
    const double rest = (held * move + k * (move / 2 - 0.1)) / (held + k);
    const Trace trace = simulate_step(axis, move, 2);
    EXPECT_NEAR(trace.angle_rad.back(), rest, tol(1e-7)) << k;
    EXPECT_GT(move - rest, 1e-4);  // the tolerance can tell
  }
}

TEST(CableSpring, IsOvercomeByIntegralGain) {
  for (const double k : {0.05, 1.0, 15.0}) {
    const Trace trace = simulate_step(steered_axis(k, -0.1, 12), 0.7, 6);
    EXPECT_NEAR(trace.angle_rad.back(), 0.7, tol(1e-6)) << k;
    // What it then holds: k·(move/2 − centre), through the gear.
    const AxisModel axis = steered_axis(k, -0.1, 12);
    EXPECT_NEAR(
        trace.current_A.back() * axis.drive.torque_constant_NmpA * axis.gear.ratio / (k * 0.45), 1,
        tol(1e-4))
        << k;
  }
}

// A torque T that speed does not change against a spring about the middle of the move: each half
// takes 1/ω·arccos(T/(T + k·move/2)), by φ = T/k − (T/k + move/2)·cos ωt.
TEST(CableSpring, HastensAMoveCentredOnItAsTheClosedFormHasIt) {
  for (const double k : {1e-3, 0.5, 4.0}) {
    AxisModel axis = linear_axis();
    axis.load.cable_stiffness_Nmprad = k;
    axis.drive.current_limit_A = 4;
    const double torque = axis.gear.ratio * axis.drive.torque_constant_NmpA * 4, move = 0.6;
    const double both = axis.load.inertia_kgm2 + axis.reflected_inertia_kgm2();
    const double time_s = 2 * std::sqrt(both / k) * std::acos(torque / (torque + k * move / 2));
    const auto fastest = fastest_move(axis, move);
    ASSERT_TRUE(fastest) << k;
    EXPECT_NEAR(fastest->time_s / time_s, 1, tol(3e-6)) << k;
  }
}

TEST(CableSpring, StrongerThanTheMotorLeavesNoMove) {
  AxisModel axis = linear_axis();
  axis.drive.current_limit_A = 1;
  const double torque = axis.gear.ratio * axis.drive.torque_constant_NmpA;
  // Untwisted far below the start: it pulls back all the way.
  axis.load.cable_centre_rad = -1;
  axis.load.cable_stiffness_Nmprad = 1.01 * torque / 0.7;
  EXPECT_FALSE(fastest_move(axis, 0.6));
  axis.load.cable_stiffness_Nmprad = 0.5 * torque / 1.3;
  EXPECT_TRUE(fastest_move(axis, 0.6));
}

// At low frequency the train is the spring alone: angle per torque N/k.
TEST(CableSpring, IsAllThatTheSlowTrainMeets) {
  AxisModel axis = steered_axis(3, 0, 0);
  const double w = 0.01, T = 1 / axis.control.control_rate_Hz;
  const std::complex<double> speed = speed_loop(axis, w);
  EXPECT_NEAR(std::abs(speed) / (axis.control.speed_gain_Nmsprad * w / 3), 1, tol(1e-4));
  EXPECT_NEAR(std::arg(speed), std::numbers::pi / 2, tol(w * (10 * T + 0.01)));
}

double peak_speed_radps(const AxisModel& axis, double from_s, double to_s) {
  const Trace trace = simulate_step(axis, 1e-3, to_s);
  double most = 0;
  for (std::size_t i = 0; i < trace.time_s.size(); ++i)
    if (trace.time_s[i] >= from_s) most = std::max(most, std::abs(trace.speed_radps[i]));
  return most;
}

// Second method, as for the loops without a cable: the simulated step begins to ring where the
// margins say. Seen from the load, a cable stiffer than the gear raises resonance and margin by
// a fifth. A steady torque keeps the teeth together, as the linear model has it.
TEST(CableSpring, MovesTheGainMarginToWhereTheSimulatedLoopBeginsToRing) {
  AxisModel axis = steered_axis(0, 0, 12);
  axis.control.position_gain_1ps = 1e-3;
  axis.load.gravity.constant_Nm = 5;
  axis.gear.damping_Nmsprad = 2;
  const double without = speed_loop_margins(axis).gain_margin.value();
  axis.load.cable_stiffness_Nmprad = 1500;
  const double margin = speed_loop_margins(axis).gain_margin.value();
  EXPECT_GT(margin / without, 1.2);
  const auto growth = [&](double factor) {
    AxisModel scaled = axis;
    scaled.control.speed_gain_Nmsprad *= factor;
    scaled.control.speed_integral_gain_Nmprad *= factor;
    return peak_speed_radps(scaled, 0.08, 0.10) / peak_speed_radps(scaled, 0.02, 0.04);
  };
  EXPECT_LT(growth(0.97 * margin), 0.5) << margin;
  EXPECT_GT(growth(1.03 * margin), 2) << margin;
}

// All inertia on an undamped cable is a peak of no width, in which the phase falls by half a turn.
TEST(CableSpring, WithoutDampingIsALagInTheLoopsAndNoLead) {
  AxisModel undamped = steered_axis(0.3, 0, 12), damped = undamped;
  damped.load.viscous_Nmsprad = 1e-6;
  for (const auto margins : {speed_loop_margins, position_loop_margins}) {
    const LoopMargins a = margins(undamped), b = margins(damped);
    EXPECT_NEAR(a.phase_margin_rad.value(), b.phase_margin_rad.value(), tol(1e-4));
    EXPECT_NEAR(a.gain_margin.value(), b.gain_margin.value(), tol(1e-3));
  }
}

TEST(CableSpring, OfAnyScaleEndsFinite) {
  Random random(5);
  for (int i = 0; i < 30; ++i) {
    AxisModel axis = small_axis();
    axis.load.cable_stiffness_Nmprad = random.log_uniform(1e-6, 1e7);
    axis.load.cable_centre_rad = random.uniform(-6, 6);
    axis.load.inertia_kgm2 = random.log_uniform(1e-7, 1);
    const Trace trace = simulate_step(axis, 0.5, 0.03);
    ASSERT_FALSE(trace.time_s.empty());
    for (std::size_t row = 0; row < trace.time_s.size(); ++row)
      ASSERT_TRUE(std::isfinite(trace.angle_rad[row]) && std::isfinite(trace.bus_A[row])) << i;
    const double time_s = fastest_move(axis, 0.5).value_or(FastestMove{1, 0, 0}).time_s;
    EXPECT_TRUE(std::isfinite(time_s) && time_s > 0) << i;
    EXPECT_TRUE(std::isfinite(position_loop_margins(axis).phase_margin_rad.value_or(0))) << i;
  }
}

}  // namespace
}  // namespace gazewright
