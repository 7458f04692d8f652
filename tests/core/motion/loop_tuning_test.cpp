#include "core/motion/loop_tuning.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/motion/loop.h"
#include "core/motion/step.h"
#include "core/units/angle.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

/// From a microscope's stage to a searchlight: scales vary by decades, what makes a train
/// reasonable is kept (some damping, a drive that can move it).
AxisModel random_axis(Random& random) {
  AxisModel axis = tests::small_axis();
  axis.gear.ratio = random.log_uniform(3, 60);
  axis.gear.rotor_inertia_kgm2 = random.log_uniform(1e-6, 1e-4);
  const double rotor = axis.reflected_inertia_kgm2();
  axis.load.inertia_kgm2 = rotor * random.log_uniform(0.05, 5);
  const double resonance = 2 * kPi * random.log_uniform(15, 300);
  const double together = rotor * axis.load.inertia_kgm2 / (rotor + axis.load.inertia_kgm2);
  axis.gear.stiffness_Nmprad = resonance * resonance * together;
  axis.gear.damping_Nmsprad = 2 * random.log_uniform(0.02, 0.3) * resonance * together;
  axis.gear.backlash_rad = random.log_uniform(3e-4, 8e-3);
  const double scale_Nm = (rotor + axis.load.inertia_kgm2) * 300;  // of 300 rad/s²
  axis.gear.peak_torque_Nm = 10 * scale_Nm;
  axis.load.coulomb_Nm = scale_Nm * random.log_uniform(0.01, 0.1);
  axis.gear.drag_Nm = scale_Nm / axis.gear.ratio * random.log_uniform(0.01, 0.1);
  axis.load.viscous_Nmsprad = axis.gear.viscous_Nmsprad = 0;
  axis.load.gravity = {};
  axis.drive.torque_constant_NmpA = 3 * scale_Nm / axis.gear.ratio / axis.drive.current_limit_A;
  axis.drive.bus_voltage_V = 1e3;
  axis.drive.supply_current_limit_A = kInfinity;
  axis.control.control_rate_Hz = random.log_uniform(2e3, 2e4);
  axis.control.current_bandwidth_Hz = axis.control.control_rate_Hz / 8;
  axis.control.estimator_bandwidth_Hz = random.log_uniform(60, 600);
  axis.control.encoder_counts = std::exp2(12 + random.below(7));
  axis.control.encoder_at_output = random.chance(0.3);
  axis.control.speed_limit_radps = kInfinity;
  return axis;
}

TuningGoal goal_of(const AxisModel& axis) {
  return {45 * kDegree_rad, {}, 0.1 * stall_torque_Nm(axis)};
}

TEST(LoopTuning, KeepsItsMarginsOnRandomAxes) {
  Random random(20261126);
  int advised = 0;
  for (int i = 0; i < 150; ++i) {
    const AxisModel axis = random_axis(random);
    const auto points = loop_points(axis);
    const auto tuning = tuned(axis, points, goal_of(axis));
    if (!tuning) continue;
    ++advised;
    const LoopStudy study = study_loops(with_gains(axis, tuning->gains), points);
    EXPECT_TRUE(study.is_stable) << i;
    EXPECT_GE(study.speed.phase_margin_rad.value_or(9), 45 * kDegree_rad) << i;
    EXPECT_GE(study.speed.gain_margin.value_or(9), 2) << i;
    EXPECT_GE(study.position.phase_margin_rad.value_or(9), 45 * kDegree_rad) << i;
    EXPECT_GE(study.position.gain_margin.value_or(9), 2) << i;
    EXPECT_LE(study.peak.value_or(9), 1.06) << i;
  }
  EXPECT_GT(advised, 120);
}

double largest_speed(const Trace& trace, double from, double to) {
  const auto rows = static_cast<double>(trace.speed_radps.size());
  double most = 0;
  for (auto i = static_cast<std::size_t>(from * rows); i < static_cast<std::size_t>(to * rows); ++i)
    most = std::max(most, std::abs(trace.speed_radps[i]));
  return most;
}

