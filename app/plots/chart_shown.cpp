#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/plots/chart.h"

/// Which part of a chart is shown.
namespace gazewright {

qsizetype gap_count(const Chart& chart) {
  qsizetype count = 0;
  for (const Series& series : chart.series) {
    count += std::ranges::count_if(series.y, [](double y) { return !std::isfinite(y); });
  }
  return count;
}

Chart without_hidden(Chart chart, const QStringList& names) {
  if (names.isEmpty()) return chart;
  for (LegendEntry& entry : chart.legend) entry.hidden = names.contains(entry.text);
  const auto hides = [&](const auto& part) {
    return std::ranges::any_of(chart.legend, [&](const LegendEntry& entry) {
      return entry.hidden && stands_for(entry, part);
    });
  };
  const auto hides_axis = [&](const auto& part) {
    return std::ranges::any_of(chart.legend, [&](const LegendEntry& entry) {
      return entry.hidden && entry.axis && entry.axis == std::optional<Axis>(part.axis);
    });
  };
  chart.series.removeIf(hides);
  chart.ribbons.removeIf(hides);
  chart.marks.removeIf(hides_axis);
  chart.bands.removeIf(hides_axis);
  chart.stretches.removeIf(hides_axis);
  return chart;
}

Chart part_of(Chart chart, Range x) {
  for (Series& series : chart.series) {
    Series kept = series;
    kept.x.clear();
    kept.y.clear();
    kept.time_s.clear();
    for (qsizetype i = 0; i < series.x.size(); ++i) {
      if (!(series.x[i] >= x.lo && series.x[i] <= x.hi)) continue;
      kept.x.append(series.x[i]);
      kept.y.append(series.y[i]);
      if (series.is_path()) kept.time_s.append(series.time_s[i]);
    }
    series = kept;
  }
  for (Ribbon& ribbon : chart.ribbons) {
    Ribbon kept{ribbon.name, ribbon.axis};
    for (qsizetype i = 0; i < ribbon.x.size(); ++i) {
      if (!(ribbon.x[i] >= x.lo && ribbon.x[i] <= x.hi)) continue;
      kept.x.append(ribbon.x[i]);
      kept.low.append(ribbon.low[i]);
      kept.high.append(ribbon.high[i]);
    }
    ribbon = kept;
  }
  return chart;
}

Chart with_radps(Chart chart) {
  constexpr double kRadpsPerHz = 2 * std::numbers::pi;
  const auto scale = [](double& x) { x *= kRadpsPerHz; };
  for (Series& series : chart.series) std::ranges::for_each(series.x, scale);
  for (Ribbon& ribbon : chart.ribbons) std::ranges::for_each(ribbon.x, scale);
  for (Mark& mark : chart.marks) {
    scale(mark.x);
    scale(mark.x_end);
    if (!mark.text_in_radps.isEmpty()) mark.text = mark.text_in_radps;
  }
  scale(chart.x.lo);
  scale(chart.x.hi);
  for (Band& band : chart.bands) {
    if (!band.upright) continue;
    scale(band.range.lo);
    scale(band.range.hi);
  }
  chart.x_unit = QStringLiteral("rad/s");
  chart.x_title = axis_title(chart.x_name, chart.x_unit);
  return chart;
}

Chart with_log_x(Chart chart) {
  double least = kInfinity;
  for (const Series& series : chart.series) {
    const auto above = std::ranges::find_if(series.x, [](double x) { return x > 0; });
    if (above != series.x.end()) least = std::min(least, *above);
  }
  if (!(least < chart.x.hi)) return chart;
  chart.x_log = true;
  chart.x.lo = least;
  return chart;
}

}  // namespace gazewright
