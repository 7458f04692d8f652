#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAccessible>
#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QLineF>
#include <QMenuBar>
#include <QScrollBar>
#include <QShortcut>
#include <QTableView>
#include <algorithm>
#include <cmath>
#include <set>

#include "app/window/drawing_panel.h"
#include "app/window/drive_line.h"
#include "app/window/explainer.h"
#include "app/window/figures_window.h"
#include "app/window/handbook.h"
#include "app/window/parts.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// Which widget, for a message.
std::string named(const QWidget* widget) {
  std::string path;
  for (const QWidget* at = widget; at && !at->isWindow(); at = at->parentWidget()) {
    path +=
        std::string(at->metaObject()->className()) + "(" + at->objectName().toStdString() + ") < ";
  }
  return path;
}

/// Whether Tab is to stop there.
bool takes_tab(const QWidget* widget) {
  return widget->isVisible() && widget->isEnabled() && (widget->focusPolicy() & Qt::TabFocus) &&
         !widget->focusProxy();
}

std::vector<QWidget*> tab_stops(const QWidget& window) {
  std::vector<QWidget*> stops;
  for (QWidget* widget : window.findChildren<QWidget*>()) {
    if (widget->window() == &window && takes_tab(widget)) stops.push_back(widget);
  }
  return stops;
}

bool has_value(const QWidget* widget) {
  return qobject_cast<const QLineEdit*>(widget) || qobject_cast<const QComboBox*>(widget) ||
         qobject_cast<const RatioScale*>(widget) || qobject_cast<const PlotView*>(widget);
}

void expect_told(QWidget* widget) {
  QAccessibleInterface* told = QAccessible::queryAccessibleInterface(widget);
  ASSERT_NE(told, nullptr) << named(widget);
  EXPECT_FALSE(told->text(QAccessible::Name).isEmpty()) << "no name: " << named(widget);
  EXPECT_NE(told->role(), QAccessible::NoRole) << named(widget);
  EXPECT_NE(told->role(), QAccessible::Client) << "no role: " << named(widget);
  EXPECT_TRUE(told->state().focusable) << named(widget);
  if (const auto* edit = qobject_cast<QLineEdit*>(widget)) {
    EXPECT_EQ(told->text(QAccessible::Value), edit->text()) << named(widget);
  } else if (has_value(widget)) {
    EXPECT_FALSE(told->text(QAccessible::Value).isEmpty()) << "no value: " << named(widget);
  }
}

TEST(ScreenReader, EveryControlHasNameRoleAndValueOnEveryCard) {
  OwlWindow owl;
  ASSERT_TRUE(owl.sweep());
  owl.window.actions()["help.guide"]->trigger();
  for (const PartEntry& entry : all_parts(owl.rig())) {
    if (entry.part.empty()) continue;
    SCOPED_TRACE(entry.part);
    owl.window.select(QString::fromStdString(entry.part));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const std::vector<QWidget*> stops = tab_stops(owl.window);
    EXPECT_GT(stops.size(), 20U);
    for (QWidget* widget : stops) expect_told(widget);
  }
}

TEST(ScreenReader, EveryPlotIsAChartWithItsReadings) {
  OwlWindow owl;
  ASSERT_TRUE(owl.sweep());
  for (const PlotKind kind : plot_kinds()) {
    owl.window.plots().setKinds({kind});
    PlotView* plot = owl.window.plots().plot(kind);
    QAccessibleInterface* told = QAccessible::queryAccessibleInterface(plot);
    ASSERT_NE(told, nullptr);
    EXPECT_EQ(told->role(), QAccessible::Chart) << plot_title(kind).toStdString();
    EXPECT_EQ(told->text(QAccessible::Name), plot->title());
    EXPECT_EQ(told->text(QAccessible::Value), plot->summary());
    EXPECT_FALSE(plot->summary().isEmpty()) << plot_title(kind).toStdString();
  }
}

TEST(ScreenReader, TheRatioScaleIsASliderWhoseValueCanBeSet) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  RatioScale* scale = owl.window.driveLine(Axis::pan).ratioScale();
  QAccessibleInterface* told = QAccessible::queryAccessibleInterface(scale);
  ASSERT_NE(told, nullptr);
  EXPECT_EQ(told->role(), QAccessible::Slider);
  QAccessibleValueInterface* value = told->valueInterface();
  ASSERT_NE(value, nullptr);
  EXPECT_DOUBLE_EQ(value->currentValue().toDouble(), 18);
  EXPECT_DOUBLE_EQ(value->minimumValue().toDouble(), 1);
  EXPECT_DOUBLE_EQ(value->maximumValue().toDouble(), 200);
  value->setCurrentValue(21);
  EXPECT_DOUBLE_EQ(*owl.rig().pan.gearbox.ratio.si, 21);
}

