#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"

namespace gazewright {

/// What holds back the step and the fastest move of an axis, without gains.
MoveLimits move_limits(Context& context, Axis axis);

/// For each limit that holds for 1 % of the time or more: its fields changed by a step (a quarter,
/// the gap by half), or only until the limit is never met, and the step simulated again. Those that
/// save more than 1 % of the settle time, the most saving first.
/// Each says which finding would then fail that does not yet, or clearly more than now.
/// @param rig  as the user wrote it
/// @param findings  of it
std::vector<LimitGain> limit_gains(Context& context, const Rig& rig, Axis axis,
                                   std::span<const Finding> findings, const std::stop_token& stop);

}  // namespace gazewright
