#include "core/rig/rig.h"

namespace gazewright {

const char* name_of(Axis axis) { return axis == Axis::pan ? "pan" : "tilt"; }

bool Variant::operator==(const Variant& other) const {
  return name == other.name && note == other.note && (rig == other.rig || *rig == *other.rig);
}

}  // namespace gazewright
