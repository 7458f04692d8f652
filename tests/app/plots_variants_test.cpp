#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <algorithm>

#include "app/plots/charts.h"
#include "app/plots/compare_text.h"
#include "app/plots/variant_lines.h"
#include "app/sheet/write_sheet.h"
#include "core/rig/fields.h"
#include "tests/app/plots_two.h"
#include "tests/support/owl_rig.h"

/// Variants beside the present design, in every chart that shows them, and in the sheet.
namespace gazewright {
namespace {

using tests::two;
using tests::with_ratio;

constexpr PlotKind kKinds[]{PlotKind::step, PlotKind::speed,        PlotKind::current,
                            PlotKind::both, PlotKind::heat,         PlotKind::gravity,
                            PlotKind::bus,  PlotKind::torque_speed, PlotKind::profiles};

void expect_variants(const Chart& chart, const char* what) {
  ASSERT_TRUE(chart.message.isEmpty()) << what << ": " << chart.message.toStdString();
  bool now_comes_after = false;
  for (const Series& series : chart.series) {
    if (series.line == Line::strong) now_comes_after = true;
    if (!chart_parts::is_variant(series.line)) continue;
    EXPECT_FALSE(now_comes_after) << what << ": the present design lies on top";
    EXPECT_FALSE(series.x.isEmpty()) << what;
  }
  for (const char* name : {"low ratio", "as it is"}) {
    EXPECT_TRUE(std::ranges::any_of(
        chart.marks,
        [&](const Mark& mark) { return mark.kind == Mark::Kind::label && mark.text == name; }))
        << what << ": " << name;
    EXPECT_TRUE(summary_of(chart).contains(name)) << what;
  }
}

TEST(VariantLines, AreInEveryChartThatHasAGhostAndNamedBesideTheirLine) {
  for (const PlotKind kind : kKinds)
    expect_variants(chart_of(kind, two().input()), plot_key(kind).toUtf8().constData());
  expect_variants(gain_chart(two().input()), "gain");
  expect_variants(phase_chart(two().input()), "phase");
  expect_variants(bus_voltage_chart(two().input()), "bus voltage");
}

TEST(VariantLines, ShowWhatTheVariantsAnalysisSays) {
  const Chart chart = step_chart(two().input());
  const Series& first = chart.series.front();
  EXPECT_EQ(first.name, "Pan, low ratio");
  const Trace& step = two().low.of(Axis::pan).step;
  ASSERT_EQ(first.y.size(), qsizetype(step.angle_rad.size()));
  EXPECT_DOUBLE_EQ(first.y[300], step.angle_rad[300] * chart_parts::kDegPerRad);
}

TEST(VariantLines, AreRingsAtTheirOwnRatiosInTheSweep) {
  const Rig low = with_ratio(9);
  const std::vector<VariantCurves> variants{{QStringLiteral("low ratio"), &two().low, &low}};
  std::array<RatioSweep, 2> sweeps;
  for (const Axis axis : kAxes)
    sweeps[std::size_t(axis)] = sweep_ratio(two().rig, axis, {5, 9, 18}, {.settle = false});
  PlotInput input = two().input();
  input.sweeps = &sweeps;
  input.variants = variants;
  const Chart chart = ratio_chart(input);
  const auto ring = std::ranges::find_if(chart.marks, [](const Mark& mark) {
    return mark.kind == Mark::Kind::ring && mark.axis == Axis::pan;
  });
  ASSERT_NE(ring, chart.marks.end());
  EXPECT_EQ(ring->x, 9);
  EXPECT_EQ(ring->text, "low ratio");
  // this variant differs by its ratio alone, so it lies on the curve
  EXPECT_NEAR(ring->y, *sweeps[0].shortest_time_s[1] * 1000, 1e-9 * ring->y);
}

TEST(VariantLines, WithoutThemAChartIsAsBefore) {
  PlotInput input = two().input();
  input.variants = {};
  for (const PlotKind kind : kKinds)
    for (const Series& series : chart_of(kind, input).series)
      EXPECT_FALSE(chart_parts::is_variant(series.line));
}

TEST(VariantLines, AVariantThatLacksInputsLeavesTheOthers) {
  Rig bare;
  const Analysis nothing = analyse(bare, {.remedies = false});
  const std::vector<VariantCurves> variants{{QStringLiteral("bare"), &nothing}};
  PlotInput input = two().input();
  input.variants = variants;
  for (const PlotKind kind : kKinds) {
    const Chart chart = chart_of(kind, input);
    EXPECT_TRUE(chart.message.isEmpty()) << plot_key(kind).toStdString();
    EXPECT_FALSE(summary_of(chart).contains("bare"));
  }
  EXPECT_TRUE(gain_chart(input).message.isEmpty());
}

TEST(VariantLines, APresentDesignThatLacksInputsSaysSoBesideThem) {
  Rig bare;
  const Analysis nothing = analyse(bare, {.remedies = false});
  PlotInput input = two().input();
  input.rig = &bare;
  input.now = &nothing;
  EXPECT_FALSE(step_chart(input).message.isEmpty());
  for (const PlotKind kind : kKinds) chart_of(kind, input);  // no crash on empty curves
  gain_chart(input);
}

TEST(VariantLines, ATemperaturesDifferenceIsInKelvinAndAPercentsInPoints) {
  CompareRow row;
  row.si_unit = "K";
  row.unit = "degC";
  row.cells = {{333.15, {}}, {321.15, {}, true}};
  EXPECT_EQ(difference_text(row, row.cells[1]).replace(QChar(0x202F), ' '), "−12 K");
  row.si_unit = "1";
  row.unit = "%";
  row.cells = {{0.1, {}}, {0.15, {}, true}};
  EXPECT_EQ(difference_text(row, row.cells[1]), "+5 points");
}

TEST(SheetVariants, StandInATableOfTheirOwnWhereThereAreAny) {
  Rig rig = tests::owl();
  rig.variants.push_back(
      {"low ratio", "from the shelf", std::make_shared<const Rig>(with_ratio(9))});
  const QTemporaryDir folder;
  const QString file = folder.filePath("owl.pdf");
  SheetOptions options;
  options.comparison = compare_variants(rig, two().now);
  ASSERT_FALSE(write_sheet(rig, two().now, nullptr, file.toStdString(), options));
  QProcess reader;
  reader.start("pdftotext", {"-layout", file, "-"});
  ASSERT_TRUE(reader.waitForFinished()) << "this test needs the package poppler-utils";
  QString text = QString::fromUtf8(reader.readAllStandardOutput());
  text.replace(QRegularExpression("\\s+"), " ");
  for (const char* words : {"Variants", "low ratio: from the shelf", "Inputs that differ",
                            "Pan gearbox: ratio", "present design", "best"})
    EXPECT_TRUE(text.contains(words)) << words;
}

}  // namespace
}  // namespace gazewright
