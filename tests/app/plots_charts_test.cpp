#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "app/plots/chart_canvas.h"
#include "app/plots/chart_items.h"
#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/inertia_shares.h"
#include "core/rig/fields.h"
#include "tests/app/plots_support.h"

namespace gazewright {
namespace {

using chart_parts::kDegPerRad;
using tests::series_named;
using tests::shown;

TEST(StepChart, NamesTheBandInPixelsWhereItIsTheDefault) {
  Rig rig = tests::owl();
  rig.task.settle_band_px = {};
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Chart chart = step_chart({.rig = &rig, .now = &analysis});
  ASSERT_FALSE(chart.bands.empty());
  EXPECT_TRUE(chart.bands.front().label.startsWith("±4 px, ±"))
      << chart.bands.front().label.toStdString();
}

TEST(StepChart, ShowsTheAnglesOfTheAnalysisInDegreesAgainstMilliseconds) {
  const Trace& step = shown().analysis.of(Axis::tilt).step;
  const Series series = series_named(step_chart(shown().input), "Tilt");
  ASSERT_EQ(series.x.size(), qsizetype(step.time_s.size()));
  for (const std::size_t i : {std::size_t(0), std::size_t(400), step.time_s.size() - 1}) {
    EXPECT_DOUBLE_EQ(series.x[qsizetype(i)], step.time_s[i] * 1000);
    EXPECT_DOUBLE_EQ(series.y[qsizetype(i)], step.angle_rad[i] * kDegPerRad);
  }
}

TEST(StepChart, ShowsTheCameraOnItsBracketBesideTheOutput) {
  Rig rig = tests::owl();
  rig.pan.bracket.stiffness_Nmprad = si_quantity(60);
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Chart chart = step_chart({.rig = &rig, .now = &analysis});
  const Series series = series_named(chart, "Pan camera");
  const AxisCurves& pan = analysis.of(Axis::pan);
  ASSERT_EQ(series.y.size(), qsizetype(pan.camera_rad.size()));
  EXPECT_DOUBLE_EQ(series.y[400], pan.camera_rad[400] * kDegPerRad);
  const QString still = format_value(analysis.value("pan.picture.settle_time").value(), "s", "ms");
  EXPECT_TRUE(std::ranges::any_of(chart.marks, [&](const Mark& mark) {
    return mark.axis == Axis::pan && mark.text == "camera still " + still;
  }));
  EXPECT_TRUE(chart.readings.contains("Pan: the camera on its bracket is still after " + still));
  for (const Series& one : step_chart(shown().input).series)
    EXPECT_FALSE(one.name.contains("camera")) << "no bracket is entered";
}

TEST(StepChart, MarksSettlingWhereTheFigureSaysAndTheBandAroundTheMove) {
  const Chart chart = step_chart(shown().input);
  const double settle_s = shown().analysis.value("pan.step.settle_time").value();
  const auto mark = std::find_if(chart.marks.begin(), chart.marks.end(), [](const Mark& m) {
    return m.kind == Mark::Kind::upright && m.axis == Axis::pan;
  });
  ASSERT_NE(mark, chart.marks.end());
  EXPECT_DOUBLE_EQ(mark->x, settle_s * 1000);
  const AxisCurves& curves = shown().analysis.of(Axis::pan);
  EXPECT_DOUBLE_EQ(chart.bands.front().range.hi,
                   curves.move_rad * kDegPerRad + curves.band_rad * kDegPerRad);
}

TEST(StepChart, ShowsWhatLimitsTheStepInStripsOfWordsUntilItSettles) {
  const Chart chart = step_chart(shown().input);
  for (const Axis axis : kAxes) {
    double at = 0;
    QString last;
    for (const Stretch& stretch : chart.stretches) {
      if (stretch.axis != axis) continue;
      EXPECT_EQ(stretch.range.lo, at);
      EXPECT_NE(stretch.text, last);
      at = stretch.range.hi;
      last = stretch.text;
    }
    const auto settle = shown().analysis.value(std::string(name_of(axis)) + ".step.settle_time");
    EXPECT_DOUBLE_EQ(at, settle.value() * 1000);
    EXPECT_TRUE(chart.readings.join('|').contains(
        QString::fromStdString(shown().analysis.limits_of(axis).sentence)));
  }
  EXPECT_LT(chart.y.lo, -5) << "room for two rows below the angle";
}

TEST(StepChart, GivesEachLimitAWordAndAHatchingOfItsOwn) {
  Analysis analysis = shown().analysis;
  auto& step = analysis.limits[0].step;
  step.clear();
  for (std::size_t i = 0; i < kMoveLimits; ++i) step.insert(step.end(), 100, MoveLimit(i));
  PlotInput input = shown().input;
  input.now = &analysis;
  input.only = Axis::pan;
  const Chart chart = step_chart(input);
  ASSERT_EQ(chart.stretches.size(), qsizetype(kMoveLimits));
  for (qsizetype i = 0; i < chart.stretches.size(); ++i) {
    for (qsizetype k = 0; k < i; ++k) {
      EXPECT_NE(chart.stretches[i].text, chart.stretches[k].text);
      EXPECT_NE(chart.stretches[i].hatching, chart.stretches[k].hatching);
    }
  }
}

TEST(StepChart, HasAKeyThatNamesEachHatchingOnceAndFindsRoomBesideTheTitleOfX) {
  const Chart chart = step_chart(shown().input);
  const QVector<Stretch> key = hatching_key(chart);
  QStringList words;
  for (const Stretch& entry : key) {
    EXPECT_FALSE(words.contains(entry.text));
    words << entry.text;
  }
  for (const Stretch& stretch : chart.stretches) {
    const auto at = std::ranges::find(key, stretch.text, &Stretch::text);
    ASSERT_NE(at, key.end());
    EXPECT_EQ(at->hatching, stretch.hatching);
  }
  // The same plot without its strips has nothing at the left of the title of x.
  const auto key_ink = [](const Chart& shown) {
    QImage image(480, 300, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    paint_chart(painter, image.rect(), shown, theme_for(ThemeKind::print), QFont());
    painter.end();
    int ink = 0;
    for (int y = image.height() - 14; y < image.height(); ++y)
      for (int x = 0; x < 200; ++x) ink += image.pixel(x, y) != qRgb(255, 255, 255);
    return ink;
  };
  Chart bare = chart;
  bare.stretches.clear();
  EXPECT_EQ(key_ink(bare), 0);
  EXPECT_GT(key_ink(chart), 100);
}

TEST(StepChart, SaysWhatIsMissingInsteadOfAnEmptyPlot) {
  Rig rig = shown().rig;
  for (const Axis axis : kAxes) rig.axis(axis).motor.rotor_inertia_kgm2 = {};
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.rig = &rig;
  input.now = &analysis;
  const Chart chart = step_chart(input);
  EXPECT_TRUE(chart.series.isEmpty());
  EXPECT_TRUE(chart.message.contains("rotor inertia")) << chart.message.toStdString();
}

TEST(StepChart, SaysThatAnAxisNeverSettlesAndStillShowsTheMove) {
  Rig rig = shown().rig;
  rig.tilt.gearbox.backlash_rad = si_quantity(0.05);  // far wider than the band
  const Analysis analysis = analyse(rig, {.remedies = false});
  ASSERT_FALSE(analysis.value("tilt.step.settle_time"));
  PlotInput input;
  input.rig = &rig;
  input.now = &analysis;
  const Chart chart = step_chart(input);
  EXPECT_TRUE(chart.message.isEmpty());
  ASSERT_EQ(chart.notes.size(), 1);
  EXPECT_TRUE(chart.notes.front().startsWith("Tilt: ")) << chart.notes.front().toStdString();
  EXPECT_LE(chart.x.hi, 1000) << "six seconds of rest would squash the move";
}

TEST(StepChart, KeepsTheOldCurveAsAGhost) {
  PlotInput input = shown().input;
  input.ghost = &shown().analysis;
  const Chart chart = step_chart(input);
  EXPECT_EQ(chart.series.size(), 4);
  EXPECT_EQ(chart.series.front().line, Line::ghost);
}

TEST(RatioChart, LeavesAGapWhereARatioNeverSettlesAndMarksThePresentOne) {
  std::array<RatioSweep, 2> sweeps;
  for (RatioSweep& sweep : sweeps) {
    sweep.ratio = {5, 10, 20};
    sweep.shortest_time_s = {0.05, 0.04, 0.06};
    sweep.settle_time_s = {0.15, std::nullopt, 0.2};
    sweep.band_least = 8;
    sweep.band_most = 12;
  }
  PlotInput input = shown().input;
  input.sweeps = &sweeps;
  const Chart chart = ratio_chart(input);
  const Series settled = series_named(chart, "Pan settled");
  EXPECT_DOUBLE_EQ(settled.y[0], 150);
  EXPECT_TRUE(std::isnan(settled.y[1]));
  EXPECT_EQ(chart.bands.front().range, (Range{8, 12}));
  const double ratio = shown().rig.pan.gearbox.ratio.value();
  EXPECT_TRUE(std::any_of(chart.marks.begin(), chart.marks.end(), [ratio](const Mark& m) {
    return m.kind == Mark::Kind::upright && m.x == ratio;
  }));
}

TEST(RatioChart, HasTicksWhereTheShelfHasGearboxesElseAtTheUsualRatios) {
  std::array<RatioSweep, 2> sweeps;
  for (RatioSweep& sweep : sweeps) {
    sweep.ratio = {5, 10, 20};
    sweep.shortest_time_s = {0.05, 0.04, 0.06};
    sweep.settle_time_s = {0.15, 0.14, 0.2};
  }
  PlotInput input = shown().input;
  input.sweeps = &sweeps;
  EXPECT_EQ(ratio_chart(input).ticks, stock_ratios());
  const std::vector<double> stock{4.5, 12};
  input.stock = stock;
  EXPECT_EQ(ratio_chart(input).ticks, (QVector<double>{4.5, 12}));
  EXPECT_TRUE(summary_of(ratio_chart(input)).contains("on the shelf"));
}

TEST(TorqueChart, DrawsBrakingBelowZeroAndTheStepAsAPathOverTime) {
  const Chart chart = torque_speed_chart(shown().input);
  const EnvelopeCurve& envelope = shown().analysis.of(Axis::pan).envelope;
  EXPECT_DOUBLE_EQ(series_named(chart, "Pan driving limit").y[0], envelope.driving_Nm[0]);
  EXPECT_DOUBLE_EQ(series_named(chart, "Pan braking limit").y[0], -envelope.braking_Nm[0]);
  const Series path = series_named(chart, "Pan step");
  ASSERT_TRUE(path.is_path());
  EXPECT_DOUBLE_EQ(path.y[100], shown().analysis.of(Axis::pan).step_output_torque_Nm[100]);
}

TEST(TorqueChart, ShowsTheHotLimitAndFillsWhatTheWindingBearsForLong) {
  const Chart chart = torque_speed_chart(shown().input);
  const AxisCurves& pan = shown().analysis.of(Axis::pan);
  const Series hot = series_named(chart, "Pan driving limit, hot");
  ASSERT_EQ(hot.y.size(), qsizetype(pan.hot_envelope.driving_Nm.size()));
  EXPECT_DOUBLE_EQ(hot.y[60], pan.hot_envelope.driving_Nm[60]);
  const Series lasting = series_named(chart, "Pan lasting");
  EXPECT_TRUE(lasting.filled);
  EXPECT_DOUBLE_EQ(lasting.y[0], pan.lasting_torque_Nm);
  EXPECT_EQ(lasting.y.last(), 0) << "no more than the motor gives";
  for (const Series& series : chart.series)
    EXPECT_FALSE(series.axis == Axis::tilt && series.filled) << "tilt's limit is not known";
  EXPECT_TRUE(summary_of(chart).contains("Pan hot is with its winding at 120")) << "and 20 °C";
  const auto label = std::ranges::find_if(chart.marks, [](const Mark& mark) {
    return mark.kind == Mark::Kind::label && mark.text.startsWith("hot, 120");
  });
  ASSERT_NE(label, chart.marks.end());
  EXPECT_TRUE(hot.x.contains(label->x) && hot.y.contains(label->y)) << "on its line";
}

TEST(TravelSpeedChart, MarksBothEndsWithBrakingCurvesThatMeetTheLimits) {
  const Chart chart = travel_speed_chart(shown().input);
  EXPECT_EQ(chart.series.size(), 8);
  const Travel& travel = shown().analysis.of(Axis::tilt).travel;
  const double soft_deg = end_angle_rad(travel, *travel.soft_rad, End::most) * kDegPerRad;
  const Series forward = series_named(chart, "Tilt forward to soft limit");
  EXPECT_DOUBLE_EQ(forward.x.back(), soft_deg);
  EXPECT_EQ(forward.y.back(), 0);
  EXPECT_GT(forward.y.front(), 500);
  const Series back = series_named(chart, "Tilt back to stop");
  EXPECT_EQ(back.y.front(), 0);
  EXPECT_LT(back.y.back(), -500);
  EXPECT_DOUBLE_EQ(chart.bands.back().range.hi, soft_deg);
  const double stop_deg = end_angle_rad(travel, *travel.stops_rad, End::least) * kDegPerRad;
  EXPECT_TRUE(std::any_of(chart.marks.begin(), chart.marks.end(), [&](const Mark& m) {
    return m.kind == Mark::Kind::upright && m.axis == Axis::tilt && m.x == stop_deg;
  }));
  EXPECT_TRUE(chart.readings.join(' ').contains("Pan needs"))
      << chart.readings.join('|').toStdString();
}

TEST(TravelSpeedChart, SaysWhyAnAxisHasNone) {
  Rig rig = shown().rig;
  rig.pan.stops = {};
  rig.pan.stops.presence = Presence::none;
  rig.tilt.stops.soft_inset_rad = {};
  const Analysis analysis = analyse(rig, {.remedies = false});
  PlotInput input;
  input.rig = &rig;
  input.now = &analysis;
  const Chart chart = travel_speed_chart(input);
  EXPECT_TRUE(chart.series.isEmpty());
  EXPECT_TRUE(chart.message.contains("Pan has no stops")) << chart.message.toStdString();
  EXPECT_TRUE(chart.message.contains("soft limit inset")) << chart.message.toStdString();
}

TEST(BothChart, ShowsWhatEachAxisDoesWhileItHoldsAndMarksTheLargest) {
  const Chart chart = chart_of(PlotKind::both, shown().input);
  const Coupling& coupling = shown().analysis.coupling;
  const Series series = series_named(chart, "Tilt while Pan moves");
  const Trace& trace = coupling.holding(Axis::tilt).trace.of(Axis::tilt);
  ASSERT_EQ(series.y.size(), qsizetype(trace.angle_rad.size()));
  EXPECT_DOUBLE_EQ(series.y[300], trace.angle_rad[300] * kDegPerRad);
  const double largest_deg = coupling.holding(Axis::tilt).largest_rad * kDegPerRad;
  EXPECT_TRUE(std::any_of(chart.marks.begin(), chart.marks.end(), [&](const Mark& m) {
    return m.axis == Axis::tilt && std::abs(m.y) == largest_deg && m.text.contains("px");
  }));
  const QString said = summary_of(chart);
  EXPECT_TRUE(said.contains("Tilt is pushed off by up to")) << said.toStdString();
  EXPECT_TRUE(said.contains("Both moves at once settle after")) << said.toStdString();
}

TEST(BothChart, SaysWhyItIsEmpty) {
  Rig rig = shown().rig;
  PlotInput input;
  input.rig = &rig;
  const Analysis quick = analyse(rig, {.quick = true});
  input.now = &quick;
  EXPECT_TRUE(chart_of(PlotKind::both, input).message.contains("as soon as")) << "while dragging";
  rig.tilt.motor.rotor_inertia_kgm2 = {};
  const Analysis incomplete = analyse(rig, {.remedies = false});
  input.now = &incomplete;
  EXPECT_TRUE(chart_of(PlotKind::both, input).message.contains("rotor inertia"));
}

TEST(Charts, SayInWordsThatNothingIsOpen) {
  for (const PlotKind kind : plot_kinds()) {
    if (!is_chart(kind)) continue;
    EXPECT_FALSE(chart_of(kind, {}).message.isEmpty()) << plot_key(kind).toStdString();
  }
}

TEST(ChartCsv, NamesColumnsWithUnitsAndLeavesGapsEmpty) {
  Chart chart;
  chart.x_name = "Time";
  chart.x_unit = "ms";
  chart.y_unit = "°";
  chart.series = {{.name = "Pan", .x = {0, 0.125}, .y = {0, 1.5}},
                  {.name = "Tilt", .x = {0, 0.125}, .y = {std::nan(""), 2}}};
  EXPECT_EQ(csv_of(chart).toStdString(), "Time / ms,Pan / °,Tilt / °\n0,0,\n0.125,1.5,2\n");
}

TEST(Reason, NamesFieldsByTheirLabels) {
  EXPECT_EQ(reason_text("needs pan.motor.rotor_inertia").toStdString(),
            "needs pan motor rotor inertia");
  EXPECT_EQ(reason_text("needs pan.stops.stiffness, pan.stops").toStdString(),
            "needs pan stop stiffness, pan stops");
}

TEST(InertiaShares, AddUpToTheFiguresOfLoadAndRotor) {
  const Rig rig = with_defaults(shown().rig);
  for (const Axis axis : kAxes) {
    const auto shares = inertia_shares(rig, axis);
    ASSERT_TRUE(shares);
    double sum = 0;
    for (const InertiaShare& share : *shares) sum += share.inertia_kgm2;
    const std::string name = name_of(axis);
    const double figures = shown().analysis.value(name + ".inertia.load").value() +
                           shown().analysis.value(name + ".inertia.rotor_reflected").value();
    EXPECT_NEAR(sum / figures, 1, 1e-12);
    EXPECT_TRUE(std::is_sorted(shares->begin(), shares->end(), [](const auto& a, const auto& b) {
      return a.inertia_kgm2 > b.inertia_kgm2;
    }));
  }
}

TEST(InertiaShares, AreEmptyWhereAMassIsMissing) {
  Rig rig = with_defaults(shown().rig);
  rig.on_tilt.front().mass_kg = {};
  EXPECT_FALSE(inertia_shares(rig, Axis::pan));
}

}  // namespace
}  // namespace gazewright
