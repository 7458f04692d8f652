#include <algorithm>
#include <iterator>
#include <tuple>

#include "core/files/reader.h"
#include "core/travel/stops.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::string_view kVersion = "1";
constexpr std::string_view kVersionFix = "write the line rig: 1 at the top of the file";

/// Whether a version is a whole number above ours.
bool is_newer(const std::string& version) {
  const bool is_number =
      !version.empty() && version.size() < 10 &&
      std::all_of(version.begin(), version.end(), [](char c) { return c >= '0' && c <= '9'; });
  return is_number && std::stol(version) > 1;
}

/// Whether the rest of the file can be read by this version.
bool check_version(Reader& reader, const YamlNode& root) {
  const YamlNode* version = root.find("rig");
  if (version == nullptr) {
    reader.error(root, words("the line rig: 1 is missing; this may not be a rig file"),
                 words(kVersionFix));
    return true;
  }
  if (version->is_scalar() && version->value == kVersion) return true;
  if (version->is_scalar() && is_newer(version->value)) {
    reader.error(*version,
                 words("this rig is of version %1; this program reads version 1", version->value),
                 words("open it with a newer Gazewright, or save it there as version 1"));
    return false;
  }
  const std::string found =
      version->is_scalar() ? "\"" + shortened(version->value) + "\"" : words_of_kind(*version);
  reader.error(*version, words("rig is %1; the version of the file is due", found),
               words(kVersionFix));
  return true;
}

template <class Part>
Reader::Entry part_entry(Reader& reader, std::string key, Part& part) {
  return {std::move(key), [&reader, &part](const YamlNode& node, const std::string& path) {
            reader.read_map(node, path, entries_of(reader, part));
          }};
}

/// A list of parts under a key of the top.
struct PartsRow {
  std::string_view key, what;
  std::size_t most;
  std::string_view example;
};
constexpr PartsRow kDetectors{"detectors", "detectors", kMostDetectors,
                              "{name: fast, frame_rate: 60 Hz, delay: 20 ms, noise: 6}"};
constexpr PartsRow kDuty{"duty", "moves", kMostDutyMoves,
                         "{pan: 40 deg, tilt: -10 deg, dwell: 800 ms}"};
constexpr PartsRow kMaterials{"materials", "materials", kMostMaterials,
                              "{name: my print, modulus: 2.1 GPa, softening: 70 degC}"};

template <class Part>
Reader::Entry parts_entry(Reader& reader, const PartsRow& row, std::vector<Part>& parts) {
  return {std::string(row.key),
          [&reader, &row, &parts](const YamlNode& node, const std::string& path) {
            read_parts(reader, node, path, row.what, row.most, row.example, parts);
          }};
}

/// A part that may also be `none`.
template <class Part>
Reader::Entry optional_entry(Reader& reader, std::string key, Part& part) {
  return {std::move(key), [&reader, &part](const YamlNode& node, const std::string& path) {
            if (node.is_scalar() && node.value == "none") {
              reader.place(path, node);
              part.presence = Presence::none;
              return;
            }
            if (!node.is_null()) part.presence = Presence::given;
            reader.read_map(node, path, entries_of(reader, part));
          }};
}

/// A window must let its tab in.
void check_window(Reader& reader, const YamlNode& node, const std::string& path,
                  const Stops& stops) {
  if (!stops.window_rad.has_value() || !stops.tab_width_m.has_value()) return;
  const auto tab_rad = angle_taken_rad(*stops.tab_width_m.si, *stops.radius_m.si);
  if (!tab_rad || *stops.window_rad.si > *tab_rad) return;
  reader.error(node,
               words("%1: a window of %2 leaves no room to turn for a tab of %3 on a radius of %4",
                     path, shortened(stops.window_rad.written),
                     shortened(stops.tab_width_m.written), shortened(stops.radius_m.written)),
               words("write a wider window, or a narrower tab"));
}

/// Tab, post and what lies between them must fit on the circle on which they meet.
void check_stops(Reader& reader, const YamlNode& node, const std::string& path,
                 const Stops& stops) {
  if (!stops.radius_m.has_value()) return;
  for (const auto& [what, width] : {std::pair{words("tab"), &stops.tab_width_m},
                                    {words("post"), &stops.post_width_m},
                                    {words("loose tab"), &stops.trailer_width_m}}) {
    if (!width->has_value() || *width->si < 2 * *stops.radius_m.si) continue;
    reader.error(node,
                 words("%1: a %2 of %3 does not fit on a radius of %4", path, what,
                       shortened(width->written), shortened(stops.radius_m.written)),
                 words("write a width under twice the radius"));
  }
  if (stops.kind.value == "window") check_window(reader, node, path, stops);
}

