#include "core/heat/limits.h"

#include <algorithm>

#include "core/heat/copper.h"

namespace gazewright {
namespace {

constexpr double celsius_K(double degrees) { return kIceCelsius_K + degrees; }

constexpr InsulationClass kClasses[] = {{"A", celsius_K(105)}, {"E", celsius_K(120)},
                                        {"B", celsius_K(130)}, {"F", celsius_K(155)},
                                        {"H", celsius_K(180)}, {"N", celsius_K(200)}};

constexpr std::string_view kGlass = "glass transition, low end of what public material pages give";
constexpr std::string_view kMemory = "from memory";
// Plastics creep under load from some kelvin below on; the low end is taken.
constexpr Softening kSoftenings[] = {{"pla", celsius_K(55), kGlass},
                                     {"petg", celsius_K(71), kGlass},
                                     {"asa", celsius_K(95), kMemory},
                                     {"nylon", celsius_K(75), kMemory},
                                     {"polycarbonate", celsius_K(130), kMemory},
                                     {"aluminium", celsius_K(150), kMemory},
                                     {"steel", celsius_K(300), kMemory}};

}  // namespace

std::span<const InsulationClass> insulation_classes() { return kClasses; }

std::optional<double> insulation_limit_K(std::string_view name) {
  const auto* found = std::ranges::find(kClasses, name, &InsulationClass::name);
  return found == std::end(kClasses) ? std::nullopt : std::optional(found->limit_K);
}

std::span<const Softening> softenings() { return kSoftenings; }

std::optional<double> softening_K(const Rig& rig, std::string_view material) {
  const auto own = std::ranges::find(rig.materials, material, &Material::name);
  if (own != rig.materials.end() && own->softening_K.si) return own->softening_K.si;
  const auto* found = std::ranges::find(kSoftenings, material, &Softening::material);
  return found == std::end(kSoftenings) ? std::nullopt : std::optional(found->at_K);
}

}  // namespace gazewright
