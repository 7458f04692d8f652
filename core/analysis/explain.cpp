#include "core/analysis/explain.h"

#include <algorithm>
#include <iterator>

#include "core/analysis/checks.h"
#include "core/analysis/context.h"
#include "core/analysis/fields_in_use.h"
#include "core/analysis/inputs.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

void add_once(std::vector<std::string>& paths, std::string path) {
  if (std::ranges::find(paths, path) == paths.end()) paths.push_back(std::move(path));
}

void add_load(Axis axis, std::vector<std::string>& paths) {
  for (const char* path : {"on_tilt", "stand.lean"}) add_once(paths, path);
  if (axis == Axis::tilt) return;
  for (const char* path : {"on_pan", "tilt.axis_at"}) add_once(paths, path);
}

void open_up(std::string_view input, Axis axis, const Rig& rig, std::vector<std::string>& paths) {
  const auto open_all = [&](std::span<const std::string_view> inputs, Axis whose) {
    for (const std::string_view each : inputs) open_up(each, whose, rig, paths);
  };
  if (input == "<load>") return add_load(axis, paths);
  if (input == kWholeStep.front()) return open_all(kStep, axis);
  if (input == kBothSteps.front()) {
    for (const Axis each : kAxes) open_all(kStep, each);
    return;
  }
  std::string path = for_axis(input, axis);
  const Axis whose = path.starts_with(name_of(Axis::tilt)) ? Axis::tilt : Axis::pan;
  if (const auto fields = fields_in_use(path, rig.axis(whose))) return open_all(*fields, whose);
  add_once(paths, std::move(path));
}

std::string body_name(const Body& body) {
  return body.name.empty() ? words("unnamed body") : body.name;
}

void add_bodies(const std::string& path, const std::vector<Body>& bodies, bool are_none,
                std::vector<InputUse>& uses) {
  for (std::size_t i = 0; i < bodies.size(); ++i) {
    InputUse use{path + "[" + std::to_string(i) + "]",
                 body_name(bodies[i]),
                 &body_mass_info(),
                 bodies[i].mass_kg,
                 {},
                 !bodies[i].mass_kg.has_value()};
    uses.push_back(std::move(use));
  }
  if (!bodies.empty()) return;
  uses.push_back(
      {path,
       path == "on_tilt" ? words("bodies that turn with tilt") : words("bodies that turn with pan"),
       nullptr,
       {},
       are_none ? "none" : "",
       !are_none});
}

/// Lists that may be left out.
constexpr std::string_view kLists[]{"duty", "detectors", "materials", "keep_outs"};

/// A field of a part that is not there, a part as a whole, or an empty list.
InputUse missing_input(const std::string& path, const Rig& rig) {
  InputUse use{path, path, find_info(path), {}, {}, true};
  if (use.info != nullptr) use.label = use.info->label;
  if (std::ranges::find(kLists, path) != std::end(kLists)) {
    use.choice = "none";
    use.is_missing = false;
  }
  for (const Axis axis : kAxes) {
    const AxisParts& parts = rig.axis(axis);
    const auto is_none = [&](const char* part, Presence presence) {
      return path.starts_with(std::string(name_of(axis)) + part) && presence == Presence::none;
    };
    if (is_none(".stops", parts.stops.presence) || is_none(".cable", parts.cable.presence)) {
      use.choice = "none";
      use.is_missing = false;
    }
  }
  return use;
}

std::string label_of(const QuantityRef& ref) {
  std::string label(ref.info->label);
  if (ref.path.ends_with(']') && ref.path.starts_with("tilt.axis_at"))
    label += std::string(" ") + "xyz"[ref.path[ref.path.size() - 2] - '0'];
  return label;
}

