#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"

/// Torque against speed at the output: what motor, drive and supply can give, and what the step
/// uses of it. Forward is to the right; above zero the motor pushes forward.
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
}

}  // namespace

Chart torque_speed_chart(const PlotInput& input) {
  Chart chart =
      empty_chart(PlotKind::torque_speed, {Plots::tr("Output speed"), QStringLiteral("°/s")},
                  {Plots::tr("Torque"), QStringLiteral("N·m")});
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    const AxisCurves& curves = input.now->of(axis);
    if (curves.envelope.speed_radps.empty()) {
      chart.notes << missing_text(*input.now, axis, "output.torque_stall");
      continue;
    }
    add_path(chart, curves, axis);
    add_limit(chart, curves.envelope, axis, false);
    add_limit(chart, curves.envelope, axis, true);
    add_readings(chart, *input.now, axis);
  }
  if (chart.series.isEmpty()) {
    chart.message = chart.notes.join('\n');
    return chart;
  }
  set_ranges(chart);
  add_gear_limits(chart, input);
  add_legend(chart, input);
  return chart;
}

}  // namespace gazewright
