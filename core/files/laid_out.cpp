#include "core/files/pieces.h"

namespace gazewright {
namespace {

/// "supply:   {...}": one part a line, the braces of a group under each other.
std::string part_line(std::size_t indent, std::string key, const Pieces& pieces) {
  constexpr std::size_t kGroupWidth = 10;
  if (pieces.empty()) return "";
  key += ": ";
  if (key.size() < kGroupWidth) key.append(kGroupWidth - key.size(), ' ');
  const std::string begin = std::string(indent, ' ') + key;
  return begin + flow_map(begin.size(), pieces) + "\n";
}

template <class Part>
std::string optional_line(const Rig& rig, const std::string& path, const std::string& key,
                          const Part& part) {
  if (part.presence == Presence::missing) return "";
  if (part.presence == Presence::none) return "  " + key + ": none\n";
  const std::string line = part_line(2, key, part_pieces(rig, path, part));
  return line.empty() ? "  " + key + ": {}\n" : line;
}

std::string axis_lines(const Rig& rig, const std::string& path, const AxisParts& axis) {
  const auto line = [&](const std::string& key, const auto& part) {
    return part_line(2, key, part_pieces(rig, path + "." + key, part));
  };
  return line("motor", axis.motor) + line("drive", axis.drive) + line("gearbox", axis.gearbox) +
         line("encoder", axis.encoder) + line("friction", axis.friction) +
         optional_line(rig, path + ".stops", "stops", axis.stops) +
         optional_line(rig, path + ".cable", "cable", axis.cable) + line("homing", axis.homing) +
         line("loop", axis.loop) + line("bracket", axis.bracket) + line("bearing", axis.bearing) +
         line("joint", axis.joint) + line("balance", axis.balance);
}

std::string axis_group(const Rig& rig, const std::string& path, std::string lines) {
  for (const std::string& piece : unknown_pieces(rig, path)) lines += "  " + piece + "\n";
  return lines.empty() ? "" : path + ":\n" + lines;
}

/// One line, or a line for each entry where there is a path.
std::string tracking_lines(const Rig& rig) {
  const Pieces pieces = part_pieces(rig, "tracking", rig.tracking);
  if (rig.tracking.path.empty()) return part_line(0, "tracking", pieces);
  std::string lines = "tracking:\n";
  for (const std::string& piece : pieces) lines += "  " + piece + "\n";
  lines += "  path:\n";
  for (std::size_t i = 0; i < rig.tracking.path.size(); ++i) {
    const PathPoint& point = rig.tracking.path[i];
    lines += "    - " +
             list_text(rig, "tracking.path[" + std::to_string(i) + "]", path_point_infos(),
                       std::array{point.time_s, point.pan_rad, point.tilt_rad}) +
             "\n";
  }
  return lines;
}

std::string tilt_axis_line(const Rig& rig) {
  const FieldInfo* at = &axis_at_info();
  const std::string list =
      list_text(rig, "tilt.axis_at", std::array{at, at, at}, rig.tilt_axis_at_m);
  return list.empty() ? "" : "  axis_at: " + list + "\n";
}

template <class Item, class PiecesOf>
std::string list_lines(const Rig& rig, const std::string& path, const std::vector<Item>& items,
                       PiecesOf pieces_of) {
  std::string lines;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const std::string item = path + "[" + std::to_string(i) + "]";
    lines += "  - " + flow_map(4, pieces_of(rig, item, items[i])) + "\n";
  }
  return lines.empty() ? "" : path + ":\n" + lines;
}

/// All of a rig but its title, notes and variants.
std::string design_lines(const Rig& rig) {
  const auto line = [&](const std::string& key, const auto& part) {
    return part_line(0, key, part_pieces(rig, key, part));
  };
  std::string text = line("supply", rig.supply) + line("surroundings", rig.surroundings) +
                     line("stand", rig.stand);
  text += axis_group(rig, "pan", axis_lines(rig, "pan", rig.pan));
  text += axis_group(rig, "tilt", tilt_axis_line(rig) + axis_lines(rig, "tilt", rig.tilt));
  if (rig.on_pan.empty() && rig.on_pan_is_bare) text += "on_pan: []\n";
  text += list_lines(rig, "on_pan", rig.on_pan, body_pieces) +
          list_lines(rig, "on_tilt", rig.on_tilt, body_pieces) +
          list_lines(rig, "keep_outs", rig.keep_outs, keep_out_pieces);
  text += line("camera", rig.camera) + line("task", rig.task) + tracking_lines(rig) +
          list_lines(rig, "detectors", rig.detectors, part_pieces<Detector>);
  return text + line("arm", rig.arm) + line("pointing", rig.pointing) +
         list_lines(rig, "duty", rig.duty, part_pieces<DutyMove>) +
         list_lines(rig, "materials", rig.materials, part_pieces<Material>);
}

std::string unknown_lines(const Rig& rig, const std::string& path) {
  std::string lines;
  for (const std::string& piece : unknown_pieces(rig, path)) lines += piece + "\n";
  return lines;
}

/// Every line moved to the right; the lines hold no text that is broken over several.
std::string indented(std::string_view lines, std::size_t by) {
  std::string text;
  while (!lines.empty()) {
    const std::size_t end = lines.find('\n') + 1;
    text += std::string(by, ' ') + std::string(lines.substr(0, end));
    lines.remove_prefix(end);
  }
  return text;
}

}  // namespace

std::string variant_lines(const Rig& rig, std::size_t index) {
  constexpr std::size_t kIndent = 4;
  const Variant& variant = rig.variants[index];
  std::string lines = "name: " + yaml_scalar(variant.name) + "\n";
  if (!variant.note.empty()) lines += "note: " + yaml_scalar(variant.note) + "\n";
  lines += unknown_lines(rig, "variants[" + std::to_string(index) + "]");
  const std::string design = design_lines(*variant.rig) + unknown_lines(*variant.rig, "");
  lines += design.empty() ? "rig: {}\n" : "rig:\n" + indented(design, 2);
  lines = indented(lines, kIndent);
  return lines.replace(0, kIndent, "  - ");
}

std::string laid_out(const Rig& rig) {
  std::string text = "rig: 1\n";
  if (!rig.title.empty()) text += "title: " + yaml_scalar(rig.title) + "\n";
  if (!rig.notes.empty()) text += "notes: " + yaml_scalar(rig.notes) + "\n";
  text += design_lines(rig);
  if (!rig.variants.empty()) text += "variants:\n";
  for (std::size_t i = 0; i < rig.variants.size(); ++i) text += variant_lines(rig, i);
  return text + unknown_lines(rig, "");
}

}  // namespace gazewright
