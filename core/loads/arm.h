#pragma once

#include <Eigen/Core>

#include "core/bodies/bodies.h"
#include "core/loads/section.h"
#include "core/rig/rig.h"

/// The printed arm, or the two of a fork, that stand on the pan output and carry the tilt axis.
/// Frame P: z up along the arm, x across the tilt axis, y along it. The end carries a load that is
/// seen from the point E: the end of the single arm, or the middle of a fork's tilt axis. Formulas:
/// resources/handbook/structure.md.
namespace gazewright {

/// Poisson's ratio of prints and metals alike, within a tenth in the shear modulus; from memory.
inline constexpr double kPoisson = 0.35;

struct ArmBeam {
  bool is_fork = false;
  double length_m = 0;
  Section section;
  SectionValues values;  ///< of that section
  double modulus_Pa = 0, density_kgpm3 = 0;
  double aside_m = 0;  ///< of each arm's middle from the middle of what tilts, along y

  double shear_modulus_Pa() const { return modulus_Pa / (2 * (1 + kPoisson)); }
  double arm_kg() const { return density_kgpm3 * values.weight_area_m2 * length_m; }  ///< of one
  double mass_kg() const { return (is_fork ? 2 : 1) * arm_kg(); }
};

/// At rest under its weight, against the unloaded arm.
struct ArmDroop {
  double angle_rad = 0;   ///< of the tilt axis out of the level: the picture rolls by it
  double sink_m = 0;      ///< of the load's centre
  double sideways_m = 0;  ///< of the arm's end, along the tilt axis
};
/// @param lean_rad  of the pan axis, towards the weaker side of the arm.
/// A fork's arms are joined by an axis that carries no bending: they lean in parallel.
ArmDroop droop_of(const ArmBeam& arm, const MassProperties& load, double lean_rad);

/// Frequencies of the load as a rigid body on the arm, all directions coupled; the arm's own mass
/// as in a finite element with cubic shape. What tilts is held by its drive. Within 1 % of the
/// beam's exact frequency for loads heavier than the arm. [Hz]
struct ArmModes {
  double first_Hz = 0;
  /// Lowest one that an axis' drive shakes: with at least 5 % of the inertia that turns about the
  /// axis (effective modal inertia).
  double pan_Hz = 0, tilt_Hz = 0;
  double of(Axis axis) const { return axis == Axis::pan ? pan_Hz : tilt_Hz; }
};
/// @param end_m  place of E in P.
ArmModes modes_of(const ArmBeam& arm, const MassProperties& load, const Eigen::Vector3d& end_m);
/// Pan inertia of the arms themselves about the pan axis. @param axis_x_m, axis_y_m  tilt axis'
/// place in P. [kg·m²]
double arm_inertia_kgm2(const ArmBeam& arm, double axis_x_m, double axis_y_m);

/// What the load pulls at E with, in P; magnitudes, so that several can be added.
struct EndForces {
  Eigen::Vector3d force_N = Eigen::Vector3d::Zero(), moment_Nm = Eigen::Vector3d::Zero();
};
/// Forces of inertia under an angular acceleration about an axis through `about_m` (from E).
EndForces inertia_forces(const MassProperties& load, const Eigen::Vector3d& about_m,
                         const Eigen::Vector3d& acceleration_radps2);
/// Weight in the worst direction of pan.
EndForces weight_forces(const MassProperties& load, double lean_rad);

/// Largest stress where the arm is held, bending in both directions, pull and torsion at once
/// (von Mises). [Pa]
double root_stress_Pa(const ArmBeam& arm, const EndForces& forces);

}  // namespace gazewright
