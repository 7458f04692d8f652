#include <algorithm>
#include <cmath>
#include <limits>

#include "app/plots/drawing_painter.h"
#include "app/plots/outline.h"
#include "app/plots/text.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

using Eigen::AngleAxisd;
using Eigen::Isometry3d;
using Eigen::Vector3d;

/// Right and up on the page as directions of the stand's world.
struct PageAxes {
  Vector3d right, up;
};
PageAxes page_axes(View view) {
  switch (view) {
    case View::front:
      return {Vector3d::UnitY(), Vector3d::UnitZ()};
    case View::top:
      return {Vector3d::UnitX(), Vector3d::UnitY()};
    case View::side:
      break;
  }
  return {Vector3d::UnitX(), Vector3d::UnitZ()};
}

/// What the rig sweeps at any angles, about the pan axis: radius, lowest and highest. [m]
struct Reach {
  double radius_m = 0.03, low_m = 0, high_m = 0.05;
  void add(double radius, double low, double high) {
    radius_m = std::max(radius_m, radius);
    low_m = std::min(low_m, low);
    high_m = std::max(high_m, high);
  }
};

/// A ball goes by its radius: its many points say no more.
void add_body(const Body& body, Reach& reach) {
  if (const auto radius = sphere_radius_m(body)) {
    const Vector3d c = centre_m(body);
    if (c.allFinite() && std::isfinite(*radius))
      reach.add(c.head<2>().norm() + *radius, c.z() - *radius, c.z() + *radius);
    return;
  }
  for (const Vector3d& p : outline_points_m(body)) reach.add(p.head<2>().norm(), p.z(), p.z());
}

double farthest_m(const Body& body) {
  double far = 0;
  if (const auto radius = sphere_radius_m(body)) {
    const double most = centre_m(body).norm() + *radius;
    return std::isfinite(most) ? most : 0;
  }
  for (const Vector3d& p : outline_points_m(body)) far = std::max(far, p.norm());
  return far;
}

Reach reach_of_bodies(const Rig& rig) {
  Reach reach;
  for (const Body& body : rig.on_pan) add_body(body, reach);
  const Vector3d axis_at = position_m(rig.tilt_axis_at_m);
  double ball = 0.02;
  for (const Body& body : rig.on_tilt) ball = std::max(ball, farthest_m(body));
  reach.add(axis_at.head<2>().norm() + ball, axis_at.z() - ball, axis_at.z() + ball);
  return reach;
}

/// What is drawn of a stand that would dwarf the rig, in parts of the rig's height.
constexpr double kStandShare = 0.7;

DrawnStand stand_under(const Rig& full, const Reach& bodies) {
  const double height = full.stand.height_m.si.value_or(0);
  const double half = full.stand.half_width_m.si.value_or(0);
  DrawnStand stand{height, half, false};
  const double most = kStandShare * bodies.high_m;
  if (height <= most) return stand;
  stand.is_cut = true;
  stand.height_m = most;
  stand.half_foot_m = half * std::lerp(kStandTop, 1.0, most / height);
  return stand;
}

Reach reach_of(const Rig& rig) {
  Reach reach = reach_of_bodies(rig);
  const DrawnStand stand = stand_under(with_defaults(rig), reach);
  reach.add(stand.half_foot_m, -stand.height_m, 0);
  return reach;
}

/// What dimensions and the scale bar leave.
QRectF drawing_room(const QRectF& rect) { return rect.adjusted(44, 26, -44, -34); }

}  // namespace

Projection scaled_to(Projection projection, const QRectF& rect, double px_per_m) {
  const QPointF middle = drawing_room(rect).center();
  projection.origin = middle + (projection.origin - middle) * (px_per_m / projection.px_per_m);
  projection.px_per_m = px_per_m;
  return projection;
}

DrawnStand drawn_stand(const Rig& full) { return stand_under(full, reach_of_bodies(full)); }

QPointF Projection::page(const Vector3d& p_B_m) const {
  return origin + px_per_m * QPointF(right.dot(p_B_m), -up.dot(p_B_m));
}

QPointF Projection::page(const BodyRef& carrier, const Vector3d& p_m) const {
  return page((carrier.on_tilt ? X_BT : X_BP) * p_m);
}

Vector3d Projection::carrier_move_m(const BodyRef& carrier, const QPointF& move_px) const {
  const Vector3d in_B = (move_px.x() * right - move_px.y() * up) / px_per_m;
  return (carrier.on_tilt ? X_BT : X_BP).linear().transpose() * in_B;
}

Projection drawing_projection(const QRectF& rect, const Rig& rig, View view, double pan_rad,
                              double tilt_rad) {
  Projection result;
  result.view = view;
  // The stand leans in its world, the page does not.
  const AngleAxisd upright(-with_defaults(rig).stand.lean_rad.si.value_or(0), Vector3d::UnitY());
  const auto [right, up] = page_axes(view);
  result.right = upright * right;
  result.up = upright * up;
  const double pan = std::isfinite(pan_rad) ? pan_rad : 0;
  const double tilt = std::isfinite(tilt_rad) ? tilt_rad : 0;
  result.pan_rad = pan;
  result.tilt_rad = tilt;
  result.X_BP = Isometry3d(AngleAxisd(pan, Vector3d::UnitZ()));
  Isometry3d X_PT = Isometry3d::Identity();
  X_PT.translate(position_m(rig.tilt_axis_at_m));
  X_PT.rotate(AngleAxisd(-tilt, Vector3d::UnitY()));
  result.X_BT = result.X_BP * X_PT;

  const Reach reach = reach_of(rig);
  const bool top = view == View::top;
  const double low = top ? -reach.radius_m : reach.low_m;
  const double high = top ? reach.radius_m : reach.high_m;
  const QRectF room = drawing_room(rect);
  result.px_per_m =
      std::max(1.0, std::min(room.width() / (2 * reach.radius_m), room.height() / (high - low)));
  result.origin = {room.center().x(), room.center().y() + result.px_per_m * (high + low) / 2};
  return result;
}

std::optional<BodyRef> body_at(const QPointF& point, const QRectF& rect, const Rig& rig, View view,
                               double pan_rad, double tilt_rad) {
  return body_at(point, rig, drawing_projection(rect, rig, view, pan_rad, tilt_rad));
}

std::optional<BodyRef> body_at(const QPointF& point, const Rig& rig, const Projection& projection) {
  std::optional<BodyRef> best;
  double least = std::numeric_limits<double>::infinity();
  for (const bool on_tilt : {false, true}) {
    for (std::size_t i = 0; i < bodies_of(rig, on_tilt).size(); ++i) {
      const BodyRef ref{on_tilt, i};
      const QPolygonF outline = page_outline(projection, ref, body_of(rig, ref));
      if (outline.isEmpty()) continue;
      const QRectF box = outline.boundingRect();
      const bool small = box.width() < 24 && box.height() < 24;
      const bool hit = small ? QLineF(box.center(), point).length() <= 12
                             : outline.containsPoint(point, Qt::OddEvenFill);
      const double area = box.width() * box.height();
      if (!hit || area > least) continue;
      least = area;
      best = ref;
    }
  }
  return best;
}

QString BodyRef::path() const {
  return QStringLiteral("%1[%2]")
      .arg(on_tilt ? QStringLiteral("on_tilt") : QStringLiteral("on_pan"))
      .arg(index);
}

QString view_word(View view) {
  switch (view) {
    case View::side:
      return Plots::tr("side");
    case View::front:
      return Plots::tr("front");
    case View::top:
      break;
  }
  return Plots::tr("top");
}

}  // namespace gazewright
