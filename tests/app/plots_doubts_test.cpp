#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plots/chart_canvas.h"
#include "app/plots/charts.h"
#include "app/plots/doubt_text.h"
#include "core/rig/fields.h"
#include "tests/app/plots_support.h"

/// The shading around the step, and doubts in words.
namespace gazewright {
namespace {

using tests::shown;

/// Bands of 2° on pan and 0.5° on tilt around the owl's step.
const Doubts& banded() {
  static const Doubts doubts = [] {
    Doubts made;
    for (const Axis axis : kAxes) {
      const Trace& step = shown().analysis.of(axis).step;
      const double half_rad = (axis == Axis::pan ? 2 : 0.5) / chart_parts::kDegPerRad;
      StepBand& band = made.step[std::size_t(axis)];
      band = {step.time_s, step.angle_rad, step.angle_rad};
      for (double& low : band.low_rad) low -= half_rad;
      for (double& high : band.high_rad) high += half_rad;
    }
    return made;
  }();
  return doubts;
}

PlotInput banded_input() {
  PlotInput input = shown().input;
  input.doubts = &banded();
  input.doubts_come = true;
  return input;
}

QImage painted(const Chart& chart) {
  QImage image(480, 300, QImage::Format_RGB32);
  image.fill(Qt::white);
  QPainter painter(&image);
  paint_chart(painter, image.rect(), chart, theme_for(ThemeKind::print), QFont());
  return image;
}

TEST(DoubtBand, LiesAroundEachStepInDegreesAgainstMilliseconds) {
  const Chart chart = step_chart(banded_input());
  ASSERT_EQ(chart.ribbons.size(), 2);
  const Trace& step = shown().analysis.of(Axis::pan).step;
  const Ribbon& pan = chart.ribbons.front();
  ASSERT_EQ(pan.x.size(), qsizetype(step.time_s.size()));
  for (const qsizetype i : {qsizetype(0), qsizetype(300), pan.x.size() - 1}) {
    const double angle_deg = step.angle_rad[std::size_t(i)] * chart_parts::kDegPerRad;
    EXPECT_DOUBLE_EQ(pan.x[i], step.time_s[std::size_t(i)] * 1000);
    EXPECT_NEAR(pan.low[i], angle_deg - 2, 1e-12);  // rounding of a sum of degrees below 100
    EXPECT_NEAR(pan.high[i], angle_deg + 2, 1e-12);
  }
  EXPECT_TRUE(chart.readings.join('|').contains("shaded: ±2 standard uncertainties, about 95 %"));
}

TEST(DoubtBand, IsOnlyThereWithDoubtsAndItsSwitchWhereTheyMayCome) {
  PlotInput input = shown().input;
  EXPECT_EQ(step_chart(input).legend.size(), 2);
  input.doubts_come = true;
  const Chart waiting = step_chart(input);
  EXPECT_TRUE(waiting.ribbons.isEmpty());
  ASSERT_EQ(waiting.legend.size(), 3);
  EXPECT_EQ(waiting.legend.back().text, doubt_band_text());
  EXPECT_FALSE(waiting.readings.join('|').contains("shaded"));
}

TEST(DoubtBand, OfAnAxisThatIsNotShownOrHasNoneIsLeftOut) {
  PlotInput input = banded_input();
  input.only = Axis::tilt;
  const Chart tilt = step_chart(input);
  ASSERT_EQ(tilt.ribbons.size(), 1);
  EXPECT_EQ(tilt.ribbons.front().axis, Axis::tilt);
  Doubts half = banded();
  half.step[0] = {};
  input.only.reset();
  input.doubts = &half;
  ASSERT_EQ(step_chart(input).ribbons.size(), 1);
  EXPECT_EQ(step_chart(input).ribbons.front().axis, Axis::tilt);
}

TEST(DoubtBand, IsSwitchedByItsEntryAndGoesWithItsAxis) {
  const Chart chart = step_chart(banded_input());
  const Chart without = without_hidden(chart, {doubt_band_text()});
  EXPECT_TRUE(without.ribbons.isEmpty());
  EXPECT_EQ(without.series.size(), chart.series.size());
  EXPECT_TRUE(without.legend.back().hidden);
  const Chart tilt = without_hidden(chart, {"Pan"});
  ASSERT_EQ(tilt.ribbons.size(), 1);
  EXPECT_EQ(tilt.ribbons.front().axis, Axis::tilt);
}

TEST(DoubtBand, IsInTheDataFileWithTheCurveItSurrounds) {
  const Chart chart = step_chart(banded_input());
  const QStringList lines = csv_of(chart).split('\n');
  const QStringList header = lines.front().split(',');
  const qsizetype angle = header.indexOf("Pan / °"), low = header.indexOf("Pan at least / °"),
                  high = header.indexOf("Pan at most / °");
  ASSERT_GE(angle, 0) << lines.front().toStdString();
  ASSERT_GE(low, 0) << lines.front().toStdString();
  ASSERT_GE(high, 0);
  const QStringList row = lines[200].split(',');
  EXPECT_NEAR(row[low].toDouble(), row[angle].toDouble() - 2, 1e-9);
  EXPECT_NEAR(row[high].toDouble(), row[angle].toDouble() + 2, 1e-9);
  const Chart part = part_of(chart, {10, 20});
  ASSERT_FALSE(part.ribbons.front().x.isEmpty());
  EXPECT_GE(part.ribbons.front().x.front(), 10);
  EXPECT_LE(part.ribbons.front().x.back(), 20);
  EXPECT_EQ(part.ribbons.front().low.size(), part.ribbons.front().x.size());
}

TEST(DoubtBand, IsPaintedUnderTheCurveAndItsGapsAreNot) {
  Chart chart = step_chart(banded_input());
  chart.ribbons.removeLast();
  for (Ribbon& ribbon : chart.ribbons) {
    std::fill(ribbon.low.begin(), ribbon.low.end(), chart.y.lo);
    std::fill(ribbon.high.begin(), ribbon.high.end(), chart.y.hi);
  }
  Chart bare = chart;
  bare.ribbons.clear();
  const auto changed = [plain = painted(bare)](const Chart& with) {
    const QImage image = painted(with);
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) count += image.pixel(x, y) != plain.pixel(x, y);
    return count;
  };
  const int whole = changed(chart);
  EXPECT_GT(whole, 480 * 300 / 3) << "most of the plot's ground is tinted";
  Ribbon& ribbon = chart.ribbons.front();
  const double middle = (chart.x.lo + chart.x.hi) / 2;
  for (qsizetype i = 0; i < ribbon.x.size(); ++i)
    if (ribbon.x[i] > middle) ribbon.low[i] = std::nan("");
  const int half = changed(chart);
  EXPECT_GT(half, 0.4 * whole);
  EXPECT_LT(half, 0.6 * whole);
}

Unknown guess(double value, double spread, const char* si_unit, const char* unit) {
  Unknown made;
  made.value_si = value;
  made.spread_si = spread;
  made.si_unit = si_unit;
  made.unit = unit;
  return made;
}

TEST(DoubtWords, TellASpreadInPercentsOrInTheUnitWherePercentsMeanNothing) {
  const auto words = [](const Unknown& unknown) {
    return doubted_value(unknown).replace(QChar(0x202F), ' ');
  };
  EXPECT_EQ(words(guess(118e-7, 11.8e-7, "kg.m2", "g.cm2")), "118 g·cm² ±10 %");
  EXPECT_EQ(words(guess(303.15, 2, "K", "degC")), "30 °C ±2 K");
  EXPECT_EQ(words(guess(0, 0.002, "m", "mm")), "0 mm ±2 mm");
}

TEST(DoubtWords, SayThatASpreadIsTheUsualOne) {
  Unknown unknown = guess(1, 0.1, "kg", "kg");
  EXPECT_EQ(doubted_source("estimate", unknown), "estimate");
  unknown.is_stated = false;
  EXPECT_EQ(doubted_source("estimate", unknown), "estimate; usual spread");
  EXPECT_EQ(share_text(0.342), "34 %");
  EXPECT_EQ(share_text(0.001), "< 1 %");
}

TEST(DoubtWords, LeaveAFigureAsideThatIsOffByNextToNothing) {
  DoubtedFigure figure{"mass.total", 2, 0.0019, true, {}};
  EXPECT_FALSE(matters(figure));
  figure.uncertainty_si = 0.002;
  EXPECT_TRUE(matters(figure));
  figure = {"mass.total", 2, 0, false, {}};
  EXPECT_TRUE(matters(figure));
}

TEST(DoubtWords, GiveFiguresTheirUncertaintyInTheirUnit) {
  const FigureInfo& settle = *shown().analysis.figure("pan.step.settle_time")->info;
  const FigureInfo& overshoot = *shown().analysis.figure("pan.step.overshoot")->info;
  const auto plain = [](QString text) { return text.replace(QChar(0x202F), ' '); };
  EXPECT_EQ(
      plain(plus_minus(DoubtedFigure{"pan.step.settle_time", 0.15, 0.0061, true, {}}, settle)),
      "±6.1 ms");
  EXPECT_EQ(plus_minus(DoubtedFigure{"pan.step.overshoot", 0.1, 0.02, true, {}}, overshoot),
            "±2 points");
  EXPECT_EQ(plain(shift_text(Shift{0, 0.041, 0.049, {}}, settle)), "41 ms to 49 ms");
  EXPECT_EQ(plain(shift_text(Shift{0, 0.041, {}, "the step never settles"}, settle)),
            "41 ms to none (the step never settles)");
}

}  // namespace
}  // namespace gazewright
