#include "core/motion/ringing.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/motion/profile.h"
#include "core/units/angle.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

constexpr double kRate_Hz = 8000, kRest_s = 0.5;

/// An output that does exactly what was planned, and rests for a while.
Trace perfect(const Profile& move) {
  Trace trace;
  trace.sample_time_s = 1 / kRate_Hz;
  for (int k = 0; k <= (move.time_s + kRest_s) * kRate_Hz; ++k) {
    trace.time_s.push_back(k / kRate_Hz);
    trace.angle_rad.push_back(move.at(k / kRate_Hz).angle_rad);
    trace.speed_radps.push_back(move.at(k / kRate_Hz).speed_radps);
  }
  return trace;
}

double ringing_rad(const Profile& move, double mode_radps, double damping_ratio = 0) {
  return camera_motion(perfect(move), {mode_radps, damping_ratio}, move.move_rad, 1e-3,
                       move.time_s + 2 / kRate_Hz)
      .ringing_rad;
}

// What is left after a move from rest to rest is |∫ α·e^−jωt dt|/ω: the Fourier transform of the
// acceleration at the mode. A pulse of length t gives 2·|sin(ωt/2)|/ω, two opposite ones a time s
// apart 2·|sin(ωs/2)| more. Sampled at 8 kHz the edges are off by half a sample: ω·dt/2 = 1.6 %
// of the amplitude's scale 4α/ω² at 40 Hz.
TEST(Ringing, OfATrapezoidIsItsFourierTransformAtTheMode) {
  const double a = 60, w_max = 4;
  const Profile move =
      plan_move(ProfileKind::trapezoid, 0.6, {.speed_radps = w_max, .acceleration_radps2 = a});
  const double up_s = w_max / a, apart_s = move.time_s - up_s;
  for (const double mode_Hz : {6.0, 13.0, 22.0, 40.0}) {
    const double w = 2 * kPi * mode_Hz, scale = 4 * a / (w * w);
    const double expected = scale * std::abs(std::sin(w * up_s / 2) * std::sin(w * apart_s / 2));
    EXPECT_NEAR(ringing_rad(move, w) / scale, expected / scale, tol(w / kRate_Hz / 2)) << mode_Hz;
  }
}

// A jerk that lasts a whole period of the mode leaves nothing (its transform is zero there), with
// or without the other parts of the move. Sampling: its pulses are straight lines, error
// (ω·dt)²/12.
TEST(Ringing, VanishesWhereTheJerkLastsAPeriod) {
  const double w = 2 * kPi * 20, a = 60;
  const Profile smooth =
      plan_move(ProfileKind::jerk_limited, 1.2, {.acceleration_radps2 = a, .jerk_radps3 = a * 20});
  const Profile hard = plan_move(ProfileKind::trapezoid, 1.2, {.acceleration_radps2 = a});
  EXPECT_NEAR(ringing_rad(smooth, w) / (4 * a / (w * w)), 0, tol(1e-4));
  EXPECT_GT(ringing_rad(hard, w) / (4 * a / (w * w)), 0.1);
}

// After the move y = A·e^−ζωt at most: it stays in the band once that is down to it, and leaves it
// no earlier than half a period before.
TEST(Ringing, SettlesWhenItsEnvelopeIsInTheBand) {
  const double w = 2 * kPi * 12, damping = 0.03, band = 2e-4;
  const Profile move = plan_move(ProfileKind::trapezoid, 0.5, {.acceleration_radps2 = 90});
  const double amplitude = ringing_rad(move, w, damping);
  ASSERT_GT(amplitude, 5 * band);
  const double expected_s = move.time_s + std::log(amplitude / band) / (damping * w);
  const CameraMotion camera =
      camera_motion(perfect(move), {w, damping}, move.move_rad, band, move.time_s);
  ASSERT_TRUE(camera.settle_time_s);
  EXPECT_LT(*camera.settle_time_s, expected_s + 0.1 / 12);
  EXPECT_GT(*camera.settle_time_s, expected_s - 0.6 / 12);
  EXPECT_GT(*camera.settle_time_s, move.time_s + kRest_s);  // beyond what was simulated
}

TEST(Ringing, WithoutDampingNeverSettles) {
  const Profile move = plan_move(ProfileKind::trapezoid, 0.5, {.acceleration_radps2 = 90});
  EXPECT_FALSE(
      camera_motion(perfect(move), {2 * kPi * 12, 0}, 0.5, 1e-5, move.time_s).settle_time_s);
}

TEST(Ringing, OfAStiffBracketIsTheOutputItself) {
  const Profile move = plan_move(ProfileKind::minimum_jerk, 0.5, {.acceleration_radps2 = 90});
  const double band = 0.01;
  const CameraMotion camera =
      camera_motion(perfect(move), {2 * kPi * 2000, 0.02}, 0.5, band, move.time_s);
  const StepFigures output = step_figures(perfect(move), 0.5, band);
  ASSERT_TRUE(camera.settle_time_s && output.settle_time_s);
  // It bends by α/ω² = 6e-7 rad where the output passes the band at some 0.5 rad/s.
  EXPECT_NEAR(*camera.settle_time_s, *output.settle_time_s, tol(1e-5));
}

// The closed form of a damped oscillator that is let go: one period later e^−2πζ/√(1−ζ²) is left.
TEST(Swing, LosesItsLogarithmicDecrement) {
  const double w = 50, damping = 0.1, damped = w * std::sqrt(1 - damping * damping);
  Swing swing({w, damping}, 2 * kPi / damped / 100);
  swing.advance(-40);  // anything that starts it
  const double before = swing.angle_rad();
  for (int i = 0; i < 100; ++i) swing.advance(0);
  EXPECT_NEAR(swing.angle_rad() / before, std::exp(-damping * w * 2 * kPi / damped), tol(1e-11));
}

}  // namespace
}  // namespace gazewright
