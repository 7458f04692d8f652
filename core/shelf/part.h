#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/rig/rig.h"

/// A part of the user's own as a plain value: a motor, a gearbox and so on with the fields that it
/// has in a rig, and a name.
namespace gazewright {

enum class PartKind { motor, gearbox, drive, bearing, cable, camera, supply };
inline constexpr std::array<PartKind, 7> kPartKinds{
    PartKind::motor, PartKind::gearbox, PartKind::drive, PartKind::bearing,
    PartKind::cable, PartKind::camera,  PartKind::supply};
/// Its key in files and its last word in a rig's paths: "motor".
const char* name_of(PartKind kind);
/// The kind of a part's path, "pan.motor" or "camera"; empty where the shelf has no such parts.
std::optional<PartKind> part_kind(std::string_view path);
/// Whether it belongs to an axis: all but camera and supply.
bool is_of_axis(PartKind kind);

struct ShelfPart {
  using Fields = std::variant<Motor, Gearbox, Drive, Bearing, Cable, Camera, Supply>;
  std::string name;  ///< the same as the motor's or gearbox' own
  std::string note;
  Fields fields;                         ///< its alternatives are in the order of PartKind
  std::vector<UnknownKey> unknown_keys;  ///< of its file

  PartKind kind() const { return static_cast<PartKind>(fields.index()); }
  void rename(const std::string& new_name);  ///< its motor or gearbox too
  bool operator==(const ShelfPart&) const = default;
};

/// The rig with the part in the place of its own. What belongs to the place and not to the part (a
/// cable's length and routing, the spacing of bearings, the bracket's material, leads and fuse)
/// stays where the part does not state it; everything else is the part's, missing where it is. The
/// axis is of no matter for camera and supply. Bodies that stand for the part follow its mass, see
/// carried_parts.h.
Rig put_on(Rig rig, Axis axis, const ShelfPart& part);

/// The part of the rig to keep on a shelf, named as in the rig or else after its place ("pan
/// drive").
ShelfPart part_of(const Rig& rig, Axis axis, PartKind kind);

/// Labels of the values that the part states and the rig has otherwise, or not at all.
std::vector<std::string_view> differences(const Rig& rig, Axis axis, const ShelfPart& part);

/// Its mass; missing where it has none, or kinds of part that have no mass.
Quantity mass_of(const ShelfPart& part);

}  // namespace gazewright
