#include "core/motion/profile.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/motion/rigid_move.h"
#include "core/motion/step.h"
#include "core/units/angle.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::linear_axis;
using tests::small_axis;
constexpr double kDeg = kPi / 180;
constexpr std::array kPlanned{ProfileKind::trapezoid, ProfileKind::jerk_limited,
                              ProfileKind::minimum_jerk};

// Source: Siciliano et al., Robotics: Modelling, Planning and Control, Springer 2009, 4.2.1.
TEST(Profile, AShortTrapezoidIsATriangle) {
  const Profile move =
      plan_move(ProfileKind::trapezoid, 90 * kDeg, {.acceleration_radps2 = 2000 * kDeg});
  EXPECT_NEAR(move.time_s, 0.424264, tol(5e-7));                                 // six digits given
  EXPECT_NEAR(move.at(move.time_s / 2).speed_radps / kDeg, 424.264, tol(5e-4));  // likewise
}

// Source: the same, t = θ/ω + ω/α, and the example of 4.2.1 (θ = π, t = 1 s, α = 6π: from memory).
TEST(Profile, ALongTrapezoidCruisesAtItsSpeedLimit) {
  const ProfileLimits limits{.speed_radps = 300 * kDeg, .acceleration_radps2 = 2000 * kDeg};
  EXPECT_NEAR(plan_move(ProfileKind::trapezoid, 90 * kDeg, limits).time_s, 0.45, tol(1e-12));
  const double blend_s = 0.5 - 0.5 * std::sqrt(1.0 / 3);  // 0.211325 s
  const Profile example =
      plan_move(ProfileKind::trapezoid, kPi,
                {.speed_radps = 6 * kPi * blend_s, .acceleration_radps2 = 6 * kPi});
  EXPECT_NEAR(example.time_s, 1, tol(1e-12));
  EXPECT_NEAR(example.at(0.5).speed_radps, 3.98338, tol(5e-6));
}

// Source: Flash & Hogan, J. Neurosci. 5 (1985) 1688 (from memory): peak speed 1.875·D/T. The peak
// acceleration 10/√3·D/T² at s = (3 ± √3)/6 and the jerk 60·D/T³ at the ends are its derivatives.
TEST(Profile, TheMinimumJerkMoveHasThePeaksOfItsClosedForm) {
  const double D = 0.7;
  const Profile by_speed =
      plan_move(ProfileKind::minimum_jerk, D,
                {.speed_radps = 3, .acceleration_radps2 = kInfinity, .jerk_radps3 = kInfinity});
  EXPECT_NEAR(by_speed.time_s, 1.875 * D / 3, tol(1e-12));
  EXPECT_NEAR(by_speed.at(by_speed.time_s / 2).speed_radps, 3, tol(1e-12));
  EXPECT_NEAR(by_speed.at(by_speed.time_s / 2).angle_rad, D / 2, tol(1e-12));
  const Profile by_acceleration =
      plan_move(ProfileKind::minimum_jerk, D, {.acceleration_radps2 = 50});
  const double T = by_acceleration.time_s;
  EXPECT_NEAR(by_acceleration.at(T * (3 - std::sqrt(3.0)) / 6).acceleration_radps2, 50, tol(1e-10));
  const Profile by_jerk = plan_move(ProfileKind::minimum_jerk, D, {.jerk_radps3 = 4000});
  const double slope = by_jerk.at(1e-7).acceleration_radps2 / 1e-7;
  EXPECT_NEAR(slope / 4000, 1, tol(1e-4));  // 6·s of the next term: s = 1e-7/0.22 -> 3e-6
}

/// α_rms in units of θ/T², by the midpoint rule.
double rms_acceleration(const Profile& move) {
  constexpr int kParts = 20000;
  double sum = 0;
  for (int i = 0; i < kParts; ++i) {
    const double a = move.at((i + 0.5) / kParts * move.time_s).acceleration_radps2;
    sum += a * a / kParts;
  }
  return std::sqrt(sum) * move.time_s * move.time_s / std::abs(move.move_rad);
}

