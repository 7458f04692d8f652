#include "app/plots/drawing.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "app/plots/format.h"
#include "app/plots/outline.h"
#include "app/plots/text.h"
#include "core/bodies/bodies.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

using Eigen::Vector3d;

struct Picture {
  QPainter& painter;
  const Rig& rig;
  const Theme& theme;
  Projection projection;
  QRectF rect;
  std::optional<BodyRef> selected;

  QFontMetricsF metrics() const { return QFontMetricsF(painter.font()); }
};

QPen axis_pen(const QColor& colour) {
  QPen pen(colour, 1.2);
  pen.setDashPattern({10, 3, 2, 3});  // centre line as in technical drawings, ISO 128
  return pen;
}

void label(const Picture& p, const QPointF& at, Qt::Alignment side, const QString& text,
           const QColor& colour) {
  const QSizeF size(p.metrics().horizontalAdvance(text) + 4, p.metrics().height());
  QRectF box(at, size);
  if (side & Qt::AlignRight) box.moveRight(at.x());
  if (side & Qt::AlignHCenter) box.moveLeft(at.x() - size.width() / 2);
  if (side & Qt::AlignVCenter) box.moveTop(at.y() - size.height() / 2);
  if (side & Qt::AlignBottom) box.moveBottom(at.y());
  box.moveLeft(std::clamp(box.left(), p.rect.left(),
                          std::max(p.rect.left(), p.rect.right() - size.width())));
  QColor ground = p.theme.card;
  ground.setAlphaF(0.75F);
  p.painter.fillRect(box, ground);
  p.painter.setPen(colour);
  p.painter.drawText(box, Qt::AlignCenter, text);
}

/// The stand: a block under the mounting plane, upright however the plane leans.
void draw_stand(const Picture& p) {
  const Rig full = with_defaults(p.rig);
  const double half = full.stand.half_width_m.si.value_or(0) * p.projection.px_per_m;
  const double height = full.stand.height_m.si.value_or(0) * p.projection.px_per_m;
  if (half <= 0) return;
  p.painter.setPen(QPen(p.theme.control, 1.2));
  p.painter.setBrush(blended(p.theme.neutral, p.theme.card, 0.22));
  const QPointF o = p.projection.origin;
  if (p.projection.view == View::top) {
    p.painter.drawRect(QRectF(o.x() - half, o.y() - half, 2 * half, 2 * half));
    return;
  }
  const QPolygonF block{{{o.x() - 0.45 * half, o.y()},
                         {o.x() + 0.45 * half, o.y()},
                         {o.x() + half, o.y() + height},
                         {o.x() - half, o.y() + height}}};
  p.painter.drawPolygon(block);
  p.painter.drawLine(QLineF(o.x() - half - 12, o.y() + height, o.x() + half + 12, o.y() + height));
}

void draw_body(const Picture& p, const BodyRef& ref) {
  const Body& body = body_of(p.rig, ref);
  const QPolygonF outline = page_outline(p.projection, ref, body);
  if (outline.isEmpty()) return;
  const bool chosen = p.selected == ref;
  const QColor colour = axis_colour(p.theme, ref.on_tilt ? Axis::tilt : Axis::pan);
  const bool hollow = std::holds_alternative<Shell>(body.shape);
  QColor fill = blended(colour, p.theme.card, hollow ? 0.10 : 0.20);
  fill.setAlphaF(hollow ? 0.55F : 0.85F);
  p.painter.setPen(QPen(chosen ? p.theme.focus : colour, chosen ? 2.5 : 1.4));
  p.painter.setBrush(fill);
  if (outline.size() < 3) {  // no extent is known: a dot at its place
    p.painter.drawEllipse(outline.first(), 4, 4);
  } else {
    p.painter.drawPolygon(outline);
  }
}

