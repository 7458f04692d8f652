#pragma once

#include "app/plots/drawing.h"

/// Where hard stops and cables run, as lines in B: to scale where the rig gives the dimensions,
/// else in usual sizes. The letters are those of design section 3.
namespace gazewright {

/// An axis with what turns about it: zero along +x, positive angles as the axis counts them.
struct AxisFrame {
  Eigen::Isometry3d X_BF = Eigen::Isometry3d::Identity();  ///< the part that stands still
  Eigen::Vector3d zero, quarter, along;                    ///< in F; along the axis
  double turn_rad = 0;                                     ///< of the pose
  double station_m = 0;  ///< along the axis, where its stops and its cable sit

  /// A point in B. @param angle_rad  from zero; s_m  along the axis from its origin
  Eigen::Vector3d at(double radius_m, double angle_rad, double s_m) const;
};
/// Of pan at the mounting plane, of tilt at the longest body beside it (the arm).
AxisFrame axis_frame(const Rig& full, const Projection& projection, Axis axis);

/// A tab or post as the corners of its block.
struct StopBlock {
  std::vector<Eigen::Vector3d> corners_m;
  bool turns = false;
};
/// Empty where the rig has none, or too little is known to place them.
std::vector<StopBlock> stop_blocks(const Rig& full, const Projection& projection, Axis axis);
/// The circle on which tab and post meet.
std::vector<Eigen::Vector3d> stop_circle_m(const Rig& full, const Projection& projection,
                                           Axis axis);

using Strand = std::vector<Eigen::Vector3d>;
/// The cable where it takes up the turning: twisted strands along the axis, a spiral, a hanging
/// bend, or the rings of a slip ring. A hanging bend is as long as the free length says.
/// Empty where the axis has no cable.
std::vector<Strand> cable_strands(const Rig& full, const Projection& projection, Axis axis);
/// From pan's end up the arm to tilt's.
Strand cable_between(const Rig& full, const Projection& projection);

}  // namespace gazewright
