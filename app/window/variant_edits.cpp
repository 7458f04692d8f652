#include "app/window/variant_edits.h"

#include <algorithm>

namespace gazewright {
namespace {

std::string path_of_variant(std::size_t index) { return "variants[" + std::to_string(index) + "]"; }

bool is_of_variant(const UnknownKey& key) { return key.path.starts_with("variants["); }

}  // namespace

std::shared_ptr<const Rig> design_of(const Rig& rig) {
  auto design = std::make_shared<Rig>(rig);
  design->title.clear();
  design->notes.clear();
  design->variants.clear();
  std::erase_if(design->unknown_keys, is_of_variant);
  return design;
}

std::optional<std::size_t> variant_like(const Rig& rig, const Rig& design) {
  const auto at = std::ranges::find_if(
      rig.variants, [&](const Variant& variant) { return *variant.rig == design; });
  if (at == rig.variants.end()) return std::nullopt;
  return static_cast<std::size_t>(at - rig.variants.begin());
}

std::string free_variant_name(const Rig& rig, const std::string& word) {
  for (std::size_t number = 1;; ++number) {
    std::string name = word + " " + std::to_string(number);
    if (std::ranges::find(rig.variants, name, &Variant::name) == rig.variants.end()) return name;
  }
}

Rig with_variant_pinned(Rig rig, const std::string& name) {
  std::shared_ptr<const Rig> design = design_of(rig);
  rig.variants.push_back({name, {}, std::move(design)});
  return rig;
}

Rig with_variant_restored(const Rig& rig, std::size_t index) {
  Rig restored = *rig.variants[index].rig;
  restored.title = rig.title;
  restored.notes = rig.notes;
  restored.variants = rig.variants;
  std::ranges::copy_if(rig.unknown_keys, std::back_inserter(restored.unknown_keys), is_of_variant);
  return restored;
}

Rig with_variant_removed(Rig rig, std::size_t index) {
  rig.variants.erase(rig.variants.begin() + static_cast<std::ptrdiff_t>(index));
  std::erase_if(rig.unknown_keys,
                [&](const UnknownKey& key) { return key.path == path_of_variant(index); });
  for (UnknownKey& key : rig.unknown_keys) {
    for (std::size_t i = index; i < rig.variants.size(); ++i) {
      if (key.path != path_of_variant(i + 1)) continue;
      key.path = path_of_variant(i);
      break;
    }
  }
  return rig;
}

Rig with_variant_named(Rig rig, std::size_t index, const std::string& name) {
  rig.variants[index].name = name;
  return rig;
}

Rig with_variant_noted(Rig rig, std::size_t index, const std::string& note) {
  rig.variants[index].note = note;
  return rig;
}

}  // namespace gazewright
