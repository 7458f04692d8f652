#include "core/motion/gap_swing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <complex>

#include "core/motion/step.h"
#include "core/units/angle.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

std::optional<GapSwing> swing_of(const AxisModel& axis) {
  return gap_swing(axis, loop_points(axis));
}

/// Amplitude and frequency of the strongest sine in the second half of a simulated step, by
/// correlation with sines under a Hann window.
struct Sine {
  double amplitude_rad = 0, frequency_radps = 0;
};
Sine simulated(const AxisModel& axis) {
  const Trace trace = simulate_step(axis, 0.1, 3);
  const std::size_t from = trace.angle_rad.size() / 2, count = trace.angle_rad.size() - from;
  double mean = 0;
  for (std::size_t i = 0; i < count; ++i)
    mean += trace.angle_rad[from + i] / static_cast<double>(count);
  Sine best;
  for (double hertz = 1; hertz < 250; hertz += 0.5) {
    std::complex<double> sum = 0, turn = 1;
    const auto step = std::polar(1.0, -2 * kPi * hertz * trace.sample_time_s);
    for (std::size_t i = 0; i < count; ++i, turn *= step) {
      const double window = 0.5 - 0.5 * std::cos(2 * kPi * double(i) / double(count));
      sum += (trace.angle_rad[from + i] - mean) * window * turn;
    }
    const double amplitude = 4 * std::abs(sum) / double(count);
    if (amplitude > best.amplitude_rad) best = {amplitude, 2 * kPi * hertz};
  }
  return best;
}

/// The encoder at the output and no counts to speak of: the gap lies within the loop.
AxisModel with_gap_in_the_loop(double speed_gain) {
  AxisModel axis = tests::small_axis();
  axis.load.gravity = {};
  axis.control.encoder_counts = 0x1p40;
  axis.control.encoder_at_output = true;
  axis.control.speed_gain_Nmsprad = speed_gain;
  return axis;
}

// Published-checks row BKL-6: Gelb & Vander Velde; Slotine & Li (formula from memory, numeric
// Fourier agrees).
TEST(GapSwing, HasTheDeadZoneGainOfTheTextbooks) {
  EXPECT_NEAR(dead_zone_gain(2), 0.391002, tol(1e-5));
  EXPECT_EQ(dead_zone_gain(1), 0);
  EXPECT_EQ(dead_zone_gain(0.5), 0);
  // Σ of the series for large a: 1 − 4/(πa).
  EXPECT_NEAR(dead_zone_gain(1e4), 1 - 4 / (kPi * 1e4), tol(1e-8));
}

// The method keeps one harmonic. Where the swing is far beyond the gap it is good to a few percent;
// near the gains at which it begins it says too much, by up to a third. Published comparisons of
// the method with simulated play find 7 to 9 % (published-checks row BKL-4b).
TEST(GapSwing, AgreesWithTheSimulatedSwing) {
  for (const double gain : {1.1, 1.2, 1.3, 1.5, 2.0}) {
    const AxisModel axis = with_gap_in_the_loop(gain);
    const auto swing = swing_of(axis);
    ASSERT_TRUE(swing) << gain;
    const Sine sine = simulated(axis);
    const double allowed = gain < 1.4 ? 0.3 : 0.1;
    EXPECT_NEAR(swing->amplitude_rad / sine.amplitude_rad, 1, allowed) << gain;
    EXPECT_NEAR(swing->frequency_radps / sine.frequency_radps, 1, allowed) << gain;
  }
}

TEST(GapSwing, AgreesWithTheSimulatedSwingWithoutFriction) {
  AxisModel axis = tests::linear_axis();
  axis.gear.backlash_rad = 0.0046;
  axis.load.inertia_kgm2 = 6e-3;
  axis.control.encoder_at_output = true;
  const auto swing = swing_of(axis);
  ASSERT_TRUE(swing);
  const Sine sine = simulated(axis);
  EXPECT_NEAR(swing->amplitude_rad / sine.amplitude_rad, 1, 0.1);
  EXPECT_NEAR(swing->frequency_radps / sine.frequency_radps, 1, 0.1);
}

TEST(GapSwing, IsNotThereWithTheEncoderAtTheMotorAndTheSimulatedStepComesToRest) {
  AxisModel axis = with_gap_in_the_loop(2.5);
  axis.control.encoder_at_output = false;
  EXPECT_FALSE(swing_of(axis));
  EXPECT_LT(simulated(axis).amplitude_rad, 1e-3 * axis.gear.backlash_rad);
}

TEST(GapSwing, IsNotThereWithoutAGap) {
  AxisModel axis = with_gap_in_the_loop(1.5);
  axis.gear.backlash_rad = 0;
  EXPECT_FALSE(swing_of(axis));
}

// Without friction nothing but the gap has a size: the swing grows with it, its frequency stays.
TEST(GapSwing, GrowsWithTheGap) {
  AxisModel axis = tests::linear_axis();
  axis.load.inertia_kgm2 = 6e-3;
  axis.control.encoder_at_output = true;
  axis.gear.backlash_rad = 1e-3;
  const GapSwing small = swing_of(axis).value();
  axis.gear.backlash_rad = 1e-2;
  const GapSwing large = swing_of(axis).value();
  EXPECT_NEAR(large.amplitude_rad / small.amplitude_rad, 10, tol(1e-6));
  EXPECT_NEAR(large.frequency_radps / small.frequency_radps, 1, tol(1e-7));
}

TEST(GapSwing, IsHeldTogetherByAWeightAndUnseenByACoarseEncoder) {
  AxisModel axis = with_gap_in_the_loop(1.5);
  const GapSwing swing = swing_of(axis).value();
  EXPECT_TRUE(is_read(swing, axis));
  EXPECT_FALSE(is_held_together(swing, axis));
  axis.load.gravity.constant_Nm = 1.1 * swing.tooth_torque_Nm;
  EXPECT_TRUE(is_held_together(swing, axis));
  axis.control.encoder_counts = 2 * kPi / (2.1 * swing.amplitude_rad);
  EXPECT_FALSE(is_read(swing, axis));
}

}  // namespace
}  // namespace gazewright
