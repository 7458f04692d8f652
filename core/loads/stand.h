#pragma once

#include <optional>
#include <span>

#include "core/bodies/bodies.h"

/// A stand on its foot: tipping, sliding, swaying. It turns at its foot, at the height of the
/// ground. Formulas: resources/handbook/structure.md.
namespace gazewright {

struct StandBody {
  double mass_kg = 0, half_width_m = 0, height_m = 0;  ///< its own centre at half its height
};
/// All that the stand carries, in the worst pose: its centre as far from the pan axis and as high
/// as any pose brings it.
struct CarriedByStand {
  double mass_kg = 0;
  double aside_m = 0, above_foot_m = 0;
};
CarriedByStand carried_by(const StandBody& stand, const RigBodies& bodies);

/// Moments about the tipping edge. [N·m]
struct Tipping {
  double holding_Nm = 0;  ///< weight at half the width, as if it stood over the middle
  double resting_Nm = 0;  ///< what lean and the load's offset take of it
  double lean_rad =
      0;  ///< from the plumb line at which it tips at rest; below 0: it does not stand
};
Tipping tipping_of(const StandBody& stand, const CarriedByStand& carried, double lean_rad);

/// Inertia about the foot: of the bodies with tilt at 0, and of the stand as an even column. About
/// the axis along the tilt axis (y), and the larger one of both level axes. [kg·m²]
struct SwayInertia {
  double pitch_kgm2 = 0, most_kgm2 = 0;
};
SwayInertia sway_inertia(const StandBody& stand, const RigBodies& bodies);

/// A damped spring that a torque in steps turns: largest angle, and how far it still swings from a
/// time on. Exact for torques that hold still between samples.
struct Swayed {
  double largest_rad = 0, left_rad = 0;
};
struct SwaySpring {
  double inertia_kgm2 = 0, stiffness_Nmprad = 0, damping_ratio = 0;
  double frequency_Hz() const;
};
/// @param torque_Nm  one for each sample; @param still_after_s  from when on `left_rad` counts.
Swayed swayed_by(const SwaySpring& spring, std::span<const double> torque_Nm, double sample_s,
                 double still_after_s);

}  // namespace gazewright
