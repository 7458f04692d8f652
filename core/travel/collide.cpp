#include "core/travel/collide.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/travel/joined.h"
#include "core/travel/solid.h"
#include "core/units/angle.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

using Eigen::Vector3d;
constexpr double kLeastStep_rad = 0.05 * kDegree_rad;
constexpr double kEndless_m = 100;

struct Named {
  std::string name;
  Solid solid;  ///< of what tilts in T, of the others in P
};

std::string shown_name(const Body& body) { return body.name.empty() ? words("a body") : body.name; }

struct Scene {
  std::vector<Named> tilting, other;
  Vector3d p_PT_m = Vector3d::Zero();
  std::vector<std::string> without_shape;
};

void add_solids(const std::vector<Body>& bodies, std::vector<Named>& solids, Scene& scene) {
  for (const Body& body : bodies) {
    if (const auto solid = solid_of(body))
      solids.push_back({shown_name(body), *solid});
    else
      scene.without_shape.push_back(shown_name(body));
  }
}

Solid stand_of(const Stand& stand) {
  const bool is_known = stand.half_width_m.has_value() && stand.height_m.has_value();
  const double height_m = is_known ? *stand.height_m.si : kEndless_m;
  Solid solid;
  solid.kind = Solid::Kind::cylinder;
  const double radius_m = is_known ? *stand.half_width_m.si * std::numbers::sqrt2 : kEndless_m;
  solid.half_m = {radius_m, radius_m, height_m / 2};
  solid.centre_m = {0, 0, -height_m / 2};
  return solid;
}

Scene scene_of(const Rig& rig) {
  Scene scene;
  add_solids(rig.on_tilt, scene.tilting, scene);
  add_solids(rig.on_pan, scene.other, scene);
  scene.other.push_back({"stand", stand_of(rig.stand)});
  for (int i = 0; i < 3; ++i)
    scene.p_PT_m(i) = rig.tilt_axis_at_m[static_cast<std::size_t>(i)].si.value_or(0);
  return scene;
}

/// In P at this tilt; positive looks up, about −y.
Solid tilted(const Solid& solid, const Vector3d& p_PT_m, double tilt_rad) {
  const Eigen::Matrix3d R_PT = Eigen::AngleAxisd(-tilt_rad, Vector3d::UnitY()).toRotationMatrix();
  Solid turned = solid;
  turned.centre_m = p_PT_m + R_PT * solid.centre_m;
  turned.axes = R_PT * solid.axes;
  return turned;
}

/// How far the tilt moves the solid's surface at most, per radian: round ones turn on the spot.
double sweep_radius_m(const Solid& solid) {
  const double off_axis_m = std::hypot(solid.centre_m.x(), solid.centre_m.z());
  const bool is_round = solid.kind == Solid::Kind::ball ||
                        (solid.kind == Solid::Kind::cylinder && std::abs(solid.axes(1, 2)) > 0.5);
  return is_round ? off_axis_m : off_axis_m + solid.bounding_radius_m();
}

double gap_at_m(const Scene& scene, const Solid& tilting, const Solid& other, double tilt_rad) {
  return gap_m(tilted(tilting, scene.p_PT_m, tilt_rad), other);
}

/// Tilt of the first contact going one way (+1 up, −1 down), within half a turn. Each step is so
/// short that the solid cannot cross the gap in it, but at least kLeastStep_rad.
std::optional<double> first_contact(const Scene& scene, const Solid& tilting, const Solid& other,
                                    double first_gap_m, int way, double end_rad) {
  const double radius_m = sweep_radius_m(tilting);
  if (radius_m <= 0) return std::nullopt;
  double gap = first_gap_m;
  for (double tilt = 0;;) {
    const double step = std::max(kLeastStep_rad, (gap - kTouching_m) / radius_m);
    tilt += step;
    if (tilt >= end_rad) return std::nullopt;
    gap = gap_at_m(scene, tilting, other, way * tilt);
    if (gap <= kTouching_m) return way * tilt;
  }
}

/// Whether the tilt axis goes through a body.
bool is_on_axis(const Scene& scene, const Solid& other) {
  Solid axis;
  axis.kind = Solid::Kind::cylinder;
  axis.centre_m = scene.p_PT_m;
  axis.half_m = {0, 0, kEndless_m};
  axis.axes.col(0) = Vector3d::UnitZ();
  axis.axes.col(1) = Vector3d::UnitX();
  axis.axes.col(2) = Vector3d::UnitY();
  return gap_m(axis, other) <= kTouching_m;
}

void keep_first(std::optional<Contact>& first, const std::optional<double>& tilt_rad,
                const Named& tilting, const Named& other) {
  if (tilt_rad && (!first || std::abs(*tilt_rad) < std::abs(first->tilt_rad)))
    first = Contact{*tilt_rad, tilting.name, other.name};
}

}  // namespace

Clearance clearance_of(const Rig& rig) {
  const Scene scene = scene_of(rig);
  Clearance clearance;
  clearance.without_shape = scene.without_shape;
  const auto end = [](const std::optional<Contact>& found) {
    return found ? std::abs(found->tilt_rad) : std::numbers::pi;
  };
  for (const Named& tilting : scene.tilting) {
    for (const Named& other : scene.other) {
      const double gap = gap_at_m(scene, tilting.solid, other.solid, 0);
      if (gap <= kTouching_m) {
        clearance.joined.emplace_back(tilting.name, other.name);
        continue;
      }
      keep_first(clearance.up,
                 first_contact(scene, tilting.solid, other.solid, gap, 1, end(clearance.up)),
                 tilting, other);
      keep_first(clearance.down,
                 first_contact(scene, tilting.solid, other.solid, gap, -1, end(clearance.down)),
                 tilting, other);
    }
  }
  return clearance;
}

std::vector<Joined> joined_of(const Rig& rig) {
  const Scene scene = scene_of(rig);
  std::vector<Joined> joined;
  for (const Named& tilting : scene.tilting) {
    for (const Named& other : scene.other) {
      const double gap = gap_at_m(scene, tilting.solid, other.solid, 0);
      if (gap > kTouching_m) continue;
      joined.push_back(
          {tilting.name, other.name, std::max(0.0, -gap), is_on_axis(scene, other.solid)});
    }
  }
  return joined;
}

}  // namespace gazewright