std::vector<InputUse> uses_of(const std::vector<std::string>& paths, const Rig& rig) {
  Rig full = with_defaults(rig);
  std::vector<InputUse> uses;
  for (const std::string& path : paths) {
    if (path == "on_tilt" || path == "on_pan") {
      add_bodies(path, path == "on_tilt" ? rig.on_tilt : rig.on_pan,
                 path == "on_pan" && rig.on_pan_is_bare, uses);
      continue;
    }
    const std::vector<FieldRef> fields = fields_under(full, path);
    for (const FieldRef& field : fields) {
      if (const auto* ref = std::get_if<QuantityRef>(&field)) {
        uses.push_back({ref->path,
                        label_of(*ref),
                        ref->info,
                        *ref->quantity,
                        {},
                        !ref->quantity->has_value()});
      } else if (const auto* choice = std::get_if<ChoiceRef>(&field)) {
        const std::string& word = choice->choice->value;
        uses.push_back({choice->path,
                        std::string(choice->info->label),
                        nullptr,
                        {},
                        word.empty() ? std::string(choice->info->options.front()) : word,
                        false});
      }
    }
    if (fields.empty()) uses.push_back(missing_input(path, rig));
  }
  return uses;
}

/// Whether `path` names the other, a part of it or a whole that holds it.
bool touches(std::string_view path, std::string_view other) {
  const auto holds = [](std::string_view whole, std::string_view part) {
    return part.starts_with(whole) &&
           (part.size() == whole.size() || part[whole.size()] == '.' || part[whole.size()] == '[');
  };
  return holds(path, other) || holds(other, path);
}

}  // namespace

std::vector<std::string> input_paths(std::span<const std::string_view> inputs, Axis axis,
                                     const Rig& rig) {
  std::vector<std::string> paths;
  for (const std::string_view input : inputs) open_up(input, axis, rig, paths);
  return paths;
}

std::vector<InputUse> inputs_in_use(std::span<const std::string_view> inputs, Axis axis,
                                    const Rig& rig) {
  return uses_of(input_paths(inputs, axis, rig), rig);
}

std::optional<Axis> axis_of_id(std::string_view id) {
  for (const Axis axis : kAxes) {
    if (id.starts_with(std::string(name_of(axis)) + ".")) return axis;
  }
  return std::nullopt;
}

std::string id_pattern(std::string_view id) {
  const auto axis = axis_of_id(id);
  if (!axis) return std::string(id);
  return "<axis>" + std::string(id.substr(std::string_view(name_of(*axis)).size()));
}

std::optional<Explanation> explain(const Rig& rig, const Analysis& analysis, std::string_view id) {
  const Figure* figure = analysis.figure(id);
  if (figure == nullptr || figure->info == nullptr) return std::nullopt;
  const auto axis = axis_of_id(id);
  const std::string_view page = page_of(*figure->info);
  return Explanation{figure->id,
                     axis,
                     figure->info,
                     figure->value,
                     figure->because,
                     inputs_in_use(figure->info->inputs, axis.value_or(Axis::pan), rig),
                     page,
                     conditions_of(page)};
}

std::vector<InputUse> inputs_of_finding(const Rig& rig, const Finding& finding) {
  const std::string pattern = id_pattern(finding.id);
  for (const Check* check : axis_checks()) {
    if (check->id != pattern && check->id != finding.id) continue;
    return inputs_in_use(check->inputs, finding.axis.value_or(Axis::pan), rig);
  }
  return {};
}

std::vector<const Figure*> figures_on(const Rig& rig, const Analysis& analysis,
                                      std::string_view path) {
  std::vector<const Figure*> found;
  for (const Figure& figure : analysis.figures) {
    if (figure.info == nullptr) continue;
    const Axis axis = axis_of_id(figure.id).value_or(Axis::pan);
    const auto paths = input_paths(figure.info->inputs, axis, rig);
    if (std::ranges::any_of(paths, [&](const std::string& p) { return touches(p, path); }))
      found.push_back(&figure);
  }
  return found;
}

}  // namespace gazewright
