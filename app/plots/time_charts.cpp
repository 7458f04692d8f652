#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

/// Angle, speed and current over the time of the step.
namespace gazewright {
namespace {

using namespace chart_parts;

/// The time that shows the move of an axis and some rest after it, where it never settles the rise
/// and what follows. [ms]
double shown_time_ms(const Analysis& analysis, Axis axis) {
  const double end = analysis.of(axis).step.time_s.back() * kMsPerS;
  const auto settle = analysis.value(settle_id(analysis, axis));
  if (settle) return std::min(end, round_up(*settle * kMsPerS * 1.5));
  const double rise = analysis.value(figure_id(axis, "step.rise_time")).value_or(0);
  return std::min(end, std::max(600.0, round_up(10 * rise * kMsPerS)));
}

using Pick = const std::vector<double> Trace::*;

void add_series(Chart& chart, const Analysis& analysis, Axis axis, Line line, Pick pick,
                double factor, const QString& name) {
  const Trace& step = analysis.of(axis).step;
  if (step.time_s.empty()) return;
  Series series{.name = name, .axis = axis, .line = line};
  series.x = scaled(step.time_s, kMsPerS);
  series.y = scaled(step.*pick, factor);
  chart.series.append(series);
}

/// Ghosts first, so that what holds now lies on top.
void add_both(Chart& chart, const PlotInput& input, Pick pick, double factor) {
  add_variants(input, [&](const Analysis& variant, Axis axis, Line line, const QString& name) {
    add_series(chart, variant, axis, line, pick, factor, name);
  });
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    if (input.ghost != nullptr) {
      add_series(chart, *input.ghost, axis, Line::ghost, pick, factor,
                 Plots::tr("%1 before").arg(axis_word(axis)));
    }
  }
  for (const Axis axis : kAxes) {
    if (shows(input, axis)) {
      add_series(chart, *input.now, axis, Line::strong, pick, factor, axis_word(axis));
    }
  }
}

QString camera_name(Axis axis) { return Plots::tr("%1 camera").arg(axis_word(axis)); }

/// The camera's own way, where it swings on a bracket behind the output.
void add_cameras(Chart& chart, const PlotInput& input) {
  for (const Axis axis : kAxes) {
    const AxisCurves& curves = input.now->of(axis);
    if (!shows(input, axis) || curves.camera_rad.empty()) continue;
    chart.series.append({.name = camera_name(axis),
                         .axis = axis,
                         .line = Line::fine,
                         .x = scaled(curves.step.time_s, kMsPerS),
                         .y = scaled(curves.camera_rad, kDegPerRad)});
  }
}

/// Ranges, legend, and a message where nothing can be shown.
void finish(Chart& chart, const PlotInput& input) {
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    if (input.now->of(axis).step.time_s.empty()) {
      chart.notes << missing_text(*input.now, axis, "step.settle_time");
    } else {
      chart.legend.append({axis_word(axis), axis, Line::strong});
    }
  }
  if (std::none_of(chart.series.begin(), chart.series.end(),
                   [](const Series& s) { return is_present(s.line); })) {
    chart.message = chart.notes.join('\n');
    return;
  }
  const bool has_ghost = std::any_of(chart.series.begin(), chart.series.end(),
                                     [](const Series& s) { return s.line == Line::ghost; });
  if (has_ghost) chart.legend.append({Plots::tr("before"), {}, Line::ghost});
  double shown = 0;
  for (const Axis axis : kAxes) {
    if (!shows(input, axis) || input.now->of(axis).step.time_s.empty()) continue;
    shown = std::max(shown, shown_time_ms(*input.now, axis));
  }
  add_variants(input, [&](const Analysis& variant, Axis axis, Line, const QString&) {
    if (!variant.of(axis).step.time_s.empty())
      shown = std::max(shown, shown_time_ms(variant, axis));
  });
  chart.x = {0, shown};
  chart.y = y_range(chart, chart.x);
  chart.y.hi += 0.1 * (chart.y.hi - chart.y.lo);  // for the labels
}

