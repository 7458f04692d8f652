#include <gtest/gtest.h>

#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QSvgRenderer>
#include <QTemporaryDir>
#include <algorithm>
#include <cmath>

#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"
#include "app/plots/csv.h"
#include "app/plots/plot_export.h"
#include "tests/app/plots_support.h"

/// What plots write: pictures of a size on paper, and tables that another program can read.
namespace gazewright {
namespace {

using tests::shown;

std::unique_ptr<PlotView> shown_plot(PlotKind kind) {
  auto plot = make_plot(kind);
  plot->resize(420, 300);
  plot->setTheme(theme_for(ThemeKind::dark));
  plot->setInput(shown().input);
  return plot;
}

QByteArray bytes_of(const QString& path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

PictureOptions wide() {
  return {.width_mm = 120,
          .height_mm = 80,
          .dpi = 254,
          .subject = picture_subject("variant C"),
          .caption = picture_caption(shown().rig, "variant C", QDate(2026, 11, 26))};
}

TEST(PictureCaption, SaysProjectVariantConditionsAndDay) {
  EXPECT_EQ(wide().caption,
            "Tide-pool owl · variant C · 24\u202FV, pan ratio 18, tilt ratio 9, "
            "pan drive limit 30\u202FA, tilt drive limit 25\u202FA · 2026-11-26");
  EXPECT_EQ(picture_caption({}, {}, QDate(2026, 11, 26)), "2026-11-26") << "nothing is made up";
}

TEST(PictureTitle, SaysWhatOfWhichAxesAndWhichVariant) {
  const QString drawn = QString::fromUtf8(shown_plot(PlotKind::step)->svg(wide()));
  EXPECT_TRUE(drawn.contains("Step response: pan and tilt, variant C"));
  EXPECT_EQ(picture_subject({}), "pan and tilt");
}

TEST(Pictures, InPixelsAreAsManyAsMillimetresTimesDots) {
  const QTemporaryDir folder;
  for (const PlotKind kind : plot_kinds()) {
    const QString path = folder.filePath("a.png");
    ASSERT_FALSE(shown_plot(kind)->exportTo(path.toStdString(), wide()));
    const QImage image(path);
    EXPECT_EQ(image.size(), QSize(1200, 800)) << plot_key(kind).toStdString();
    // PNG keeps whole dots per metre
    EXPECT_NEAR(image.dotsPerMeterX() * 0.0254, 254, 0.0254) << plot_key(kind).toStdString();
    EXPECT_EQ(image.pixelColor(2, 2), QColor(Qt::white)) << "light, though the window is dark";
  }
}

TEST(Pictures, MayHaveNoGround) {
  const QTemporaryDir folder;
  PictureOptions options = wide();
  options.transparent = true;
  for (const PlotKind kind : plot_kinds()) {
    const QString path = folder.filePath("a.png");
    ASSERT_FALSE(shown_plot(kind)->exportTo(path.toStdString(), options));
    const QImage image(path);
    int clear = 0, inked = 0;
    for (int x = 0; x < image.width(); x += 5) {
      for (int y = 0; y < image.height(); y += 5) {
        clear += qAlpha(image.pixel(x, y)) == 0;
        inked += qAlpha(image.pixel(x, y)) == 255;
      }
    }
    EXPECT_GT(clear, 8000) << plot_key(kind).toStdString();
    EXPECT_GT(inked, 20) << plot_key(kind).toStdString();
  }
}

TEST(Pictures, InVectorsHoldTitleAndCaptionAsText) {
  const QTemporaryDir folder;
  for (const PlotKind kind : plot_kinds()) {
    const auto plot = shown_plot(kind);
    const QString svg = folder.filePath("a.svg"), pdf = folder.filePath("a.pdf");
    ASSERT_FALSE(plot->exportTo(svg.toStdString(), wide()));
    ASSERT_FALSE(plot->exportTo(pdf.toStdString(), wide()));
    const QString drawn = QString::fromUtf8(bytes_of(svg));
    QSvgRenderer renderer(svg);
    EXPECT_TRUE(renderer.isValid()) << plot_key(kind).toStdString();
    // 120 mm are 453.5 pixels of 1/96 inch, and SVG's width is of whole ones
    EXPECT_TRUE(drawn.contains(QRegularExpression("width=\"12[0.]")))
        << drawn.left(400).toStdString();
    EXPECT_GE(drawn.count(plot->title()), 2) << plot_key(kind).toStdString() << ": drawn and named";
    EXPECT_TRUE(drawn.contains(QString("Tide-pool owl · variant C")))
        << plot_key(kind).toStdString();

    QProcess reader;
    reader.start("pdftotext", {"-layout", pdf, "-"});
    ASSERT_TRUE(reader.waitForFinished()) << "this test needs the package poppler-utils";
    const QString words = QString::fromUtf8(reader.readAllStandardOutput())
                              .normalized(QString::NormalizationForm_KC);  // "fi" may be one letter
    EXPECT_TRUE(words.contains(plot->title())) << words.toStdString();
    EXPECT_TRUE(words.contains("variant C")) << words.toStdString();
    reader.start("pdfinfo", {pdf});
    ASSERT_TRUE(reader.waitForFinished());
    const auto size = QRegularExpression("Page size:\\s+([0-9.]+) x ([0-9.]+) pts")
                          .match(QString::fromUtf8(reader.readAllStandardOutput()));
    ASSERT_TRUE(size.hasMatch());
    // a point is 1/72 inch; Qt keeps whole points where it must
    EXPECT_NEAR(size.captured(1).toDouble() / 72 * 25.4, 120, 25.4 / 72);
    EXPECT_NEAR(size.captured(2).toDouble() / 72 * 25.4, 80, 25.4 / 72);
  }
}

/// The numbers after `name` in an SVG, in points: its pixels are of 1/96 inch.
QVector<double> points_of(const QString& svg, const QString& name) {
  QVector<double> points;
  auto found = QRegularExpression(name + "=\"([0-9.]+)\"").globalMatch(svg);
  while (found.hasNext()) points << found.next().captured(1).toDouble() * 0.75;
  return points;
}

TEST(Pictures, HaveLettersOfSevenPointsAndLinesOfHalfAPointAtLeast) {
  for (const PlotKind kind : plot_kinds()) {
    const QString drawn = QString::fromUtf8(shown_plot(kind)->svg(wide()));
    const QVector<double> letters = points_of(drawn, "font-size"),
                          lines = points_of(drawn, "stroke-width");
    ASSERT_GT(letters.size(), 2) << plot_key(kind).toStdString();
    EXPECT_GE(*std::ranges::min_element(letters), 7) << plot_key(kind).toStdString();
    if (lines.isEmpty()) continue;  // it waits for something
    EXPECT_GE(*std::ranges::min_element(lines), 0.5) << plot_key(kind).toStdString();
  }
}

/// What a program for PDF finds in it, not what was asked for.
TEST(Pictures, HaveTheSameLettersAndLinesInPdf) {
  const QTemporaryDir folder;
  const QString pdf = folder.filePath("a.pdf"), svg = folder.filePath("a.svg");
  constexpr double kZoom = 3;  // of pdftohtml, which writes whole points
  const QRegularExpression letters("<fontspec[^>]*size=\"([0-9]+)\""),
      strokes("stroke-width:([0-9.]+);[^>]*transform=\"matrix\\(([-0-9.]+),");
  for (const PlotKind kind : plot_kinds()) {
    ASSERT_FALSE(shown_plot(kind)->exportTo(pdf.toStdString(), wide()));
    QProcess reader;
    reader.start("pdftohtml", {"-xml", "-i", "-stdout", "-zoom", QString::number(kZoom), pdf});
    ASSERT_TRUE(reader.waitForFinished()) << "this test needs the package poppler-utils";
    int sizes = 0, lines = 0;
    auto found = letters.globalMatch(QString::fromUtf8(reader.readAllStandardOutput()));
    for (; found.hasNext(); ++sizes)
      EXPECT_GE(found.next().captured(1).toDouble() / kZoom, 7) << plot_key(kind).toStdString();
    EXPECT_GT(sizes, 0) << plot_key(kind).toStdString();
    reader.start("pdftocairo", {"-svg", pdf, svg});
    ASSERT_TRUE(reader.waitForFinished());
    auto drawn = strokes.globalMatch(QString::fromUtf8(bytes_of(svg)));
    for (; drawn.hasNext(); ++lines) {
      const auto line = drawn.next();
      EXPECT_GE(line.captured(1).toDouble() * std::abs(line.captured(2).toDouble()), 0.5)
          << plot_key(kind).toStdString();
    }
    if (is_chart(kind) && chart_of(kind, shown().input).message.isEmpty()) {
      EXPECT_GT(lines, 10) << plot_key(kind).toStdString();
    }
  }
}

/// The greys of both axes, printed: 2:1, so that one is seen to be darker where names find no room.
/// No norm asks for it; it is what blue and vermillion allow while both keep 3:1 on paper.
TEST(Pictures, InGreyTheAxesAreDarkAndLight) {
  const Theme theme = theme_for(ThemeKind::print);
  const auto grey = [](const QColor& colour) {
    const int value = qGray(colour.rgb());
    return QColor(value, value, value);
  };
  EXPECT_GE(contrast_ratio(grey(theme.pan), grey(theme.tilt)), 2);
}

/// In grey every line keeps 3:1 on paper. Where there is one line an axis it has its name beside
/// it.
TEST(Pictures, AreLegibleInGrey) {
  const Theme theme = theme_for(ThemeKind::print);
  const ChartStyle style{theme, {}};
  for (const PlotKind kind : plot_kinds()) {
    if (!is_chart(kind)) continue;
    for (const Series& series : chart_of(kind, shown().input).series) {
      const int grey = qGray(line_pen(style, series.axis, series.line).color().rgb());
      EXPECT_GE(contrast_ratio(QColor(grey, grey, grey), theme.card), 3)
          << series.name.toStdString();
    }
  }
  for (const PlotKind kind : {PlotKind::step, PlotKind::speed}) {
    const QString drawn = QString::fromUtf8(shown_plot(kind)->svg(wide()));
    EXPECT_TRUE(drawn.contains(">Pan</text>")) << plot_key(kind).toStdString();
    EXPECT_TRUE(drawn.contains(">Tilt</text>")) << plot_key(kind).toStdString();
    const auto plot = shown_plot(kind);
    plot->resize(700, 500);
    plot->show();
    ChartCanvas& canvas = *plot->charts().front()->canvas();
    canvas.replot();
    EXPECT_EQ(canvas.marks().lineLabels().size(), 2) << plot_key(kind).toStdString();
  }
}

TEST(Tables, ReadBackToTheData) {
  const QTemporaryDir folder;
  const QString path = folder.filePath("a.csv");
  const auto plot = shown_plot(PlotKind::step);
  ASSERT_FALSE(plot->exportTo(path.toStdString()));
  const QVector<QStringList> rows = csv_rows(QString::fromUtf8(bytes_of(path)));
  const Chart& chart = plot->charts().front()->fullChart();
  ASSERT_GT(rows.size(), chart.series[0].x.size());
  EXPECT_EQ(rows[0][0], "Time / ms");
  EXPECT_EQ(rows[0][1], "Pan / °");
  for (qsizetype i = 1; i <= chart.series[0].x.size(); ++i) {
    ASSERT_EQ(rows[i][0].toDouble(), chart.series[0].x[i - 1]);
    ASSERT_EQ(rows[i][1].toDouble(), chart.series[0].y[i - 1]);
  }
}

TEST(Tables, OfWhatIsVisibleEndWithTheView) {
  const auto plot = shown_plot(PlotKind::step);
  plot->charts().front()->showX({20, 60});
  const QVector<QStringList> rows = csv_rows(plot->visibleCsv());
  ASSERT_GT(rows.size(), 10);
  for (const QStringList& row : rows.mid(1)) {
    if (row[0].isEmpty()) continue;  // the other line goes on
    EXPECT_GE(row[0].toDouble(), 20);
    EXPECT_LE(row[0].toDouble(), 60);
  }
  EXPECT_GT(csv_rows(plot->csv()).size(), rows.size());
}

TEST(Tables, KeepCellsWithCommasQuotesAndEmptyOnes) {
  EXPECT_EQ(csv_rows("a,\"b, \"\"c\"\"\",\n1,,2\n\nx\n"),
            (QVector<QStringList>{{"a", "b, \"c\"", ""}, {"1", "", "2"}, {}, {"x"}}));
}

}  // namespace
}  // namespace gazewright
