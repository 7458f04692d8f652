#include "core/rig/rig.h"

namespace gazewright {

const char* name_of(Axis axis) { return axis == Axis::pan ? "pan" : "tilt"; }

}  // namespace gazewright
