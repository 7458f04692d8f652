#include "core/motion/loop.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/motion/step.h"
#include "core/units/angle.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::linear_axis;

// Formulas: Leonhard, Control of Electrical Drives; Ellis, Control System Design Guide (two-inertia
// system). k = 100 N·m/rad, J1 = 1e-3, J2 = 4e-3: 25.165 Hz and 56.270 Hz.
TEST(Loop, HasTheResonancesOfTwoInertias) {
  AxisModel axis = linear_axis();
  axis.gear.ratio = 5;
  axis.gear.rotor_inertia_kgm2 = 1e-3 / 25;
  axis.gear.stiffness_Nmprad = 100;
  axis.load.inertia_kgm2 = 4e-3;
  EXPECT_NEAR(antiresonance_radps(axis) / (2 * kPi), 25.165, tol(1e-4 * 25));
  EXPECT_NEAR(resonance_radps(axis) / (2 * kPi), 56.270, tol(1e-4 * 56));
}

// One inertia, speed gain only: crossover ks/J, phase margin 90° less ω_c times all lags: delay T,
// hold T/2, differences T/2, estimator (1 − a)/a·T, current loop 1/(2π·bandwidth). The series of
// the angles ends with (ω·lag)³/3, 3e-4 rad here; the gain falls by (ω·lag)²/2 over two lags, 1 %.
TEST(Loop, OfOneInertiaHasTheMarginThatItsLagsLeave) {
  AxisModel axis = linear_axis();
  axis.gear.stiffness_Nmprad = 1e8;
  axis.control.speed_integral_gain_Nmprad = 0;
  const double inertia = axis.load.inertia_kgm2 + axis.reflected_inertia_kgm2();
  axis.control.speed_gain_Nmsprad = 150 * inertia;
  const double T = 1.0 / 8000, a = -std::expm1(-2 * kPi * 400 * T);
  const double lag_s = 2 * T + (1 - a) / a * T + 1 / (2 * kPi * 1000);
  const LoopMargins margins = speed_loop_margins(axis);
  EXPECT_NEAR(margins.crossover_radps.value(), 150, tol(1.5));
  EXPECT_NEAR(margins.phase_margin_rad.value(), kPi / 2 - margins.crossover_radps.value() * lag_s,
              tol(1e-3));
}

/// Largest speed in the last fifth of a step over that in the second fifth.
double growth(const AxisModel& axis) {
  const Trace trace = simulate_step(axis, 1e-3, 0.5);
  const auto largest = [&](std::size_t from, std::size_t to) {
    double most = 0;
    for (std::size_t i = from; i < to; ++i) most = std::max(most, std::abs(trace.speed_radps[i]));
    return most;
  };
  const std::size_t rows = trace.time_s.size();
  return largest(rows * 4 / 5, rows) / largest(rows / 5, rows * 2 / 5);
}

AxisModel scaled(AxisModel axis, double factor) {
  axis.control.speed_gain_Nmsprad *= factor;
  axis.control.speed_integral_gain_Nmprad *= factor;
  return axis;
}

// Second method: the simulated step, which knows nothing of transfer functions, must die out with
// gains just below the gain margin and grow just above it. The hold is exact there and its factor
// sin(x)/x here leaves out the aliases of the sampled train, a few percent near half the rate.
TEST(Loop, HasTheGainMarginAtWhichTheSimulatedSpeedLoopBeginsToRing) {
  AxisModel axis = linear_axis();
  axis.gear.damping_Nmsprad = 4;  // resonance well damped: one crossing
  axis.control.position_gain_1ps = 1e-3;
  axis.load.gravity.constant_Nm = 0.01;
  for (const bool at_output : {false, true}) {
    axis.control.encoder_at_output = at_output;
    const double margin = speed_loop_margins(axis).gain_margin.value();
    EXPECT_LT(growth(scaled(axis, 0.93 * margin)), 0.5) << at_output << margin;
    EXPECT_GT(growth(scaled(axis, 1.07 * margin)), 2) << at_output << margin;
  }
}

TEST(Loop, HasThePositionMarginAtWhichTheSimulatedPositionLoopBeginsToRing) {
  AxisModel axis = linear_axis();
  axis.gear.damping_Nmsprad = 4;
  axis.control.speed_integral_gain_Nmprad = 0;
  const double margin = position_loop_margins(axis).gain_margin.value();
  AxisModel calm = axis, ringing = axis;
  calm.control.position_gain_1ps *= 0.95 * margin;
  ringing.control.position_gain_1ps *= 1.05 * margin;
  EXPECT_LT(growth(calm), 0.5);
  EXPECT_GT(growth(ringing), 2);
}

