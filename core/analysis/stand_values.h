#pragma once

#include <array>
#include <string>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/loads/stand.h"

/// What the figures and the checks of the stand share.
namespace gazewright {

inline constexpr std::array<InputPath, 4> kStandWeight{"stand.mass", "stand.half_width",
                                                       "stand.height", "<load>"};
/// With the fastest moves of both axes.
inline constexpr auto kStandMoves = joined(
    joined(kStandWeight, kBothSteps),
    std::array<InputPath, 4>{"pan.drive.speed_limit", "tilt.drive.speed_limit",
                             "pan.gearbox.input_speed_limit", "tilt.gearbox.input_speed_limit"});
inline constexpr std::array<InputPath, 2> kStandSpring{"stand.sway_stiffness",
                                                       "stand.sway_damping"};
inline constexpr auto kStandSways = joined(joined(kStandWeight, kStandSpring), kBothSteps);
inline constexpr auto kStandSwaysInPicture = joined(kStandSways, kToPixels);

StandBody stand_body(const Rig& rig);
Tipping tipping(Context& context);  ///< @pre kStandWeight

/// What the fastest moves of both axes, at once, push the stand with. @pre kStandMoves
struct StandPush {
  double pan_Nm = 0;          ///< reaction of pan's drive, about the plumb line
  double force_N = 0;         ///< sideways, of masses off their axes
  double overturning_Nm = 0;  ///< about the foot, with the reaction of tilt's drive
};
StandPush push_of(Context& context);

/// What pulls at the feet and what holds them, but for the friction's coefficient.
/// @pre kStandMoves
struct FeetPull {
  double twist_N = 0, push_N = 0, lean_N = 0;  ///< pan's reaction, masses off their axes, lean
  double pressing_N = 0;                       ///< of the weight on the ground
  double sum_N() const { return twist_N + push_N + lean_N; }
};
FeetPull pull_at_feet(Context& context);

/// What the task's step of this axis does to the stand: pan twists it about the plumb line, tilt
/// sways it to and fro. The twist's stiffness is taken to be the sway's (of a round column it is
/// 0.77 of it). @pre kStandSways. 0 where the step is not there.
const Swayed& stand_swayed(Context& context, Axis axis);
/// Of the stand with its load. [Hz] @pre kStandWeight, kStandSpring
double stand_first_mode_Hz(Context& context);

}  // namespace gazewright
