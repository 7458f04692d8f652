#pragma once

#include <optional>
#include <vector>

#include "core/motion/step.h"

/// How the camera swings on its bracket about the output, and when it is still.
namespace gazewright {

/// The bracket as one oscillator, y'' + 2ζω·y' + ω²·y = −(acceleration of the output), y the
/// camera's angle less the output's. What the swinging does to the axis is left out.
/// Source: Meirovitch, Fundamentals of Vibrations (from memory), motion of the support.
struct BracketMode {
  double natural_radps = 0;  ///< √(k/J), undamped
  double damping_ratio = 0;  ///< 0 … 1
};

/// State of the oscillator, carried on exactly under a constant acceleration.
class Swing {
 public:
  Swing(const BracketMode& mode, double step_s);
  void advance(double acceleration_radps2);
  double angle_rad() const { return angle_; }
  /// √(y² + (y'/ω)²): its energy as an amplitude; never grows while the output rests. [rad]
  double amplitude_rad() const;

 private:
  double natural_, angle_ = 0, speed_ = 0;
  double angle_by_angle_, angle_by_speed_, speed_by_angle_, speed_by_speed_;
};

struct CameraMotion {
  double ringing_rad = 0;               ///< amplitude at `over_s`
  std::optional<double> settle_time_s;  ///< last time outside the band, at the camera; empty: it
                                        ///< swings on for long
};
/// @param over_s from when on only ringing is left: the move is over and the output settled.
/// @param angle_rad  if not null, gets the camera's angle at each sample of the trace.
/// After the trace's end the output rests where it is. @pre the output has settled in the trace.
CameraMotion camera_motion(const Trace& trace, const BracketMode& mode, double move_rad,
                           double band_rad, double over_s,
                           std::vector<double>* angle_rad = nullptr);

}  // namespace gazewright