// At a crossover the loop's magnitude is 1 and its phase the margin above −180°.
TEST(Loop, MeetsItsOwnMargins) {
  const AxisModel axis = tests::small_axis();
  for (const bool position : {false, true}) {
    const auto margins = position ? position_loop_margins(axis) : speed_loop_margins(axis);
    const auto loop = (position ? position_loop : speed_loop)(axis, *margins.crossover_radps);
    EXPECT_NEAR(std::abs(loop), 1, tol(1e-9));
    EXPECT_NEAR(std::arg(-loop), margins.phase_margin_rad.value(), tol(1e-9));
    EXPECT_GT(margins.gain_margin.value(), 1);
  }
}

// Between antiresonance and resonance the motor's own angle leads, so the loop rises through 1
// there with a phase above 0: a margin of more than 180°, not a lag of nearly a turn. The phase of
// a collocated loop lies between −270° and 90°, which gives the margin at each crossing by itself.
// Second method: the simulated step of such a loop dies out.
TEST(Loop, CountsALeadAtTheResonanceAsAMarginAndNotAsALag) {
  AxisModel axis = linear_axis();
  // A rotor as light as the load, and a resonance slow enough for the lags to be small.
  axis.gear.rotor_inertia_kgm2 = axis.load.inertia_kgm2 / (axis.gear.ratio * axis.gear.ratio);
  axis.gear.stiffness_Nmprad = 60;
  axis.gear.damping_Nmsprad = 0.01;
  axis.control.speed_integral_gain_Nmprad = 0;
  axis.control.position_gain_1ps = 1e-3;
  axis.load.gravity.constant_Nm = 0.01;
  const double resonance = resonance_radps(axis);
  axis.control.speed_gain_Nmsprad *= 1.5 / std::abs(speed_loop(axis, resonance));
  double least = 10;
  bool leads = false;
  for (double w = 1; w < 8000 * kPi; w *= 1.0001) {
    const auto loop = speed_loop(axis, w);
    if ((std::abs(loop) >= 1) == (std::abs(speed_loop(axis, w * 1.0001)) >= 1)) continue;
    const bool is_lead = std::arg(loop) > 0 && std::arg(loop) < kPi / 2;
    leads |= is_lead;
    least = std::min(least, std::arg(-loop) + (is_lead ? 2 * kPi : 0));
  }
  EXPECT_TRUE(leads);
  // The scan steps by 1e-4 in frequency, and the phase at the least margin turns by less than 1 rad
  // per unit of its logarithm.
  EXPECT_NEAR(speed_loop_margins(axis).phase_margin_rad.value(), least, tol(1e-4));
  EXPECT_GT(least, 0);
  EXPECT_LT(growth(axis), 1);
}

TEST(Loop, SeesAnUndampedResonanceNarrowerThanItsGrid) {
  AxisModel axis = linear_axis();
  axis.gear.damping_Nmsprad = 1e-5;
  axis.control.encoder_at_output = true;
  // The peak at the resonance stands far above 1, so phase margins are taken there too.
  EXPECT_GT(std::abs(speed_loop(axis, resonance_radps(axis))), 100);
  EXPECT_LT(speed_loop_margins(axis).gain_margin.value(), 0.01);
}

// Poles and zeros on the imaginary axis: the phase jumps by half a turn there, and which way shows
// only next to them. Damping of 1e-6 N·m·s/rad changes the phase elsewhere by less than
// d·ω/k ≈ 1e-6·3e3/60 = 5e-5 rad, near the resonance by the same over its distance from it.
TEST(Loop, WithoutAnyDampingHasTheMarginsOfNextToNone) {
  for (const bool at_output : {false, true}) {
    for (const double cable : {0.0, 2.0}) {
      AxisModel axis = linear_axis();
      axis.load.inertia_kgm2 = 6e-3;
      axis.gear.stiffness_Nmprad = 60;
      axis.load.cable_stiffness_Nmprad = cable;
      axis.control.encoder_at_output = at_output;
      axis.gear.damping_Nmsprad = 0;
      const auto none = speed_loop_margins(axis), outer = position_loop_margins(axis);
      axis.gear.damping_Nmsprad = 1e-6;
      const auto little = speed_loop_margins(axis), outer_little = position_loop_margins(axis);
      EXPECT_NEAR(*none.phase_margin_rad, *little.phase_margin_rad, tol(1e-3)) << at_output;
      EXPECT_NEAR(*none.gain_margin, *little.gain_margin, tol(1e-3)) << at_output;
      EXPECT_NEAR(*none.delay_margin_s, *little.delay_margin_s, tol(1e-5)) << at_output;
      EXPECT_NEAR(*outer.phase_margin_rad, *outer_little.phase_margin_rad, tol(1e-3)) << at_output;
      // At the output an undamped resonance rings whatever the gain; at the motor it need not.
      EXPECT_EQ(*none.phase_margin_rad < 0, at_output);
    }
  }
}

