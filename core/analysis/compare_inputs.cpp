#include <algorithm>
#include <array>
#include <cctype>
#include <cstdio>
#include <map>

#include "core/analysis/compare.h"
#include "core/files/spelling.h"
#include "core/rig/fields.h"

/// Which inputs of several designs differ.
namespace gazewright {
namespace {

/// One input of one design.
struct Input {
  std::string id, label;
  std::string_view si_unit, unit;  ///< empty: words
  CompareCell cell;
  std::string in_force;  ///< what decides whether it differs: defaults stand for what is missing
};

/// Names of the entries of a list by their places: "camera", a second one "camera 2".
using Names = std::vector<std::string>;

template <class Part>
Names names_of(const std::vector<Part>& parts) {
  Names names;
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

/// The lists whose parts are told apart by their names, not by their places.
struct Lists {
  std::map<std::string, Names, std::less<>> names;

  explicit Lists(const Rig& rig)
      : names{{"on_pan", names_of(rig.on_pan)},
              {"on_tilt", names_of(rig.on_tilt)},
              {"keep_outs", names_of(rig.keep_outs)},
              {"detectors", names_of(rig.detectors)},
              {"materials", names_of(rig.materials)}} {}

  /// "on_tilt[1]" -> "on_tilt[camera]" at the front of a path.
  std::string id_of(const std::string& path) const {
    const auto open = path.find('[');
    const auto close = path.find(']');
    if (open == std::string::npos || close == std::string::npos) return path;
    const auto list = names.find(std::string_view(path).substr(0, open));
    if (list == names.end()) return path;
    const auto place = static_cast<std::size_t>(std::stoul(path.substr(open + 1)));
    return path.substr(0, open + 1) + list->second[place] + path.substr(close);
  }
};

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

/// The part in words: "pan gearbox" of "pan.gearbox.ratio", "camera" of "on_tilt[camera].mass".
std::string part_of(const std::string& id) {
  const auto close = id.find("].");
  const auto open = id.find('[');
  std::string part;
  std::string rest = id;
  if (close != std::string::npos && open < close) {
    const std::string list = id.substr(0, open), name = id.substr(open + 1, close - open - 1);
    part = list == "duty" ? "duty " + std::to_string(std::stoul(name) + 1) : name;
    rest = id.substr(close + 2);
  }
  const auto last = rest.rfind('.');
  if (last == std::string::npos) return part;
  std::string steps = rest.substr(0, last);
  std::ranges::replace(steps, '.', ' ');
  return part + (part.empty() ? "" : " ") + steps;
}

std::string label_of(const std::string& id, std::string_view label) {
  std::string part = part_of(id);
  if (part.empty()) return std::string(label) + coordinate_of(id);
  part.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(part.front())));
  return part + ": " + with_small_first_letter(label) + coordinate_of(id);
}

/// Alike for values that differ by rounding only.
std::string digits(double value) {
  std::array<char, 40> text{};
  const int length = std::snprintf(text.data(), text.size(), "%.10g", value);
  return {text.data(), static_cast<std::size_t>(length)};
}

class Gatherer {
 public:
  explicit Gatherer(const Rig& rig) : lists_(rig) {}

  void add(const QuantityRef& ref, const Quantity& with_default) {
    Input input = begin(ref.path, ref.info->label);
    input.si_unit = ref.info->si_unit;
    input.unit = ref.info->unit;
    input.cell.value = with_default.si;
    if (!ref.quantity->has_value())
      input.cell.word = with_default.has_value() ? "default" : "missing";
    if (ref.quantity->has_value() || ref.info->fallback)
      input.in_force = digits(with_default.value());
    const std::string id = input.id, label = input.label;
    inputs.push_back(std::move(input));
    if (ref.quantity->spread_si == 0) return;
    Input spread{id + "/spread", label + ", spread", ref.info->si_unit, ref.info->unit, {}, {}};
    if (spread.unit == "degC") spread.unit = "K";
    spread.cell.value = ref.quantity->spread_si;
    const std::string& written = ref.quantity->spread_written;  // percents follow the value
    spread.in_force = written.empty() ? digits(ref.quantity->spread_si) : written;
    inputs.push_back(std::move(spread));
  }
  void add(const ChoiceRef& ref) {
    const std::string& value = ref.choice->value;
    add_words(ref.path, ref.info->label,
              value.empty() ? std::string(ref.info->options.front()) : value);
  }
  void add(const TextRef& ref) {
    if (ref.path == "title" || ref.path == "notes") return;
    if (ref.path.ends_with("].name")) return;  // tells which part it is
    add_words(ref.path, ref.info->label, *ref.text);
  }
  void add_words(const std::string& path, std::string_view label, const std::string& word) {
    Input input = begin(path, label);
    input.cell.word = input.in_force = word;
    inputs.push_back(std::move(input));
  }

