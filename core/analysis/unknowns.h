#pragma once

#include <string>
#include <vector>

#include "core/analysis/doubts.h"
#include "core/rig/fields.h"

/// Which inputs of a rig are not known exactly. Used by doubts_of() only.
namespace gazewright {

struct FoundUnknown {
  Unknown unknown;
  std::string at;            ///< path for find_quantity: "on_tilt[1].mass"
  double low = 0, high = 0;  ///< value ∓ spread, inside the field's allowed range, SI
  std::string measuring;     ///< "weighing the camera"
};

/// Every known input that a row of spreads.yaml describes and that states a spread, or whose source
/// has a usual one there. Measured and unstated values without a spread are not among them, nor
/// are defaults that follow from other fields, which move with these.
std::vector<FoundUnknown> unknowns_of(const Rig& rig);

/// How many of the inputs that such a row describes the rig states without any spread: they are
/// taken as exact.
std::size_t exact_inputs(const Rig& rig);

/// The row of spreads.yaml that a path belongs to: "motor.mass" of "pan.motor.mass", "body.size" of
/// "on_tilt[1].shape.box[0]".
std::string kind_of_input(std::string_view path, const FieldInfo& info);

}  // namespace gazewright
