#include <algorithm>

#include "core/files/path_csv.h"
#include "core/files/reader.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::string_view kPathFix =
    "write points of time, pan and tilt: [[0 s, -20 deg, 0 deg], [1 s, 20 deg, 5 deg]]";

PathPoint read_point(Reader& reader, const YamlNode& node, const std::string& path) {
  std::array<Quantity, 3> values;
  reader.read_list_at(node, path, path_point_infos(), words("time, pan, tilt"), values);
  const bool lacks =
      node.is_null() || (node.is_list() && std::ranges::any_of(node.children, &YamlNode::is_null));
  if (lacks)
    reader.error(node, words("%1: a point lacks one of its three values", path), words(kPathFix));
  return {values[0], values[1], values[2]};
}

void check_times(Reader& reader, const YamlNode& node, const std::string& path,
                 const std::vector<PathPoint>& points) {
  if (points.size() < 2)
    reader.error(node, words("%1 holds fewer than two points; nothing moves", path),
                 words(kPathFix));
  for (std::size_t i = 1; i < points.size(); ++i) {
    const Quantity &before = points[i - 1].time_s, &now = points[i].time_s;
    if (!before.has_value() || !now.has_value() || *now.si > *before.si) continue;
    reader.error(node.children[i],
                 words("%1[%2] is at %3, not after the point before it at %4", path,
                       std::to_string(i), shortened(now.written), shortened(before.written)),
                 words("write the points in the order of their times"));
    return;
  }
}

void read_path(Reader& reader, const YamlNode& node, const std::string& path,
               std::vector<PathPoint>& points) {
  reader.place(path, node);
  if (node.is_null() ||
      !is_list_of(reader, node, path, words("points"), kMostPathPoints, words(kPathFix)))
    return;
  for (std::size_t i = 0; i < node.children.size(); ++i)
    points.push_back(read_point(reader, node.children[i], path + "[" + std::to_string(i) + "]"));
  check_times(reader, node, path, points);
}

}  // namespace

void read_tracking(Reader& reader, const YamlNode& node, const std::string& path,
                   Tracking& tracking) {
  Reader::Entries entries = entries_of(reader, tracking);
  entries.push_back({"path", [&](const YamlNode& at, const std::string& p) {
                       read_path(reader, at, p, tracking.path);
                     }});
  reader.read_map(node, path, entries);
}

}  // namespace gazewright