/// The first time the angle passes a fraction of the move, for the mark of the rise. [ms]
double passes_ms(const Trace& step, double level_rad) {
  for (std::size_t i = 0; i < step.angle_rad.size(); ++i) {
    if (step.angle_rad[i] / level_rad >= 1) return step.time_s[i] * kMsPerS;
  }
  return std::nan("");
}

void mark_rise(Chart& chart, const Analysis& analysis, Axis axis) {
  const auto rise = analysis.value(figure_id(axis, "step.rise_time"));
  const AxisCurves& curves = analysis.of(axis);
  if (!rise || curves.move_rad == 0) return;
  const double start = passes_ms(curves.step, 0.1 * curves.move_rad);
  const QString text = format_value(*rise, "s", "ms");
  chart.readings << Plots::tr("%1 rises (10–90 %) in %2").arg(axis_word(axis), text);
  if (!std::isfinite(start)) return;
  chart.marks.append({.kind = Mark::Kind::bracket,
                      .axis = axis,
                      .x = start,
                      .y = 0.1 * curves.move_rad * kDegPerRad,
                      .x_end = start + *rise * kMsPerS,
                      .text = Plots::tr("rise %1").arg(text)});
}

void mark_overshoot(Chart& chart, const Analysis& analysis, Axis axis) {
  const auto overshoot = analysis.value(figure_id(axis, "step.overshoot"));
  const AxisCurves& curves = analysis.of(axis);
  const std::vector<double>& angle = curves.step.angle_rad;
  if (!overshoot || angle.empty()) return;
  const QString text = format_value(*overshoot, "1", "%", 2);
  chart.readings << Plots::tr("%1 overshoots by %2").arg(axis_word(axis), text);
  if (*overshoot < 0.005) return;
  const bool up = curves.move_rad >= 0;
  const auto top = up ? std::max_element(angle.begin(), angle.end())
                      : std::min_element(angle.begin(), angle.end());
  const auto at = static_cast<std::size_t>(top - angle.begin());
  chart.marks.append({.kind = Mark::Kind::point,
                      .axis = axis,
                      .x = curves.step.time_s[at] * kMsPerS,
                      .y = angle[at] * kDegPerRad,
                      .text = '+' + text});
}

/// "±4 px, ±0.2°".
QString band_text(const Analysis& analysis, double band_rad) {
  const QString angle = QStringLiteral("±") + format_value(band_rad, "rad", "deg", 2);
  const auto px_per_rad = analysis.value("camera.pixels_per_radian");
  return px_per_rad ? Plots::tr("±%1 px, %2").arg(number_text(band_rad * *px_per_rad, 2), angle)
                    : angle;
}

void mark_settling(Chart& chart, const PlotInput& input, Axis axis) {
  const Analysis& analysis = *input.now;
  const AxisCurves& curves = analysis.of(axis);
  const double band_deg = curves.band_rad * kDegPerRad;
  const double move_deg = curves.move_rad * kDegPerRad;
  if (std::isfinite(band_deg) && band_deg > 0) {
    chart.bands.append({.range = {move_deg - band_deg, move_deg + band_deg},
                        .axis = axis,
                        .label = band_text(analysis, curves.band_rad)});
  }
  const Figure* settle = analysis.figure(figure_id(axis, "step.settle_time"));
  if (settle == nullptr) return;
  if (!settle->value) {
    chart.notes << QStringLiteral("%1: %2").arg(axis_word(axis), reason_text(settle->because));
    return;
  }
  const QString text = format_value(*settle->value, "s", "ms");
  chart.readings << Plots::tr("%1 settles after %2").arg(axis_word(axis), text);
  chart.marks.append({.kind = Mark::Kind::upright,
                      .axis = axis,
                      .x = *settle->value * kMsPerS,
                      .y = move_deg,
                      .text = Plots::tr("settled %1").arg(text)});
}

