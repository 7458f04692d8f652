#include "core/analysis/input_names.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <charconv>

#include "core/files/spelling.h"
#include "core/rig/field_labels.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

template <class Part>
std::vector<std::string> names_of(const std::vector<Part>& parts) {
  std::vector<std::string> names;
  std::map<std::string, int> times;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const std::string& name = parts[i].name;
    const int time = ++times[name];
    names.push_back(name.empty() ? std::to_string(i + 1)
                    : time > 1   ? name + " " + std::to_string(time)
                                 : name);
  }
  return names;
}

/// "x" of [0] in a centre, "from" in a keep-out; with a blank before it, empty for a field alone.
std::string coordinate_of(std::string_view id) {
  if (!id.ends_with(']')) return "";
  const auto place = static_cast<std::size_t>(id[id.size() - 2] - '0');
  constexpr std::array<const char*, 3> kPlaces{" x", " y", " z"};
  constexpr std::array<const char*, 6> kMoments{" xx", " yy", " zz", " xy", " xz", " yz"};
  constexpr std::array<const char*, 2> kEnds{" from", " to"};
  if (id.find(".inertia[") != std::string_view::npos && place < 6) return kMoments[place];
  if (id.starts_with("keep_outs") && place < 2) return kEnds[place];
  return place < 3 ? kPlaces[place] : "";
}

/// Steps of paths that are parts.
constexpr std::array kParts{
    for_words("pan"),     for_words("tilt"),     for_words("supply"),   for_words("surroundings"),
    for_words("stand"),   for_words("motor"),    for_words("drive"),    for_words("gearbox"),
    for_words("encoder"), for_words("friction"), for_words("stops"),    for_words("cable"),
    for_words("homing"),  for_words("loop"),     for_words("bracket"),  for_words("bearing"),
    for_words("joint"),   for_words("balance"),  for_words("arm"),      for_words("camera"),
    for_words("task"),    for_words("tracking"), for_words("pointing"), for_words("shape"),
    for_words("duty"),    for_words("flag"),     for_words("spread")};

/// Steps of paths that are entries of a list.
struct Listed {
  std::string_view key, said;
};
constexpr std::array kLists{
    Listed{"on_tilt", for_words("tilt body %1")},  Listed{"on_pan", for_words("pan body %1")},
    Listed{"keep_outs", for_words("keep-out %1")}, Listed{"detectors", for_words("detector %1")},
    Listed{"duty", for_words("duty %1")},          Listed{"materials", for_words("material %1")}};

/// "tilt body 2" of "on_tilt[1]"; empty where it is no such entry, or goes by a name.
std::string listed_word(std::string_view step) {
  const auto open = step.find('[');
  if (open == std::string_view::npos || !step.ends_with(']')) return "";
  const auto list = std::ranges::find(kLists, step.substr(0, open), &Listed::key);
  std::size_t place = 0;
  const char* end = step.data() + step.size() - 1;
  const auto [at, fault] = std::from_chars(step.data() + open + 1, end, place);
  if (list == kLists.end() || fault != std::errc() || at != end) return "";
  return words(list->said, std::to_string(place + 1));
}

/// "gearbox", in the user's language; what is no part stays as it is.
std::string part_word(std::string_view step) {
  if (std::string entry = listed_word(step); !entry.empty()) return entry;
  return std::ranges::find(kParts, step) != kParts.end() ? words(step) : std::string(step);
}

/// Whether all steps of a path are parts.
bool is_part(std::string_view path) {
  while (!path.empty()) {
    const std::string_view step = path.substr(0, path.find('.'));
    if (std::ranges::find(kParts, step) == kParts.end()) return false;
    path.remove_prefix(std::min(step.size() + 1, path.size()));
  }
  return true;
}

bool is_letter(char c) {
  return (static_cast<unsigned char>(c) & 0x80) != 0 || std::isalpha(c) != 0;
}

