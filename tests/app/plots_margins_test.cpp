#include <gtest/gtest.h>

#include <QTest>
#include <algorithm>

#include "app/plots/picture_plot.h"
#include "tests/support/owl_rig.h"

/// The plot of margins shows the findings of bearings, joints, arm and stand, the worst first.
namespace gazewright {
namespace {

Rig owl_on_bearings() {
  Rig rig = tests::owl();
  rig.pan.bearing.dynamic_rating_N = si_quantity(2000);
  rig.pan.bearing.static_rating_N = si_quantity(120);
  rig.pan.bearing.spacing_m = si_quantity(0.03);
  rig.pan.bearing.overhang_m = si_quantity(0.045);
  return rig;
}

TEST(MarginsPlot, SaysWhatItWaitsFor) {
  const auto plot = make_plot(PlotKind::margins);
  EXPECT_FALSE(plot->summary().isEmpty());
  const Rig rig = tests::owl();
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.rig = &rig;
  input.now = &analysis;
  plot->setInput(input);
  EXPECT_EQ(plot->csv().count('\n'),
            1 + std::ranges::count_if(analysis.findings, [](const Finding& f) {
              return is_about_loads(f.id) && (f.margin || f.verdict != Verdict::holds);
            }));
}

TEST(MarginsPlot, ShowsEveryFindingOfItsSubjectsWithItsMargin) {
  const Rig rig = owl_on_bearings();
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.rig = &rig;
  input.now = &analysis;
  const auto plot = make_plot(PlotKind::margins);
  plot->setInput(input);
  int shown = 0;
  for (const Finding& finding : analysis.findings) {
    const bool is_there = plot->csv().contains(QString::fromStdString(finding.what));
    if (finding.margin && is_about_loads(finding.id)) {
      EXPECT_TRUE(is_there) << finding.id;
      ++shown;
    }
    if (!is_about_loads(finding.id)) {
      EXPECT_FALSE(is_there) << finding.id;
    }
  }
  EXPECT_GE(shown, 3);
  const QString text = plot->csv();
  EXPECT_LT(text.indexOf("Static safety of the bearings at the stop's blow"),
            text.indexOf("The bearings last the wanted life"))
      << "what fails comes first";
  EXPECT_GT(plot->image().size().width(), 400);
}

TEST(MarginsPlot, LeavesOutTheAxisThatIsNotShown) {
  const Rig rig = owl_on_bearings();
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.rig = &rig;
  input.now = &analysis;
  input.only = Axis::tilt;
  const auto plot = make_plot(PlotKind::margins);
  plot->setInput(input);
  EXPECT_FALSE(plot->csv().contains("last the wanted life"));
}

}  // namespace
}  // namespace gazewright
