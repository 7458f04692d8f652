#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

Rig warm_owl() {
  Rig rig = tests::owl();
  rig.pan.motor.winding_to_housing_KpW = si_quantity(1.2);
  rig.pan.motor.mount_material = "petg";
  return rig;
}
PlotInput input_of(const Analysis& analysis) {
  PlotInput input;
  input.now = &analysis;
  return input;
}

TEST(HeatChart, DrawsWindingAndBracketInDegreesWithTheirLimits) {
  const Analysis analysis = analyse(warm_owl(), {.remedies = false});
  const Chart chart = heat_chart(input_of(analysis));
  const HeatCurve& curve = analysis.heat[0];
  ASSERT_EQ(chart.series.size(), 2);  // the tilt motor has no thermal data
  EXPECT_EQ(chart.series[0].name, "Pan winding");
  EXPECT_EQ(chart.series[1].name, "Pan bracket");
  EXPECT_DOUBLE_EQ(chart.series[0].y.front(), 30);
  EXPECT_DOUBLE_EQ(chart.series[0].y.back(), curve.winding_K.back() - 273.15);
  EXPECT_DOUBLE_EQ(chart.series[1].x.back(), curve.time_s.back() / 60);
  EXPECT_NEAR(*std::ranges::max_element(curve.winding_K),
              *analysis.value("pan.heat.winding_temperature"), 1);
  for (const Mark& mark : chart.marks) {
    if (mark.text.contains("gives way")) {
      EXPECT_NEAR(mark.y, 71, 1e-9);
    }
  }
  EXPECT_TRUE(chart.notes.join(' ').contains("Tilt: needs"))
      << chart.notes.join('\n').toStdString();
  EXPECT_TRUE(summary_of(chart).contains("Pan winding gets to"));
}

TEST(HeatChart, SaysThatItRunsAway) {
  Rig rig = warm_owl();
  rig.pan.motor.thermal_resistance_KpW = si_quantity(2000);
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Chart chart = heat_chart(input_of(analysis));
  ASSERT_TRUE(analysis.heat[0].runs_away);
  EXPECT_TRUE(chart.notes.join(' ').contains("Pan runs away"));
  for (const Series& series : chart.series)
    for (const double y : series.y) EXPECT_TRUE(std::isfinite(y));
}

TEST(HeatChart, WhileDraggingShowsWhatWasBefore) {
  const Analysis before = analyse(warm_owl(), {.remedies = false});
  const Analysis quick = analyse(warm_owl(), {.quick = true});
  PlotInput input = input_of(quick);
  input.ghost = &before;
  const Chart chart = heat_chart(input);
  ASSERT_EQ(chart.series.size(), 1);
  EXPECT_EQ(chart.series[0].line, Line::ghost);
}

}  // namespace
}  // namespace gazewright
