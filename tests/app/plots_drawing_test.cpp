#include <gtest/gtest.h>

#include <QImage>

#include "app/plots/drawing.h"
#include "app/plots/outline.h"
#include "app/plots/travel_dial.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

const QRectF kPage(0, 0, 400, 500);

TEST(Drawing, IsToScaleAndDoesNotMoveWithTheAngles) {
  const Rig rig = tests::owl();
  const Projection rest = drawing_projection(kPage, rig, View::side, 0, 0);
  const Projection turned = drawing_projection(kPage, rig, View::side, 1, 0.5);
  EXPECT_DOUBLE_EQ(rest.px_per_m, turned.px_per_m);
  EXPECT_EQ(rest.origin, turned.origin);
  const QRectF ball = page_outline(rest, {true, 0}, rig.on_tilt[0]).boundingRect();
  EXPECT_NEAR(ball.width(), 0.12 * rest.px_per_m, 0.01 * ball.width());
  EXPECT_NEAR(ball.height(), 0.12 * rest.px_per_m, 0.01 * ball.height());
}

TEST(Drawing, LooksUpWithPositiveTiltAndLeftWithPositivePan) {
  // Design section 3: tilt turns about −y, so that positive looks up; pan about +z, y is left.
  const Rig rig = tests::owl();
  const BodyRef camera{true, 1};
  const Eigen::Vector3d ahead(0.1, 0, 0);
  const Projection side = drawing_projection(kPage, rig, View::side, 0, 0.5);
  const Projection level = drawing_projection(kPage, rig, View::side, 0, 0);
  EXPECT_LT(side.page(camera, ahead).y(), level.page(camera, ahead).y());
  const Projection top = drawing_projection(kPage, rig, View::top, 0.5, 0);
  EXPECT_LT(top.page(camera, ahead).y(), top.origin.y());
}

TEST(Drawing, FindsTheSmallestBodyUnderAPoint) {
  const Rig rig = tests::owl();
  const Projection p = drawing_projection(kPage, rig, View::side, 0, 0);
  const BodyRef camera{true, 1}, ball{true, 0};
  EXPECT_EQ(body_at(p.page(camera, {0.038, 0, 0.002}), kPage, rig, View::side, 0, 0), camera);
  EXPECT_EQ(body_at(p.page(ball, {-0.05, 0, 0.01}), kPage, rig, View::side, 0, 0), ball);
  EXPECT_FALSE(body_at({1, 1}, kPage, rig, View::side, 0, 0));
  EXPECT_EQ(camera.path(), "on_tilt[1]");
}

TEST(Drawing, TurnsAMoveOnThePageIntoTheCarriersFrame) {
  const Rig rig = tests::owl();
  const Projection p = drawing_projection(kPage, rig, View::side, 0, 0.4);
  const BodyRef camera{true, 1};
  const Eigen::Vector3d move(0.01, 0, -0.02);
  const QPointF on_page = p.page(camera, move) - p.page(camera, Eigen::Vector3d::Zero());
  EXPECT_TRUE(p.carrier_move_m(camera, on_page).isApprox(move, 1e-9));
}

TEST(Drawing, SurvivesARigWithoutAnything) {
  QImage image(200, 200, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  for (const View view : {View::side, View::front, View::top}) {
    paint_drawing(painter, {0, 0, 200, 200}, Rig{}, view, 0, 0, theme_for(ThemeKind::light));
  }
  painter.end();
  QImage blank(200, 200, QImage::Format_RGB32);
  blank.fill(Qt::white);
  EXPECT_NE(image, blank) << "it says in words that there is nothing to draw";
}

TEST(ConvexHull, LeavesOutPointsInside) {
  EXPECT_EQ(convex_hull({{0, 0}, {2, 0}, {1, 1}, {2, 2}, {0, 2}}).size(), 4);
}

TEST(TravelSummary, SaysLimitsAndTheBlindSector) {
  Travel travel;
  travel.stops_rad = 5.0;
  travel.soft_rad = 4.8;
  travel.cable_rad = kInfinity;
  travel.usable_rad = 4.8;
  const QString text = travel_summary(travel);
  EXPECT_TRUE(text.contains("no cable")) << text.toStdString();
  EXPECT_TRUE(text.contains("blind 85°")) << text.toStdString();  // 2π − 4.8 = 1.4832 rad
  EXPECT_TRUE(travel_summary({}).contains("unknown"));
}

}  // namespace
}  // namespace gazewright
