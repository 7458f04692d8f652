#include <gtest/gtest.h>

#include <QToolButton>
#include <cmath>

#include "core/files/rig_file.h"
#include "tests/app/window_support.h"

namespace gazewright::tests {
namespace {

QToolButton* button(OwlWindow& owl, const char* name) {
  return owl.window.card().findChild<QToolButton*>(QString::fromUtf8(name));
}

TEST(WindowDuty, AMoveIsAddedEditedAndTakenAwayAgain) {
  OwlWindow owl;
  owl.window.select("task");
  QTest::mouseClick(button(owl, "duty.add"), Qt::LeftButton);
  QTest::mouseClick(button(owl, "duty.add"), Qt::LeftButton);
  ASSERT_EQ(owl.rig().duty.size(), 2u);
  // Half the task's moves of 40° and 25°, to either side.
  EXPECT_EQ(owl.rig().duty[0].pan_rad.written, "20 deg");
  EXPECT_NEAR(owl.rig().duty[1].tilt_rad.value(), -12.5 * M_PI / 180, 0.51 * M_PI / 180);
  ASSERT_NE(owl.type("duty[1].dwell", "2.5 s"), nullptr);
  EXPECT_DOUBLE_EQ(owl.rig().duty[1].dwell_s.value(), 2.5);
  ASSERT_TRUE(owl.settle());
  const Analysis& analysis = *owl.window.recompute().analysis();
  EXPECT_FALSE(analysis.heat[0].time_s.empty());
  QTest::mouseClick(button(owl, "duty.remove"), Qt::LeftButton);
  ASSERT_EQ(owl.rig().duty.size(), 1u);
  EXPECT_DOUBLE_EQ(owl.rig().duty[0].dwell_s.value(), 2.5);
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig().duty.size(), 2u);
}

TEST(WindowDuty, TheMotorsHeatHasItsGroups) {
  OwlWindow owl;
  owl.window.select("pan.motor");
  EXPECT_TRUE(owl.field("pan.motor.thermal_resistance")->isVisible());
  EXPECT_FALSE(owl.field("pan.motor.magnet_limit")->isVisible());  // folded until one is entered
  owl.window.select("pan.motor.magnet_limit");
  EXPECT_TRUE(owl.field("pan.motor.magnet_limit")->isVisible());
}

}  // namespace
}  // namespace gazewright::tests