// Source: servo handbooks (e.g. DC Motors, Speed Controls, Servo Systems, Pergamon 1977; from
// memory): triangle 4, trapezoid in thirds 4.5·√(2/3) = 3.674235. Minimum jerk: ∫(60s − 180s² +
// 120s³)² ds = 120/7. Midpoint rule over a jump: half a part of 16/2e4 -> 4e-4 at worst.
TEST(Profile, HasTheHeatOfItsShape) {
  const auto rms = [](ProfileKind kind, double speed) {
    return rms_acceleration(plan_move(kind, 1, {.speed_radps = speed, .acceleration_radps2 = 4.5}));
  };
  EXPECT_NEAR(rms(ProfileKind::trapezoid, kInfinity), 4, tol(4e-4));
  EXPECT_NEAR(rms(ProfileKind::trapezoid, 1.5), 3.674235, tol(4e-4));
  EXPECT_NEAR(rms(ProfileKind::minimum_jerk, kInfinity), std::sqrt(120.0 / 7), tol(1e-6));
}

struct Peaks {
  double speed = 0, acceleration = 0, jump = 0;  ///< jump: largest change of acceleration a step
};
Peaks peaks_of(const Profile& move, int parts) {
  Peaks peaks;
  ProfilePoint last = move.at(0);
  for (int i = 0; i <= parts; ++i) {
    const ProfilePoint p = move.at(move.time_s * i / parts * (1 - 1e-12));
    peaks.speed = std::max(peaks.speed, std::abs(p.speed_radps));
    peaks.acceleration = std::max(peaks.acceleration, std::abs(p.acceleration_radps2));
    peaks.jump = std::max(peaks.jump, std::abs(p.acceleration_radps2 - last.acceleration_radps2));
    last = p;
  }
  return peaks;
}

TEST(Profile, OfAnySizeArrivesAtRestWithinItsLimits) {
  std::mt19937 random(4711);
  std::uniform_real_distribution<double> decades(-3, 3), sign(-1, 1);
  for (int i = 0; i < 300; ++i) {
    const double move = std::copysign(std::pow(10, decades(random)), sign(random));
    const ProfileLimits limits{std::pow(10, decades(random)), std::pow(10, decades(random)),
                               std::pow(10, decades(random))};
    double shorter_s = 0;
    for (const ProfileKind kind : {ProfileKind::trapezoid, ProfileKind::jerk_limited}) {
      const Profile profile = plan_move(kind, move, limits);
      EXPECT_GE(profile.time_s, shorter_s * (1 - 1e-12)) << i;
      shorter_s = profile.time_s;
    }
    for (const ProfileKind kind : kPlanned) {
      const Profile profile = plan_move(kind, move, limits);
      const ProfilePoint end = profile.at(profile.time_s * (1 - 1e-9));
      const Peaks peaks = peaks_of(profile, 1000);
      // The end 1e-9 of the time earlier; a dozen operations before.
      EXPECT_NEAR(end.angle_rad / move, 1, tol(1e-9)) << i << ' ' << name_of(kind);
      // Its speed there: what the acceleration takes in that time, and the rounding of the peak.
      const double left = limits.acceleration_radps2 * 1e-9 * profile.time_s + 1e-12 * peaks.speed;
      EXPECT_LE(std::abs(end.speed_radps), 1.01 * left) << i << ' ' << name_of(kind);
      EXPECT_LE(peaks.speed, limits.speed_radps * (1 + 1e-9)) << i << ' ' << name_of(kind);
      EXPECT_LE(peaks.acceleration, limits.acceleration_radps2 * (1 + 1e-9)) << i;
      if (kind != ProfileKind::trapezoid) {
        EXPECT_LE(peaks.jump, limits.jerk_radps3 * profile.time_s / 1000 * (1 + 1e-6)) << i;
      }
    }
  }
}

TEST(Profile, WithoutAJerkLimitIsTheTrapezoid) {
  const ProfileLimits limits{.speed_radps = 2, .acceleration_radps2 = 30};
  EXPECT_EQ(plan_move(ProfileKind::jerk_limited, 0.5, limits).time_s,
            plan_move(ProfileKind::trapezoid, 0.5, limits).time_s);
}

TEST(Profile, TheQuickestIsThePathOfTheFastestMove) {
  const auto profile = plan_quickest(small_axis(), 0.7);
  const auto fastest = fastest_move(small_axis(), 0.7);
  ASSERT_TRUE(profile && fastest);
  EXPECT_NEAR(profile->time_s, fastest->time_s, tol(1e-12));
  EXPECT_NEAR(profile->at(profile->time_s * (1 - 1e-12)).angle_rad, 0.7, tol(1e-9));
  // 400 points: the switch lies up to half a step of 0.2 ms from one of them.
  EXPECT_NEAR(profile->at(fastest->switch_time_s).speed_radps / fastest->peak_speed_radps, 1,
              tol(5e-3));
  AxisModel weak = small_axis();
  weak.drive.current_limit_A = 0.01;
  for (const ProfileKind kind : kProfiles)
    EXPECT_EQ(plan(kind, weak, 0.7).has_value(), kind == ProfileKind::step) << name_of(kind);
}

