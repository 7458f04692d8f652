#include "core/tracking/follow.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/tracking/chance.h"
#include "core/tracking/followed_motion.h"
#include "core/tracking/outer_loop.h"
#include "core/units/angle.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

constexpr CameraPicture kPicture{
    .pixels_per_radian = 1000, .half_width_px = 640, .half_height_px = 360, .exposure_s = 5e-3};

/// 20°/s for 10 s, long enough to settle.
Target ramp() {
  return {.kind = TargetKind::path,
          .points = {{0, {0, 0}}, {10, {200 * kDegree_rad, 20 * kDegree_rad}}},
          .duration_s = 10};
}

Following following(double gain_1ps, double feed_forward = 0, bool on_angle = false) {
  const FollowedAxis axis{.gain_1ps = gain_1ps,
                          .lag_s = 5e-3,
                          .speed_limit_radps = 20,
                          .acceleration_limit_radps2 = 500};
  return {.axis = {axis, axis}, .acts_on_angle = on_angle, .feed_forward = feed_forward};
}

double last_error_rad(const Target& target, const FollowTrace& trace) {
  return target.angle_rad(target.duration_s)[0] - trace.angle_rad[0].back();
}

TEST(Follow, StaysBehindARampByItsSpeedOverTheGainWhateverTheDelay) {
  for (const double delay_s : {0.0, 0.02, 0.1}) {
    const Vision vision{.interval_s = 1.0 / 30, .delay_s = delay_s};
    const FollowTrace trace = follow(ramp(), vision, following(4), kPicture);
    // 10 s are forty times 1/gain: what is left of the start is e^-40 of 5°.
    EXPECT_NEAR(last_error_rad(ramp(), trace), ramp_lag_rad(20 * kDegree_rad, 4, 0, 0), tol(1e-9))
        << delay_s;
  }
}

TEST(Follow, StopsDeadAtTheEndOfItsTravelAndComesBackWithTheTarget) {
  // Out to 40° and back, 20°/s; held at 25°.
  const Target target{.kind = TargetKind::path,
                      .points = {{0, {0, 0}}, {2, {40 * kDegree_rad, 0}}, {4, {0, 0}}},
                      .duration_s = 4};
  const double end = 25 * kDegree_rad;
  for (const bool on_angle : {false, true}) {
    for (const double fed : {0.0, 1.0}) {
      Following bounded = following(on_angle ? 20 : 4, fed, on_angle);
      bounded.axis[0].most_rad = end;
      const Vision vision{.interval_s = 1.0 / 60, .delay_s = 0.02};
      const FollowTrace trace = follow(target, vision, bounded, kPicture);
      const FollowTrace free =
          follow(target, vision, following(on_angle ? 20 : 4, fed, on_angle), kPicture);
      const auto& angle = trace.angle_rad[0];
      const auto times = follow_times_s(target.duration_s);
      EXPECT_EQ(std::ranges::max(angle), end);
      bool was_held = false;
      for (std::size_t i = 0; i < angle.size(); ++i) {
        was_held = was_held || angle[i] == end;
        // Until then nothing tells it from the free one.
        if (was_held) break;
        EXPECT_DOUBLE_EQ(angle[i], free.angle_rad[0][i]) << times[i];
      }
      // It is there a lag after the target and leaves it a lag later than the target comes back.
      const auto held = static_cast<double>(std::ranges::count(angle, end));
      const double held_s = held * (times[1] - times[0]);
      EXPECT_NEAR(held_s, 2 * 15.0 / 20, 0.35) << on_angle << fed;
      EXPECT_LT(angle.back(), 12 * kDegree_rad);
      for (std::size_t k = 0; k < trace.frame_s.size(); ++k) {
        if (trace.frame_s[k] < 1.6 || trace.frame_s[k] > 2.4) continue;
        EXPECT_EQ(trace.at_frame_radps[0][k], 0) << "no speed is left at the end";
      }
    }
  }
}

TEST(Follow, BeginsAtTheEndOfTheTravelWhereTheTargetIsBeyondIt) {
  const Target still{.kind = TargetKind::path,
                     .points = {{0, {30 * kDegree_rad, 0}}, {1, {30 * kDegree_rad, 0}}},
                     .duration_s = 1};
  Following bounded = following(4);
  bounded.axis[0].most_rad = 20 * kDegree_rad;
  const FollowTrace trace = follow(still, {.interval_s = 1e-2}, bounded, kPicture);
  for (const double angle : trace.angle_rad[0]) EXPECT_EQ(angle, 20 * kDegree_rad);
}

