#include "core/analysis/coupling.h"

#include <thread>

namespace gazewright {

Coupling::Held held_while_other_moves(const CoupledModel& model, Axis axis, PanTilt move_rad,
                                      double band_rad, const std::stop_token& stop) {
  (axis == Axis::pan ? move_rad.pan : move_rad.tilt) = 0;
  Coupling::Held held{simulate_both_until_settled(model, move_rad, band_rad, stop).trace};
  const Trace& trace = held.trace.of(axis);
  for (std::size_t row = 0; row < trace.angle_rad.size(); ++row) {
    if (std::abs(trace.angle_rad[row]) <= held.largest_rad) continue;
    held.largest_rad = std::abs(trace.angle_rad[row]);
    held.largest_at_s = trace.time_s[row];
  }
  return held;
}

Coupling coupling_of(const CoupledModel& model, PanTilt move_rad, double band_rad,
                     const std::stop_token& stop) {
  Coupling coupling;
  const auto hold = [&](Axis axis) {
    coupling.held[static_cast<std::size_t>(axis)] =
        held_while_other_moves(model, axis, move_rad, band_rad, stop);
  };
  const std::jthread aside([&] { hold(Axis::pan), hold(Axis::tilt); });
  SettledMoves moves = simulate_both_until_settled(model, move_rad, band_rad, stop);
  coupling.figures = moves.figures;
  coupling.settle_time_s = moves.settle_time_s;
  coupling.both = std::move(moves.trace);
  for (const double bus_A : coupling.both.bus_A)
    coupling.peak_bus_A = std::max(coupling.peak_bus_A, bus_A);
  return coupling;
}

}  // namespace gazewright
