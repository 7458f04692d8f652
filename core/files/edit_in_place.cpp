#include <algorithm>
#include <set>

#include "core/files/pieces.h"
#include "core/files/writer.h"

namespace gazewright {
namespace {

/// How many bytes a scalar or a written null takes; empty for blocks, broken lines and unseen
/// nulls.
std::optional<std::size_t> length_of(const YamlNode& node, std::string_view text) {
  if (node.at >= text.size()) return std::nullopt;
  const std::string_view rest = text.substr(node.at);
  if (node.is_null()) {
    for (const std::string_view word : {"null", "~"})
      if (rest.starts_with(word)) return word.size();
    return std::nullopt;
  }
  if (!node.is_scalar()) return std::nullopt;
  if (rest.front() == '"' || rest.front() == '\'') {
    const std::size_t end = end_of_quoted(text, node.at);
    return end == std::string_view::npos ? std::nullopt : std::optional(end - node.at);
  }
  if (node.value.empty() || !rest.starts_with(node.value)) return std::nullopt;
  return node.value.size();
}

/// Gathers the edits that turn the old text into the new one.
class Editor {
 public:
  Editor(std::string_view text, const ReadText& old) : text_(text), old_(old) {}

  /// Puts in the maps that were not there; nothing may be changed after it.
  /// @returns whether all changes can be made in place
  bool finish() {
    while (!new_maps_.empty()) {
      const auto deepest = std::ranges::max_element(
          new_maps_, {}, [](const NewMap& map) { return std::ranges::count(map.path, '.'); });
      const NewMap map = std::move(*deepest);
      new_maps_.erase(deepest);
      insert(map.path, flow_map(column_of_value(map.path), map.pieces));
    }
    return is_possible_;
  }

  void change(const QuantityRef& now, const QuantityRef& before) {
    const Quantity &to = *now.quantity, &from = *before.quantity;
    if (to == from) return;
    const YamlNode* node = place(now.path);
    if (!to.has_value()) return set(now.path, "null");
    if (node == nullptr || !node->is_map()) return set(now.path, quantity_text(to, *now.info));
    set(now.path + "/value", yaml_scalar(value_text(to, *now.info)));
    if (to.spread_si != from.spread_si || to.spread_written != from.spread_written)
      set(now.path + "/spread",
          to.spread_si == 0 ? "null" : yaml_scalar(spread_text(to, *now.info)));
    if (to.source != from.source)
      set(now.path + "/source", to.source == Source::unstated ? "null" : name_of(to.source));
  }
  void change(const ChoiceRef& now, const ChoiceRef& before) {
    if (*now.choice == *before.choice) return;
    set(now.path, now.choice->value.empty() ? "null" : yaml_scalar(now.choice->value));
  }
  void change(const TextRef& now, const TextRef& before) {
    if (*now.text != *before.text) set(now.path, yaml_scalar(*now.text));
  }
  template <class Now, class Before>
  void change(const Now&, const Before&) {
    is_possible_ = false;
  }

  /// The fields of a rig, which lies at `prefix` in the text.
  void change_fields(Rig now, Rig before, const std::string& prefix) {
    auto now_fields = all_fields(now), before_fields = all_fields(before);
    is_possible_ = is_possible_ && now_fields.size() == before_fields.size();
    for (std::size_t i = 0; is_possible_ && i < now_fields.size(); ++i) {
      std::visit([&](auto& ref) { ref.path.insert(0, prefix); }, now_fields[i]);
      std::visit([&](const auto& a, const auto& b) { change(a, b); }, now_fields[i],
                 before_fields[i]);
    }
  }
  /// @pre both have as many variants, each of the same structure
  void change_variants(const Rig& now, const Rig& before) {
    for (std::size_t i = 0; i < now.variants.size(); ++i) {
      const Variant &to = now.variants[i], &from = before.variants[i];
      if (to == from) continue;
      const std::string at = "variants[" + std::to_string(i) + "].";
      if (to.name != from.name) set(at + "name", yaml_scalar(to.name));
      if (to.note != from.note) set(at + "note", yaml_scalar(to.note));
      change_fields(*to.rig, *from.rig, at + "rig.");
    }
  }
  void add(std::optional<TextEdit> edit) {
    if (edit)
      edits_.push_back(std::move(*edit));
    else
      is_possible_ = false;
  }

  std::string applied() {
    std::stable_sort(edits_.begin(), edits_.end(),
                     [](const TextEdit& a, const TextEdit& b) { return a.at < b.at; });
    std::string text;
    std::size_t done = 0;
    for (const TextEdit& edit : edits_) {
      text += text_.substr(done, edit.at - done);
      text += edit.text;
      done = edit.at + edit.length;
    }
    return text + std::string(text_.substr(done));
  }

 private:
  const YamlNode* place(const std::string& path) const {
    const auto found = old_.places.find(path);
    return found == old_.places.end() ? nullptr : found->second;
  }

  /// Replaces an entry, or puts it into its map where it is new.
  void set(const std::string& path, const std::string& text) {
    const YamlNode* node = place(path);
    if (node == nullptr) return insert(path, text);
    const auto length = length_of(*node, text_);
    if (length)
      edits_.push_back({node->at, *length, text});
    else
      is_possible_ = false;
  }

