#pragma once

#include <Eigen/Core>
#include <optional>

#include "core/rig/rig.h"

/// What bodies look like from outside, and how near two of them come.
namespace gazewright {

/// A convex solid somewhere in space. A ball has radius half_m(0); a cylinder has radius half_m(0),
/// half length half_m(2) and its axis along the third column; a box has its half sides.
struct Solid {
  enum class Kind { ball, cylinder, box };
  Kind kind = Kind::ball;
  Eigen::Vector3d centre_m = Eigen::Vector3d::Zero();
  Eigen::Matrix3d axes = Eigen::Matrix3d::Identity();  ///< orthonormal columns
  Eigen::Vector3d half_m = Eigen::Vector3d::Zero();

  /// Half its extent along a unit vector. [m]
  double reach_m(const Eigen::Vector3d& direction) const;
  /// Its point that is nearest to p.
  Eigen::Vector3d nearest_to(const Eigen::Vector3d& p_m) const;
  /// Radius of the ball around its centre that holds it. [m]
  double bounding_radius_m() const;
};

/// A body from outside, in its carrier's frame: a shell counts as a full ball, a tube as a full
/// rod. Empty where the body has no shape in space (`point`, `inertia`) or lacks a size or place.
std::optional<Solid> solid_of(const Body& body);

/// A lower bound of the distance between two solids, at or below 0 where they touch. [m] From a
/// ball to anything it is the distance; else it is at least 0.9 of it, down to some 0.01 mm. Every
/// value comes from a plane that keeps them apart, so solids that touch are never found apart.
/// Source: separating-axis theorem of convex sets; the planes are those of the solids' own axes and
/// those that projections to and fro between the solids give.
double gap_m(const Solid& a, const Solid& b);

}  // namespace gazewright