TEST(Profile, LimitsFollowFromTheAxisWhereNobodyEnteredThem) {
  AxisModel axis = small_axis();
  const ProfileLimits usual = profile_limits(axis, 0.7);
  EXPECT_DOUBLE_EQ(usual.acceleration_radps2, 0.8 * peak_acceleration_radps2(axis));
  EXPECT_DOUBLE_EQ(usual.speed_radps, axis.control.speed_limit_radps);
  const double up_s = std::min(usual.speed_radps / usual.acceleration_radps2,
                               std::sqrt(0.7 / usual.acceleration_radps2));
  EXPECT_DOUBLE_EQ(usual.acceleration_radps2 / usual.jerk_radps3, up_s / 4);
  axis.control.acceleration_limit_radps2 = 12;
  axis.control.jerk_limit_radps3 = 345;
  EXPECT_EQ(profile_limits(axis, 0.7).acceleration_radps2, 12);
  EXPECT_EQ(profile_limits(axis, 0.7).jerk_radps3, 345);
}

TEST(ProfileRun, OfAStepIsTheStepWhateverTheFeedForward) {
  AxisModel axis = small_axis();
  const SettledStep plain = simulate_until_settled(axis, 0.7, 0.004);
  axis.control.speed_feed_forward = axis.control.acceleration_feed_forward = 1;
  const SettledStep again =
      simulate_until_settled(axis, plan_move(ProfileKind::step, 0.7, {}), 0.004);
  EXPECT_EQ(plain.trace.angle_rad, again.trace.angle_rad);
  EXPECT_EQ(plain.trace.current_A, again.trace.current_A);
}

/// How far the output trails behind in the middle of a long cruise. [rad]
double lag_rad(AxisModel axis, double speed_part, double acceleration_part) {
  axis.control.speed_feed_forward = speed_part;
  axis.control.acceleration_feed_forward = acceleration_part;
  const Profile move =
      plan_move(ProfileKind::trapezoid, 2, {.speed_radps = 3, .acceleration_radps2 = 200});
  const Trace trace = simulate_until_settled(axis, move, 0.004).trace;
  const auto row = static_cast<std::size_t>(move.time_s * 0.8 * axis.control.control_rate_Hz);
  return move.at(trace.time_s[row]).angle_rad - trace.angle_rad[row];
}

// A position loop of gain kp over a speed loop with integral part trails by ω/kp; feed-forward of
// the part p of the speed leaves (1 − p) of it.
TEST(ProfileRun, TrailsBySpeedOverGainLessTheFeedForward) {
  AxisModel axis = linear_axis();
  axis.control.speed_integral_gain_Nmprad = 40;
  const double lag = 3 / axis.control.position_gain_1ps;
  // What the speed loop has not yet made up after 0.5 s, and the reading's own delay of a sample.
  EXPECT_NEAR(lag_rad(axis, 0, 0) / lag, 1, tol(5e-3));
  EXPECT_NEAR(lag_rad(axis, 0.5, 0) / lag, 0.5, tol(5e-3));
  EXPECT_NEAR(lag_rad(axis, 1, 0) / lag, 0, tol(5e-3));
}

// Inertia alone with both feed-forwards: current = (J_load + N²·J_m)·α/(N·Kt).
TEST(ProfileRun, NeedsTheCurrentOfItsAcceleration) {
  AxisModel axis = linear_axis();
  axis.control.speed_feed_forward = axis.control.acceleration_feed_forward = 1;
  const Profile move = plan_move(ProfileKind::minimum_jerk, 0.7, {.acceleration_radps2 = 80});
  const SettledStep run = simulate_until_settled(axis, move, 0.004);
  const double per = (axis.load.inertia_kgm2 + axis.reflected_inertia_kgm2()) /
                     (axis.gear.ratio * axis.drive.torque_constant_NmpA);
  // Delay of two samples and the current's lag of 0.16 ms: 0.3 ms of 0.22 s, made up by the loop.
  EXPECT_NEAR(run.figures.peak_current_A / (per * 80), 1, tol(0.02));
}

}  // namespace
}  // namespace gazewright