  void insert(const std::string& path, const std::string& text) {
    const std::string key = key_of(path), parent = parent_of(path);
    const YamlNode* map = place(parent);
    const auto is_word = [](const std::string& word) {
      return word.find_first_of("[/") == std::string::npos;
    };
    if (map == nullptr && is_word(path)) {
      auto known = std::ranges::find(new_maps_, parent, &NewMap::path);
      if (known == new_maps_.end()) known = new_maps_.insert(known, {parent, {}});
      known->pieces.push_back(key + ": " + text);
    } else if (!is_word(key) || map == nullptr || !map->is_map() ||
               (!map->is_flow && map->keys.empty())) {
      is_possible_ = false;
    } else if (map->is_flow) {
      insert_in_braces(*map, key + ": " + text);
    } else {
      insert_line(*map, key + ": " + text);
    }
  }

  void insert_in_braces(const YamlNode& map, const std::string& piece) {
    if (map.children.empty()) {
      edits_.push_back({map.at + 1, 0, piece});
      is_possible_ =
          is_possible_ && filled_.insert(&map).second;  // a second one would need a comma
      return;
    }
    const YamlNode& last = map.children.back();
    if (const auto length = length_of(last, text_))
      edits_.push_back({last.at + *length, 0, ", " + piece});
    else
      edits_.push_back({map.at + 1, 0, piece + ", "});
  }

  /// Above the second key of a map in lines, so that the first line keeps what it begins with.
  void insert_line(const YamlNode& map, const std::string& piece) {
    const std::size_t line_start = text_.rfind('\n', map.at) + 1;  // npos + 1 is 0
    const std::size_t key = map.keys.size() > 1 ? map.keys[1].at : map.keys[0].at;
    edits_.push_back({key, 0, piece + "\n" + std::string(map.at - line_start, ' ')});
  }

  static std::string key_of(const std::string& path) {
    const auto point = path.rfind('.');
    return point == std::string::npos ? path : path.substr(point + 1);
  }
  static std::string parent_of(const std::string& path) {
    const auto point = path.rfind('.');
    return point == std::string::npos ? "" : path.substr(0, point);
  }
  /// Where the value of a new key will stand in its line; in braces it is not known, 0.
  std::size_t column_of_value(const std::string& path) const {
    const YamlNode* map = place(parent_of(path));
    if (map == nullptr || map->is_flow) return 0;
    return map->at - (text_.rfind('\n', map->at) + 1) + key_of(path).size() + 2;
  }

  /// A map that the text does not have yet.
  struct NewMap {
    std::string path;
    Pieces pieces;
  };

  std::string_view text_;
  const ReadText& old_;
  std::vector<NewMap> new_maps_;
  std::vector<TextEdit> edits_;
  std::set<const YamlNode*> filled_;
  bool is_possible_ = true;
};

/// Whether both have the same parts, bodies, shapes, keep-outs, detectors, duty, path, materials
/// and unknown keys, so that only entries differ.
bool has_same_structure(const Rig& a, const Rig& b) {
  const auto has_same_bodies = [](const std::vector<Body>& x, const std::vector<Body>& y) {
    return std::equal(x.begin(), x.end(), y.begin(), y.end(), [](const Body& p, const Body& q) {
      return p.shape.index() == q.shape.index();
    });
  };
  for (const Axis axis : kAxes)
    if (a.axis(axis).stops.presence != b.axis(axis).stops.presence ||
        a.axis(axis).cable.presence != b.axis(axis).cable.presence)
      return false;
  return a.unknown_keys == b.unknown_keys && a.on_pan_is_bare == b.on_pan_is_bare &&
         a.keep_outs.size() == b.keep_outs.size() && a.detectors.size() == b.detectors.size() &&
         a.duty.size() == b.duty.size() && a.materials.size() == b.materials.size() &&
         a.tracking.path == b.tracking.path && has_same_bodies(a.on_pan, b.on_pan) &&
         has_same_bodies(a.on_tilt, b.on_tilt);
}

bool has_same_variants(const Rig& a, const Rig& b) {
  return std::ranges::equal(a.variants, b.variants, [](const Variant& x, const Variant& y) {
    return x.rig == y.rig || has_same_structure(*x.rig, *y.rig);
  });
}

}  // namespace

std::optional<std::string> edited_in_place(const Rig& rig, std::string_view original,
                                           const ReadText& old) {
  if (!old.rig || !has_same_structure(rig, *old.rig)) return std::nullopt;
  Editor editor(original, old);
  editor.change_fields(rig, *old.rig, "");
  if (has_same_variants(rig, *old.rig))
    editor.change_variants(rig, *old.rig);
  else
    editor.add(variants_edit(rig, original, old));
  if (!editor.finish()) return std::nullopt;
  std::string edited = editor.applied();
  const ReadText again = read_text(edited);
  if (!again.rig || *again.rig != rig) return std::nullopt;
  return edited;
}

}  // namespace gazewright
