#include "core/travel/marks.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <random>

#include "core/rig/fields.h"
#include "core/units/angle.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

// Fields are set to 0.01 mm and 0.01°. Half a step of a post at 26 mm, up to 40 mm wide, turns a
// stop by 0.005/(26·√(1−(40/52)²))/2 = 1.5e-4 rad, half a step of the centre by 0.9e-4 rad; half a
// step of 0.01 mm of cable at 15 rad/m by 0.75e-4 rad. The sum is below 4e-4.
constexpr double kStep_rad = 4e-4;

/// A rig of one axis, moved about at random, so that its parts may be edited by path.
struct Axle {
  Rig rig;
  AxisParts& parts() { return rig.pan; }
  AxisParts full() const { return with_defaults(rig).pan; }
  std::vector<TravelMark> marks() const { return travel_marks(full(), travel_of(full())); }
  double angle_of(MarkKind mark, int side) const {
    for (const TravelMark& entry : marks()) {
      if (entry.kind == mark && entry.side == side) return entry.angle_rad;
    }
    return std::nan("");
  }
  void move(const TravelMark& mark, double angle_rad, bool one_side = false) {
    for (const MarkField& field : fields_for_mark(full(), mark, angle_rad, one_side)) {
      Quantity* at = find_quantity(rig, "pan." + field.key);
      ASSERT_NE(at, nullptr) << field.key;
      EXPECT_EQ(range_problem(*find_info("pan." + field.key), field.si), "") << field.key;
      *at = si_quantity(field.si);
    }
  }
};

Axle owl_axle() {
  Axle axle{tests::owl()};
  axle.parts().stops.bumper_travel_rad = si_quantity(3 * kDegree_rad);
  axle.parts().homing.home_rad = si_quantity(0.2);
  axle.parts().homing.park_rad = si_quantity(-0.4);
  return axle;
}

Axle random_axle(std::mt19937& random) {
  const auto between = [&](double a, double b) {
    return std::uniform_real_distribution(a, b)(random);
  };
  Axle axle = owl_axle();
  Stops& stops = axle.parts().stops;
  stops.post_width_m = si_quantity(between(0.008, 0.04));
  stops.tab_width_m = si_quantity(between(0.004, 0.03));
  stops.kind.value = std::array{"tab", "trailing", "window"}[random() % 3];
  stops.trailers = si_quantity(double(1 + random() % 2));
  stops.trailer_width_m = si_quantity(between(0.004, 0.02));
  stops.window_rad = si_quantity(between(3, 6));
  stops.centre_rad = si_quantity(between(-2, 2));
  stops.soft_inset_rad = si_quantity(between(0, 0.5));
  stops.bumper_travel_rad = si_quantity(between(0.01, 0.2));
  axle.parts().cable.free_length_m = si_quantity(between(0.05, 0.6));
  axle.parts().homing.home_rad = si_quantity(between(-1, 1));
  axle.parts().homing.park_rad = si_quantity(between(-1, 1));
  return axle;
}

/// A ribbon coil between 18 and 30 mm of which the given length is in it.
Axle coiled(double length_m) {
  Axle axle = owl_axle();
  Cable& cable = axle.parts().cable;
  cable.routing.value = "coil";
  cable.hub_radius_m = si_quantity(0.018);
  cable.wall_radius_m = si_quantity(0.030);
  cable.thickness_m = si_quantity(0.0012);
  cable.free_length_m = si_quantity(length_m);
  return axle;
}
Axle hanging(double length_m, double anchor_m = 0.060, double moving_m = 0.010) {
  Axle axle = owl_axle();
  Cable& cable = axle.parts().cable;
  cable.routing.value = "loop";
  cable.bend_radius_m = si_quantity(0.021);
  cable.anchor_radius_m = si_quantity(anchor_m);
  cable.moving_radius_m = si_quantity(moving_m);
  cable.free_length_m = si_quantity(length_m);
  return axle;
}

