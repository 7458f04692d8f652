#include "core/travel/cable.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/travel/cable_twist.h"
#include "core/units/angle.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;

Cable cable_with(const char* routing) {
  Cable cable;
  cable.presence = Presence::given;
  cable.routing = {routing};
  cable.free_length_m = si_quantity(0.4);
  cable.twist_rating_radpm = si_quantity(12);
  cable.bend_radius_m = si_quantity(0.02);
  cable.hub_radius_m = si_quantity(0.02);
  cable.wall_radius_m = si_quantity(0.05);
  cable.thickness_m = si_quantity(0.003);
  cable.anchor_radius_m = si_quantity(0.10);
  cable.moving_radius_m = si_quantity(0.05);
  return cable;
}

TEST(CableTravel, IsThatOfItsRouting) {
  EXPECT_DOUBLE_EQ(*cable_travel_rad(cable_with("twist")), 9.6);
  EXPECT_DOUBLE_EQ(*cable_travel_rad(cable_with("")), 9.6) << "twist is the default";
  EXPECT_DOUBLE_EQ(*cable_travel_rad(cable_with("coil")),
                   coil_travel_rad({0.4, 0.02, 0.05, 0.003}));
  EXPECT_DOUBLE_EQ(*cable_travel_rad(cable_with("loop")), loop_travel_rad({0.4, 0.02, 0.1, 0.05}));
  EXPECT_EQ(cable_travel_rad(cable_with("slip_ring")), kInfinity);
}

TEST(CableTravel, NeedsOnlyTheLengthsOfItsRouting) {
  const auto travel_without = [](const char* routing, Quantity Cable::*length) {
    Cable cable = cable_with(routing);
    cable.*length = {};
    return cable_travel_rad(cable).has_value();
  };
  EXPECT_FALSE(travel_without("twist", &Cable::twist_rating_radpm));
  EXPECT_TRUE(travel_without("twist", &Cable::hub_radius_m));
  EXPECT_FALSE(travel_without("coil", &Cable::hub_radius_m));
  EXPECT_FALSE(travel_without("coil", &Cable::wall_radius_m));
  EXPECT_TRUE(travel_without("coil", &Cable::twist_rating_radpm));
  EXPECT_FALSE(travel_without("loop", &Cable::anchor_radius_m));
  EXPECT_FALSE(travel_without("loop", &Cable::bend_radius_m));
  EXPECT_TRUE(travel_without("loop", &Cable::wall_radius_m));
  EXPECT_TRUE(travel_without("slip_ring", &Cable::free_length_m));
}

TEST(Coil, HoldsTheLengthOfTheSpiralThatItWindsInto) {
  // Arc length of r = r_h + t·θ/2π over the turns it says, by Simpson's rule. Layers as circles
  // leave out (t/2πr)²/2 at most: 1.7e-4 of the length for t = 2.3 mm on 20 mm.
  const Coil coil{0.6, 0.02, 0.05, 0.0023};
  const auto spiral_m = [&](double from_m, double turns) {
    const int steps = 2000;
    const double h = 2 * kPi * turns / steps, rise = coil.thickness_m / (2 * kPi);
    double sum = 0;
    for (int i = 0; i <= steps; ++i) {
      const double weight = i == 0 || i == steps ? 1 : i % 2 == 1 ? 4 : 2;
      sum += weight * std::hypot(from_m + rise * h * i, rise);
    }
    return sum * h / 3;
  };
  EXPECT_NEAR(spiral_m(coil.hub_radius_m, coil_turns_on_hub(coil)), 0.6, tol(0.6 * 1.7e-4));
  const double turns = coil_turns_at_wall(coil);
  EXPECT_NEAR(spiral_m(coil.wall_radius_m - turns * coil.thickness_m, turns), 0.6,
              tol(0.6 * 1.7e-4));
}

TEST(Coil, TurnsAreTheFormulasOfTheHandbook) {
  const double L = 0.6, hub = 0.02, wall = 0.05, t = 0.0023;
  const Coil coil{L, hub, wall, t};
  EXPECT_NEAR(coil_turns_on_hub(coil), (std::sqrt(hub * hub + L * t / kPi) - hub) / t, tol(1e-13));
  EXPECT_NEAR(coil_turns_at_wall(coil), (wall - std::sqrt(wall * wall - L * t / kPi)) / t,
              tol(1e-13));
}

TEST(Coil, TravelsMostWhereItFillsHalfItsRoom) {
  // Mainspring rule of the clock maker: half of the barrel's area; from dn_h/dL = dn_w/dL.
  Coil coil{0, 0.018, 0.055, 0.002};
  const double room_m2 = kPi * (0.055 * 0.055 - 0.018 * 0.018);
  const auto travel_at = [&](double fill) {
    coil.length_m = fill * room_m2 / coil.thickness_m;
    EXPECT_NEAR(coil_fill(coil), fill, tol(1e-14));
    return coil_travel_rad(coil);
  };
  double best = 0, best_fill = 0;
  for (int i = 0; i <= 100; ++i)
    if (const double travel = travel_at(i / 100.0); travel > best)
      best = travel, best_fill = i / 100.0;
  EXPECT_DOUBLE_EQ(best_fill, 0.5);
  EXPECT_NEAR(travel_at(1), 0, tol(1e-9));  // no room left to turn in; √ of rounding
}

