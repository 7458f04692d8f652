#pragma once

#include <array>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/fault.h"
#include "core/files/yaml_tree.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

/// From the YAML tree to the rig. Used by core/files only.
namespace gazewright {

/// What reading a text gave, with the place of every entry for writing it back.
struct ReadText {
  std::optional<Rig> rig;  ///< empty where there is an error
  std::unique_ptr<YamlNode> tree;
  /// Nodes by path: "pan.motor.mass" the entry, "pan.motor" its map, and where an entry is itself a
  /// map "pan.motor.mass/value", "/spread" and "/source".
  std::map<std::string, const YamlNode*, std::less<>> places;
  std::vector<Fault> faults;
};
ReadText read_text(std::string_view text);

/// The order that unknown keys are kept in, wherever they stood in the file: by path, then key.
void sort_unknown_keys(Rig& rig);

/// Reads maps and fields, and gathers places, faults and unknown keys. What is missing or null
/// stays missing.
class Reader {
 public:
  /// What to do with one key of a map. The path is that of the key's value.
  struct Entry {
    std::string key;
    std::function<void(const YamlNode&, const std::string& path)> read;
  };
  using Entries = std::vector<Entry>;

  Reader(ReadText& out, std::vector<UnknownKey>& unknown_keys)
      : out_(out), unknown_keys_(unknown_keys) {}

  /// One that gathers places and faults with this one, and unknown keys apart.
  Reader with_keys_of(Rig& rig) const { return {out_, rig.unknown_keys}; }

  void error(const YamlNode& node, std::string problem, std::string fix);
  void warning(const YamlNode& node, std::string problem, std::string fix);
  void place(const std::string& path, const YamlNode& node) { out_.places.emplace(path, &node); }

  /// Reads a map by its entries; other keys are kept as unknown, with a warning.
  void read_map(const YamlNode& node, const std::string& path, const Entries& entries);

  void read_quantity_at(const YamlNode& node, const std::string& path, const FieldInfo& info,
                        Quantity& quantity);
  void read_text_at(const YamlNode& node, const std::string& path, std::string& text);
  void read_choice_at(const YamlNode& node, const std::string& path, const ChoiceInfo& info,
                      Choice& choice);
  /// A list of exactly as many quantities, e.g. [0 mm, 62 mm, 85 mm]; null leaves one missing.
  /// @param order  what they are, for messages: "x, y, z"
  void read_list_at(const YamlNode& node, const std::string& path,
                    std::span<const FieldInfo* const> infos, std::string_view order,
                    std::span<Quantity> list);

 private:
  void keep_unknown(const YamlNode& key, const YamlNode& value, const std::string& path,
                    const Entries& entries);
  bool read_value(const YamlNode& node, const std::string& path, const FieldInfo& info,
                  Quantity& quantity);
  void read_spread_at(const YamlNode& node, const std::string& path, const FieldInfo& info,
                      Quantity& quantity);
  void read_source_at(const YamlNode& node, const std::string& path, const FieldInfo& info,
                      Quantity& quantity);
  void read_quantity_map(const YamlNode& node, const std::string& path, const FieldInfo& info,
                         Quantity& quantity);

  /// Remembers where a comma has cut a number of a map in braces in two.
  void mark_cut_numbers(const YamlNode& map);

  ReadText& out_;
  std::vector<UnknownKey>& unknown_keys_;
  std::map<const YamlNode*, const YamlNode*> rest_of_;  ///< the key that is the end of a number
  std::set<const YamlNode*> told_;                      ///< such keys, once their number was read
};

/// "Rotor inertia (pan.motor.rotor_inertia)": how messages call a field.
std::string called(std::string_view label, const std::string& path);

/// The entries of a part by its table. A key with a point ("duty.moves_per_minute") is a map in the
/// file.
template <class Part>
Reader::Entries entries_of(Reader& reader, Part& part);

void read_bodies(Reader& reader, const YamlNode& node, const std::string& path,
                 std::vector<Body>& bodies);

void read_keep_outs(Reader& reader, const YamlNode& node, const std::string& path,
                    std::vector<KeepOut>& keep_outs);
void read_tracking(Reader& reader, const YamlNode& node, const std::string& path,
                   Tracking& tracking);
void read_variants(Reader& reader, const YamlNode& node, const std::string& path,
                   std::vector<Variant>& variants);
/// What makes a design: all of a rig but its title, notes and variants.
Reader::Entries design_entries(Reader& reader, Rig& rig);

/// Whether a node is a list of at most so many entries; else says so.
/// @param what  they are, in the plural
bool is_list_of(Reader& reader, const YamlNode& node, const std::string& path,
                std::string_view what, std::size_t most, std::string fix);

/// A list of parts, each a map of its own. @param example  of one entry
template <class Part>
void read_parts(Reader& reader, const YamlNode& node, const std::string& path,
                std::string_view what, std::size_t most, std::string_view example,
                std::vector<Part>& parts) {
  reader.place(path, node);
  if (node.is_null() || !is_list_of(reader, node, path, words(what), most,
                                    words("begin each with a dash: - %1", example)))
    return;
  parts.resize(node.children.size());
  for (std::size_t i = 0; i < parts.size(); ++i)
    reader.read_map(node.children[i], path + "[" + std::to_string(i) + "]",
                    entries_of(reader, parts[i]));
}

template <class Part>
Reader::Entries entries_of(Reader& reader, Part& part) {
  const PartTable<Part>& table = table_of<Part>();
  Reader::Entries entries;
  const auto add = [&](std::string_view key, auto read) {
    const auto point = key.find('.');
    if (point == std::string_view::npos) {
      entries.push_back({std::string(key), read});
      return;
    }
    const Reader::Entries inner{{std::string(key.substr(point + 1)), read}};
    entries.push_back({std::string(key.substr(0, point)),
                       [&reader, inner](const YamlNode& node, const std::string& path) {
                         reader.read_map(node, path, inner);
                       }});
  };
  for (const auto& row : table.texts)
    add(row.info.key,
        [&reader, &text = part.*row.at](const YamlNode& node, const std::string& path) {
          reader.read_text_at(node, path, text);
        });
  for (const auto& row : table.choices)
    add(row.info.key,
        [&reader, &row, &choice = part.*row.at](const YamlNode& node, const std::string& path) {
          reader.read_choice_at(node, path, row.info, choice);
        });
  for (const auto& row : table.quantities)
    add(row.info.key,
        [&reader, &row, &quantity = part.*row.at](const YamlNode& node, const std::string& path) {
          reader.read_quantity_at(node, path, row.info, quantity);
        });
  return entries;
}

}  // namespace gazewright
