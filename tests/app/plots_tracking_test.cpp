#include <gtest/gtest.h>

#include <cmath>

#include "app/plots/charts.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

struct Followed {
  Rig rig = tests::rig_of(std::string(tests::kOwl) +
                          "detectors: [{name: slow, delay: 120 ms}, {name: fast, delay: 20 ms}]\n");
  Analysis analysis = analyse(rig);
  PlotInput input() const {
    PlotInput in;
    in.rig = &rig;
    in.now = &analysis;
    return in;
  }
};
const Followed& followed() {
  static const Followed all;
  return all;
}

TEST(TrackingChart, DrawsEachDetectorsErrorInPixelsAndLeavesOutAnAxisThatRests) {
  const Chart chart = tracking_chart(followed().input());
  const TrackingRuns& runs = followed().analysis.tracking;
  ASSERT_EQ(chart.series.size(), 2);  // the walk at the camera's height leaves tilt alone
  for (const qsizetype i : {0, 1}) {
    const auto at = static_cast<std::size_t>(i);
    EXPECT_EQ(chart.series[i].name.toStdString(), runs.detectors[at].name + ", Pan");
    EXPECT_EQ(chart.series[i].y.back(), runs.detectors[at].place_px[0].back());
  }
  EXPECT_NE(chart.series[0].line, chart.series[1].line);
  EXPECT_TRUE(chart.bands.isEmpty());  // all of it is inside the inner third
}

TEST(TrackingChart, DrawsAllFiveDetectorsThatARigMayHaveEachInALineOfItsOwn) {
  const Rig rig = tests::rig_of(
      std::string(tests::kOwl) +
      "detectors: [{name: a, delay: 120 ms}, {name: b, delay: 90 ms}, {name: c, delay: 60 ms}, "
      "{name: d, delay: 40 ms}, {name: e, delay: 20 ms}]\n");
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.rig = &rig;
  input.now = &analysis;
  const Chart chart = tracking_chart(input);
  ASSERT_EQ(chart.series.size(), 5);
  for (qsizetype i = 0; i < 5; ++i)
    for (qsizetype k = 0; k < i; ++k) EXPECT_NE(chart.series[i].line, chart.series[k].line);
  EXPECT_TRUE(chart.notes.isEmpty());
}

TEST(TrackingChart, ShowsTheInnerThirdWhereTheTargetLeavesIt) {
  const Rig rig =
      tests::rig_of(std::string(tests::kOwl) + "tracking: {target: jump, jump: 14 deg}\n");
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.now = &analysis;
  const Chart chart = tracking_chart(input);
  ASSERT_EQ(chart.bands.size(), 2);
  EXPECT_DOUBLE_EQ(chart.bands[0].range.hi, 1280.0 / 6);
  EXPECT_DOUBLE_EQ(chart.bands[1].range.lo, -720.0 / 6);
}

TEST(TrackingChart, SaysWhatIsMissing) {
  Rig rig = followed().rig;
  rig.camera.rows = {};
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.now = &analysis;
  EXPECT_EQ(tracking_chart(input).message.toStdString(), "needs camera rows");
}

TEST(EyeCharts, LayTheRigsMovesOverTheEyes) {
  const Chart time = eye_time_chart(followed().input());
  // Two fits of the eye, then for each axis the best and the simulated moves.
  ASSERT_EQ(time.series.size(), 6);
  EXPECT_FALSE(time.series[0].axis);
  // 2.2 ms/° · 10° + 21 ms: Carpenter 1988.
  EXPECT_NEAR(time.series[0].y[9], 43, 1e-9);
  EXPECT_DOUBLE_EQ(time.series[3].y[5],
                   followed().analysis.value("pan.step.settle_time").value() * 1000);
  const Chart speed = eye_speed_chart(followed().input());
  // 551·(1 − exp(−20/14)) °/s: Baloh et al. 1975.
  EXPECT_NEAR(speed.series[0].y[19], 418.95, 0.01);
  EXPECT_NEAR(speed.series[1].y[0], 100, 1e-9);  // smooth pursuit ends there
}

TEST(EyeCharts, KeepTheEyesCurvesWhileARigsMovesAreLeftOut) {
  const Analysis quick = analyse(followed().rig, {.remedies = false});
  PlotInput input;
  input.now = &quick;
  const Chart chart = eye_time_chart(input);
  EXPECT_EQ(chart.series.size(), 2);
  EXPECT_TRUE(chart.notes.contains("Pan follows when the hand rests"));
}

}  // namespace
}  // namespace gazewright
