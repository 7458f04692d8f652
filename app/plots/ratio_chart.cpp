#include <algorithm>
#include <cmath>
#include <limits>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

/// Time of the move against gear ratio, of both axes.
namespace gazewright {
namespace {

using namespace chart_parts;

QVector<double> in_ms(const std::vector<std::optional<double>>& times_s) {
  QVector<double> result;
  result.reserve(qsizetype(times_s.size()));
  for (const auto& time : times_s) {
    result.append(time ? *time * kMsPerS : std::numeric_limits<double>::quiet_NaN());
  }
  return result;
}

bool has_any(const QVector<double>& values) {
  return std::any_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); });
}

void add_series(Chart& chart, const RatioSweep& sweep, Axis axis, bool ghost) {
  const QVector<double> ratio(sweep.ratio.begin(), sweep.ratio.end());
  const QVector<double> shortest = in_ms(sweep.shortest_time_s);
  const QVector<double> settle = in_ms(sweep.settle_time_s);
  const QString of = ghost ? Plots::tr("%1 before").arg(axis_word(axis)) : axis_word(axis);
  if (has_any(settle) && !ghost) {
    chart.series.append({.name = Plots::tr("%1 settled").arg(of),
                         .axis = axis,
                         .line = Line::dashed,
                         .x = ratio,
                         .y = settle});
  }
  if (has_any(shortest)) {
    chart.series.append({.name = Plots::tr("%1 shortest").arg(of),
                         .axis = axis,
                         .line = ghost ? Line::ghost : Line::strong,
                         .x = ratio,
                         .y = shortest});
  }
}

void add_best(Chart& chart, const RatioSweep& sweep, Axis axis) {
  if (sweep.band_most <= 0) return;
  chart.bands.append({.upright = true,
                      .range = {sweep.band_least, sweep.band_most},
                      .axis = axis,
                      .label = Plots::tr("within 5 % of best")});
  chart.readings << Plots::tr("%1 is within 5 % of its shortest time from ratio %2 to %3")
                        .arg(axis_word(axis), number_text(sweep.band_least),
                             number_text(sweep.band_most));
}

void add_present(Chart& chart, const PlotInput& input, Axis axis) {
  if (input.rig == nullptr) return;
  const double ratio = input.rig->axis(axis).gearbox.ratio.value();
  if (!std::isfinite(ratio)) return;
  chart.marks.append({.kind = Mark::Kind::upright,
                      .axis = axis,
                      .x = ratio,
                      .y = std::nan(""),
                      .text = Plots::tr("%1 : 1").arg(number_text(ratio))});
  if (input.now == nullptr) return;
  const auto point = [&](const char* figure, const QString& what) {
    const auto time = input.now->value(figure_id(axis, figure));
    if (!time) return;
    chart.marks.append(
        {.kind = Mark::Kind::point, .axis = axis, .x = ratio, .y = *time * kMsPerS, .text = {}});
    chart.readings << what.arg(axis_word(axis), number_text(ratio), format_value(*time, "s", "ms"));
  };
  point("move.shortest_time", Plots::tr("%1 at %2 : 1 moves in %3 at best"));
  point("step.settle_time", Plots::tr("%1 at %2 : 1 has settled after %3"));
}

/// The lower part of the curves matters: what a best ratio is worth, and what is worse by three.
Range shown_times(const Chart& chart) {
  double least = kInfinity, most = 0;
  for (const Series& series : chart.series) {
    for (const double y : series.y) {
      if (!std::isfinite(y)) continue;
      least = std::min(least, y);
      most = std::max(most, y);
    }
  }
  for (const Mark& mark : chart.marks) {
    if (mark.kind == Mark::Kind::point) least = std::max(least, mark.y / 2.5);
  }
  return {0, round_up(std::min(most, 3.5 * least))};
}

void add_wanted(Chart& chart, const PlotInput& input) {
  const double within = input.rig != nullptr ? input.rig->task.within_s.value() : std::nan("");
  if (!std::isfinite(within)) return;
  chart.marks.append({.kind = Mark::Kind::limit_above,
                      .axis = {},
                      .y = within * kMsPerS,
                      .text = Plots::tr("wanted %1").arg(format_value(within, "s", "ms"))});
}

