#pragma once

#include "core/tracking/follow.h"

namespace gazewright {

/// Angle and speed of an axis that takes up a speed command with a lag of first order, within its
/// speed and acceleration.
class FollowedMotion {
 public:
  FollowedMotion() = default;
  FollowedMotion(const FollowedAxis& axis, double angle_rad) : axis_(axis), angle_rad_(angle_rad) {}

  /// Runs with the command held: in closed form.
  void take_speed(double command_radps, double for_s);
  /// Runs towards a place that moves: command = gain·(place − angle) + speed.
  void take_place(double place_rad, double speed_radps, double for_s);

  double angle_rad() const { return angle_rad_; }
  double speed_radps() const { return speed_radps_; }

 private:
  FollowedAxis axis_;
  double angle_rad_ = 0, speed_radps_ = 0;
};

}  // namespace gazewright
