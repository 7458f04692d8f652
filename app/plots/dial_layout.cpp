#include "app/plots/dial_layout.h"

#include <QLineF>
#include <algorithm>
#include <cmath>

#include "app/plots/format.h"
#include "app/plots/text.h"
#include "core/rig/fields.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

/// A ring whose outer edge lies at `outer`; more than a turn winds inwards.
DialTrack track(double centre_rad, const std::optional<double>& span_rad, double outer,
                double pitch, double most) {
  DialTrack made{centre_rad, 0, outer, 0};
  if (!span_rad) return made;
  made.span_rad = std::isinf(*span_rad) ? 2 * kPi : *span_rad;
  const double turns = made.span_rad / (2 * kPi);
  if (turns <= 1) return made;
  made.pitch = std::min(pitch, most / turns);
  made.radius = outer - made.pitch * turns / 2;
  return made;
}

double inner(const DialTrack& ring) { return ring.radius - ring.pitch * ring.span_rad / (4 * kPi); }

std::optional<double> stop_or_soft(const Travel& travel) {
  return travel.stops_rad && std::isfinite(*travel.stops_rad) ? travel.stops_rad : travel.soft_rad;
}

void add_tracks(DialLayout& layout, const Travel& travel) {
  const double u = layout.unit, r = layout.radius;
  layout.soft = track(travel.centre_rad, stop_or_soft(travel), r - 3 * u, 7 * u, 16 * u);
  layout.cable =
      track(travel.centre_rad, travel.cable_rad, inner(layout.soft) - 10 * u, 5 * u, 12 * u);
  layout.home_radius = inner(layout.cable) - 10 * u;
  layout.park_radius = layout.home_radius - 9 * u;
}

}  // namespace

const TravelMark* DialPicture::mark(const TravelMark& like) const {
  const auto at =
      std::ranges::find_if(marks, [&](const TravelMark& entry) { return entry.is_same_as(like); });
  return at == marks.end() ? nullptr : &*at;
}

DialPicture dial_picture(const Rig& rig, Axis axis, const Travel& travel) {
  DialPicture picture;
  picture.axis = axis;
  picture.travel = travel;
  picture.marks = travel_marks(with_defaults(rig).axis(axis), travel);
  return picture;
}

QString mark_word(const TravelMark& mark) {
  switch (mark.kind) {
    case MarkKind::hard_stop:
      return Plots::tr("stop");
    case MarkKind::bumper:
      return Plots::tr("bumper");
    case MarkKind::soft_limit:
      return Plots::tr("soft");
    case MarkKind::cable:
      return Plots::tr("cable");
    case MarkKind::centre:
      return Plots::tr("centre");
    case MarkKind::home:
      return Plots::tr("home");
    case MarkKind::park:
      break;
  }
  return Plots::tr("park");
}

QString mark_long_word(const TravelMark& mark) {
  switch (mark.kind) {
    case MarkKind::hard_stop:
      return Plots::tr("hard stop");
    case MarkKind::bumper:
      return Plots::tr("end of the bumper");
    case MarkKind::soft_limit:
      return Plots::tr("soft limit");
    case MarkKind::cable:
      return Plots::tr("cable limit");
    default:
      return mark_word(mark);
  }
}

std::string field_of(const DialPicture& picture, const TravelMark& mark) {
  return std::string(name_of(picture.axis)) + "." + mark.field;
}

double DialLayout::page_rad(double angle_rad) const {
  return angle_rad + (axis == Axis::pan ? kPi / 2 : 0);
}

QPointF DialLayout::at(double angle_rad, double r) const {
  const double a = page_rad(angle_rad);
  return centre + r * QPointF(std::cos(a), -std::sin(a));
}

double DialLayout::angle_at(QPointF point) const {
  const QPointF d = point - centre;
  const double page = std::atan2(-d.y(), d.x());
  return std::remainder(page - page_rad(0), 2 * kPi);
}

double DialLayout::grip_radius(const TravelMark& mark) const {
  const double on_ring = soft.radius_at(mark.angle_rad);
  switch (mark.kind) {
    case MarkKind::hard_stop:
      return on_ring + 2 * unit;
    case MarkKind::bumper:
      return on_ring + 10 * unit;
    case MarkKind::soft_limit:
      return on_ring - 5 * unit;
    case MarkKind::cable:
      return cable.radius_at(mark.angle_rad);
    case MarkKind::centre:
      return radius + 6 * unit;
    case MarkKind::home:
      return home_radius;
    case MarkKind::park:
      break;
  }
  return park_radius;
}

