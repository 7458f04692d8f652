#include "app/plots/drawing.h"

#include <algorithm>
#include <cmath>

#include "app/plots/drawing_painter.h"
#include "app/plots/format.h"
#include "app/plots/outline.h"
#include "app/plots/text.h"
#include "core/bodies/bodies.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

using Eigen::Vector3d;

QPen axis_pen(const QColor& colour) {
  QPen pen(colour, 1.2);
  pen.setDashPattern({10, 3, 2, 3});  // centre line as in technical drawings, ISO 128
  return pen;
}

/// Cut across with a zigzag, as long parts are; the whole height in words.
void draw_cut(const DrawingPainter& p, const QPointF& left, const QPointF& right) {
  constexpr int kTeeth = 6;
  QPolygonF edge;
  for (int i = 0; i <= kTeeth; ++i) {
    const double tooth = i == 0 || i == kTeeth ? 0 : i % 2 ? -4 : 4;
    edge << left + (right - left) * i / kTeeth + QPointF(0, tooth);
  }
  p.painter.drawPolyline(edge);
  // Beside the axis, along which cables hang.
  p.label((3 * left + right) / 4 + QPointF(0, -8), Qt::AlignHCenter | Qt::AlignBottom,
          format_value(p.full.stand.height_m.si, "m", "mm"), p.theme.quiet);
}

/// The stand: a block under the mounting plane, upright however the plane leans.
void draw_stand(const DrawingPainter& p) {
  const double half = p.full.stand.half_width_m.si.value_or(0) * p.projection().px_per_m;
  if (half <= 0) return;
  p.painter.setPen(QPen(p.theme.control, 1.2));
  p.painter.setBrush(blended(p.theme.neutral, p.theme.card, 0.22));
  const QPointF o = p.projection().origin;
  if (p.projection().view == View::top) {
    p.painter.drawRect(QRectF(o.x() - half, o.y() - half, 2 * half, 2 * half));
    return;
  }
  const DrawnStand stand = drawn_stand(p.full);
  const double foot = stand.half_foot_m * p.projection().px_per_m;
  const double y = o.y() + stand.height_m * p.projection().px_per_m;
  const QPointF left(o.x() - foot, y), right(o.x() + foot, y);
  const QPolygonF block{
      {{o.x() - kStandTop * half, o.y()}, {o.x() + kStandTop * half, o.y()}, right, left}};
  if (!stand.is_cut) {
    p.painter.drawPolygon(block);
    p.painter.drawLine(left - QPointF(12, 0), right + QPointF(12, 0));
    return;
  }
  p.painter.save();
  p.painter.setPen(Qt::NoPen);
  p.painter.drawPolygon(block);
  p.painter.restore();
  p.painter.drawPolyline(QPolygonF{{left, block[0], block[1], right}});
  draw_cut(p, left, right);
}