Reader::Entries axis_entries(Reader& reader, AxisParts& axis) {
  Reader::Entry stops = optional_entry(reader, "stops", axis.stops);
  stops.read = [&reader, &axis, read = stops.read](const YamlNode& node, const std::string& path) {
    read(node, path);
    check_stops(reader, node, path, axis.stops);
  };
  return {
      part_entry(reader, "motor", axis.motor),       part_entry(reader, "drive", axis.drive),
      part_entry(reader, "gearbox", axis.gearbox),   part_entry(reader, "encoder", axis.encoder),
      part_entry(reader, "friction", axis.friction), stops,
      optional_entry(reader, "cable", axis.cable),   part_entry(reader, "homing", axis.homing),
      part_entry(reader, "loop", axis.loop),         part_entry(reader, "bracket", axis.bracket),
      part_entry(reader, "bearing", axis.bearing),   part_entry(reader, "joint", axis.joint),
      part_entry(reader, "balance", axis.balance)};
}

Reader::Entries tilt_entries(Reader& reader, Rig& rig) {
  Reader::Entries entries = axis_entries(reader, rig.tilt);
  entries.push_back(
      {"axis_at", [&](const YamlNode& node, const std::string& path) {
         const FieldInfo* at = &axis_at_info();
         reader.read_list_at(node, path, std::array{at, at, at}, "x, y, z", rig.tilt_axis_at_m);
       }});
  return entries;
}

Reader::Entries top_entries(Reader& reader, Rig& rig) {
  const auto text = [&](std::string key, std::string& at) {
    return Reader::Entry{std::move(key),
                         [&reader, &at](const YamlNode& node, const std::string& path) {
                           reader.read_text_at(node, path, at);
                         }};
  };
  const auto version = [](const YamlNode&, const std::string&) {};  // check_version has read it
  Reader::Entries entries{{"rig", version}, text("title", rig.title), text("notes", rig.notes)};
  std::ranges::move(design_entries(reader, rig), std::back_inserter(entries));
  entries.push_back({"variants", [&](const YamlNode& node, const std::string& path) {
                       read_variants(reader, node, path, rig.variants);
                     }});
  return entries;
}

}  // namespace

Reader::Entries design_entries(Reader& reader, Rig& rig) {
  const auto bodies = [&](std::string key, std::vector<Body>& at) {
    return Reader::Entry{std::move(key),
                         [&reader, &at](const YamlNode& node, const std::string& path) {
                           read_bodies(reader, node, path, at);
                         }};
  };
  const auto pan = [&](const YamlNode& node, const std::string& path) {
    reader.read_map(node, path, axis_entries(reader, rig.pan));
  };
  const auto tilt = [&](const YamlNode& node, const std::string& path) {
    reader.read_map(node, path, tilt_entries(reader, rig));
  };
  return {part_entry(reader, "supply", rig.supply),
          part_entry(reader, "surroundings", rig.surroundings),
          part_entry(reader, "stand", rig.stand),
          {"pan", pan},
          {"tilt", tilt},
          {"on_pan",
           [&](const YamlNode& node, const std::string& path) {
             read_bodies(reader, node, path, rig.on_pan);
             rig.on_pan_is_bare = node.is_list() && node.children.empty();
           }},
          bodies("on_tilt", rig.on_tilt),
          {"keep_outs",
           [&](const YamlNode& node, const std::string& path) {
             read_keep_outs(reader, node, path, rig.keep_outs);
           }},
          part_entry(reader, "camera", rig.camera),
          part_entry(reader, "task", rig.task),
          {"tracking",
           [&](const YamlNode& node, const std::string& path) {
             read_tracking(reader, node, path, rig.tracking);
           }},
          parts_entry(reader, kDetectors, rig.detectors),
          part_entry(reader, "arm", rig.arm),
          part_entry(reader, "pointing", rig.pointing),
          parts_entry(reader, kDuty, rig.duty),
          parts_entry(reader, kMaterials, rig.materials)};
}

void sort_unknown_keys(Rig& rig) {
  std::sort(rig.unknown_keys.begin(), rig.unknown_keys.end(),
            [](const UnknownKey& a, const UnknownKey& b) {
              return std::tie(a.path, a.key) < std::tie(b.path, b.key);
            });
}

ReadText read_text(std::string_view text) {
  ReadText read;
  read.tree = parse_yaml(text, read.faults);
  const auto is_error = [](const Fault& fault) {
    return fault.weight == Diagnostic::Weight::error;
  };
  const bool is_broken = std::any_of(read.faults.begin(), read.faults.end(), is_error);
  if (!read.tree || read.tree->is_null()) {
    if (!is_broken) read.faults.push_back({0, words("the file is empty"), words(kVersionFix)});
    return read;
  }
  Rig rig;
  Reader reader(read, rig.unknown_keys);
  if (!read.tree->is_map()) {
    reader.error(*read.tree,
                 words("the file holds %1; a rig is a map of keys", words_of_kind(*read.tree)),
                 words(kVersionFix));
    return read;
  }
  if (check_version(reader, *read.tree)) reader.read_map(*read.tree, "", top_entries(reader, rig));
  sort_unknown_keys(rig);
  if (std::none_of(read.faults.begin(), read.faults.end(), is_error)) read.rig = std::move(rig);
  return read;
}

}  // namespace gazewright
