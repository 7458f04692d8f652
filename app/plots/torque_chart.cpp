#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"
#include "core/heat/copper.h"

/// Torque against speed at the output: what motor, drive and supply can give, and what the step
/// uses of it, cold and hot, and what the winding bears for long. Forward is to the right; above
/// zero the motor pushes forward.
namespace gazewright {
namespace {

using namespace chart_parts;

/// Appends one end of the envelope for speeds of either sign. Its mirror image holds backwards.
void add_limit(Chart& chart, const EnvelopeCurve& envelope, Axis axis, bool driving) {
  Series series{.name = driving ? Plots::tr("%1 driving limit").arg(axis_word(axis))
                                : Plots::tr("%1 braking limit").arg(axis_word(axis)),
                .axis = axis,
                .line = driving ? Line::strong : Line::dashed};
  const auto& torque = driving ? envelope.driving_Nm : envelope.braking_Nm;
  for (std::size_t i = 0; i < envelope.speed_radps.size(); ++i) {
    series.x.append(envelope.speed_radps[i] * kDegPerRad);
    series.y.append(driving ? torque[i] : -torque[i]);
  }
  chart.series.append(series);
}

void add_label(Chart& chart, Axis axis, double x, double y, const QString& text) {
  chart.marks.append({.kind = Mark::Kind::label, .axis = axis, .x = x, .y = y, .text = text});
}

/// What the winding bears without end, as far as the motor gives it: filled.
void add_lasting(Chart& chart, const AxisCurves& curves, Axis axis) {
  if (!(curves.lasting_torque_Nm > 0)) return;
  Series series{.name = Plots::tr("%1 lasting").arg(axis_word(axis)),
                .axis = axis,
                .line = Line::dotted,
                .x = scaled(curves.envelope.speed_radps, kDegPerRad),
                .filled = true};
  for (const double most : curves.envelope.driving_Nm)
    series.y.append(std::min(most, curves.lasting_torque_Nm));
  constexpr int kLabelAt = 4;  // part of the speeds
  const auto at = series.x.size() / kLabelAt;
  if (curves.lasting_torque_Nm < curves.envelope.driving_Nm[std::size_t(at)])
    add_label(chart, axis, series.x[at], series.y[at], Plots::tr("lasting"));
  chart.series.append(series);
  chart.readings << Plots::tr("%1 bears %2 without end")
                        .arg(axis_word(axis), format_value(curves.lasting_torque_Nm, "N.m", "N.m"));
}

/// What is left of the driving limit with the winding at the temperature that it may have, named
/// where it differs most.
void add_hot(Chart& chart, const AxisCurves& curves, Axis axis) {
  if (curves.hot_envelope.speed_radps.empty()) return;
  chart.series.append({.name = Plots::tr("%1 driving limit, hot").arg(axis_word(axis)),
                       .axis = axis,
                       .line = Line::dash_dotted,
                       .x = scaled(curves.hot_envelope.speed_radps, kDegPerRad),
                       .y = scaled(curves.hot_envelope.driving_Nm, 1)});
  const Series& hot = chart.series.back();
  qsizetype at = 0;
  const auto lost_Nm = [&](qsizetype i) {
    return curves.envelope.driving_Nm[std::size_t(i)] - hot.y[i];
  };
  for (qsizetype i = 1; i < hot.y.size(); ++i) {
    if (lost_Nm(i) > lost_Nm(at)) at = i;
  }
  if (lost_Nm(at) > 0)
    add_label(chart, axis, hot.x[at], hot.y[at],
              Plots::tr("hot, %1").arg(format_value(curves.winding_limit_K, "K", "degC")));
  chart.readings << Plots::tr("%1 hot is with its winding at %2, else at %3")
                        .arg(axis_word(axis), format_value(curves.winding_limit_K, "K", "degC"),
                             format_value(kTwentyCelsius_K, "K", "degC"));
}

void add_variant(Chart& chart, const EnvelopeCurve& envelope, Axis axis, Line line,
                 const QString& name) {
  if (envelope.speed_radps.empty()) return;
  chart.series.append({.name = Plots::tr("%1 driving limit").arg(name),
                       .axis = axis,
                       .line = line,
                       .x = scaled(envelope.speed_radps, kDegPerRad),
                       .y = scaled(envelope.driving_Nm, 1)});
}

void add_path(Chart& chart, const AxisCurves& curves, Axis axis) {
  const Trace& step = curves.step;
  if (step.time_s.empty() || curves.step_output_torque_Nm.size() != step.time_s.size()) return;
  const double sign = curves.move_rad < 0 ? -1 : 1;
  chart.series.append({.name = Plots::tr("%1 step").arg(axis_word(axis)),
                       .axis = axis,
                       .line = Line::fine,
                       .x = scaled(step.speed_radps, sign * kDegPerRad),
                       .y = scaled(curves.step_output_torque_Nm, sign),
                       .time_s = scaled(step.time_s, 1)});
}

void add_gear_limits(Chart& chart, const PlotInput& input) {
  if (input.rig == nullptr) return;
  const double pan = input.rig->pan.gearbox.peak_torque_Nm.value();
  const double tilt = input.rig->tilt.gearbox.peak_torque_Nm.value();
  add_limits(chart, input, {pan, tilt}, {Plots::tr("gearbox peak"), Plots::tr("%1 gearbox peak")});
}

void add_readings(Chart& chart, const Analysis& analysis, Axis axis) {
  const auto stall = analysis.value(figure_id(axis, "output.torque_stall"));
  const auto top = analysis.value(figure_id(axis, "output.speed_top"));
  if (!stall || !top) return;
  chart.readings << Plots::tr("%1 gives up to %2 and reaches %3")
                        .arg(axis_word(axis), format_value(*stall, "N.m", "N.m"),
                             format_value(*top, "rad/s", "deg/s"));
}

void set_ranges(Chart& chart) {
  double least = 0, most = 0;
  for (const Series& series : chart.series) {
    if (series.x.isEmpty()) continue;
    const auto [lo, hi] = std::minmax_element(series.x.begin(), series.x.end());
    if (series.is_path()) least = std::min(least, *lo);
    most = std::max(most, *hi);
  }
  chart.x = {1.05 * least, most > 0 ? 1.05 * most : 1};
  chart.y = y_range(chart, chart.x);
}

void add_legend(Chart& chart, const PlotInput& input) {
  add_axis_legend(chart, input);
  chart.legend.append({Plots::tr("driving"), {}, Line::strong});
  chart.legend.append({Plots::tr("braking"), {}, Line::dashed});
  chart.legend.append({Plots::tr("the step"), {}, Line::fine});
  const auto add = [&](Line line, const QString& text) {
    if (std::ranges::any_of(chart.series, [line](const Series& s) { return s.line == line; }))
      chart.legend.append({text, {}, line});
  };
  add(Line::dash_dotted, Plots::tr("driving, hot"));
  add(Line::dotted, Plots::tr("lasting"));
}

}  // namespace

Chart torque_speed_chart(const PlotInput& input) {
  Chart chart =
      empty_chart(PlotKind::torque_speed, {Plots::tr("Output speed"), QStringLiteral("°/s")},
                  {Plots::tr("Torque"), QStringLiteral("N·m")});
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_variants(input, [&](const Analysis& variant, Axis axis, Line line, const QString& name) {
    add_variant(chart, variant.of(axis).envelope, axis, line, name);
  });
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    const AxisCurves& curves = input.now->of(axis);
    if (curves.envelope.speed_radps.empty()) {
      chart.notes << missing_text(*input.now, axis, "output.torque_stall");
      continue;
    }
    add_lasting(chart, curves, axis);
    add_path(chart, curves, axis);
    add_hot(chart, curves, axis);
    add_limit(chart, curves.envelope, axis, false);
    add_limit(chart, curves.envelope, axis, true);
    add_readings(chart, *input.now, axis);
  }
  if (std::ranges::all_of(chart.series, [](const Series& s) { return is_variant(s.line); })) {
    chart.message = chart.notes.join('\n');
    return chart;
  }
  set_ranges(chart);
  add_gear_limits(chart, input);
  add_legend(chart, input);
  label_variants(chart, input);
  return chart;
}

}  // namespace gazewright
