#include <gtest/gtest.h>

#include <QComboBox>
#include <QMouseEvent>
#include <QPainter>
#include <QToolButton>

#include "app/plots/dial_view.h"
#include "app/plots/travel_dial.h"
#include "app/plots/travel_plot.h"
#include "app/window/drawing_panel.h"
#include "app/window/drive_line.h"
#include "app/window/plots_panel.h"
#include "app/window/tile.h"
#include "core/units/angle.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// The owl with a bumper, a home and a park place of its own, so that every mark is there.
struct DialOwl : OwlWindow {
  DialOwl() {
    Rig full = rig();
    for (Axis axis : kAxes) {
      full.axis(axis).stops.bumper_travel_rad = si_quantity(8 * kDegree_rad);
      full.axis(axis).homing.home_rad = si_quantity(20 * kDegree_rad);
      full.axis(axis).homing.park_rad = si_quantity(-40 * kDegree_rad);
    }
    window.plots().setKinds({PlotKind::travel, PlotKind::step});
    window.document().startWith(full, false);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    EXPECT_TRUE(analysed()) << "the dials of the plot are laid out then";
  }
  TravelDial& drawn(Axis axis) { return *window.drawing().canvas()->dial(axis); }
  TravelDial& plotted(Axis axis) {
    return *static_cast<TravelPlot*>(window.plots().plot(PlotKind::travel))->dial(axis);
  }
  QUndoStack& history() { return window.document().history(); }
};

double angle_of(const TravelDial& dial, MarkKind mark, int side) {
  const TravelMark* at = dial.picture().mark({mark, side, 0, {}});
  return at ? at->angle_rad : std::nan("");
}

void send(TravelDial& dial, QEvent::Type type, QPointF at, Qt::KeyboardModifiers with = {}) {
  const auto button = type == QEvent::MouseMove ? Qt::NoButton : Qt::LeftButton;
  QMouseEvent event(type, at, dial.mapToGlobal(at), button, Qt::LeftButton, with);
  QCoreApplication::sendEvent(&dial, &event);
}

/// Takes a mark by its grip and turns it in small moves, without letting go.
void pull(TravelDial& dial, MarkKind mark, int side, double by_rad,
          Qt::KeyboardModifiers with = {}) {
  const DialLayout layout = dial.dialLayout();
  const TravelMark from = *dial.picture().mark({mark, side, 0, {}});
  const double r = layout.grip_radius(from);
  send(dial, QEvent::MouseButtonPress, layout.grip(from), with);
  for (int i = 1; i <= 8; ++i) {
    send(dial, QEvent::MouseMove, layout.at(from.angle_rad + by_rad * i / 8, r), with);
  }
}
void release(TravelDial& dial) { send(dial, QEvent::MouseButtonRelease, {}); }

struct Case {
  MarkKind mark;
  int side;
  double by_deg;
  const char* field;
};
// All but a bumper, which changes by less, are turned far enough to see and not past a range.
constexpr Case kCases[]{
    {MarkKind::hard_stop, 1, -20, "stops.post_width"},
    {MarkKind::hard_stop, -1, 20, "stops.post_width"},
    {MarkKind::bumper, 1, -4, "stops.bumper_travel"},
    {MarkKind::soft_limit, -1, 15, "stops.soft_inset"},
    {MarkKind::cable, 1, -30, "cable.free_length"},
    {MarkKind::centre, 0, 25, "stops.centre"},
    {MarkKind::home, 0, -35, "homing.home"},
    {MarkKind::park, 0, -30, "homing.park"},
};

class EveryMark : public ::testing::TestWithParam<std::tuple<int, bool>> {};

