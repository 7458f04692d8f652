#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "core/tracking/eye.h"

/// Time and peak speed of moves of several sizes, over what a human eye does.
namespace gazewright {
namespace {

using namespace chart_parts;

constexpr int kLargest_deg = 60;

Chart size_chart(PlotKind kind, const AxisWords& y) {
  return empty_chart(kind, {Plots::tr("Size of the move"), QStringLiteral("°")}, y);
}

using OfSize = double (*)(double move_rad);
using OfMove = const std::optional<double> EyeMove::*;

void add_eye(Chart& chart, const QString& name, OfSize of, double factor) {
  Series series{.name = name, .axis = {}, .line = Line::ghost};
  for (int size_deg = 1; size_deg <= kLargest_deg; ++size_deg) {
    series.x.append(size_deg);
    series.y.append(of(size_deg / kDegPerRad) * factor);
  }
  chart.series.append(series);
}

void add_moves(Chart& chart, const std::vector<EyeMove>& moves, Axis axis, Line line, OfMove of,
               double factor, const QString& name) {
  Series series{.name = name, .axis = axis, .line = line};
  for (const EyeMove& move : moves) {
    const double y = (move.*of).value_or(std::nan("")) * factor;
    series.x.append(move.move_rad * kDegPerRad);
    series.y.append(y);
    if (line == Line::strong && std::isfinite(y))
      chart.marks.append({.kind = Mark::Kind::point,
                          .axis = axis,
                          .x = move.move_rad * kDegPerRad,
                          .y = y,
                          .text = {}});
  }
  if (std::ranges::any_of(series.y, [](double y) { return std::isfinite(y); }))
    chart.series.append(series);
}

/// The rig's own curves over the eye's, ranges and legend.
void add_rig(Chart& chart, const PlotInput& input, OfMove of_step, OfMove shortest, double factor) {
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    const std::vector<EyeMove>& moves = input.now->eye[static_cast<std::size_t>(axis)];
    add_moves(chart, moves, axis, Line::dashed, shortest, factor,
              Plots::tr("%1 at best").arg(axis_word(axis)));
    add_moves(chart, moves, axis, Line::strong, of_step, factor, axis_word(axis));
    const bool known = input.now->value(figure_id(axis, "step.rise_time")).has_value();
    if (moves.empty())
      chart.notes << (known ? Plots::tr("%1 follows when the hand rests").arg(axis_word(axis))
                            : missing_text(*input.now, axis, "step.settle_time"));
  }
  add_axis_legend(chart, input);
  chart.legend.append({Plots::tr("through the loop"), {}, Line::strong});
  chart.legend.append({Plots::tr("at best"), {}, Line::dashed});
  chart.legend.append({Plots::tr("human eye"), {}, Line::ghost});
  chart.x = {0, kLargest_deg};
  chart.y = y_range(chart, chart.x);
  chart.y.lo = 0;
}

}  // namespace

Chart eye_time_chart(const PlotInput& input) {
  Chart chart = size_chart(PlotKind::eye_time, {Plots::tr("Time"), QStringLiteral("ms")});
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_eye(chart, Plots::tr("eye, 2.2 ms/° + 21 ms"), saccade_time_s, kMsPerS);
  add_eye(chart, Plots::tr("eye, 2.7 ms/° + 23 ms"), longer_saccade_time_s, kMsPerS);
  add_rig(chart, input, &EyeMove::settle_s, &EyeMove::shortest_s, kMsPerS);
  if (const auto ratio = input.now->value("eye.duration_ratio"))
    chart.readings << Plots::tr("Pan takes %1 times as long as an eye").arg(number_text(*ratio));
  return chart;
}

Chart eye_speed_chart(const PlotInput& input) {
  Chart chart = size_chart(PlotKind::eye_speed, {Plots::tr("Peak speed"), QStringLiteral("°/s")});
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_eye(chart, Plots::tr("eye, 551 °/s · (1 − e^(−size/14°))"), saccade_peak_radps, kDegPerRad);
  add_eye(
      chart, Plots::tr("eye, end of smooth pursuit"), [](double) { return kPursuitLimit_radps; },
      kDegPerRad);
  add_rig(chart, input, &EyeMove::step_peak_radps, &EyeMove::shortest_peak_radps, kDegPerRad);
  for (const Axis axis : kAxes) {
    const auto ratio = input.now->value(figure_id(axis, "eye.speed_ratio"));
    if (!ratio || !shows(input, axis)) continue;
    chart.readings << Plots::tr("%1 reaches %2 times the peak speed of an eye")
                          .arg(axis_word(axis), number_text(*ratio));
  }
  return chart;
}

}  // namespace gazewright
