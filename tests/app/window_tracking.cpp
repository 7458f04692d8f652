#include <gtest/gtest.h>

#include <QToolButton>

#include "app/window/tracking_row.h"
#include "core/files/text_check.h"
#include "tests/app/window_support.h"

namespace gazewright::testing {
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
  EXPECT_FALSE(button(owl, "detector.remove")->isEnabled());
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

TEST(WindowTracking, AFindingOfTheOuterLoopOpensItsCard) {
  OwlWindow owl;
  owl.window.select("detectors[0].delay");
  EXPECT_EQ(owl.window.selected(), "tracking");
}

}  // namespace
}  // namespace gazewright::testing
