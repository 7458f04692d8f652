#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

/// How far each axis is pushed off its place by the other one's move, and what both need together.
namespace gazewright {
namespace {

using namespace chart_parts;

Axis other(Axis axis) { return axis == Axis::pan ? Axis::tilt : Axis::pan; }

void add_series(Chart& chart, const Analysis& analysis, Axis axis, Line line, const QString& name) {
  const Trace& trace = analysis.coupling.holding(axis).trace.of(axis);
  if (trace.time_s.empty()) return;
  Series series{.name = name, .axis = axis, .line = line};
  series.x = scaled(trace.time_s, kMsPerS);
  series.y = scaled(trace.angle_rad, kDegPerRad);
  chart.series.append(series);
}

/// "0.12° (2.3 px)", empty where it stays in its place.
QString pushed_text(const Analysis& analysis, Axis axis) {
  constexpr double kNothing_rad = 1e-12;  // rounding
  const double largest_rad = analysis.coupling.holding(axis).largest_rad;
  if (std::abs(largest_rad) < kNothing_rad) return {};
  const QString angle = format_value(largest_rad, "rad", "deg", 2);
  const auto pixels = analysis.value(figure_id(axis, "coupling.disturbance_px"));
  return pixels ? Plots::tr("%1 (%2 px)").arg(angle, number_text(*pixels, 2)) : angle;
}

void mark_largest(Chart& chart, const Analysis& analysis, Axis axis) {
  const Coupling::Held& held = analysis.coupling.holding(axis);
  const Trace& trace = held.trace.of(axis);
  const QString text = pushed_text(analysis, axis);
  chart.readings << (text.isEmpty()
                         ? Plots::tr("%1 stays in its place while %2 moves")
                               .arg(axis_word(axis), axis_word(other(axis)))
                         : Plots::tr("%1 is pushed off by up to %2 while it holds and %3 moves")
                               .arg(axis_word(axis), text, axis_word(other(axis))));
  const auto row = static_cast<std::size_t>(
      std::lower_bound(trace.time_s.begin(), trace.time_s.end(), held.largest_at_s) -
      trace.time_s.begin());
  if (row >= trace.angle_rad.size() || text.isEmpty()) return;
  chart.marks.append({.kind = Mark::Kind::point,
                      .axis = axis,
                      .x = held.largest_at_s * kMsPerS,
                      .y = trace.angle_rad[row] * kDegPerRad,
                      .text = text});
}

/// What both moves at once take, beside each alone.
void say_together(Chart& chart, const Analysis& analysis) {
  const Figure* settle = analysis.figure("both.settle_time");
  if (settle != nullptr && settle->value) {
    QStringList alone;
    for (const Axis axis : kAxes) {
      if (const auto one = analysis.value(figure_id(axis, "step.settle_time"))) {
        alone << Plots::tr("%1 alone %2").arg(axis_word(axis), format_value(*one, "s", "ms"));
      }
    }
    const QString text = Plots::tr("Both moves at once settle after %1")
                             .arg(format_value(*settle->value, "s", "ms"));
    chart.readings << (alone.isEmpty() ? text : Plots::tr("%1 (%2)").arg(text, alone.join(", ")));
    chart.marks.append(
        {.kind = Mark::Kind::upright,
         .axis = {},
         .x = *settle->value * kMsPerS,
         .y = std::nan(""),
         .text = Plots::tr("both settled %1").arg(format_value(*settle->value, "s", "ms"))});
  } else if (settle != nullptr) {
    chart.notes << Plots::tr("Both moves at once: %1").arg(reason_text(settle->because));
  }
  if (const auto peak = analysis.value("both.peak_bus_current")) {
    chart.readings << Plots::tr("Together they draw up to %1 from the supply")
                          .arg(format_value(*peak, "A", "A"));
  }
  const double short_s = analysis.coupling.both.short_s;
  chart.readings << (short_s > 0 ? Plots::tr("the supply is short for %1, and both get the same "
                                             "part of the power they want")
                                       .arg(format_value(short_s, "s", "ms"))
                                 : Plots::tr("the supply has enough for both"));
}

/// The settle band about the place, where the camera is known.
void add_band(Chart& chart, const Analysis& analysis) {
  const double band_rad = analysis.of(Axis::pan).band_rad;
  if (!(band_rad > 0) || !std::isfinite(band_rad)) return;
  const double band_deg = band_rad * kDegPerRad;
  chart.bands.append(
      {.range = {-band_deg, band_deg},
       .axis = chart.series.back().axis,
       .label = Plots::tr("settle band ±%1").arg(format_value(band_rad, "rad", "deg", 2))});
}

/// The moves and some rest after them. [ms]
double shown_ms(const Analysis& analysis) {
  const double end = analysis.coupling.both.of(Axis::pan).time_s.back() * kMsPerS;
  const auto settle = analysis.coupling.settle_time_s;
  return std::min(end, settle ? round_up(*settle * kMsPerS * 1.5) : 1000);
}

}  // namespace

Chart both_chart(const PlotInput& input) {
  Chart chart = time_chart(PlotKind::both, Plots::tr("Off its place"), QStringLiteral("°"));
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  if (input.now->coupling.both.bus_A.empty()) {
    const Figure* figure = input.now->figure("both.peak_bus_current");
    chart.message = figure != nullptr && begins_as("needs %1", figure->because)
                        ? reason_text(figure->because)
                        : Plots::tr("Worked out as soon as the rig stops changing.");
    return chart;
  }
  const auto name = [](Axis axis) {
    return Plots::tr("%1 while %2 moves").arg(axis_word(axis), axis_word(other(axis)));
  };
  add_variants(input, [&](const Analysis& variant, Axis axis, Line line, const QString& words) {
    add_series(chart, variant, axis, line, words);
  });
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    if (input.ghost != nullptr) {
      add_series(chart, *input.ghost, axis, Line::ghost,
                 Plots::tr("%1 before").arg(axis_word(axis)));
    }
  }
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    add_series(chart, *input.now, axis, Line::strong, name(axis));
    chart.legend.append({name(axis), axis, Line::strong});
    mark_largest(chart, *input.now, axis);
  }
  say_together(chart, *input.now);
  add_band(chart, *input.now);
  chart.x = {0, shown_ms(*input.now)};
  chart.y = y_range(chart, chart.x);
  for (const Band& band : chart.bands) {
    chart.y.lo = std::min(chart.y.lo, 1.2 * band.range.lo);
    chart.y.hi = std::max(chart.y.hi, 1.2 * band.range.hi);
  }
  chart.y.hi += 0.1 * (chart.y.hi - chart.y.lo);  // for the labels
  label_variants(chart, input);
  return chart;
}

}  // namespace gazewright