TEST(Coil, OutOfRoomOrInsideOutIsRefusedWithAReason) {
  Cable cable = cable_with("coil");
  cable.free_length_m = si_quantity(3);
  EXPECT_FALSE(cable_travel_rad(cable));
  EXPECT_STREQ(why_no_cable_travel(cable), "the coil does not fit between hub and wall");
  cable.wall_radius_m = si_quantity(0.02);
  EXPECT_STREQ(why_no_cable_travel(cable), "the wall of the coil is not outside its hub");
}

TEST(Loop, IsTautWhereItsLengthIsTwoQuarterTurnsAndAStraightLine) {
  Random random(41);
  int limited = 0;
  for (int i = 0; i < 500; ++i) {
    const double size_m = random.log_uniform(0.01, 1);
    const HangingLoop loop{size_m * random.uniform(0.5, 4), size_m * random.uniform(0.05, 0.4),
                           size_m * random.uniform(0.2, 1), size_m * random.uniform(0.2, 1)};
    if (*loop_problem(loop) != '\0') continue;
    const double half_rad = loop_travel_rad(loop) / 2;
    ASSERT_GT(half_rad, 0);
    ASSERT_LE(half_rad, kPi);
    // Clamps as points in the plane: the distance at the end of the travel.
    const double x = loop.moving_radius_m * std::cos(half_rad) - loop.anchor_radius_m;
    const double y = loop.moving_radius_m * std::sin(half_rad);
    const double path_m = kPi * loop.bend_radius_m + std::hypot(x, y) - 2 * loop.bend_radius_m;
    if (half_rad < kPi) {
      ++limited;
      EXPECT_NEAR(path_m, loop.length_m, tol(1e-12 * loop.length_m));
    } else {
      EXPECT_LE(path_m, loop.length_m * (1 + 1e-12));
    }
  }
  EXPECT_GT(limited, 50);
}

TEST(Loop, TravelsAsFarWithClampsExchanged) {
  EXPECT_DOUBLE_EQ(loop_travel_rad({0.17, 0.02, 0.1, 0.05}),
                   loop_travel_rad({0.17, 0.02, 0.05, 0.1}));
}

TEST(Loop, LongEnoughToReachAcrossTurnsOnceAndNotFurther) {
  EXPECT_EQ(loop_travel_rad({0.5, 0.02, 0.1, 0.05}), 2 * kPi);
  const double just_across = 0.15 + (kPi - 2) * 0.02;
  EXPECT_NEAR(loop_travel_rad({just_across * (1 - 1e-9), 0.02, 0.1, 0.05}), 2 * kPi, tol(2e-3));
}

TEST(Loop, HangsOnTwoLegsAndHalfATurn) {
  // gap 50 mm: half a turn of radius 25 mm is 78.5 mm long, the legs share the rest.
  EXPECT_NEAR(loop_depth_m({0.3, 0.02, 0.1, 0.05}), (0.3 - kPi * 0.025) / 2 + 0.025, tol(1e-15));
}

TEST(Loop, ThatCannotBeIsRefusedWithAReason) {
  const auto why = [](double length_m, double anchor_m) {
    Cable cable = cable_with("loop");
    cable.free_length_m = si_quantity(length_m);
    cable.anchor_radius_m = si_quantity(anchor_m);
    EXPECT_FALSE(cable_travel_rad(cable));
    return std::string(why_no_cable_travel(cable));
  };
  EXPECT_EQ(why(0.4, 0), "a clamp on the axis twists the cable instead of bending it");
  EXPECT_EQ(why(0.06, 0.1), "the loop is shorter than half a turn at its bend radius");
  EXPECT_EQ(why(0.1, 0.15), "the loop is taut already where its clamps pass each other");
}

TEST(Bundle, OfOneLiesOnTheAxisAndSmallOnesTouchInARing) {
  const double d = 0.004;
  EXPECT_EQ(packed_lay_radius_m(1, d), 0);
  EXPECT_DOUBLE_EQ(packed_lay_radius_m(2, d), d / 2);
  EXPECT_DOUBLE_EQ(packed_lay_radius_m(3, d), d / std::sqrt(3));
  EXPECT_DOUBLE_EQ(packed_lay_radius_m(4, d), d / std::sqrt(2));
  EXPECT_DOUBLE_EQ(packed_lay_radius_m(6, d), d);
  EXPECT_DOUBLE_EQ(packed_lay_radius_m(7, d), d);
}

