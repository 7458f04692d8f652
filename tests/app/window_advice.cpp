#include <gtest/gtest.h>

#include <QLabel>
#include <QToolButton>

#include "app/window/advice_row.h"
#include "tests/app/window_support.h"

namespace gazewright::tests {
namespace {

TEST(WindowAdvice, StandsOnTheDrivesCardAndItsButtonTakesAllGainsInOneStep) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.select("pan.drive");
  const auto* row = owl.window.card().findChild<AdviceRow*>(QStringLiteral("pan.loop advice"));
  ASSERT_NE(row, nullptr);
  EXPECT_TRUE(row->text().contains("Speed gain ")) << row->text().toStdString();
  EXPECT_TRUE(row->text().startsWith("With these gains the move settles "))
      << row->text().toStdString();
  ASSERT_TRUE(row->button()->isEnabled());
  const Rig before = owl.rig();
  const int steps = owl.window.document().history().count();
  row->button()->click();
  EXPECT_EQ(owl.window.document().history().count(), steps + 1);
  const Loop &now = owl.rig().pan.loop, &then = before.pan.loop;
  EXPECT_NE(now.speed_gain_Nmsprad, then.speed_gain_Nmsprad);
  EXPECT_NE(now.speed_integral_gain_Nmprad, then.speed_integral_gain_Nmprad);
  EXPECT_NE(now.position_gain_1ps, then.position_gain_1ps);
  EXPECT_EQ(owl.rig().tilt, before.tilt);
  ASSERT_TRUE(owl.settle());
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
}

/// Whoever reads the card from the top meets the button before the gains.
TEST(WindowAdvice, StandsAboveTheGainsOfTheLoop) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  for (const char* axis : {"pan", "tilt"}) {
    owl.window.select(QString("%1.loop").arg(axis));
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const auto* row = owl.window.card().findChild<AdviceRow*>(QString("%1.loop advice").arg(axis));
    const QuantityField* gain = owl.field((std::string(axis) + ".loop.position_gain").c_str());
    const QuantityField* drive = owl.field((std::string(axis) + ".drive.current_limit").c_str());
    ASSERT_TRUE(row && gain && drive);
    EXPECT_LT(row->y(), gain->y());
    EXPECT_GT(row->y(), drive->y());
    EXPECT_FALSE(row->button()->visibleRegion().isEmpty()) << "a way to the loop shows it";
    EXPECT_FALSE(gain->visibleRegion().isEmpty()) << "the reasons are folded away";
    const QLabel* reasons = row->findChildren<QLabel*>().back();
    EXPECT_TRUE(reasons->isHidden() && reasons->text().contains("Speed gain "));
    row->findChild<QToolButton*>("advice.reasons")->click();
    EXPECT_FALSE(reasons->isHidden());
  }
}

}  // namespace
}  // namespace gazewright::tests
