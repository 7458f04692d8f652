#pragma once

namespace gazewright {

/// Output angles that fit one encoder reading at the motor: 2π/N apart, ceil(travel/spacing) of
/// them.
double homing_spacing_rad(double ratio);
double homing_candidates(double travel_rad, double ratio);

/// Output speed while it looks for a stop or flag, where none is entered: 30 deg/s. Common
/// practice, no source.
inline constexpr double kUsualHomingSpeed_radps = 0.5235987755982988;
/// How long the speed has to stay near nothing before it counts as having met the stop. Common
/// practice, no source.
inline constexpr double kStallTime_s = 0.2;

/// What works against the search, at the output. [N·m], [N·m·s/rad]
struct Resistance {
  double coulomb_Nm = 0;       ///< cables' friction included
  double pull_Nm = 0;          ///< gravity and the cables' spring at their worst
  double drag_Nm = 0;          ///< of the gearbox, η·N times its drag at the input
  double viscous_Nmsprad = 0;  ///< load and, times η·N², gearbox
};
/// Torque η·N·Kt·i that just keeps the output turning at this speed. [N·m]
double moving_torque_Nm(const Resistance& resistance, double speed_radps);

/// Currents with which an axis may push into its stop. [A], phase current amplitude
struct PushWindow {
  double least_A = 0;  ///< beats everything that works against it
  double most_A = 0;  ///< spares the gearbox and is within drive and motor; below least_A: there is
                      ///< no such current
};
struct PushLimits {
  double torque_per_ampere_NmpA = 0;  ///< η·N·Kt
  double moving_Nm = 0;
  double blow_Nm = 0;    ///< of meeting the stop: ω·√(k·J)
  double gentle_Nm = 0;  ///< what the gearbox should bear every day
  double current_A = 0;  ///< limit of drive and motor
};
/// least = moving/(η·N·Kt); most = (gentle − blow)/(η·N·Kt), at most the current limit. The drive
/// reaches its push when it has met the stop, so blow and push add up; one that holds the whole
/// push from the first touch brings up to the push once more, which the step from rated to peak
/// torque bears.
PushWindow push_window(const PushLimits& limits);

/// Time to find a stop or flag from the far end: travel/speed and, for a stop, the time until it
/// counts as met. [s]
double homing_time_s(double travel_rad, double speed_radps, bool by_stop);

}  // namespace gazewright
