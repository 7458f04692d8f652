#include "core/travel/pose_windows.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/units/angle.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

PoseWindow degrees(double pan_least, double pan_most, double tilt_least, double tilt_most) {
  return {pan_least * kDegree_rad, pan_most * kDegree_rad, tilt_least * kDegree_rad,
          tilt_most * kDegree_rad};
}
double share(const PoseWindow& window, const std::vector<PoseWindow>& keep_outs = {}) {
  return axis_share(looked_at(window, keep_outs));
}

TEST(AxisShare, OfPanAllRoundAndTiltEachWayIsTheSineOfTheTilt) {
  // Source: Archimedes, On the Sphere and Cylinder: a zone is as large as the cylinder around it.
  for (const double tilt : {0.5, 17.0, 45.0, 89.0})
    EXPECT_NEAR(share(degrees(-180, 180, -tilt, tilt)), std::sin(tilt * kDegree_rad), tol(1e-12));
  EXPECT_NEAR(share(degrees(-180, 180, -90, 90)), 1, tol(1e-12));
  EXPECT_NEAR(share(degrees(-400, 500, -90, 90)), 1, tol(1e-12)) << "more turns see no more";
}

TEST(AxisShare, OfASectorIsItsPartOfTheTurn) {
  EXPECT_NEAR(share(degrees(-60, 30, -20, 40)),
              90 / 360.0 * (std::sin(40 * kDegree_rad) + std::sin(20 * kDegree_rad)) / 2,
              tol(1e-12));
  EXPECT_EQ(share(degrees(10, 10, -20, 40)), 0);
}

TEST(AxisShare, HalfATurnOfPanSeesAllWhereTiltGoesOverTheTop) {
  EXPECT_NEAR(share(degrees(-90, 90, -90, 90)), 0.5, tol(1e-12));
  EXPECT_NEAR(share(degrees(-90, 90, -180, 180)), 1, tol(1e-12));
  EXPECT_NEAR(share(degrees(-90, 90, 0, 180)), 0.5, tol(1e-12)) << "the upper half";
  EXPECT_NEAR(share(degrees(-180, 180, -1000, 1000)), 1, tol(1e-12));
}

TEST(AxisShare, LosesWhatKeepOutsTake) {
  const PoseWindow all = degrees(-180, 180, -90, 90);
  const PoseWindow lamp = degrees(-20, 15, 30, 60);
  const double taken = 35 / 360.0 * (std::sin(60 * kDegree_rad) - std::sin(30 * kDegree_rad)) / 2;
  EXPECT_NEAR(share(all, {lamp}), 1 - taken, tol(1e-12));
  EXPECT_NEAR(share(all, {lamp, lamp}), 1 - taken, tol(1e-12)) << "once, however often it is said";
  EXPECT_NEAR(share(all, {degrees(340, 375, 30, 60)}), 1 - taken, tol(1e-12)) << "a turn further";
  EXPECT_NEAR(share(degrees(-200, 200, -90, 90), {degrees(170, 190, -90, 90)}), 1 - 20 / 360.0,
              tol(1e-12));
  EXPECT_NEAR(share(all, {degrees(-200, 200, -90, 0)}), 0.5, tol(1e-12));
}

TEST(AxisShare, OfRandomWindowsIsTheShareOfRandomDirections) {
  Random random(41);
  for (int number = 0; number < 30; ++number) {
    const auto window = [&](double pan, double tilt) {
      const double p = random.uniform(-pan, pan), t = random.uniform(-tilt, tilt);
      return degrees(p, p + random.uniform(5, 300), t, t + random.uniform(5, 90));
    };
    const PoseWindow whole = window(180, 60);
    const std::vector<PoseWindow> keep_outs{window(400, 90), window(400, 90)};
    const auto sees = [&](double pan, double tilt) {
      for (double at = pan - 4 * M_PI; at <= whole.pan_most_rad; at += 2 * M_PI) {
        if (at < whole.pan_least_rad) continue;
        if (tilt < whole.tilt_least_rad || tilt > whole.tilt_most_rad) continue;
        bool closed = false;
        for (const PoseWindow& keep_out : keep_outs) closed |= is_inside(keep_out, at, tilt);
        if (!closed) return true;
      }
      return false;
    };
    constexpr int kCount = 20000;
    int seen = 0;
    for (int i = 0; i < kCount; ++i) {
      const double pan = random.uniform(-M_PI, M_PI), up = std::asin(random.uniform(-1, 1));
      seen += sees(pan, up) || sees(pan + M_PI, (up > 0 ? M_PI : -M_PI) - up) ? 1 : 0;
    }
    // Five standard deviations of a share of 20000 directions: 5·√(1/4/20000) = 0.018.
    EXPECT_NEAR(share(whole, keep_outs), double(seen) / kCount, tol(0.018)) << number;
  }
}