TEST(Bundle, IsTheBestKnownPackingUpToNineAndABoundAbove) {
  // Radius of the smallest circle about n unit circles: Graham, Lubachevsky, Nurmela, Östergård,
  // Dense packings of congruent circles in a circle, 1998 (from memory).
  const double circle[]{0,      1,      2,      2.1547, 2.4142, 2.7013, 3,
                        3,      3.3048, 3.6131, 3.8130, 3.9238, 4.0296, 4.2361,
                        4.3284, 4.5214, 4.6154, 4.7920, 4.8637, 4.8637};
  for (int n = 1; n <= 19; ++n) {
    const double best = (circle[n] - 1) / 2, ours = packed_lay_radius_m(n, 1);
    EXPECT_NEAR(ours, n <= 9 ? best : std::max(ours, best), tol(5e-5)) << n;
    EXPECT_GE(best, ours * 0.83) << n;
  }
  for (int n = 1; n < 1000; ++n) {
    EXPECT_LE(packed_lay_radius_m(n, 1), packed_lay_radius_m(n + 1, 1)) << n;
    // n circles of radius 1/2 cannot be in a circle of less than their own area.
    EXPECT_GE(std::pow(packed_lay_radius_m(n, 1) + 0.5, 2), n * 0.25 * (1 - 1e-12)) << n;
  }
}

TEST(Helix, IsAsLongAsTheCableAndBendsAsItsThreeNearestPointsDo) {
  const double r = 0.006, twist = 5, length = 0.2;
  const double height = length - *helix_shortening_m(r, twist, length);
  const auto at = [&](double s, double* p) {
    p[0] = r * std::cos(twist * s), p[1] = r * std::sin(twist * s), p[2] = height * s;
  };
  double path = 0, last[3], now[3], next[3];
  const int steps = 20000;
  at(0, last);
  for (int i = 1; i <= steps; ++i) {
    at(double(i) / steps, now);
    path += std::hypot(now[0] - last[0], now[1] - last[1], now[2] - last[2]);
    std::copy(now, now + 3, last);
  }
  EXPECT_NEAR(path, length, tol(1e-9));
  // Circle through three points h apart: curvature 2·|a × b|/(|a||b||a + b|); error of order h².
  const double h = 1e-3;
  at(0.5 - h, last), at(0.5, now), at(0.5 + h, next);
  const Eigen::Vector3d a(now[0] - last[0], now[1] - last[1], now[2] - last[2]);
  const Eigen::Vector3d b(next[0] - now[0], next[1] - now[1], next[2] - now[2]);
  const double curvature = 2 * a.cross(b).norm() / (a.norm() * b.norm() * (a + b).norm());
  EXPECT_NEAR(helix_bend_radius_m(r, twist, length) * curvature, 1, tol(1e-5));
}

TEST(Helix, WoundFlatHasNoShorteningAndACableOnTheAxisDoesNotBend) {
  EXPECT_FALSE(helix_shortening_m(0.1, 3, 0.2));
  EXPECT_DOUBLE_EQ(*helix_shortening_m(0.1, 2, 0.2), 0.2);
  EXPECT_EQ(*helix_shortening_m(0, 3, 0.2), 0);
  EXPECT_EQ(helix_strain(0, 3, 0.2), 0);
  EXPECT_EQ(helix_bend_radius_m(0, 3, 0.2), kInfinity);
}

TEST(CableTravel, IsAnswerOrReasonAtEveryScaleAndGrowsAsItShould) {
  Random random(4107);
  int answers = 0;
  for (int i = 0; i < 3000; ++i) {
    Cable cable = cable_with(i % 3 == 0 ? "twist" : i % 3 == 1 ? "coil" : "loop");
    for (Quantity* length :
         {&cable.free_length_m, &cable.bend_radius_m, &cable.hub_radius_m, &cable.wall_radius_m,
          &cable.thickness_m, &cable.anchor_radius_m, &cable.moving_radius_m})
      length->si = *length->si * random.log_uniform(1e-3, 1e3);
    const auto travel = cable_travel_rad(cable);
    ASSERT_NE(travel.has_value(), *why_no_cable_travel(cable) != '\0') << i;
    if (!travel) continue;
    ++answers;
    ASSERT_TRUE(std::isfinite(*travel) && *travel >= 0) << i;
    // The same rig in other units of length turns as far (the rating is per length).
    Cable scaled = cable;
    const double scale = random.log_uniform(1e-3, 1e3);
    for (Quantity* length :
         {&scaled.free_length_m, &scaled.bend_radius_m, &scaled.hub_radius_m, &scaled.wall_radius_m,
          &scaled.thickness_m, &scaled.anchor_radius_m, &scaled.moving_radius_m})
      length->si = *length->si * scale;
    scaled.twist_rating_radpm.si = *scaled.twist_rating_radpm.si / scale;
    EXPECT_NEAR(cable_travel_rad(scaled).value_or(NAN), *travel, 1e-6 * (1 + *travel)) << i;
    Cable longer = cable;
    longer.free_length_m.si = *longer.free_length_m.si * 1.01;
    const auto more = cable_travel_rad(longer);
    if (i % 3 == 1 || !more) continue;  // a coil may fill more than half its room
    EXPECT_GE(*more, *travel) << i;
  }
  EXPECT_GT(answers, 1200);
}

}  // namespace
}  // namespace gazewright
