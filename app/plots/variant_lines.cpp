#include "app/plots/variant_lines.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/plots/chart_items.h"
#include "app/plots/charts.h"
#include "app/plots/text.h"

namespace gazewright::chart_parts {
namespace {

constexpr std::array kLines{Line::variant_1, Line::variant_2, Line::variant_3, Line::variant_4};
constexpr int kPlacesTried = 160;
constexpr qsizetype kLongestLabel = 22;

/// The line of the present design that a variant's is the counterpart of: the first strong one of
/// the axis.
const Series* counterpart(const Chart& chart, const Series& of) {
  const auto at = std::find_if(chart.series.begin(), chart.series.end(), [&](const Series& s) {
    return s.line == Line::strong && s.axis == of.axis && !s.is_path();
  });
  return at == chart.series.end() ? nullptr : &*at;
}

double at_share(const Chart& chart, double share) {
  if (!chart.x_log) return chart.x.lo + share * (chart.x.hi - chart.x.lo);
  return chart.x.lo * std::pow(chart.x.hi / chart.x.lo, share);
}

/// Where the label stands: farthest from its counterpart, in the view; lines that are alike are
/// named one after the other along them.
std::optional<QPointF> label_place(const Chart& chart, const Series& series, std::size_t variant) {
  const Series* now = counterpart(chart, series);
  double farthest = 0.01 * (chart.y.hi - chart.y.lo);
  std::optional<QPointF> best;
  for (int i = 1; now != nullptr && i < kPlacesTried; ++i) {
    const double x = at_share(chart, double(i) / kPlacesTried);
    const qsizetype here = sample_at(series, x, x), there = sample_at(*now, x, x);
    if (here < 0 || there < 0) continue;
    const double y = series.y[here], away = std::abs(y - now->y[there]);
    if (!(away > farthest) || y < chart.y.lo || y > chart.y.hi || x > series.x.back()) continue;
    farthest = away;
    best = QPointF(series.x[here], y);
  }
  if (best) return best;
  const qsizetype at = sample_at(series, at_share(chart, 0.3 + 0.15 * double(variant)), 0);
  if (at < 0 || !std::isfinite(series.y[at])) return std::nullopt;
  return QPointF(series.x[at], series.y[at]);
}

}  // namespace

QString short_name(const QString& name) {
  return name.size() <= kLongestLabel ? name : name.left(kLongestLabel - 1) + QStringLiteral("…");
}

bool is_variant(Line line) { return std::ranges::find(kLines, line) != kLines.end(); }

bool is_present(Line line) { return line != Line::ghost && !is_variant(line); }

void for_variants(const PlotInput& input,
                  const std::function<void(const VariantCurves&, Line)>& add) {
  for (std::size_t i = 0; i < std::min(input.variants.size(), kLines.size()); ++i)
    add(input.variants[i], kLines[i]);
}

void add_variants(
    const PlotInput& input,
    const std::function<void(const Analysis&, Axis, Line, const QString& name)>& add) {
  for_variants(input, [&](const VariantCurves& variant, Line line) {
    for (const Axis axis : kAxes) {
      if (!shows(input, axis)) continue;
      add(*variant.analysis, axis, line,
          QStringLiteral("%1, %2").arg(axis_word(axis), variant.name));
    }
  });
}

void label_variants(Chart& chart, const PlotInput& input) {
  if (!chart.message.isEmpty() || input.variants.empty()) return;
  QStringList names;
  for_variants(input, [&](const VariantCurves& variant, Line line) {
    bool is_drawn = false;
    for (const Series& series : chart.series) {
      if (series.line != line || series.x.isEmpty() || series.is_path()) continue;
      is_drawn = true;
      const auto index = static_cast<std::size_t>(std::ranges::find(kLines, line) - kLines.begin());
      const auto at = label_place(chart, series, index);
      if (!at) continue;
      chart.marks.append({.kind = Mark::Kind::label,
                          .axis = series.axis,
                          .x = at->x(),
                          .y = at->y(),
                          .text = short_name(variant.name)});
    }
    if (!is_drawn) return;
    names << variant.name;
    chart.variants.append({variant.name, line});
  });
  if (!names.isEmpty())
    chart.readings << Plots::tr("thin lines: %1").arg(names.join(QStringLiteral(", ")));
}

}  // namespace gazewright::chart_parts