void add_legend(Chart& chart, const PlotInput& input) {
  add_axis_legend(chart, input);
  const auto has = [&chart](Line line) {
    return std::any_of(chart.series.begin(), chart.series.end(),
                       [line](const Series& s) { return s.line == line; });
  };
  chart.legend.append({Plots::tr("shortest"), {}, Line::strong});
  if (has(Line::dashed)) chart.legend.append({Plots::tr("settled"), {}, Line::dashed});
  if (has(Line::ghost)) chart.legend.append({Plots::tr("before"), {}, Line::ghost});
}

/// Where each variant stands. Its ratio is one of several things that may differ, so it is a place
/// and not a curve.
void add_variant_places(Chart& chart, const PlotInput& input) {
  QStringList names;
  for_variants(input, [&](const VariantCurves& variant, Line) {
    bool is_drawn = false;
    for (const Axis axis : kAxes) {
      const auto time = variant.analysis->value(figure_id(axis, "move.shortest_time"));
      if (!shows(input, axis) || variant.rig == nullptr || !time) continue;
      const double ratio = variant.rig->axis(axis).gearbox.ratio.value();
      if (!std::isfinite(ratio)) continue;
      chart.marks.append({.kind = Mark::Kind::ring,
                          .axis = axis,
                          .x = ratio,
                          .y = *time * kMsPerS,
                          .text = short_name(variant.name)});
      is_drawn = true;
    }
    if (is_drawn) names << variant.name;
  });
  if (!names.isEmpty())
    chart.readings
        << Plots::tr("rings: the shortest move of %1").arg(names.join(QStringLiteral(", ")));
  chart.no_difference =
      Plots::tr("A variant is one place here, at its own ratio, and not a curve.");
}

Chart empty_ratio_chart(const PlotInput& input) {
  Chart chart = empty_chart(PlotKind::time_ratio, {Plots::tr("Ratio"), {}},
                            {Plots::tr("Time"), QStringLiteral("ms")});
  chart.x_log = true;
  chart.x = {1, 200};
  chart.ticks = stock_ratios();
  if (!input.stock.empty()) chart.ticks = {input.stock.begin(), input.stock.end()};
  return chart;
}

}  // namespace

Chart ratio_chart(const PlotInput& input) {
  Chart chart = empty_ratio_chart(input);
  if (input.sweeps == nullptr) {
    chart.message = Plots::tr("The ratios are being tried out, or no rig is open.");
    return chart;
  }
  for (const bool ghost : {true, false}) {
    const auto* sweeps = ghost ? input.ghost_sweeps : input.sweeps;
    for (const Axis axis : kAxes) {
      if (sweeps == nullptr || !shows(input, axis)) continue;
      add_series(chart, (*sweeps)[std::size_t(axis)], axis, ghost);
    }
  }
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    const RatioSweep& sweep = (*input.sweeps)[std::size_t(axis)];
    if (!sweep.because.empty()) {
      chart.notes << QStringLiteral("%1: %2").arg(axis_word(axis), reason_text(sweep.because));
    } else if (!has_any(in_ms(sweep.shortest_time_s))) {
      chart.notes
          << Plots::tr("%1 cannot make the move at any ratio from 1 to 200").arg(axis_word(axis));
    }
  }
  if (chart.series.isEmpty()) {
    chart.message =
        chart.notes.isEmpty() ? Plots::tr("No ratio makes the move.") : chart.notes.join('\n');
    return chart;
  }
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    add_best(chart, (*input.sweeps)[std::size_t(axis)], axis);
    add_present(chart, input, axis);
  }
  add_variant_places(chart, input);
  chart.readings << (input.stock.empty()
                         ? Plots::tr("ticks: ratios that gearboxes are usually sold in")
                         : Plots::tr("ticks: ratios of the gearboxes on the shelf"));
  chart.y = shown_times(chart);
  add_wanted(chart, input);
  add_legend(chart, input);
  return chart;
}

}  // namespace gazewright
