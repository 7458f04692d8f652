#include "core/analysis/bus.h"

#include <cmath>

#include "core/analysis/say.h"
#include "core/analysis/supply_values.h"
#include "core/travel/wire.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

std::vector<double> times_s(std::size_t rows, double row_s) {
  std::vector<double> time_s(rows);
  for (std::size_t row = 0; row < rows; ++row) time_s[row] = static_cast<double>(row) * row_s;
  return time_s;
}

/// A quantity of the rig with defaults, 0 where it is missing.
double or_zero(const Quantity& quantity) { return quantity.has_value() ? quantity.value() : 0; }

WorstCase case_of(const BusMoves& moves, const Bus& bus, std::string text) {
  BusRun run = run_bus(bus, moves.power_W, moves.row_s);
  return {std::move(text), times_s(moves.power_W.size(), moves.row_s), std::move(run.source_A),
          std::move(run.voltage_V)};
}

void add_worst(BusCurve& curve, Context& c, const Bus& bus) {
  const WorstMoves& worst = worst_of(c);
  curve.sentences.push_back(
      words("Largest current, %1: %2.", say(worst_current_A(c), "A", "A"), say_worst_current(c)));
  if (!worst.tried.empty())
    curve.worst.push_back(case_of(worst.by_current(), bus, say_worst_current(c)));
  if (!c.rig().supply.bus_capacitance_F.has_value() || std::isinf(worst_voltage_V(c))) return;
  curve.sentences.push_back(
      words("Highest voltage, %1: %2.", say(worst_voltage_V(c), "V", "V"), say_worst_voltage(c)));
  if (!worst.tried.empty())
    curve.worst.push_back(case_of(worst.by_voltage(), bus, say_worst_voltage(c)));
}

void add_resistor(BusCurve& curve, Context& c) {
  const Supply& supply = c.rig().supply;
  const double returned_W = worst_of(c).most_returned_W();
  if (!has_resistor(c.rig()) || !(returned_W > 0)) return;
  const double on_V = supply.brake_voltage_V.value();
  curve.sentences.push_back(words(
      "The chopper puts %1 across the bus at %2: %3 while it is on, against at most %4 that come "
      "back.",
      say(supply.brake_resistor_ohm.value(), "ohm", "ohm"), say(on_V, "V", "V"),
      say(on_V * on_V / supply.brake_resistor_ohm.value(), "W", "W"), say(returned_W, "W", "W")));
}

void add_leads(BusCurve& curve, Context& c) {
  const Supply& supply = c.rig().supply;
  if (supply.lead_conductor_m.has_value())
    curve.sentences.push_back(
        words("Leads of %1 copper carry %2 by the cautious rule for bundles; the fuse at the "
              "source may not be larger than what they bear.",
              say(supply.lead_conductor_m.value(), "m", "mm"),
              say(wire_rating_A(supply.lead_conductor_m.value()), "A", "A")));
  if (supply.fuse_A.has_value())
    curve.sentences.push_back(
        words("The fuse of %1 has to stand the peaks and the charging of the capacitors: look at "
              "its time-current curve.",
              say(supply.fuse_A.value(), "A", "A")));
}

}  // namespace

BusCurve bus_curve(Context& c) {
  BusCurve curve;
  const SupplyRun& run = supply_run(c);
  curve.because = run.because;
  if (!run.because.empty()) return curve;
  const Supply& supply = c.rig().supply;
  curve.time_s = times_s(run.moves.power_W.size(), run.moves.row_s);
  curve.current_A = run.run.source_A;
  curve.voltage_V = run.run.voltage_V;
  curve.power_W = run.moves.power_W;
  for (const Axis axis : kAxes)
    curve.drive_A[static_cast<std::size_t>(axis)] = c.coupling()->both.of(axis).bus_A;
  curve.trip_V = or_zero(supply.trip_voltage_V);
  curve.limit_A = or_zero(supply.current_limit_A);
  curve.source_V = or_zero(supply.voltage_V);
  if (has_resistor(c.rig())) curve.chopper_V = supply.brake_voltage_V.value();
  add_worst(curve, c, bus_for_currents(c.rig()));
  add_resistor(curve, c);
  add_leads(curve, c);
  return curve;
}

}  // namespace gazewright
