#pragma once

#include "core/motion/step_dynamics.h"

/// One supply behind two drives.
namespace gazewright {

/// Torque of both motors within their own envelopes and with what the supply gives both together.
/// Each envelope is that of section 5 less the supply's limit. Where what both then want exceeds
/// it, each drive that draws gets the same part of the power it wants, and what a braking one
/// returns is there to be drawn. So the sum of both bus currents never exceeds the limit.
/// Source of the rule: a choice of this program (common practice has no rule); handbook: motion.
class SharedTorque {
 public:
  SharedTorque(const AxisModel& pan, const AxisModel& tilt);

  /// The torques nearest to the wanted ones that may act. Most calls end at the first check.
  BothAxes at(BothAxes wanted_Nm, BothAxes motor_radps) const {
    const BothAxes current_A = magnitude(wanted_Nm) * per_torque_constant_;
    const BothAxes in_phase_V =
        resistance_ohm_ * current_A + emf_Vsprad_ * flipped(motor_radps, wanted_Nm);
    const BothAxes across_V = reactance_ohmsprad_ * motor_radps * current_A;
    const MaskOf<BothAxes> free =
        (current_A <= most_A_) & (in_phase_V * in_phase_V + across_V * across_V <= phase_V2_);
    const bool fits = sum_of(current_A * in_phase_V) <= supply_W_;
    return bits_of(free) == 3 && fits ? wanted_Nm : limited_Nm(wanted_Nm, motor_radps);
  }

  /// Above zero for each drive where the wanted torques may act, below where they are limited.
  BothAxes room(BothAxes wanted_Nm, BothAxes motor_radps) const {
    const BothAxes current_A = magnitude(wanted_Nm) * per_torque_constant_;
    const BothAxes in_phase_V =
        resistance_ohm_ * current_A + emf_Vsprad_ * flipped(motor_radps, wanted_Nm);
    const BothAxes across_V = reactance_ohmsprad_ * motor_radps * current_A;
    const BothAxes voltage = 1 - (in_phase_V * in_phase_V + across_V * across_V) / phase_V2_;
    const double power = 1 - sum_of(current_A * in_phase_V) * (1 / supply_W_);
    return least_of(least_of(1 - current_A / most_A_, voltage), all<BothAxes>(power));
  }

  /// Part of the wanted power that the drives get; 1: the supply has enough.
  double part(BothAxes wanted_Nm, BothAxes motor_radps) const;

 private:
  /// Power from the bus over 1.5. [W]
  BothAxes drawn_W(BothAxes torque_Nm, BothAxes motor_radps) const;
  BothAxes within_envelopes_Nm(BothAxes wanted_Nm, BothAxes motor_radps) const;
  double part_of(BothAxes drawn_W) const;
  BothAxes limited_Nm(BothAxes wanted_Nm, BothAxes motor_radps) const;

  ActingTorque pan_, tilt_;
  BothAxes torque_constant_NmpA_, per_torque_constant_, resistance_ohm_, emf_Vsprad_,
      reactance_ohmsprad_, phase_V2_, most_A_;
  double supply_W_;  ///< over 1.5
};

}  // namespace gazewright
