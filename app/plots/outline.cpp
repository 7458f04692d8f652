#include "app/plots/outline.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

using Eigen::Vector3d;
constexpr int kRoundSteps = 48;

/// A circle of radius one.
const std::array<QPointF, kRoundSteps>& round_steps() {
  static const auto kSteps = [] {
    std::array<QPointF, kRoundSteps> steps;
    for (int i = 0; i < kRoundSteps; ++i) {
      const double turn = 2 * std::numbers::pi * i / kRoundSteps;
      steps[std::size_t(i)] = {std::cos(turn), std::sin(turn)};
    }
    return steps;
  }();
  return kSteps;
}

/// Points of a sphere that make its outline round from every side: its three great circles would
/// leave corners between them, so rings of latitude are used.
std::vector<Vector3d> sphere_m(double radius_m) {
  std::vector<Vector3d> points;
  constexpr int kRings = 16;
  for (int ring = 0; ring <= kRings; ++ring) {
    const double latitude = std::numbers::pi * (double(ring) / kRings - 0.5);
    for (const QPointF& step : round_steps()) {
      points.push_back(radius_m * Vector3d(std::cos(latitude) * step.x(),
                                           std::cos(latitude) * step.y(), std::sin(latitude)));
    }
  }
  return points;
}

std::vector<Vector3d> tube_m(const Tube& tube) {
  std::vector<Vector3d> points;
  const int along = tube.along.value == "y" ? 1 : tube.along.value == "z" ? 2 : 0;
  const double radius = tube.diameter_m.value() / 2, half = tube.length_m.value() / 2;
  points.reserve(2 * kRoundSteps);
  for (const QPointF& step : round_steps()) {
    for (const double end : {-half, half}) {
      Vector3d p;
      p[along] = end;
      p[(along + 1) % 3] = radius * step.x();
      p[(along + 2) % 3] = radius * step.y();
      points.push_back(p);
    }
  }
  return points;
}

std::vector<Vector3d> box_m(const Box& box) {
  std::vector<Vector3d> points;
  for (int corner = 0; corner < 8; ++corner) {
    Vector3d p;
    for (int i = 0; i < 3; ++i) {
      p[i] = ((corner >> i) & 1 ? 0.5 : -0.5) * box.side_m[std::size_t(i)].value();
    }
    points.push_back(p);
  }
  return points;
}

struct PointsOf {
  std::vector<Vector3d> operator()(const Ball& ball) const {
    return sphere_m(ball.diameter_m.value() / 2);
  }
  std::vector<Vector3d> operator()(const Shell& shell) const {
    return sphere_m(shell.diameter_m.value() / 2);
  }
  std::vector<Vector3d> operator()(const Tube& tube) const { return tube_m(tube); }
  std::vector<Vector3d> operator()(const Box& box) const { return box_m(box); }
  std::vector<Vector3d> operator()(const Point&) const { return {Vector3d::Zero()}; }
  std::vector<Vector3d> operator()(const Tensor&) const { return {Vector3d::Zero()}; }
};

double cross(const QPointF& o, const QPointF& a, const QPointF& b) {
  return (a.x() - o.x()) * (b.y() - o.y()) - (a.y() - o.y()) * (b.x() - o.x());
}

}  // namespace

std::optional<double> sphere_radius_m(const Body& body) {
  if (const auto* ball = std::get_if<Ball>(&body.shape)) return ball->diameter_m.value() / 2;
  if (const auto* shell = std::get_if<Shell>(&body.shape)) return shell->diameter_m.value() / 2;
  return std::nullopt;
}

Vector3d position_m(const std::array<Quantity, 3>& place) {
  return {place[0].si.value_or(0), place[1].si.value_or(0), place[2].si.value_or(0)};
}

Vector3d centre_m(const Body& body) {
  return {body.centre_m[0].value(), body.centre_m[1].value(), body.centre_m[2].value()};
}

bool has_outline(const Body& body) {
  if (const auto radius = sphere_radius_m(body))
    return std::isfinite(*radius) && centre_m(body).allFinite();
  return !outline_points_m(body).empty();
}

std::vector<Vector3d> outline_points_m(const Body& body) {
  std::vector<Vector3d> points = std::visit(PointsOf{}, body.shape);
  const Vector3d centre = centre_m(body);
  for (Vector3d& p : points) {
    p += centre;
    if (!p.allFinite()) return {};
  }
  return points;
}

QPolygonF convex_hull(std::vector<QPointF> points) {
  if (points.size() < 3) return QPolygonF(QVector<QPointF>(points.begin(), points.end()));
  std::sort(points.begin(), points.end(), [](const QPointF& a, const QPointF& b) {
    return a.x() < b.x() || (a.x() == b.x() && a.y() < b.y());
  });
  QPolygonF hull;
  const auto add_chain = [&hull](auto first, auto last) {
    const qsizetype start = hull.size();
    for (auto p = first; p != last; ++p) {
      while (hull.size() >= start + 2 && cross(hull[hull.size() - 2], hull.back(), *p) <= 0) {
        hull.removeLast();
      }
      hull.append(*p);
    }
    hull.removeLast();
  };
  add_chain(points.begin(), points.end());
  add_chain(points.rbegin(), points.rend());
  return hull;
}

const std::vector<Body>& bodies_of(const Rig& rig, bool on_tilt) {
  return on_tilt ? rig.on_tilt : rig.on_pan;
}

const Body& body_of(const Rig& rig, const BodyRef& ref) {
  return bodies_of(rig, ref.on_tilt).at(ref.index);
}

QPolygonF page_outline(const Projection& projection, const BodyRef& ref, const Body& body) {
  if (const auto radius_m = sphere_radius_m(body)) {  // a circle from every side
    const QPointF centre = projection.page(ref, centre_m(body));
    const double radius = *radius_m * projection.px_per_m;
    QPolygonF circle;
    if (!std::isfinite(centre.x()) || !std::isfinite(centre.y()) || !std::isfinite(radius))
      return circle;
    for (const QPointF& step : round_steps()) circle << centre + radius * step;
    return circle;
  }
  const std::vector<Vector3d> points_m = outline_points_m(body);
  std::vector<QPointF> points;
  points.reserve(points_m.size());
  for (const Vector3d& p : points_m) points.push_back(projection.page(ref, p));
  return convex_hull(std::move(points));
}

}  // namespace gazewright
