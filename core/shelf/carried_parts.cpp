#include "core/shelf/carried_parts.h"

#include <algorithm>

#include "core/files/spelling.h"
#include "core/rig/fields.h"
#include "core/units/units.h"

namespace gazewright {
namespace {

enum class Stands { not_for_it, for_it_alone, for_it_and_more };

Stands stands(const Body& body, Axis axis, PartKind kind) {
  if (kind != PartKind::motor && kind != PartKind::gearbox) return Stands::not_for_it;
  const std::string name = in_small_letters(body.name), at = std::string(name_of(axis)) + " ";
  if (name == at + name_of(kind)) return Stands::for_it_alone;
  const bool both = name == at + "motor and gearbox" || name == at + "gearbox and motor";
  return both ? Stands::for_it_and_more : Stands::not_for_it;
}

Quantity changed_mass(const Quantity& body_kg, Stands stands, const Quantity& old_kg,
                      const Quantity& new_kg) {
  if (!new_kg.si) return {};
  const bool is_known = body_kg.si && old_kg.si;
  double mass_kg = is_known ? *body_kg.si + *new_kg.si - *old_kg.si : 0;
  if (!(mass_kg > 0)) {
    if (stands != Stands::for_it_alone) return {};
    mass_kg = *new_kg.si;
  }
  const std::string unit = unit_of_written(body_kg.written);
  Quantity changed = si_quantity(mass_kg, new_kg.source);
  changed.written = written_quantity(mass_kg, body_mass_info(), unit.empty() ? "g" : unit);
  return changed;
}

}  // namespace

bool is_carried(const Rig& rig, Axis axis, PartKind kind) {
  const auto is_it = [&](const Body& body) {
    return stands(body, axis, kind) != Stands::not_for_it;
  };
  return std::ranges::any_of(rig.on_pan, is_it) || std::ranges::any_of(rig.on_tilt, is_it);
}

bool stands_for_part(const Body& body) {
  return std::ranges::any_of(kAxes, [&](Axis axis) {
    return stands(body, axis, PartKind::motor) != Stands::not_for_it ||
           stands(body, axis, PartKind::gearbox) != Stands::not_for_it;
  });
}

void carry_mass(Rig& rig, Axis axis, PartKind kind, const Quantity& old_mass,
                const Quantity& new_mass) {
  if (old_mass.si && old_mass.si == new_mass.si) return;
  for (std::vector<Body>* bodies : {&rig.on_pan, &rig.on_tilt}) {
    for (Body& body : *bodies) {
      const Stands how = stands(body, axis, kind);
      if (how != Stands::not_for_it)
        body.mass_kg = changed_mass(body.mass_kg, how, old_mass, new_mass);
    }
  }
}

}  // namespace gazewright
