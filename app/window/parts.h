#pragma once

#include <QString>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/rig/rig.h"

/// Parts of a rig as the window shows them: what has a card of its own, and what it is called.
namespace gazewright {

/// The card that holds all keep-outs.
inline constexpr const char* kKeepOutsCard = "keep_outs";

/// The part whose card holds another part: "pan.loop" is on the card of "pan.drive".
std::string card_of(std::string_view part);

/// "Pan gearbox", "Camera", "Ball (turns with tilt)".
QString part_title(const Rig& rig, std::string_view part);
/// The path of a field from its name in lists: "on_tilt[camera].mass" -> "on_tilt[1].mass". What is
/// no field of the rig stays as it is.
std::string field_path(const Rig& rig, const std::string& named);
std::optional<Axis> axis_of_part(std::string_view part);

/// Every part with a card, in the order of the list at the top of the card. A group starts with an
/// empty path and its heading.
struct PartEntry {
  std::string part;
  QString title;
};
std::vector<PartEntry> all_parts(const Rig& rig);

/// Fields on a card: everything under `prefix`, under a heading (empty on the first).
struct CardSection {
  QString heading;
  std::string prefix;
};
std::vector<CardSection> card_sections(const Rig& rig, std::string_view part);

}  // namespace gazewright
