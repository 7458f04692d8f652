#include "core/data/materials.h"

#include <algorithm>

#include "core/data/data_library.h"
#include "core/files/spelling.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

const Material* own_material(const Rig& rig, std::string_view name) {
  const auto found = std::ranges::find_if(
      rig.materials, [&](const Material& m) { return is_same_word(m.name, name); });
  return found == rig.materials.end() || name.empty() ? nullptr : &*found;
}

Quantity quantity_of(const DataRow& row, std::string_view key) {
  const DataValue* value = row.find(key);
  if (value == nullptr) return {};
  Quantity quantity = si_quantity(value->si, Source::by_default);
  quantity.written = value->written;
  quantity.spread_si = value->spread_si;
  return quantity;
}

Material material_of(const DataRow& row) {
  Material material;
  material.name = row.name;
  material.source = row.is_own() ? words("own materials.yaml") : "resources/data/materials.yaml";
  material.modulus_Pa = quantity_of(row, "modulus");
  material.layer_modulus_Pa = quantity_of(row, "layer_modulus");
  material.strength_Pa = quantity_of(row, "strength");
  material.layer_strength_Pa = quantity_of(row, "layer_strength");
  material.softening_K = quantity_of(row, "softening");
  material.density_kgpm3 = quantity_of(row, "density");
  return material;
}

}  // namespace

const DataTable& material_table() { return data_table("materials"); }

std::optional<Material> find_material(const Rig& rig, std::string_view name) {
  if (const Material* own = own_material(rig, name)) return *own;
  const DataRow* row = material_table().find(name);
  return row == nullptr ? std::nullopt : std::optional(material_of(*row));
}

std::string material_source(const Rig& rig, std::string_view name, std::string_view key) {
  if (const Material* own = own_material(rig, name)) {
    return own->source.empty() ? words("the rig's own, no source stated") : own->source;
  }
  const DataRow* row = material_table().find(name);
  const DataValue* value = row == nullptr ? nullptr : row->find(key);
  return value == nullptr ? std::string() : value->source;
}

std::vector<std::string> material_names(const Rig& rig) {
  std::vector<std::string> names;
  for (const Material& own : rig.materials)
    if (!own.name.empty()) names.push_back(own.name);
  for (const DataRow& row : material_table().rows)
    if (own_material(rig, row.name) == nullptr) names.push_back(row.name);
  return names;
}

std::string material_problem(const Rig& rig, std::string_view name) {
  if (name.empty() || find_material(rig, name)) return {};
  const std::vector<std::string> names = material_names(rig);
  std::string text = words("there is no material “%1”", name);
  if (const std::string near = nearest_word(in_small_letters(name), names); !near.empty())
    text += words("; did you mean %1?", near);
  text += words(" There are ");
  for (std::size_t i = 0; i < names.size(); ++i) text += (i > 0 ? ", " : "") + names[i];
  return words("%1; a material of your own can be added to the rig or to your data folder", text);
}

double least_of(const Quantity& quantity) { return quantity.value() - quantity.spread_si; }

}  // namespace gazewright
