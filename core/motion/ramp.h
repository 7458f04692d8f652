#pragma once

#include <vector>

#include "core/motion/axis_model.h"

/// The two halves of a fastest move: from rest under full torque, train rigid.
namespace gazewright {

/// Acceleration of the rigid train of section 5. @param pull_Nm gravity and cables on the load,
/// @param slip sat(ω_m/0.5 rad/s), @param friction sat(ω/0.01 rad/s). [rad/s²]
double train_acceleration_radps2(const AxisModel& model, double motor_torque_Nm, double speed_radps,
                                 double pull_Nm, double slip, double friction);

/// Motor torque of full braking at an output speed ≥ 0: negative. [N·m]
double braking_torque_Nm(const AxisModel& model, double speed_radps);
double driving_torque_Nm(const AxisModel& model, double speed_radps);

struct RampPoint {
  double time_s = 0, angle_rad = 0, speed_radps = 0;
  double slope_radps2 = 0;  ///< of the speed along the ramp; kept at its steps only
};

/// A ramp from rest, integrated against its own time in L-stable steps with error control (near the
/// top speed of a motor of low resistance the speed settles in no time). Braking runs backwards
/// from the target: time and angle are counted back from there, so that speed grows along it too.
class Ramp {
 public:
  enum class Way { speeding_up, braking };
  /// @param tolerance  of the move and of the speed it asks for, in one step.
  Ramp(const AxisModel& model, double move_rad, Way way, double tolerance);

  /// Whether the torque overcomes gravity, cables and all of the friction at rest.
  bool can_start() const;
  /// One more step; false where the speed would fall to nothing or there are too many steps.
  bool extend();
  const RampPoint& last() const { return points_.back(); }
  /// @pre 0 ≤ angle ≤ last().angle_rad. Cubic between the steps.
  RampPoint at_angle(double angle_rad) const;
  RampPoint at_time(double time_s) const;
  double torque_Nm(double speed_radps) const;

 private:
  double slope_radps2(double angle_rad, double speed_radps, bool full_friction = false) const;
  RampPoint between(const RampPoint& a, const RampPoint& b, double part) const;

  AxisModel model_;
  double move_rad_;
  Way way_;
  double tolerance_;
  double step_s_ = 0, usual_radps_ = 0;
  std::size_t tries_ = 0;
  std::vector<RampPoint> points_{RampPoint{}};
};

}  // namespace gazewright
