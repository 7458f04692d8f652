#include "app/plots/thin_lines.h"

#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

constexpr double kTolerance_px = 0.2;

/// A ragged line on the screen is drawn one pixel wide: stroking it wider takes tens of
/// milliseconds. Paper has the time.
void slim_pen(QCPPainter* painter, qsizetype points) {
  constexpr qsizetype kMany = 350;
  if (points < kMany || painter->modes().testFlag(QCPPainter::pmVectorized)) return;
  QPen pen = painter->pen();
  pen.setWidthF(1);
  painter->setPen(pen);
}

bool is_gap(const QPointF& p) { return !std::isfinite(p.x()) || !std::isfinite(p.y()); }

/// Positive where `b` lies counter-clockwise of `a`, less than half a turn away.
double cross(const QPointF& a, const QPointF& b) { return a.x() * b.y() - a.y() * b.x(); }

/// Directions from the last kept point that pass all points left out since, within the tolerance.
struct Cone {
  QPointF least, most;  ///< its edges; never more than half a turn apart
  double reach = 0;     ///< of the farthest point so far
  bool is_open = true;

  /// Whether a line to an offset from the last kept point may stand for all since; if so, narrows.
  bool take(const QPointF& offset, double tolerance) {
    const double distance = std::sqrt(offset.x() * offset.x() + offset.y() * offset.y());
    if (distance <= tolerance) return reach <= tolerance;
    if (!is_open && (cross(least, offset) < 0 || cross(offset, most) < 0 || distance < reach))
      return false;
    const double sine = tolerance / distance, cosine = std::sqrt(1 - sine * sine);
    const QPointF aside(-offset.y() * sine, offset.x() * sine);
    const QPointF low = offset * cosine - aside, high = offset * cosine + aside;
    if (is_open || cross(least, low) > 0) least = low;
    if (is_open || cross(high, most) > 0) most = high;
    is_open = false;
    reach = distance;
    return true;
  }
};

}  // namespace

QVector<QPointF> thinned(const QVector<QPointF>& points, double tolerance) {
  QVector<QPointF> kept;
  Cone cone;
  for (qsizetype i = 0; i < points.size(); ++i) {
    const QPointF& p = points[i];
    const bool starts = kept.isEmpty() || is_gap(p) || is_gap(points[i - 1]);
    if (starts) {
      if (i > 0 && !kept.isEmpty() && !is_gap(points[i - 1])) kept.append(points[i - 1]);
      kept.append(p);
      cone = {};
      continue;
    }
    if (cone.take(p - kept.last(), tolerance)) continue;
    kept.append(points[i - 1]);
    cone = {};
    cone.take(p - kept.last(), tolerance);
  }
  if (!points.isEmpty() && kept.last() != points.last() && !is_gap(points.last())) {
    kept.append(points.last());
  }
  return kept;
}

void ThinGraph::drawLinePlot(QCPPainter* painter, const QVector<QPointF>& lines) const {
  const QVector<QPointF> points = thinned(lines, kTolerance_px);
  slim_pen(painter, points.size());
  QCPGraph::drawLinePlot(painter, points);
}

void ThinCurve::drawCurveLine(QCPPainter* painter, const QVector<QPointF>& lines) const {
  const QVector<QPointF> points = thinned(lines, kTolerance_px);
  slim_pen(painter, points.size());
  QCPCurve::drawCurveLine(painter, points);
}

}  // namespace gazewright
