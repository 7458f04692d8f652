#pragma once

#include <optional>

#include "core/rig/rig.h"

/// Running into a hard stop. Derivations, checks and what is left out:
/// resources/handbook/stops.md. Inertias and torques at the output, all of them 0 or more.
namespace gazewright {

/// The stop as a spring of two stages: `stiffness` while the bumper gives way, then
/// `hard_stiffness`.
struct StopSpring {
  double stiffness_Nmprad = 0;
  double bumper_travel_rad = kInfinity;  ///< infinity: it never bottoms out
  double hard_stiffness_Nmprad = 0;      ///< used beyond the bumper's travel only
};

/// How hard and how deep it goes. Torque is what the stop bears.
struct Impact {
  double torque_Nm = 0, press_rad = 0;
  bool bottoms_out = false;
};

/// The blow of `inertia` at `speed` with a constant torque `push` held right up to the peak:
/// ½Jω² + T·x = energy of the spring at x. Without a second stage the stop bears
/// T + √(T² + kJω²). No loss, train rigid. Source: energy balance; Hibbeler, Mechanics of
/// Materials, ch. 14 (impact).
/// @pre stiffness > 0, and hard_stiffness > 0 where the bumper's travel is finite.
Impact impact_of(const StopSpring& stop, double inertia_kgm2, double speed_radps, double push_Nm);

/// What the gearbox carries while the stop at the load bears `stop_torque`: the share that slows
/// the rotor. Load and rotor slow down together, so it is stop·J_R/J + push·J_L/J. [N·m]
double gear_torque_Nm(double stop_torque_Nm, double push_Nm, double load_kgm2, double rotor_kgm2);

/// The same with the spring of the gear between rotor and load, integrated over the blow and the
/// winding of the gear after it: the largest torque in gear and stop. The push acts at the rotor;
/// where the stop gives way again it presses with rebound² of its torque. No gap, no damping.
/// Empty where one is so much stiffer than the other that it is not worth the steps (frequencies
/// more than fifty times apart): then the rigid train or a hard stop says it.
/// @param rebound  speed after over speed before, 0 to 1.
struct SprungImpact {
  double gear_torque_Nm = 0, stop_torque_Nm = 0;
};
struct SprungTrain {
  double load_kgm2 = 0, rotor_kgm2 = 0, gear_stiffness_Nmprad = 0;
};
std::optional<SprungImpact> sprung_impact(const StopSpring& stop, const SprungTrain& train,
                                          double speed_radps, double push_Nm, double rebound);

/// Most that the gear carries at a stop that gives no way, drive dead: all that the rotor brings
/// and the load gets back is then in the gear's spring. [N·m]
double gear_torque_at_hard_stop_Nm(const SprungTrain& train, double speed_radps, double rebound);

}  // namespace gazewright
