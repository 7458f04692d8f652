#include <gtest/gtest.h>

#include "app/plots/charts.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

PlotInput input_of(const Analysis& analysis) {
  PlotInput input;
  input.now = &analysis;
  return input;
}

TEST(ProfileChart, ShowsFiveLinesAnAxisInDegreesWithTheBandAndTheBest) {
  const Analysis analysis = analyse(tests::owl(), {.remedies = false});
  PlotInput input = input_of(analysis);
  input.only = Axis::pan;
  const Chart chart = profile_chart(input);
  ASSERT_EQ(chart.series.size(), 5);
  const AxisProfiles& profiles = analysis.profiles[0];
  for (qsizetype i = 0; i < 5; ++i) {
    const ProfileRun& run = profiles.runs[static_cast<std::size_t>(i)];
    EXPECT_EQ(chart.series[i].name, "Pan " + profile_word(run.kind));
    EXPECT_DOUBLE_EQ(chart.series[i].y[300], run.angle_rad[300] * chart_parts::kDegPerRad);
    for (qsizetype j = 0; j < i; ++j) EXPECT_NE(chart.series[i].line, chart.series[j].line);
  }
  ASSERT_EQ(chart.bands.size(), 1);
  const AxisCurves& curves = analysis.of(Axis::pan);
  EXPECT_DOUBLE_EQ(chart.bands[0].range.lo,
                   (curves.move_rad - curves.band_rad) * chart_parts::kDegPerRad);
  ASSERT_EQ(chart.marks.size(), 1);
  EXPECT_DOUBLE_EQ(chart.marks[0].x, *profiles.run(*profiles.best)->figures.settle_time_s * 1000);
  EXPECT_TRUE(summary_of(chart).contains(QString::fromStdString(profiles.advice)));
}

TEST(ProfileChart, ShowsWhatWasBeforeWhileTheyAreLeftOut) {
  const Analysis before = analyse(tests::owl(), {.remedies = false});
  const Analysis quick = analyse(tests::owl(), {.quick = true});
  PlotInput input = input_of(quick);
  EXPECT_TRUE(profile_chart(input).message.contains("when nothing is dragged"));
  input.ghost = &before;
  const Chart chart = profile_chart(input);
  EXPECT_TRUE(chart.message.isEmpty());
  ASSERT_EQ(chart.series.size(), 10);
  for (const Series& series : chart.series) EXPECT_EQ(series.line, Line::ghost);
}

TEST(ProfileChart, SaysWhatIsMissing) {
  Rig rig = tests::owl();
  rig.pan.motor.rotor_inertia_kgm2 = {};
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Chart chart = profile_chart(input_of(analysis));
  EXPECT_EQ(chart.series.size(), 5);  // of tilt
  ASSERT_FALSE(chart.notes.isEmpty());
  EXPECT_TRUE(chart.notes[0].contains("rotor inertia")) << chart.notes[0].toStdString();
}

}  // namespace
}  // namespace gazewright
