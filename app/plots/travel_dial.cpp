#include "app/plots/travel_dial.h"

#include <QFontMetricsF>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/plots/format.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kDegPerRad = 180 / kPi;

QString angle_text(double angle_rad) { return format_value(angle_rad, "rad", "deg"); }
QString from_to(double centre_rad, double span_rad) {
  if (centre_rad == 0) return QStringLiteral("±") + angle_text(span_rad / 2);
  return angle_text(centre_rad - span_rad / 2) + QStringLiteral(" … ") +
         angle_text(centre_rad + span_rad / 2);
}

struct Dial {
  QPainter& painter;
  const Theme& theme;
  Axis axis;
  QPointF centre;
  double radius;

  /// Degrees as QPainter counts them: counter-clockwise from three o'clock.
  double page_deg(double angle_rad) const {
    return angle_rad * kDegPerRad + (axis == Axis::pan ? 90 : 0);
  }
  QPointF at(double angle_rad, double r) const {
    const double a = page_deg(angle_rad) / kDegPerRad;
    return centre + r * QPointF(std::cos(a), -std::sin(a));
  }
  QRectF ring(double r) const { return {centre.x() - r, centre.y() - r, 2 * r, 2 * r}; }

  void arc(double centre_rad, double span_rad, double r, const QPen& pen) const {
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    const double span = std::min(span_rad, 2 * kPi);
    QPainterPath path;
    path.arcMoveTo(ring(r), page_deg(centre_rad - span / 2));
    path.arcTo(ring(r), page_deg(centre_rad - span / 2), span * kDegPerRad);
    painter.drawPath(path);
  }
  void radial(double angle_rad, double from, double to, const QPen& pen) const {
    painter.setPen(pen);
    painter.drawLine(at(angle_rad, from), at(angle_rad, to));
  }
  void sector(double centre_rad, double span_rad, double r, const QBrush& brush) const {
    const double span = std::min(span_rad, 2 * kPi);
    painter.setPen(Qt::NoPen);
    painter.setBrush(brush);
    QPainterPath path(centre);
    path.arcTo(ring(r), page_deg(centre_rad - span / 2), span * kDegPerRad);
    path.closeSubpath();
    painter.drawPath(path);
  }
  /// A short text just outside the ring.
  void label(double angle_rad, const QString& text, const QColor& colour) const {
    const QFontMetricsF metrics(painter.font());
    const QSizeF size(metrics.horizontalAdvance(text) + 2, metrics.height());
    const QPointF p = at(angle_rad, radius + 3 + metrics.height() / 2);
    const double lean = std::clamp((p.x() - centre.x()) / radius, -1.0, 1.0);
    const QRectF box(p.x() - size.width() / 2 + lean * size.width() / 2, p.y() - size.height() / 2,
                     size.width(), size.height());
    painter.setPen(colour);
    painter.drawText(box, Qt::AlignCenter, text);
  }
};

bool bounded(const std::optional<double>& span) { return span && *span < 2 * kPi; }

void draw_rings(const Dial& dial, const Travel& travel) {
  const QColor colour = axis_colour(dial.theme, dial.axis);
  const double r = dial.radius;
  dial.arc(0, 2 * kPi, r, QPen(dial.theme.border, 1));
  if (!travel.usable_rad) return;
  const double usable = std::min(*travel.usable_rad, 2 * kPi);
  dial.sector(travel.centre_rad, usable, r - 5, blended(colour, dial.theme.card, 0.14));
  dial.sector(travel.centre_rad + kPi, 2 * kPi - usable, r - 5,
              blended(dial.theme.neutral, dial.theme.card, 0.22));
  const double soft = travel.soft_rad.value_or(usable);
  dial.arc(travel.centre_rad, soft, r - 2.5, QPen(colour, 5, Qt::SolidLine, Qt::FlatCap));
  if (travel.cable_rad) {
    dial.arc(travel.centre_rad, *travel.cable_rad, r - 11,
             QPen(dial.theme.quiet, 2.5, Qt::SolidLine, Qt::FlatCap));
  }
  if (bounded(travel.stops_rad)) {
    for (const int side : {-1, 1}) {
      dial.radial(travel.centre_rad + side * *travel.stops_rad / 2, r - 8, r + 4,
                  QPen(dial.theme.text, 2.5, Qt::SolidLine, Qt::FlatCap));
    }
  }
  dial.radial(travel.centre_rad, r - 6, r + 3, QPen(dial.theme.text, 1));
}

void draw_labels(const Dial& dial, const Travel& travel) {
  const auto& widest = bounded(travel.stops_rad) ? travel.stops_rad : travel.usable_rad;
  if (bounded(widest)) {
    for (const int side : {-1, 1}) {
      const double angle = travel.centre_rad + side * *widest / 2;
      dial.label(angle, angle_text(angle), dial.theme.text);
    }
  }
  dial.label(travel.centre_rad, angle_text(travel.centre_rad), dial.theme.quiet);
}

}  // namespace

QString travel_summary(const Travel& travel) {
  QStringList parts;
  const auto add = [&](const std::optional<double>& span, const QString& given,
                       const QString& none) {
    if (!span) return;
    parts << (std::isinf(*span) ? none : given.arg(from_to(travel.centre_rad, *span)));
  };
  add(travel.stops_rad, Plots::tr("stops %1"), Plots::tr("no stops"));
  add(travel.soft_rad, Plots::tr("soft limits %1"), {});
  add(travel.cable_rad, Plots::tr("cable %1"), Plots::tr("no cable"));
  parts.removeAll(QString());
  if (travel.usable_rad && std::isfinite(*travel.usable_rad)) {
    const double blind = 2 * kPi - *travel.usable_rad;
    if (blind > 0) parts << Plots::tr("blind %1").arg(angle_text(blind));
  }
  return parts.isEmpty() ? Plots::tr("travel unknown: stops or cable are missing")
                         : parts.join(QStringLiteral(", "));
}

void paint_travel_dial(QPainter& painter, const QRectF& rect, const Travel& travel, Axis axis,
                       double angle_rad, const Theme& theme) {
  painter.save();
  painter.setRenderHint(QPainter::Antialiasing);
  const QFontMetricsF metrics(painter.font());
  const QRectF title(rect.left(), rect.bottom() - metrics.height(), rect.width(), metrics.height());
  const double side_room = metrics.horizontalAdvance(QStringLiteral("−000°")) + 4;
  const double radius = std::min((rect.width() - 2 * side_room) / 2,
                                 (rect.height() - 3.4 * metrics.height()) / 2 - 4);
  painter.setPen(axis_text_colour(theme, axis));
  painter.drawText(title, Qt::AlignCenter, Plots::tr("%1 travel").arg(axis_word(axis)));
  if (radius > 12) {
    const QPointF centre(rect.center().x(), rect.top() + 1.2 * metrics.height() + 5 + radius);
    const Dial dial{painter, theme, axis, centre, radius};
    draw_rings(dial, travel);
    draw_labels(dial, travel);
    if (std::isfinite(angle_rad)) {
      dial.radial(angle_rad, 0, radius - 8,
                  QPen(axis_colour(theme, axis), 2.5, Qt::SolidLine, Qt::RoundCap));
      painter.setBrush(axis_colour(theme, axis));
      painter.drawEllipse(centre, 3, 3);
    }
    if (!travel.usable_rad) {
      painter.setPen(theme.quiet);
      painter.drawText(dial.ring(radius - 8), int(Qt::AlignCenter) | int(Qt::TextWordWrap),
                       Plots::tr("unknown"));
    }
  }
  painter.restore();
}

}  // namespace gazewright
