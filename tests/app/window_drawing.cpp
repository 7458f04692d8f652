#include <gtest/gtest.h>

#include <QAccessible>
#include <QMouseEvent>
#include <QToolButton>
#include <cmath>
#include <random>

#include "app/plots/dial_view.h"
#include "app/plots/outline.h"
#include "app/window/drawing_panel.h"
#include "core/analysis/counterweight.h"
#include "core/units/angle.h"
#include "tests/app/window_support.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// The owl with an arm that is off the pan axis, a tube and a counterweight, its drawing shown.
struct DrawnOwl : OwlWindow {
  DrawnOwl() {
    Rig full = rig();
    full.tilt_axis_at_m = {si_quantity(0.010), si_quantity(-0.004), si_quantity(0.165)};
    Body motor;
    motor.name = "tilt motor";
    motor.mass_kg = si_quantity(0.14);
    motor.centre_m = {si_quantity(0), si_quantity(0.095), si_quantity(0.165)};
    motor.shape = Tube{Choice{"y"}, si_quantity(0.042), si_quantity(0.008), si_quantity(0.026)};
    full.on_pan.push_back(motor);
    Body weight;
    weight.name = "counterweight";
    weight.mass_kg = si_quantity(0.03);
    weight.centre_m = {si_quantity(-0.045), si_quantity(0), si_quantity(0.02)};
    weight.shape = Ball{si_quantity(0.019)};
    full.on_tilt.push_back(weight);
    window.resize(1700, 1000);
    window.document().startWith(full, false);
    EXPECT_TRUE(analysed());
  }
  DrawingCanvas& canvas() { return *window.drawing().canvas(); }
  QUndoStack& history() { return window.document().history(); }
  double value(const std::string& path) { return find_quantity(rig(), path)->si.value(); }
  DrawnView drawn(View view) {
    for (const DrawnView& each : canvas().drawnViews()) {
      if (each.view() == view) return each;
    }
    ADD_FAILURE() << "that view is not drawn";
    return canvas().drawnViews().front();
  }
  DrawingHandle handle(HandleKind kind, const BodyRef& body = {}) {
    for (const DrawingHandle& each : canvas().handles()) {
      const bool same = each.kind == kind && (!each.has_body() || each.body == body);
      if (same && each.view == canvas().view) return each;
    }
    ADD_FAILURE() << "no such handle";
    return {};
  }
  void send(QEvent::Type type, QPointF at, Qt::KeyboardModifiers with = {}) {
    const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
    QMouseEvent event(type, at, canvas().mapToGlobal(at), button, Qt::LeftButton, with);
    QCoreApplication::sendEvent(&canvas(), &event);
  }
  /// In small moves, without letting go.
  void pull(QPointF from, QPointF by, Qt::KeyboardModifiers with = {}) {
    send(QEvent::MouseButtonPress, from, with);
    for (int i = 1; i <= 8; ++i) send(QEvent::MouseMove, from + by * i / 8, with);
  }
  void release() { send(QEvent::MouseButtonRelease, {}); }
  void key(int key, Qt::KeyboardModifiers with = {}) {
    QTest::keyClick(&canvas(), Qt::Key(key), with);
  }
};

struct Case {
  View view;
  HandleKind kind;
  BodyRef body;
  Eigen::Vector3d by_m;  ///< in the carrier's frame at rest; of a diameter the first is its growth
  std::vector<const char*> fields;
};
const BodyRef kBall{true, 0}, kCamera{true, 1}, kWeight{true, 2}, kMotor{false, 1};
const Case kCases[]{
    {View::side,
     HandleKind::body,
     kCamera,
     {0.012, 0, -0.007},
     {"on_tilt[1].centre[0]", "on_tilt[1].centre[2]"}},
    {View::front,
     HandleKind::body,
     kMotor,
     {0, -0.021, 0.009},
     {"on_pan[1].centre[1]", "on_pan[1].centre[2]"}},
    {View::top,
     HandleKind::body,
     kWeight,
     {0.008, 0.011, 0},
     {"on_tilt[2].centre[0]", "on_tilt[2].centre[1]"}},
    {View::side, HandleKind::axis_up, {}, {0, 0, 0.025}, {"tilt.axis_at[2]"}},
    {View::side, HandleKind::axis_across, {}, {-0.018, 0, 0}, {"tilt.axis_at[0]"}},
    {View::front, HandleKind::axis_across, {}, {0, 0.013, 0}, {"tilt.axis_at[1]"}},
    {View::top, HandleKind::axis_up, {}, {0, 0.016, 0}, {"tilt.axis_at[1]"}},
};

