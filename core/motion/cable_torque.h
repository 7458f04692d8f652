#pragma once

#include "core/rig/rig.h"

/// Torque of the cables against the angle: a spring about their untwisted state, and rubbing.
/// All of them straight lines. Left out: cables that stiffen as they wind up or in the cold, the
/// pull of a bundle that twisting shortens, what they remember of their last position.
/// Sources: T/θ = GJ/L of a twisted bar (Boresi & Schmidt, Advanced Mechanics of Materials, ch. 6);
/// M/θ = EI/L of a spiral that stays free of its walls (Khurmi & Gupta, Machine Design, flat spiral
/// springs). The cables' own GJ and EI are measured, never computed: their wires slide.
namespace gazewright {

/// Whether turning the axis winds these cables up: `twist` with a torsional stiffness, `coil` with
/// a bending stiffness. A hanging loop only adds weight; a slip ring only rubs.
bool is_spring(const Cable& cable);

/// twist: count·torsional stiffness/free length; coil: count·bending stiffness/free length; else 0.
/// NaN where a spring's free length is missing. [N·m/rad] at the output
double cable_stiffness_Nmprad(const Cable& cable);

/// Angle at which the cables are taken as untwisted: the stops' centre, 0 without stops. [rad]
double untwisted_rad(const AxisParts& parts);

/// Torque that rubbing takes in motion, either way; 0 without a cable. [N·m] at the output
double cable_friction_Nm(const Cable& cable);

}  // namespace gazewright
