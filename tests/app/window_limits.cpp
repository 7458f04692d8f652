#include <gtest/gtest.h>

#include <QToolButton>

#include "app/window/limits_row.h"
#include "tests/app/window_support.h"

namespace gazewright::tests {
namespace {

LimitsRow* row_of(OwlWindow& owl) {
  return owl.window.card().findChild<LimitsRow*>(QStringLiteral("tilt.limits"));
}

TEST(WindowLimits, StandOnTheCardOfTheMotorAndPressingALineAppliesItUndoably) {
  OwlWindow owl;
  owl.window.document().edit("slow", with_value(owl.rig(), "tilt.loop.position_gain", 10));
  owl.window.select("tilt.motor");
  ASSERT_TRUE(owl.settle());
  LimitsRow* row = row_of(owl);
  ASSERT_NE(row, nullptr);
  EXPECT_TRUE(row->text().contains("the loop itself")) << row->text().toStdString();
  const MoveLimits& limits = owl.window.recompute().analysis()->limits_of(Axis::tilt);
  ASSERT_EQ(row->buttons().size(), limits.gains.size());
  ASSERT_FALSE(limits.gains.empty());
  const LimitGain gain = limits.gains.front();
  const Rig before = owl.rig();
  QTest::mouseClick(row->buttons().front(), Qt::LeftButton);
  EXPECT_EQ(owl.rig(), with_value(before, gain.path, gain.value_si));
  const double settle_s = owl.window.recompute().analysis()->value("tilt.step.settle_time").value();
  ASSERT_TRUE(owl.settle());
  EXPECT_NEAR(owl.window.recompute().analysis()->value("tilt.step.settle_time").value(),
              settle_s - gain.saved_s, 1e-9);
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
}

TEST(WindowLimits, NameAMissingInputByItsLabel) {
  OwlWindow owl;
  Rig rig = owl.rig();
  rig.tilt.motor.rotor_inertia_kgm2 = {};
  owl.window.document().edit("less", rig);
  owl.window.select("tilt.motor");
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(row_of(owl)->text().toStdString(), "Needs tilt motor rotor inertia.");
  EXPECT_TRUE(row_of(owl)->buttons().empty());
}

}  // namespace
}  // namespace gazewright::tests
