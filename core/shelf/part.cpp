#include "core/shelf/part.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "core/rig/fields.h"
#include "core/shelf/carried_parts.h"
#include "core/shelf/part_keys.h"
#include "core/shelf/part_place.h"

namespace gazewright {
namespace {

template <class Fields>
Fields merged(const Fields& at_place, Fields part, std::span<const std::string_view> of_place) {
  const auto stays = [&](std::string_view key) {
    return std::ranges::find(of_place, key) != of_place.end();
  };
  const PartTable<Fields>& table = table_of<Fields>();
  for (const auto& row : table.quantities)
    if (stays(row.info.key) && !(part.*row.at).has_value()) part.*row.at = at_place.*row.at;
  for (const auto& row : table.choices)
    if (stays(row.info.key) && (part.*row.at).value.empty()) part.*row.at = at_place.*row.at;
  for (const auto& row : table.texts)
    if (stays(row.info.key) && (part.*row.at).empty()) part.*row.at = at_place.*row.at;
  return part;
}

/// The same value, whichever unit it was written in.
bool is_same(const Quantity& here, const Quantity& there) {
  return here.si == there.si ||
         (here.has_value() && std::abs(*here.si - *there.si) <= 1e-9 * std::abs(*there.si));
}

template <class Fields>
std::vector<std::string_view> other_labels(const Fields& here, const Fields& part) {
  std::vector<std::string_view> labels;
  const PartTable<Fields>& table = table_of<Fields>();
  for (const auto& row : table.choices)
    if (!(part.*row.at).value.empty() && (here.*row.at).value != (part.*row.at).value)
      labels.push_back(row.info.label);
  for (const auto& row : table.quantities)
    if ((part.*row.at).has_value() && !is_same(here.*row.at, part.*row.at))
      labels.push_back(row.info.label);
  return labels;
}

std::string own_name(const ShelfPart::Fields& fields) {
  if (const auto* motor = std::get_if<Motor>(&fields)) return motor->name;
  if (const auto* gearbox = std::get_if<Gearbox>(&fields)) return gearbox->name;
  return {};
}

}  // namespace

std::optional<PartKind> part_kind(std::string_view path) {
  for (const PartKind kind : kPartKinds) {
    if (!is_of_axis(kind) && path == name_of(kind)) return kind;
    for (const Axis axis : kAxes)
      if (is_of_axis(kind) && path == std::string(name_of(axis)) + "." + name_of(kind)) return kind;
  }
  return std::nullopt;
}

bool is_of_axis(PartKind kind) { return kind != PartKind::camera && kind != PartKind::supply; }

void ShelfPart::rename(const std::string& new_name) {
  name = new_name;
  if (auto* motor = std::get_if<Motor>(&fields)) motor->name = new_name;
  if (auto* gearbox = std::get_if<Gearbox>(&fields)) gearbox->name = new_name;
}

Rig put_on(Rig rig, Axis axis, const ShelfPart& part) {
  const AxisParts& before = rig.axis(axis);
  const Quantity old_mass =
      part.kind() == PartKind::gearbox ? before.gearbox.mass_kg : before.motor.mass_kg;
  std::visit(
      [&](const auto& fields) {
        auto& place = place_in(rig, axis, fields);
        place = merged(place, fields, keys_of(part.kind()).of_place);
      },
      part.fields);
  if (part.kind() == PartKind::cable) rig.axis(axis).cable.presence = Presence::given;
  carry_mass(rig, axis, part.kind(), old_mass, mass_of(part));
  return rig;
}

ShelfPart part_of(const Rig& rig, Axis axis, PartKind kind) {
  ShelfPart part;
  part.fields = fields_of(kind);
  Rig copy = rig;
  std::visit([&](auto& fields) { fields = place_in(copy, axis, fields); }, part.fields);
  if (auto* cable = std::get_if<Cable>(&part.fields)) cable->presence = Presence::given;
  std::string name = own_name(part.fields);
  if (name.empty())
    name = (is_of_axis(kind) ? std::string(name_of(axis)) + " " : std::string()) + name_of(kind);
  part.rename(name);
  return part;
}

std::vector<std::string_view> differences(const Rig& rig, Axis axis, const ShelfPart& part) {
  Rig copy = rig;
  return std::visit(
      [&](const auto& fields) { return other_labels(place_in(copy, axis, fields), fields); },
      part.fields);
}

Quantity mass_of(const ShelfPart& part) {
  if (const auto* motor = std::get_if<Motor>(&part.fields)) return motor->mass_kg;
  if (const auto* gearbox = std::get_if<Gearbox>(&part.fields)) return gearbox->mass_kg;
  return {};
}

}  // namespace gazewright
