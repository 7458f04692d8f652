#include <algorithm>
#include <cmath>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

/// Current and voltage of the bus while both axes make the task's moves, and in the worst moves
/// found.
namespace gazewright {
namespace {

using namespace chart_parts;

/// The moves and some rest after them. [ms]
double shown_ms(const Analysis& analysis) {
  const double end = analysis.bus.time_s.back() * kMsPerS;
  const auto settle = analysis.coupling.settle_time_s;
  double shown = std::min(end, settle ? round_up(*settle * kMsPerS * 1.5) : 1000);
  for (const WorstCase& worst : analysis.bus.worst)
    shown = std::max(shown, worst.time_s.back() * kMsPerS);
  return shown;
}

bool add_message(Chart& chart, const PlotInput& input) {
  if (input.now == nullptr) {
    chart.message = nothing_yet();
  } else if (input.now->bus.time_s.empty()) {
    const std::string& because = input.now->bus.because;
    chart.message = because.starts_with("left out")
                        ? Plots::tr("Worked out as soon as the rig stops changing.")
                        : reason_text(because);
  }
  return !chart.message.isEmpty();
}

void add_line(Chart& chart, const std::vector<double>& time_s, const std::vector<double>& y,
              std::optional<Axis> axis, Line line, const QString& name) {
  chart.series.append(
      {.name = name, .axis = axis, .line = line, .x = scaled(time_s, kMsPerS), .y = scaled(y, 1)});
}

void add_worst(Chart& chart, const BusCurve& bus, std::vector<double> WorstCase::*values) {
  constexpr Line kLines[]{Line::dotted, Line::dashed};
  const QString names[]{Plots::tr("most current"), Plots::tr("most voltage")};
  for (std::size_t i = 0; i < bus.worst.size() && i < 2; ++i) {
    add_line(chart, bus.worst[i].time_s, bus.worst[i].*values, {}, kLines[i], names[i]);
    chart.legend.append({names[i], {}, kLines[i]});
  }
}

/// Variants, and what was before a drag.
void add_others(Chart& chart, const PlotInput& input, std::vector<double> BusCurve::*values) {
  for_variants(input, [&](const VariantCurves& variant, Line line) {
    const BusCurve& bus = variant.analysis->bus;
    if (!bus.time_s.empty()) add_line(chart, bus.time_s, bus.*values, {}, line, variant.name);
  });
  if (input.ghost == nullptr || input.ghost->bus.time_s.empty()) return;
  const BusCurve& before = input.ghost->bus;
  add_line(chart, before.time_s, before.*values, {}, Line::ghost, Plots::tr("before"));
}

/// A line that is brought into view where it is not far above the data.
void add_level(Chart& chart, Mark::Kind kind, double value, const QString& text) {
  if (!(value > 0) || !std::isfinite(value) || value > 1.6 * chart.y.hi) return;
  chart.marks.append({.kind = kind, .axis = {}, .y = value, .text = text});
  chart.y.hi = std::max(chart.y.hi, value + 0.08 * (value - chart.y.lo));
}

void set_ranges(Chart& chart, const Analysis& analysis) {
  chart.x = {0, shown_ms(analysis)};
  chart.y = y_range(chart, chart.x);
  chart.y.hi += 0.1 * (chart.y.hi - chart.y.lo);  // for the labels
}

}  // namespace

Chart bus_chart(const PlotInput& input) {
  Chart chart = time_chart(PlotKind::bus, Plots::tr("Current"), QStringLiteral("A"));
  if (add_message(chart, input)) return chart;
  const BusCurve& bus = input.now->bus;
  add_others(chart, input, &BusCurve::current_A);
  chart.legend.append({Plots::tr("source"), {}, Line::strong});
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    add_line(chart, bus.time_s, bus.drive_A[std::size_t(axis)], axis, Line::fine, axis_word(axis));
    chart.legend.append({axis_word(axis), axis, Line::fine});
  }
  add_line(chart, bus.time_s, bus.current_A, {}, Line::strong, Plots::tr("Source"));
  add_worst(chart, bus, &WorstCase::current_A);
  set_ranges(chart, *input.now);
  add_level(chart, Mark::Kind::limit_above, bus.limit_A,
            Plots::tr("supply's limit %1").arg(format_value(bus.limit_A, "A", "A")));
  const auto say = [&](const char* id, const QString& text) {
    const Figure* figure = input.now->figure(id);
    if (figure != nullptr && figure->value) chart.readings << text.arg(figure_text(figure));
  };
  say("supply.peak_current", Plots::tr("The task's moves draw up to %1"));
  say("supply.returned_energy", Plots::tr("they return %1 while braking"));
  say("supply.peak_voltage", Plots::tr("which lifts the bus to %1"));
  for (const std::string& sentence : bus.sentences)
    chart.readings << QString::fromStdString(sentence).chopped(sentence.ends_with('.') ? 1 : 0);
  label_variants(chart, input);
  return chart;
}

Chart bus_voltage_chart(const PlotInput& input) {
  Chart chart = time_chart(PlotKind::bus, Plots::tr("Voltage"), QStringLiteral("V"));
  if (add_message(chart, input)) return chart;
  const BusCurve& bus = input.now->bus;
  const Figure* peak = input.now->figure("supply.peak_voltage");
  if (peak != nullptr && !peak->value) return chart.message = reason_text(peak->because), chart;
  add_others(chart, input, &BusCurve::voltage_V);
  add_line(chart, bus.time_s, bus.voltage_V, {}, Line::strong, Plots::tr("Bus"));
  chart.legend.append({Plots::tr("bus"), {}, Line::strong});
  add_worst(chart, bus, &WorstCase::voltage_V);
  set_ranges(chart, *input.now);
  add_level(chart, Mark::Kind::limit_above, bus.trip_V,
            Plots::tr("trip %1").arg(format_value(bus.trip_V, "V", "V")));
  add_level(chart, Mark::Kind::level, bus.chopper_V,
            Plots::tr("chopper %1").arg(format_value(bus.chopper_V, "V", "V")));
  add_level(chart, Mark::Kind::level, bus.source_V,
            Plots::tr("supply %1").arg(format_value(bus.source_V, "V", "V")));
  label_variants(chart, input);
  return chart;
}

}  // namespace gazewright
