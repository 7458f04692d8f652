#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/tracking/target.h"

/// How well the rig follows its target, by each detector.
namespace gazewright {

class Context;

/// The outer loop of one axis with one detector, in closed form.
struct OuterLoop {
  double dead_time_s = 0;  ///< around the loop
  double late_s = 0;       ///< of the angle that it acts on; 0 where it acts on the error
  double gain_1ps = 0;     ///< as entered, or what follows from the dead time
  double gain_ceiling_1ps = 0;
  double ramp_lag_rad = 0;  ///< behind a target that keeps its peak speed
};

/// One detector's run.
struct DetectorRun {
  std::string name;
  double frame_rate_Hz = 0, delay_s = 0;
  std::array<OuterLoop, 2> loop;
  std::array<std::vector<double>, 2> angle_rad;  ///< of the axes, a value per row
  std::array<std::vector<double>, 2> place_px;   ///< of the target, from the picture's centre
  PerAxis rms_rad{}, most_px{};
  PerAxis at_limit{};    ///< part of the time that the axis is held at the end of its travel
  double rms_px = 0;     ///< of the distance from the centre
  double in_middle = 0;  ///< part of the time within the inner third of width and height
  double blur_px = 0;    ///< over the exposure; 95 % of the pictures have less
  double skew_px = 0;    ///< largest lean of an upright line over the picture's height
};

struct TrackingRuns {
  std::string because;         ///< why there are none ("needs camera.rows"); else empty
  std::vector<double> time_s;  ///< of each row
  std::array<std::vector<double>, 2> target_rad;
  PerAxis peak_speed_radps{};                  ///< of the target
  double middle_px = 0, middle_height_px = 0;  ///< half the inner third's width and height
  std::vector<DetectorRun> detectors;          ///< in the rig's order; one where it has none
  PerAxis rms_unfed_rad{}, rms_fed_rad{};      ///< of the first one, none and all of the speed fed
  std::size_t best = 0;                        ///< detector with the smallest rms_px
};

/// Phase margin that the outer loop should keep; common practice, no source.
inline constexpr double kWantedOuterMargin_rad = 3.14159265358979323846 / 4;

TrackingRuns tracking_of(Context& context);
/// Only the first detector, as the rig has it: for the trials of remedies.
TrackingRuns first_detector_of(Context& context);

}  // namespace gazewright
