#include <gtest/gtest.h>

#include <QPainter>

#include "app/window/drive_line.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

TEST(RatioScale, PositionAndRatioAreInverse) {
  RatioScale scale(Axis::pan);
  scale.resize(240, 40);
  for (double ratio : {1.0, 3.0, 18.0, 77.0, 200.0}) {
    EXPECT_NEAR(scale.ratioAt(scale.xOf(ratio)), ratio, 1e-9 * ratio);
  }
  EXPECT_LT(scale.xOf(10), scale.xOf(20));
}

TEST(RatioScale, WholeNumbersAttractAndOthersKeepThreeDigits) {
  EXPECT_DOUBLE_EQ(tidy_ratio(18.1), 18);
  EXPECT_DOUBLE_EQ(tidy_ratio(18.4231), 18.4);
  EXPECT_DOUBLE_EQ(tidy_ratio(1.5037), 1.5);
  EXPECT_DOUBLE_EQ(tidy_ratio(123.4), 123);
}

TEST(RatioScale, DraggingTheHandleMovesTheStepPlotAndIsOneUndoStep) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  const Rig before = owl.rig();
  RatioScale* scale = owl.window.driveLine(Axis::pan).ratioScale();
  PlotView* step = owl.window.plots().plot(PlotKind::step);
  ASSERT_NE(step, nullptr);
  const QString curves = step->csv();
  const QImage picture = step->image(1);

  const QPoint from = scale->handlePoint().toPoint();
  QTest::mousePress(scale, Qt::LeftButton, {}, from);
  QString during;
  for (int dx = 4; dx <= 40; dx += 4) {
    QTest::mouseMove(scale, from + QPoint(dx, 0));
    ASSERT_TRUE(owl.analysed());
    during = step->csv();
  }
  EXPECT_NE(during, curves) << "the curve moves while dragging";
  QTest::mouseRelease(scale, Qt::LeftButton, {}, from + QPoint(40, 0));
  ASSERT_TRUE(owl.settle());
  EXPECT_GT(*owl.rig().pan.gearbox.ratio.si, 18);
  EXPECT_EQ(*owl.rig().tilt.gearbox.ratio.si, 11);
  EXPECT_NE(step->csv(), curves);
  EXPECT_NE(step->image(1), picture);

  EXPECT_EQ(owl.window.document().history().count(), 1);
  EXPECT_TRUE(owl.window.document().history().undoText().contains("ratio"));
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(step->csv(), curves);
}

TEST(RatioScale, MovesByKeysWithoutDragging) {
  OwlWindow owl;
  ASSERT_TRUE(owl.sweep());
  RatioScale* scale = owl.window.driveLine(Axis::tilt).ratioScale();
  scale->setFocus();
  QTest::keyClick(scale, Qt::Key_Right);
  const double up = *owl.rig().tilt.gearbox.ratio.si;
  EXPECT_GT(up, 11);
  QTest::keyClick(scale, Qt::Key_Left);
  QTest::keyClick(scale, Qt::Key_Left);
  EXPECT_LT(*owl.rig().tilt.gearbox.ratio.si, up);
  QTest::keyClick(scale, Qt::Key_PageUp);
  EXPECT_GT(*owl.rig().tilt.gearbox.ratio.si, 12);
  QTest::keyClick(scale, Qt::Key_Home);
  const auto best = owl.window.recompute().sweep(Axis::tilt).best_time_ratio;
  ASSERT_TRUE(best);
  EXPECT_DOUBLE_EQ(*owl.rig().tilt.gearbox.ratio.si, tidy_ratio(*best));
}

TEST(RatioScale, EveryKeyStepMovesWhereverItStarts) {
  RatioScale scale(Axis::pan);
  scale.resize(240, 40);
  for (double start = 1.2; start < 190; start *= 1.07) {
    for (const auto key : {Qt::Key_Right, Qt::Key_Left}) {
      for (const auto with : {Qt::NoModifier, Qt::ShiftModifier}) {
        scale.setRatio(tidy_ratio(start));
        const double from = *scale.ratio();
        QTest::keyClick(&scale, key, with);
        EXPECT_TRUE(key == Qt::Key_Right ? *scale.ratio() > from : *scale.ratio() < from)
            << from << " -> " << *scale.ratio();
      }
    }
  }
}

TEST(RatioScale, TheRatioIsTypedInTheCardToo) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.ratio", "14.5");
  EXPECT_DOUBLE_EQ(*owl.window.driveLine(Axis::pan).ratioScale()->ratio(), 14.5);
}

}  // namespace
}  // namespace gazewright
