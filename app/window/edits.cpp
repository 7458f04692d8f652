#include "app/window/edits.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numeric>
#include <utility>

#include "core/analysis/counterweight.h"
#include "core/data/materials.h"
#include "core/files/path_csv.h"
#include "core/units/angle.h"
#include "core/units/units.h"

namespace gazewright {
namespace {

Quantity written(const char* text, double si, Source source = Source::unstated) {
  Quantity q = si_quantity(si, source);
  q.written = text;
  return q;
}

Quantity guessed(const char* text, double si) { return written(text, si, Source::estimate); }

Quantity guessed_deg(double degrees) {
  Quantity made = si_quantity(to_si(degrees, "rad", "deg"), Source::estimate);
  made.written = written_quantity(*made.si, keep_out_pan_info(), "deg");
  return made;
}

PathPoint path_point(double time_s, double pan_rad, double tilt_rad) {
  std::array<Quantity, 3> values{si_quantity(time_s), si_quantity(pan_rad), si_quantity(tilt_rad)};
  for (std::size_t i = 0; i < values.size(); ++i) {
    const FieldInfo& info = *path_point_infos()[i];
    values[i].written = written_quantity(*values[i].si, info, info.unit);
  }
  return {values[0], values[1], values[2]};
}

/// The member behind "pan.stops" or "tilt.cable", or null.
Presence* presence_at(Rig& rig, std::string_view part) {
  for (Axis axis : kAxes) {
    const std::string name = name_of(axis);
    if (part == name + ".stops") return &rig.axis(axis).stops.presence;
    if (part == name + ".cable") return &rig.axis(axis).cable.presence;
  }
  return nullptr;
}

Shape usual_shape(std::size_t kind) {
  const Quantity wide = guessed("60 mm", 0.060);
  switch (kind) {
    case 0:
      return Ball{wide};
    case 1:
      return Shell{wide, guessed("2.4 mm", 0.0024)};
    case 2:
      return Tube{Choice{"z"}, wide, guessed("50 mm", 0.050), guessed("80 mm", 0.080)};
    case 3:
      return Box{{wide, wide, wide}};
    case 4:
      return Point{};
    default: {
      const Quantity main = guessed("500 g.cm2", 5e-5), off = guessed("0 g.cm2", 0);
      return Tensor{{main, main, main, off, off, off}};
    }
  }
}

Body usual_body() {
  Body body;
  body.name = "new body";
  body.mass_kg = guessed("100 g", 0.1);
  for (Quantity& q : body.centre_m) q = guessed("0 mm", 0);
  body.shape = usual_shape(0);
  return body;
}

}  // namespace

Rig with_quantity(Rig rig, std::string_view path, const Quantity& quantity) {
  if (Quantity* at = find_quantity(rig, path)) *at = quantity;
  return rig;
}

Rig with_choice(Rig rig, std::string_view path, const std::string& value) {
  for (FieldRef& field : fields_under(rig, path)) {
    if (auto* ref = std::get_if<ChoiceRef>(&field); ref && ref->path == path) {
      ref->choice->value = value;
    }
  }
  return rig;
}

Rig with_text(Rig rig, std::string_view path, const std::string& text) {
  for (FieldRef& field : fields_under(rig, path)) {
    if (auto* ref = std::get_if<TextRef>(&field); ref && ref->path == path) *ref->text = text;
  }
  return rig;
}

Rig with_value(Rig rig, std::string_view path, double value_si) {
  Quantity* at = find_quantity(rig, path);
  const FieldInfo* info = find_info(path);
  if (!at || !info) return rig;
  std::string unit = unit_of_written(at->written);
  if (unit.empty() && !info->is_plain_number()) unit = info->unit;
  Quantity changed = si_quantity(value_si);
  changed.written = written_quantity(value_si, *info, unit);
  *at = changed;
  return rig;
}

Presence presence_of(const Rig& rig, std::string_view part) {
  Rig copy = rig;
  const Presence* at = presence_at(copy, part);
  return at ? *at : Presence::given;
}

Rig with_presence(Rig rig, std::string_view part, Presence presence) {
  if (Presence* at = presence_at(rig, part)) *at = presence;
  return rig;
}

Rig with_values(Rig rig, const std::vector<FieldValue>& values) {
  for (const FieldValue& value : values)
    rig = with_value(std::move(rig), value.path, value.value_si);
  return rig;
}

Rig with_remedy(const Rig& rig, const Remedy& remedy) {
  if (auto whole = with_whole_remedy(rig, remedy)) return with_values(*whole, remedy.also);
  return with_values(with_value(rig, remedy.path, remedy.value_si), remedy.also);
}

std::optional<BodyPlace> body_place(const Rig& rig, std::string_view path) {
  const bool on_tilt = path.starts_with("on_tilt[");
  if (!on_tilt && !path.starts_with("on_pan[")) return std::nullopt;
  const std::string_view digits = path.substr(path.find('[') + 1);
  BodyPlace place{on_tilt, 0};
  const auto [end, fault] =
      std::from_chars(digits.data(), digits.data() + digits.size(), place.index);
  if (fault != std::errc() || end == digits.data() + digits.size() || *end != ']') {
    return std::nullopt;
  }
  if (place.index >= bodies_in(rig, on_tilt).size()) return std::nullopt;
  return place;
}

std::string path_of(const BodyPlace& place) {
  return (place.on_tilt ? "on_tilt[" : "on_pan[") + std::to_string(place.index) + "]";
}

std::vector<Body>& bodies_in(Rig& rig, bool on_tilt) { return on_tilt ? rig.on_tilt : rig.on_pan; }
const std::vector<Body>& bodies_in(const Rig& rig, bool on_tilt) {
  return on_tilt ? rig.on_tilt : rig.on_pan;
}

Rig with_new_body(Rig rig, bool on_tilt) {
  if (!on_tilt) rig.on_pan_is_bare = false;
  bodies_in(rig, on_tilt).push_back(usual_body());
  return rig;
}

Rig with_body_doubled(Rig rig, const BodyPlace& place) {
  auto& bodies = bodies_in(rig, place.on_tilt);
  Body copy = bodies[place.index];
  copy.name += " copy";
  bodies.insert(bodies.begin() + static_cast<std::ptrdiff_t>(place.index) + 1, std::move(copy));
  return rig;
}

Rig with_body_removed(Rig rig, const BodyPlace& place) {
  auto& bodies = bodies_in(rig, place.on_tilt);
  bodies.erase(bodies.begin() + static_cast<std::ptrdiff_t>(place.index));
  return rig;
}

Rig with_body_moved(Rig rig, const BodyPlace& place, int steps) {
  auto& bodies = bodies_in(rig, place.on_tilt);
  const auto to = static_cast<std::ptrdiff_t>(place.index) + steps;
  if (to < 0 || to >= static_cast<std::ptrdiff_t>(bodies.size())) return rig;
  std::swap(bodies[place.index], bodies[static_cast<std::size_t>(to)]);
  return rig;
}

Rig with_body_carried(Rig rig, const BodyPlace& place, bool on_tilt) {
  if (place.on_tilt == on_tilt) return rig;
  Body body = bodies_in(rig, place.on_tilt)[place.index];
  rig = with_body_removed(std::move(rig), place);
  if (!on_tilt) rig.on_pan_is_bare = false;
  bodies_in(rig, on_tilt).push_back(std::move(body));
  return rig;
}

Rig with_shape(Rig rig, const BodyPlace& place, std::size_t shape) {
  bodies_in(rig, place.on_tilt)[place.index].shape = usual_shape(shape);
  return rig;
}

Rig with_new_keep_out(Rig rig) {
  rig.keep_outs.push_back(
      {"new keep-out", {guessed_deg(-15), guessed_deg(15)}, {guessed_deg(30), guessed_deg(60)}});
  return rig;
}

Rig with_keep_out_removed(Rig rig, std::size_t index) {
  rig.keep_outs.erase(rig.keep_outs.begin() + static_cast<std::ptrdiff_t>(index));
  return rig;
}

Rig with_new_detector(Rig rig) {
  Detector detector;
  detector.name = "new detector";
  rig.detectors.push_back(std::move(detector));
  return rig;
}

Rig with_new_material(Rig rig) {
  Material material;
  if (const auto like = find_material(rig, rig.arm.material)) material = *like;
  for (Quantity* value :
       {&material.modulus_Pa, &material.layer_modulus_Pa, &material.strength_Pa,
        &material.layer_strength_Pa, &material.softening_K, &material.density_kgpm3}) {
    if (value->source == Source::by_default) value->source = Source::estimate;
  }
  material.source.clear();
  std::string base = material.name.empty() ? "material" : material.name;
  if (!base.starts_with("my ")) base = "my " + base;
  material.name = base;
  for (int number = 2; find_material(rig, material.name); ++number)
    material.name = base + " " + std::to_string(number);
  rig.materials.push_back(std::move(material));
  return rig;
}

Rig with_material_removed(Rig rig, std::size_t index) {
  rig.materials.erase(rig.materials.begin() + static_cast<std::ptrdiff_t>(index));
  return rig;
}

Rig with_detector_removed(Rig rig, std::size_t index) {
  if (index < rig.detectors.size())
    rig.detectors.erase(rig.detectors.begin() + static_cast<std::ptrdiff_t>(index));
  return rig;
}

Rig with_new_duty_move(Rig rig) {
  const double side = rig.duty.size() % 2 == 0 ? 0.5 : -0.5;
  const auto end = [&](const Quantity& move_rad) {
    return guessed_deg(std::round(side * move_rad.si.value_or(0) * kDegPerRad));
  };
  DutyMove move{end(rig.task.pan_move_rad), end(rig.task.tilt_move_rad), {}};
  move.dwell_s = guessed("1 s", 1);
  rig.duty.push_back(std::move(move));
  return rig;
}

Rig with_duty_move_removed(Rig rig, std::size_t index) {
  if (index < rig.duty.size())
    rig.duty.erase(rig.duty.begin() + static_cast<std::ptrdiff_t>(index));
  return rig;
}

Rig with_new_path_point(Rig rig, std::size_t place) {
  std::vector<PathPoint>& path = rig.tracking.path;
  if (path.empty()) {
    return with_path(std::move(rig), {path_point(0, 0, 0), path_point(1, 0, 0)});
  }
  const auto before = path[place > 0 ? place - 1 : 0],
             after = path[std::min(place, path.size() - 1)];
  const auto middle = [&](Quantity PathPoint::*at) {
    return std::midpoint((before.*at).value(), (after.*at).value());
  };
  PathPoint point = path_point(middle(&PathPoint::time_s), middle(&PathPoint::pan_rad),
                               middle(&PathPoint::tilt_rad));
  if (place == path.size()) {
    const double step_s = before.time_s.value() - path[path.size() - 2].time_s.value();
    point = {path_point(before.time_s.value() + step_s, 0, 0).time_s, before.pan_rad,
             before.tilt_rad};
  }
  path.insert(path.begin() + static_cast<std::ptrdiff_t>(place), std::move(point));
  return rig;
}

Rig with_path_point_removed(Rig rig, std::size_t index) {
  std::vector<PathPoint>& path = rig.tracking.path;
  if (path.size() <= 2) {
    path.clear();
  } else if (index < path.size()) {
    path.erase(path.begin() + static_cast<std::ptrdiff_t>(index));
  }
  return rig;
}

Rig blank_rig() {
  Rig rig;
  rig.title = "New rig";
  rig.on_tilt.push_back(usual_body());
  rig.on_tilt.back().name = "camera";
  return rig;
}

}  // namespace gazewright
