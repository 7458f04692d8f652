#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/rig/rig.h"

/// What a stop's tab bears. Stresses in Pa.
namespace gazewright {

/// Tensile strength of a material as parts are found to have it; metals: where they yield. From
/// the data file materials; printed plastics lying flat, pulled along their layers.
struct TabMaterial {
  std::string_view name;  ///< an option of stops.material
  double least_Pa, most_Pa;
  double shear_share;  ///< shear strength over tensile strength
};
std::span<const TabMaterial> tab_materials();

/// Strength to count on: the entered one less its spread, or else the least of the material.
struct TabStrength {
  double tensile_Pa, shear_Pa;
  double most_tensile_Pa;  ///< the other end of the spread
};
/// Empty where neither strength nor material is given.
std::optional<TabStrength> tab_strength(const Stops& stops);

/// Stress in a tab that a force F presses on at height h: a short cantilever. Source: Gere,
/// Mechanics of Materials (bending stress M/W, W = t·w²/6); the shear is the mean over the section.
double tab_bending_Pa(double force_N, double height_m, double width_m, double thickness_m);
double tab_shear_Pa(double force_N, double width_m, double thickness_m);

}  // namespace gazewright