TEST(FollowedMotion, MeetsTheEndOfItsTravelOnItsWayOutThoughItTurnsBack) {
  FollowedAxis axis{.gain_1ps = 1, .speed_limit_radps = 10, .acceleration_limit_radps2 = 2};
  axis.most_rad = 0.5;
  FollowedMotion motion(axis, 0);
  motion.take_speed(1, 0.5);  // v = 1 after 0.5 s, at 0.25
  EXPECT_DOUBLE_EQ(motion.angle_rad(), 0.25);
  // Braked at 2 rad/s² from there on it would turn at 0.25 + 1/4 = 0.5: that just is within.
  FollowedMotion turns = motion;
  turns.take_speed(-1, 1);
  EXPECT_NEAR(turns.angle_rad(), 0.25, tol(1e-9)) << "back where it was, 1 rad/s the other way";
  axis.most_rad = 0.46;
  FollowedMotion stopped(axis, 0);
  stopped.take_speed(1, 0.5);
  stopped.take_speed(-1, 1);
  // Meets 0.46 after t with t − t² = 0.21: t = 0.3; dead there, then back from rest at 2 rad/s² for
  // 0.5 s up to 1 rad/s and 0.2 s with that.
  EXPECT_NEAR(stopped.angle_rad(), 0.46 - 0.25 - 0.2, tol(1e-9));
}

TEST(Follow, LosesThePartOfTheLagThatIsFedForward) {
  const Vision vision{.interval_s = 1.0 / 30, .delay_s = 0.05};
  for (const double part : {0.5, 1.0}) {
    const FollowTrace trace = follow(ramp(), vision, following(4, part), kPicture);
    EXPECT_NEAR(last_error_rad(ramp(), trace), ramp_lag_rad(20 * kDegree_rad, 4, 0, part),
                tol(1e-9));
  }
}

TEST(Follow, ActingOnTheAngleStaysBehindByTheDelayAsWell) {
  const Vision vision{.interval_s = 1e-3, .delay_s = 0.05};
  const FollowTrace trace = follow(ramp(), vision, following(20, 0, true), kPicture);
  const double lag_rad =
      ramp_lag_rad(20 * kDegree_rad, 20, vision.delay_s + vision.mean_hold_s(), 0);
  // The held angle is between 0 and 1 ms older than the delay: half of that is 0.01°.
  EXPECT_NEAR(last_error_rad(ramp(), trace), lag_rad, tol(0.011 * kDegree_rad));
  const FollowTrace fed = follow(ramp(), vision, following(20, 1, true), kPicture);
  EXPECT_NEAR(last_error_rad(ramp(), fed), 0, tol(1e-6));
}

TEST(Follow, SwingsUpJustAboveTheGainThatLeavesNoPhaseMargin) {
  // Pictures without hold or lag are an integrator with dead time: K·T = π/2 is the limit.
  Target jump{.kind = TargetKind::jump, .jump_rad = {5 * kDegree_rad, 0}, .duration_s = 6};
  const Vision vision{.interval_s = 1e-3, .delay_s = 0.1};
  const double limit = gain_ceiling_1ps(vision.delay_s + vision.mean_hold_s() + 5e-3, 0);
  const auto late_swing_rad = [&](double gain_1ps) {
    const FollowTrace trace = follow(jump, vision, following(gain_1ps), kPicture);
    double most = 0;
    for (std::size_t i = trace.angle_rad[0].size() * 3 / 4; i < trace.angle_rad[0].size(); ++i)
      most = std::max(most, std::abs(trace.angle_rad[0][i] - 5 * kDegree_rad));
    return most;
  };
  EXPECT_LT(late_swing_rad(0.93 * limit), 3 * kDegree_rad);
  EXPECT_GT(late_swing_rad(1.07 * limit), 8 * kDegree_rad);
}