  std::vector<Input> inputs;

 private:
  Input begin(const std::string& path, std::string_view label) const {
    const std::string id = lists_.id_of(path);
    return {id, label_of(id, label), {}, {}, {}, {}};
  }

  Lists lists_;
};

const char* word_of(Presence presence) {
  return presence == Presence::given ? "given" : presence == Presence::none ? "none" : "missing";
}

const char* word_of(const Shape& shape) {
  constexpr std::array<const char*, 6> kWords{"ball", "shell", "tube", "box", "point", "inertia"};
  return kWords[shape.index()];
}

/// What is no field: which parts there are, shapes, the path.
void add_structure(Gatherer& gatherer, const Rig& rig) {
  for (const Axis axis : kAxes) {
    const std::string name = name_of(axis);
    gatherer.add_words(name + ".stops", "Stops", word_of(rig.axis(axis).stops.presence));
    gatherer.add_words(name + ".cable", "Cable", word_of(rig.axis(axis).cable.presence));
  }
  const auto add_shapes = [&](const std::string& list, const std::vector<Body>& bodies) {
    for (std::size_t i = 0; i < bodies.size(); ++i)
      gatherer.add_words(list + "[" + std::to_string(i) + "].shape", "Shape",
                         word_of(bodies[i].shape));
  };
  add_shapes("on_pan", rig.on_pan);
  add_shapes("on_tilt", rig.on_tilt);
  std::string path;
  for (const PathPoint& point : rig.tracking.path)
    path += digits(point.time_s.value()) + ' ' + digits(point.pan_rad.value()) + ' ' +
            digits(point.tilt_rad.value()) + '\n';
  gatherer.add_words("tracking.path", "Path", std::to_string(rig.tracking.path.size()) + " points");
  gatherer.inputs.back().in_force = path;
}

std::vector<Input> inputs_of(const Rig& rig) {
  Rig written = rig, full = with_defaults(rig);
  const std::vector<FieldRef> fields = all_fields(written), defaults = all_fields(full);
  Gatherer gatherer(rig);
  for (std::size_t i = 0; i < fields.size(); ++i) {
    if (const auto* quantity = std::get_if<QuantityRef>(&fields[i]))
      gatherer.add(*quantity, *std::get<QuantityRef>(defaults[i]).quantity);
    else if (const auto* choice = std::get_if<ChoiceRef>(&fields[i]))
      gatherer.add(*choice);
    else
      gatherer.add(std::get<TextRef>(fields[i]));
  }
  add_structure(gatherer, rig);
  return std::move(gatherer.inputs);
}

/// All inputs of all designs, each a row; those that a design lacks are "not there".
struct Rows {
  std::vector<CompareRow> rows;
  std::vector<std::vector<std::string>> in_force;  ///< by row and design
  std::map<std::string, std::size_t> place;

  void add(Input input, std::size_t design, std::size_t designs) {
    const auto [at, is_new] = place.emplace(input.id, rows.size());
    if (is_new) {
      CompareCell empty;
      empty.word = input.id.ends_with("/spread") ? "none stated" : "not there";
      rows.push_back({input.id, std::move(input.label), input.si_unit, input.unit,
                      std::vector<CompareCell>(designs, empty)});
      in_force.emplace_back(designs, "not there");
    }
    rows[at->second].cells[design] = std::move(input.cell);
    in_force[at->second][design] = std::move(input.in_force);
  }
};

}  // namespace

std::vector<CompareRow> differing_inputs(std::span<const Rig* const> designs) {
  Rows all;
  for (std::size_t i = 0; i < designs.size(); ++i)
    for (Input& input : inputs_of(*designs[i])) all.add(std::move(input), i, designs.size());
  std::vector<CompareRow> differing;
  for (std::size_t row = 0; row < all.rows.size(); ++row) {
    const std::vector<std::string>& values = all.in_force[row];
    bool differs = false;
    for (std::size_t i = 0; i < values.size(); ++i) {
      all.rows[row].cells[i].differs = values[i] != values[0];
      differs = differs || values[i] != values[0];
    }
    if (differs) differing.push_back(std::move(all.rows[row]));
  }
  return differing;
}

}  // namespace gazewright
