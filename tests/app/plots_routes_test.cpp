#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "app/plots/drawing_routes.h"
#include "core/rig/fields.h"
#include "core/units/angle.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using Eigen::Vector3d;
const QRectF kPage(0, 0, 400, 500);

Projection posed(const Rig& rig, double pan_rad, double tilt_rad) {
  return drawing_projection(kPage, rig, View::side, pan_rad, tilt_rad);
}
double length_m(const Strand& strand) {
  double sum = 0;
  for (std::size_t i = 1; i < strand.size(); ++i) sum += (strand[i] - strand[i - 1]).norm();
  return sum;
}
Vector3d middle_m(const StopBlock& block) {
  Vector3d sum = Vector3d::Zero();
  for (const Vector3d& corner : block.corners_m) sum += corner;
  return sum / double(block.corners_m.size());
}

TEST(DrawnStops, TabAndPostTouchWhereTheTravelEnds) {
  // travel.stops = 2π − 2·asin(tab/2r) − 2·asin(post/2r), design section 6: at half of it the tab's
  // flank lies on the post's.
  const Rig full = with_defaults(tests::owl());
  for (const Axis axis : kAxes) {
    const Travel travel = travel_of(full.axis(axis));
    const double end_rad = travel.centre_rad + *travel.stops_rad / 2;
    const Projection p = axis == Axis::pan ? posed(full, end_rad, 0) : posed(full, 0, end_rad);
    const auto blocks = stop_blocks(full, p, axis);
    ASSERT_EQ(blocks.size(), 2U);
    double nearest_m = 1;
    for (const Vector3d& a : blocks[0].corners_m) {
      for (const Vector3d& b : blocks[1].corners_m) nearest_m = std::min(nearest_m, (a - b).norm());
    }
    EXPECT_LT(nearest_m, tol(1e-9)) << name_of(axis);
  }
}

TEST(DrawnStops, TheTabTurnsAndThePostStays) {
  const Rig full = with_defaults(tests::owl());
  const auto rest = stop_blocks(full, posed(full, 0, 0), Axis::pan);
  const auto turned = stop_blocks(full, posed(full, 1, 0), Axis::pan);
  ASSERT_TRUE(rest[0].turns);
  EXPECT_NEAR((middle_m(rest[1]) - middle_m(turned[1])).norm(), 0, tol(1e-12));
  const double chord = 2 * std::hypot(middle_m(rest[0]).x(), middle_m(rest[0]).y()) * std::sin(0.5);
  EXPECT_NEAR((middle_m(rest[0]) - middle_m(turned[0])).norm(), chord, tol(1e-12));
}

TEST(DrawnCables, AreAsLongAsTheRigSays) {
  Rig rig = tests::owl();
  // Strands along the axis, untwisted: the free length itself.
  for (const Strand& strand : cable_strands(with_defaults(rig), posed(rig, 0, 0), Axis::pan)) {
    EXPECT_NEAR(length_m(strand), 0.260, tol(1e-9));
  }
  rig.pan.cable.routing.value = "loop";
  rig.pan.cable.anchor_radius_m = si_quantity(0.06);
  rig.pan.cable.moving_radius_m = si_quantity(0.01);
  for (const double pan : {-1.0, 0.0, 2.0}) {
    const auto bends = cable_strands(with_defaults(rig), posed(rig, pan, 0), Axis::pan);
    ASSERT_EQ(bends.size(), 1U);
    EXPECT_NEAR(length_m(bends[0]), 0.260, tol(1e-9)) << pan;
  }
}

TEST(DrawnCables, ACoilRunsFromWallToHubAndItsInnerEndTurnsWithTheAxis) {
  Rig rig = tests::owl();
  rig.pan.cable.routing.value = "coil";
  rig.pan.cable.hub_radius_m = si_quantity(0.018);
  rig.pan.cable.wall_radius_m = si_quantity(0.030);
  const Rig full = with_defaults(rig);
  const Strand rest = cable_strands(full, posed(rig, 0, 0), Axis::pan)[0];
  const Strand turned = cable_strands(full, posed(rig, 0.7, 0), Axis::pan)[0];
  EXPECT_NEAR(rest.front().norm(), 0.030, tol(1e-12));
  EXPECT_NEAR(rest.back().norm(), 0.018, tol(1e-12));
  EXPECT_NEAR((rest.front() - turned.front()).norm(), 0, tol(1e-12));
  EXPECT_NEAR((rest.back() - turned.back()).norm(), 2 * 0.018 * std::sin(0.35), tol(1e-12));
}

TEST(DrawnCables, ThereIsNoneWhereTheAxisHasNone) {
  Rig rig = tests::owl();
  rig.pan.cable.presence = Presence::none;
  EXPECT_TRUE(cable_strands(with_defaults(rig), posed(rig, 0, 0), Axis::pan).empty());
  EXPECT_TRUE(cable_between(with_defaults(rig), posed(rig, 0, 0)).empty());
  EXPECT_TRUE(stop_blocks(Rig{}, posed(Rig{}, 0, 0), Axis::tilt).empty());
}

}  // namespace
}  // namespace gazewright
