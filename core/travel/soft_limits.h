#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/motion/axis_model.h"
#include "core/travel/travel.h"

/// Where the soft limits have to be and what they are worth. The train is rigid and brakes at the
/// end of its envelope; a hard stop's own give is left out.
namespace gazewright {

enum class End { least, most };  ///< of the travel: where the angle is smallest or largest
inline constexpr std::array<End, 2> kEnds{End::least, End::most};
inline double sign_of(End end) { return end == End::most ? 1 : -1; }
/// Angle at one end of a span centred on the travel's centre. [rad]
double end_angle_rad(const Travel& travel, double span_rad, End end);

/// Largest torque of gravity and the cables' spring together, of either sign, between the hard
/// stops, the other axis at rest; where no stops are known over the cables' travel, at least a
/// whole turn. [N·m]
double worst_pull_Nm(const AxisLoad& load, const Travel& travel);

/// The fastest that the loop ever asks for: top speed or the loop's speed limit. [rad/s]
double fastest_asked_radps(const AxisModel& model);

/// Angle turned before braking acts: the soft limit is noticed at the next sample (up to one
/// control period late), the command acts one sample later, and the current follows it with its
/// time constant 1/(2π·bandwidth). [rad]
double unbraked_angle_rad(const AxisModel& model, double speed_radps);

/// The largest speed towards one end from which full braking still stops at a limit, against the
/// angle, gravity and cables as they are at each angle.
struct SpeedBound {
  std::vector<double> angle_rad;    ///< ascending, from one hard stop to the limit
  std::vector<double> speed_radps;  ///< magnitudes, at most the top speed; 0 at the limit
};
struct SpeedOverTravel {
  std::array<SpeedBound, 2> to_soft, to_stop;  ///< by End
  const SpeedBound& soft(End end) const { return to_soft[static_cast<std::size_t>(end)]; }
  const SpeedBound& stop(End end) const { return to_stop[static_cast<std::size_t>(end)]; }
};
/// Empty bounds where the stops or soft limits are unknown or absent.
SpeedOverTravel speed_over_travel(const AxisModel& model, const Travel& travel);

/// Linear between the points of a bound. @pre not empty; angles outside take its ends. [rad/s]
double bound_at_radps(const SpeedBound& bound, double angle_rad);

}  // namespace gazewright
