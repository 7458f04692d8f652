#include <algorithm>
#include <array>
#include <cstdio>
#include <map>

#include "core/analysis/compare.h"
#include "core/analysis/input_names.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

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

/// Alike for values that differ by rounding only.
std::string digits(double value) {
  std::array<char, 40> text{};
  const int length = std::snprintf(text.data(), text.size(), "%.10g", value);
  return {text.data(), static_cast<std::size_t>(length)};
}

class Gatherer {
 public:
  explicit Gatherer(const Rig& rig) : names_(rig) {}

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
    Input spread{
        id + "/spread", words("%1, spread", label), ref.info->si_unit, ref.info->unit, {}, {}};
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
    const std::string id = names_.id_of(path);
    return {id, input_label(id, label), {}, {}, {}, {}};
  }

  InputNames names_;
};

const char* presence_word(Presence presence) {
  return presence == Presence::given ? "given" : presence == Presence::none ? "none" : "missing";
}

const char* shape_word(const Shape& shape) {
  constexpr std::array<const char*, 6> kWords{"ball", "shell", "tube", "box", "point", "inertia"};
  return kWords[shape.index()];
}

/// What is no field: which parts there are, shapes, the path.
void add_structure(Gatherer& gatherer, const Rig& rig) {
  for (const Axis axis : kAxes) {
    const std::string name = name_of(axis);
    gatherer.add_words(name + ".stops", "Stops", presence_word(rig.axis(axis).stops.presence));
    gatherer.add_words(name + ".cable", "Cable", presence_word(rig.axis(axis).cable.presence));
  }
  const auto add_shapes = [&](const std::string& list, const std::vector<Body>& bodies) {
    for (std::size_t i = 0; i < bodies.size(); ++i)
      gatherer.add_words(list + "[" + std::to_string(i) + "].shape", "Shape",
                         shape_word(bodies[i].shape));
  };
  add_shapes("on_pan", rig.on_pan);
  add_shapes("on_tilt", rig.on_tilt);
  std::string path;
  for (const PathPoint& point : rig.tracking.path)
    path += digits(point.time_s.value()) + ' ' + digits(point.pan_rad.value()) + ' ' +
            digits(point.tilt_rad.value()) + '\n';
  gatherer.add_words("tracking.path", "Path",
                     words("%1 points", std::to_string(rig.tracking.path.size())));
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
      empty.word = input.id.ends_with("/spread") ? words("none stated") : words("not there");
      rows.push_back({input.id, std::move(input.label), input.si_unit, input.unit,
                      std::vector<CompareCell>(designs, empty)});
      in_force.emplace_back(designs, words("not there"));
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
