#include "core/files/part_file.h"

#include <algorithm>
#include <tuple>

#include "core/files/file_text.h"
#include "core/files/pieces.h"
#include "core/files/reader.h"
#include "core/files/text_check.h"
#include "core/shelf/part_place.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::string_view kKindFix =
    "write one of motor, gearbox, drive, bearing, cable, camera and supply with its fields, for "
    "example motor: {speed_constant: 300 rpm/V}";

/// A map of the file that holds a part.
struct Found {
  ShelfPart::Fields fields;
  const YamlNode* node;
};

/// What the file says before it is one part.
struct Draft {
  std::string outer_name, inner_name, note;
  std::vector<Found> found;
};

template <class Fields>
Reader::Entries entries_with_name(Reader& reader, Fields& fields, std::string& name) {
  Reader::Entries entries = entries_of(reader, fields);
  std::erase_if(entries, [](const Reader::Entry& entry) { return entry.key == "name"; });
  entries.push_back({"name", [&](const YamlNode& node, const std::string& path) {
                       reader.read_text_at(node, path, name);
                     }});
  return entries;
}

void check_version(Reader& reader, const YamlNode& node) {
  if (node.is_scalar() && node.value == "1") return;
  reader.error(node,
               words("shelf is %1; this program reads version 1",
                     node.is_scalar() ? "\"" + shortened(node.value) + "\"" : words_of_kind(node)),
               words("write shelf: 1, or open it with a newer Gazewright"));
}

Reader::Entries top_entries(Reader& reader, Draft& draft) {
  const auto text = [&](std::string& at) {
    return
        [&](const YamlNode& node, const std::string& path) { reader.read_text_at(node, path, at); };
  };
  Reader::Entries entries{
      {"shelf", [&](const YamlNode& node, const std::string&) { check_version(reader, node); }},
      {"name", text(draft.outer_name)},
      {"note", text(draft.note)}};
  for (const PartKind kind : kPartKinds)
    entries.push_back({name_of(kind), [&, kind](const YamlNode& node, const std::string& path) {
                         ShelfPart::Fields fields = fields_of(kind);
                         std::visit(
                             [&](auto& part) {
                               reader.read_map(node, path,
                                               entries_with_name(reader, part, draft.inner_name));
                             },
                             fields);
                         draft.found.push_back({std::move(fields), &node});
                       }});
  return entries;
}

/// @param stem  of the file's name, for a part that has none of its own
std::optional<ShelfPart> only_part(Reader& reader, const YamlNode& root, Draft& draft,
                                   const std::string& stem) {
  if (draft.found.empty()) {
    reader.error(root, words("the file holds no part"), words(kKindFix));
    return std::nullopt;
  }
  for (std::size_t i = 1; i < draft.found.size(); ++i)
    reader.error(*draft.found[i].node, words("the file holds a second part"),
                 words("give each part a file"));
  ShelfPart part;
  part.fields = std::move(draft.found.front().fields);
  if (auto* cable = std::get_if<Cable>(&part.fields)) cable->presence = Presence::given;
  part.note = draft.note;
  part.rename(!draft.outer_name.empty()   ? draft.outer_name
              : !draft.inner_name.empty() ? draft.inner_name
                                          : stem);
  return part;
}

struct ReadPart {
  std::optional<ShelfPart> part;
  ReadText text;  ///< with the places of its entries
};

ReadPart read_part(std::string_view text, const std::string& stem) {
  ReadPart read;
  ReadText& out = read.text;
  out.tree = parse_yaml(text, out.faults);
  std::vector<UnknownKey> unknown_keys;
  Reader reader(out, unknown_keys);
  const auto is_error = [](const Fault& fault) {
    return fault.weight == Diagnostic::Weight::error;
  };
  if (!out.tree || !out.tree->is_map()) {
    if (std::ranges::none_of(out.faults, is_error))
      out.faults.push_back({0, words("the file is no map of a part's fields"), words(kKindFix)});
    return read;
  }
  Draft draft;
  reader.read_map(*out.tree, "", top_entries(reader, draft));
  std::optional<ShelfPart> part = only_part(reader, *out.tree, draft, stem);
  if (!part || std::ranges::any_of(out.faults, is_error)) return read;
  std::ranges::sort(unknown_keys, {}, [](const UnknownKey& k) { return std::tie(k.path, k.key); });
  part->unknown_keys = std::move(unknown_keys);
  read.part = std::move(part);
  return read;
}

/// Every value with its text, as reading what is written gives it.
ShelfPart part_as_read_back(const ShelfPart& part) {
  ShelfPart back = part;
  Rig holder;
  std::visit(
      [&](auto& fields) {
        place_in(holder, Axis::pan, fields) = fields;
        holder = gazewright::as_read_back(holder);
        fields = place_in(holder, Axis::pan, fields);
      },
      back.fields);
  return back;
}

std::string part_line(const ShelfPart& part) {
  ShelfPart unnamed = part_as_read_back(part);
  unnamed.rename("");
  Rig holder;
  holder.unknown_keys = part.unknown_keys;
  const std::string key = name_of(part.kind()), begin = key + ": ";
  return begin +
         std::visit(
             [&](const auto& fields) {
               return flow_map(begin.size(), part_pieces(holder, key, fields));
             },
             unnamed.fields) +
         "\n";
}

}  // namespace

LoadedPart parse_part(std::string_view text, const std::string& file_name) {
  LoadedPart loaded;
  const std::string_view content =
      text.starts_with(kByteOrderMark) ? text.substr(kByteOrderMark.size()) : text;
  ReadPart read = read_part(content, std::filesystem::path(file_name).stem().string());
  loaded.part = std::move(read.part);
  loaded.diagnostics = to_diagnostics(std::move(read.text.faults), content, file_name);
  return loaded;
}

LoadedPart load_part(const std::filesystem::path& file) { return loaded_from(file, parse_part); }

std::string write_part(const ShelfPart& part) {
  Rig holder;
  holder.unknown_keys = part.unknown_keys;
  std::string text = "shelf: 1\nname: " + yaml_scalar(part.name) + "\n";
  if (!part.note.empty()) text += "note: " + yaml_scalar(part.note) + "\n";
  text += part_line(part);
  for (const std::string& piece : unknown_pieces(holder, "")) text += piece + "\n";
  return text;
}

std::string with_part_name(std::string_view text, const ShelfPart& part, const std::string& name) {
  ShelfPart renamed = part;
  renamed.rename(name);
  const bool has_mark = text.starts_with(kByteOrderMark);
  const std::string_view content = has_mark ? text.substr(kByteOrderMark.size()) : text;
  const ReadPart read = read_part(content, {});
  const auto place = read.text.places.find("name");
  if (place == read.text.places.end()) return write_part(renamed);
  const YamlNode& node = *place->second;
  const std::size_t end = node.is_quoted ? end_of_quoted(content, node.at)
                                         : std::min(content.size(), node.at + node.value.size());
  if (end == std::string_view::npos ||
      (!node.is_quoted && content.substr(node.at, end - node.at) != node.value))
    return write_part(renamed);
  std::string changed(text.substr(0, text.size() - content.size() + node.at));
  changed += yaml_scalar(name);
  changed += content.substr(end);
  const LoadedPart again = parse_part(changed, "part.yaml");
  return again.part == renamed ? changed : write_part(renamed);
}

}  // namespace gazewright