class EveryHandle : public ::testing::TestWithParam<int> {};

TEST_P(EveryHandle, IsDraggedInOneUndoStepAsTheProjectionSays) {
  const Case& entry = kCases[GetParam()];
  DrawnOwl owl;
  owl.window.drawing().setView(entry.view);
  const Rig before = owl.rig();
  std::vector<double> was;
  for (const char* path : entry.fields) was.push_back(owl.value(path));
  const DrawingHandle handle = owl.handle(entry.kind, entry.body);
  const Projection p = owl.drawn(entry.view).projection;
  // What the move is on the page, from the projection itself.
  const QPointF by = p.page(handle.body, entry.by_m) - p.page(handle.body, Eigen::Vector3d::Zero());
  owl.pull(handle.at, by);
  EXPECT_NE(owl.rig(), before) << "live, before the button is let go";
  EXPECT_TRUE(owl.canvas().isDragging());
  EXPECT_EQ(owl.drawn(entry.view).projection.px_per_m, p.px_per_m) << "the scale is held";
  EXPECT_EQ(owl.drawn(entry.view).projection.origin, p.origin);
  owl.release();
  std::size_t i = 0;
  for (int axis = 0; axis < 3; ++axis) {
    if (entry.by_m[axis] == 0) continue;
    EXPECT_NEAR(owl.value(entry.fields[i]), was[i] + entry.by_m[axis], tol(1e-9))
        << entry.fields[i] << ": whole millimetres from whole millimetres";
    ++i;
  }
  EXPECT_EQ(owl.history().count(), 1);
  owl.history().undo();
  EXPECT_EQ(owl.rig(), before);
}
INSTANTIATE_TEST_SUITE_P(OfTheDrawing, EveryHandle, ::testing::Range(0, int(std::size(kCases))));

TEST(WindowDrawing, DiametersOfShellTubeAndBallAreDragged) {
  const struct {
    BodyRef body;
    View view;
    const char* field;
  } cases[]{{kBall, View::side, "on_tilt[0].shape.shell.diameter"},
            {kMotor, View::front, "on_pan[1].shape.tube.diameter"},
            {kWeight, View::front, "on_tilt[2].shape.ball.diameter"}};
  for (const auto& entry : cases) {
    DrawnOwl owl;
    owl.window.drawing().setView(entry.view);
    const Rig before = owl.rig();
    const double was = owl.value(entry.field);
    const DrawingHandle handle = owl.handle(HandleKind::diameter, entry.body);
    const DrawnView drawn = owl.drawn(entry.view);
    const QPointF centre = owl.handle(HandleKind::body, entry.body).at;
    const QPointF out =
        (handle.at - centre) / std::hypot(handle.at.x() - centre.x(), handle.at.y() - centre.y());
    owl.pull(handle.at, out * 0.010 * drawn.projection.px_per_m);  // the radius grows by 10 mm
    owl.release();
    EXPECT_NEAR(owl.value(entry.field), was + 0.020, tol(1e-9)) << entry.field;
    EXPECT_EQ(owl.history().count(), 1);
    owl.pull(owl.handle(HandleKind::diameter, entry.body).at, -out * 2000);
    EXPECT_GT(owl.value(entry.field), 0) << "never through its own centre";
    owl.release();
    owl.history().undo();
    owl.history().undo();
    EXPECT_EQ(owl.rig(), before);
  }
}

