#include <gtest/gtest.h>

#include <QLineEdit>
#include <QTableWidget>
#include <QToolButton>
#include <tuple>

#include "app/window/path_rows.h"
#include "app/window/tracking_row.h"
#include "core/files/text_check.h"
#include "tests/app/window_support.h"

namespace gazewright::tests {
namespace {

QToolButton* button(OwlWindow& owl, const char* name) {
  return owl.window.card().findChild<QToolButton*>(QString::fromUtf8(name));
}

TEST(WindowTracking, ADetectorIsAddedWithItsFieldsEditedAndTakenAwayAgain) {
  OwlWindow owl;
  owl.window.select("tracking");
  QTest::mouseClick(button(owl, "detector.add"), Qt::LeftButton);
  ASSERT_EQ(owl.rig().detectors.size(), 1u);
  ASSERT_NE(owl.type("detectors[0].delay", "90 ms"), nullptr);
  EXPECT_DOUBLE_EQ(owl.rig().detectors[0].delay_s.value(), 0.09);
  ASSERT_TRUE(owl.settle());
  EXPECT_DOUBLE_EQ(owl.window.recompute().analysis()->tracking.detectors[0].delay_s, 0.09);
  QTest::mouseClick(button(owl, "detector.remove"), Qt::LeftButton);
  EXPECT_TRUE(owl.rig().detectors.empty());
  EXPECT_EQ(button(owl, "detector.remove"), nullptr);
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig().detectors.size(), 1u);
}

TEST(WindowTracking, ShowsTheFieldsOfTheTargetThatIsChosen) {
  OwlWindow owl;
  owl.window.select("tracking");
  EXPECT_TRUE(owl.field("tracking.height")->isVisible());
  EXPECT_FALSE(owl.field("tracking.amplitude")->isVisible());
  owl.window.document().edit("sine", with_choice(owl.rig(), "tracking.target", "sine"));
  EXPECT_FALSE(owl.field("tracking.height")->isVisible());
  EXPECT_TRUE(owl.field("tracking.amplitude")->isVisible());
}

TEST(WindowTracking, APathComesFromCsvIntoTheRigAsOneStep) {
  OwlWindow owl;
  owl.window.select("tracking");
  owl.write("walk.csv", "time,pan,tilt\n0,-10,0\n2,20.5,4\n");
  auto* row = owl.window.card().findChild<TrackingRow*>();
  ASSERT_NE(row, nullptr);
  row->importPath(owl.path("walk.csv"));
  ASSERT_EQ(owl.rig().tracking.path.size(), 2u);
  EXPECT_EQ(owl.rig().tracking.path[1].pan_rad.written, "20.5 deg");
  EXPECT_EQ(owl.rig().tracking.target.value, "path");
  owl.write("bad.csv", "0,-10,0\n0,20,4\n");
  row->importPath(owl.path("bad.csv"));
  EXPECT_EQ(owl.rig().tracking.path.size(), 2u);
  owl.window.document().history().undo();
  EXPECT_TRUE(owl.rig().tracking.path.empty());
}

TEST(WindowTracking, RefusesAPathFileThatIsTooLongAndTakesNoPartOfIt) {
  OwlWindow owl;
  owl.window.select("tracking");
  std::string text = "0,-10,0\n2,20.5,4\n";
  text.resize(kLargestFile_bytes, '\n');
  owl.write("long.csv", text + "3,0,0\n");
  owl.window.card().findChild<TrackingRow*>()->importPath(owl.path("long.csv"));
  EXPECT_TRUE(owl.rig().tracking.path.empty());
}

struct PathOwl : OwlWindow {
  PathOwl() { window.select("tracking"); }
  PathRows* rows() { return window.card().findChild<PathRows*>(); }
  QTableWidget* table() { return rows()->findChild<QTableWidget*>(); }
  void press(const char* name) { QTest::mouseClick(button(*this, name), Qt::LeftButton); }
  QString cell(int row, int column) { return table()->item(row, column)->text(); }
  /// As a person types it into the cell's editor.
  void enter(int row, int column, const char* text) {
    QTableWidgetItem* item = table()->item(row, column);
    table()->setCurrentItem(item);
    table()->editItem(item);
    auto* editor = table()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClicks(editor, QString::fromUtf8(text));
    QTest::keyClick(editor, Qt::Key_Return);
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  const std::vector<PathPoint>& path() { return rig().tracking.path; }
};

TEST(WindowTracking, APathIsTypedPointByPointEachInOneStep) {
  PathOwl owl;
  const Rig before = owl.rig();
  owl.press("path.add");
  ASSERT_EQ(owl.path().size(), 2u) << "one point alone is no path";
  EXPECT_EQ(owl.rig().tracking.target.value, "path");
  owl.enter(1, 0, "2");
  owl.enter(1, 1, "0.5 rad");
  owl.enter(0, 2, "-10");
  ASSERT_EQ(owl.path().size(), 2u);
  EXPECT_EQ(owl.path()[1].time_s.written, "2 s");
  EXPECT_DOUBLE_EQ(*owl.path()[1].pan_rad.si, 0.5);
  EXPECT_EQ(owl.path()[0].tilt_rad.written, "-10 deg");
  owl.table()->setCurrentCell(0, 0);
  owl.press("path.add");
  ASSERT_EQ(owl.path().size(), 3u);
  EXPECT_DOUBLE_EQ(*owl.path()[1].time_s.si, 1) << "half way";
  EXPECT_DOUBLE_EQ(*owl.path()[1].pan_rad.si, 0.25);
  owl.table()->setCurrentCell(2, 0);
  owl.press("path.add");
  ASSERT_EQ(owl.path().size(), 4u);
  EXPECT_DOUBLE_EQ(*owl.path()[3].time_s.si, 3) << "as long again as the step before";
  EXPECT_EQ(owl.window.document().history().count(), 6);
  ASSERT_TRUE(owl.settle());
  EXPECT_DOUBLE_EQ(owl.window.recompute().analysis()->tracking.time_s.back(), 3);
  for (int i = 0; i < 6; ++i) owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
  EXPECT_TRUE(owl.table()->isHidden());
}

TEST(WindowTracking, APointOfThePathGoesAndTheLastTwoTogether) {
  PathOwl owl;
  for (int i = 0; i < 2; ++i) owl.press("path.add");
  ASSERT_EQ(owl.path().size(), 3u);
  owl.table()->setCurrentCell(1, 0);
  owl.press("path.remove");
  ASSERT_EQ(owl.path().size(), 2u);
  owl.press("path.remove");
  EXPECT_TRUE(owl.path().empty());
  EXPECT_FALSE(button(owl, "path.remove")->isEnabled());
  owl.window.document().history().undo();
  EXPECT_EQ(owl.path().size(), 2u);
}

TEST(WindowTracking, RefusesAPointThatBreaksThePathAndSaysWhyBelowIt) {
  PathOwl owl;
  owl.press("path.add");
  const Rig before = owl.rig();
  const QString shown = owl.cell(1, 0);
  for (const auto& [column, text, why] : {std::tuple{0, "0 s", "not after the point before it"},
                                          {0, "-1", "Still"},
                                          {0, "soon", "Still"},
                                          {0, "3 kg", "Still"},
                                          {1, "4000 deg", "Still"},
                                          {1, "", "A point has all three values"}}) {
    owl.enter(1, column, text);
    if (*text == 0) {
      owl.table()->item(1, column)->setText({});
    }
    EXPECT_EQ(owl.rig(), before) << text;
    EXPECT_TRUE(owl.rows()->errorText().contains(why)) << owl.rows()->errorText().toStdString();
    EXPECT_EQ(owl.cell(1, 0), shown) << text;
  }
  owl.enter(0, 0, "7");
  EXPECT_TRUE(owl.rows()->errorText().contains("not before the point after it"));
  EXPECT_EQ(owl.rig(), before);
  owl.enter(1, 0, "9");
  EXPECT_TRUE(owl.rows()->errorText().isEmpty());
}

TEST(WindowTracking, AFindingOfTheOuterLoopOpensItsCard) {
  OwlWindow owl;
  owl.window.select("detectors[0].delay");
  EXPECT_EQ(owl.window.selected(), "tracking");
}

}  // namespace
}  // namespace gazewright::tests