TEST(Follow, GivesTheSameRunForTheSameSeedAndAnotherForAnother) {
  const Vision vision{
      .interval_s = 1.0 / 60, .delay_s = 0.03, .noise_px = 8, .drop_outs = 0.2, .seed = 3};
  const auto run = [&](unsigned seed) {
    Vision seeded = vision;
    seeded.seed = seed;
    return follow(ramp(), seeded, following(6), kPicture).angle_rad[0];
  };
  EXPECT_EQ(run(3), run(3));
  EXPECT_NE(run(3), run(4));
}

TEST(Follow, StopsWhenTheTargetHasLeftThePicture) {
  // A jump of 60° leaves a picture of ±32.6°: nothing is found any more, and the axis rests.
  const Target jump{.kind = TargetKind::jump, .jump_rad = {60 * kDegree_rad, 0}, .duration_s = 2};
  const FollowTrace trace =
      follow(jump, {.interval_s = 0.02, .delay_s = 0.02}, following(6), kPicture);
  EXPECT_EQ(trace.angle_rad[0].back(), 0);
}

TEST(Follow, EndsSoonAndFiniteForEveryRandomRig) {
  tests::Random random(5);
  for (int number = 0; number < 300; ++number) {
    Target target{.kind = static_cast<TargetKind>(random.below(3)),
                  .speed_mps = random.log_uniform(1e-6, 1e6),
                  .distance_m = random.log_uniform(1e-6, 1e6),
                  .height_m = random.uniform(-10, 10),
                  .amplitude_rad = random.uniform(0, 3),
                  .frequency_Hz = random.log_uniform(1e-6, 1e3),
                  .jump_rad = {random.uniform(0, 3), random.uniform(0, 3)},
                  .duration_s = random.log_uniform(1e-3, 3)};
    const Vision vision{.interval_s = random.log_uniform(1e-9, 1e30),
                        .delay_s = random.chance(0.2) ? 0 : random.log_uniform(1e-6, 1e6),
                        .noise_px = random.chance(0.3) ? 0 : random.log_uniform(1e-3, 1e4),
                        .drop_outs = random.chance(0.1) ? 1 : random.uniform(0, 1)};
    Following with =
        following(random.log_uniform(1e-6, 1e6), random.uniform(0, 1), random.chance(0.5));
    for (FollowedAxis& axis : with.axis) {
      axis.lag_s = random.log_uniform(1e-6, 10);
      axis.speed_limit_radps = random.log_uniform(1e-3, 1e3);
      axis.acceleration_limit_radps2 = random.log_uniform(1e-3, 1e6);
    }
    const FollowTrace trace = follow(target, vision, with, kPicture);
    for (const auto* values : {&trace.angle_rad[0], &trace.angle_rad[1], &trace.slip_radps[0]})
      for (const double value : *values) ASSERT_TRUE(std::isfinite(value)) << number;
  }
}

TEST(FollowedMotion, TakesUpASpeedWithinItsAcceleration) {
  FollowedMotion motion(
      {.gain_1ps = 1, .lag_s = 0.1, .speed_limit_radps = 3, .acceleration_limit_radps2 = 10}, 0);
  // The lag asks for 30 rad/s² at first: 10 rad/s² until the gap is 1 rad/s, after 0.2 s; then the
  // gap falls by e in 0.1 s.
  motion.take_speed(5, 0.3);
  EXPECT_NEAR(motion.speed_radps(), 3 - std::exp(-1), tol(1e-14));
  // 0.2 rad while it speeds up, then 3·0.1 less the gap's area.
  EXPECT_NEAR(motion.angle_rad(), 0.2 + 0.3 - 0.1 * (1 - std::exp(-1)), tol(1e-14));
}

TEST(Chance, HasTheMeanAndSpreadOfNormalNumbers) {
  const Chance chance(7);
  constexpr int kCount = 20000;
  double sum = 0, squares = 0;
  for (int i = 0; i < kCount; ++i) {
    const double value = chance.normal(2 * static_cast<std::uint64_t>(i));
    sum += value;
    squares += value * value;
  }
  // Standard error of the mean 1/√20000 = 0.007, of the mean square √2 times that: three of each.
  EXPECT_NEAR(sum / kCount, 0, tol(0.021));
  EXPECT_NEAR(squares / kCount, 1, tol(0.03));
}

}  // namespace
}  // namespace gazewright
