#include <algorithm>

#include "core/files/writer.h"

namespace gazewright {
namespace {

std::size_t line_start(std::string_view text, std::size_t at) {
  return at == 0 ? 0 : text.rfind('\n', at - 1) + 1;  // npos + 1 is 0
}

std::string whole_lines(std::string_view lines) {
  std::string text(lines);
  if (!text.empty() && text.back() != '\n') text += '\n';
  return text;
}

/// The list of variants in the text, up to the next key; empty lines and remarks at the left edge
/// before that one belong to it.
struct OldList {
  std::size_t begin = 0, end = 0;
  std::vector<std::size_t> items;  ///< where the lines of each begin
};

std::size_t end_of_list(std::string_view text, const YamlNode& root, std::size_t index) {
  std::size_t end = index + 1 < root.keys.size() ? root.keys[index + 1].at : text.size();
  while (end > 0) {
    const std::size_t line = line_start(text, end - 1);
    const std::string_view content = text.substr(line, end - line);
    const bool is_apart =
        content.front() == '#' || content.find_first_not_of(" \t\r\n") == std::string_view::npos;
    if (!is_apart) break;
    end = line;
  }
  return end;
}

std::optional<OldList> old_list(std::string_view text, const YamlNode& root, std::size_t index) {
  const YamlNode& list = root.children[index];
  if (root.is_flow || (list.is_flow && !list.children.empty())) return std::nullopt;
  OldList old{root.keys[index].at, end_of_list(text, root, index), {}};
  if (line_start(text, old.begin) != old.begin) return std::nullopt;
  for (const YamlNode& item : list.children) old.items.push_back(line_start(text, item.at));
  return old;
}

/// The lines of an old variant that is the same, not taken yet; else new ones.
std::string lines_of(const Rig& rig, std::size_t index, std::string_view text, const OldList& list,
                     const std::vector<Variant>& before, std::vector<bool>& taken) {
  for (std::size_t i = 0; i < list.items.size(); ++i) {
    if (taken[i] || !(before[i] == rig.variants[index])) continue;
    taken[i] = true;
    const std::size_t end = i + 1 < list.items.size() ? list.items[i + 1] : list.end;
    return whole_lines(text.substr(list.items[i], end - list.items[i]));
  }
  return variant_lines(rig, index);
}

}  // namespace

std::optional<TextEdit> variants_edit(const Rig& rig, std::string_view text, const ReadText& old) {
  const YamlNode& root = *old.tree;
  const auto key = std::ranges::find(root.keys, "variants", &YamlNode::value);
  OldList list{text.size(), text.size(), {}};
  TextEdit edit;
  if (key != root.keys.end()) {
    const auto found = old_list(text, root, static_cast<std::size_t>(key - root.keys.begin()));
    if (!found) return std::nullopt;
    list = *found;
  } else if (!text.empty() && text.back() != '\n') {
    edit.text.push_back('\n');
  }
  edit.at = list.begin;
  edit.length = list.end - list.begin;
  if (rig.variants.empty()) return edit;
  const std::string_view head = list.items.empty()
                                    ? std::string_view("variants:\n")
                                    : text.substr(list.begin, list.items[0] - list.begin);
  edit.text += head;
  std::vector<bool> taken(list.items.size());
  for (std::size_t i = 0; i < rig.variants.size(); ++i)
    edit.text += lines_of(rig, i, text, list, old.rig->variants, taken);
  return edit;
}

}  // namespace gazewright