TEST_P(EveryMark, IsDraggedInOneUndoStepWithTheFieldAndTheAnalysis) {
  const auto [index, in_plot] = GetParam();
  const Case& entry = kCases[index];
  const Axis axis = (index % 2 == 0) == in_plot ? Axis::pan : Axis::tilt;
  DialOwl owl;
  ASSERT_TRUE(owl.settle());
  TravelDial& dial = in_plot ? owl.plotted(axis) : owl.drawn(axis);
  const Rig before = owl.rig();
  const std::string path = std::string(name_of(axis)) + "." + entry.field;
  const double was = *find_quantity(before, path)->si;
  const double from = angle_of(dial, entry.mark, entry.side);
  ASSERT_TRUE(std::isfinite(from));

  pull(dial, entry.mark, entry.side, entry.by_deg * kDegree_rad);
  EXPECT_NE(*find_quantity(owl.rig(), path)->si, was) << "live, before the button is let go";
  release(dial);
  // Whole half degrees are asked for; the field's step of 0.01 mm adds less than 0.03°.
  EXPECT_NEAR(angle_of(dial, entry.mark, entry.side), from + entry.by_deg * kDegree_rad,
              0.3 * kDegree_rad)
      << path;
  EXPECT_EQ(owl.history().count(), 1) << path;
  ASSERT_TRUE(owl.settle());
  const Travel travel = owl.window.recompute().analysis()->of(axis).travel;
  EXPECT_EQ(travel.stops_rad, dial.picture().travel.stops_rad);
  EXPECT_EQ(travel.usable_rad, dial.picture().travel.usable_rad);
  owl.history().undo();
  EXPECT_EQ(owl.rig(), before) << path;
  EXPECT_DOUBLE_EQ(angle_of(dial, entry.mark, entry.side), from);
}
INSTANTIATE_TEST_SUITE_P(OfTheDial, EveryMark,
                         ::testing::Combine(::testing::Range(0, int(std::size(kCases))),
                                            ::testing::Bool()));

/// The owl whose pan cable is a coil or a hanging loop.
Rig with_routing(Rig rig, const char* routing) {
  Cable& cable = rig.pan.cable;
  cable = {};
  cable.presence = Presence::given;
  cable.outer_diameter_m = si_quantity(0.004);
  cable.routing.value = routing;
  cable.hub_radius_m = si_quantity(0.018);
  cable.wall_radius_m = si_quantity(0.030);
  cable.thickness_m = si_quantity(0.0012);
  cable.bend_radius_m = si_quantity(0.021);
  cable.anchor_radius_m = si_quantity(0.060);
  cable.moving_radius_m = si_quantity(0.010);
  cable.free_length_m = si_quantity(std::string(routing) == "coil" ? 0.4 : 0.088);
  return rig;
}

TEST(TravelDial, TheCableOfACoilAndOfALoopIsDraggedTypedAndMovedByKeys) {
  for (const char* routing : {"coil", "loop"}) {
    DialOwl owl;
    owl.window.document().startWith(with_routing(owl.rig(), routing), false);
    TravelDial& dial = owl.drawn(Axis::pan);
    const double from = angle_of(dial, MarkKind::cable, 1);
    ASSERT_TRUE(std::isfinite(from)) << routing;
    const double length_m = *owl.rig().pan.cable.free_length_m.si;
    pull(dial, MarkKind::cable, 1, -20 * kDegree_rad);
    EXPECT_LT(*owl.rig().pan.cable.free_length_m.si, length_m) << routing << ", live";
    release(dial);
    EXPECT_NEAR(angle_of(dial, MarkKind::cable, 1), from - 20 * kDegree_rad, 0.3 * kDegree_rad)
        << routing;
    EXPECT_EQ(owl.history().count(), 1);
    const TravelMark mark = *dial.picture().mark({MarkKind::cable, 1, 0, {}});
    EXPECT_TRUE(dial.tip(mark).contains("to change the free length"))
        << dial.tip(mark).toStdString();

    dial.setFocus(Qt::TabFocusReason);
    const auto chosen = [&] { return dial.accessibleDescription().section('.', 0, 0); };
    for (int i = 0; i < 20 && !chosen().startsWith("cable limit -"); ++i) {
      QTest::keyClick(&dial, Qt::Key_PageDown);
      if (chosen().startsWith(QString::fromUtf8("cable limit −"))) break;
    }
    const double least = angle_of(dial, MarkKind::cable, -1);
    QTest::keyClick(&dial, Qt::Key_Right);  // clockwise: further out on this side
    EXPECT_NEAR(angle_of(dial, MarkKind::cable, -1), least - kDegree_rad, 0.1 * kDegree_rad)
        << routing << ": " << chosen().toStdString();

    QTest::keyClick(&dial, Qt::Key_Return);
    EXPECT_EQ(owl.window.selected(), "pan.cable") << routing;
    ASSERT_NE(owl.field("pan.cable.free_length"), nullptr);
    EXPECT_TRUE(owl.field("pan.cable.free_length")->edit()->hasFocus()) << routing;
    owl.type("pan.cable.free_length", "85 mm");
    const Cable cable = with_defaults(owl.rig()).pan.cable;
    EXPECT_DOUBLE_EQ(angle_of(dial, MarkKind::cable, 1), *cable_travel_rad(cable) / 2) << routing;
  }
}

