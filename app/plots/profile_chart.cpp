#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

/// The task's move along every profile side by side, with the settle band.
namespace gazewright {
namespace {

using namespace chart_parts;

Line line_of(ProfileKind kind) {
  switch (kind) {
    case ProfileKind::step:
      return Line::strong;
    case ProfileKind::trapezoid:
      return Line::dashed;
    case ProfileKind::jerk_limited:
      return Line::dash_dotted;
    case ProfileKind::minimum_jerk:
      return Line::dotted;
    case ProfileKind::minimum_time:
      return Line::fine;
  }
  return Line::strong;
}

const AxisProfiles& axis_profiles(const Analysis& analysis, Axis axis) {
  return analysis.profiles[static_cast<std::size_t>(axis)];
}

void add_series(Chart& chart, const AxisProfiles& profiles, Axis axis, bool before) {
  for (const ProfileRun& run : profiles.runs) {
    if (run.time_s.empty()) continue;
    chart.series.append(
        {.name = QStringLiteral("%1 %2").arg(axis_word(axis), profile_word(run.kind)),
         .axis = axis,
         .line = before ? Line::ghost : line_of(run.kind),
         .x = scaled(run.time_s, kMsPerS),
         .y = scaled(run.angle_rad, kDegPerRad)});
  }
}

/// Of a variant the profile that is best for it.
void add_variant(Chart& chart, const AxisProfiles& profiles, Axis axis, Line line,
                 const QString& name) {
  const ProfileRun* best = profiles.best ? profiles.run(*profiles.best) : nullptr;
  if (best == nullptr || best->time_s.empty()) return;
  chart.series.append({.name = QStringLiteral("%1, %2").arg(name, profile_word(best->kind)),
                       .axis = axis,
                       .line = line,
                       .x = scaled(best->time_s, kMsPerS),
                       .y = scaled(best->angle_rad, kDegPerRad)});
}

/// Up to a little after the last one has settled. [ms]
double shown_ms(const AxisProfiles& profiles) {
  double shown = 0;
  for (const ProfileRun& run : profiles.runs) {
    if (run.time_s.empty()) continue;
    const double until = run.figures.settle_time_s.value_or(2 * run.planned_s + 0.4);
    shown = std::max(shown, std::min(until * 1.3, run.time_s.back()) * kMsPerS);
  }
  return shown;
}

void add_band(Chart& chart, const AxisCurves& curves, Axis axis) {
  const double band_deg = curves.band_rad * kDegPerRad, move_deg = curves.move_rad * kDegPerRad;
  if (!std::isfinite(band_deg) || band_deg <= 0) return;
  chart.bands.append(
      {.range = {move_deg - band_deg, move_deg + band_deg},
       .axis = axis,
       .label = QStringLiteral("±") + format_value(curves.band_rad, "rad", "deg", 2)});
}

void add_best(Chart& chart, const AxisProfiles& profiles, const AxisCurves& curves, Axis axis) {
  const ProfileRun* best = profiles.best ? profiles.run(*profiles.best) : nullptr;
  if (best == nullptr || !best->figures.settle_time_s) return;
  const double settle_s = *best->figures.settle_time_s;
  chart.marks.append(
      {.kind = Mark::Kind::upright,
       .axis = axis,
       .x = settle_s * kMsPerS,
       .y = curves.move_rad * kDegPerRad,
       .text = Plots::tr("best: %1, settled %2")
                   .arg(profile_word(best->kind), format_value(settle_s, "s", "ms"))});
}

void add_axis(Chart& chart, const PlotInput& input, Axis axis) {
  const AxisProfiles& profiles = axis_profiles(*input.now, axis);
  if (profiles.runs.empty()) {
    chart.notes
        << (input.now->of(axis).step.time_s.empty()
                ? missing_text(*input.now, axis, "step.settle_time")
                : Plots::tr("%1: worked out anew when nothing is dragged").arg(axis_word(axis)));
    return;
  }
  add_series(chart, profiles, axis, false);
  add_band(chart, input.now->of(axis), axis);
  add_best(chart, profiles, input.now->of(axis), axis);
  chart.readings << QStringLiteral("%1: %2").arg(axis_word(axis),
                                                 QString::fromStdString(profiles.advice));
  chart.x.hi = std::max(chart.x.hi, shown_ms(profiles));
}

/// While they are left out, what was before is better than an empty plot.
void add_ghosts(Chart& chart, const PlotInput& input) {
  if (input.ghost == nullptr) return;
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    const AxisProfiles& before = axis_profiles(*input.ghost, axis);
    add_series(chart, before, axis, true);
    chart.x.hi = std::max(chart.x.hi, shown_ms(before));
  }
}

}  // namespace

QString profile_word(ProfileKind kind) {
  switch (kind) {
    case ProfileKind::step:
      return Plots::tr("step");
    case ProfileKind::trapezoid:
      return Plots::tr("trapezoid");
    case ProfileKind::jerk_limited:
      return Plots::tr("jerk-limited");
    case ProfileKind::minimum_jerk:
      return Plots::tr("minimum-jerk");
    case ProfileKind::minimum_time:
      return Plots::tr("minimum-time");
  }
  return {};
}

Chart profile_chart(const PlotInput& input) {
  Chart chart = time_chart(PlotKind::profiles, Plots::tr("Angle"), QStringLiteral("°"));
  chart.x = {0, 0};
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_variants(input, [&](const Analysis& variant, Axis axis, Line line, const QString& words) {
    add_variant(chart, axis_profiles(variant, axis), axis, line, words);
  });
  const auto variants = chart.series.size();
  for (const Axis axis : kAxes) {
    if (shows(input, axis)) add_axis(chart, input, axis);
  }
  if (chart.series.size() == variants) add_ghosts(chart, input);
  if (chart.series.size() == variants) {
    chart.message = chart.notes.join('\n');
    return chart;
  }
  chart.y = y_range(chart, chart.x);
  chart.y.hi += 0.1 * (chart.y.hi - chart.y.lo);  // for the labels
  add_axis_legend(chart, input);
  for (const ProfileKind kind : kProfiles)
    chart.legend.append({profile_word(kind), {}, line_of(kind)});
  label_variants(chart, input);
  chart.no_difference =
      Plots::tr("Of a variant only the profile that is best for it is here, which may be another.");
  return chart;
}

}  // namespace gazewright
