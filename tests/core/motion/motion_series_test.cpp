#include "core/motion/motion_series.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <unsupported/Eigen/MatrixFunctions>

#include "core/motion/series_step.h"
#include "core/motion/step_advance.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::linear_axis;
using tests::small_axis;

constexpr double kSample_s = 1.0 / 8000;

struct At {
  MotorAndLoad angle_rad, speed_radps;
};

/// The motor turned on by a twist at the output, from the middle of the gap on.
At twisted(const AxisModel& axis, double twist_rad, double motor_radps, double load_radps) {
  return {{axis.gear.ratio * (0.1 + twist_rad), 0.1}, {motor_radps, load_radps}};
}

double rate_1ps(const AxisModel& axis) {
  return 2 * std::numbers::pi * axis.control.current_bandwidth_Hz;
}

At by_series(const AxisModel& axis, const At& from, double command_Nm, double gap_Nm, double h) {
  AxisDynamics dynamics(axis, 0.7);
  dynamics.centre(from.angle_rad.load);
  const auto series = motion_series<double>(dynamics, from.angle_rad, from.speed_radps,
                                            {command_Nm, gap_Nm, rate_1ps(axis)}, h);
  return {series.end_angle(), series.end_speed()};
}

// Sliding with the teeth in touch on a cable, every rate is constant: the state after a sample is
// the exponential of their matrix.
TEST(MotionSeries, InTouchIsTheExponentialOfTheRates) {
  AxisModel axis = small_axis();
  axis.load.gravity = {};
  axis.load.cable_stiffness_Nmprad = 5;
  axis.load.cable_centre_rad = 0.2;
  axis.control.current_bandwidth_Hz = 100;
  const At from = twisted(axis, axis.gear.backlash_rad / 2 + 2e-3, 40, 2);
  const double command_Nm = 0.1, gap_Nm = 0.05;
  const GearTrain& gear = axis.gear;
  const double N = gear.ratio, k = gear.stiffness_Nmprad, d = gear.damping_Nmsprad;
  const double motor = 1 / gear.rotor_inertia_kgm2, load = 1 / axis.load.inertia_kgm2;
  const double share = motor / (N * gear.efficiency), cable = axis.load.cable_stiffness_Nmprad;
  Eigen::Matrix<double, 6, 6> rate = Eigen::Matrix<double, 6, 6>::Zero();  // φ_m ω_m φ ω gap 1
  rate(0, 1) = rate(2, 3) = 1;
  const double half = gear.backlash_rad / 2;
  rate.row(1) << -share * k / N, -share * d / N - motor * gear.viscous_Nmsprad, share * k,
      share * d, motor, motor * (command_Nm - gear.drag_Nm) + share * k * half;
  rate.row(3) << load * k / N, load * d / N, -load * (k + cable),
      -load * (d + axis.load.viscous_Nmsprad), 0,
      load * (cable * (0.2 + 0.35) - axis.load.coulomb_Nm - k * half);
  rate(4, 4) = -rate_1ps(axis);
  Eigen::Matrix<double, 6, 1> state;
  state << from.angle_rad.motor, 40, from.angle_rad.load, 2, gap_Nm, 1;
  const Eigen::Matrix<double, 6, 6> scaled = rate * kSample_s;
  const Eigen::Matrix<double, 6, 1> exact = scaled.exp() * state;
  const At to = by_series(axis, from, command_Nm, gap_Nm, kSample_s);
  EXPECT_NEAR(to.angle_rad.motor, exact[0], tol(1e-13 * exact[0]));
  EXPECT_NEAR(to.speed_radps.motor, exact[1], tol(1e-12 * exact[1]));
  EXPECT_NEAR(to.angle_rad.load, exact[2], tol(1e-13));
  EXPECT_NEAR(to.speed_radps.load, exact[3], tol(1e-12 * exact[3]));
}

/// 64 steps of Dormand and Prince on the equations as they stand.
At by_small_steps(const AxisModel& axis, const At& from, double command_Nm, double gap_Nm,
                  double time_s) {
  AxisDynamics dynamics(axis, 0.7);
  dynamics.centre(from.angle_rad.load);
  const double h = time_s / 64;
  At at = from;
  for (int i = 0; i < 64; ++i) {
    const double start_Nm = gap_Nm * std::exp(-rate_1ps(axis) * h * i);
    constexpr double kStages[] = {0.2, 0.3, 0.8, 8.0 / 9, 1};
    const auto acceleration = [&](int stage, MotorAndLoad p, MotorAndLoad v) {
      const double left = std::exp(-rate_1ps(axis) * h * kStages[stage]);
      return dynamics.acceleration(command_Nm + start_Nm * left, p, v);
    };
    MotorAndLoad last;
    const AxisState state{at.angle_rad, at.speed_radps, 0};
    const MotorAndLoad first =
        dynamics.acceleration(command_Nm + start_Nm, at.angle_rad, at.speed_radps);
    const auto to = explicit_step(acceleration, state, first, h, last);
    at = {to.angle_rad, to.speed_radps};
  }
  return at;
}