TEST(TravelDial, ASlipRingHasNoHandle) {
  DialOwl owl;
  owl.window.document().startWith(with_choice(owl.rig(), "pan.cable.routing", "slip_ring"), false);
  EXPECT_EQ(owl.drawn(Axis::pan).picture().mark({MarkKind::cable, 1, 0, {}}), nullptr);
}

TEST(TravelDial, ShiftMovesAHardStopAlone) {
  DialOwl owl;
  TravelDial& dial = owl.drawn(Axis::pan);
  const double left = angle_of(dial, MarkKind::hard_stop, 1),
               right = angle_of(dial, MarkKind::hard_stop, -1);
  pull(dial, MarkKind::hard_stop, 1, -30 * kDegree_rad, Qt::ShiftModifier);
  release(dial);
  EXPECT_NEAR(angle_of(dial, MarkKind::hard_stop, 1), left - 30 * kDegree_rad, 0.3 * kDegree_rad);
  EXPECT_NEAR(angle_of(dial, MarkKind::hard_stop, -1), right, 0.05 * kDegree_rad);
  EXPECT_NEAR(*owl.rig().pan.stops.centre_rad.si, -15 * kDegree_rad, 0.2 * kDegree_rad);
  EXPECT_EQ(owl.history().count(), 1);
}

TEST(TravelDial, EscapeTakesADragBackAndLeavesNoStep) {
  DialOwl owl;
  TravelDial& dial = owl.drawn(Axis::tilt);
  const Rig before = owl.rig();
  pull(dial, MarkKind::soft_limit, 1, -20 * kDegree_rad);
  EXPECT_NE(owl.rig(), before);
  QTest::keyClick(&dial, Qt::Key_Escape);
  EXPECT_EQ(owl.rig(), before);
  EXPECT_EQ(owl.history().count(), 0);
  send(dial, QEvent::MouseMove, dial.rect().center());
  release(dial);
  EXPECT_EQ(owl.rig(), before);
  ASSERT_TRUE(owl.sweep()) << "sweeps wait no longer";
}