/// Larger bodies first, so that small ones stay visible.
void draw_bodies(const Picture& p, bool on_tilt) {
  std::vector<std::pair<double, BodyRef>> order;
  for (std::size_t i = 0; i < bodies_of(p.rig, on_tilt).size(); ++i) {
    const BodyRef ref{on_tilt, i};
    const QRectF box = page_outline(p.projection, ref, body_of(p.rig, ref)).boundingRect();
    order.emplace_back(-box.width() * box.height(), ref);
  }
  std::stable_sort(order.begin(), order.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  for (const auto& [area, ref] : order) draw_body(p, ref);
}

void draw_axes(const Picture& p) {
  const QPointF top = p.rect.topLeft(), bottom = p.rect.bottomRight();
  const QPointF o = p.projection.origin;
  const QPointF t = p.projection.page(p.projection.X_BT.translation());
  p.painter.setPen(axis_pen(p.theme.pan));
  if (p.projection.view == View::top) {
    p.painter.drawLine(QLineF(o - QPointF(9, 0), o + QPointF(9, 0)));
    p.painter.drawLine(QLineF(o - QPointF(0, 9), o + QPointF(0, 9)));
  } else {
    const QPointF up = p.projection.page(Vector3d(0, 0, 1)) - o;
    const double length = std::max(1.0, std::hypot(up.x(), up.y()));
    p.painter.drawLine(
        QLineF(o - 14 * up / length, o + up / length * std::max(20.0, o.y() - top.y() - 6)));
  }
  const QPointF along = p.projection.page(p.projection.X_BT * Vector3d(0, 1, 0)) - t;
  const double length = std::hypot(along.x(), along.y()) / p.projection.px_per_m;
  p.painter.setPen(axis_pen(p.theme.tilt));
  if (length < 0.05) {  // seen end on
    p.painter.drawLine(QLineF(t - QPointF(9, 0), t + QPointF(9, 0)));
    p.painter.drawLine(QLineF(t - QPointF(0, 9), t + QPointF(0, 9)));
    return;
  }
  const double half = 0.42 * std::min(bottom.x() - top.x(), bottom.y() - top.y());
  const QPointF step = along / std::hypot(along.x(), along.y()) * half * length;
  p.painter.drawLine(QLineF(t - step, t + step));
}

/// The field of view from the tilt axis along +x of T, as wide as the camera sees.
void draw_view_cone(const Picture& p) {
  const double view = p.rig.camera.horizontal_view_rad.value();
  if (!std::isfinite(view) || p.projection.view == View::front) return;
  const double rows = p.rig.camera.rows.value() / p.rig.camera.columns.value();
  const double tangent = std::tan(view / 2);
  const double half =
      p.projection.view == View::side ? (std::isfinite(rows) ? tangent * rows : tangent) : tangent;
  double start = 0;
  for (const Body& body : p.rig.on_tilt) {
    for (const Vector3d& point : outline_points_m(body)) start = std::max(start, point.x());
  }
  const double reach = start + 0.45 * p.rect.width() / p.projection.px_per_m;
  const auto at = [&](double x, double slope) {
    const Vector3d point =
        p.projection.view == View::side ? Vector3d(x, 0, slope * x) : Vector3d(x, slope * x, 0);
    return p.projection.page(BodyRef{true, 0}, point);
  };
  QPen pen(p.theme.quiet, 1);
  pen.setDashPattern({4, 4});
  p.painter.save();
  p.painter.setClipRect(p.rect, Qt::IntersectClip);
  p.painter.setPen(pen);
  for (const double slope : {-half, half}) {
    p.painter.drawLine(QLineF(at(start, slope * 0.3), at(reach, slope)));
  }
  p.painter.restore();
}

bool has_masses(const std::vector<Body>& bodies) {
  return !bodies.empty() && std::all_of(bodies.begin(), bodies.end(), [](const Body& body) {
    return body.mass_kg.has_value() && body.mass_kg.value() > 0 && !outline_points_m(body).empty();
  });
}

/// Centre of mass of what tilts, quartered as in drawings; its distance from the tilt axis above.
void draw_centre_of_mass(const Picture& p) {
  if (!has_masses(p.rig.on_tilt)) return;
  const Vector3d centre = combined(p.rig.on_tilt).p_OC_m;
  const QPointF at = p.projection.page(BodyRef{true, 0}, centre);
  constexpr double kRadius = 5;
  const QRectF box(at.x() - kRadius, at.y() - kRadius, 2 * kRadius, 2 * kRadius);
  p.painter.setPen(QPen(p.theme.text, 1.2));
  p.painter.setBrush(p.theme.card);
  p.painter.drawEllipse(box);
  p.painter.setBrush(p.theme.text);
  p.painter.drawPie(box, 0, 90 * 16);
  p.painter.drawPie(box, 180 * 16, 90 * 16);
  const double off_m = std::hypot(centre.x(), centre.z());
  label(p, p.rect.topLeft() + QPointF(2, 2), Qt::AlignLeft,
        Plots::tr("centre of mass %1 off").arg(format_value(off_m, "m", "mm")), p.theme.text);
}

/// Height of the tilt axis over the mounting plane, at the left.
void draw_height(const Picture& p) {
  const double height_m = p.rig.tilt_axis_at_m[2].value();
  if (p.projection.view == View::top || !std::isfinite(height_m) || height_m == 0) return;
  const double x = p.rect.left() + 34;
  const double foot = p.projection.origin.y();
  const double head = p.projection.page(p.projection.X_BT.translation()).y();
  p.painter.setPen(QPen(p.theme.quiet, 1));
  p.painter.drawLine(QLineF(x, foot, x, head));
  for (const double y : {foot, head}) {
    p.painter.drawLine(QLineF(x - 5, y, x + 14, y));
    const double inward = y == foot ? -1 : 1;
    p.painter.drawLine(QLineF(x, y, x - 2.5, y + 6 * inward));
    p.painter.drawLine(QLineF(x, y, x + 2.5, y + 6 * inward));
  }
  label(p, {x + 3, (foot + head) / 2}, Qt::AlignHCenter | Qt::AlignVCenter,
        format_value(height_m, "m", "mm"), p.theme.quiet);
}

void draw_scale_bar(const Picture& p) {
  double length_m = 0.001;
  for (const double next_m : {0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0}) {
    if (next_m * p.projection.px_per_m < 0.28 * p.rect.width()) length_m = next_m;
  }
  const double length = length_m * p.projection.px_per_m;
  const double y = p.rect.bottom() - 7, right = p.rect.right() - 10;
  p.painter.setPen(QPen(p.theme.text, 1.2));
  p.painter.drawLine(QLineF(right - length, y, right, y));
  for (const double x : {right - length, right}) p.painter.drawLine(QLineF(x, y - 3, x, y + 3));
  label(p, {right - length - 6, y}, Qt::AlignRight | Qt::AlignVCenter,
        format_value(length_m, "m", "mm"), p.theme.quiet);
}

bool has_something(const Rig& rig) {
  for (const bool on_tilt : {false, true}) {
    for (const Body& body : bodies_of(rig, on_tilt)) {
      if (!outline_points_m(body).empty()) return true;
    }
  }
  return false;
}

}  // namespace

void paint_drawing(QPainter& painter, const QRectF& rect, const Rig& rig, View view, double pan_rad,
                   double tilt_rad, const Theme& theme, const std::optional<BodyRef>& selected) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (!has_something(rig)) {
    painter.setPen(theme.quiet);
    painter.drawText(rect.adjusted(16, 8, -16, -8), int(Qt::AlignCenter) | int(Qt::TextWordWrap),
                     Plots::tr("No body with a size and a place yet. Add bodies to on_pan and "
                               "on_tilt to see the rig."));
    painter.restore();
    return;
  }
  const Picture picture{
      painter, rig, theme, drawing_projection(rect, rig, view, pan_rad, tilt_rad), rect, selected};
  draw_stand(picture);
  draw_view_cone(picture);
  draw_bodies(picture, false);
  draw_bodies(picture, true);
  draw_axes(picture);
  draw_centre_of_mass(picture);
  draw_height(picture);
  draw_scale_bar(picture);
  painter.restore();
}

}  // namespace gazewright
