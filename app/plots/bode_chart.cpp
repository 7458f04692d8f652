#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/plots/charts.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

/// Gain and phase of the loops against frequency: open speed loop, open position loop, and the
/// position loop closed.
namespace gazewright {
namespace {

using namespace chart_parts;

constexpr double kHzPerRadps = 1 / (2 * std::numbers::pi);
constexpr double kLowest_dB = -60, kHighest_dB = 60;
constexpr double kPhaseStep_deg = 90;

const FrequencyResponse& response_of(const Analysis& analysis, Axis axis) {
  return analysis.response[std::size_t(axis)];
}

double dB_of(double gain) { return 20 * std::log10(gain); }

QVector<double> in_dB(const std::vector<double>& gains) {
  QVector<double> result;
  result.reserve(qsizetype(gains.size()));
  for (const double gain : gains) {
    const double dB = dB_of(gain);
    result.append(std::isfinite(dB) ? dB : std::nan(""));
  }
  return result;
}

void add_series(Chart& chart, const FrequencyResponse& response, Axis axis, Line line,
                const QString& name, QVector<double> y) {
  chart.series.append({.name = name.arg(axis_word(axis)),
                       .axis = axis,
                       .line = line,
                       .x = scaled(response.w_radps, kHzPerRadps),
                       .y = std::move(y)});
}

void add_gains(Chart& chart, const PlotInput& input, Axis axis) {
  const FrequencyResponse& now = response_of(*input.now, axis);
  add_series(chart, now, axis, Line::strong, Plots::tr("%1 speed loop"), in_dB(now.speed_gain));
  add_series(chart, now, axis, Line::dashed, Plots::tr("%1 position loop"),
             in_dB(now.position_gain));
  add_series(chart, now, axis, Line::fine, Plots::tr("%1 closed"), in_dB(now.closed_gain));
  if (input.only) {
    add_series(chart, now, axis, Line::fine, Plots::tr("%1 error per disturbance"),
               in_dB(now.error_gain));
  }
}

void add_phases(Chart& chart, const PlotInput& input, Axis axis) {
  const FrequencyResponse& now = response_of(*input.now, axis);
  add_series(chart, now, axis, Line::strong, Plots::tr("%1 speed loop"),
             scaled(now.speed_phase_rad, kDegPerRad));
  add_series(chart, now, axis, Line::dashed, Plots::tr("%1 position loop"),
             scaled(now.position_phase_rad, kDegPerRad));
}

/// A figure of the loop at the crossover it belongs to.
struct Margin {
  const char *crossover, *phase, *gain, *delay;
  const char* word;
};
constexpr Margin kMargins[]{
    {"loop.crossover", "loop.phase_margin", "loop.gain_margin", "loop.delay_margin",
     QT_TRANSLATE_NOOP("Plots", "speed")},
    {"loop.position_crossover", "loop.position_phase_margin", "loop.position_gain_margin",
     "loop.position_delay_margin", QT_TRANSLATE_NOOP("Plots", "position")}};

void add_upright(Chart& chart, Axis axis, const std::optional<double>& w_radps, const QString& text,
                 const QString& text_in_radps = {}, bool minor = false) {
  if (!w_radps) return;
  chart.marks.append({.kind = Mark::Kind::upright,
                      .axis = axis,
                      .x = *w_radps * kHzPerRadps,
                      .y = std::nan(""),
                      .text = text,
                      .text_in_radps = text_in_radps,
                      .minor = minor});
}

void mark_crossovers(Chart& chart, const Analysis& analysis, Axis axis, bool phases) {
  for (const Margin& margin : kMargins) {
    const auto at = analysis.value(figure_id(axis, margin.crossover));
    const auto phase = analysis.value(figure_id(axis, margin.phase));
    const auto gain = analysis.value(figure_id(axis, margin.gain));
    const auto delay = analysis.value(figure_id(axis, margin.delay));
    if (!at) continue;
    const QString word = Plots::tr(margin.word), hertz = format_value(*at, "rad/s", "Hz");
    const QString degrees = format_value(phase, "rad", "deg");
    add_upright(
        chart, axis, at,
        phases ? Plots::tr("%1 %2, %3").arg(word, degrees, format_value(delay, "s", "ms"))
               : Plots::tr("%1 %2").arg(word, hertz),
        phases ? QString() : Plots::tr("%1 %2").arg(word, format_value(*at, "rad/s", "rad/s")));
    chart.readings << Plots::tr("%1 %2 loop crosses at %3 with %4 and %5 of delay left")
                          .arg(axis_word(axis), word, hertz, degrees,
                               format_value(delay, "s", "ms"));
    if (gain && *gain > 0) {
      chart.readings << Plots::tr("%1 %2 loop: gain margin %3 (%4 dB)")
                            .arg(axis_word(axis), word, number_text(*gain),
                                 number_text(dB_of(*gain)));
    }
  }
}

/// Where the gain margin is: the phase passes −180° there.
void mark_gain_margins(Chart& chart, const Analysis& analysis, Axis axis) {
  const FrequencyResponse& response = response_of(analysis, axis);
  const auto mark = [&](double w_radps, const char* figure) {
    const auto margin = analysis.value(figure_id(axis, figure));
    if (!margin || !(*margin > 0) || !(w_radps > 0)) return;
    const double dB = dB_of(*margin);
    chart.marks.append({.kind = Mark::Kind::point,
                        .axis = axis,
                        .x = w_radps * kHzPerRadps,
                        .y = -dB,
                        .text = Plots::tr("%1 dB left").arg(number_text(dB)),
                        .minor = true});
  };
  mark(response.speed_gain_margin_at_radps, "loop.gain_margin");
  mark(response.position_gain_margin_at_radps, "loop.position_gain_margin");
}

void mark_resonances(Chart& chart, const Analysis& analysis, Axis axis) {
  const auto mark = [&](const char* figure, const QString& word) {
    const auto at = analysis.value(figure_id(axis, figure));
    if (!at) return;
    add_upright(chart, axis, at, word, {}, true);
    chart.readings
        << Plots::tr("%1 %2 at %3").arg(axis_word(axis), word, format_value(*at, "rad/s", "Hz"));
  };
  mark("loop.antiresonance", Plots::tr("antiresonance"));
  mark("loop.resonance", Plots::tr("resonance"));
}

Chart empty_half(bool phases) {
  Chart chart = empty_chart(PlotKind::bode, {Plots::tr("Frequency"), QStringLiteral("Hz")},
                            phases ? AxisWords{Plots::tr("Phase"), QStringLiteral("°")}
                                   : AxisWords{Plots::tr("Gain"), QStringLiteral("dB")});
  chart.x_log = chart.x_may_be_radps = true;
  chart.x = {1, 1000};
  chart.y_step = phases ? kPhaseStep_deg : 20;
  return chart;
}

/// Grey where the model of all shown axes has ended; before it in its own colour, where that of one
/// axis has.
void add_model_ends(Chart& chart, const PlotInput& input) {
  double least = kInfinity, most = 0;
  Axis first = Axis::pan;
  for (const Axis axis : kAxes) {
    const auto end_Hz = input.now->value(figure_id(axis, "loop.model_end"));
    if (!shows(input, axis) || response_of(*input.now, axis).w_radps.empty() || !end_Hz) continue;
    if (*end_Hz < least) first = axis;
    least = std::min(least, *end_Hz);
    most = std::max(most, *end_Hz);
    chart.readings << Plots::tr("%1: the model holds up to %2")
                          .arg(axis_word(axis), format_value(*end_Hz, "Hz", "Hz"));
  }
  const auto add = [&](Range range, std::optional<Axis> axis) {
    range.hi = std::min(range.hi, chart.x.hi);
    if (range.lo >= range.hi) return;
    chart.bands.append(
        {.upright = true, .range = range, .axis = axis, .label = Plots::tr("beyond the model")});
  };
  add({least, most}, first);
  add({most, chart.x.hi}, {});
}

/// All frequencies, and some beyond half the control rate, in grey: there is no loop there.
void set_ranges(Chart& chart, const PlotInput& input, bool phases) {
  double least = kInfinity, most = 0;
  for (const Series& series : chart.series) {
    least = std::min(least, series.x.front());
    most = std::max(most, series.x.back());
  }
  chart.x = {least, 1.6 * most};
  chart.bands.append({.upright = true,
                      .range = {most, chart.x.hi},
                      .axis = {},
                      .label = Plots::tr("beyond half the control rate")});
  chart.readings << Plots::tr("there is no loop beyond half the control rate, %1")
                        .arg(format_value(most, "Hz", "Hz"));
  add_model_ends(chart, input);
  const Range y = y_range(chart, chart.x);
  if (phases) {
    const double lo = std::max(-720.0, std::floor(y.lo / kPhaseStep_deg) * kPhaseStep_deg);
    chart.y = {lo, std::max(0.0, std::ceil(y.hi / kPhaseStep_deg) * kPhaseStep_deg)};
  } else {
    chart.y = {std::max(y.lo, kLowest_dB), std::clamp(y.hi, 20.0, kHighest_dB)};
  }
}

void add_legend(Chart& chart, const PlotInput& input, bool phases) {
  add_axis_legend(chart, input);
  chart.legend.append({Plots::tr("speed loop"), {}, Line::strong});
  chart.legend.append({Plots::tr("position loop"), {}, Line::dashed});
  if (!phases) chart.legend.append({Plots::tr("closed"), {}, Line::fine});
}

Chart bode_chart(const PlotInput& input, bool phases) {
  Chart chart = empty_half(phases);
  if (input.now == nullptr) return chart.message = nothing_yet(), chart;
  add_variants(input, [&](const Analysis& variant, Axis axis, Line line, const QString& name) {
    const FrequencyResponse& response = response_of(variant, axis);
    if (response.w_radps.empty()) return;
    chart.series.append(
        {.name = Plots::tr("%1 speed loop").arg(name),
         .axis = axis,
         .line = line,
         .x = scaled(response.w_radps, kHzPerRadps),
         .y = phases ? scaled(response.speed_phase_rad, kDegPerRad) : in_dB(response.speed_gain)});
  });
  for (const Axis axis : kAxes) {
    if (!shows(input, axis)) continue;
    if (response_of(*input.now, axis).w_radps.empty()) {
      chart.notes << missing_text(*input.now, axis, "loop.crossover");
      continue;
    }
    if (input.ghost != nullptr && !phases) {
      const FrequencyResponse& before = response_of(*input.ghost, axis);
      add_series(chart, before, axis, Line::ghost, Plots::tr("%1 speed loop before"),
                 in_dB(before.speed_gain));
      if (before.w_radps.empty()) chart.series.removeLast();
    }
    (phases ? add_phases : add_gains)(chart, input, axis);
    mark_crossovers(chart, *input.now, axis, phases);
    if (!input.now->value(figure_id(axis, "loop.position_peak")) && !phases)
      chart.notes << missing_text(*input.now, axis, "loop.position_peak");
  }
  // After the crossovers of both axes, whose labels find room first.
  for (const Axis axis : kAxes) {
    if (phases || !shows(input, axis) || response_of(*input.now, axis).w_radps.empty()) continue;
    mark_gain_margins(chart, *input.now, axis);
    mark_resonances(chart, *input.now, axis);
  }
  if (chart.series.isEmpty()) {
    chart.message = chart.notes.join('\n');
    return chart;
  }
  set_ranges(chart, input, phases);
  chart.marks.append({.kind = Mark::Kind::level,
                      .axis = {},
                      .y = phases ? -180.0 : 0.0,
                      .text = phases ? QStringLiteral("−180°") : QStringLiteral("0 dB")});
  add_legend(chart, input, phases);
  label_variants(chart, input);
  return chart;
}

}  // namespace

Chart gain_chart(const PlotInput& input) { return bode_chart(input, false); }
Chart phase_chart(const PlotInput& input) { return bode_chart(input, true); }

}  // namespace gazewright
