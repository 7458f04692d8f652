#pragma once

#include <set>
#include <string>
#include <vector>

#include "core/files/writer.h"

/// Parts of a rig as "key: value" pieces of a map in braces. Used by the writer only.
namespace gazewright {

using Pieces = std::vector<std::string>;

/// "{a: 1, b: 2}", broken before it grows wider than a page; further lines stand under the first
/// piece. @param column  where the brace stands
std::string flow_map(std::size_t column, const Pieces& pieces);
std::string flow_map(const Pieces& pieces);  ///< in one line
std::string flow_list(const Pieces& pieces);

/// The unknown keys that belong to the map at this path.
Pieces unknown_pieces(const Rig& rig, const std::string& path);

/// An entry with the unknown keys of its map; "null" where it is missing.
std::string entry_text(const Rig& rig, const std::string& path, const FieldInfo& info,
                       const Quantity& quantity);

template <class Part>
Pieces part_pieces(const Rig& rig, const std::string& path, const Part& part);

/// The fields whose keys begin with `inner` and a point.
template <class Part>
Pieces inner_pieces(const Rig& rig, const std::string& path, const std::string& inner,
                    const Part& part) {
  Pieces pieces;
  for (const auto& row : table_of<Part>().quantities) {
    const std::string key(row.info.key);
    const Quantity& quantity = part.*row.at;
    if (!key.starts_with(inner + ".") || !quantity.has_value()) continue;
    pieces.push_back(key.substr(inner.size() + 1) + ": " +
                     entry_text(rig, path + "." + key, row.info, quantity));
  }
  for (const std::string& piece : unknown_pieces(rig, path + "." + inner)) pieces.push_back(piece);
  return pieces;
}

template <class Part>
Pieces part_pieces(const Rig& rig, const std::string& path, const Part& part) {
  const PartTable<Part>& table = table_of<Part>();
  Pieces pieces;
  std::set<std::string> inner_maps;
  for (const auto& row : table.texts)
    if (const std::string& text = part.*row.at; !text.empty())
      pieces.push_back(std::string(row.info.key) + ": " + yaml_scalar(text));
  for (const auto& row : table.choices)
    if (const Choice& choice = part.*row.at; !choice.value.empty())
      pieces.push_back(std::string(row.info.key) + ": " + yaml_scalar(choice.value));
  for (const auto& row : table.quantities) {
    const std::string key(row.info.key);
    const Quantity& quantity = part.*row.at;
    if (const auto point = key.find('.'); point != std::string::npos)
      inner_maps.insert(key.substr(0, point));
    else if (quantity.has_value())
      pieces.push_back(key + ": " + entry_text(rig, path + "." + key, row.info, quantity));
  }
  for (const std::string& inner : inner_maps)
    if (const Pieces more = inner_pieces(rig, path, inner, part); !more.empty())
      pieces.push_back(inner + ": " + flow_map(more));
  for (const std::string& piece : unknown_pieces(rig, path)) pieces.push_back(piece);
  return pieces;
}

/// A body as the pieces of its map.
Pieces body_pieces(const Rig& rig, const std::string& path, const Body& body);

/// A keep-out as the pieces of its map.
Pieces keep_out_pieces(const Rig& rig, const std::string& path, const KeepOut& keep_out);

/// A list of quantities such as [0 mm, 62 mm, 85 mm]; empty where all are missing.
/// @param infos  of each in turn
std::string list_text(const Rig& rig, const std::string& path,
                      std::span<const FieldInfo* const> infos, std::span<const Quantity> list);

}  // namespace gazewright
