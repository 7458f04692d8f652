#pragma once

#include <optional>
#include <span>
#include <string_view>

#include "core/rig/rig.h"

/// Temperatures that insulation and printed parts bear. [K]
namespace gazewright {

/// A thermal class and the hottest temperature of its insulation. Source: IEC 60085 (as public
/// motor manuals print it; N from memory).
struct InsulationClass {
  std::string_view name;
  double limit_K;
};
std::span<const InsulationClass> insulation_classes();
std::optional<double> insulation_limit_K(std::string_view name);

/// Where a material gives way, with where the value is from.
struct Softening {
  std::string_view material;
  double at_K;
  std::string_view source;
};
std::span<const Softening> softenings();
/// Of the rig's own materials, then of the built-in ones; empty where neither knows it.
std::optional<double> softening_K(const Rig& rig, std::string_view material);

}  // namespace gazewright
