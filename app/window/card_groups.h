#pragma once

#include <QString>
#include <string_view>

#include "core/rig/rig.h"

/// How the fields of a card are grouped, and which of them matter to the rig as it is.
namespace gazewright {

/// A group under its own heading, after the fields without one.
struct FieldGroup {
  int rank = 0;     ///< 0: no group, first on the card
  QString heading;  ///< empty for rank 0
  bool folds = false;
  bool operator==(const FieldGroup&) const = default;
};
FieldGroup group_of(std::string_view path);

/// Whether a field says anything for the kind of stops, the routing of the cable or the way of
/// homing that the rig has: "pan.stops.window" only for window stops.
bool field_applies(const Rig& rig, std::string_view path);

}  // namespace gazewright
