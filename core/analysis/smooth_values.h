#pragma once

#include <array>
#include <optional>
#include <string>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/motion/smoothness.h"

/// What figures and checks of slow turning share.
namespace gazewright {

inline constexpr auto kSlow =
    joined(kLoops, std::array<InputPath, 2>{"<axis>.encoder.bits", "<axis>.friction.coulomb"});

/// Why slow turning says nothing: a cogging torque without its periods, loops that swing.
std::optional<std::string> why_not_slow(Context& context, Axis axis);
bool has_cogging(Context& context, Axis axis);
bool has_falling_friction(Context& context, Axis axis);

}  // namespace gazewright
