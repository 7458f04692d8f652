#include <gtest/gtest.h>

#include <QLabel>
#include <QLocale>

#include "app/window/drive_line.h"
#include "app/window/findings_view.h"
#include "app/window/tile.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// The window as a German desktop starts it.
class GermanWindow : public ::testing::Test {
 protected:
  void SetUp() override { QLocale::setDefault(QLocale(QLocale::German, QLocale::Germany)); }
  void TearDown() override { QLocale::setDefault(before_); }

 private:
  QLocale before_;
};

TEST_F(GermanWindow, FieldsShowAndReadTheDecimalComma) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.select("pan.cable");
  EXPECT_EQ(owl.field("pan.cable.outer_diameter")->edit()->text(),
            QString::fromUtf8("5,2\u202fmm"));
  owl.type("pan.cable.outer_diameter", "5,75");
  EXPECT_DOUBLE_EQ(*owl.rig().pan.cable.outer_diameter_m.si, 5.75e-3);
  EXPECT_EQ(owl.field("pan.cable.outer_diameter")->edit()->text(),
            QString::fromUtf8("5,75\u202fmm"));
  owl.type("pan.cable.outer_diameter", "6.25 mm");
  EXPECT_DOUBLE_EQ(*owl.rig().pan.cable.outer_diameter_m.si, 6.25e-3) << "a point is read too";
}

TEST_F(GermanWindow, TilesAndFiguresShowTheComma) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  const Tile* motor = owl.window.driveLine(Axis::pan).tile("pan.motor");
  EXPECT_EQ(motor->tileText().lines[0], QString::fromUtf8("20,2\u202fmN·m/A"));
}

TEST_F(GermanWindow, FilesKeepThePointAndReadTheSameElsewhere) {
  OwlWindow owl;
  owl.window.select("pan.cable");
  owl.type("pan.cable.outer_diameter", "5,75");
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.ratio", "17,5");
  ASSERT_TRUE(owl.window.saveTo(owl.path("mine.rig.yaml")));
  const std::string file = owl.read("mine.rig.yaml");
  EXPECT_NE(file.find("5.75 mm"), std::string::npos);
  EXPECT_NE(file.find("ratio: 17.5"), std::string::npos);
  EXPECT_EQ(file.find("17,5"), std::string::npos);
  const Rig saved = owl.rig();
  QLocale::setDefault(QLocale::c());
  OwlWindow english;
  ASSERT_TRUE(english.window.openFile(owl.path("mine.rig.yaml")));
  EXPECT_EQ(english.rig(), saved);
}

}  // namespace
}  // namespace gazewright
