#pragma once

/// What an angle and a speed are in the picture and at the target; small-angle pinhole.
namespace gazewright {

/// How far off it looks at the target, square to the line of sight. [m]
inline double at_target_m(double error_rad, double distance_m) { return error_rad * distance_m; }

/// How far the picture slides while it gathers light. [px]
inline double blur_px(double speed_radps, double exposure_s, double px_per_rad) {
  return speed_radps * exposure_s * px_per_rad;
}
/// How far the last row is displaced against the first: upright lines lean by it while it pans, the
/// picture grows or shrinks by it while it tilts. [px]
inline double skew_px(double speed_radps, double readout_s, double px_per_rad) {
  return speed_radps * readout_s * px_per_rad;
}
/// The speed at which the picture slides one pixel in a time. [rad/s]
inline double one_pixel_speed_radps(double time_s, double px_per_rad) {
  return 1 / (time_s * px_per_rad);
}

}  // namespace gazewright
