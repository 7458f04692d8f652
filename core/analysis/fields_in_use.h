#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/rig/rig.h"

namespace gazewright {

/// An input list may name, in place of a field, what the kind of part in use needs:
/// "<axis>.stops.<travel>" for the travel between the stops, "<axis>.cable.<travel>" for the travel
/// that the cable allows, "<axis>.cable.<bend>" for its tightest bend, "<axis>.cable.<spring>" for
/// its torque against turning, "<axis>.bearing.<carried>" for what decides weight and inertia on
/// its bearings (of both axes), "<axis>.<fastest>" for how fast it turns, starts and brakes,
/// "<axis>.bearing.<load>" for what its kind of bearing needs. These are the inputs meant, or empty
/// where the path is that of a field. A part that is absent on purpose needs none.
std::optional<std::span<const std::string_view>> fields_in_use(std::string_view path,
                                                               const AxisParts& parts);

}  // namespace gazewright
