#include "core/files/path_csv.h"

#include <array>
#include <charconv>
#include <cmath>
#include <optional>

#include "core/files/text_check.h"
#include "core/rig/fields.h"
#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kFix =
    "write time in seconds, pan and tilt in degrees with commas between them: 0.5,-20,4";

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view kBlanks = " \t\r";
  const auto begin = text.find_first_not_of(kBlanks);
  if (begin == std::string_view::npos) return {};
  return text.substr(begin, text.find_last_not_of(kBlanks) - begin + 1);
}

/// The three texts between the commas; empty where there are not three.
std::optional<std::array<std::string_view, 3>> cells_of(std::string_view line) {
  const auto first = line.find(','), second = line.find(',', first + 1);
  if (first == std::string_view::npos || second == std::string_view::npos ||
      line.find(',', second + 1) != std::string_view::npos)
    return std::nullopt;
  return std::array{trimmed(line.substr(0, first)),
                    trimmed(line.substr(first + 1, second - first - 1)),
                    trimmed(line.substr(second + 1))};
}

bool is_number(std::string_view text) {
  double value = 0;
  const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
  return fault == std::errc() && end == text.data() + text.size() && std::isfinite(value);
}

/// A cell as a quantity in the field's own unit, or what is wrong with it.
std::variant<Quantity, UnitProblem> quantity_of(std::string_view cell, const FieldInfo& info) {
  if (!is_number(cell)) return UnitProblem{words("\"%1\" is no number", cell), kFix};
  return read_quantity(std::string(cell) + " " + std::string(info.unit), info);
}

/// Reads lines one after another.
class PathReader {
 public:
  explicit PathReader(const std::string& name) : name_(name) {}

  bool take(std::string_view line) {
    ++line_;
    line = trimmed(line);
    if (line.empty()) return true;
    const auto cells = cells_of(line);
    if (!cells) return fail(words("the line does not hold three values"), kFix);
    if (points_.empty() && !seen_header_ && !is_number((*cells)[0])) return seen_header_ = true;
    std::array<Quantity, 3> values;
    for (std::size_t i = 0; i < values.size(); ++i) {
      auto read = quantity_of((*cells)[i], *path_point_infos()[i]);
      if (const auto* problem = std::get_if<UnitProblem>(&read))
        return fail(problem->problem, problem->fix);
      values[i] = std::move(std::get<Quantity>(read));
    }
    if (!points_.empty() && !(*values[0].si > *points_.back().time_s.si))
      return fail(words("the time is not after that of the point before it"),
                  words("sort the lines by their times"));
    if (points_.size() == kMostPathPoints)
      return fail(words("there are more than %1 points", std::to_string(kMostPathPoints)),
                  words("leave out every second line"));
    points_.push_back({values[0], values[1], values[2]});
    return true;
  }
  bool fail(std::string problem, std::string fix) {
    problem_.file = name_;
    problem_.line = line_;
    problem_.column = line_ > 0 ? 1 : 0;
    problem_.problem = std::move(problem);
    problem_.fix = std::move(fix);
    return false;
  }
  std::vector<PathPoint>& points() { return points_; }
  const Diagnostic& problem() const { return problem_; }

 private:
  const std::string& name_;
  int line_ = 0;
  bool seen_header_ = false;
  std::vector<PathPoint> points_;
  Diagnostic problem_;
};

}  // namespace

std::variant<std::vector<PathPoint>, Diagnostic> read_path_csv(std::string_view text,
                                                               const std::string& name) {
  PathReader reader(name);
  if (text.size() > kLargestFile_bytes) {
    reader.fail(words("the file is larger than 1 MiB"), words("leave out lines"));
    return reader.problem();
  }
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  while (!text.empty()) {
    const auto end = text.find('\n');
    if (!reader.take(text.substr(0, end))) return reader.problem();
    text = end == std::string_view::npos ? std::string_view() : text.substr(end + 1);
  }
  if (reader.points().size() < 2) {
    reader.fail(words("there are fewer than two points; nothing moves"), kFix);
    return reader.problem();
  }
  return std::move(reader.points());
}

Rig with_path(Rig rig, std::vector<PathPoint> path) {
  rig.tracking.target.value = "path";
  rig.tracking.path = std::move(path);
  return rig;
}

}  // namespace gazewright
