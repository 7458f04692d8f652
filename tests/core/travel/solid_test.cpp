#include "core/travel/solid.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>

#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using Eigen::AngleAxisd;
using Eigen::Vector3d;
using tests::Random;

Solid ball(const Vector3d& centre_m, double radius_m) {
  return {Solid::Kind::ball, centre_m, Eigen::Matrix3d::Identity(), Vector3d::Constant(radius_m)};
}
Solid box(const Vector3d& centre_m, const Vector3d& half_m) {
  return {Solid::Kind::box, centre_m, Eigen::Matrix3d::Identity(), half_m};
}
Solid rod(const Vector3d& centre_m, double radius_m, double half_length_m) {
  return {Solid::Kind::cylinder,
          centre_m,
          Eigen::Matrix3d::Identity(),
          {radius_m, radius_m, half_length_m}};
}
Solid turned(Solid solid, double angle_rad, const Vector3d& about) {
  solid.axes = AngleAxisd(angle_rad, about.normalized()).toRotationMatrix() * solid.axes;
  return solid;
}

// A plane that keeps 0.999 of the distance ends the search.
TEST(Gap, OfBallAndBoxIsTheDistanceFromFaceEdgeAndCorner) {
  const Solid block = box({0, 0, 0}, {1, 2, 3});
  EXPECT_NEAR(gap_m(block, ball({4, 0.5, 0.5}, 0.5)), 4 - 1 - 0.5, tol(0.001 * 2.5));
  EXPECT_NEAR(gap_m(ball({4, 6, 1}, 0.5), block), 5 - 0.5, tol(0.001 * 4.5));  // 3, 4
  EXPECT_NEAR(gap_m(block, ball({3, 4, 4}, 0.5)), 3 - 0.5, tol(0.001 * 2.5));  // 2, 2, 1
  EXPECT_LE(gap_m(block, ball({3, 4, 4}, 3.0001)), 0);
  EXPECT_GT(gap_m(block, ball({3, 4, 4}, 2.9999)), 0);
}

TEST(Gap, OfTwoBoxesThatPassEdgeAcrossEdgeNeedsThePlaneOfBothEdges) {
  // Cubes of half side 1: one turned by 45° about z shows an upright edge at x = √2, the other,
  // turned about y, an edge along y. No face of either keeps them apart.
  const Solid a = turned(box({0, 0, 0}, {1, 1, 1}), M_PI / 4, Vector3d::UnitZ());
  const auto b = [](double x) {
    return turned(box({x, 0, 0}, {1, 1, 1}), M_PI / 4, Vector3d::UnitY());
  };
  EXPECT_NEAR(gap_m(a, b(2 * M_SQRT2 + 0.01)), 0.01, tol(1e-9));
  EXPECT_LE(gap_m(a, b(2 * M_SQRT2 - 1e-9)), 0);
}

TEST(Gap, OfRodsIsTheDistanceSideBySideAndEndToEnd) {
  EXPECT_NEAR(gap_m(rod({0, 0, 0}, 0.5, 2), rod({3, 4, 1}, 0.5, 2)), 4, tol(1e-9));
  EXPECT_NEAR(gap_m(rod({0, 0, 0}, 0.5, 2), rod({0.1, 0, 5}, 0.5, 2)), 1, tol(1e-9));
  const Solid crossing = turned(rod({0, 1.25, 0}, 0.5, 2), M_PI / 2, Vector3d::UnitY());
  EXPECT_NEAR(gap_m(rod({0, 0, 0}, 0.5, 2), crossing), 0.25, tol(1e-9));
  EXPECT_LE(gap_m(rod({0, 0, 0}, 0.7, 2), crossing), 0.05 + 1e-12);
}

Solid random_solid(Random& random) {
  const auto part = [&] { return random.uniform(-1, 1); };
  const auto size = [&] { return random.uniform(0.1, 1); };
  const Vector3d centre(part(), part(), part());
  Solid solid;
  switch (random.below(3)) {
    case 0:
      return ball(2 * centre, size());
    case 1:
      solid = box(2 * centre, {size(), size(), size()});
      break;
    default:
      solid = rod(2 * centre, size(), size());
  }
  return turned(solid, random.uniform(0, 3), {part(), part(), part()});
}

/// A point of the solid; every other one on its surface.
Vector3d point_of(const Solid& solid, Random& random) {
  const double outwards = random.chance(0.5) ? 10 : 1.2;
  const auto part = [&] { return random.uniform(-1, 1); };
  const double size = outwards * solid.bounding_radius_m();
  return solid.nearest_to(solid.centre_m + size * Vector3d(part(), part(), part()));
}

TEST(Gap, OfRandomSolidsNeverExceedsTheDistanceOfTheirPoints) {
  Random random(20);
  int apart = 0, touching = 0;
  for (int pair = 0; pair < 400; ++pair) {
    const Solid a = random_solid(random), b = random_solid(random);
    const double gap = gap_m(a, b);
    double least = kInfinity;
    for (int i = 0; i < 3000; ++i) {
      const Vector3d p = point_of(a, random);
      least = std::min(least, (p - b.nearest_to(p)).norm());
    }
    EXPECT_LE(gap, least + 1e-12) << pair;
    EXPECT_EQ(gap_m(b, a) > 0, gap > 0) << pair;
    if (gap > 0) {
      ++apart;
      // The points come within about 0.1 of the true distance.
      EXPECT_GT(gap, 0.8 * least - 0.1) << pair;
    } else {
      ++touching;
      EXPECT_LT(least, 0.05) << pair;  // sizes are 0.1 to 1
    }
  }
  EXPECT_GT(apart, 100);
  EXPECT_GT(touching, 50);
}

TEST(SolidOf, ABodyIsWhatItLooksLikeFromOutside) {
  Body body;
  for (Quantity& at : body.centre_m) at = si_quantity(0.1);
  body.shape = Shell{si_quantity(0.06), si_quantity(0.002)};
  EXPECT_EQ(solid_of(body).value().half_m(0), 0.03);
  body.shape = Tube{{"y"}, si_quantity(0.02), si_quantity(0.01), si_quantity(0.08)};
  const Solid tube = solid_of(body).value();
  EXPECT_NEAR(tube.reach_m(Vector3d::UnitY()), 0.04, tol(1e-15));
  EXPECT_NEAR(tube.reach_m(Vector3d::UnitX()), 0.01, tol(1e-15));
  body.shape = Point{};
  EXPECT_FALSE(solid_of(body));
  body.shape = Tensor{};
  EXPECT_FALSE(solid_of(body));
  body.shape = Ball{};  // its size is missing
  EXPECT_FALSE(solid_of(body));
}

}  // namespace
}  // namespace gazewright
