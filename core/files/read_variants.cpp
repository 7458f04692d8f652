#include "core/files/reader.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::string_view kExample = "begin each with a dash: - {name: low ratio, rig: {...}}";

/// Paths of unknown keys as they are in the variant's own rig.
void make_keys_its_own(Rig& rig, const std::string& path) {
  for (UnknownKey& key : rig.unknown_keys)
    key.path.erase(0, key.path.size() > path.size() ? path.size() + 1 : path.size());
  sort_unknown_keys(rig);
}

std::shared_ptr<const Rig> read_design(Reader& reader, const YamlNode& node,
                                       const std::string& path) {
  auto rig = std::make_shared<Rig>();
  Reader inner = reader.with_keys_of(*rig);
  inner.read_map(node, path, design_entries(inner, *rig));
  make_keys_its_own(*rig, path);
  return rig;
}

void read_variant(Reader& reader, const YamlNode& node, const std::string& path, Variant& variant) {
  const auto text = [&reader](std::string key, std::string& at) {
    return Reader::Entry{std::move(key), [&reader, &at](const YamlNode& value, const auto& p) {
                           reader.read_text_at(value, p, at);
                         }};
  };
  const auto rig = [&](const YamlNode& value, const std::string& p) {
    if (!value.is_null()) variant.rig = read_design(reader, value, p);
  };
  variant.rig = nullptr;
  reader.read_map(node, path,
                  {text("name", variant.name), text("note", variant.note), {"rig", rig}});
  if (variant.rig != nullptr) return;
  variant.rig = std::make_shared<const Rig>();
  if (node.is_map() || node.is_null())
    reader.error(node, words("%1 has no rig: nothing says what the variant is", path),
                 words("write rig: and under it supply, pan, tilt ... as in a rig file"));
}

}  // namespace

void read_variants(Reader& reader, const YamlNode& node, const std::string& path,
                   std::vector<Variant>& variants) {
  reader.place(path, node);
  if (node.is_null() ||
      !is_list_of(reader, node, path, words("variants"), kMostVariants, words(kExample)))
    return;
  variants.resize(node.children.size());
  for (std::size_t i = 0; i < variants.size(); ++i)
    read_variant(reader, node.children[i], path + "[" + std::to_string(i) + "]", variants[i]);
}

}  // namespace gazewright
