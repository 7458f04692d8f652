#include <gtest/gtest.h>

#include "app/plots/plot_view.h"
#include "tests/support/owl_rig.h"

/// The bars of the pointing budget.
namespace gazewright {
namespace {

struct Shown {
  Rig rig = tests::owl();
  Analysis analysis;
  std::unique_ptr<PlotView> plot = make_plot(PlotKind::pointing);

  explicit Shown(void (*change)(Rig&) = nullptr, std::optional<Axis> only = {}) {
    if (change != nullptr) change(rig);
    analysis = analyse(rig, {.remedies = false});
    plot->setInput({.rig = &rig, .now = &analysis, .only = only});
  }
};

TEST(PointingPlot, SaysTheLargestErrorFirstWithNumberAndPercent) {
  const QString text = Shown({}, Axis::pan).plot->summary();
  const qsizetype gap = text.indexOf("Backlash: "), encoder = text.indexOf("Encoder: ");
  EXPECT_GT(gap, 0) << text.toStdString();
  EXPECT_GT(encoder, gap);
  // 4' / √3 = 0.0385° and (0.5°/√2 with 0.011°/√3)/18 = 0.0196°: 79 and 21 %, by hand.
  EXPECT_TRUE(text.contains("Backlash: 0.0385°, 79")) << text.toStdString();
  EXPECT_FALSE(text.contains("Tilt"));
}

TEST(PointingPlot, SaysWhatIsMissing) {
  const Shown shown([](Rig& rig) {
    for (const Axis axis : kAxes) rig.axis(axis).encoder.error_rad = {};
  });
  EXPECT_TRUE(shown.plot->summary().contains("encoder error"))
      << shown.plot->summary().toStdString();
}

TEST(PointingPlot, WritesARowForEachError) {
  const QStringList rows = Shown().plot->csv().split('\n', Qt::SkipEmptyParts);
  EXPECT_EQ(rows.size(), 1 + 2 * 3);
  EXPECT_TRUE(rows[1].startsWith("Pan,\"Backlash\",0.00116")) << rows[1].toStdString();
}

}  // namespace
}  // namespace gazewright
