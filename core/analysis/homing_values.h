#pragma once

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/travel/homing.h"

/// What figures, findings and plan of homing share.
namespace gazewright {

/// Inputs of what works against the search, of the stop's blow and of the gearbox's limit.
inline constexpr std::array<InputPath, 10> kMoving{
    "<axis>.motor.speed_constant", "<axis>.gearbox.ratio",   "<axis>.gearbox.efficiency",
    "<axis>.gearbox.drag",         "<axis>.gearbox.viscous", "<axis>.friction.coulomb",
    "<axis>.friction.viscous",     "<axis>.cable.friction",  "<load>",
    "<axis>.stops.centre"};
inline constexpr auto kHomingBlow =
    joined(joined(kMoving, kRotors),
           std::array<InputPath, 4>{"<axis>.gearbox.peak_torque", "<axis>.stops.stiffness",
                                    "<axis>.drive.current_limit", "<axis>.motor.peak_current"});
inline constexpr std::array<InputPath, 2> kVernier{"<axis>.gearbox.ratio",
                                                   "<axis>.homing.second_ratio"};

enum class HomingBy { stop, flag, output, second_encoder };
/// How the axis finds its angle; an encoder at the output needs nothing else.
HomingBy homing_by(Context& c, Axis a);
bool keeps_count(Context& c, Axis a);
/// Turns of the axis' encoder per turn of the output.
double encoder_turns(Context& c, Axis a);
double homing_speed_radps(Context& c, Axis a);
/// Output angles among which a reading is looked up: between the stops, else one turn; empty where
/// the travel between the stops is not known.
std::optional<double> searched_rad(Context& c, Axis a);

/// Output torque per ampere, η·N·Kt.
double torque_per_ampere_NmpA(Context& c, Axis a);
double moving_torque_Nm(Context& c, Axis a);
double stop_blow_Nm(Context& c, Axis a);
/// The lesser of rated and peak torque of the gearbox, of those that are given.
double gentle_torque_Nm(Context& c, Axis a);
/// @pre nothing of kHomingBlow is missing
PushWindow push_window(Context& c, Axis a);

/// How far off the output may be when it stands pushed into a stop: half the gap, and the wind-up
/// by as much torque as friction may keep or add. [rad]
double stop_unsure_rad(Context& c, Axis a);
/// The same at a flag: its error and half the gap.
double flag_unsure_rad(Context& c, Axis a);

/// A comparison without numbers that names what is missing, as find() does; empty: nothing is.
std::optional<Compared> lacking(Context& c, Axis a, std::span<const InputPath> inputs);

}  // namespace gazewright
