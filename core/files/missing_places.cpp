#include "core/files/missing_places.h"

#include <algorithm>

#include "core/files/reader.h"
#include "core/files/text_check.h"
#include "core/rig/field_labels.h"
#include "core/rig/usual.h"

namespace gazewright {
namespace {

/// "pan.drive" of "pan.drive.current_limit", "on_tilt[1].centre" of "on_tilt[1].centre[0]", nothing
/// of "supply".
std::string whole_of(std::string_view path) {
  const auto end = path.find_last_of(path.ends_with(']') ? "[" : ".");
  return std::string(path.substr(0, end == std::string_view::npos ? 0 : end));
}

/// The entry itself where it stands there without a value, else the nearest thing that holds it.
std::size_t place_of(const ReadText& read, std::string path) {
  for (; !path.empty(); path = whole_of(path))
    if (const auto found = read.places.find(path); found != read.places.end())
      return found->second->at;
  return read.tree == nullptr ? 0 : read.tree->at;
}

std::string fix_of(const std::string& path) {
  if (path == "on_tilt" || path == "on_pan")
    return words("list its bodies, for example %1",
                 path + ": [{name: camera, mass: 48 g, centre: [38 mm, 0 mm, 2 mm]}]");
  if (path == "tilt.axis_at")
    return words("say where the tilt axis is, for example %1", "axis_at: [0 mm, 0 mm, 165 mm]");
  if (path.ends_with(".stops") || path.ends_with(".cable"))
    return words("describe what there is, or write %1", path.substr(path.find('.') + 1) + ": none");
  if (path.ends_with(".shape.inertia"))
    return words("say its shape, for example %1, or all numbers of its inertia",
                 "shape: {box: [40 mm, 16 mm, 170 mm]}");
  const std::string whole = whole_of(path);
  const FieldInfo* info = find_info(path);
  if (find_info(path + "[0]") != nullptr) return words("write all numbers of %1", path);
  const std::string key = path.substr(whole.empty() ? 0 : whole.size() + 1);
  if (info == nullptr) return words("add %1 to %2", key, whole);
  const std::string usual = usual_words(*info);
  return (info->is_plain_number() ? words("add %1 to %2, a number", key, whole)
                                  : words("add %1 to %2, in %3", key, whole, info->unit)) +
         (usual.empty() ? usual : ", " + usual);
}

bool is_path(std::string_view path) {
  return !path.empty() && path.find(' ') == std::string_view::npos;
}

}  // namespace

std::vector<Diagnostic> places_of_missing(std::string_view text, const std::string& file,
                                          std::span<const std::string> paths) {
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  const ReadText read = read_text(text);
  std::vector<Fault> faults;
  for (const std::string& path : paths) {
    if (!is_path(path)) continue;
    const std::string_view label = find_label(find_label(path).empty() ? path + "[0]" : path);
    faults.push_back({place_of(read, path),
                      words("%1 is missing", label.empty() ? path : called(words(label), path)),
                      fix_of(path)});
  }
  return to_diagnostics(std::move(faults), text, file);
}

}  // namespace gazewright
