#pragma once

#include <array>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/heat/stall.h"
#include "core/heat/thermal_model.h"

/// What figures, checks and curves of heat share: the rig's numbers bound to core/heat.
namespace gazewright {

/// Air and thermal resistance: what a steady temperature needs.
inline constexpr std::array<InputPath, 3> kSteadyHeat{
    "<axis>.motor.phase_resistance", "<axis>.motor.thermal_resistance", "surroundings.temperature"};
inline constexpr std::array<InputPath, 1> kWindingLimit{"<axis>.motor.winding_limit"};
inline constexpr auto kLasting = joined(kSteadyHeat, kWindingLimit);
inline constexpr std::array<InputPath, 3> kLimitCurrent{
    "<axis>.motor.thermal_time", "<axis>.motor.peak_current", "<axis>.drive.current_limit"};
inline constexpr auto kTimeToLimit = joined(kLasting, kLimitCurrent);
/// The simulated moves of the duty. The pace of the task's moves is asked for by duty_heat().
inline constexpr std::array<InputPath, 2> kDutyMoves{kWholeStep[0], "duty"};
inline constexpr auto kDutyHeat =
    joined(joined(kSteadyHeat, std::array<InputPath, 1>{"<axis>.motor.thermal_time"}), kDutyMoves);
inline constexpr std::array<InputPath, 7> kHoldCurrent{"<load>",
                                                       "<axis>.motor.speed_constant",
                                                       "<axis>.gearbox.ratio",
                                                       "<axis>.cable.<spring>",
                                                       "<axis>.stops.<travel>",
                                                       "<axis>.motor.peak_current",
                                                       "<axis>.drive.current_limit"};
inline constexpr auto kHoldHeat = joined(kSteadyHeat, kHoldCurrent);

/// Why the motor's thermal fields contradict each other; empty: they do not.
std::string why_no_thermal(Context& context, Axis axis);
/// Two nodes where winding_to_housing is entered, else one. The air is the warmest that
/// surroundings.temperature may be.
MotorThermal motor_thermal(Context& context, Axis axis);
/// Two nodes in any case: without details the cautious end of what is usual.
MotorThermal stall_thermal(Context& context, Axis axis);

/// How long a move itself takes: until nine tenths of its way. 0 where it never gets there: such a
/// move keeps no other one waiting. @param trace  its angles count from where it began
double arrival_s(const Trace& trace, double move_rad);

/// One cycle of the duty as losses of this axis.
struct DutyHeat {
  std::string because;  ///< why there is none; the rest is then empty
  std::vector<DutyPiece> pieces{};
  double cycle_s = 0, moving_s = 0;  ///< of a cycle; of this axis until settled,
                                     ///< all of it where it never does
  double rms_current_A = 0, copper20_W = 0, gear_W = 0;  ///< over the cycle; phase amplitude
  double move_s = 0, pace_s = 0;  ///< of the task's move until both axes have settled; from one to
                                  ///< the next, 0: a list of moves has no pace
  bool settles = true;            ///< every move does
  bool is_waited_for = true;      ///< the other axis is in move_s: it settles
  std::size_t estimated = 0;      ///< moves that were not simulated but scaled from the task's

  double duty_factor() const { return cycle_s > 0 ? moving_s / cycle_s : 0; }
};
const DutyHeat& duty_heat(Context& context, Axis axis);
/// Every move of the duty as it is simulated, or the task's where there is no list. `times` is the
/// angle of a move that was scaled from the task's, over that of the task's. Returns why there are
/// none; else empty.
std::string each_duty_move(
    Context& context, Axis axis,
    const std::function<void(const AxisModel&, const Trace&, double times)>& see);
/// Hands the simulated moves of the rig's list to one with other rests.
void lend_moves(Context& from, Context& to);
/// Hands what stays as it is to a rig that differs at this path: the ratio, the duty's pace or
/// rests, or a number of heat, which changes no move. See Check::lend.
void lend_duty(Context& from, Context& to, std::string_view path);
/// Empty: runaway. @pre the duty has pieces, no reason against the thermal model
const std::optional<DutyTemperatures>& duty_temperatures(Context& context, Axis axis);

/// Current that holds this pull at the output, no friction helping; at most the current limit. [A]
double holding_current_A(Context& context, Axis axis, double pull_Nm);
/// Standing for long where gravity and cables pull most, the worst winding.
struct HoldHeat {
  double pull_Nm = 0, wanted_A = 0, current_A = 0;
  std::optional<Temperatures> at;  ///< empty: runaway
};
const HoldHeat& hold_heat(Context& context, Axis axis);

/// Of the part that holds the motor: by as much cooler than the housing as half of the heat makes
/// (common practice, no source), and never below the air.
double mount_K(Context& context, Axis axis, double housing_K);
/// Where that part gives way: as entered, else the lower end of its material's softening. Empty
/// where neither is known.
std::optional<double> mount_limit_K(const Rig& rig, Axis axis);
/// Magnets lie between winding and housing: their mean (common practice, no source).
double magnet_K(const Temperatures& at);

/// "S3 28 %, cycle 1.5 s", the duty type by IEC 60034-1.
std::string duty_type(const DutyHeat& duty);

}  // namespace gazewright
