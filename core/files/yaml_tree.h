#pragma once

#include <cstddef>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/files/fault.h"

/// A YAML text as a tree that keeps the place of everything and every key, doubled ones too. The
/// one place that calls yaml-cpp. Used by core/files and core/data only.
namespace gazewright {

struct YamlNode {
  enum class Kind { null, scalar, list, map };
  Kind kind = Kind::null;
  std::string value;               ///< of a scalar
  bool is_quoted = false;          ///< the scalar stood in quotes
  bool is_flow = false;            ///< a list in [] or a map in {}
  std::size_t at = 0;              ///< byte offset of its first sign
  std::vector<YamlNode> keys;      ///< of a map, one for each child
  std::vector<YamlNode> children;  ///< of a list or map

  bool is_map() const { return kind == Kind::map; }
  bool is_list() const { return kind == Kind::list; }
  bool is_scalar() const { return kind == Kind::scalar; }
  bool is_null() const { return kind == Kind::null; }
  /// The first value of this key in a map, or null.
  const YamlNode* find(std::string_view key) const;
};

/// Reads one document. Faults are added: bad bytes, too much of something, anchors, doubled keys,
/// syntax. @returns null where there is nothing to read on with.
std::unique_ptr<YamlNode> parse_yaml(std::string_view text, std::vector<Fault>& faults);

/// Where the scalar ends that begins at `at` with a quote sign; npos where its quotes never close.
std::size_t end_of_quoted(std::string_view text, std::size_t at);

/// A text as a YAML scalar: plain where that is safe anywhere (in [] and {} too), else in double
/// quotes.
std::string yaml_scalar(std::string_view text, bool always_quoted = false);
/// A node as YAML in one line. Parsing the result gives the same text again.
std::string yaml_text(const YamlNode& node);

/// Whether a comma has cut a number in two, as in {phase_resistance: 0,065 ohm}: digits, the comma,
/// and right behind it more of them. @param end  the next entry, or the next key
bool is_cut_number(const YamlNode& begin, const YamlNode& end);

/// The name of a kind for messages: "a list", "a map", "a text", "nothing".
std::string words_of_kind(const YamlNode& node);

}  // namespace gazewright
