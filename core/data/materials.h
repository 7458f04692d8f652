#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/data/data_table.h"
#include "core/rig/rig.h"

/// Materials by their name: the rig's own first, then those of the data file materials with the
/// user's own rows.
namespace gazewright {

/// The table in force; columns: modulus, layer_modulus, strength, layer_strength [Pa],
/// softening [K], density [kg/m³], shear_share [1].
const DataTable& material_table();

/// The material of that name, its spreads with it; empty where there is none. Of the rig's own,
/// what nobody entered is missing. Capital letters do not matter.
std::optional<Material> find_material(const Rig& rig, std::string_view name);
/// Where its values come from: `Material::source` of the rig's own, else of the built-in value
/// `key`.
std::string material_source(const Rig& rig, std::string_view name, std::string_view key);

/// Every name that find_material knows, the rig's own first.
std::vector<std::string> material_names(const Rig& rig);
/// "there is no material “petq”; did you mean petg? There are pla, petg, ..." for a name that
/// nobody knows; empty for one that is known, and for an empty one.
std::string material_problem(const Rig& rig, std::string_view name);

/// The value less its spread: what to count on. NaN where it is missing.
double least_of(const Quantity& quantity);

}  // namespace gazewright
