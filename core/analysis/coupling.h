#pragma once

#include "core/motion/coupled.h"

namespace gazewright {

/// What both axes do to each other: both task moves at once, and each move while the other axis
/// holds its place.
struct Coupling {
  CoupledTrace both;                    ///< empty where inputs are missing, and in a quick analysis
  std::array<StepFigures, 2> figures;   ///< of both, by Axis
  std::optional<double> settle_time_s;  ///< of both; empty: not seen
  double peak_bus_A = 0;
  struct Held {
    CoupledTrace trace;       ///< this axis holds, the other one makes its task move
    double largest_rad = 0;   ///< largest angle of this axis off its place
    double largest_at_s = 0;  ///< when
  };
  std::array<Held, 2> held;  ///< by the Axis that holds

  const Held& holding(Axis axis) const { return held[static_cast<std::size_t>(axis)]; }
};

/// Simulates the three. A few milliseconds; stopped early, what is there is returned.
/// @param band_rad  settle band
Coupling coupling_of(const CoupledModel& model, PanTilt move_rad, double band_rad,
                     const std::stop_token& stop = {});
/// One of them: `axis` holds while the other moves.
Coupling::Held held_while_other_moves(const CoupledModel& model, Axis axis, PanTilt move_rad,
                                      double band_rad, const std::stop_token& stop = {});

}  // namespace gazewright