TEST(TravelMarks, ShowEveryLimitOnceASideAndTheSinglePlacesOnce) {
  const auto marks = owl_axle().marks();
  EXPECT_EQ(marks.size(), 4u * 2 + 3);
  const Axle owl = owl_axle();
  EXPECT_LT(owl.angle_of(MarkKind::soft_limit, 1), owl.angle_of(MarkKind::hard_stop, 1));
  EXPECT_NEAR(owl.angle_of(MarkKind::bumper, 1) - owl.angle_of(MarkKind::hard_stop, 1),
              3 * kDegree_rad, tol(1e-12));
  EXPECT_DOUBLE_EQ(owl.angle_of(MarkKind::cable, -1), -900 * kDegree_rad * 0.26);
}

TEST(TravelMarks, LeaveOutWhatIsAbsentMissingOrEndless) {
  Axle axle = owl_axle();
  axle.parts().stops.presence = Presence::none;
  axle.parts().cable.presence = Presence::none;
  EXPECT_EQ(axle.marks().size(), 2u) << "home and park";
  axle.parts().stops = {};
  axle.parts().cable = {};
  EXPECT_EQ(axle.marks().size(), 2u);
  EXPECT_TRUE(std::isnan(axle.angle_of(MarkKind::bumper, 1)));
}

TEST(TravelMarks, MovingAMarkPutsItWhereItIsWanted) {
  std::mt19937 random(41);
  for (int i = 0; i < 40; ++i) {
    Axle axle = random_axle(random);
    for (const TravelMark& mark : axle.marks()) {
      Axle moved = axle;
      const double inwards = mark.kind == MarkKind::bumper ? -0.005 : 0.06;
      const double wanted = mark.angle_rad - std::max(mark.side, -1) * inwards;
      moved.move(mark, wanted);
      EXPECT_NEAR(moved.angle_of(mark.kind, mark.side), wanted, tol(kStep_rad))
          << mark.field << " " << mark.side << " in round " << i;
    }
  }
}

TEST(TravelMarks, AHardStopMovesAloneWhenAskedTo) {
  Axle axle = owl_axle();
  const double other = axle.angle_of(MarkKind::hard_stop, -1);
  const TravelMark mark{MarkKind::hard_stop, 1, axle.angle_of(MarkKind::hard_stop, 1),
                        "stops.post_width"};
  axle.move(mark, mark.angle_rad - 0.3, true);
  EXPECT_NEAR(axle.angle_of(MarkKind::hard_stop, 1), mark.angle_rad - 0.3, tol(kStep_rad));
  EXPECT_NEAR(axle.angle_of(MarkKind::hard_stop, -1), other, tol(kStep_rad));
}

void expect_in_range(const Axle& axle) {
  for (const TravelMark& mark : axle.marks()) {
    for (const double wanted : {-500.0, -7.0, 0.0, 7.0, 500.0}) {
      for (const bool one_side : {false, true}) {
        Axle moved = axle;
        moved.move(mark, wanted, one_side);  // checks the range
        EXPECT_EQ(moved.marks().size(), axle.marks().size()) << mark.field << " at " << wanted;
      }
    }
    EXPECT_TRUE(fields_for_mark(axle.full(), mark, std::nan(""), false).empty());
  }
}

TEST(TravelMarks, WantedTooFarStaysWithinTheFieldsRanges) {
  std::mt19937 random(3);
  for (int i = 0; i < 12; ++i) {
    const Axle axle = random_axle(random);
    expect_in_range(axle);
  }
  for (const Axle& axle : {coiled(0.4), coiled(1.1), hanging(0.088), hanging(0.5)}) {
    expect_in_range(axle);
  }
}

TEST(TravelMarks, MirrorWithTheRig) {
  std::mt19937 random(7);
  for (int i = 0; i < 20; ++i) {
    Axle axle = random_axle(random), mirrored = axle;
    for (Quantity* q : {&mirrored.parts().stops.centre_rad, &mirrored.parts().homing.home_rad,
                        &mirrored.parts().homing.park_rad}) {
      q->si = -*q->si;
    }
    for (const TravelMark& mark : axle.marks()) {
      EXPECT_NEAR(mirrored.angle_of(mark.kind, -mark.side), -mark.angle_rad, tol(1e-12))
          << mark.field;
    }
  }
}

