#include "core/travel/tab_material.h"

#include <algorithm>
#include <vector>

#include "core/data/materials.h"
#include "core/data/prepared.h"

namespace gazewright {
namespace {

constexpr double kPrintedShear = 0.5;  // common practice, no source

std::vector<TabMaterial> read_tab_materials() {
  std::vector<TabMaterial> materials;
  for (const DataRow& row : material_table().rows) {
    const DataValue* strength = row.find("strength");
    if (strength == nullptr) continue;
    materials.push_back(
        {row.name, strength->si - strength->spread_si, strength->si + strength->spread_si,
         row.find("shear_share") == nullptr ? kPrintedShear : row.si("shear_share")});
  }
  return materials;
}

const TabMaterial* material_of(const Stops& stops) {
  const auto materials = tab_materials();
  const auto found = std::ranges::find(materials, stops.material.value, &TabMaterial::name);
  return found == materials.end() ? nullptr : &*found;
}

}  // namespace

std::span<const TabMaterial> tab_materials() {
  static Prepared<std::vector<TabMaterial>> prepared(read_tab_materials);
  return prepared.get();
}

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