// Second method: the simulated step of that loop, the encoder at the motor, dies out.
TEST(Loop, WithoutAnyDampingIsAsStableAsTheSimulatedStepWhenReadAtTheMotor) {
  AxisModel axis = linear_axis();
  axis.load.inertia_kgm2 = 6e-3;
  axis.gear.stiffness_Nmprad = 60;
  axis.gear.damping_Nmsprad = 0;
  axis.control.position_gain_1ps = 1e-3;
  axis.load.gravity.constant_Nm = 0.01;
  EXPECT_GT(speed_loop_margins(axis).phase_margin_rad.value(), 0);
  EXPECT_LT(growth(axis), 1);
}

TEST(Loop, HasTheDelayMarginOfItsOnlyCrossover) {
  const auto margins = speed_loop_margins(tests::small_axis());
  EXPECT_NEAR(*margins.delay_margin_s, *margins.phase_margin_rad / *margins.crossover_radps,
              tol(1e-12));
}

// An inertia under speed gain and position gain, all lags next to none, is of second order:
// ω_n² = position gain·ks/J, 2ζω_n = ks/J. Peak 1/(2ζ√(1 − ζ²)), bandwidth
// ω_n·√(1 − 2ζ² + √(2 − 4ζ² + 4ζ⁴)) (Ogata, Modern Control Engineering, ch. 7; from memory).
// Left over: lags of 3e-5 s at 60 rad/s, 2e-3.
TEST(Loop, ClosedHasThePeakAndBandwidthOfSecondOrder) {
  AxisModel axis = linear_axis();
  axis.gear.stiffness_Nmprad = 1e8;
  axis.control.control_rate_Hz = 8e4;
  axis.control.current_bandwidth_Hz = axis.control.estimator_bandwidth_Hz = 1e5;
  axis.control.speed_integral_gain_Nmprad = 0;
  const double inertia = axis.load.inertia_kgm2 + axis.reflected_inertia_kgm2();
  const double natural = 60, zeta = 0.4;
  axis.control.speed_gain_Nmsprad = 2 * zeta * natural * inertia;
  axis.control.position_gain_1ps = natural / (2 * zeta);
  const LoopStudy study = study_loops(axis, loop_points(axis));
  EXPECT_TRUE(study.is_stable);
  EXPECT_NEAR(*study.peak, 1 / (2 * zeta * std::sqrt(1 - zeta * zeta)), tol(1e-2));
  const double z2 = zeta * zeta;
  EXPECT_NEAR(*study.bandwidth_radps / natural,
              std::sqrt(1 - 2 * z2 + std::sqrt(2 - 4 * z2 + 4 * z2 * z2)), tol(1e-2));
}

TEST(Loop, ThatIsUnstableHasNoClosedResponse) {
  AxisModel axis = tests::small_axis();
  axis.control.speed_gain_Nmsprad *= 100;
  const LoopStudy study = study_loops(axis, loop_points(axis));
  EXPECT_FALSE(study.is_stable);
  EXPECT_FALSE(study.bandwidth_radps);
  EXPECT_FALSE(study.peak);
}

TEST(Loop, ResponsesAreTheLoopsAtTheirFrequencies) {
  const AxisModel axis = tests::small_axis();
  const FrequencyResponse response = study_loops(axis, loop_points(axis)).response;
  ASSERT_GT(response.w_radps.size(), 300U);
  for (std::size_t i = 0; i < response.w_radps.size(); i += 37) {
    const double w = response.w_radps[i];
    EXPECT_NEAR(response.speed_gain[i] / std::abs(speed_loop(axis, w)), 1, tol(1e-12));
    EXPECT_NEAR(
        std::remainder(response.speed_phase_rad[i] - std::arg(speed_loop(axis, w)), 2 * kPi), 0,
        tol(1e-9));
    const auto open = position_loop(axis, w);
    EXPECT_NEAR(response.position_gain[i] / std::abs(open), 1, tol(1e-12));
    EXPECT_NEAR(response.closed_gain[i] / std::abs(open / (1.0 + open)), 1, tol(1e-9));
    EXPECT_NEAR(response.error_gain[i] * std::abs(1.0 + open), 1, tol(1e-9));
  }
}

}  // namespace
}  // namespace gazewright
