#include <algorithm>
#include <cmath>

#include "app/plots/drawing_painter.h"
#include "app/plots/drawing_routes.h"
#include "app/plots/outline.h"

/// What limits the rig and what it sees: hard stops, cables, the camera's field of view.
namespace gazewright {
namespace {

using Eigen::Vector3d;

QPolygonF on_page(const Projection& projection, const std::vector<Vector3d>& points_m) {
  QPolygonF line;
  line.reserve(qsizetype(points_m.size()));
  for (const Vector3d& p : points_m) {
    if (p.allFinite()) line << projection.page(p);
  }
  return line;
}

void draw_strand(const DrawingPainter& p, const std::vector<Vector3d>& strand, double wide) {
  const QPolygonF line = on_page(p.projection(), strand);
  QPen pen(blended(p.theme.text, p.theme.card, 0.75), wide);
  pen.setCapStyle(Qt::FlatCap);
  pen.setJoinStyle(Qt::RoundJoin);
  p.painter.setBrush(Qt::NoBrush);
  p.painter.setPen(pen);
  p.painter.drawPolyline(line);
  if (wide < 3) return;
  pen.setColor(blended(p.theme.neutral, p.theme.card, 0.45));  // a jacket with two edges
  pen.setWidthF(wide - 1.6);
  p.painter.setPen(pen);
  p.painter.drawPolyline(line);
}

/// Half-widths of the field of view at a distance of one, in the plane of the page.
double half_view(const DrawingPainter& p, bool up) {
  const double tangent = std::tan(p.rig.camera.horizontal_view_rad.value() / 2);
  const double rows = p.rig.camera.rows.value() / p.rig.camera.columns.value();
  return up && std::isfinite(rows) ? tangent * rows : tangent;
}

}  // namespace

void draw_stops(const DrawingPainter& p, Axis axis) {
  const std::vector<StopBlock> blocks = stop_blocks(p.full, p.projection(), axis);
  if (blocks.empty()) return;
  const QColor colour = axis_colour(p.theme, axis);
  QPen thin(colour, 0.8);
  thin.setDashPattern({2, 3});
  p.painter.setPen(thin);
  p.painter.setBrush(Qt::NoBrush);
  p.painter.drawPolyline(on_page(p.projection(), stop_circle_m(p.full, p.projection(), axis)));
  for (const StopBlock& block : blocks) {
    std::vector<QPointF> corners;
    corners.reserve(block.corners_m.size());
    for (const Vector3d& corner : block.corners_m) corners.push_back(p.projection().page(corner));
    p.painter.setPen(QPen(block.turns ? colour : p.theme.control, 1));
    p.painter.setBrush(block.turns ? colour : blended(p.theme.control, p.theme.card, 0.7));
    p.painter.drawPolygon(convex_hull(std::move(corners)));
  }
}

void draw_cables(const DrawingPainter& p) {
  const auto width_of = [&p](Axis axis) {
    const double outer_m = p.full.axis(axis).cable.outer_diameter_m.si.value_or(0);
    return std::clamp(outer_m * p.projection().px_per_m, 1.2, 12.0);
  };
  draw_strand(p, cable_between(p.full, p.projection()), width_of(Axis::pan));
  for (const Axis axis : kAxes) {
    for (const Strand& strand : cable_strands(p.full, p.projection(), axis)) {
      draw_strand(p, strand, width_of(axis));
    }
  }
}

/// From the tilt axis along +x of T, as wide as the camera sees; from the front its cross section
/// is not told from the bodies and stays away.
void draw_view_cone(const DrawingPainter& p) {
  if (!p.rig.camera.horizontal_view_rad.si || p.projection().view == View::front) return;
  const double half = half_view(p, p.projection().view == View::side);
  double start = 0;
  for (const Body& body : p.rig.on_tilt) {
    const auto radius = sphere_radius_m(body);
    if (radius && std::isfinite(*radius)) start = std::max(start, centre_m(body).x() + *radius);
    if (radius) continue;
    for (const Vector3d& point : outline_points_m(body)) start = std::max(start, point.x());
  }
  const double reach = start + 0.45 * p.rect().width() / p.projection().px_per_m;
  const auto at = [&](double x, double slope) {
    const Vector3d point =
        p.projection().view == View::side ? Vector3d(x, 0, slope * x) : Vector3d(x, slope * x, 0);
    return p.projection().page(BodyRef{true, 0}, point);
  };
  const QPointF root = p.projection().page(BodyRef{true, 0}, Vector3d::Zero());
  const QPolygonF cone{{root, at(reach, half), at(reach, -half)}};
  QColor tint = p.theme.tilt;
  tint.setAlphaF(0.07F);
  p.painter.setPen(Qt::NoPen);
  p.painter.setBrush(tint);
  p.painter.drawPolygon(cone);
  QPen pen(p.theme.quiet, 1);
  pen.setDashPattern({4, 4});
  p.painter.setPen(pen);
  for (const double slope : {-half, half}) p.painter.drawLine(QLineF(root, at(reach, slope)));
}

}  // namespace gazewright