double length_of(Axle& axle) { return *axle.parts().cable.free_length_m.si; }
void move_cable(Axle& axle, int side, double to_rad) {
  axle.move({MarkKind::cable, side, axle.angle_of(MarkKind::cable, side), "cable.free_length"},
            to_rad);
}

TEST(TravelMarks, ACoilsMarkIsDraggedOnItsSideOfHalfFull) {
  // Half of the room, π(30² − 18²)/2/1.2 mm = 753.98 mm, gives the most travel: with R² = 612 mm²
  // at half, 2π/1.2·(24.73863 − 18 − 30 + 24.73863) = 7.7350 rad end to end, by hand.
  const double half_m = M_PI * (0.030 * 0.030 - 0.018 * 0.018) / 2 / 0.0012;
  for (const double length_m : {0.4, 1.1}) {
    Axle axle = coiled(length_m);
    const double most = axle.angle_of(MarkKind::cable, 1);
    ASSERT_TRUE(std::ranges::all_of(axle.marks(), &TravelMark::moves));
    move_cable(axle, 1, 0.8 * most);
    // 1/(2·20.5 mm) − 1/(2·28.4 mm): the mark turns by 7 rad/m there, 3.5e-5 rad for half a step.
    EXPECT_NEAR(axle.angle_of(MarkKind::cable, 1), 0.8 * most, tol(4e-5)) << length_m;
    EXPECT_EQ(length_of(axle) < half_m, length_m < half_m) << "stays on its side";
    EXPECT_EQ(length_of(axle) < length_m, length_m < half_m) << "less cable below half, else more";
    move_cable(axle, -1, -50);
    EXPECT_NEAR(length_of(axle), half_m, tol(1.01e-5)) << "the most there is";
    EXPECT_NEAR(axle.angle_of(MarkKind::cable, 1), 7.7350 / 2, tol(1e-4));
  }
}

TEST(TravelMarks, AHangingLoopsMarkIsDraggedUpToHalfATurn) {
  Axle axle = hanging(0.088);
  move_cable(axle, 1, 0.9);
  // dφ/dL = D/(aρ·sin φ) is 116 rad/m there and less further on: half a step is 6e-4 rad.
  EXPECT_NEAR(axle.angle_of(MarkKind::cable, 1), 0.9, tol(7e-4));
  move_cable(axle, 1, 50);
  EXPECT_DOUBLE_EQ(axle.angle_of(MarkKind::cable, 1), kPi);
  EXPECT_NEAR(length_of(axle), 0.070 + (kPi - 2) * 0.021, tol(1.01e-5));
  axle = hanging(0.5);  // far longer than it needs to be
  EXPECT_DOUBLE_EQ(axle.angle_of(MarkKind::cable, 1), kPi);
  move_cable(axle, -1, -1.2);
  EXPECT_NEAR(axle.angle_of(MarkKind::cable, -1), -1.2, tol(7e-4));
  move_cable(axle, -1, 0);
  EXPECT_LT(axle.angle_of(MarkKind::cable, 1), 0.1) << "as short as it may be, and still there";
}

TEST(TravelMarks, AMarkThatNoLengthMovesHasNoHandle) {
  Axle axle = hanging(0.088, 0.020, 0.020);  // half a turn at its bend radius reaches across
  const auto marks = axle.marks();
  const auto cable = std::ranges::find(marks, MarkKind::cable, &TravelMark::kind);
  ASSERT_NE(cable, marks.end());
  EXPECT_FALSE(cable->moves);
  EXPECT_TRUE(fields_for_mark(axle.full(), *cable, 1.0, false).empty());
  axle.parts().cable.routing.value = "slip_ring";
  EXPECT_TRUE(std::isnan(axle.angle_of(MarkKind::cable, 1)));
  EXPECT_FALSE(lengths_that_move(axle.full().cable));
}

}  // namespace
}  // namespace gazewright
