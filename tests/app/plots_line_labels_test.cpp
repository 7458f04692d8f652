#include <gtest/gtest.h>

#include <QTest>
#include <cmath>
#include <random>

#include "app/plots/chart_plot.h"
#include "app/plots/line_labels.h"
#include "tests/app/plots_support.h"

/// Names beside lines instead of a legend, where there are few.
namespace gazewright {
namespace {

using tests::shown;

const QRectF kArea(40, 20, 400, 200);

/// x from 0 to 1 over the width, y from 0 to 1 over the height.
QPointF pixel(double x, double y) {
  return {kArea.left() + x * kArea.width(), kArea.bottom() - y * kArea.height()};
}

Series line(const char* name, Axis axis, const std::function<double(double)>& y,
            Line drawn = Line::strong) {
  Series series{.name = QString::fromLatin1(name), .axis = axis, .line = drawn};
  for (int i = 0; i <= 200; ++i) {
    series.x.append(i / 200.0);
    series.y.append(y(i / 200.0));
  }
  return series;
}

QVector<LineLabel> labels_of(const Chart& chart) {
  QFont font;
  font.setPixelSize(12);
  LabelPlaces places(kArea);
  return line_labels(chart, QFontMetricsF(font), pixel, kArea, places);
}

TEST(LineLabels, StandAtTheRightEndsOfTheirLines) {
  Chart chart;
  chart.series = {line("Pan", Axis::pan, [](double) { return 0.8; }),
                  line("Tilt", Axis::tilt, [](double) { return 0.3; })};
  const QVector<LineLabel> labels = labels_of(chart);
  ASSERT_EQ(labels.size(), 2);
  for (const LineLabel& label : labels) {
    EXPECT_NEAR(label.box.right(), kArea.right() - 3, 1e-9);
    EXPECT_NEAR(label.box.bottom(), pixel(1, label.series == 0 ? 0.8 : 0.3).y() - 2, 1e-9);
  }
}

TEST(LineLabels, GoToWhereLinesThatEndTogetherCanBeToldApart) {
  Chart chart;
  chart.series = {line("Pan", Axis::pan, [](double x) { return x < 0.6 ? 0.8 : 0.1; }),
                  line("Tilt", Axis::tilt, [](double x) { return x < 0.6 ? 0.4 : 0.1; })};
  const QVector<LineLabel> labels = labels_of(chart);
  ASSERT_EQ(labels.size(), 2);
  for (const LineLabel& label : labels)
    EXPECT_LT(label.box.left(), pixel(0.6, 0).x()) << "over the part where they differ";
  EXPECT_LT(labels[0].box.bottom(), labels[1].box.bottom()) << "the higher line's is higher";
}

TEST(LineLabels, AreNoneWhereLinesAreManyOrPathsAndNotOfGhosts) {
  Chart chart;
  chart.series.fill(line("Pan", Axis::pan, [](double) { return 0.5; }), kTooManyToName);
  EXPECT_TRUE(labels_of(chart).isEmpty());
  chart.series = {line("Pan", Axis::pan, [](double) { return 0.5; })};
  chart.series[0].time_s = chart.series[0].x;
  EXPECT_TRUE(labels_of(chart).isEmpty());
  chart.series = {line(
                      "before", Axis::pan, [](double) { return 0.7; }, Line::ghost),
                  line("Pan", Axis::pan, [](double) { return 0.4; })};
  const QVector<LineLabel> labels = labels_of(chart);
  ASSERT_EQ(labels.size(), 1);
  EXPECT_EQ(labels[0].series, 1);
}

TEST(LineLabels, SurviveGapsAndLinesOutOfView) {
  Chart chart;
  chart.series = {line("gaps", Axis::pan, [](double x) { return x < 0.5 ? 0.5 : std::nan(""); }),
                  line("above", Axis::tilt, [](double) { return 7.0; }),
                  {.name = QStringLiteral("empty")}};
  const QVector<LineLabel> labels = labels_of(chart);
  ASSERT_EQ(labels.size(), 1);
  EXPECT_LE(labels[0].box.right(), pixel(0.5, 0).x());
}

/// Seeded: waves of any kind. No name over another, out of the frame, on a line, or nearer to
/// another line than to its own.
TEST(LineLabels, LieOnNothing) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> part(0, 1);
  int placed = 0;
  for (int round = 0; round < 200; ++round) {
    Chart chart;
    for (int i = 0; i < 1 + round % 4; ++i) {
      const double level = part(random), size = 0.4 * part(random), turns = 12 * part(random);
      chart.series.append(line("a line", i % 2 ? Axis::tilt : Axis::pan,
                               [=](double x) { return level + size * std::sin(turns * x); }));
    }
    const QVector<LineLabel> labels = labels_of(chart);
    placed += int(labels.size());
    for (const LineLabel& label : labels) {
      EXPECT_TRUE(kArea.contains(label.box));
      for (const LineLabel& other : labels)
        EXPECT_TRUE(other.series == label.series || !other.box.intersects(label.box));
      for (const Series& series : chart.series) {
        for (qsizetype i = 0; i < series.x.size(); ++i)
          EXPECT_FALSE(label.box.contains(pixel(series.x[i], series.y[i]))) << round;
      }
    }
  }
  EXPECT_GT(placed, 300) << "of 500 lines";
}

struct StepPlot {
  std::unique_ptr<PlotView> plot = make_plot(PlotKind::step);
  ChartCanvas& canvas() { return *plot->charts().front()->canvas(); }
  StepPlot() {
    plot->resize(560, 360);
    plot->setInput(shown().input);
    plot->show();
    canvas().replot();
  }
};

TEST(LineLabels, TakeThePlaceOfTheLegendAndSwitchTheirLine) {
  StepPlot step;
  ChartCanvas& canvas = step.canvas();
  const QVector<LineLabel> labels = canvas.marks().lineLabels();
  ASSERT_EQ(labels.size(), 2);
  for (const LegendEntry& entry : canvas.chart().legend)
    EXPECT_TRUE(is_said(entry, canvas.chart(), labels)) << entry.text.toStdString();
  for (int px = 0; px < canvas.width(); px += 4)
    EXPECT_EQ(canvas.legendAt(QPointF(px, 8)), -1) << "nothing is said twice";
  EXPECT_EQ(canvas.legendAt(labels[1].box.center()), 1);
  QTest::mouseClick(&canvas, Qt::LeftButton, {}, labels[1].box.center().toPoint());
  EXPECT_EQ(step.plot->options().hidden, QStringList("Tilt"));
  ASSERT_EQ(canvas.chart().series.size(), 1);
  int entry = -1;
  for (int px = 0; px < canvas.width(); px += 4)
    entry = std::max(entry, canvas.legendAt(QPointF(px, 8)));
  EXPECT_EQ(entry, 1) << "what is switched off stands in the legend, to be switched on";
}

}  // namespace
}  // namespace gazewright
