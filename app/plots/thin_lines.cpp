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

double angle_between(double from, double to) { return std::remainder(to - from, 2 * M_PI); }

/// Directions from the last kept point that pass all points left out since, within the tolerance.
struct Cone {
  double middle = 0, least = -M_PI, most = M_PI;  ///< least and most are relative to middle
  double reach = 0;                               ///< of the farthest point so far
  bool is_open = true;

  /// Whether a line to an offset from the last kept point may stand for all since; if so, narrows.
  bool take(const QPointF& offset, double tolerance) {
    const double distance = std::hypot(offset.x(), offset.y());
    if (distance <= tolerance) return reach <= tolerance;
    const double direction = std::atan2(offset.y(), offset.x());
    if (is_open) {
      middle = direction;
      is_open = false;
    }
    const double at = angle_between(middle, direction);
    if (at < least || at > most || distance < reach) return false;
    const double half = std::asin(std::min(1.0, tolerance / distance));
    least = std::max(least, at - half);
    most = std::min(most, at + half);
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