TEST(WindowDrawing, ATubeKeepsRoomForItsBoreAndAShellForItsWall) {
  DrawnOwl owl;
  owl.window.drawing().setView(View::front);
  owl.pull(owl.handle(HandleKind::diameter, kMotor).at, {0, 3000});
  owl.release();
  EXPECT_NEAR(owl.value("on_pan[1].shape.tube.diameter"), 0.009, tol(1e-12)) << "bore 8 mm, 1 mm";
  owl.window.drawing().setView(View::side);
  owl.pull(owl.handle(HandleKind::diameter, kBall).at, {3000, 3000});
  owl.release();
  EXPECT_NEAR(owl.value("on_tilt[0].shape.shell.diameter"), 0.0058, tol(1e-12)) << "wall 2.4 mm";
}

TEST(WindowDrawing, TheSideOfADragThatIsTooShortIsAPressThatShowsTheCard) {
  DrawnOwl owl;
  owl.pull(owl.handle(HandleKind::body, kCamera).at, {1, 1});
  owl.release();
  EXPECT_EQ(owl.history().count(), 0);
  EXPECT_EQ(owl.window.selected(), "on_tilt[1]");
}

TEST(WindowDrawing, SnapsToWholeMillimetresUnlessAltIsHeld) {
  DrawnOwl owl;
  const double px_per_mm = owl.drawn(View::side).projection.px_per_m / 1000;
  const DrawingHandle handle = owl.handle(HandleKind::axis_up);
  owl.pull(handle.at, {0, -12.37 * px_per_mm});
  EXPECT_NEAR(owl.value("tilt.axis_at[2]"), 0.177, tol(1e-12));
  owl.send(QEvent::MouseMove, handle.at + QPointF(0, -12.37 * px_per_mm), Qt::AltModifier);
  EXPECT_NEAR(owl.value("tilt.axis_at[2]"), 0.17737, tol(1e-6));
  owl.release();
  EXPECT_EQ(owl.history().count(), 1);
}

TEST(WindowDrawing, EscapeRestoresTheRigInTheMiddleOfADrag) {
  DrawnOwl owl;
  const Rig before = owl.rig();
  owl.canvas().setFocus();
  owl.pull(owl.handle(HandleKind::body, kCamera).at, {60, -30});
  ASSERT_NE(owl.rig(), before);
  owl.key(Qt::Key_Escape);
  EXPECT_EQ(owl.rig(), before);
  owl.send(QEvent::MouseMove, {10, 10});
  owl.release();
  EXPECT_EQ(owl.rig(), before) << "the rest of the move does nothing";
  EXPECT_FALSE(owl.history().canUndo()) << "a drag taken back is no step";
}

