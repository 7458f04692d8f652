#include "core/travel/solid.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

using Eigen::Vector3d;
constexpr double kSpeck_m = 1e-12;
constexpr int kProjections = 2000;   // some 20 do for most
constexpr double kNearEnough = 0.9;  // a plane that keeps this much of the distance will do
constexpr double kTooNear_m = 1e-5;  // no plane is looked for between solids that near

/// The widest gap between planes that were tried.
struct Separation {
  const Solid& a;
  const Solid& b;
  Vector3d apart_m = b.centre_m - a.centre_m;
  double best_m = -kInfinity;

  void try_direction(const Vector3d& along) {
    const double length = along.norm();
    if (length < kSpeck_m) return;
    const Vector3d unit = along / length;
    best_m = std::max(best_m, std::abs(unit.dot(apart_m)) - a.reach_m(unit) - b.reach_m(unit));
  }
};

/// Nearest points found by going to and fro. Where that creeps, as between a rod and an edge, the
/// limit is also guessed from its last three: it creeps as a geometric series does.
/// @returns whether a plane between them was found.
bool try_projections(Separation& gap) {
  Vector3d in_b = gap.b.nearest_to(gap.a.centre_m), last = Vector3d::Zero(), change = last;
  for (int i = 0; i < kProjections; ++i) {
    const Vector3d in_a = gap.a.nearest_to(in_b);
    in_b = gap.b.nearest_to(in_a);
    const Vector3d between = in_b - in_a;
    const double distance_m = between.norm();
    if (distance_m < kTooNear_m) return false;
    gap.try_direction(between);
    if (i >= 2) {
      const double shrinks = (between - last).norm() / std::max(change.norm(), kSpeck_m);
      if (shrinks < 1) gap.try_direction(between + (between - last) * (shrinks / (1 - shrinks)));
    }
    change = between - last;
    last = between;
    if (gap.best_m >= kNearEnough * distance_m) return true;
  }
  return gap.best_m > 0;
}

void try_own_axes(Separation& gap) {
  for (const Solid* solid : {&gap.a, &gap.b}) {
    for (int i = 0; i < 3; ++i) gap.try_direction(solid->axes.col(i));
  }
  for (int i = 0; i < 3; ++i) {
    for (int k = 0; k < 3; ++k) gap.try_direction(gap.a.axes.col(i).cross(gap.b.axes.col(k)));
  }
}

std::optional<Solid> placed(Solid solid, const std::array<Quantity, 3>& centre) {
  for (int i = 0; i < 3; ++i) {
    const auto& at_m = centre[static_cast<std::size_t>(i)].si;
    if (!at_m || !std::isfinite(solid.half_m(i))) return std::nullopt;
    solid.centre_m(i) = *at_m;
  }
  return solid;
}

struct FromOutside {
  std::optional<Solid> operator()(const Ball& ball) const { return round(ball.diameter_m); }
  std::optional<Solid> operator()(const Shell& shell) const { return round(shell.diameter_m); }
  std::optional<Solid> operator()(const Tube& tube) const {
    Solid solid;
    solid.kind = Solid::Kind::cylinder;
    const double radius_m = tube.diameter_m.value() / 2;
    solid.half_m = {radius_m, radius_m, tube.length_m.value() / 2};
    const int along = tube.along.value == "z" ? 2 : tube.along.value == "y" ? 1 : 0;
    for (int i = 0; i < 3; ++i) solid.axes.col(i) = Vector3d::Unit((along + 1 + i) % 3);
    return solid;
  }
  std::optional<Solid> operator()(const Box& box) const {
    Solid solid;
    solid.kind = Solid::Kind::box;
    for (int i = 0; i < 3; ++i)
      solid.half_m(i) = box.side_m[static_cast<std::size_t>(i)].value() / 2;
    return solid;
  }
  std::optional<Solid> operator()(const Point&) const { return std::nullopt; }
  std::optional<Solid> operator()(const Tensor&) const { return std::nullopt; }

  static Solid round(const Quantity& diameter_m) {
    Solid solid;
    solid.half_m.setConstant(diameter_m.value() / 2);
    return solid;
  }
};

}  // namespace

double Solid::reach_m(const Vector3d& direction) const {
  if (kind == Kind::ball) return half_m(0);
  const Vector3d own = (axes.transpose() * direction).cwiseAbs();
  if (kind == Kind::box) return own.dot(half_m);
  return own(2) * half_m(2) + std::hypot(own(0), own(1)) * half_m(0);
}

Vector3d Solid::nearest_to(const Vector3d& p_m) const {
  const Vector3d from_centre = p_m - centre_m;
  if (kind == Kind::ball) {
    const double distance_m = from_centre.norm();
    return distance_m <= half_m(0) ? p_m : centre_m + from_centre * (half_m(0) / distance_m);
  }
  Vector3d own = axes.transpose() * from_centre;
  if (kind == Kind::box) {
    own = own.cwiseMax(-half_m).cwiseMin(half_m);
  } else {
    const double radius_m = std::hypot(own(0), own(1));
    if (radius_m > half_m(0)) own.head<2>() *= half_m(0) / radius_m;
    own(2) = std::clamp(own(2), -half_m(2), half_m(2));
  }
  return centre_m + axes * own;
}

double Solid::bounding_radius_m() const {
  if (kind == Kind::ball) return half_m(0);
  return kind == Kind::box ? half_m.norm() : std::hypot(half_m(0), half_m(2));
}

std::optional<Solid> solid_of(const Body& body) {
  auto solid = std::visit(FromOutside{}, body.shape);
  return solid ? placed(*solid, body.centre_m) : std::nullopt;
}

double gap_m(const Solid& a, const Solid& b) {
  if (a.kind == Solid::Kind::ball)
    return (b.nearest_to(a.centre_m) - a.centre_m).norm() - a.half_m(0);
  if (b.kind == Solid::Kind::ball) return gap_m(b, a);
  Separation gap{a, b};
  gap.try_direction(gap.apart_m);
  if (!try_projections(gap)) try_own_axes(gap);
  return gap.best_m;
}

}  // namespace gazewright
