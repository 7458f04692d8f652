#pragma once

#include "core/motion/step.h"

/// Where the energy of a simulated move goes.
namespace gazewright {

/// Up to a time of the move. What the bus gives is all the rest together:
/// electrical = copper + gear + friction + lifted + stored.
struct MoveEnergy {
  double time_s = 0;
  double current2_A2s = 0;  ///< ∫i² dt
  double electrical_J = 0;  ///< from the bus, what returns taken off
  double copper_J = 0;      ///< 1.5·R·i², the resistance at 20 °C
  double gear_J = 0;        ///< drag, viscous drag, tooth friction and what the teeth damp
  double friction_J = 0;    ///< at the output
  double lifted_J = 0;      ///< into gravity and the cables' springs
  double stored_J = 0;      ///< in what turns and in the gear's spring, at the end

  double balance_J() const {
    return electrical_J - copper_J - gear_J - friction_J - lifted_J - stored_J;
  }
};

/// By the trapezoid rule over the trace's rows, to the last one not
/// after `until_s`. @pre the trace is that of a move from rest over `move_rad`, centred as in
/// simulate_step
MoveEnergy energy_of(const AxisModel& model, const Trace& trace, double move_rad, double until_s);

}  // namespace gazewright
