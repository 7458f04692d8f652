#pragma once

#include <cmath>
#include <optional>

#include "core/analysis/context.h"

namespace gazewright {

/// Swing of what the axis turns on its bracket, √(stiffness/J_load); empty where no stiffness is
/// entered. @pre "<load>" has values. [rad/s]
inline std::optional<double> bracket_mode_radps(Context& c, Axis a) {
  const auto& stiffness = c.rig().axis(a).bracket.stiffness_Nmprad.si;
  if (!stiffness) return std::nullopt;
  return std::sqrt(*stiffness / c.model(a).load.inertia_kgm2);
}

}  // namespace gazewright
