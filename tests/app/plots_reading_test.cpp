#include <gtest/gtest.h>

#include <QElapsedTimer>
#include <QSignalSpy>
#include <QTest>
#include <cmath>
#include <limits>
#include <random>

#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"
#include "app/plots/csv.h"
#include "app/plots/stacked_plot.h"
#include "app/plots/view_history.h"
#include "tests/app/plots_support.h"

/// Cursors, views, lines and gaps of the plots with axes.
namespace gazewright {
namespace {

using tests::shown;

std::unique_ptr<PlotView> shown_plot(PlotKind kind) {
  auto plot = make_plot(kind);
  plot->resize(420, 300);
  plot->setInput(shown().input);
  plot->show();
  for (ChartPlot* chart : plot->charts()) chart->canvas()->replot();
  return plot;
}
ChartPlot& chart_in(const std::unique_ptr<PlotView>& plot) { return *plot->charts().front(); }

Chart two_lines() {
  Chart chart;
  chart.x_name = "Time";
  chart.x_unit = "ms";
  chart.y_unit = "°";
  chart.x_per_s = 1000;
  chart.series = {{.name = "Pan", .axis = Axis::pan, .x = {0, 10, 20, 30}, .y = {0, 1, 4, 9}},
                  {.name = "Tilt", .axis = Axis::tilt, .x = {0, 15, 30}, .y = {0, -3, 5}}};
  return chart;
}

TEST(Readout, GivesDifferencesSlopeAndFrequencyOfTwoCursors) {
  const Readout readout = read(two_lines(), {.x = 30}, {.x = 10});
  ASSERT_EQ(readout.series.size(), 2U);
  EXPECT_EQ(readout.xa, 30);
  EXPECT_EQ(readout.xb, 10);
  EXPECT_EQ(readout.series[0].dy(), 8);
  EXPECT_DOUBLE_EQ(readout.series[0].slope(), 8.0 / 20);
  EXPECT_EQ(readout.series[1].xb, 15) << "each line has its own nearest sample";
  EXPECT_EQ(readout.series[1].dy(), 8);
  const QStringList lines = readout_lines(two_lines(), readout);
  EXPECT_TRUE(lines[0].contains("1/Δ 50\u202FHz")) << lines[0].toStdString();
  EXPECT_TRUE(lines[1].contains("Δ 8°")) << lines[1].toStdString();
  EXPECT_TRUE(lines[1].contains("400°/s")) << lines[1].toStdString();
}

TEST(Readout, BeginsWithThePresentDesignAndSaysZeroForTheDustOfSums) {
  Chart chart = two_lines();
  chart.y = {-3, 9};
  chart.series.prepend(
      {.name = "Pan of B", .axis = Axis::pan, .line = Line::variant_1, .x = {0, 10}, .y = {1, 2}});
  chart.series[2].y[0] = 3e-14;
  const Readout readout = read(chart, {.x = 0}, {});
  ASSERT_EQ(readout.series.size(), 3U);
  EXPECT_EQ(readout.series[0].name, "Pan");
  EXPECT_EQ(readout.series[1].name, "Tilt");
  EXPECT_EQ(readout.series[2].name, "Pan of B");
  EXPECT_EQ(readout.series[1].ya, 0);
}

TEST(Readout, OfOneCursorHasNoDifferencesAndOfNoneNoLines) {
  EXPECT_EQ(readout_lines(two_lines(), read(two_lines(), {.x = 20}, {})),
            (QStringList{"Time  20\u202Fms", "Pan  4°", "Tilt  -3°"}.replaceInStrings(
                "-", QString(QChar(0x2212)))));
  EXPECT_TRUE(readout_lines(two_lines(), read(two_lines(), {}, {})).isEmpty());
}

TEST(Cursors, ReadTheDataAndAreLinkedByTime) {
  const auto plot = shown_plot(PlotKind::step);
  ChartPlot& chart = chart_in(plot);
  QSignalSpy second(plot.get(), &PlotView::secondCursorMoved);
  chart.placeCursor(ChartPlot::Cursor::a, 120);
  chart.placeCursor(ChartPlot::Cursor::b, 50);
  ASSERT_EQ(second.size(), 1);
  const double b_s = second.front().front().toDouble();
  const Trace& step = shown().analysis.of(Axis::pan).step;
  const auto row = [&](double time_s) {
    return std::size_t(std::lround(time_s / step.sample_time_s));
  };
  const Readout readout =
      read(chart.canvas()->chart(), chart.canvas()->cursor(), chart.canvas()->secondCursor());
  const auto pan =
      std::ranges::find(readout.series, std::optional(Axis::pan), &SeriesReading::axis);
  ASSERT_NE(pan, readout.series.end());
  const auto degrees = [&](double time_s) {
    return step.angle_rad[row(time_s)] * chart_parts::kDegPerRad;
  };
  EXPECT_EQ(pan->dy(), degrees(0.12) - degrees(b_s));
  const auto other = shown_plot(PlotKind::speed);
  other->setSecondCursor(b_s);
  EXPECT_DOUBLE_EQ(chart_in(other).cursorPlace(ChartPlot::Cursor::b), b_s * 1000);
  EXPECT_TRUE(plot->readout().contains("\t")) << "a table for the clipboard";
}

TEST(Cursors, AreSetByKeysTakenAwayAndHeld) {
  const auto plot = shown_plot(PlotKind::step);
  ChartPlot& chart = chart_in(plot);
  QTest::keyClick(&chart, Qt::Key_Right);
  const double a = chart.cursorPlace(ChartPlot::Cursor::a);
  QTest::keyClick(&chart, Qt::Key_B);
  EXPECT_EQ(chart.cursorPlace(ChartPlot::Cursor::b), a);
  for (int i = 0; i < 5; ++i) QTest::keyClick(&chart, Qt::Key_Right, Qt::ShiftModifier);
  EXPECT_EQ(chart.cursorPlace(ChartPlot::Cursor::b), a) << "B stays";
  const double moved = chart.cursorPlace(ChartPlot::Cursor::a);
  EXPECT_GT(moved, a);

  const auto point_at = [&](const QPointF& at) {
    QMouseEvent event(QEvent::MouseMove, at, chart.canvas()->mapToGlobal(at), Qt::NoButton,
                      Qt::NoButton, Qt::NoModifier);
    QApplication::sendEvent(chart.canvas(), &event);
  };
  const QPointF centre = chart.canvas()->axisRect()->center();
  QTest::keyClick(&chart, Qt::Key_H);
  point_at(centre - QPointF(80, 0));
  EXPECT_EQ(chart.cursorPlace(ChartPlot::Cursor::a), moved) << "held";
  QTest::keyClick(&chart, Qt::Key_H);
  point_at(centre + QPointF(60, 0));
  const double pointed = chart.cursorPlace(ChartPlot::Cursor::a);
  EXPECT_NE(pointed, moved);
  QTest::keyClick(&chart, Qt::Key_Z);
  EXPECT_EQ(chart.canvas()->viewX(), (Range{std::min(a, pointed), std::max(a, pointed)}))
      << "zoomed to between the cursors";
  QTest::keyClick(&chart, Qt::Key_B);
  EXPECT_TRUE(std::isnan(chart.cursorPlace(ChartPlot::Cursor::b)));
}

TEST(Cursors, StepAlongPathsToo) {
  const auto plot = shown_plot(PlotKind::torque_speed);
  ChartPlot& chart = chart_in(plot);
  QTest::keyClick(&chart, Qt::Key_Right);
  const double first = chart.cursorPlace(ChartPlot::Cursor::a);
  QTest::keyClick(&chart, Qt::Key_Right);
  EXPECT_GT(chart.cursorPlace(ChartPlot::Cursor::a), first);
  EXPECT_TRUE(plot->readout().contains("Torque") || plot->readout().contains("step"));
}

TEST(ViewHistory, GoesBackAndForwardAndForgetsWhatLayAhead) {
  ViewHistory history;
  EXPECT_FALSE(history.canGoBack());
  const ViewHistory::View a{std::pair{Range{0, 1}, Range{0, 1}}};
  const ViewHistory::View b{std::pair{Range{0, 2}, Range{0, 1}}};
  const ViewHistory::View c{std::pair{Range{0, 3}, Range{0, 1}}};
  history.add(a);
  history.add(a);
  history.add(b);
  EXPECT_EQ(history.goBack(), a) << "the same twice is one step";
  EXPECT_EQ(history.goForward(), b);
  history.goBack();
  history.add(c);
  EXPECT_FALSE(history.canGoForward());
  EXPECT_EQ(history.goBack(), a);
  history.goBack();
  EXPECT_FALSE(history.canGoBack());
  history.add(a, true);
  history.add(b, true);
  history.add(c, true);
  history.goBack();
  EXPECT_FALSE(history.canGoBack()) << "turning the wheel on is one step";
}

TEST(View, ZoomsByKeysAlongOneAxisAndGoesBackAndForward) {
  const auto plot = shown_plot(PlotKind::step);
  ChartPlot& chart = chart_in(plot);
  const ChartCanvas& canvas = *chart.canvas();
  const Range x = canvas.viewX(), y = canvas.viewY();
  QTest::keyClick(&chart, Qt::Key_Plus, Qt::AltModifier);
  EXPECT_LT(canvas.viewX().hi - canvas.viewX().lo, x.hi - x.lo);
  EXPECT_EQ(canvas.viewY(), y);
  const Range zoomed = canvas.viewX();
  QTest::keyClick(&chart, Qt::Key_Left, Qt::AltModifier);
  EXPECT_EQ(canvas.viewX(), x);
  EXPECT_FALSE(chart.isZoomed()) << "the whole view follows the data again";
  QTest::keyClick(&chart, Qt::Key_Right, Qt::AltModifier);
  EXPECT_EQ(canvas.viewX(), zoomed);
  QTest::keyClick(&chart, Qt::Key_Home);
  EXPECT_EQ(canvas.viewX(), x);
  QTest::keyClick(&chart, Qt::Key_Up);
  EXPECT_EQ(canvas.viewX(), x);
  EXPECT_LT(canvas.viewY().hi - canvas.viewY().lo, y.hi - y.lo);
  QTest::keyClick(&chart, Qt::Key_Left, Qt::AltModifier);
  QTest::keyClick(&chart, Qt::Key_Left, Qt::AltModifier);
  EXPECT_EQ(canvas.viewX(), zoomed) << "Home is a step of its own";
}

TEST(View, ZoomsByWheelAlongOneAxisAndByDraggingABox) {
  const auto plot = shown_plot(PlotKind::step);
  ChartPlot& chart = chart_in(plot);
  ChartCanvas& canvas = *chart.canvas();
  const Range x = canvas.viewX(), y = canvas.viewY();
  const auto wheel = [&](Qt::KeyboardModifiers keys) {
    const QPointF at = canvas.axisRect()->center();
    QWheelEvent event(at, canvas.mapToGlobal(at), {}, QPoint(0, 120), Qt::NoButton, keys,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&canvas, &event);
  };
  wheel(Qt::ControlModifier);
  EXPECT_NE(canvas.viewX(), x);
  EXPECT_EQ(canvas.viewY(), y);
  EXPECT_TRUE(plot->canGoBack());
  plot->goBack();
  wheel(Qt::ShiftModifier);
  EXPECT_EQ(canvas.viewX(), x);
  EXPECT_NE(canvas.viewY(), y);
  plot->goBack();

  const QPoint from = canvas.axisRect()->center() - QPoint(40, 30), to = from + QPoint(80, 60);
  const double x_from = canvas.xAxis->pixelToCoord(from.x());
  QTest::mousePress(&canvas, Qt::LeftButton, Qt::ControlModifier, from);
  QTest::mouseMove(&canvas, to);
  QMouseEvent drag(QEvent::MouseMove, to, canvas.mapToGlobal(to), Qt::NoButton, Qt::LeftButton,
                   Qt::ControlModifier);
  QApplication::sendEvent(&canvas, &drag);
  QTest::mouseRelease(&canvas, Qt::LeftButton, Qt::ControlModifier, to);
  EXPECT_NEAR(canvas.viewX().lo, x_from, (x.hi - x.lo) / 100);
  EXPECT_LT(canvas.viewY().hi - canvas.viewY().lo, (y.hi - y.lo) / 2);
  EXPECT_TRUE(plot->canGoBack());
  plot->goBack();
  EXPECT_EQ(canvas.viewX(), x);
}

Analysis longer_move(Rig& rig) {
  rig = shown().rig;
  rig.task.pan_move_rad = si_quantity(1.4);
  return analyse(rig, {.remedies = false});
}

TEST(View, StaysWhereItWasFixedOrZoomedToWhileTheRigChanges) {
  Rig rig;
  const Analysis analysis = longer_move(rig);
  const PlotInput changed{&rig, &analysis};
  for (const bool fixed : {true, false}) {
    const auto plot = shown_plot(PlotKind::step);
    ChartPlot& chart = chart_in(plot);
    QTest::keyClick(&chart, fixed ? Qt::Key_F : Qt::Key_Plus);
    const Range y = chart.canvas()->viewY();
    plot->setInput({});  // for a moment there is nothing to show
    plot->setInput(changed);
    EXPECT_EQ(chart.canvas()->viewY(), y);
    QTest::keyClick(&chart, Qt::Key_Home);
    EXPECT_GT(chart.canvas()->viewY().hi, 1.4 * chart_parts::kDegPerRad);
  }
}

TEST(View, OfStackedChartsIsOneAndSharesTicks) {
  const auto plot = shown_plot(PlotKind::bode);
  const auto charts = plot->charts();
  ASSERT_EQ(charts.size(), 2U);
  QTest::keyClick(charts[1], Qt::Key_Plus, Qt::AltModifier);
  EXPECT_EQ(charts[0]->canvas()->viewX(), charts[1]->canvas()->viewX());
  for (ChartPlot* chart : charts) chart->canvas()->replot();
  EXPECT_EQ(charts[0]->canvas()->xAxis->tickVector(), charts[1]->canvas()->xAxis->tickVector());
  EXPECT_EQ(charts[0]->canvas()->axisRect()->margins().left(),
            charts[1]->canvas()->axisRect()->margins().left());
  const Range zoomed = charts[0]->canvas()->viewX();
  QTest::keyClick(charts[1], Qt::Key_Left, Qt::AltModifier);
  for (const ChartPlot* chart : charts) {
    EXPECT_NE(chart->canvas()->viewX(), zoomed);
    EXPECT_FALSE(chart->isZoomed());
  }
  charts[0]->placeCursor(ChartPlot::Cursor::b, 20);
  EXPECT_EQ(charts[1]->cursorPlace(ChartPlot::Cursor::b),
            charts[0]->cursorPlace(ChartPlot::Cursor::b));
}

TEST(Lines, AreSwitchedByClickAndByDigits) {
  const auto plot = shown_plot(PlotKind::step);
  ChartPlot& chart = chart_in(plot);
  ChartCanvas& canvas = *chart.canvas();
  const Range y = canvas.viewY();
  const auto count = canvas.chart().series.size();
  QTest::keyClick(&chart, Qt::Key_1);
  ASSERT_EQ(canvas.chart().series.size(), count - 1);
  EXPECT_EQ(canvas.chart().series.front().axis, Axis::tilt);
  EXPECT_TRUE(canvas.chart().legend.front().hidden);
  EXPECT_EQ(canvas.viewY(), y) << "the scale stays";
  EXPECT_TRUE(plot->csv().contains("Pan")) << "all data are still all data";
  EXPECT_FALSE(plot->visibleCsv().contains("Pan"));

  QPoint entry;
  for (int px = 0; px < canvas.width() && entry.isNull(); px += 4) {
    if (canvas.legendAt(QPointF(px, 8)) == 0) entry = QPoint(px + 4, 8);
  }
  ASSERT_FALSE(entry.isNull());
  QTest::mouseClick(&canvas, Qt::LeftButton, {}, entry);
  EXPECT_EQ(canvas.chart().series.size(), count);
}

TEST(Lines, ThatTheLegendHasNoRoomForAreCountedAndAPressOpensTheMenuThatHasThemAll) {
  const auto plot = shown_plot(PlotKind::torque_speed);
  plot->resize(250, 220);
  ChartPlot& chart = chart_in(plot);
  ChartCanvas& canvas = *chart.canvas();
  canvas.replot();
  std::optional<QPoint> more;
  for (int px = 0; px < canvas.width(); px += 2) {
    const int entry = canvas.legendAt(QPointF(px, 8));
    if (entry == kMoreEntries) more = QPoint(px, 8);
    EXPECT_FALSE(more && entry >= 0) << "it stands last";
  }
  ASSERT_TRUE(more);
  const QSignalSpy menu(plot.get(), &PlotView::menuWanted);
  QTest::mouseClick(&canvas, Qt::LeftButton, {}, *more);
  EXPECT_EQ(menu.count(), 1);
}

TEST(Grid, CanBeSwitchedOff) {
  const auto plot = shown_plot(PlotKind::step);
  ChartPlot& chart = chart_in(plot);
  QTest::keyClick(&chart, Qt::Key_G);
  EXPECT_EQ(chart.canvas()->xAxis->grid()->pen().style(), Qt::NoPen);
  chart.setTheme(theme_for(ThemeKind::dark));
  EXPECT_EQ(chart.canvas()->xAxis->grid()->pen().style(), Qt::NoPen);
  QTest::keyClick(&chart, Qt::Key_G);
  EXPECT_EQ(chart.canvas()->xAxis->grid()->pen().style(), Qt::SolidLine);
}

TEST(LogTime, IsOfferedForTheHeatPlotAndBeginsAboveZero) {
  const auto plot = shown_plot(PlotKind::heat);
  ChartPlot& chart = chart_in(plot);
  ASSERT_TRUE(chart.fullChart().message.isEmpty()) << chart.fullChart().message.toStdString();
  QTest::keyClick(&chart, Qt::Key_L);
  EXPECT_EQ(chart.canvas()->xAxis->scaleType(), QCPAxis::stLogarithmic);
  EXPECT_GT(chart.canvas()->viewX().lo, 0);
  QTest::keyClick(&chart, Qt::Key_L);
  EXPECT_EQ(chart.canvas()->xAxis->scaleType(), QCPAxis::stLinear);
  EXPECT_EQ(chart.canvas()->viewX().lo, 0);
  const auto step = shown_plot(PlotKind::step);
  QTest::keyClick(&chart_in(step), Qt::Key_L);
  EXPECT_EQ(chart_in(step).canvas()->xAxis->scaleType(), QCPAxis::stLinear);
}

TEST(Gaps, AreCountedAndDrawNoLine) {
  Chart chart = two_lines();
  chart.x = {0, 30};
  chart.y = {-4, 10};
  EXPECT_EQ(gap_count(chart), 0);
  chart.series[0].y[1] = std::nan("");
  chart.series[1].y[1] = std::numeric_limits<double>::infinity();
  EXPECT_EQ(gap_count(chart), 2);
  EXPECT_TRUE(summary_of(chart).contains("2 points have no value"))
      << summary_of(chart).toStdString();
  ChartCanvas canvas;
  canvas.setChart(chart);
  const auto* tilt = qobject_cast<QCPGraph*>(canvas.plottable(1));
  ASSERT_NE(tilt, nullptr);
  EXPECT_TRUE(std::isnan(tilt->data()->at(1)->value));
  const QVector<QStringList> rows = csv_rows(csv_of(chart));
  EXPECT_EQ(rows[2][1], "") << "an empty cell, no zero";
}

/// 100,000 points of noise within ±1 and one peak of a single sample.
Chart long_chart(qsizetype peak_at) {
  Chart chart;
  chart.x = {0, 99'999};
  chart.y = {-10, 10};
  Series series{.name = "Pan"};
  std::mt19937 random(7);
  std::uniform_real_distribution<double> noise(-1, 1);
  for (int i = 0; i < 100'000; ++i) {
    series.x.append(i);
    series.y.append(noise(random));
  }
  series.y[peak_at] = 9;
  chart.series.append(series);
  return chart;
}

TEST(ManyPoints, KeepTheirPeaksAndAreDrawnQuickly) {
  ChartCanvas canvas;
  canvas.resize(400, 260);
  canvas.setChart(long_chart(61'803));
  canvas.setView({0, 99'999}, {-10, 10});
  QElapsedTimer timer;
  timer.start();
  const QImage image = canvas.toPixmap(400, 260).toImage();
  const qint64 took_ms = timer.elapsed();
  RecordProperty("took_ms", int(took_ms));
  EXPECT_LT(took_ms, 2000) << "some ten ms; a hundred times that where nothing is thinned out";
  const QRect inside = QRect(0, 0, 400, 260).marginsRemoved(canvas.axisRect()->margins());
  const int row = inside.bottom() - int(std::lround(inside.height() * 17 / 20.0));  // y = 7
  const double at = inside.left() + inside.width() * 61'803 / 99'999.0;
  bool seen = false;
  for (int px = int(at) - 2; px <= int(at) + 2; ++px) {
    const QColor colour = image.pixelColor(px, row);
    seen = seen || contrast_ratio(colour, canvas.style().theme.card) > 1.6;
  }
  EXPECT_TRUE(seen) << "the peak of one sample among 100,000";
}

TEST(Margins, DoNotFollowTheWidthOfLabels) {
  ChartCanvas canvas;
  Chart chart = two_lines();
  canvas.setChart(chart);
  canvas.setView({0, 1}, {0, 1});
  canvas.replot();
  const QMargins before = canvas.axisRect()->margins();
  canvas.setView({0, 1}, {-123'456, 987'654});
  canvas.replot();
  EXPECT_EQ(canvas.axisRect()->margins(), before);
}

TEST(Messages, StandInPlaceOfEveryPlotThatIsEmpty) {
  for (const PlotKind kind : plot_kinds()) {
    const auto plot = make_plot(kind);
    plot->resize(400, 260);
    const QImage nothing = plot->image(1);
    EXPECT_FALSE(plot->summary().isEmpty()) << plot_key(kind).toStdString();
    EXPECT_EQ(plot->accessibleDescription(), plot->summary()) << plot_key(kind).toStdString();
    int dark = 0;
    for (int px = 0; px < nothing.width(); ++px) {
      for (int py = 40; py < nothing.height(); ++py) dark += qGray(nothing.pixel(px, py)) < 160;
    }
    EXPECT_GT(dark, 50) << plot_key(kind).toStdString() << ": words are painted";
    plot->setInput(shown().input);
    EXPECT_EQ(plot->accessibleDescription(), plot->summary()) << plot_key(kind).toStdString();
  }
}

}  // namespace
}  // namespace gazewright
