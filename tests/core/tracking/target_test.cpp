#include "core/tracking/target.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/rig/fields.h"
#include "core/units/angle.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

Target target(const std::string& tracking) {
  return target_of(with_defaults(tests::rig_of(tests::kOwl + tracking)));
}

TEST(Target, WalksPastOnAStraightLineAtTheTasksDistance) {
  const Target walk = target("tracking: {height: 1.25 m}\n");
  // From -60° to 60° of pan at 2.5 m: 2·2.5·√3/1.4 s.
  EXPECT_NEAR(walk.duration_s, 2 * 2.5 * std::sqrt(3) / 1.4, tol(1e-12));
  const double middle = walk.duration_s / 2;
  EXPECT_NEAR(walk.angle_rad(0)[0], -60 * kDegree_rad, tol(1e-12));
  EXPECT_NEAR(walk.angle_rad(middle)[0], 0, tol(1e-15));
  EXPECT_NEAR(walk.angle_rad(middle)[1], std::atan(0.5), tol(1e-15));
  EXPECT_NEAR(walk.angle_rad(middle + 2.5 / 1.4)[0], 45 * kDegree_rad, tol(1e-12));
  EXPECT_NEAR(walk.peak_speed_radps()[0], 1.4 / 2.5, tol(1e-15));
}

TEST(Target, HasItsPeakSpeedWhereTheSlopeOfItsAngleIsSteepest) {
  tests::Random random(11);
  for (int number = 0; number < 200; ++number) {
    Target walk{.speed_mps = random.log_uniform(0.1, 10),
                .distance_m = random.log_uniform(0.1, 10),
                .height_m = random.uniform(-20, 20)};
    walk.duration_s = std::min(2 * std::sqrt(3) * walk.distance_m / walk.speed_mps, 12.0);
    double steepest = 0;
    constexpr int kSteps = 4000;
    for (int i = 0; i < kSteps; ++i) {
      const double dt = walk.duration_s / kSteps;
      const double slope = walk.angle_rad((i + 1) * dt)[1] - walk.angle_rad(i * dt)[1];
      steepest = std::max(steepest, std::abs(slope) / dt);
    }
    // A chord falls short by h²/24 of the third derivative: 1e-6 of the peak with 4000 steps, and
    // 1/4000 of the end where the peak is cut off there.
    EXPECT_NEAR(steepest, walk.peak_speed_radps()[1], tol(6e-4 * walk.peak_speed_radps()[1]))
        << number;
  }
}

TEST(Target, RunsASineOnBothAxes) {
  const Target sine = target("tracking: {target: sine, amplitude: 10 deg, frequency: 2 Hz}\n");
  EXPECT_NEAR(sine.angle_rad(0.125)[1], 10 * kDegree_rad, tol(1e-15));
  EXPECT_NEAR(sine.peak_speed_radps()[0], 4 * M_PI * 10 * kDegree_rad, tol(1e-14));
  EXPECT_DOUBLE_EQ(sine.duration_s, 2);
}

TEST(Target, JumpsByTheTasksMovesWhereNoJumpIsGiven) {
  const Target jump = target("tracking: {target: jump}\n");
  EXPECT_EQ(jump.angle_rad(0.05), PerAxis{});
  EXPECT_DOUBLE_EQ(jump.angle_rad(0.2)[0], 40 * kDegree_rad);
  EXPECT_DOUBLE_EQ(jump.angle_rad(0.2)[1], 25 * kDegree_rad);
}

TEST(Target, GoesStraightBetweenThePointsOfItsPath) {
  const Target path =
      target("tracking: {target: path, path: [[1 s, 10 deg, 0 deg], [3 s, 30 deg, -8 deg]]}\n");
  EXPECT_NEAR(path.angle_rad(0)[0], 10 * kDegree_rad, tol(1e-15));
  EXPECT_NEAR(path.angle_rad(2)[0], 20 * kDegree_rad, tol(1e-15));
  EXPECT_NEAR(path.angle_rad(2)[1], -4 * kDegree_rad, tol(1e-15));
  EXPECT_NEAR(path.angle_rad(9)[0], 30 * kDegree_rad, tol(1e-15));
  EXPECT_NEAR(path.peak_speed_radps()[0], 10 * kDegree_rad, tol(1e-15));
}

}  // namespace
}  // namespace gazewright
