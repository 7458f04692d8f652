#include <array>

#include "app/plots/charts.h"
#include "app/plots/text.h"

/// What limits the step, as strips of its plot.
namespace gazewright {
using chart_parts::kMsPerS;
namespace {

constexpr double kRoom = 0.13;        // of the height, for a row
constexpr double kLeast = 1 / 150.0;  // of the time shown: a shorter stretch joins the one before

Hatching hatching_of(MoveLimit limit) {
  static constexpr std::array<Hatching, kMoveLimits> kHatchings{
      Hatching::rising, Hatching::falling, Hatching::crossed, Hatching::upright,
      Hatching::grid,   Hatching::level,   Hatching::none,    Hatching::dots};
  return kHatchings[static_cast<std::size_t>(limit)];
}

void add_stretches(Chart& chart, const std::vector<MoveLimit>& limits, double sample_s,
                   double end_ms, Axis axis) {
  const double least_ms = kLeast * chart.x.hi;
  const qsizetype first = chart.stretches.size();
  for (std::size_t k = 0; k < limits.size();) {
    std::size_t next = k;
    while (next < limits.size() && limits[next] == limits[k]) ++next;
    const double from = double(k) * sample_s * kMsPerS;
    const double to = std::min(double(next) * sample_s * kMsPerS, end_ms);
    const bool has_one_before = chart.stretches.size() > first;
    const QString word = limit_word(limits[k]);
    if (has_one_before && (to - from < least_ms || chart.stretches.back().text == word)) {
      chart.stretches.back().range.hi = to;
    } else {
      chart.stretches.append({axis, {from, to}, hatching_of(limits[k]), word});
    }
    if (to >= end_ms) return;
    k = next;
  }
}

}  // namespace

QString limit_word(MoveLimit limit) {
  switch (limit) {
    case MoveLimit::drive_current:
      return Plots::tr("drive current");
    case MoveLimit::motor_current:
      return Plots::tr("motor current");
    case MoveLimit::gear_torque:
      return Plots::tr("gear torque");
    case MoveLimit::voltage:
      return Plots::tr("voltage");
    case MoveLimit::supply:
      return Plots::tr("supply");
    case MoveLimit::speed:
      return Plots::tr("speed limit");
    case MoveLimit::loop:
      return Plots::tr("loop");
    case MoveLimit::gap:
      return Plots::tr("gap");
  }
  return {};
}

namespace chart_parts {

void add_limit_stretches(Chart& chart, const PlotInput& input) {
  int rows = 0;
  for (const Axis axis : kAxes) {
    const MoveLimits& limits = input.now->limits_of(axis);
    if (!shows(input, axis) || limits.step.empty()) continue;
    const auto settle = input.now->value(figure_id(axis, "step.settle_time"));
    add_stretches(chart, limits.step, input.now->of(axis).step.sample_time_s,
                  settle ? *settle * kMsPerS : chart.x.hi, axis);
    chart.readings << QStringLiteral("%1: %2").arg(axis_word(axis),
                                                   QString::fromStdString(limits.sentence));
    ++rows;
  }
  chart.y.lo -= rows * kRoom * (chart.y.hi - chart.y.lo);
}

}  // namespace chart_parts
}  // namespace gazewright