// The whole model of section 5, with gap, friction, counts and limits. What is left at the end is
// creep on the slope of the friction (±0.01 rad/s), and where it stops friction holds it off.
TEST(LoopTuning, LeavesNoSimulatedStepRinging) {
  Random random(7);
  int run = 0;
  for (int i = 0; i < 30; ++i) {
    const AxisModel axis = random_axis(random);
    const auto tuning = tuned(axis, loop_points(axis), goal_of(axis));
    if (!tuning || tuning->swings_in_gap) continue;
    ++run;
    const double time_s = std::clamp(15 / tuning->gains.position_gain_1ps, 1.0, 6.0);
    const Trace trace = simulate_step(with_gains(axis, tuning->gains), 0.5, time_s);
    ASSERT_GT(trace.time_s.back(), 0.95 * time_s) << i << " ran away";
    EXPECT_LT(largest_speed(trace, 0.8, 1), 0.02 + 0.03 * largest_speed(trace, 0, 0.8))
        << i << " at " << (axis.control.encoder_at_output ? "output" : "motor") << ", limited by "
        << int(tuning->limited_by);
    const LoopGains& gains = tuning->gains;
    const double friction_Nm = axis.load.coulomb_Nm + axis.gear.ratio * axis.gear.drag_Nm;
    EXPECT_NEAR(trace.angle_rad.back(), 0.5,
                0.02 + axis.gear.backlash_rad +
                    friction_Nm / (gains.position_gain_1ps * gains.speed_gain_Nmsprad))
        << i;
  }
  EXPECT_GT(run, 24);
}

TEST(LoopTuning, MeetsAWantedCrossoverThatIsSoundAndStopsBelowOneThatIsNot) {
  const AxisModel axis = tests::small_axis();
  const auto points = loop_points(axis);
  TuningGoal goal = goal_of(axis);
  const double highest = tuned(axis, points, goal).value().crossover_radps;
  goal.crossover_radps = highest / 3;
  const Tuning modest = tuned(axis, points, goal).value();
  EXPECT_EQ(modest.limited_by, Ceiling::wanted);
  // The search halves a step of 1.3 five times, 0.8 %, and gains are rounded to three digits.
  EXPECT_NEAR(modest.crossover_radps / *goal.crossover_radps, 1, tol(0.02));
  goal.crossover_radps = highest * 3;
  const Tuning bold = tuned(axis, points, goal).value();
  EXPECT_NE(bold.limited_by, Ceiling::wanted);
  EXPECT_NEAR(bold.crossover_radps / highest, 1, tol(1e-9));
}

TEST(LoopTuning, GivesALargerMarginForLessCrossover) {
  const AxisModel axis = tests::small_axis();
  const auto points = loop_points(axis);
  double before = kInfinity;
  for (const double margin : {30.0, 45.0, 60.0, 70.0}) {
    TuningGoal goal = goal_of(axis);
    goal.margin_rad = margin * kDegree_rad;
    const Tuning tuning = tuned(axis, points, goal).value();
    EXPECT_LE(tuning.crossover_radps, before * 1.001);
    before = tuning.crossover_radps;
  }
}

TEST(LoopTuning, HasNoGainsForAnUndampedResonanceSeenFromTheOutput) {
  AxisModel axis = tests::small_axis();
  axis.load.inertia_kgm2 = 6e-3;
  axis.gear.stiffness_Nmprad = 60;
  axis.gear.damping_Nmsprad = axis.gear.viscous_Nmsprad = axis.load.viscous_Nmsprad = 0;
  axis.control.encoder_at_output = true;
  EXPECT_FALSE(tuned(axis, loop_points(axis), goal_of(axis)));
  axis.control.encoder_at_output = false;
  EXPECT_TRUE(tuned(axis, loop_points(axis), goal_of(axis)));
}

TEST(LoopTuning, SpendsNoMoreTorqueOnACountThanIsAllowed) {
  AxisModel axis = tests::small_axis();
  axis.control.encoder_at_output = true;
  axis.control.encoder_counts = 4096;
  axis.gear.backlash_rad = 0;
  TuningGoal goal = goal_of(axis);
  const Tuning tuning = tuned(axis, loop_points(axis), goal).value();
  EXPECT_EQ(tuning.limited_by, Ceiling::ripple);
  // Both gains of a count are in it, with the position gain up to what the search assumed.
  EXPECT_LE(tuning.ripple_Nm, goal.most_ripple_Nm * 1.1);
  EXPECT_GT(tuning.ripple_Nm, goal.most_ripple_Nm / 2);
}

}  // namespace
}  // namespace gazewright