TEST(ViewShare, OfOnePoseIsTheSolidAngleOfThePicture) {
  // Source: solid angle of a right rectangular pyramid, 4·asin(sin(h/2)·sin(v/2)).
  const PoseWindow pose = degrees(-0.001, 0.001, -0.001, 0.001);
  for (const double h : {20.0, 62.0, 100.0}) {
    const double v = vertical_view_rad(h * kDegree_rad, 1280, 720);
    const double exact = std::asin(std::sin(h * kDegree_rad / 2) * std::sin(v / 2)) / M_PI;
    EXPECT_NEAR(view_share(looked_at(pose, {}), h * kDegree_rad, v), exact, tol(0.003)) << h;
  }
}

TEST(ViewShare, OfPanAllRoundReachesHalfAPictureFurther) {
  const auto windows = looked_at(degrees(-180, 180, -30, 30), {});
  EXPECT_NEAR(view_share(windows, 60 * kDegree_rad, 40 * kDegree_rad), std::sin(50 * kDegree_rad),
              tol(0.01));
  EXPECT_NEAR(view_share(windows, 0.001 * kDegree_rad, 0.001 * kDegree_rad), 0.5, tol(0.02));
  EXPECT_NEAR(
      view_share(looked_at(degrees(-180, 180, -80, 80), {}), 60 * kDegree_rad, 40 * kDegree_rad), 1,
      tol(1e-9));
}

TEST(ViewShare, IsTheShareOfRandomDirectionsInThePictureOfSomePose) {
  Random random(42);
  for (int number = 0; number < 12; ++number) {
    const double p = random.uniform(-100, 0), t = random.uniform(-80, 30);
    const PoseWindow whole = degrees(p, p + random.uniform(1, 200), t, t + random.uniform(1, 50));
    const double h = random.uniform(10, 110) * kDegree_rad,
                 v = random.uniform(10, 90) * kDegree_rad;
    constexpr int kCount = 4000, kPoses = 40;
    int seen = 0;
    for (int i = 0; i < kCount; ++i) {
      const double pan = random.uniform(-M_PI, M_PI), up = std::asin(random.uniform(-1, 1));
      bool in_picture = false;
      for (int a = 0; a <= kPoses && !in_picture; ++a) {
        const double psi =
            whole.pan_least_rad + (whole.pan_most_rad - whole.pan_least_rad) * a / kPoses;
        for (int b = 0; b <= kPoses && !in_picture; ++b) {
          const double theta =
              whole.tilt_least_rad + (whole.tilt_most_rad - whole.tilt_least_rad) * b / kPoses;
          // The direction in the tilt frame: pan back about z, tilt back about −y.
          const double ahead = std::cos(up) * std::cos(pan - psi), z = std::sin(up);
          const double x = std::cos(theta) * ahead + std::sin(theta) * z;
          const double y = std::cos(up) * std::sin(pan - psi);
          const double w = -std::sin(theta) * ahead + std::cos(theta) * z;
          in_picture =
              x > 0 && std::abs(y) <= x * std::tan(h / 2) && std::abs(w) <= x * std::tan(v / 2);
        }
      }
      seen += in_picture ? 1 : 0;
    }
    // Five standard deviations, 5·√(1/4/4000) = 0.04, and what lies between the poses.
    EXPECT_NEAR(view_share(looked_at(whole, {}), h, v), double(seen) / kCount, tol(0.045))
        << number;
  }
}

}  // namespace
}  // namespace gazewright