TEST(WindowDrawing, TabGoesThroughTheHandlesAndKeysMoveThem) {
  DrawnOwl owl;
  const Rig before = owl.rig();
  owl.canvas().setFocus(Qt::TabFocusReason);
  ASSERT_TRUE(owl.canvas().chosen());
  EXPECT_EQ(owl.canvas().chosen()->kind, HandleKind::axis_up);
  EXPECT_EQ(owl.canvas().accessibleName(), "tilt axis, height");
  owl.key(Qt::Key_Up);
  EXPECT_NEAR(owl.value("tilt.axis_at[2]"), 0.166, tol(1e-12));
  owl.key(Qt::Key_Down, Qt::ShiftModifier);
  EXPECT_NEAR(owl.value("tilt.axis_at[2]"), 0.1659, tol(1e-12));
  owl.key(Qt::Key_PageUp);
  EXPECT_NEAR(owl.value("tilt.axis_at[2]"), 0.1759, tol(1e-12));
  EXPECT_EQ(owl.history().count(), 1) << "one run of keys is one step";
  owl.history().undo();
  EXPECT_EQ(owl.rig(), before);

  owl.key(Qt::Key_Tab);
  EXPECT_EQ(owl.canvas().chosen()->kind, HandleKind::axis_across);
  owl.key(Qt::Key_Left);
  EXPECT_NEAR(owl.value("tilt.axis_at[0]"), 0.009, tol(1e-12));
  owl.key(Qt::Key_Tab);
  ASSERT_EQ(owl.canvas().chosen()->kind, HandleKind::body);
  owl.key(Qt::Key_Right);
  EXPECT_NEAR(owl.value("on_tilt[0].centre[0]"), 0.001, tol(1e-12));
  owl.key(Qt::Key_Tab);
  ASSERT_EQ(owl.canvas().chosen()->kind, HandleKind::diameter);
  owl.key(Qt::Key_Up);
  EXPECT_NEAR(owl.value("on_tilt[0].shape.shell.diameter"), 0.121, tol(1e-12));
  owl.key(Qt::Key_Backtab, Qt::ShiftModifier);
  EXPECT_EQ(owl.canvas().chosen()->kind, HandleKind::body);
  EXPECT_EQ(owl.history().count(), 3);

  owl.key(Qt::Key_Return);
  EXPECT_EQ(owl.window.selected(), "on_tilt[0]");
  ASSERT_NE(owl.field("on_tilt[0].centre[0]"), nullptr);
}

TEST(WindowDrawing, TabLeavesTheDrawingAfterTheLastHandleAndAfterEscape) {
  DrawnOwl owl;
  owl.canvas().setFocus(Qt::TabFocusReason);
  int stops = 0;
  while (owl.canvas().hasFocus() && ++stops < 100) owl.key(Qt::Key_Tab);
  EXPECT_FALSE(owl.canvas().hasFocus());
  EXPECT_EQ(stops, int(drawing_handles(owl.rig(), owl.drawn(View::side)).size()));
  owl.canvas().setFocus(Qt::TabFocusReason);
  owl.key(Qt::Key_Escape);
  EXPECT_TRUE(owl.canvas().hasFocus());
  owl.key(Qt::Key_Tab);
  EXPECT_FALSE(owl.canvas().hasFocus());
}

TEST(WindowDrawing, HandlesAreHitWithin24PixelsAndSayNameAndValue) {
  DrawnOwl owl;
  const DrawingHandle handle = owl.handle(HandleKind::axis_up);
  for (const QPointF off : {QPointF(11, 11), QPointF(-11, 11), QPointF(11, -11), QPointF(0, 0)}) {
    owl.canvas().choose({});
    owl.send(QEvent::MouseButtonPress, handle.at + off);
    ASSERT_TRUE(owl.canvas().chosen());
    EXPECT_TRUE(owl.canvas().chosen()->is_same_as(handle));
    owl.release();
  }
  QAccessibleInterface* reader = QAccessible::queryAccessibleInterface(&owl.canvas());
  ASSERT_NE(reader, nullptr);
  EXPECT_EQ(reader->text(QAccessible::Name), "tilt axis, height");
  EXPECT_TRUE(reader->text(QAccessible::Value).startsWith("165"))
      << reader->text(QAccessible::Value).toStdString();
}

