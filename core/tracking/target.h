#pragma once

#include <array>
#include <vector>

#include "core/rig/rig.h"

/// What the camera has to follow, as angles over time. No target knows of the rig that follows it.
namespace gazewright {

using PerAxis = std::array<double, 2>;  ///< by Axis: pan, tilt

enum class TargetKind { walk, sine, jump, path };

struct TargetPoint {
  double time_s = 0;
  PerAxis angle_rad{};
};

struct Target {
  TargetKind kind = TargetKind::walk;
  double speed_mps = 0, distance_m = 0, height_m = 0;  ///< walk
  double amplitude_rad = 0, frequency_Hz = 0;          ///< sine
  PerAxis jump_rad{};                                  ///< jump
  std::vector<TargetPoint> points{};                   ///< path; times ascend, two or more
  double duration_s = 0;                               ///< that is looked at

  /// Pan and tilt that point at it. A walk passes straight ahead in the middle of its time:
  /// pan = atan(v·t/d), tilt = atan(height/√(d² + (v·t)²)) about t = 0 there. A path is straight
  /// between its points and stands still before and after them. [rad]
  PerAxis angle_rad(double time_s) const;
  /// Largest speed of each angle while it is looked at; a jump has none: 0. [rad/s]
  PerAxis peak_speed_radps() const;
};

/// @param rig  with defaults. Values that are missing become NaN.
Target target_of(const Rig& rig);

/// A path with two points or more that all have their three values, each later than the last.
bool has_path(const Rig& rig);

}  // namespace gazewright