/// A word without its plural and its capital.
std::string plain(std::string_view word) {
  if (word.ends_with('s')) word.remove_suffix(1);
  std::string text(word);
  if (!text.empty() && text[0] >= 'A' && text[0] <= 'Z')
    text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

/// Whether a label says the word itself: "stop stiffness" the "stops".
bool says(std::string_view label, std::string_view word) {
  while (!label.empty()) {
    const auto first = std::ranges::find_if(label, is_letter);
    const auto end = std::find_if_not(first, label.end(), is_letter);
    if (!word.empty() && plain({first, end}) == plain(word)) return true;
    label.remove_prefix(static_cast<std::size_t>(end - label.begin()));
  }
  return false;
}

/// The part in words: "pan gearbox" of "pan.gearbox.ratio", "camera" of "on_tilt[camera].mass".
std::string part_of(const std::string& id) {
  const auto close = id.find("].");
  const auto open = id.find('[');
  std::string part;
  std::string rest = id;
  if (close != std::string::npos && open < close) {
    const std::string list = id.substr(0, open), name = id.substr(open + 1, close - open - 1);
    part = list == "duty" ? part_word("duty") + " " + std::to_string(std::stoul(name) + 1) : name;
    rest = id.substr(close + 2);
  }
  const auto last = rest.rfind('.');
  if (last == std::string::npos) return part;
  const std::string steps = part_words(std::string_view(rest).substr(0, last));
  return part + (part.empty() || steps.empty() ? "" : " ") + steps;
}

}  // namespace

InputNames::InputNames(const Rig& rig)
    : names_{{"on_pan", names_of(rig.on_pan)},
             {"on_tilt", names_of(rig.on_tilt)},
             {"keep_outs", names_of(rig.keep_outs)},
             {"detectors", names_of(rig.detectors)},
             {"materials", names_of(rig.materials)}} {}

std::string InputNames::id_of(const std::string& path) const {
  const auto open = path.find('[');
  const auto close = path.find(']');
  if (open == std::string::npos || close == std::string::npos) return path;
  const auto list = names_.find(std::string_view(path).substr(0, open));
  if (list == names_.end()) return path;
  const auto place = static_cast<std::size_t>(std::stoul(path.substr(open + 1)));
  return path.substr(0, open + 1) + list->second[place] + path.substr(close);
}

std::string part_words(std::string_view steps) {
  std::string part;
  while (!steps.empty()) {
    const std::string_view step = steps.substr(0, steps.find('.'));
    if (!step.empty()) part += (part.empty() ? "" : " ") + part_word(step);
    steps.remove_prefix(std::min(step.size() + 1, steps.size()));
  }
  return part;
}

std::string field_words(const std::string& path, std::string_view label) {
  std::string part = part_words(std::string_view(path).substr(0, path.rfind('.') + 1));
  const std::string what = in_sentence(label);
  const auto last = part.rfind(' ') + 1;  // 0 where there is but one word
  if (says(what, std::string_view(part).substr(last))) part.erase(last == 0 ? 0 : last - 1);
  return part + (part.empty() ? "" : " ") + what;
}

std::string path_words(const std::string& path) {
  if (path == "on_tilt") return words("the bodies on tilt");
  if (path == "on_pan") return words("the bodies on pan");
  if (path == "tilt.axis_at") return words("the place%1 of the tilt axis", "");
  if (path.find('.') == std::string::npos) return listed_word(path);
  if (const auto label = find_label(path); !label.empty())
    return field_words(path, label) + coordinate_of(path);
  return is_part(path) ? part_words(path) : "";
}

std::string input_label(const std::string& id, std::string_view label) {
  std::string part = part_of(id);
  if (part.empty()) return words(label) + coordinate_of(id);
  part.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(part.front())));
  return part + ": " + in_sentence(label) + coordinate_of(id);
}

std::string input_phrase(const std::string& id, std::string_view label) {
  if (id.starts_with("tilt.axis_at"))
    return words("the place%1 of the tilt axis", coordinate_of(id));
  const auto shape = id.find(".shape.");
  const std::string part = part_of(shape == std::string::npos ? id : id.substr(0, shape + 1));
  const std::string what = words("the %1", in_sentence(label) + coordinate_of(id));
  return part.empty() ? what : words("%1 of the %2", what, part);
}

std::string measuring_phrase(const std::string& id, std::string_view label) {
  return id.ends_with(".mass") ? words("weighing the %1", part_of(id))
                               : words("measuring %1", input_phrase(id, label));
}

}  // namespace gazewright
