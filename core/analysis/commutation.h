#pragma once

#include <optional>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"

/// What figures and findings share about the angle that a drive commutates by.
namespace gazewright {

inline constexpr std::array<InputPath, 3> kCommutation{
    "<axis>.motor.pole_pairs", "<axis>.encoder.error", "<axis>.encoder.bits"};
inline constexpr auto kSamplesPerTurn = joined(
    kTopSpeed, std::array<InputPath, 2>{"<axis>.motor.pole_pairs", "<axis>.drive.control_rate"});

/// How far the electrical angle may be off: the reading's error and half a count times pole pairs;
/// behind the gear times the ratio too, with half the gap and the wind-up at stall torque.
struct CommutationError {
  std::optional<double> electrical_rad;  ///< empty: the motor has a sensor of its own, or unknown
  std::string because;                   ///< why it is empty
  bool has_own_sensor = false;
};
/// @pre kCommutation
CommutationError commutation_error(Context& context, Axis axis);

/// Control samples in a turn of the field at top speed. @pre kSamplesPerTurn
double samples_per_electrical_turn(Context& context, Axis axis);

}  // namespace gazewright
