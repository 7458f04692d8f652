#pragma once

#include <optional>

#include "core/tracking/follow.h"

namespace gazewright {

/// Angle and speed of an axis that takes up a speed command with a lag of first order, within its
/// speed and acceleration.
class FollowedMotion {
 public:
  FollowedMotion() = default;
  /// Begins at that angle, or at the end of the travel before it.
  FollowedMotion(const FollowedAxis& axis, double angle_rad);

  /// Runs with the command held: in closed form, up to where the travel ends.
  void take_speed(double command_radps, double for_s);
  /// Runs towards a place that moves: command = gain·(place − angle) + speed.
  void take_place(double place_rad, double speed_radps, double for_s);

  double angle_rad() const { return state_.angle_rad; }
  double speed_radps() const { return state_.speed_radps; }

 private:
  struct State {
    double angle_rad = 0, speed_radps = 0;
  };
  bool is_past(const State& state) const;
  State free_after(const State& from, double wanted_radps, double for_s) const;
  std::optional<double> end_of_travel_s(double wanted_radps, double for_s) const;

  FollowedAxis axis_;
  State state_;
};

}  // namespace gazewright
