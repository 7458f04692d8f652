#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "core/motion/rigid_move.h"
#include "core/motion/step.h"

/// What holds a move back at each instant, and for which part of its time.
namespace gazewright {

enum class MoveLimit : std::uint8_t {
  drive_current,  ///< the drive's current limit
  motor_current,  ///< the motor's peak current, where it is the lesser
  gear_torque,    ///< the gearbox's peak torque
  voltage,        ///< the bus voltage, driving or braking
  supply,         ///< the supply's current limit
  speed,          ///< the loop's speed limit
  loop,           ///< nothing but the loop: its command stays below every limit
  gap             ///< the same while the teeth are apart
};
inline constexpr std::size_t kMoveLimits = 8;
/// The last part of the figures' ids: "current", "motor_current", "gear_torque", "voltage",
/// "supply", "speed", "loop", "gap".
std::string_view name_of(MoveLimit limit);

/// The limit in force from each control sample of a step to the next one, for the samples before
/// `until_s`. Where the torque that the current loop would give lies beyond the envelope, what cuts
/// it; else where the command was cut, current or gearbox; else the speed limit, the gap, the loop.
/// The controller is run again over the angles of the trace.
/// @pre the trace is that of simulate_step(model, move_rad, ...).
std::vector<MoveLimit> limits_in_force(const AxisModel& model, const Trace& trace, double move_rad,
                                       double until_s);

/// Parts of the time by MoveLimit; they add up to 1.
using LimitShares = std::array<double, kMoveLimits>;
double share_of(const LimitShares& shares, MoveLimit limit);

/// Of the time from 0 to `until_s`, the last sample counted in part. Empty where there is no time.
std::optional<LimitShares> limit_shares(std::span<const MoveLimit> limits, double sample_s,
                                        double until_s);

/// What ends the envelope of the rigid train at an output speed ≥ 0.
MoveLimit driving_move_limit(const AxisModel& model, double speed_radps);
MoveLimit braking_move_limit(const AxisModel& model, double speed_radps);

/// Of the fastest move: full torque all the way, so one of the envelope's ends at any time.
/// Changes of the limit are found between the points of a path of 400. Empty where there is no
/// move.
std::optional<LimitShares> fastest_move_shares(const AxisModel& model, double move_rad);

}  // namespace gazewright
