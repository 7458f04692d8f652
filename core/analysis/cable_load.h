#pragma once

#include <cmath>
#include <optional>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/motion/cable_torque.h"

/// What figures and checks say about the cables' torque.
namespace gazewright {

inline constexpr std::array<InputPath, 4> kCableTorque{
    "<axis>.cable.torsion_stiffness", "<axis>.cable.bending_stiffness", "<axis>.cable.friction",
    "<axis>.cable.<spring>"};
inline constexpr const char* kWindsUnknown =
    "how far the cable winds up is not known: needs the usable travel";

/// Whether a stiffness or a friction of the cables is entered.
inline bool has_cable_torque(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  return is_spring(cable) || cable_friction_Nm(cable) != 0;
}

/// Torque of the cables' spring at either end of the usable travel, which is centred on their
/// untwisted state; empty where the travel has no known end. [N·m]
inline std::optional<double> cable_wound_Nm(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  if (!is_spring(cable)) return 0;
  const auto& usable = c.travel(a).usable_rad;
  if (!usable || std::isinf(*usable)) return {};
  return cable_stiffness_Nmprad(cable) * *usable / 2;
}

/// What holds an axis at rest back besides its cables' spring, each at its worst. [N·m] at the
/// output
struct HeldBack {
  double friction_Nm = 0;  ///< cables' included
  double weight_Nm = 0;    ///< gravity at its worst angle
  double drag_Nm = 0;      ///< of the gearbox, through it
  double sum_Nm() const { return friction_Nm + weight_Nm + drag_Nm; }
};
inline HeldBack held_back(const AxisModel& model) {
  return {model.load.coulomb_Nm, model.load.gravity.largest_Nm(0, 2 * M_PI),
          model.gear.efficiency * model.gear.ratio * model.gear.drag_Nm};
}

}  // namespace gazewright
