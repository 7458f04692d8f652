#include "app/plots/travel_dial.h"

#include <QPainterPath>
#include <algorithm>
#include <cmath>

#include "app/plots/text.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

struct Dial {
  QPainter& painter;
  const Theme& theme;
  const DialLayout& layout;
  const DialPicture& picture;

  QColor colour() const { return axis_colour(theme, layout.axis); }
  double u() const { return layout.unit; }

  void line(double angle_rad, double from, double to, const QColor& ink, double width) const {
    painter.setPen(QPen(ink, width, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(layout.at(angle_rad, from), layout.at(angle_rad, to));
  }
  /// An arc or spiral as a polyline, a point every two degrees or less.
  QPolygonF curve(const DialTrack& ring, double from_rad, double to_rad) const {
    QPolygonF points;
    const int steps = std::clamp(int(std::ceil(std::abs(to_rad - from_rad) / 0.035)), 2, 20000);
    for (int i = 0; i <= steps; ++i) {
      const double angle = from_rad + (to_rad - from_rad) * i / steps;
      points << layout.at(angle, ring.radius_at(angle));
    }
    return points;
  }
  void stroke(const DialTrack& ring, double span_rad, const QPen& pen) const {
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawPolyline(
        curve(ring, ring.centre_rad - span_rad / 2, ring.centre_rad + span_rad / 2));
  }
  QPainterPath sector(double centre_rad, double span_rad, double r) const {
    QPainterPath path(layout.centre);
    const QRectF ring(layout.centre.x() - r, layout.centre.y() - r, 2 * r, 2 * r);
    path.arcTo(ring, layout.page_rad(centre_rad - span_rad / 2) * kDegPerRad,
               span_rad * kDegPerRad);
    path.closeSubpath();
    return path;
  }
};

double drawn_span(double span_rad) { return std::isinf(span_rad) ? 2 * kPi : span_rad; }

/// Hatching of its own lines, so that it looks alike on every device and without colour.
void hatch(const Dial& dial, const QPainterPath& path) {
  QPainter& painter = dial.painter;
  painter.save();
  painter.setPen(Qt::NoPen);
  painter.setBrush(blended(dial.theme.neutral, dial.theme.card, 0.12));
  painter.drawPath(path);
  painter.setClipPath(path, Qt::IntersectClip);
  painter.setPen(QPen(blended(dial.theme.neutral, dial.theme.card, 0.65), 0.8));
  const QRectF box = path.boundingRect();
  const double gap = std::max(4.0, 5 * dial.u());
  for (double x = box.left() - box.height(); x < box.right(); x += gap) {
    painter.drawLine(QPointF(x, box.bottom()), QPointF(x + box.height(), box.top()));
  }
  painter.restore();
}

void draw_sectors(const Dial& dial) {
  const Travel& travel = dial.picture.travel;
  if (!travel.usable_rad) return;
  const double usable = std::min(drawn_span(*travel.usable_rad), 2 * kPi);
  const double r = dial.layout.radius - 5.5 * dial.u();
  dial.painter.setPen(Qt::NoPen);
  dial.painter.setBrush(blended(dial.colour(), dial.theme.card, 0.12));
  dial.painter.drawPath(dial.sector(travel.centre_rad, usable, r));
  if (2 * kPi - usable > 1e-6) {
    hatch(dial, dial.sector(travel.centre_rad + kPi, 2 * kPi - usable, dial.layout.radius));
  }
}

void draw_rings(const Dial& dial) {
  const Travel& travel = dial.picture.travel;
  const double u = dial.u(), r = dial.layout.radius;
  dial.painter.setPen(QPen(dial.theme.border, 1));
  dial.painter.setBrush(Qt::NoBrush);
  dial.painter.drawEllipse(dial.layout.centre, r, r);
  const auto& band = travel.soft_rad ? travel.soft_rad : travel.stops_rad;
  if (band) {
    const double width = dial.layout.soft.pitch > 0 ? 0.7 * dial.layout.soft.pitch : 5 * u;
    dial.stroke(dial.layout.soft, drawn_span(*band),
                QPen(dial.colour(), width, Qt::SolidLine, Qt::FlatCap));
  }
  if (travel.cable_rad) {
    const bool endless = std::isinf(*travel.cable_rad);
    QPen pen(dial.theme.quiet, endless ? 1 : std::max(1.2, 2 * u), Qt::SolidLine, Qt::FlatCap);
    if (endless) pen.setDashPattern({4, 4});
    dial.stroke(dial.layout.cable, drawn_span(*travel.cable_rad), pen);
  }
}

/// A house that stands on the hub's side, its roof towards the ring.
void draw_home(const Dial& dial, const TravelMark& mark) {
  const double s = 4.6 * dial.u(), r = dial.layout.home_radius;
  const QPointF out = dial.layout.at(mark.angle_rad, 1) - dial.layout.centre;
  const QPointF along(-out.y(), out.x()), middle = dial.layout.at(mark.angle_rad, r);
  const auto point = [&](double x, double y) { return middle + x * s * along + y * s * out; };
  const QPolygonF house{point(-1, -0.9), point(-1, 0.1), point(0, 1.1), point(1, 0.1),
                        point(1, -0.9)};
  dial.painter.setPen(QPen(dial.theme.card, 1));
  dial.painter.setBrush(dial.theme.text);
  dial.painter.drawPolygon(house);
}

void draw_park(const Dial& dial, const TravelMark& mark) {
  const double s = 3.4 * dial.u();
  const QPointF middle = dial.layout.at(mark.angle_rad, dial.layout.park_radius);
  dial.painter.setPen(QPen(dial.theme.text, 1.5));
  dial.painter.setBrush(dial.theme.card);
  dial.painter.drawRect(QRectF(middle.x() - s, middle.y() - s, 2 * s, 2 * s));
}

void draw_centre(const Dial& dial, const TravelMark& mark) {
  const double r = dial.layout.radius, u = dial.u();
  const double half = 3.4 * u / r;
  const QPolygonF tip{dial.layout.at(mark.angle_rad, r + 1.5),
                      dial.layout.at(mark.angle_rad - half, r + 8 * u),
                      dial.layout.at(mark.angle_rad + half, r + 8 * u)};
  dial.painter.setPen(QPen(dial.theme.text, 1));
  dial.painter.setBrush(dial.theme.card);
  dial.painter.drawPolygon(tip);
}

/// From the hard stop to where the bumper is used up: short strokes, a thin bar at the end.
void draw_bumper(const Dial& dial, const TravelMark& mark, const TravelMark& stop) {
  const double u = dial.u();
  const DialTrack& ring = dial.layout.soft;
  const double span = mark.angle_rad - stop.angle_rad;
  const int strokes = std::clamp(int(std::abs(span) * ring.radius / 3), 1, 200);
  for (int i = 0; i <= strokes; ++i) {
    const double angle = stop.angle_rad + span * i / strokes;
    const double on = ring.radius_at(angle);
    const bool end = i == strokes;
    dial.line(angle, on + (end ? -2 : 1) * u, on + (end ? 10 : 6) * u, dial.theme.text,
              end ? 1.4 : 0.8);
  }
}

void draw_mark(const Dial& dial, const TravelMark& mark) {
  const double u = dial.u(), on = dial.layout.soft.radius_at(mark.angle_rad);
  const double cable = dial.layout.cable.radius_at(mark.angle_rad);
  const bool winds = dial.layout.soft.pitch > 0;
  switch (mark.kind) {
    case MarkKind::hard_stop:
      return dial.line(mark.angle_rad, on - (winds ? 4 : 5.5) * u, on + (winds ? 4 : 7) * u,
                       dial.theme.text, std::max(2.0, 3 * u));
    case MarkKind::soft_limit:
      return dial.line(mark.angle_rad, on - (winds ? 4 : 7) * u, on + 2.5 * u, dial.colour(),
                       std::max(1.2, 1.8 * u));
    case MarkKind::cable:
      return dial.line(mark.angle_rad, cable - 4 * u, cable + 4 * u, dial.theme.quiet,
                       std::max(1.2, 2 * u));
    case MarkKind::centre:
      return draw_centre(dial, mark);
    case MarkKind::home:
      return draw_home(dial, mark);
    case MarkKind::park:
      return draw_park(dial, mark);
    case MarkKind::bumper:
      break;
  }
  if (const TravelMark* stop = dial.picture.mark({MarkKind::hard_stop, mark.side, 0, {}})) {
    draw_bumper(dial, mark, *stop);
  }
}

void draw_hand(const Dial& dial) {
  if (!std::isfinite(dial.picture.angle_rad)) return;
  const QPointF tip = dial.layout.at(dial.picture.angle_rad, dial.layout.radius - 8 * dial.u());
  dial.painter.setPen(
      QPen(dial.colour(), std::max(1.8, 2.2 * dial.u()), Qt::SolidLine, Qt::RoundCap));
  dial.painter.drawLine(dial.layout.centre, tip);
  dial.painter.setBrush(dial.colour());
  dial.painter.drawEllipse(dial.layout.centre, 2.6 * dial.u(), 2.6 * dial.u());
}

void draw_active(const Dial& dial) {
  const TravelMark* mark = dial.picture.active ? dial.picture.mark(*dial.picture.active) : nullptr;
  if (!mark) return;
  dial.painter.setPen(QPen(dial.theme.focus, 2));
  dial.painter.setBrush(Qt::NoBrush);
  const double r = std::max(6.0, 7 * dial.u());
  dial.painter.drawEllipse(dial.layout.grip(*mark), r, r);
}

}  // namespace

void paint_travel_dial(QPainter& painter, const QRectF& rect, const DialPicture& picture,
                       const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const DialLayout layout = dial_layout(rect, QFontMetricsF(painter.font()), picture);
  if (layout.radius > 12) {
    const Dial dial{painter, theme, layout, picture};
    draw_sectors(dial);
    draw_rings(dial);
    draw_hand(dial);
    for (const TravelMark& mark : picture.marks) draw_mark(dial, mark);
    draw_active(dial);
  }
  paint_dial_labels(painter, layout, picture, theme);
  painter.restore();
}

}  // namespace gazewright
