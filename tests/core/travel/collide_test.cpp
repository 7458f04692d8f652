#include "core/travel/collide.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <cmath>

#include "core/travel/joined.h"
#include "core/travel/solid.h"
#include "core/units/angle.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using Eigen::Vector3d;
using tests::Random;

// A contact is reported no later than one least step after it.
constexpr double kStep_rad = 0.05 * kDegree_rad;

std::array<Quantity, 3> at(double x, double y, double z) {
  return {si_quantity(x), si_quantity(y), si_quantity(z)};
}
Body body(const char* name, const std::array<Quantity, 3>& centre, Shape shape) {
  return {name, si_quantity(0.1), centre, std::move(shape)};
}
Shape ball(double diameter_m) { return Ball{si_quantity(diameter_m)}; }
Shape box(double x, double y, double z) { return Box{at(x, y, z)}; }

/// A ball 100 mm in front of a tilt axis that is 80 mm above the mounting plane.
Rig nodding_ball() {
  Rig rig;
  rig.tilt_axis_at_m = at(0, 0, 0.08);
  rig.on_tilt.push_back(body("head", at(0.1, 0, 0), ball(0.03)));
  return rig;
}

TEST(Clearance, ABallOnALeverMeetsTheFloorAtItsClosedForm) {
  const Clearance clearance = clearance_of(nodding_ball());
  // 80 mm + 100 mm·sin θ = radius + 0.1 mm
  const double meets = std::asin((0.015 + kTouching_m - 0.08) / 0.1);
  ASSERT_TRUE(clearance.down);
  EXPECT_NEAR(clearance.down->tilt_rad, meets - kStep_rad / 2, tol(kStep_rad / 2 + 1e-9));
  EXPECT_EQ(clearance.down->tilting, "head");
  EXPECT_EQ(clearance.down->other, "stand");
  EXPECT_FALSE(clearance.up) << "over the top it comes down behind after more than half a turn";
}

TEST(Clearance, ABallBesideASmallStandDoesNotMeetIt) {
  Rig rig = nodding_ball();
  rig.tilt_axis_at_m = at(0.2, 0, 0.08);  // the ball goes round 100 to 300 mm in front
  rig.stand.height_m = si_quantity(0.1);
  EXPECT_TRUE(clearance_of(rig).down) << "a stand without a width is a floor without end";
  // The round stand reaches half_width·√2, the ball 15 mm back from its centre.
  rig.stand.half_width_m = si_quantity(0.05);
  EXPECT_FALSE(clearance_of(rig).down);
  rig.stand.half_width_m = si_quantity(0.15);
  EXPECT_TRUE(clearance_of(rig).down);
}

TEST(Clearance, WhatTouchesAtRestIsJoinedOnPurpose) {
  Rig rig = nodding_ball();
  rig.tilt_axis_at_m = at(0, 0, 1);
  rig.on_pan.push_back(body("arm", at(0, 0.02, 1), box(0.02, 0.02, 0.02)));
  rig.on_tilt.push_back(body("hub", at(0, 0.01, 0), box(0.01, 0.02, 0.01)));
  const Clearance clearance = clearance_of(rig);
  EXPECT_FALSE(clearance.up);
  EXPECT_FALSE(clearance.down);
  ASSERT_EQ(clearance.joined.size(), 1u);
  EXPECT_EQ(clearance.joined[0], std::pair(std::string("hub"), std::string("arm")));
  ASSERT_EQ(joined_of(rig).size(), 1u);
  EXPECT_EQ(joined_of(rig)[0].other, "arm");
  EXPECT_TRUE(joined_of(rig)[0].on_axis);
  EXPECT_FALSE(joined_of(rig)[0].is_doubtful());
}

TEST(Clearance, ABallInItsYokeIsDoubtfulByItsDepthUnlessTheAxisGoesThroughBoth) {
  // The ball's bottom is at 150 - 60 = 90 mm, the yoke's top at 90 + 24/2 = 102 mm.
  Rig rig;
  rig.tilt_axis_at_m = at(0, 0, 0.15);
  rig.on_tilt.push_back(body("ball", at(0, 0, 0), ball(0.12)));
  rig.on_pan.push_back(body("yoke", at(0, 0, 0.09), box(0.04, 0.13, 0.024)));
  EXPECT_NEAR(joined_of(rig).at(0).overlap_m, 0.012, tol(1e-12));
  EXPECT_TRUE(joined_of(rig)[0].is_doubtful());
  rig.on_pan[0].centre_m = at(0, 0, 0.0784);  // in each other by 0.4 mm, less than a hair
  EXPECT_NEAR(joined_of(rig).at(0).overlap_m, 0.0004, tol(1e-12));
  EXPECT_FALSE(joined_of(rig)[0].is_doubtful());
  rig.on_pan[0].centre_m = at(0, 0, 0.07);
  EXPECT_TRUE(joined_of(rig).empty());
  rig.on_pan[0] = body("arm", at(0, 0.06, 0.14), box(0.02, 0.02, 0.04));  // up past the axis
  EXPECT_GT(joined_of(rig).at(0).overlap_m, kHair_m);
  EXPECT_FALSE(joined_of(rig)[0].is_doubtful());
}

