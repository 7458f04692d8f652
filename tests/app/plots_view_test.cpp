#include <gtest/gtest.h>

#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <cmath>

#include "app/plots/chart_plot.h"
#include "app/plots/thin_lines.h"
#include "tests/app/plots_support.h"

namespace gazewright {
namespace {

using tests::shown;

std::unique_ptr<ChartPlot> step_plot() {
  auto plot = std::make_unique<ChartPlot>(PlotKind::step, nullptr);
  plot->resize(400, 260);
  plot->setInput(shown().input);
  plot->canvas()->replot();
  return plot;
}

TEST(PlotView, EveryKindShowsDrawsAndExplainsItself) {
  for (const PlotKind kind : plot_kinds()) {
    const auto plot = make_plot(kind);
    EXPECT_FALSE(plot->summary().isEmpty());
    plot->setInput(shown().input);
    plot->setTheme(theme_for(ThemeKind::dark));
    plot->setCursor(0.05);
    const QImage image = plot->image(1);
    QSet<QRgb> colours;
    for (int x = 0; x < image.width(); x += 3) {
      for (int y = 30; y < image.height(); y += 3) colours.insert(image.pixel(x, y));
    }
    EXPECT_GT(colours.size(), 2) << plot_key(kind).toStdString();
    EXPECT_EQ(plot_kind(plot_key(kind)), kind);
  }
}

TEST(PlotView, KeepsItsScaleWhileDraggingAndFollowsTheDataAfterwards) {
  const auto plot = step_plot();
  const Range before = plot->canvas()->viewY();
  Rig rig = shown().rig;
  rig.task.pan_move_rad = si_quantity(1.4);
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input{&rig, &analysis};
  input.fixed_scale = true;
  plot->setInput(input);
  EXPECT_EQ(plot->canvas()->viewY(), before);
  input.fixed_scale = false;
  plot->setInput(input);
  EXPECT_GT(plot->canvas()->viewY().hi, before.hi * 1.5);
}

TEST(PlotView, KeysMoveTheCursorZoomAndShowEverythingAgain) {
  const auto plot = step_plot();
  QSignalSpy moved(plot.get(), &PlotView::cursorMoved);
  QTest::keyClick(plot.get(), Qt::Key_Right);
  ASSERT_EQ(moved.size(), 1);
  const double time_s = moved.front().front().toDouble();
  EXPECT_GT(time_s, 0);
  EXPECT_NEAR(std::remainder(time_s, shown().analysis.of(Axis::pan).step.sample_time_s), 0, 1e-9)
      << "the cursor snaps to a sample";
  const Range whole = plot->canvas()->viewX();
  QTest::keyClick(plot.get(), Qt::Key_Plus);
  EXPECT_LT(plot->canvas()->viewX().hi, whole.hi);
  QTest::keyClick(plot.get(), Qt::Key_Home);
  EXPECT_EQ(plot->canvas()->viewX(), whole);
}

TEST(PlotView, SettingTheCursorTellsNobody) {
  const auto plot = step_plot();
  QSignalSpy moved(plot.get(), &PlotView::cursorMoved);
  plot->setCursor(0.1);
  EXPECT_EQ(moved.size(), 0);
  EXPECT_DOUBLE_EQ(plot->canvas()->cursorX(), 100);
}

TEST(PlotView, ExportsEveryFormatAndRefusesOthersInASentence) {
  const QTemporaryDir folder;
  const auto plot = step_plot();
  const std::pair<const char*, const char*> formats[]{
      {"a.png", "\x89PNG"}, {"a.svg", "<?xml"}, {"a.pdf", "%PDF"}, {"a.csv", "Time / ms,Pan / °"}};
  for (const auto& [name, start] : formats) {
    const QString path = folder.filePath(name);
    EXPECT_FALSE(plot->exportTo(path.toStdString())) << name;
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_TRUE(file.readAll().startsWith(start)) << name;
  }
  const auto problem = plot->exportTo(folder.filePath("a.bmp").toStdString());
  ASSERT_TRUE(problem);
  EXPECT_NE(problem->fix.find(".png"), std::string::npos);
}

TEST(ThinLines, KeepPeaksEndsAndGapsAndLeaveOutWhatLiesOnALine) {
  QVector<QPointF> line;
  for (int i = 0; i <= 100; ++i) line.append(QPointF(i, 2.0 * i));
  EXPECT_EQ(thinned(line, 0.1), (QVector<QPointF>{{0, 0}, {100, 200}}));
  line[50].ry() += 5;
  EXPECT_TRUE(thinned(line, 0.1).contains(line[50]));
  line[20].ry() = std::nan("");
  const QVector<QPointF> kept = thinned(line, 0.1);
  EXPECT_TRUE(kept.contains(line[19]));
  EXPECT_TRUE(kept.contains(line[21]));
}

TEST(ThinLines, StayWithinTheToleranceOfACurve) {
  QVector<QPointF> curve;
  for (int i = 0; i <= 4000; ++i) {
    const double x = i * 0.1;
    curve.append({x, 80 * std::exp(-x / 90) * std::sin(x / 9)});
  }
  constexpr double kTolerance = 0.2;
  const QVector<QPointF> kept = thinned(curve, kTolerance);
  EXPECT_LT(kept.size(), 400);
  qsizetype next = 1;
  for (const QPointF& p : curve) {
    while (next + 1 < kept.size() && kept[next].x() < p.x()) ++next;
    const QPointF along = kept[next] - kept[next - 1], off = p - kept[next - 1];
    const double distance =
        std::abs(along.x() * off.y() - along.y() * off.x()) / std::hypot(along.x(), along.y());
    EXPECT_LE(distance, kTolerance * (1 + 1e-9));  // rounding only
  }
}

}  // namespace
}  // namespace gazewright
