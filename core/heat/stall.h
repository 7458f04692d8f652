#pragma once

#include <optional>

#include "core/heat/thermal_model.h"

/// A motor that stands still under current: each winding keeps the part of the current that the
/// rotor's place gives it, at worst one of them the whole amplitude.
namespace gazewright {

/// Two nodes in any case: where it has one, `part` of its thermal resistance lies between winding
/// and housing, and the winding follows in `winding_time_s`.
MotorThermal with_two_nodes(MotorThermal motor, double part, double winding_time_s);

/// Copper losses at 20 °C of the three windings: of the worst one and of each of the two others.
/// [W]
struct PhaseLosses {
  double worst_W = 0, other_W = 0;
};
/// R·i² in one winding and a quarter of it in the others: the rotor stands where one winding
/// carries the amplitude, twice what it has on average while turning.
PhaseLosses stalled_losses(double phase_resistance_ohm, double current_A);
/// R·i²/2 in each: turning.
PhaseLosses turning_losses(double phase_resistance_ohm, double current_A);

/// After long; `winding_K` of the worst one. Each winding has three times the thermal resistance
/// and a third of the capacity of all, and no heat goes from one to another: cautious. Empty:
/// runaway.
/// @pre two nodes
std::optional<Temperatures> steady_windings(const MotorThermal& motor, const PhaseLosses& losses);

/// Current at which the worst winding of a standing motor gets to `limit_K` in the end; 0 where the
/// air is that hot. [A] @pre two nodes
double lasting_stall_current_A(const MotorThermal& motor, double phase_resistance_ohm,
                               double limit_K);

/// When the worst winding gets to `limit_K`; empty: never. 0 where it is that hot at the beginning.
/// @pre two nodes
std::optional<double> time_to_limit_s(const MotorThermal& motor, const PhaseLosses& losses,
                                      const Temperatures& from, double limit_K);

}  // namespace gazewright