TEST(Clearance, NamesTheBodiesWithoutAShape) {
  Rig rig = nodding_ball();
  rig.on_pan.push_back(body("screws", at(0, 0, 0), Point{}));
  EXPECT_EQ(clearance_of(rig).without_shape, std::vector<std::string>{"screws"});
}

TEST(Clearance, ABlockMeetsACeilingAtItsCorner) {
  // A block 200 x 20 mm about the axis under a ceiling 60 mm above it: the corner at (100, 10) mm
  // stands at atan(10/100) over the block's middle line.
  Rig rig;
  rig.tilt_axis_at_m = at(0, 0, 1);
  rig.on_tilt.push_back(body("beam", at(0, 0, 0), box(0.2, 0.05, 0.02)));
  rig.on_pan.push_back(body("ceiling", at(0, 0, 1.07), box(0.5, 0.5, 0.02)));
  const double meets =
      std::asin((0.06 - kTouching_m) / std::hypot(0.1, 0.01)) - std::atan2(0.01, 0.1);
  const Clearance clearance = clearance_of(rig);
  ASSERT_TRUE(clearance.up && clearance.down);
  EXPECT_NEAR(clearance.up->tilt_rad, meets + kStep_rad / 2, tol(kStep_rad / 2 + 1e-9));
  EXPECT_DOUBLE_EQ(clearance.down->tilt_rad, -clearance.up->tilt_rad);
}

/// Size and place of everything, so that some pairs are apart at rest.
Rig random_rig(Random& random) {
  Rig rig;
  rig.tilt_axis_at_m = at(0, 0, random.uniform(0.1, 0.5));
  const auto add = [&](std::vector<Body>& bodies, double z) {
    for (int i = 0; i < 4; ++i) {
      const auto part = [&] { return random.uniform(-0.2, 0.2); };
      Body made = body("", at(part(), part(), z + part()), tests::random_shape(random, 0.1, 0.15));
      made.name = "body " + std::to_string(i);
      bodies.push_back(made);
    }
  };
  add(rig.on_tilt, 0);
  add(rig.on_pan, *rig.tilt_axis_at_m[2].si);
  return rig;
}

bool is_joined(const Clearance& clearance, const Body& tilting, const Body& other) {
  const std::pair<std::string, std::string> names{tilting.name, other.name};
  return std::ranges::find(clearance.joined, names) != clearance.joined.end();
}

TEST(Clearance, NoPointOfARandomRigGetsIntoAnotherBodyBeforeTheFirstContact) {
  Random random(31);
  int contacts = 0;
  for (int number = 0; number < 60; ++number) {
    const Rig rig = random_rig(random);
    const Clearance clearance = clearance_of(rig);
    const double most = clearance.up ? clearance.up->tilt_rad - kStep_rad : M_PI;
    const double least = clearance.down ? clearance.down->tilt_rad + kStep_rad : -M_PI;
    contacts += (clearance.up ? 1 : 0) + (clearance.down ? 1 : 0);
    const Vector3d p_PT(0, 0, *rig.tilt_axis_at_m[2].si);
    for (const Body& tilting : rig.on_tilt) {
      const auto a = solid_of(tilting);
      if (!a) continue;
      for (int i = 0; i < 400; ++i) {
        const auto part = [&] { return random.uniform(-1, 1); };
        const Vector3d p_T = a->nearest_to(a->centre_m + Vector3d(part(), part(), part()));
        const double tilt = random.uniform(least, most);
        const Vector3d p = p_PT + Eigen::AngleAxisd(-tilt, Vector3d::UnitY()) * p_T;
        for (const Body& other : rig.on_pan) {
          const auto b = solid_of(other);
          if (!b || is_joined(clearance, tilting, other)) continue;
          EXPECT_GT((p - b->nearest_to(p)).norm(), 0) << number << ' ' << tilt;
        }
      }
    }
  }
  EXPECT_GT(contacts, 60);
}

TEST(Clearance, IsTheSameForTheMirroredRig) {
  Random random(32);
  for (int number = 0; number < 40; ++number) {
    const Rig rig = random_rig(random);
    Rig mirrored = rig;
    for (std::vector<Body>* bodies : {&mirrored.on_pan, &mirrored.on_tilt})
      for (Body& each : *bodies) each.centre_m[1].si = -*each.centre_m[1].si;
    const Clearance a = clearance_of(rig), b = clearance_of(mirrored);
    ASSERT_EQ(a.up.has_value(), b.up.has_value());
    ASSERT_EQ(a.down.has_value(), b.down.has_value());
    // Planes that are found in another order may end the search a step earlier.
    const auto tilt = [](const std::optional<Contact>& c) { return c ? c->tilt_rad : 0; };
    EXPECT_NEAR(tilt(a.up), tilt(b.up), tol(2 * kStep_rad)) << number;
    EXPECT_NEAR(tilt(a.down), tilt(b.down), tol(2 * kStep_rad)) << number;
  }
}

}  // namespace
}  // namespace gazewright
