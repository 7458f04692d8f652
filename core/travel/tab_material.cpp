#include "core/travel/tab_material.h"

#include <algorithm>

namespace gazewright {
namespace {

constexpr double kMPa = 1e6;
// Ductile metals by von Mises, 1/√3; printed plastics: common practice, no source.
constexpr double kMetalShear = 0.577, kPrintedShear = 0.5;

constexpr TabMaterial kMaterials[] = {
    {"pla", 40 * kMPa, 60 * kMPa, kPrintedShear},
    {"petg", 35 * kMPa, 50 * kMPa, kPrintedShear},
    {"asa", 32 * kMPa, 48 * kMPa, kPrintedShear},
    {"nylon", 35 * kMPa, 70 * kMPa, kPrintedShear},
    {"polycarbonate", 45 * kMPa, 68 * kMPa, kPrintedShear},
    {"aluminium", 140 * kMPa, 275 * kMPa, kMetalShear},
    {"steel", 235 * kMPa, 400 * kMPa, kMetalShear},
};

const TabMaterial* material_of(const Stops& stops) {
  const auto* found = std::ranges::find(kMaterials, stops.material.value, &TabMaterial::name);
  return found == std::end(kMaterials) ? nullptr : found;
}

}  // namespace

std::span<const TabMaterial> tab_materials() { return kMaterials; }

std::optional<TabStrength> tab_strength(const Stops& stops) {
  const TabMaterial* material = material_of(stops);
  const double share = material == nullptr ? kPrintedShear : material->shear_share;
  if (stops.tab_strength_Pa.si) {
    const double middle = *stops.tab_strength_Pa.si, spread = stops.tab_strength_Pa.spread_si;
    const double least = std::max(0.0, middle - spread);
    return TabStrength{least, share * least, middle + spread};
  }
  if (material == nullptr) return std::nullopt;
  return TabStrength{material->least_Pa, share * material->least_Pa, material->most_Pa};
}

double tab_bending_Pa(double force_N, double height_m, double width_m, double thickness_m) {
  return force_N * height_m / (thickness_m * width_m * width_m / 6);
}

double tab_shear_Pa(double force_N, double width_m, double thickness_m) {
  return force_N / (width_m * thickness_m);
}

}  // namespace gazewright
