#include "core/motion/cable_torque.h"

namespace gazewright {
namespace {

/// Torque times length per angle of one cable. [N·m²/rad]
double stiffness_Nm2prad(const Cable& cable) {
  const std::string& routing = cable.routing.value;
  if (routing.empty() || routing == "twist") return cable.torsion_stiffness_Nm2prad.value();
  return routing == "coil" ? cable.bending_stiffness_Nm2.value() : 0;
}

}  // namespace

bool is_spring(const Cable& cable) {
  return cable.presence == Presence::given && stiffness_Nm2prad(cable) != 0;
}

double cable_stiffness_Nmprad(const Cable& cable) {
  if (!is_spring(cable)) return 0;
  return cable.count.value() * stiffness_Nm2prad(cable) / cable.free_length_m.value();
}

double untwisted_rad(const AxisParts& parts) {
  return parts.stops.presence == Presence::given ? parts.stops.centre_rad.si.value_or(0) : 0;
}

double cable_friction_Nm(const Cable& cable) {
  return cable.presence == Presence::given ? cable.friction_Nm.value() : 0;
}

}  // namespace gazewright
