#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"

/// The largest speed towards each end from which braking still stops at the soft limit and at the
/// hard stop, against the angle. Above zero it turns towards larger angles, below towards smaller.
namespace gazewright {
namespace {

using namespace chart_parts;

void add_bound(Chart& chart, const SpeedBound& bound, Axis axis, End end, bool soft) {
  const QString way = end == End::most ? Plots::tr("forward") : Plots::tr("back");
  chart.series.append(
      {.name = (soft ? Plots::tr("%1 %2 to soft limit") : Plots::tr("%1 %2 to stop"))
                   .arg(axis_word(axis), way),
       .axis = axis,
       .line = soft ? Line::strong : Line::dashed,
       .x = scaled(bound.angle_rad, kDegPerRad),
       .y = scaled(bound.speed_radps, sign_of(end) * kDegPerRad)});
}

void add_upright(Chart& chart, Axis axis, double angle_rad, const QString& text) {
  chart.marks.append({.kind = Mark::Kind::upright,
                      .axis = axis,
                      .x = angle_rad * kDegPerRad,
                      .y = std::nan(""),
                      .text = text});
}

void add_limits_of(Chart& chart, const Travel& travel, Axis axis) {
  const auto at = [&travel](const std::optional<double>& span, End end) {
    return end_angle_rad(travel, *span, end);
  };
  chart.bands.append({.upright = true,
                      .range = {at(travel.soft_rad, End::least) * kDegPerRad,
                                at(travel.soft_rad, End::most) * kDegPerRad},
                      .axis = axis,
                      .label = Plots::tr("between the soft limits")});
  const bool cable = travel.cable_rad && std::isfinite(*travel.cable_rad);
  for (const End end : kEnds) {
    // Text at one end of each: the other end looks the same.
    const bool first = end == End::least;
    add_upright(chart, axis, at(travel.stops_rad, end), first ? Plots::tr("stop") : QString());
    if (cable) {
      add_upright(chart, axis, at(travel.cable_rad, end), first ? Plots::tr("cable") : QString());
    }
  }
}

void add_readings(Chart& chart, const Analysis& analysis, Axis axis) {
  const auto need = analysis.value(figure_id(axis, "travel.least_inset"));
  const auto left = analysis.value(figure_id(axis, "travel.speed_at_stop"));
  if (need) {
    chart.readings << Plots::tr("%1 needs %2 to stop from full speed")
                          .arg(axis_word(axis), format_value(*need, "rad", "deg"));
  }
  if (left && *left > 0) {
    chart.readings << Plots::tr("%1 still hits the stop at %2 when it brakes at the soft limit")
                          .arg(axis_word(axis), format_value(*left, "rad/s", "deg/s"));
  }
}

void add_loop_limits(Chart& chart, const PlotInput& input) {
  if (input.rig == nullptr) return;
  const auto limit = [&input](Axis axis) {
    return input.rig->axis(axis).loop.speed_limit_radps.value() * kDegPerRad;
  };
  add_limits(chart, input, {limit(Axis::pan), limit(Axis::tilt)},
             {Plots::tr("loop's speed limit"), Plots::tr("%1 loop's speed limit")});
}

void set_ranges(Chart& chart) {
  double least = kInfinity, most = -kInfinity;
  for (const Series& series : chart.series) {
    least = std::min(least, series.x.front());
    most = std::max(most, series.x.back());
  }
  // A cable that lasts little longer than the stops is worth seeing.
  const double air = 0.04 * (most - least), room = 0.15 * (most - least);
  double lo = least, hi = most;
  for (const Mark& mark : chart.marks) {
    if (mark.x > least - room) lo = std::min(lo, mark.x);
    if (mark.x < most + room) hi = std::max(hi, mark.x);
  }
  chart.x = {lo - air, hi + air};
  chart.y = y_range(chart, chart.x);
  chart.y.hi += 0.15 * (chart.y.hi - chart.y.lo);  // for the labels
}

QString why_empty(const Analysis& analysis, Axis axis) {
  const auto& travel = analysis.of(axis).travel;
  if (travel.stops_rad && std::isinf(*travel.stops_rad)) {
    return Plots::tr("%1 has no stops to brake for").arg(axis_word(axis));
  }
  return travel.soft_rad && *travel.soft_rad == 0
             ? Plots::tr("%1: the soft limits leave no travel").arg(axis_word(axis))
             : missing_text(analysis, axis, "travel.speed_at_stop");
}

}  // namespace

Chart travel_speed_chart(const PlotInput& input) {
  Chart chart = empty_chart(PlotKind::travel_speed, {Plots::tr("Angle"), QStringLiteral("°")},
                            {Plots::tr("Speed"), QStringLiteral("°/s")});
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    const AxisCurves& curves = input.now->of(axis);
    if (curves.speed_over_travel.stop(End::most).angle_rad.empty()) {
      chart.notes << why_empty(*input.now, axis);
      continue;
    }
    for (const bool soft : {false, true}) {
      for (const End end : kEnds) {
        const SpeedOverTravel& speeds = curves.speed_over_travel;
        add_bound(chart, soft ? speeds.soft(end) : speeds.stop(end), axis, end, soft);
      }
    }
    add_limits_of(chart, curves.travel, axis);
    add_readings(chart, *input.now, axis);
  }
  if (chart.series.isEmpty()) {
    chart.message = chart.notes.join('\n');
    return chart;
  }
  set_ranges(chart);
  add_loop_limits(chart, input);
  add_axis_legend(chart, input);
  chart.legend.append({Plots::tr("to soft limit"), {}, Line::strong});
  chart.legend.append({Plots::tr("to stop"), {}, Line::dashed});
  return chart;
}

}  // namespace gazewright
