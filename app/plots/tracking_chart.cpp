#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "core/files/rig_file.h"

/// Where the target stands in the picture while the rig follows it, detectors compared.
namespace gazewright {
namespace {

using namespace chart_parts;

// One for each detector that a rig may have.
constexpr std::array kLines{Line::strong, Line::dashed, Line::fine, Line::dotted,
                            Line::dash_dotted};
static_assert(kLines.size() == kMostDetectors);

bool moves(const std::vector<double>& angle_rad) {
  const auto [least, most] = std::ranges::minmax_element(angle_rad);
  return *least != *most;
}

void add_run(Chart& chart, const PlotInput& input, const DetectorRun& run, Line line) {
  const TrackingRuns& runs = input.now->tracking;
  for (const Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    const bool still = !moves(runs.target_rad[i]) && run.most_px[i] == 0;
    if (!shows(input, axis) || still) continue;
    chart.series.append(
        {.name = QStringLiteral("%1, %2").arg(QString::fromStdString(run.name), axis_word(axis)),
         .axis = axis,
         .line = line,
         .x = scaled(runs.time_s, 1),
         .y = scaled(run.place_px[i], 1)});
  }
  chart.readings << Plots::tr("%1: %2 from the centre on average, %3 of the time in the middle")
                        .arg(QString::fromStdString(run.name), format_value(run.rms_px, "1", "px"),
                             format_value(run.in_middle, "1", "%"));
  for (const Axis axis : kAxes) {
    const double held = run.at_limit[static_cast<std::size_t>(axis)];
    if (held > 0 && shows(input, axis))
      chart.readings << Plots::tr("%1: %2 stands at the end of its travel for %3 of the time")
                            .arg(QString::fromStdString(run.name), axis_word(axis),
                                 format_value(held, "1", "%"));
  }
}

/// The inner third where its edge is in sight; else everything is inside it.
void add_middle(Chart& chart, const PlotInput& input) {
  const TrackingRuns& runs = input.now->tracking;
  for (const Axis axis : kAxes) {
    const auto is_of_axis = [axis](const Series& series) { return series.axis == axis; };
    if (std::ranges::none_of(chart.series, is_of_axis)) continue;
    const double half = axis == Axis::pan ? runs.middle_px : runs.middle_height_px;
    if (half > std::max(chart.y.hi, -chart.y.lo)) continue;
    chart.bands.append({.range = {-half, half},
                        .axis = axis,
                        .label = Plots::tr("%1: inner third").arg(axis_word(axis))});
  }
}

}  // namespace

Chart tracking_chart(const PlotInput& input) {
  Chart chart = empty_chart(PlotKind::tracking, {Plots::tr("Time"), QStringLiteral("s")},
                            {Plots::tr("Target from the centre"), QStringLiteral("px")});
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  const TrackingRuns& runs = input.now->tracking;
  if (runs.detectors.empty()) {
    chart.message = reason_text(runs.because);
    return chart;
  }
  for (std::size_t i = 0; i < runs.detectors.size(); ++i)
    add_run(chart, input, runs.detectors[i], kLines[i]);
  if (chart.series.isEmpty()) {
    chart.message = Plots::tr("The target does not move this axis.");
    return chart;
  }
  chart.x = {0, runs.time_s.back()};
  chart.y = y_range(chart, chart.x);
  add_middle(chart, input);
  add_axis_legend(chart, input);
  for (std::size_t i = 0; i < runs.detectors.size(); ++i)
    chart.legend.append({QString::fromStdString(runs.detectors[i].name), {}, kLines[i]});
  return chart;
}

}  // namespace gazewright
