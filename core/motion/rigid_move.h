#pragma once

#include <optional>
#include <vector>

#include "core/motion/axis_model.h"

/// Moves of the axis with the train rigid: the quickest the envelope allows.
namespace gazewright {

/// Acceleration of the rigid train at output speed ω with motor torque T and a pull on the load
/// along +φ (gravity and cables, see AxisLoad::pull_Nm), efficiency driving and back-driving as in
/// section 5. [rad/s²]
double rigid_acceleration_radps2(const AxisModel& model, double motor_torque_Nm, double speed_radps,
                                 double pull_Nm);

/// A rest-to-rest move of `move_rad` centred on the rest pose, full torque one way, then the other.
/// Empty where the axis cannot move that far (torque below friction, gravity and cables, or it
/// cannot be stopped).
struct FastestMove {
  double time_s = 0, switch_time_s = 0, peak_speed_radps = 0;
};
std::optional<FastestMove> fastest_move(const AxisModel& model, double move_rad);
/// The same with its path: time, angle from the start, speed, motor torque.
struct MovePath {
  FastestMove move;
  std::vector<double> time_s, angle_rad, speed_radps, motor_torque_Nm;
};
std::optional<MovePath> fastest_move_path(const AxisModel& model, double move_rad,
                                          int points = 200);

/// N within 1…200 that minimises the fastest move's time. Empty where no ratio can do it.
std::optional<double> best_time_ratio(const AxisModel& model, double move_rad);

}  // namespace gazewright