void draw_body(const DrawingPainter& p, const BodyRef& ref) {
  const Body& body = body_of(p.rig, ref);
  const QPolygonF outline = page_outline(p.projection(), ref, body);
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
void draw_bodies(const DrawingPainter& p, bool on_tilt) {
  std::vector<std::pair<double, BodyRef>> order;
  for (std::size_t i = 0; i < bodies_of(p.rig, on_tilt).size(); ++i) {
    const BodyRef ref{on_tilt, i};
    const QRectF box = page_outline(p.projection(), ref, body_of(p.rig, ref)).boundingRect();
    order.emplace_back(-box.width() * box.height(), ref);
  }
  std::stable_sort(order.begin(), order.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  for (const auto& [area, ref] : order) draw_body(p, ref);
}

void draw_axes(const DrawingPainter& p) {
  const QPointF top = p.rect().topLeft(), bottom = p.rect().bottomRight();
  const QPointF o = p.projection().origin;
  const QPointF t = p.projection().page(p.projection().X_BT.translation());
  p.painter.setPen(axis_pen(p.theme.pan));
  if (p.projection().view == View::top) {
    p.painter.drawLine(QLineF(o - QPointF(9, 0), o + QPointF(9, 0)));
    p.painter.drawLine(QLineF(o - QPointF(0, 9), o + QPointF(0, 9)));
  } else {
    const QPointF up = p.projection().page(Vector3d(0, 0, 1)) - o;
    const double length = std::max(1.0, std::hypot(up.x(), up.y()));
    p.painter.drawLine(
        QLineF(o - 14 * up / length, o + up / length * std::max(20.0, o.y() - top.y() - 6)));
  }
  const QPointF along = p.projection().page(p.projection().X_BT * Vector3d(0, 1, 0)) - t;
  const double length = std::hypot(along.x(), along.y()) / p.projection().px_per_m;
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

bool has_masses(const std::vector<Body>& bodies) {
  return !bodies.empty() && std::all_of(bodies.begin(), bodies.end(), [](const Body& body) {
    return body.mass_kg.has_value() && body.mass_kg.value() > 0 && has_outline(body);
  });
}

/// Centre of mass of what tilts, quartered as in drawings; its distance from the tilt axis above.
void draw_centre_of_mass(const DrawingPainter& p) {
  if (!has_masses(p.rig.on_tilt)) return;
  const Vector3d centre = combined(p.rig.on_tilt).p_OC_m;
  const QPointF at = p.projection().page(BodyRef{true, 0}, centre);
  constexpr double kRadius = 5;
  const QRectF box(at.x() - kRadius, at.y() - kRadius, 2 * kRadius, 2 * kRadius);
  p.painter.setPen(QPen(p.theme.text, 1.2));
  p.painter.setBrush(p.theme.card);
  p.painter.drawEllipse(box);
  p.painter.setBrush(p.theme.text);
  p.painter.drawPie(box, 0, 90 * 16);
  p.painter.drawPie(box, 180 * 16, 90 * 16);
  const double off_m = std::hypot(centre.x(), centre.z());
  if (p.drawn.is_one_of_more && p.projection().view != View::side) return;
  p.label(p.rect().bottomLeft() + QPointF(2, -1), Qt::AlignLeft | Qt::AlignBottom,
          Plots::tr("centre of mass %1 off").arg(format_value(off_m, "m", "mm")), p.theme.text);
}

/// Height of the tilt axis over the mounting plane, at the left.
void draw_height(const DrawingPainter& p) {
  const double height_m = p.rig.tilt_axis_at_m[2].value();
  if (p.projection().view == View::top || !std::isfinite(height_m) || height_m == 0) return;
  const double x = p.rect().left() + kHeightDimensionX;
  const double foot = p.projection().origin.y();
  const double head = p.projection().page(p.projection().X_BT.translation()).y();
  p.painter.setPen(QPen(p.theme.quiet, 1));
  p.painter.drawLine(QLineF(x, foot, x, head));
  for (const double y : {foot, head}) {
    p.painter.drawLine(QLineF(x - 5, y, x + 14, y));
    const double inward = y == foot ? -1 : 1;
    p.painter.drawLine(QLineF(x, y, x - 2.5, y + 6 * inward));
    p.painter.drawLine(QLineF(x, y, x + 2.5, y + 6 * inward));
  }
  p.label({x + 3, (foot + head) / 2}, Qt::AlignHCenter | Qt::AlignVCenter,
          format_value(height_m, "m", "mm"), p.theme.quiet);
}

/// How far the tilt axis lies beside the pan axis, at the top.
void draw_offset(const DrawingPainter& p) {
  const QPointF pan = p.projection().page(Vector3d(0, 0, p.rig.tilt_axis_at_m[2].si.value_or(0)));
  const QPointF tilt = p.projection().page(p.projection().X_BT.translation());
  if (p.projection().view == View::top || std::abs(tilt.x() - pan.x()) < 2) return;
  const double y = p.rect().top() + kOffsetDimensionY;
  p.painter.setPen(QPen(p.theme.quiet, 1));
  p.painter.drawLine(QLineF(pan.x(), y, tilt.x(), y));
  p.painter.drawLine(QLineF(tilt.x(), y - 5, tilt.x(), y + 9));
  p.label({std::max(pan.x(), tilt.x()) + 12, y}, Qt::AlignLeft | Qt::AlignVCenter,
          format_value(std::abs(tilt.x() - pan.x()) / p.projection().px_per_m, "m", "mm"),
          p.theme.quiet);
}

void draw_view_name(const DrawingPainter& p) {
  if (!p.drawn.is_one_of_more) return;
  p.label(p.rect().topLeft() + QPointF(2, 1), Qt::AlignLeft, view_word(p.projection().view),
          p.theme.quiet);
}

void draw_scale_bar(const DrawingPainter& p) {
  if (p.drawn.is_one_of_more && p.projection().view != View::front) return;
  double length_m = 0.001;
  for (const double next_m : {0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.0}) {
    if (next_m * p.projection().px_per_m < 0.28 * p.rect().width()) length_m = next_m;
  }
  const double length = length_m * p.projection().px_per_m;
  const double y = p.rect().bottom() - 7, right = p.rect().right() - 10;
  p.painter.setPen(QPen(p.theme.text, 1.2));
  p.painter.drawLine(QLineF(right - length, y, right, y));
  for (const double x : {right - length, right}) p.painter.drawLine(QLineF(x, y - 3, x, y + 3));
  p.label({right - length - 6, y}, Qt::AlignRight | Qt::AlignVCenter,
          format_value(length_m, "m", "mm"), p.theme.quiet);
}

bool has_something(const Rig& rig) {
  for (const bool on_tilt : {false, true}) {
    for (const Body& body : bodies_of(rig, on_tilt)) {
      if (has_outline(body)) return true;
    }
  }
  return false;
}

}  // namespace

void DrawingPainter::label(const QPointF& at, Qt::Alignment side, const QString& text,
                           const QColor& colour) const {
  const QFontMetricsF metrics(painter.font());
  const QSizeF size(metrics.horizontalAdvance(text) + 4, metrics.height());
  QRectF box(at, size);
  if (side & Qt::AlignRight) box.moveRight(at.x());
  if (side & Qt::AlignHCenter) box.moveLeft(at.x() - size.width() / 2);
  if (side & Qt::AlignVCenter) box.moveTop(at.y() - size.height() / 2);
  if (side & Qt::AlignBottom) box.moveBottom(at.y());
  box.moveLeft(std::clamp(box.left(), rect().left(),
                          std::max(rect().left(), rect().right() - size.width())));
  QColor ground = theme.card;
  ground.setAlphaF(0.75F);
  painter.fillRect(box, ground);
  painter.setPen(colour);
  painter.drawText(box, Qt::AlignCenter, text);
}

void paint_drawing(QPainter& painter, const DrawnView& drawn, const Rig& rig, const Theme& theme,
                   const std::optional<BodyRef>& selected) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  if (!has_something(rig)) {
    painter.setPen(theme.quiet);
    painter.drawText(drawn.rect.adjusted(16, 8, -16, -8),
                     int(Qt::AlignCenter) | int(Qt::TextWordWrap),
                     Plots::tr("No body with a size and a place yet. Add bodies to on_pan and "
                               "on_tilt to see the rig."));
    painter.restore();
    return;
  }
  const Rig full = with_defaults(rig);
  const DrawingPainter p{painter, rig, full, theme, drawn, selected};
  painter.setClipRect(drawn.rect, Qt::IntersectClip);
  draw_stand(p);
  draw_view_cone(p);
  draw_bodies(p, false);
  draw_bodies(p, true);
  for (const Axis axis : kAxes) draw_stops(p, axis);
  draw_cables(p);
  draw_axes(p);
  draw_centre_of_mass(p);
  draw_height(p);
  draw_offset(p);
  draw_view_name(p);
  draw_scale_bar(p);
  painter.restore();
}

void paint_drawing(QPainter& painter, const QRectF& rect, const Rig& rig, View view, double pan_rad,
                   double tilt_rad, const Theme& theme, const std::optional<BodyRef>& selected) {
  paint_drawing(painter, one_view(rect, rig, view, pan_rad, tilt_rad), rig, theme, selected);
}

}  // namespace gazewright
