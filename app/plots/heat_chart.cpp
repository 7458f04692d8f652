#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"
#include "core/heat/copper.h"

/// Winding and bracket of each motor from cold on, the duty repeated, with their limits.
namespace gazewright {
namespace {

using namespace chart_parts;

constexpr double kMinutesPerSecond = 1 / 60.0;

const HeatCurve& heat_of(const Analysis& analysis, Axis axis) {
  return analysis.heat[static_cast<std::size_t>(axis)];
}

QVector<double> celsius(const std::vector<double>& values_K) {
  QVector<double> result;
  result.reserve(qsizetype(values_K.size()));
  for (const double value_K : values_K) result.append(value_K - kIceCelsius_K);
  return result;
}

/// The bracket is a line of its own where it is not simply as hot as the winding.
bool has_bracket(const HeatCurve& curve) { return curve.has_housing; }

void add_series(Chart& chart, const HeatCurve& curve, Axis axis, bool before) {
  if (curve.time_s.empty()) return;
  const QVector<double> minutes = scaled(curve.time_s, kMinutesPerSecond);
  chart.series.append({.name = Plots::tr("%1 winding").arg(axis_word(axis)),
                       .axis = axis,
                       .line = before ? Line::ghost : Line::strong,
                       .x = minutes,
                       .y = celsius(curve.winding_K)});
  if (!before && has_bracket(curve)) {
    chart.series.append({.name = Plots::tr("%1 bracket").arg(axis_word(axis)),
                         .axis = axis,
                         .line = Line::dashed,
                         .x = minutes,
                         .y = celsius(curve.mount_K)});
  }
  chart.x.hi = std::max(chart.x.hi, minutes.back());
}

void add_reading(Chart& chart, const HeatCurve& curve, Axis axis) {
  if (curve.runs_away) {
    const QString text = Plots::tr("%1 runs away: it never gets steady").arg(axis_word(axis));
    chart.notes << text;
    chart.readings << text;
    return;
  }
  const QString limit =
      curve.winding_limit_K > 0
          ? Plots::tr(", limit %1").arg(format_value(curve.winding_limit_K, "K", "degC"))
          : QString();
  chart.readings << Plots::tr("%1 winding gets to %2%3; %4")
                        .arg(axis_word(axis),
                             format_value(*std::ranges::max_element(curve.winding_K), "K", "degC"),
                             limit, QString::fromStdString(curve.duty));
}

void add_axis(Chart& chart, const PlotInput& input, Axis axis) {
  const HeatCurve& curve = heat_of(*input.now, axis);
  if (!curve.time_s.empty()) {
    add_series(chart, curve, axis, false);
    add_reading(chart, curve, axis);
    return;
  }
  const Figure* figure = input.now->figure(figure_id(axis, "heat.winding_temperature"));
  chart.notes
      << (figure != nullptr && figure->value
              ? Plots::tr("%1: worked out anew when nothing is dragged").arg(axis_word(axis))
              : missing_text(*input.now, axis, "heat.winding_temperature"));
}

/// A limit that is not known is no line.
double line_at(double limit_K) { return limit_K > 0 ? limit_K - kIceCelsius_K : kInfinity; }

void add_limit_lines(Chart& chart, const PlotInput& input) {
  const HeatCurve &pan = heat_of(*input.now, Axis::pan), &tilt = heat_of(*input.now, Axis::tilt);
  add_limits(chart, input, {line_at(pan.mount_limit_K), line_at(tilt.mount_limit_K)},
             {Plots::tr("brackets give way"), Plots::tr("%1 bracket gives way")});
  add_limits(chart, input, {line_at(pan.winding_limit_K), line_at(tilt.winding_limit_K)},
             {Plots::tr("windings' limit"), Plots::tr("%1 winding's limit")});
}

}  // namespace

Chart heat_chart(const PlotInput& input) {
  Chart chart = empty_chart(PlotKind::heat, {Plots::tr("Time"), Plots::tr("min")},
                            {Plots::tr("Temperature"), Plots::tr("°C")});
  chart.x = {0, 0};
  chart.x_may_be_log = true;
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_variants(input, [&](const Analysis& variant, Axis axis, Line line, const QString& name) {
    const HeatCurve& curve = heat_of(variant, axis);
    if (curve.time_s.empty()) return;
    chart.series.append({.name = Plots::tr("%1 winding").arg(name),
                         .axis = axis,
                         .line = line,
                         .x = scaled(curve.time_s, kMinutesPerSecond),
                         .y = celsius(curve.winding_K)});
    chart.x.hi = std::max(chart.x.hi, chart.series.back().x.back());
  });
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    add_axis(chart, input, axis);
    if (input.ghost != nullptr) add_series(chart, heat_of(*input.ghost, axis), axis, true);
  }
  if (chart.series.isEmpty()) {
    chart.message = chart.notes.join('\n');
    return chart;
  }
  chart.y = y_range(chart, chart.x);
  add_limit_lines(chart, input);
  add_axis_legend(chart, input);
  chart.legend.append({Plots::tr("winding"), {}, Line::strong});
  if (std::ranges::any_of(chart.series, [](const Series& s) { return s.line == Line::dashed; }))
    chart.legend.append({Plots::tr("bracket"), {}, Line::dashed});
  label_variants(chart, input);
  return chart;
}

}  // namespace gazewright