void mark_camera(Chart& chart, const Analysis& analysis, Axis axis) {
  const AxisCurves& curves = analysis.of(axis);
  if (curves.camera_rad.empty()) return;
  chart.legend.append({camera_name(axis), axis, Line::fine});
  const Figure* still = analysis.figure(figure_id(axis, "picture.settle_time"));
  if (!still->value) {
    chart.notes << QStringLiteral("%1: %2").arg(axis_word(axis), reason_text(still->because));
    return;
  }
  const QString text = format_value(*still->value, "s", "ms");
  chart.readings
      << Plots::tr("%1: the camera on its bracket is still after %2").arg(axis_word(axis), text);
  chart.marks.append({.kind = Mark::Kind::upright,
                      .axis = axis,
                      .x = *still->value * kMsPerS,
                      .y = curves.move_rad * kDegPerRad,
                      .text = Plots::tr("camera still %1").arg(text),
                      .minor = true});
}

}  // namespace

Chart step_chart(const PlotInput& input) {
  Chart chart = time_chart(PlotKind::step, Plots::tr("Angle"), QStringLiteral("°"));
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_both(chart, input, &Trace::angle_rad, kDegPerRad);
  add_cameras(chart, input);
  finish(chart, input);
  if (!chart.message.isEmpty()) return chart;
  for (const Axis axis : kAxes) {
    if (!shows(input, axis) || input.now->of(axis).step.time_s.empty()) continue;
    mark_rise(chart, *input.now, axis);
    mark_overshoot(chart, *input.now, axis);
    mark_settling(chart, input, axis);
    mark_camera(chart, *input.now, axis);
  }
  add_doubt_bands(chart, input);
  add_limit_stretches(chart, input);
  label_variants(chart, input);
  return chart;
}

Chart speed_chart(const PlotInput& input) {
  Chart chart = time_chart(PlotKind::speed, Plots::tr("Speed"), QStringLiteral("°/s"));
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_both(chart, input, &Trace::speed_radps, kDegPerRad);
  finish(chart, input);
  for (const Axis axis : kAxes) {
    if (!shows(input, axis) || !chart.message.isEmpty()) continue;
    const auto peak = input.now->value(figure_id(axis, "step.peak_speed"));
    if (peak) {
      chart.readings
          << Plots::tr("%1 reaches %2").arg(axis_word(axis), format_value(*peak, "rad/s", "deg/s"));
    }
  }
  if (input.rig != nullptr && chart.message.isEmpty()) {
    add_limits(chart, input,
               {input.rig->pan.loop.speed_limit_radps.value() * kDegPerRad,
                input.rig->tilt.loop.speed_limit_radps.value() * kDegPerRad},
               {Plots::tr("speed limit of the loop"), Plots::tr("%1 speed limit of the loop")});
  }
  label_variants(chart, input);
  return chart;
}

Chart current_chart(const PlotInput& input) {
  Chart chart = time_chart(PlotKind::current, Plots::tr("Current"), QStringLiteral("A"));
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_variants(input, [&](const Analysis& variant, Axis axis, Line line, const QString& name) {
    add_series(chart, variant, axis, line, &Trace::current_A, 1, Plots::tr("%1 phase").arg(name));
  });
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    add_series(chart, *input.now, axis, Line::dashed, &Trace::bus_A, 1,
               Plots::tr("%1 bus").arg(axis_word(axis)));
    add_series(chart, *input.now, axis, Line::strong, &Trace::current_A, 1,
               Plots::tr("%1 phase").arg(axis_word(axis)));
  }
  finish(chart, input);
  if (!chart.message.isEmpty()) return chart;
  chart.legend.append({Plots::tr("phase"), {}, Line::strong});
  chart.legend.append({Plots::tr("bus"), {}, Line::dashed});
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    const auto peak = input.now->value(figure_id(axis, "step.peak_current"));
    if (peak) {
      chart.readings << Plots::tr("%1 draws up to %2 in a phase")
                            .arg(axis_word(axis), format_value(*peak, "A", "A"));
    }
  }
  if (input.rig != nullptr) {
    add_limits(chart, input,
               {input.rig->pan.drive.current_limit_A.value(),
                input.rig->tilt.drive.current_limit_A.value()},
               {Plots::tr("drive limit"), Plots::tr("%1 drive limit")});
  }
  label_variants(chart, input);
  return chart;
}

}  // namespace gazewright
