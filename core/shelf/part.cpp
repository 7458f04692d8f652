#include "core/shelf/part.h"

#include <algorithm>
#include <span>

#include "core/rig/fields.h"
#include "core/shelf/carried_parts.h"
#include "core/shelf/part_place.h"

namespace gazewright {
namespace {

using Keys = std::span<const std::string_view>;

/// What belongs to the place of a part, by the keys of its table.
Keys keys_of_place(PartKind kind) {
  static constexpr std::string_view kMotor[]{"mount_material", "mount_limit", "housing_to_mount"};
  static constexpr std::string_view kGearbox[]{"load_at"};
  static constexpr std::string_view kDrive[]{"speed_limit"};
  static constexpr std::string_view kBearing[]{"kind", "spacing", "overhang", "preload", "life"};
  static constexpr std::string_view kCable[]{
      "routing",     "count",         "free_length",   "lay_radius", "slack",        "hub_radius",
      "wall_radius", "anchor_radius", "moving_radius", "current",    "supply_length"};
  static constexpr std::string_view kCamera[]{"exposure"};
  static constexpr std::string_view kSupply[]{"bus_capacitance", "trip_voltage", "brake_resistor",
                                              "brake_voltage",   "brake_power",  "lead_length",
                                              "lead_conductor",  "fuse"};
  switch (kind) {
    case PartKind::motor:
      return kMotor;
    case PartKind::gearbox:
      return kGearbox;
    case PartKind::drive:
      return kDrive;
    case PartKind::bearing:
      return kBearing;
    case PartKind::cable:
      return kCable;
    case PartKind::camera:
      return kCamera;
    case PartKind::supply:
      return kSupply;
  }
  return {};
}

template <class Fields>
Fields merged(const Fields& at_place, Fields part, Keys of_place) {
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

std::string own_name(const ShelfPart::Fields& fields) {
  if (const auto* motor = std::get_if<Motor>(&fields)) return motor->name;
  if (const auto* gearbox = std::get_if<Gearbox>(&fields)) return gearbox->name;
  return {};
}

}  // namespace

const char* name_of(PartKind kind) {
  switch (kind) {
    case PartKind::motor:
      return "motor";
    case PartKind::gearbox:
      return "gearbox";
    case PartKind::drive:
      return "drive";
    case PartKind::bearing:
      return "bearing";
    case PartKind::cable:
      return "cable";
    case PartKind::camera:
      return "camera";
    case PartKind::supply:
      return "supply";
  }
  return "motor";
}

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
        place = merged(place, fields, keys_of_place(part.kind()));
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

Quantity mass_of(const ShelfPart& part) {
  if (const auto* motor = std::get_if<Motor>(&part.fields)) return motor->mass_kg;
  if (const auto* gearbox = std::get_if<Gearbox>(&part.fields)) return gearbox->mass_kg;
  return {};
}

}  // namespace gazewright
