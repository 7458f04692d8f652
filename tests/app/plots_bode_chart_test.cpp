#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "app/plots/chart_canvas.h"
#include "app/plots/chart_items.h"
#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "tests/app/plots_support.h"

namespace gazewright {
namespace {

using chart_parts::kDegPerRad;
using tests::series_named;
using tests::shown;

TEST(BodeChart, ShowsTheResponsesOfTheAnalysisInDecibelsAndDegreesAgainstHertz) {
  const Chart gain = gain_chart(shown().input), phase = phase_chart(shown().input);
  const FrequencyResponse& response = shown().analysis.response[0];
  ASSERT_GT(response.w_radps.size(), 100U);
  const Series& speed = series_named(gain, "Pan speed loop");
  const Series& turned = series_named(phase, "Pan speed loop");
  ASSERT_EQ(speed.x.size(), qsizetype(response.w_radps.size()));
  EXPECT_DOUBLE_EQ(speed.x[50] * 2 * M_PI, response.w_radps[50]);
  EXPECT_DOUBLE_EQ(speed.y[50], 20 * std::log10(response.speed_gain[50]));
  EXPECT_DOUBLE_EQ(turned.y[50], response.speed_phase_rad[50] * kDegPerRad);
  EXPECT_TRUE(gain.x_log);
  EXPECT_EQ(gain.x, phase.x);
  EXPECT_EQ(gain.x_title, "Frequency / Hz");
  EXPECT_EQ(gain.y_title, "Gain / dB");
  EXPECT_EQ(phase.y_title, "Phase / °");
  EXPECT_FALSE(series_named(gain, "Pan closed").x.isEmpty());
}

TEST(BodeChart, MarksCrossoversMarginsResonancesAndTheEndOfTheControlRate) {
  const Chart gain = gain_chart(shown().input);
  const double crossover_Hz = shown().analysis.value("pan.loop.crossover").value() / (2 * M_PI);
  const auto has = [&](Mark::Kind kind, double x) {
    return std::any_of(gain.marks.begin(), gain.marks.end(), [&](const Mark& m) {
      return m.kind == kind && m.axis == Axis::pan && std::abs(m.x / x - 1) < 1e-9;
    });
  };
  EXPECT_TRUE(has(Mark::Kind::upright, crossover_Hz));
  EXPECT_TRUE(
      has(Mark::Kind::upright, shown().analysis.value("pan.loop.resonance").value() / (2 * M_PI)));
  EXPECT_TRUE(
      has(Mark::Kind::point, shown().analysis.response[0].speed_gain_margin_at_radps / (2 * M_PI)));
  ASSERT_EQ(gain.bands.size(), 2);
  EXPECT_NEAR(gain.bands[0].range.lo, 4000, 1e-6);
  EXPECT_EQ(gain.bands[1].range.lo, 1000) << "the current loops' bandwidth";
  EXPECT_EQ(gain.bands[1].axis, std::nullopt);
  EXPECT_EQ(gain.bands[1].label, "beyond the model");
  EXPECT_EQ(phase_chart(shown().input).bands.size(), 2);
  const QString readings = gain.readings.join('|');
  EXPECT_TRUE(readings.contains("of delay left")) << readings.toStdString();
  const auto resonance = shown().analysis.value("pan.loop.resonance");
  EXPECT_TRUE(readings.contains("Pan resonance at " + format_value(resonance, "rad/s", "Hz")))
      << readings.toStdString();
}

/// In a plot as low as a quarter of a small window, the crossovers have their labels, and the rest
/// is read off the words; a large picture has all.
TEST(BodeChart, KeepsOnlyTheMostImportantLabelsWhereItIsSmall) {
  const auto plot = make_plot(PlotKind::bode);
  plot->setInput(shown().input);
  const ChartPlot& gain = *plot->charts().front();
  const auto drawn = [&](double width_mm, double height_mm) {
    return QString::fromUtf8(gain.svg({.width_mm = width_mm, .height_mm = height_mm}));
  };
  const QString small = drawn(120, 42), large = drawn(200, 120);
  const QString crossover =
      "speed " + format_value(shown().analysis.value("pan.loop.crossover"), "rad/s", "Hz");
  EXPECT_TRUE(small.contains(crossover));
  EXPECT_TRUE(large.contains(crossover));
  for (const char* minor : {">resonance<", "dB left<"}) {
    EXPECT_FALSE(small.contains(minor)) << minor;
    EXPECT_TRUE(large.contains(minor)) << minor;
  }
  EXPECT_TRUE(plot->summary().contains("Pan resonance at"));
  EXPECT_TRUE(plot->summary().contains("gain margin"));
  EXPECT_TRUE(plot->summary().contains("half the control rate"));
}

/// Whatever the size and the letters, the labels of the ticks do not touch.
TEST(BodeChart, HasAsManyTicksAsTheirLabelsFindRoom) {
  for (const auto build : {gain_chart, phase_chart, step_chart}) {
    const Chart chart = build(shown().input);
    for (const int letters_px : {12, 24}) {
      for (const QSize size : {QSize(330, 10), QSize(500, 14), QSize(900, 40)}) {  // lines high
        ChartCanvas canvas;
        QFont font;
        font.setPixelSize(letters_px);
        canvas.setStyle(theme_for(ThemeKind::light), font);
        canvas.setChart(chart);
        canvas.setView(chart.x, chart.y);
        canvas.resize(size.width(), size.height() * letters_px);
        canvas.show();
        canvas.replot();
        const QFontMetricsF metrics(canvas.style().font);
        const auto gap = [](const QCPAxis& axis, qsizetype i) {
          return std::abs(axis.coordToPixel(axis.tickVector()[i]) -
                          axis.coordToPixel(axis.tickVector()[i - 1]));
        };
        const QString what = QStringLiteral("%1, %2 px letters, %3 px wide")
                                 .arg(chart.y_title)
                                 .arg(letters_px)
                                 .arg(size.width());
        for (qsizetype i = 1; i < canvas.yAxis->tickVector().size(); ++i)
          EXPECT_GE(gap(*canvas.yAxis, i), metrics.ascent()) << what.toStdString();
        for (qsizetype i = 1; i < canvas.xAxis->tickVector().size(); ++i) {
          const QVector<QString> labels = canvas.xAxis->tickVectorLabels();
          const double both = metrics.horizontalAdvance(labels[i] + labels[i - 1]) / 2;
          EXPECT_GE(gap(*canvas.xAxis, i), both) << what.toStdString();
        }
      }
    }
  }
}

TEST(BodeChart, GreysWhatLiesBeyondTheModelOfOneAxisAndOfBoth) {
  Rig rig = shown().rig;
  rig.tilt.drive.current_bandwidth_Hz = si_quantity(600.0);
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input = shown().input;
  input.rig = &rig;
  input.now = &analysis;
  const Chart both = gain_chart(input);
  ASSERT_EQ(both.bands.size(), 3);
  EXPECT_EQ(both.bands[1].range, (Range{600, 1000}));
  EXPECT_EQ(both.bands[1].axis, Axis::tilt);
  EXPECT_EQ(both.bands[2].range, (Range{1000, both.x.hi}));
  EXPECT_TRUE(
      summary_of(both).contains("Tilt: the model holds up to " + format_value(600, "Hz", "Hz")));
  input.only = Axis::tilt;
  const Chart tilt = gain_chart(input);
  ASSERT_EQ(tilt.bands.size(), 2);
  EXPECT_EQ(tilt.bands[1].range.lo, 600);
  EXPECT_EQ(tilt.bands[1].axis, std::nullopt);
}

TEST(BodeChart, IsInRadiansASecondOnDemand) {
  const Chart hertz = gain_chart(shown().input), radps = with_radps(hertz);
  EXPECT_EQ(radps.x_title, "Frequency / rad/s");
  EXPECT_DOUBLE_EQ(radps.series[0].x[10], shown().analysis.response[0].w_radps[10]);
  EXPECT_NEAR(radps.x.hi, hertz.x.hi * 2 * M_PI, 1e-9 * radps.x.hi);
  const double crossover = shown().analysis.value("pan.loop.crossover").value();
  const QString text = "speed " + format_value(crossover, "rad/s", "rad/s");
  EXPECT_TRUE(std::ranges::any_of(radps.marks, [&](const Mark& mark) {
    return mark.text == text && std::abs(mark.x / crossover - 1) < 1e-9;
  })) << text.toStdString();
}

TEST(BodeChart, SaysThatAnUnstableLoopHasNoClosedResponse) {
  Rig rig = shown().rig;
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(60);
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.rig = &rig;
  input.now = &analysis;
  EXPECT_TRUE(gain_chart(input).notes.join(' ').contains("unstable"));
}

}  // namespace
}  // namespace gazewright