TEST(WindowDrawing, ACounterweightSaysWhatIsLeftAndWhatWouldCancel) {
  DrawnOwl owl;
  // Owl: the camera alone is off the axis, 48 g at (38, 2) mm; the arm off the axis changes
  // nothing.
  const DrawingHandle handle = owl.handle(HandleKind::body, kWeight);
  owl.pull(handle.at, {25, 12});
  owl.release();
  const CounterweightEffect effect = counterweight_effect(owl.rig(), true, 2);
  ASSERT_TRUE(effect.left_Nm && effect.cancelling_kg && effect.then_left_Nm);
  const double x = owl.value("on_tilt[2].centre[0]"), z = owl.value("on_tilt[2].centre[2]");
  // Least squares by hand: m = −(M·c)/(c·c), M = 48 g · (38, 2) mm.
  const double moment_x = 0.048 * 0.038, moment_z = 0.048 * 0.002;
  EXPECT_NEAR(*effect.cancelling_kg, -(moment_x * x + moment_z * z) / (x * x + z * z), tol(1e-12));
  ASSERT_TRUE(owl.settle());
  EXPECT_DOUBLE_EQ(*effect.left_Nm,
                   *owl.window.recompute().analysis()->value("tilt.gravity.torque_max"));
  const QStringList shown = counterweight_lines(owl.rig(), kWeight);
  ASSERT_EQ(shown.size(), 2);
  EXPECT_EQ(owl.canvas().readout().mid(1), shown) << "beside the handle";
  const Rig with = with_value(owl.rig(), "on_tilt[2].mass", *effect.cancelling_kg);
  EXPECT_DOUBLE_EQ(*analyse(with).value("tilt.gravity.torque_max"), *effect.then_left_Nm);
  EXPECT_TRUE(counterweight_lines(owl.rig(), kCamera).isEmpty());
}

TEST(WindowDrawing, ACounterweightIsAddedOppositeToWhatIsOffTheAxis) {
  OwlWindow owl;
  const Rig before = owl.rig();
  owl.window.actions()["edit.counterweight"]->trigger();
  ASSERT_EQ(owl.rig().on_tilt.size(), 3U);
  EXPECT_EQ(owl.window.selected(), "on_tilt[2]");
  const CounterweightEffect effect = counterweight_effect(owl.rig(), true, 2);
  ASSERT_TRUE(effect.cancelling_kg);
  EXPECT_NEAR(*effect.cancelling_kg, *owl.rig().on_tilt[2].mass_kg.si, 1e-4) << "0.1 g";
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
  owl.window.select("pan.load");
  owl.window.actions()["edit.counterweight"]->trigger();
  ASSERT_EQ(owl.rig().on_pan.size(), 2U) << "the axis whose load is selected";
  EXPECT_LT(*owl.rig().on_pan[1].centre_m[1].si, 0) << "the arm is at the left";
}

TEST(WindowDrawing, ARigWithoutMassesGetsACounterweightToStartFrom) {
  Rig blank = blank_rig();
  blank.on_tilt.back().mass_kg = {};
  const Rig with = with_new_counterweight(blank, Axis::tilt);
  ASSERT_EQ(with.on_tilt.size(), 2U);
  EXPECT_TRUE(is_counterweight(with.on_tilt.back()));
  EXPECT_FALSE(counterweight_effect(with, true, 1).left_Nm) << "unknown, not zero";
}

TEST(WindowDrawing, ADragEndsWhereABarResizesTheDrawingUnderTheHand) {
  DrawnOwl owl;
  owl.pull(owl.handle(HandleKind::body, kCamera).at, {40, 0});
  ASSERT_TRUE(owl.window.isDragging());
  const Rig moved = owl.rig();
  owl.canvas().resize(owl.canvas().width(), owl.canvas().height() - 30);
  EXPECT_FALSE(owl.canvas().isDragging());
  EXPECT_FALSE(owl.window.isDragging()) << "else remedies, map and sweeps would wait for ever";
  owl.release();
  EXPECT_EQ(owl.rig(), moved);
  EXPECT_EQ(owl.history().count(), 1);
  EXPECT_TRUE(owl.settle()) << "the full analysis comes";
}