TEST(ScreenReader, TheWindowsBesideHaveNamesToo) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.actions()["show.figures"]->trigger();
  owl.window.actions()["help.handbook"]->trigger();
  for (QWidget* window : {static_cast<QWidget*>(owl.window.explainer().figures()),
                          static_cast<QWidget*>(owl.window.explainer().handbook())}) {
    for (QWidget* widget : tab_stops(*window)) expect_told(widget);
  }
}

/// Walks with Tab from where the focus is until it comes back, and counts what it stopped at.
std::set<QWidget*> walk(MainWindow& window, Qt::Key key, Qt::KeyboardModifiers with) {
  std::set<QWidget*> seen;
  QWidget* start = window.focusWidget();
  QWidget* at = start;
  for (int steps = 0; at && steps < 1000; ++steps) {
    seen.insert(at);
    QTest::keyClick(at, key, with);
    at = window.focusWidget();
    if (at == start) return seen;
  }
  ADD_FAILURE() << "Tab never came back; it stands at " << (at ? named(at) : "nothing");
  return seen;
}

TEST(Keyboard, TabReachesEverythingAndIsNeverTrapped) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  for (const char* part : {"pan.gearbox", "tilt.load", "task", "tracking", "stand"}) {
    SCOPED_TRACE(part);
    owl.window.select(part);
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    owl.window.driveLine(Axis::pan).ratioScale()->setFocus();
    const std::set<QWidget*> seen = walk(owl.window, Qt::Key_Tab, Qt::NoModifier);
    for (QWidget* widget : tab_stops(owl.window)) {
      EXPECT_TRUE(seen.contains(widget)) << "Tab misses " << named(widget);
    }
    EXPECT_EQ(walk(owl.window, Qt::Key_Tab, Qt::ShiftModifier).size(), seen.size());
  }
}

/// In a row the value comes first, then what is said about it.
TEST(Keyboard, TabGoesFromTheValueToItsSourceAndSpreadAndThenToTheNextValue) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.select("pan.gearbox");
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  const auto tab = [&] {
    QTest::keyClick(owl.window.focusWidget(), Qt::Key_Tab);
    return owl.window.focusWidget();
  };
  auto* name = owl.window.card().findChild<QLineEdit*>("pan.gearbox.name");
  ASSERT_NE(name, nullptr);
  name->setFocus();
  for (const char* path : {"pan.gearbox.ratio", "pan.gearbox.efficiency"}) {
    QuantityField* field = owl.field(path);
    ASSERT_NE(field, nullptr) << path;
    EXPECT_EQ(tab(), field->edit()) << path;
    EXPECT_EQ(tab(), field->findChild<QComboBox*>()) << path;
    const QWidget* spread = tab();
    EXPECT_TRUE(field->isAncestorOf(spread)) << path;
    EXPECT_NE(spread, field->edit()) << path;
  }
}

TEST(Keyboard, F10GoesToTheMenus) {
  OwlWindow owl;
  // The key itself needs an active window, which no display gives.
  auto* menus = owl.window.findChild<QShortcut*>("menus");
  ASSERT_NE(menus, nullptr);
  EXPECT_EQ(menus->key(), QKeySequence(Qt::Key_F10));
  emit menus->activated();
  EXPECT_NE(owl.window.menuBar()->activeAction(), nullptr);
}

/// How far a point is from a rectangle.
double distance(QPointF point, const QRectF& rect) {
  const double dx = std::max({rect.left() - point.x(), 0.0, point.x() - rect.right()});
  const double dy = std::max({rect.top() - point.y(), 0.0, point.y() - rect.bottom()});
  return std::hypot(dx, dy);
}

/// Source: WCAG 2.2, 2.5.8: 24 by 24, or a circle of 24 about its middle meets no other target and
/// no such circle of another one that is too small.
TEST(Keyboard, TargetsOfThePointerAreLargeEnoughOrSpaced) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.actions()["help.guide"]->trigger();
  std::vector<std::pair<const QWidget*, QRectF>> targets;
  for (const QWidget* widget : owl.window.findChildren<QAbstractButton*>()) {
    if (widget->isVisible() && widget->window() == &owl.window &&
        !widget->visibleRegion().isEmpty())
      targets.emplace_back(
          widget, QRectF(widget->mapTo(&owl.window, QPoint(0, 0)), QSizeF(widget->size())));
  }
  ASSERT_GT(targets.size(), 10U);
  const auto is_small = [](const QRectF& rect) { return rect.width() < 24 || rect.height() < 24; };
  for (const auto& [widget, rect] : targets) {
    if (!is_small(rect)) continue;
    for (const auto& [other, place] : targets) {
      if (other == widget || other->isAncestorOf(widget)) continue;
      EXPECT_GE(distance(rect.center(), place), 12) << named(widget) << " beside " << named(other);
      if (is_small(place)) {
        EXPECT_GE(QLineF(rect.center(), place.center()).length(), 24)
            << named(widget) << " beside " << named(other);
      }
    }
  }
}

}  // namespace
}  // namespace gazewright
