#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLayout>
#include <QMenuBar>
#include <QScrollArea>
#include <QTabBar>
#include <QTranslator>
#include <limits>

#include "app/plots/chart.h"
#include "app/window/drive_line.h"
#include "app/window/parts.h"
#include "app/window/plurals.h"
#include "app/window/settings_window.h"
#include "app/window/widgets.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// Every text longer by three tenths, as translations are.
/// Source: W3C, Text size in translation: 130 % of English for 21 to 30 letters (more for shorter
/// ones).
class Padding : public QTranslator {
 public:
  bool isEmpty() const override { return false; }
  QString translate(const char*, const char* source, const char*, int) const override {
    const QString text = QString::fromUtf8(source);
    return text + QString((text.size() * 3 + 9) / 10, QChar('e'));
  }
};

class PaddedWindow : public ::testing::Test {
 protected:
  void SetUp() override { QCoreApplication::installTranslator(&padding_); }
  void TearDown() override {
    QCoreApplication::removeTranslator(&padding_);
    QApplication::setLayoutDirection(Qt::LeftToRight);
  }

 private:
  Padding padding_;
};

/// What is cut off at a side: one line each.
std::string cut_in(const QWidget& window) {
  std::string cut;
  const auto look = [&](const QWidget* widget, const QString& text, int wanted) {
    if (!widget->isVisible() || text.isEmpty() || wanted <= widget->width()) return;
    cut += std::string(widget->metaObject()->className()) + " “" + text.toStdString() +
           "”: " + std::to_string(wanted) + " in " + std::to_string(widget->width()) + "\n";
  };
  for (const auto* label : window.findChildren<QLabel*>()) {
    if (label->wordWrap() || qobject_cast<const ElidedLabel*>(label)) continue;
    look(label, label->text(), label->sizeHint().width());
  }
  for (const auto* button : window.findChildren<QAbstractButton*>()) {
    if (!button->text().isEmpty() && !button->property("elides").toBool())
      look(button, button->text(), button->sizeHint().width());
  }
  for (const auto* combo : window.findChildren<QComboBox*>()) {
    look(combo, combo->currentText(), combo->fontMetrics().horizontalAdvance(combo->currentText()));
  }
  for (const auto* tabs : window.findChildren<QTabBar*>()) {
    for (int i = 0; i < tabs->count(); ++i) look(tabs, tabs->tabText(i), tabs->tabRect(i).right());
  }
  return cut;
}

/// Which neighbours in the window lie over each other.
std::string overlaps_in(const QWidget& window) {
  std::string found;
  for (const QWidget* parent : window.findChildren<QWidget*>()) {
    const auto children = parent->findChildren<QWidget*>(Qt::FindDirectChildrenOnly);
    for (const QWidget* a : children) {
      for (const QWidget* b : children) {
        if (a >= b || !a->isVisible() || !b->isVisible() || !parent->layout()) continue;
        if (parent->layout()->indexOf(a) < 0 && parent->layout()->indexOf(b) < 0) continue;
        if (a->isWindow() || b->isWindow() || !a->geometry().intersects(b->geometry())) continue;
        found += std::string(a->metaObject()->className()) + " over " +
                 b->metaObject()->className() + "\n";
      }
    }
  }
  return found;
}

TEST_F(PaddedWindow, CutsNoLabelButtonOrTabOnASmallScreen) {
  OwlWindow owl;
  owl.window.resize(1366, 768);
  ASSERT_TRUE(owl.sweep());
  owl.window.actions()["help.guide"]->trigger();
  ASSERT_TRUE(owl.window.actions()["rig.save"]->text().endsWith('e')) << "padding is at work";
  int cards = 0;
  for (const Qt::LayoutDirection direction : {Qt::LeftToRight, Qt::RightToLeft}) {
    QApplication::setLayoutDirection(direction);
    for (const PartEntry& entry : all_parts(owl.rig())) {
      if (entry.part.empty()) continue;
      owl.window.select(QString::fromStdString(entry.part));
      QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
      QCoreApplication::processEvents();
      EXPECT_EQ(cut_in(owl.window), "") << entry.part;
      EXPECT_EQ(overlaps_in(owl.window), "") << entry.part;
      ++cards;
    }
    owl.window.actions()["show.place"]->trigger();  // the drawing in the card's place
    QCoreApplication::processEvents();
    EXPECT_EQ(cut_in(owl.window), "") << "drawing";
    const auto* scroll = qobject_cast<QScrollArea*>(owl.window.centralWidget());
    EXPECT_LE(scroll->widget()->width(), scroll->viewport()->width()) << "nothing is off the side";
  }
  EXPECT_GE(cards, 2 * 20);
}

TEST_F(PaddedWindow, CutsNothingInTheSettings) {
  OwlWindow owl;
  owl.window.actions()["edit.settings"]->trigger();
  EXPECT_EQ(cut_in(*owl.window.settingsWindow()), "");
  EXPECT_LE(owl.window.settingsWindow()->width(), 1366);
}

TEST(FromRightToLeft, ArrowsGoWhereTheyPointInTheDriveLine) {
  QApplication::setLayoutDirection(Qt::RightToLeft);
  {
    OwlWindow owl;
    DriveLine& line = owl.window.driveLine(Axis::pan);
    QWidget* motor = line.findChild<QWidget*>("pan.motor tile");
    ASSERT_NE(motor, nullptr);
    motor->setFocus();
    QTest::keyClick(motor, Qt::Key_Right);
    EXPECT_GT(owl.window.focusWidget()->x(), motor->x());
    motor->setFocus();
    QTest::keyClick(motor, Qt::Key_Left);
    EXPECT_LT(owl.window.focusWidget()->x(), motor->x());
  }
  QApplication::setLayoutDirection(Qt::LeftToRight);
}

TEST(Plural, OneIsNotMany) {
  Plurals plurals;
  QCoreApplication::installTranslator(&plurals);
  Chart chart;
  const double gap = std::numeric_limits<double>::quiet_NaN();
  chart.series = {{.name = "a", .x = {0, 1, 2}, .y = {1, gap, 2}}};
  EXPECT_EQ(summary_of(chart), "1 point has no value and leaves a gap");
  chart.series[0].y = {gap, gap, 2};
  EXPECT_EQ(summary_of(chart), "2 points have no value and leave a gap");
  QCoreApplication::removeTranslator(&plurals);
}

}  // namespace
}  // namespace gazewright
