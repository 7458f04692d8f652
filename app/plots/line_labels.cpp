#include "app/plots/line_labels.h"

#include <algorithm>
#include <cmath>
#include <optional>

#include "app/plots/variant_lines.h"

namespace gazewright {
namespace {

constexpr int kPlacesTried = 40;             // along the width
constexpr double kToOwn = 2, kToOthers = 6;  // pixels between a label and a line

using Pixel = std::function<QPointF(double, double)>;

/// A line in pixels, where it is in view from left to right; gaps are NaN.
QVector<QPointF> drawn(const Series& series, const Pixel& pixel, const QRectF& area) {
  QVector<QPointF> points;
  const auto count = std::min(series.x.size(), series.y.size());
  const double step = area.width() / (4.0 * kPlacesTried);
  for (qsizetype i = 0; i < count; ++i) {
    const QPointF at = pixel(series.x[i], series.y[i]);
    if (at.x() < area.left() - step || at.x() > area.right() + step) continue;
    // Of points that lie close the highest and lowest count, not each.
    if (points.size() > 1 && at.x() - points[points.size() - 2].x() < 0.5 &&
        std::abs(at.y() - points.back().y()) < 0.5)
      points.back() = at;
    else
      points.append(at);
  }
  return points;
}

std::optional<double> height_at(const QVector<QPointF>& line, double x) {
  const auto after = std::ranges::lower_bound(line, x, {}, &QPointF::x);
  if (after == line.end() || (after == line.begin() && after->x() > x)) return std::nullopt;
  const QPointF a = after == line.begin() ? *after : *(after - 1), b = *after;
  const double y = b.x() > a.x() ? a.y() + (b.y() - a.y()) * (x - a.x()) / (b.x() - a.x()) : b.y();
  return std::isfinite(y) ? std::optional(y) : std::nullopt;
}

/// Whether a line comes into a box: at one of its sides, or at a point between them.
bool passes(const QVector<QPointF>& line, const QRectF& box) {
  const auto inside = [&box](double y) { return y > box.top() && y < box.bottom(); };
  std::optional<double> before = height_at(line, box.left());
  if (before && inside(*before)) return true;
  const auto crosses = [&](double y) {
    const bool through = before && (*before < box.center().y()) != (y < box.center().y());
    before = y;
    return inside(y) || through;
  };
  auto at = std::ranges::upper_bound(line, box.left(), {}, &QPointF::x);
  for (; at != line.end() && at->x() < box.right(); ++at) {
    if (std::isfinite(at->y()) && crosses(at->y())) return true;
  }
  const std::optional<double> last = height_at(line, box.right());
  return last && crosses(*last);
}

double last_x(const QVector<QPointF>& line, const QRectF& area) {
  for (auto at = line.rbegin(); at != line.rend(); ++at) {
    if (std::isfinite(at->y()) && area.contains(*at)) return at->x();
  }
  return std::nan("");
}

struct Lines {
  QVector<QVector<QPointF>> all;
  bool isFree(const QRectF& box, qsizetype own) const {
    for (qsizetype i = 0; i < all.size(); ++i) {
      const double gap = i == own ? 0 : kToOthers;
      if (passes(all[i], box.adjusted(0, -gap, 0, gap))) return false;
    }
    return true;
  }
};

/// From the right end of the line leftwards, above it and below it.
QRectF place_of(qsizetype own, const Lines& lines, QSizeF size, const QRectF& area,
                LabelPlaces& places) {
  const QVector<QPointF>& line = lines.all[own];
  const double end = std::min(last_x(line, area), area.right() - 3);
  for (int i = 0; i < kPlacesTried && std::isfinite(end); ++i) {
    const double right = end - i * area.width() / kPlacesTried;
    if (right - size.width() <= area.left()) break;
    double top = area.bottom(), bottom = area.top();
    for (const double part : {0.0, 0.25, 0.5, 0.75, 1.0}) {
      const auto y = height_at(line, right - part * size.width());
      if (!y) continue;
      top = std::min(top, *y);
      bottom = std::max(bottom, *y);
    }
    if (bottom < top) continue;
    for (const double y : {top - kToOwn - size.height(), bottom + kToOwn}) {
      const QRectF box({right - size.width(), y}, size);
      if (lines.isFree(box, own) && places.take(box)) return box;
    }
  }
  return {};
}

}  // namespace

QVector<LineLabel> line_labels(const Chart& chart, const QFontMetricsF& metrics, const Pixel& pixel,
                               const QRectF& area, LabelPlaces& places) {
  const bool has_path = std::ranges::any_of(chart.series, &Series::is_path);
  if (has_path || chart.series.size() >= kTooManyToName) return {};
  Lines lines;
  for (const Series& series : chart.series) lines.all.append(drawn(series, pixel, area));
  QVector<LineLabel> labels;
  for (qsizetype i = 0; i < chart.series.size(); ++i) {
    const bool is_seen = std::isfinite(last_x(lines.all[i], area));
    if (!chart_parts::is_present(chart.series[i].line) || !is_seen) continue;
    const QSizeF size(metrics.horizontalAdvance(chart.series[i].name) + 4, metrics.height());
    const QRectF box = place_of(i, lines, size, area, places);
    if (box.isEmpty()) return {};
    labels.append({i, box});
  }
  return labels;
}

bool is_said(const LegendEntry& entry, const Chart& chart, const QVector<LineLabel>& labels) {
  bool has_lines = false;
  for (qsizetype i = 0; i < chart.series.size(); ++i) {
    const Series& series = chart.series[i];
    if (!stands_for(entry, series) || (entry.axis && !chart_parts::is_present(series.line)))
      continue;
    has_lines = true;
    if (std::ranges::find(labels, i, &LineLabel::series) == labels.end()) return false;
  }
  return has_lines && !entry.hidden;
}

}  // namespace gazewright
