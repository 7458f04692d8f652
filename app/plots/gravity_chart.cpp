#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

/// Gravity's torque on each axis over its travel, the other axis where that is largest, and the
/// band within which friction holds the axis without power.
namespace gazewright {
namespace {

using namespace chart_parts;

constexpr double kMilliPerUnit = 1000;  // the plot is in mN·m

void add_friction(Chart& chart, const GravityOverTravel& gravity, Axis axis) {
  const double hold = gravity.friction_Nm;
  if (!std::isfinite(hold)) return;
  chart.bands.append({.upright = false,
                      .range = {-hold * kMilliPerUnit, hold * kMilliPerUnit},
                      .axis = axis,
                      .label = Plots::tr("%1 stays without power").arg(axis_word(axis))});
}

void add_readings(Chart& chart, const Analysis& analysis, Axis axis) {
  const auto& gravity = analysis.gravity[std::size_t(axis)];
  const auto [least, most] = std::ranges::minmax_element(gravity.torque_Nm);
  const double largest = std::max(std::abs(*least), std::abs(*most));
  const double hold = gravity.friction_Nm;
  const QString of_axis = axis_word(axis), torque = format_value(largest, "N.m", "mN.m");
  if (largest < 1e-9) {
    chart.readings << Plots::tr("gravity does not turn %1").arg(of_axis);
  } else if (std::isnan(hold)) {
    chart.readings << Plots::tr("gravity turns %1 with up to %2").arg(of_axis, torque);
  } else if (std::isinf(hold)) {
    chart.readings << Plots::tr("%1's gearbox locks itself against %2").arg(of_axis, torque);
  } else {
    chart.readings << (hold < largest
                           ? Plots::tr("%1 turns by itself without power: gravity %2, friction %3")
                           : Plots::tr("%1 stays without power: gravity %2, friction %3"))
                          .arg(of_axis, torque, format_value(hold, "N.m", "mN.m"));
  }
  if (const auto current = analysis.value(figure_id(axis, "balance.hold_current")))
    chart.readings << Plots::tr("%1 needs %2 to hold its worst angle")
                          .arg(of_axis, format_value(*current, "A", "A"));
}

void set_ranges(Chart& chart) {
  double least = kInfinity, most = -kInfinity, high = 0;
  for (const Series& series : chart.series) {
    least = std::min(least, series.x.front());
    most = std::max(most, series.x.back());
    for (const double y : series.y) high = std::max(high, std::abs(y));
  }
  // A band that is far wider than the torque still leaves the torque visible.
  for (const Band& band : chart.bands) high = std::max(high, std::min(band.range.hi, 4 * high));
  if (high == 0) high = chart.bands.isEmpty() ? 1 : chart.bands.front().range.hi;
  const double air = 0.03 * (most - least);
  chart.x = {least - air, most + air};
  chart.y = {-1.15 * high, 1.3 * high};  // above for the labels
}

}  // namespace

Chart gravity_chart(const PlotInput& input) {
  Chart chart = empty_chart(PlotKind::gravity, {Plots::tr("Angle"), QStringLiteral("°")},
                            {Plots::tr("Gravity torque"), QStringLiteral("mN·m")});
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  const auto add = [&](const Analysis& analysis, Axis axis, Line line, const QString& name) {
    const GravityOverTravel& gravity = analysis.gravity[std::size_t(axis)];
    if (gravity.angle_rad.empty()) return false;
    chart.series.append({.name = name,
                         .axis = axis,
                         .line = line,
                         .x = scaled(gravity.angle_rad, kDegPerRad),
                         .y = scaled(gravity.torque_Nm, kMilliPerUnit)});
    return true;
  };
  add_variants(input, add);
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    if (input.ghost != nullptr)
      add(*input.ghost, axis, Line::ghost, Plots::tr("%1 before").arg(axis_word(axis)));
    if (!add(*input.now, axis, Line::strong, axis_word(axis))) {
      chart.notes << missing_text(*input.now, axis, "balance.worst_angle");
      continue;
    }
    add_friction(chart, input.now->gravity[std::size_t(axis)], axis);
    add_readings(chart, *input.now, axis);
  }
  if (chart.series.isEmpty()) {
    chart.message = chart.notes.join('\n');
    return chart;
  }
  set_ranges(chart);
  add_axis_legend(chart, input);
  if (input.ghost != nullptr) chart.legend.append({Plots::tr("before"), {}, Line::ghost});
  label_variants(chart, input);
  return chart;
}

}  // namespace gazewright
