#include <gtest/gtest.h>

#include <cmath>

#include "core/tracking/eye.h"
#include "core/tracking/followed_motion.h"
#include "core/tracking/outer_loop.h"
#include "core/units/angle.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(RampLag, IsOneOverTheVelocityConstant) {
  // LAG-1: a type-1 loop with Kv = 2 stays 0.5 behind a unit ramp.
  // Source: Franklin, Powell & Emami-Naeini, Feedback Control, figure 4.6 (6th edition).
  EXPECT_NEAR(ramp_lag_rad(1, 2, 0, 0), 0.5, tol(1e-15));
}

TEST(RampLag, AddsWhatTheTargetMovesInTheDelay) {
  // LAG-6: 30°/s, Kv = 20 1/s, 50 ms: 1.5° + 1.5° = 3.0° (derived).
  EXPECT_NEAR(ramp_lag_rad(30 * kDegree_rad, 20, 0, 0), 1.5 * kDegree_rad, tol(1e-15));
  EXPECT_NEAR(ramp_lag_rad(30 * kDegree_rad, 20, 50e-3, 0), 3.0 * kDegree_rad, tol(1e-15));
}

TEST(GainCeiling, LeavesTheMarginThatTheDeadTimesPhaseDoes) {
  // LAG-5: 20 ms of dead time turn 10 Hz by 72°, so a loop that crosses there keeps 90° − 72° =
  // 18°.
  EXPECT_NEAR(gain_ceiling_1ps(20e-3, 18 * kDegree_rad), 2 * M_PI * 10, tol(1e-12));
}

TEST(FollowedMotion, FollowsASineWithThePublishedLagOfFirstOrder) {
  // LAG-3: τ = 60 s; periods of 600 s and 120 s give lags of 53.57 s and 24.11 s, gains of 0.8467
  // and 0.3033. Source: Sawhney & Sawhney, Mechanical Measurements and Instrumentation,
  // example 4.16.
  struct Row {
    double period_s, lag_s, gain;
  };
  for (const Row& row : {Row{600, 53.57, 0.8467}, Row{120, 24.11, 0.3033}}) {
    FollowedMotion motion(
        {.gain_1ps = 1, .lag_s = 60, .speed_limit_radps = 1e9, .acceleration_limit_radps2 = 1e9},
        0);
    const double w = 2 * M_PI / row.period_s, step_s = 0.05;
    double in_phase = 0, quadrature = 0;
    // Ten time constants to settle, then one period: what it has of sine and of cosine.
    const int settle = static_cast<int>(std::ceil(600 / row.period_s) * row.period_s / step_s);
    const int whole = static_cast<int>(std::lround(row.period_s / step_s));
    for (int i = 0; i < 2 * settle + whole; ++i) {
      motion.take_speed(std::sin(w * (i + 0.5) * step_s), step_s);
      if (i < 2 * settle) continue;
      in_phase += motion.speed_radps() * std::sin(w * (i + 1) * step_s);
      quadrature += motion.speed_radps() * std::cos(w * (i + 1) * step_s);
    }
    // Four published digits: half a unit of the last.
    EXPECT_NEAR(std::atan2(-quadrature, in_phase) / w, row.lag_s, tol(6e-3));
    EXPECT_NEAR(2 * std::hypot(in_phase, quadrature) / whole, row.gain, tol(6e-5));
  }
}

TEST(Saccade, TakesCollewijnsLongerTimes) {
  // EYE-2: D = 2.7·A + 23 ms gives 50, 77 and 158 ms at 10, 20 and 50°.
  // Source: Collewijn, Erkelens & Steinman, Journal of Physiology 1988.
  EXPECT_NEAR(longer_saccade_time_s(10 * kDegree_rad), 50e-3, tol(1e-15));
  EXPECT_NEAR(longer_saccade_time_s(20 * kDegree_rad), 77e-3, tol(1e-15));
  EXPECT_NEAR(longer_saccade_time_s(50 * kDegree_rad), 158e-3, tol(1e-15));
}

TEST(Saccade, ReachesBalohsPeakSpeeds) {
  // EYE-4: Vp = 551·(1 − exp(−A/14)) gives 165.5, 281.3, 418.9 and 519.4 °/s at 5, 10, 20, 40°.
  // Source: Baloh, Sills, Kumley & Honrubia, Neurology 25 (1975), coefficients from memory.
  constexpr double kRows[][2] = {{5, 165.5}, {10, 281.3}, {20, 418.9}, {40, 519.4}};
  for (const auto& [size_deg, peak_degps] : kRows)  // four digits: 0.05, and 0.4 % at 5° is theirs
    EXPECT_NEAR(saccade_peak_radps(size_deg * kDegree_rad) / kDegree_rad, peak_degps,
                tol(1e-3 * peak_degps));
}

}  // namespace
}  // namespace gazewright