// What a quarter of a sample changes, within a millionth: the envelope is taken as a parabola.
TEST(MotionSeries, IsWhatSmallStepsGiveInEveryBranch) {
  const AxisModel axis = small_axis();
  const double touch_rad = axis.gear.backlash_rad / 2;
  struct Case {
    const char* name;
    At from;
    double command_Nm, gap_Nm;
  };
  const Case cases[] = {
      {"in the gap", twisted(axis, 1e-4, 3, -2), 0.2, -0.1},
      {"driving", twisted(axis, touch_rad + 1e-3, 200, 11), 0.3, 0.1},
      {"driven", twisted(axis, -touch_rad - 1e-3, 200, 11), -0.2, -0.1},
      {"a slow motor in touch", twisted(axis, touch_rad + 2e-5, 0.2, 0.002), 0.02, 0.004},
      {"a slow motor held back", twisted(axis, -touch_rad - 2e-5, 0.2, 0.002), -0.02, 0.004},
      {"on the supply's limit", twisted(axis, touch_rad + 1e-3, 600, 33), 0.55, 0},
      {"on the voltage's limit", twisted(axis, touch_rad + 1e-4, 930, 51), 0.5, 0},
  };
  for (const Case& c : cases) {
    const At series = by_series(axis, c.from, c.command_Nm, c.gap_Nm, kSample_s / 4);
    const At steps = by_small_steps(axis, c.from, c.command_Nm, c.gap_Nm, kSample_s / 4);
    const double motor = steps.speed_radps.motor - c.from.speed_radps.motor;
    const double load = steps.speed_radps.load - c.from.speed_radps.load;
    EXPECT_NE(motor, 0);
    EXPECT_NEAR(series.speed_radps.motor, steps.speed_radps.motor, tol(1e-6 * std::abs(motor)))
        << c.name;
    EXPECT_NEAR(series.speed_radps.load, steps.speed_radps.load, tol(1e-6 * std::abs(load)))
        << c.name;
    EXPECT_NEAR(series.angle_rad.motor, steps.angle_rad.motor,
                tol(1e-6 * std::abs(motor) * kSample_s))
        << c.name;
  }
}

// 20 mrad in a step of slow control: the curve of its weight takes part.
TEST(MotionSeries, FollowsTheCurveOfAHeavyLoadsWeight) {
  AxisModel axis = small_axis();
  axis.gear.backlash_rad = 0.2;
  axis.load.gravity = {.cos_Nm = 3, .sin_Nm = 2};
  const At from = twisted(axis, 0, 0, 40);
  const At series = by_series(axis, from, 0, 0, 5e-4);
  const At steps = by_small_steps(axis, from, 0, 0, 5e-4);
  const double gained = std::abs(steps.speed_radps.load - 40);
  EXPECT_GT(gained, 0.5);
  EXPECT_NEAR(series.speed_radps.load, steps.speed_radps.load, tol(1e-6 * gained));
}

/// A rotor alone in its gap under a constant torque, its load at rest.
struct InTheGap {
  AxisModel axis = linear_axis();
  AxisDynamics dynamics;
  MotionSeries<double> series;
  TorqueLag<double> lag;
  SeriesPart<double> part;

  InTheGap(double twist_rad, double motor_radps, double torque_Nm) : dynamics(with_gap(axis), 0.7) {
    const At from = twisted(axis, twist_rad, motor_radps, 0);
    lag = {torque_Nm, 0, rate_1ps(axis)};
    series = motion_series<double>(dynamics, from.angle_rad, from.speed_radps, lag, kSample_s);
    part = part_of_series<double>(dynamics, series, StepTolerance<double>(0.7, axis.gear.ratio),
                                  lag, kSample_s, 1);
  }
  static const AxisModel& with_gap(AxisModel& axis) {
    axis.gear.backlash_rad = 0.004;
    return axis;
  }
  double cut() const {
    return part_within_branch<double>(dynamics, series, lag, kSample_s, part.part);
  }
};

TEST(SeriesStep, EndsWhereTheTeethTouch) {
  const double motor_radps = 30;  // at the output 1.67 rad/s, 0.21 mrad a sample
  const InTheGap flight(0.002 - 1e-4, motor_radps, 0);
  EXPECT_TRUE(flight.part.leaves);
  const double touch_s = 1e-4 * flight.axis.gear.ratio / motor_radps;
  EXPECT_NEAR(flight.cut() * kSample_s, touch_s, tol(2e-6 * kSample_s));
  EXPECT_GT(flight.cut() * kSample_s, touch_s);
  EXPECT_FALSE(InTheGap(0, motor_radps, 0).part.leaves);
}

// The motor turns back within the sample: 3.1 µrad further on. Where the teeth are further apart it
// only comes to the slope of its friction.
TEST(SeriesStep, EndsWhereTheTeethTouchOnAWayThereAndBack) {
  const double N = linear_axis().gear.ratio, rotor_kgm2 = linear_axis().gear.rotor_inertia_kgm2;
  const double speed_radps = 0.1, radps2 = 2 * speed_radps / kSample_s;
  const double torque_Nm = -N * rotor_kgm2 * radps2;
  const InTheGap touches(0.002 - 2e-6, N * speed_radps, torque_Nm);
  EXPECT_TRUE(touches.part.leaves);
  const double root_radps = std::sqrt(speed_radps * speed_radps - 2 * radps2 * 2e-6);
  const double touch_s = (speed_radps - root_radps) / radps2;
  EXPECT_NEAR(touches.cut() * kSample_s, touch_s, tol(1e-5 * kSample_s));
  const InTheGap misses(0.002 - 4e-6, N * speed_radps, torque_Nm);
  const double slow_s = (speed_radps - kMotorSlope_radps / N) / radps2;
  EXPECT_NEAR(misses.cut() * kSample_s, slow_s, tol(1e-5 * kSample_s));
}

}  // namespace
}  // namespace gazewright
