#pragma once

#include <optional>
#include <string>

#include "core/analysis/context.h"

/// What an axis does with the gains of the file and with those that are advised. Off the quick
/// path: each simulates a step. Method: resources/handbook/loops.md.
namespace gazewright {

struct GainOutcome {
  bool is_simulated = false;        ///< the inputs of the settle time are there
  std::optional<double> settle_s;   ///< of the task's move; where simulated, empty: never
  std::optional<double> phase_rad;  ///< phase margin, the smaller of both loops; empty: not known,
                                    ///< or neither crosses unit gain
  std::optional<double> gain_factor;  ///< gain margin, the smaller of both loops; empty alike
};

GainOutcome outcome_today(Context& context, Axis axis);
/// Does not need the gains of the file. Nothing where none can be advised, and if quick.
const GainOutcome& outcome_advised(Context& context, Axis axis);

/// "With these gains the move settles slower, in 339 ms instead of 56.6 ms. That buys margin: phase
/// margin 61° instead of 38°."; empty where nothing is known.
std::string gain_effect(Context& context, Axis axis);

/// The axis' advice with that as its first sentence.
GainAdvice advice_with_effect(Context& context, Axis axis);

/// Whether the advised gains settle slower than today's by more than 1 %, or never while those do.
bool settles_slower(const GainOutcome& advised, const GainOutcome& today);

}  // namespace gazewright
