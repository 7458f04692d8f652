#include "core/analysis/cable_load.h"
#include "core/analysis/figures.h"

namespace gazewright {
namespace {

constexpr const char* kNoTorque = "no stiffness or friction of a cable is entered";
constexpr const char* kSpringSource =
    "twisted bar GJ/L: Boresi & Schmidt, ch. 6; spiral EI/L: Khurmi & Gupta, Machine Design; "
    "handbook: motion";

Answer stiffness(Context& c, Axis a) {
  if (!has_cable_torque(c, a)) return Answer::aside(kNoTorque);
  return cable_stiffness_Nmprad(c.rig().axis(a).cable);
}

Answer largest_torque(Context& c, Axis a) {
  if (!has_cable_torque(c, a)) return Answer::aside(kNoTorque);
  const auto wound = cable_wound_Nm(c, a);
  if (!wound) return Answer::none(kWindsUnknown);
  return *wound + cable_friction_Nm(c.rig().axis(a).cable);
}

const FigureRow kCableTorqueFigures[] = {
    {{"<axis>.cable.stiffness", "Stiffness of the cable against turning", "N.m/rad", "mN.m/rad",
      "twist: count·torsion_stiffness/free_length; coil: count·bending_stiffness/free_length; "
      "loop, slip_ring: 0",
      kSpringSource, kCableTorque},
     Axes::both,
     stiffness},
    {{"<axis>.cable.torque_max", "Largest torque of the cable", "N.m", "mN.m",
      "cable.stiffness·usable/2 + cable friction, at the end of the usable travel", kSpringSource,
      kCableTorque},
     Axes::both,
     largest_torque},
};

}  // namespace

std::span<const FigureRow> cable_torque_figures() { return kCableTorqueFigures; }

}  // namespace gazewright
