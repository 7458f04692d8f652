#pragma once

#include <array>
#include <vector>

#include "core/tracking/target.h"

/// The outer loop that follows a target with the camera: pictures at their times, found late and
/// not quite exactly, and an axis that takes up a speed. Model: resources/handbook/tracking.md.
namespace gazewright {

/// The picture as far as it matters here. Places are from its centre.
struct CameraPicture {
  double pixels_per_radian = 0, half_width_px = 0, half_height_px = 0;
  double exposure_s = 0;

  /// Where a target stands that the camera misses by these angles, at the target's tilt. Angles
  /// beyond 86° count as 86°. [px]
  PerAxis place_px(const PerAxis& error_rad, double tilt_rad) const;
  bool holds(const PerAxis& place_px, double part = 1) const;  ///< within this part of it
};

/// A detector as numbers.
struct Vision {
  double interval_s = 0;  ///< from picture to picture
  double delay_s = 0;     ///< from the middle of an exposure to the answer
  double noise_px = 0;    ///< standard deviation
  double drop_outs = 0;   ///< part of the pictures
  unsigned seed = 0;      ///< of noise and drop-outs

  /// How old a held answer is on average: half an interval, more where answers drop out. [s]
  double mean_hold_s() const { return interval_s * (1 + drop_outs) / (2 * (1 - drop_outs)); }
};

/// One axis as the outer loop sees it: a speed command is taken up with a lag of first order.
struct FollowedAxis {
  double gain_1ps = 0;
  double lag_s = 0;
  double speed_limit_radps = 0, acceleration_limit_radps2 = 0;
  double least_rad = -kInfinity, most_rad = kInfinity;  ///< where it is held

  bool is_held(double angle_rad) const { return angle_rad <= least_rad || angle_rad >= most_rad; }
};
struct Following {
  std::array<FollowedAxis, 2> axis{};
  bool acts_on_angle = false;
  double feed_forward = 0;
};

/// A row at each of follow_times_s(); all vectors of a kind have the same length.
struct FollowTrace {
  std::array<std::vector<double>, 2> angle_rad;       ///< of the axes
  std::array<std::vector<double>, 2> slip_radps;      ///< target less axis, at each exposure
  std::array<std::vector<double>, 2> at_frame_radps;  ///< speed of the axis at each exposure
  std::vector<double> frame_s;                        ///< middle of each exposure
};

/// Follows the target from where it is first, at rest. Exact between pictures where the loop acts
/// on the error; where it acts on the angle the command is held for a fiftieth of 1/gain. At the
/// end of its travel an axis stops dead and waits for a command that leads back.
FollowTrace follow(const Target& target, const Vision& vision, const Following& following,
                   const CameraPicture& picture);
/// Times of the rows of a run: every 1 to 100 ms in round numbers, at most 2001 rows. [s]
std::vector<double> follow_times_s(double duration_s);

}  // namespace gazewright
