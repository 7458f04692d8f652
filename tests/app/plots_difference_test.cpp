#include <gtest/gtest.h>

#include <QProcess>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>

#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"
#include "app/plots/csv.h"
#include "app/plots/difference.h"
#include "app/plots/stacked_plot.h"
#include "core/rig/fields.h"
#include "tests/app/plots_two.h"
#include "tests/support/owl_rig.h"

/// Curves less those of a variant.
namespace gazewright {
namespace {

using tests::two;
using tests::with_ratio;

/// A chart by hand: the present line, and a variant's that has fewer samples and a gap.
Chart by_hand() {
  const double gap = std::nan("");
  Chart chart;
  chart.y_name = QStringLiteral("Angle");
  chart.x_name = QStringLiteral("Time");
  chart.x_unit = QStringLiteral("ms");
  chart.y_unit = QStringLiteral("°");
  chart.x = {0, 8};
  chart.series = {{.name = "Pan, low",
                   .axis = Axis::pan,
                   .line = Line::variant_1,
                   .x = {1, 3, 5, 6},
                   .y = {10, 20, gap, 30}},
                  {.name = "Pan", .axis = Axis::pan, .x = {0, 1, 2, 3, 4, 6, 8}, .y = {}}};
  chart.series[1].y = {100, 100, 100, 100, 100, 100, 100};
  chart.variants = {{QStringLiteral("low"), Line::variant_1}};
  return chart;
}

TEST(Difference, IsLinearBetweenTheVariantsSamplesAndAGapBeyondThem) {
  const Chart chart = difference_of(by_hand(), "low");
  ASSERT_EQ(chart.series.size(), 1);
  const Series& line = chart.series[0];
  EXPECT_EQ(line.line, Line::strong);
  EXPECT_EQ(line.x, by_hand().series[1].x);
  EXPECT_TRUE(std::isnan(line.y[0])) << "before the variant's first sample";
  EXPECT_EQ(line.y[1], 90);  // 100 − 10
  EXPECT_EQ(line.y[2], 85);  // 100 − (10 + 20)/2
  EXPECT_EQ(line.y[3], 80);  // 100 − 20, though its neighbour is a gap
  EXPECT_TRUE(std::isnan(line.y[4])) << "beside the variant's gap";
  EXPECT_EQ(line.y[5], 70);  // 100 − 30
  EXPECT_TRUE(std::isnan(line.y[6])) << "after its last one";
  EXPECT_TRUE(summary_of(chart).contains("3 points have no value"))
      << summary_of(chart).toStdString();
}

TEST(Difference, IsSaidByTitleLineTableAndWords) {
  const Chart chart = difference_of(by_hand(), "low");
  EXPECT_EQ(chart.y_title, "Angle less “low” / °");
  EXPECT_EQ(chart.less, "low");
  EXPECT_TRUE(csv_of(chart).startsWith("Time / ms,Pan less “low” / °\n0,\n1,90\n"))
      << csv_of(chart).toStdString();
  EXPECT_TRUE(summary_of(chart).startsWith("Present design less the variant “low”"));
  const auto zero = std::ranges::find_if(
      chart.marks, [](const Mark& mark) { return mark.kind == Mark::Kind::level && mark.y == 0; });
  EXPECT_NE(zero, chart.marks.end());
  EXPECT_LT(chart.y.lo, 0) << "zero is in view";
  EXPECT_GT(chart.y.hi, 90);
}

TEST(Difference, OfAVariantThatIsNotThereIsTheChartItself) {
  for (const char* name : {"", "another"}) {
    const Chart chart = difference_of(by_hand(), name);
    EXPECT_TRUE(chart.less.isEmpty());
    EXPECT_EQ(chart.series.size(), 2);
  }
}

TEST(Difference, GoesRoundThroughAllVariantsAndNone) {
  const Chart chart = step_chart(two().input());
  EXPECT_EQ(next_variant(chart, {}), "low ratio");
  EXPECT_EQ(next_variant(chart, "low ratio"), "as it is");
  EXPECT_EQ(next_variant(chart, "as it is"), "");
}

using Build = Chart (*)(const PlotInput&);
constexpr Build kCharts[]{step_chart, speed_chart, current_chart,     both_chart,
                          heat_chart, bus_chart,   gravity_chart,     bus_voltage_chart,
                          gain_chart, phase_chart, torque_speed_chart};

/// To a variant that is the present design it is 0 wherever there is a value.
TEST(Difference, ToTheSameDesignIsZeroInEveryChart) {
  for (const Build build : kCharts) {
    const Chart chart = difference_of(build(two().input()), "as it is");
    const std::string what = chart.y_title.toStdString();
    EXPECT_TRUE(chart.message.isEmpty()) << what << ": " << chart.message.toStdString();
    ASSERT_FALSE(chart.series.isEmpty()) << what;
    qsizetype values = 0;
    for (const Series& series : chart.series) {
      for (const double y : series.y) {
        if (!std::isfinite(y)) continue;
        EXPECT_EQ(y, 0) << what;
        ++values;
      }
    }
    EXPECT_GT(values, 50) << what;
  }
}

/// The owl's axes differ from the variant's in pan's ratio only.
TEST(Difference, IsThatOfBothAnalyses) {
  const Chart chart = difference_of(step_chart(two().input()), "low ratio");
  const Series& pan = chart.series[0];
  const Trace &now = two().now.of(Axis::pan).step, &low = two().low.of(Axis::pan).step;
  ASSERT_EQ(now.time_s[200], low.time_s[200]) << "this test takes the same samples of both";
  EXPECT_NEAR(pan.y[200], (now.angle_rad[200] - low.angle_rad[200]) * chart_parts::kDegPerRad,
              1e-12);
  EXPECT_NE(pan.y[200], 0);
  EXPECT_EQ(difference_of(heat_chart(two().input()), "low ratio").y_title,
            "Temperature less “low ratio” / K");
}

TEST(Difference, IsRefusedWhereAVariantHasNoCounterpart) {
  std::array<RatioSweep, 2> sweeps;
  for (const Axis axis : kAxes)
    sweeps[std::size_t(axis)] = sweep_ratio(two().rig, axis, {5, 9, 18}, {.settle = false});
  const Rig low = with_ratio(9);
  const std::vector<VariantCurves> variants{{QStringLiteral("low ratio"), &two().low, &low}};
  PlotInput input = two().input();
  input.sweeps = &sweeps;
  input.variants = variants;
  for (const PlotKind kind : {PlotKind::time_ratio, PlotKind::profiles}) {
    EXPECT_FALSE(chart_of(kind, input).no_difference.isEmpty());
    EXPECT_TRUE(difference_of(chart_of(kind, input), "low ratio").less.isEmpty());
  }
  for (const PlotKind kind : plot_kinds()) {
    const auto plot = make_plot(kind);
    plot->setInput(input);
    const bool has_lines = is_chart(kind) && !chart_of(kind, input).variants.isEmpty() &&
                           chart_of(kind, input).no_difference.isEmpty();
    EXPECT_EQ(plot->whyNoDifference().isEmpty(), has_lines) << plot_key(kind).toStdString();
  }
}

TEST(Difference, IsWhatScreenTableAndPicturesShow) {
  const auto plot = make_plot(PlotKind::bode);
  plot->resize(520, 420);
  plot->setInput(two().input());
  const Range before = plot->charts()[0]->canvas()->viewY();
  PlotOptions options;
  options.less_variant = QStringLiteral("low ratio");
  plot->setOptions(options);
  for (const ChartPlot* chart : plot->charts()) {
    EXPECT_EQ(chart->canvas()->chart().less, "low ratio");
    EXPECT_EQ(chart->canvas()->viewY(), chart->canvas()->chart().y) << "the scale is its own";
  }
  EXPECT_EQ(plot->shownLess(), "low ratio");
  EXPECT_NE(plot->charts()[0]->canvas()->viewY(), before);
  EXPECT_EQ(plot->accessibleDescription(), plot->summary());
  EXPECT_TRUE(plot->csv().contains("less “low ratio” / dB"));
  EXPECT_TRUE(plot->csv().contains("less “low ratio” / °"));
  EXPECT_TRUE(plot->visibleCsv().contains("less “low ratio” / dB"));
  PictureOptions picture{.width_mm = 140, .height_mm = 100};
  const QString svg = QString::fromUtf8(plot->svg(picture));
  EXPECT_TRUE(svg.contains("present design less the variant “low ratio”"));
  EXPECT_TRUE(svg.contains("Gain less “low ratio” / dB"));
  const QTemporaryDir folder;
  const QString pdf = folder.filePath("a.pdf");
  ASSERT_FALSE(plot->exportTo(pdf.toStdString(), picture));
  QProcess reader;
  reader.start("pdftotext", {"-layout", pdf, "-"});
  ASSERT_TRUE(reader.waitForFinished()) << "this test needs the package poppler-utils";
  EXPECT_TRUE(QString::fromUtf8(reader.readAllStandardOutput())
                  .contains("present design less the variant “low ratio”"));
  PlotInput without = two().input();
  without.variants = {};
  plot->setInput(without);
  EXPECT_TRUE(plot->shownLess().isEmpty()) << "the variant went: the curves themselves";
  EXPECT_EQ(plot->charts()[0]->canvas()->viewY(), gain_chart(without).y);
}

}  // namespace
}  // namespace gazewright