QPointF DialLayout::grip(const TravelMark& mark) const {
  return at(mark.angle_rad, grip_radius(mark));
}

QString dial_angle_text(double angle_rad, int digits) {
  return format_value(angle_rad, "rad", "deg", digits);
}

std::vector<DialLabel> angle_labels(const DialLayout& layout, const QFontMetricsF& metrics,
                                    const DialPicture& picture) {
  std::vector<DialLabel> labels;
  const bool stops = picture.mark({MarkKind::hard_stop, 1, 0, {}});
  for (const TravelMark& mark : picture.marks) {
    if (mark.kind != (stops ? MarkKind::hard_stop : MarkKind::cable)) continue;
    const QString text = dial_angle_text(mark.angle_rad);
    const QSizeF size(metrics.horizontalAdvance(text) + 2, metrics.height());
    const double r = layout.radius + 8 * layout.unit + size.height() / 2;
    const QPointF p = layout.at(mark.angle_rad, r);
    const double lean = std::clamp((p.x() - layout.centre.x()) / layout.radius, -1.0, 1.0);
    const QRectF box(p.x() + (lean - 1) * size.width() / 2, p.y() - size.height() / 2, size.width(),
                     size.height());
    const bool touches = std::ranges::any_of(
        labels, [&](const DialLabel& other) { return other.box.intersects(box); });
    if (!touches) labels.push_back({text, box});
  }
  return labels;
}

namespace {

void set_radius(DialLayout& layout, double radius, const Travel& travel) {
  layout.radius = radius;
  layout.unit = std::clamp(radius / 60, 0.5, 1.4);
  add_tracks(layout, travel);
}

/// The largest ring beside which the angles of the limits still fit; false where it gets too small.
bool fit_angles(DialLayout& layout, const QFontMetricsF& metrics, const DialPicture& picture) {
  const QRectF room(layout.rect.topLeft(), layout.title.topRight());
  const double most = layout.radius;
  for (double radius = most; radius >= std::max(32.0, 0.6 * most); radius -= 2) {
    set_radius(layout, radius, picture.travel);
    const auto labels = angle_labels(layout, metrics, picture);
    if (std::ranges::all_of(labels, [&](const DialLabel& l) { return room.contains(l.box); })) {
      return true;
    }
  }
  set_radius(layout, most, picture.travel);
  return false;
}

}  // namespace

DialLayout dial_layout(const QRectF& rect, const QFontMetricsF& metrics,
                       const DialPicture& picture) {
  DialLayout layout;
  layout.axis = picture.axis;
  layout.rect = rect;
  const double line = metrics.height();
  layout.note = QRectF(rect.left(), rect.bottom() - line, rect.width(), line);
  layout.title = layout.note.translated(0, -line);
  const double tall = rect.height() - 2 * line;
  layout.centre = QPointF(rect.center().x(), rect.top() + tall / 2);
  const double words = metrics.horizontalAdvance(QStringLiteral("bumper −000.0°")) + 10;
  if (rect.width() >= 2 * words + 90 && tall >= 7 * line) {
    layout.labels = DialLayout::Labels::words;
    const double radius = std::min((rect.width() - 2 * words) / 2 - 12, tall / 2 - 14);
    set_radius(layout, radius, picture.travel);
    return layout;
  }
  set_radius(layout, std::min({rect.width() / 2, tall / 2, 90.0}) - 13, picture.travel);
  if (layout.radius > 40 && fit_angles(layout, metrics, picture)) {
    layout.labels = DialLayout::Labels::angles;
  }
  return layout;
}

std::optional<TravelMark> mark_at(const DialLayout& layout, const DialPicture& picture,
                                  QPointF point, double reach) {
  std::optional<TravelMark> best;
  if (layout.radius <= 0) return best;
  for (const TravelMark& mark : picture.marks) {
    const double off = QLineF(point, layout.grip(mark)).length();
    if (off > reach) continue;
    reach = off;
    best = mark;
  }
  return best;
}

}  // namespace gazewright