TEST(WindowDrawing, AllThreeViewsShareOneScaleWhereThereIsRoom) {
  DrawnOwl owl;
  DrawingCanvas canvas;
  canvas.rig = owl.rig();
  canvas.resize(400, 500);
  EXPECT_FALSE(canvas.hasRoomForAll());
  EXPECT_EQ(canvas.drawnViews().size(), 1U);
  canvas.resize(900, 600);
  canvas.paintAgain();
  ASSERT_EQ(canvas.drawnViews().size(), 3U);
  const auto views = canvas.drawnViews();
  for (const DrawnView& drawn : views) {
    EXPECT_EQ(drawn.projection.px_per_m, views[0].projection.px_per_m);
    for (const DrawnView& other : views) {
      EXPECT_TRUE(&drawn == &other || !drawn.rect.intersects(other.rect));
    }
  }
  canvas.wants_all = false;
  canvas.paintAgain();
  EXPECT_EQ(canvas.drawnViews().size(), 1U);
}

TEST(WindowDrawing, FollowsThePlotsCursor) {
  DrawnOwl owl;
  ASSERT_TRUE(owl.settle());
  owl.window.setPlotCursor(0.05);
  const Pose pose = pose_at(*owl.window.recompute().analysis(), 0.05);
  EXPECT_EQ(owl.canvas().pose.pan_rad, pose.pan_rad);
  EXPECT_EQ(owl.drawn(View::side).projection.tilt_rad, pose.tilt_rad);
  EXPECT_NE(pose.tilt_rad, 0);
}

TEST(WindowDrawing, PlaysTheMoveOnceWhenAskedAndStopsAtItsEnd) {
  DrawnOwl owl;
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(owl.canvas().pose.pan_rad, 0) << "nothing plays by itself";
  owl.canvas().setFocus();
  const auto& step = owl.window.recompute().analysis()->of(Axis::pan).step;
  owl.key(Qt::Key_Space);
  EXPECT_LT(owl.canvas().pose.pan_rad, 0) << "from the start of the move";
  const auto button = [&] { return owl.window.drawing().playButton()->accessibleName(); };
  EXPECT_EQ(button(), "Stop the move");
  ASSERT_TRUE(QTest::qWaitFor([&] { return button() == "Play the move"; }, 20'000));
  const double end_rad =
      step.angle_rad.back() - owl.window.recompute().analysis()->of(Axis::pan).move_rad / 2;
  EXPECT_DOUBLE_EQ(owl.canvas().pose.pan_rad, end_rad);
  owl.key(Qt::Key_Space);
  owl.key(Qt::Key_Space);
  EXPECT_EQ(button(), "Play the move") << "the second press stops it";
}

TEST(WindowDrawing, RandomDragsEndInFiniteAnalysesAndUndoBringsTheRigBack) {
  std::mt19937 random(20261126);
  const auto between = [&](double a, double b) {
    return std::uniform_real_distribution<double>(a, b)(random);
  };
  DrawnOwl owl;
  const Rig before = owl.rig();
  for (int i = 0; i < 60; ++i) {
    owl.window.drawing().setView(
        std::array{View::side, View::front, View::top}[std::size_t(i % 3)]);
    if (i % 5 == 0) owl.window.setPlotCursor(between(0, 0.4));
    const auto handles = owl.canvas().handles();
    ASSERT_FALSE(handles.empty());
    const DrawingHandle handle = handles[std::size_t(random()) % handles.size()];
    const double far = std::pow(10, between(0.5, 3.5));
    owl.pull(handle.at, {between(-far, far), between(-far, far)},
             i % 2 ? Qt::AltModifier : Qt::NoModifier);
    owl.release();
    const Analysis analysis = analyse(owl.rig(), {.remedies = false, .quick = true});
    for (const Figure& figure : analysis.figures)
      EXPECT_TRUE(!figure.value || std::isfinite(*figure.value)) << figure.id << " after " << i;
    EXPECT_TRUE(parse_rig(write_rig(owl.rig()), "dragged").rig)
        << "a file that can be read, after " << i;
  }
  while (owl.history().canUndo()) owl.history().undo();
  EXPECT_EQ(owl.rig(), before);
}

}  // namespace
}  // namespace gazewright
