#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/analysis/context.h"

namespace gazewright {

/// How an axis finds its angle after power-up, step by step, with the numbers to set in the drive;
/// what is missing is named. Sentences as in findings: decimal point, paths of fields.
/// @param findings  those of the rig: what does not hold about homing ends the plan
std::vector<std::string> homing_plan(Context& context, Axis axis,
                                     std::span<const Finding> findings);

}  // namespace gazewright
