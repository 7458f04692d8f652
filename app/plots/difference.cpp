#include "app/plots/difference.h"

#include <algorithm>
#include <cmath>

#include "app/plots/chart_readout.h"
#include "app/plots/format.h"
#include "app/plots/text.h"
#include "app/plots/variant_lines.h"

namespace gazewright {
namespace {

/// Differences of temperatures are in kelvin.
QString difference_unit(const QString& unit) {
  return unit == Plots::tr("°C") ? QStringLiteral("K") : unit;
}

/// Where a line is farthest from zero, in a range of x; −1: nowhere.
qsizetype farthest(const Series& series, Range x) {
  qsizetype best = -1;
  for (qsizetype i = 0; i < series.x.size(); ++i) {
    if (series.x[i] < x.lo || series.x[i] > x.hi || !std::isfinite(series.y[i])) continue;
    if (best < 0 || std::abs(series.y[i]) > std::abs(series.y[best])) best = i;
  }
  return best;
}

QString signed_text(double value) {
  return value > 0 ? '+' + number_text(value) : number_text(value);
}

/// A line less the variant's.
Series less(Series series, const Series& variant) {
  for (qsizetype i = 0; i < series.y.size(); ++i) series.y[i] -= value_at(variant, series.x[i]);
  series.filled = false;
  return series;
}

/// The present design's lines, and those before a drag, that the variant has a counterpart of.
QVector<Series> differences(const Chart& chart, Line variant) {
  QVector<Series> all;
  for (const Line line : {Line::ghost, Line::strong}) {
    for (const Series& of : chart.series) {
      if (of.line != variant || of.is_path() || of.x.isEmpty()) continue;
      const auto now = std::ranges::find_if(chart.series, [&](const Series& s) {
        return s.line == line && s.axis == of.axis && !s.is_path() && !s.x.isEmpty();
      });
      if (now != chart.series.end()) all.append(less(*now, of));
    }
  }
  return all;
}

/// Notes say why a line is not there; where both axes have theirs they speak of something else.
bool has_both(const Chart& chart) {
  return std::ranges::all_of(kAxes, [&](Axis axis) {
    return std::ranges::any_of(chart.series, [&](const Series& s) { return s.axis == axis; });
  });
}

void set_legend(Chart& chart) {
  chart.legend.clear();
  for (const Series& series : chart.series) {
    if (series.line == Line::ghost) continue;
    chart.legend.append(
        {series.axis ? axis_word(*series.axis) : series.name, series.axis, series.line});
  }
  if (std::ranges::any_of(chart.series, [](const Series& s) { return s.line == Line::ghost; }))
    chart.legend.append({Plots::tr("before"), {}, Line::ghost});
}

/// All of the lines, and zero.
void set_view(Chart& chart) {
  Range y = y_range(chart, chart.x);
  const double air = 0.1 * (std::max(y.hi, 0.0) - std::min(y.lo, 0.0));
  chart.y = {std::min(y.lo, -air), std::max(y.hi, air) + air};  // above for the labels
  if (chart.y.hi - chart.y.lo < 4 * chart.y_step) chart.y_step = 0;
}

void say(Chart& chart) {
  chart.readings = {Plots::tr("present design less the variant “%1”").arg(chart.less)};
  for (const Series& series : chart.series) {
    const qsizetype at = series.line == Line::ghost ? -1 : farthest(series, chart.x);
    if (at < 0) continue;
    chart.readings << Plots::tr("%1 differs by up to %2 at %3")
                          .arg(series.name, with_unit(signed_text(series.y[at]), chart.y_unit),
                               with_unit(number_text(series.x[at]), chart.x_unit));
  }
}

}  // namespace

double value_at(const Series& series, double x) {
  const qsizetype count = std::min(series.x.size(), series.y.size());
  const auto begin = series.x.begin(), end = begin + count;
  const auto after = std::lower_bound(begin, end, x);
  if (after == end || series.is_path()) return std::nan("");
  const qsizetype i = after - begin;
  if (*after == x) return series.y[i];
  if (i == 0) return std::nan("");
  const double part = (x - series.x[i - 1]) / (series.x[i] - series.x[i - 1]);
  return series.y[i - 1] + part * (series.y[i] - series.y[i - 1]);
}

QString next_variant(const Chart& chart, const QString& name) {
  const auto& all = chart.variants;
  const auto here = std::ranges::find(all, name, &VariantLine::name);
  if (here == all.end()) return all.isEmpty() ? QString() : all.front().name;
  return here + 1 == all.end() ? QString() : (here + 1)->name;
}

QString said_name(const Chart& chart, const QString& name) {
  return chart.less.isEmpty() ? name : Plots::tr("%1 less “%2”").arg(name, chart.less);
}

Chart difference_of(const Chart& chart, const QString& name) {
  const auto variant = std::ranges::find(chart.variants, name, &VariantLine::name);
  if (variant == chart.variants.end() || !chart.no_difference.isEmpty()) return chart;
  Chart result = chart;
  result.less = name;
  result.series = differences(chart, variant->line);
  result.ribbons.clear();
  result.stretches.clear();
  result.bands.removeIf([](const Band& band) { return !band.upright; });
  result.marks.removeIf([](const Mark& mark) { return mark.kind != Mark::Kind::upright; });
  result.y_unit = difference_unit(chart.y_unit);
  result.y_title = axis_title(
      Plots::tr("%1 less “%2”").arg(chart.y_name, chart_parts::short_name(name)), result.y_unit);
  if (result.series.isEmpty()) {
    result.message = Plots::tr("Of the present design there is nothing to compare.");
    if (!chart.notes.isEmpty()) result.message = chart.notes.join('\n');
    return result;
  }
  result.marks.append({.kind = Mark::Kind::level,
                       .axis = {},
                       .y = 0,
                       .text = Plots::tr("as “%1”").arg(chart_parts::short_name(name))});
  if (has_both(result)) result.notes.clear();
  set_legend(result);
  set_view(result);
  say(result);
  return result;
}

}  // namespace gazewright