TEST(TravelDial, KeysMoveTheChosenMarkByOneDegreeOrATenth) {
  DialOwl owl;
  TravelDial& dial = owl.drawn(Axis::pan);
  dial.setFocus(Qt::TabFocusReason);
  const auto chosen = [&] { return dial.accessibleDescription().section('.', 0, 0); };
  for (int i = 0; i < 20 && !chosen().startsWith("home"); ++i) {
    QTest::keyClick(&dial, Qt::Key_PageDown);
  }
  ASSERT_TRUE(chosen().startsWith("home 20")) << chosen().toStdString();
  QTest::keyClick(&dial, Qt::Key_Left);
  QTest::keyClick(&dial, Qt::Key_Up);
  EXPECT_NEAR(*owl.rig().pan.homing.home_rad.si, 22 * kDegree_rad, 1e-12);
  QTest::keyClick(&dial, Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_NEAR(*owl.rig().pan.homing.home_rad.si, 21.9 * kDegree_rad, 1e-12);
  EXPECT_EQ(owl.history().count(), 1) << "one run of keys is one step";
  QTest::keyClick(&dial, Qt::Key_PageDown);
  QTest::keyClick(&dial, Qt::Key_Right);
  EXPECT_NEAR(*owl.rig().pan.homing.park_rad.si, -41 * kDegree_rad, 1e-12);
  EXPECT_EQ(owl.history().count(), 2);
  owl.history().undo();
  owl.history().undo();
  EXPECT_NEAR(*owl.rig().pan.homing.home_rad.si, 20 * kDegree_rad, 1e-12);
}

TEST(TravelDial, EnterAndADoubleClickLeadToTheField) {
  DialOwl owl;
  TravelDial& dial = owl.plotted(Axis::tilt);
  const TravelMark park = *dial.picture().mark({MarkKind::park, 0, 0, {}});
  send(dial, QEvent::MouseButtonDblClick, dial.dialLayout().grip(park));
  EXPECT_EQ(owl.window.selected(), "tilt.stops");
  ASSERT_NE(owl.field("tilt.homing.park"), nullptr);
  EXPECT_TRUE(owl.field("tilt.homing.park")->edit()->hasFocus());
  owl.type("tilt.homing.park", "-12");
  EXPECT_NEAR(angle_of(dial, MarkKind::park, 0), -12 * kDegree_rad, 1e-12);

  TravelDial& pan = owl.drawn(Axis::pan);
  pan.setFocus(Qt::TabFocusReason);
  QTest::keyClick(&pan, Qt::Key_Return);  // the first mark: a hard stop
  ASSERT_NE(owl.field("pan.stops.post_width"), nullptr);
  EXPECT_TRUE(owl.field("pan.stops.post_width")->edit()->hasFocus());
}

TEST(TravelDial, TellsItsValuesToScreenReadersAndInTips) {
  DialOwl owl;
  const TravelDial& dial = owl.drawn(Axis::pan);
  EXPECT_EQ(dial.accessibleName(), "Pan travel");
  for (const char* told : {"stops", "soft limits", "cable", "blind", "bumper 8°", "home 20°"}) {
    EXPECT_TRUE(dial.accessibleDescription().contains(QString::fromUtf8(told)))
        << told << " in " << dial.accessibleDescription().toStdString();
  }
  const QString tip = dial.tip(*dial.picture().mark({MarkKind::soft_limit, 1, 0, {}}));
  EXPECT_TRUE(tip.contains("soft limit inset")) << tip.toStdString();
  // 180° − asin(4/26) − asin(5/26) − 6°, by hand: 154.0634°
  EXPECT_TRUE(tip.contains("154.063")) << tip.toStdString();
}

TEST(TravelDial, SurvivesStopsAndCablesThatAreNoneOrMissing) {
  for (const Presence stops : {Presence::none, Presence::missing}) {
    for (const Presence cable : {Presence::none, Presence::missing}) {
      DialOwl owl;
      Rig rig = owl.rig();
      rig.pan.stops = {};
      rig.pan.cable = {};
      rig = with_presence(rig, "pan.stops", stops);
      owl.window.document().edit("bare", with_presence(rig, "pan.cable", cable));
      ASSERT_TRUE(owl.settle());
      TravelDial& dial = owl.drawn(Axis::pan);
      EXPECT_TRUE(std::isnan(angle_of(dial, MarkKind::hard_stop, 1)));
      EXPECT_FALSE(dial.grab().isNull());
      EXPECT_FALSE(owl.plotted(Axis::pan).grab().isNull());
      pull(dial, MarkKind::home, 0, 10 * kDegree_rad);
      release(dial);
      EXPECT_NEAR(angle_of(dial, MarkKind::home, 0), 30 * kDegree_rad, 0.6 * kDegree_rad);
    }
  }
}

/// Paints into the middle of a larger page and tells whether anything fell outside.
bool stays_inside(const DialPicture& picture, QSize size) {
  constexpr int kRim = 30;
  QImage page(size + QSize(2 * kRim, 2 * kRim), QImage::Format_RGB32);
  page.fill(Qt::magenta);
  QPainter painter(&page);
  paint_travel_dial(painter, QRectF(QPointF(kRim, kRim), QSizeF(size)), picture,
                    theme_for(ThemeKind::light));
  painter.end();
  for (int x = 0; x < page.width(); ++x) {
    for (int y = 0; y < page.height(); ++y) {
      const bool inside = QRect(QPoint(kRim, kRim), size).contains(x, y);
      if (!inside && page.pixelColor(x, y) != Qt::magenta) return false;
    }
  }
  return true;
}

TEST(TravelDial, PaintsNothingOutsideItsPlaceAtAnySizeOrTravel) {
  DialOwl owl;
  for (const double post_mm : {4.0, 20.0, 45.0}) {
    for (const double centre_deg : {-130.0, 0.0, 75.0}) {
      Rig rig = with_value(owl.rig(), "pan.stops.post_width", post_mm / 1000);
      rig = with_value(rig, "pan.stops.centre", centre_deg * kDegree_rad);
      const DialPicture picture = dial_picture(rig, Axis::pan, travel_of(rig.pan));
      for (const QSize size : {QSize(70, 60), QSize(110, 130), QSize(110, 180), QSize(180, 180),
                               QSize(300, 200), QSize(520, 240)}) {
        EXPECT_TRUE(stays_inside(picture, size))
            << post_mm << " mm, " << centre_deg << " deg, " << size.width() << "x" << size.height();
      }
    }
  }
}

TEST(TravelDial, WindsMoreThanATurnIntoASpiralWhoseEndsAreApart) {
  DialOwl owl;
  Travel travel = travel_of(owl.rig().pan);
  travel.stops_rad = 600 * kDegree_rad;
  travel.soft_rad = 580 * kDegree_rad;
  travel.usable_rad = 580 * kDegree_rad;
  const DialPicture picture = dial_picture(owl.rig(), Axis::pan, travel);
  const DialLayout layout = dial_layout({0, 0, 180, 180}, QFontMetricsF(QFont()), picture);
  EXPECT_GT(layout.soft.pitch, 0);
  const double out = layout.soft.radius_at(-300 * kDegree_rad);
  const double in = layout.soft.radius_at(300 * kDegree_rad);
  EXPECT_NEAR((out - in) / layout.soft.pitch, 600.0 / 360, 1e-9);
  EXPECT_LE(out, layout.radius);
  EXPECT_TRUE(dial_summary(picture).contains("±300°"));
  EXPECT_FALSE(dial_summary(picture).contains("blind"));
  EXPECT_TRUE(stays_inside(picture, {110, 130}));
}

/// The dial has to be read without colour: its inks differ in lightness from the card.
TEST(TravelDial, DrawsEachPartApartInGrey) {
  DialOwl owl;
  const Rig& rig = owl.rig();
  const DialPicture whole = dial_picture(rig, Axis::tilt, travel_of(rig.tilt));
  const auto grey = [](const DialPicture& picture) {
    QImage image(240, 240, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint_travel_dial(painter, {0, 0, 240, 240}, picture, theme_for(ThemeKind::print));
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
  };
  const QImage all = grey(whole);
  for (const MarkKind mark : {MarkKind::hard_stop, MarkKind::bumper, MarkKind::soft_limit,
                              MarkKind::cable, MarkKind::centre, MarkKind::home, MarkKind::park}) {
    DialPicture less = whole;
    std::erase_if(less.marks, [mark](const TravelMark& entry) { return entry.kind == mark; });
    EXPECT_NE(grey(less), all) << mark_long_word({mark, 0, 0, {}}).toStdString();
  }
}

TEST(Card, ShowsOnlyTheRowsThatTheKindNeeds) {
  OwlWindow owl;
  owl.window.select("pan.cable");
  const auto shown = [&](const char* path) {
    const QuantityField* field = owl.field(path);
    return field && field->isVisible();
  };
  EXPECT_TRUE(shown("pan.cable.twist_rating"));
  EXPECT_FALSE(shown("pan.cable.hub_radius"));
  const Rig ring = with_choice(owl.rig(), "pan.cable.routing", "slip_ring");
  owl.window.document().edit("routing", ring);
  EXPECT_FALSE(shown("pan.cable.twist_rating"));
  EXPECT_FALSE(shown("pan.cable.free_length"));
  EXPECT_TRUE(shown("pan.cable.ring_circuits"));
  owl.window.document().edit("routing", with_choice(ring, "pan.cable.routing", "coil"));
  EXPECT_TRUE(shown("pan.cable.hub_radius"));
  EXPECT_FALSE(shown("pan.cable.ring_circuits"));
}

TEST(Card, AsksForTheMotorsSensorWhereTheEncoderIsBehindTheGear) {
  OwlWindow owl;
  owl.window.select("pan.encoder");
  const auto* row = owl.window.card().findChild<QComboBox*>("pan.encoder.motor_sensor");
  ASSERT_NE(row, nullptr);
  EXPECT_FALSE(row->isVisible());
  owl.window.document().edit("encoder", with_choice(owl.rig(), "pan.encoder.at", "output"));
  row = owl.window.card().findChild<QComboBox*>("pan.encoder.motor_sensor");
  EXPECT_TRUE(row && row->isVisible());
}

TEST(Card, HoldsHomingWithTheStopsAndFoldsTheMagnetAway) {
  OwlWindow owl;
  owl.window.select("tilt.homing");
  EXPECT_EQ(owl.window.selected(), "tilt.stops");
  ASSERT_NE(owl.field("tilt.homing.home"), nullptr);
  EXPECT_TRUE(owl.field("tilt.homing.current")->isVisible()) << "pushes to a stop by default";
  EXPECT_FALSE(owl.field("tilt.homing.second_ratio")->isVisible());

  owl.window.select("pan.motor");
  EXPECT_FALSE(owl.field("pan.encoder.magnet_gap")->isVisible());
  owl.window.card().findChild<QToolButton*>("Magnet")->click();
  EXPECT_TRUE(owl.field("pan.encoder.magnet_gap")->isVisible());
  owl.window.select("pan.motor");
  owl.window.card().findChild<QToolButton*>("Magnet")->click();
  owl.window.select("pan.encoder.field_least");
  EXPECT_TRUE(owl.field("pan.encoder.field_least")->isVisible()) << "unfolds when asked for";
}

TEST(Card, SaysChoicesInPlainWords) {
  OwlWindow owl;
  owl.window.select("pan.cable");
  const auto* routing = owl.window.card().findChild<QComboBox*>("pan.cable.routing");
  ASSERT_NE(routing, nullptr);
  EXPECT_GE(routing->findText("slip ring"), 0);
  owl.window.select("pan.stops");
  const auto* by = owl.window.card().findChild<QComboBox*>("pan.homing.by");
  ASSERT_NE(by, nullptr);
  EXPECT_GE(by->findText("second encoder"), 0);
}

TEST(DriveLine, SaysTheMeasuresOfTheRoutingAndTheKind) {
  OwlWindow owl;
  Rig rig = with_choice(owl.rig(), "pan.cable.routing", "slip_ring");
  rig = with_value(with_value(rig, "pan.cable.ring_circuits", 12), "pan.cable.ring_current", 2);
  rig = with_value(with_choice(rig, "pan.stops.kind", "window"), "pan.stops.window", 1.0);
  owl.window.document().edit("kinds", rig);
  ASSERT_TRUE(owl.settle());
  const TileText& cable = owl.window.driveLine(Axis::pan).tile("pan.cable")->tileText();
  EXPECT_EQ(cable.title, "Slip ring");
  EXPECT_TRUE(cable.lines.join(' ').contains("circuits: 12"))
      << cable.lines.join(' ').toStdString();
  const TileText& stops = owl.window.driveLine(Axis::pan).tile("pan.stops")->tileText();
  EXPECT_TRUE(stops.lines.join(' ').contains("window 57.3°"))
      << stops.lines.join(' ').toStdString();
}

}  // namespace
}  // namespace gazewright
