#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/field_value.h"
#include "core/analysis/say.h"
#include "core/analysis/say_rule.h"
#include "core/analysis/supply_values.h"
#include "core/rig/fields.h"
#include "core/supply/supply_rules.h"
#include "core/travel/wire.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kSag = joined(kBothSteps, std::array<InputPath, 1>{"supply.source_resistance"});
constexpr auto kLeadDrop =
    joined(kBothSteps, std::array<InputPath, 3>{"supply.lead_length", "supply.lead_conductor",
                                                "surroundings.temperature"});
constexpr auto kLeadCurrent = joined(kBothSteps, std::array<InputPath, 1>{"supply.lead_conductor"});
constexpr auto kFused = joined(kBothSteps, std::array<InputPath, 1>{"supply.fuse"});
constexpr InputPath kFuseWire[]{"supply.fuse", "supply.lead_conductor"};
constexpr auto kBrakePower =
    joined(kBusVoltage, std::array<InputPath, 2>{"supply.brake_power", "supply.brake_voltage"});

/// Once for the rig.
bool once(Context& c, Axis axis) { return axis == Axis::pan && !c.is_quick(); }

Compared unknown(const std::string& because) { return {std::nullopt, std::nullopt, because}; }

/// The drives keep to the limit exactly. As the bus sags the power that they are held to is more
/// current, and a little comes from rounding.
bool is_held(Context& c, double most_A, double limit_A) {
  if (!std::isfinite(limit_A)) return false;
  const Bus bus = bus_for_currents(c.rig());
  const BusPoint full = steady_bus(bus, bus.voltage_V * limit_A);
  return most_A < std::max(limit_A, full.starved ? 0 : full.source_A) * (1 + 1e-9);
}

Compared peak_current(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  if (!run.because.empty()) return unknown(run.because);
  const double limit_A = c.rig().supply.current_limit_A.value();
  double most_A = worst_current_A(c);
  std::string because = say_worst_current(c);
  if (most_A > limit_A && is_held(c, most_A, limit_A)) {
    if (most_A > limit_A * (1 + 1e-9))
      because += words("; held to the limit, and more as the bus sags");
    most_A = limit_A;
  }
  if (most_A >= limit_A)
    because += most_A == limit_A
                   ? words("; the drives have to keep their sum within the limit")
                   : words("; what the drives take while idle and the sag come on top");
  return {most_A, limit_A, because};
}

std::optional<Remedy> more_current(Context& c, Axis) {
  Rig free = c.rig();
  free.supply.current_limit_A = si_quantity(kInfinity);
  Context trial(free, c.stop());
  if (!supply_run(trial).because.empty()) return std::nullopt;
  const char* path = "supply.current_limit";
  const FieldInfo& info = *find_info(path);
  const double value = rounded_value(info, worst_current_A(trial) * (1 + 1e-6), true, 3);
  return Remedy{say_change(path, info, value, Change::or_more), path, value};
}

/// What would hold the bus without burning: the figures' closed forms.
std::string say_alternatives(Context& c) {
  const Bus bus = bus_of(c.rig());
  const Supply& supply = c.rig().supply;
  const WorstMoves& worst = worst_of(c);
  if (worst.tried.empty() || !(supply.trip_voltage_V.value() > bus.voltage_V)) return {};
  const double chopper_V = supply.brake_voltage_V.value();
  const double returned_A = worst.most_returned_W() / chopper_V - bus.absorbs_A;
  std::string text = words(
      "; %1 on the bus",
      say(needed_capacitance_F(worst.lifted_J(), bus.voltage_V, supply.trip_voltage_V.value()), "F",
          "mF"));
  if (chopper_V > bus.voltage_V && returned_A > 0)
    text += words(", or a chopper at %1 with %2 or less,", say(chopper_V, "V", "V"),
                  say(brake_resistor_ohm(chopper_V, returned_A), "ohm", "ohm"));
  return words("%1 would take it", text);
}

Compared peak_voltage(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  if (!run.because.empty()) return unknown(run.because);
  const Supply& supply = c.rig().supply;
  const double trip_V = supply.trip_voltage_V.value();
  if (supply.brake_resistor_ohm.has_value() && std::isfinite(supply.brake_resistor_ohm.value()) &&
      !has_resistor(c.rig()))
    return {
        supply.voltage_V.value(), supply.brake_voltage_V.value(),
        words("the chopper would burn power all the time: its voltage is not above the supply's"),
        Compared::Outcome::impossible};
  const double most_V = worst_voltage_V(c);
  if (std::isinf(most_V))
    return {std::nullopt, trip_V, words("without capacitors nothing holds the bus while braking"),
            Compared::Outcome::impossible};
  return {most_V, trip_V,
          say_worst_voltage(c) + (most_V > trip_V ? say_alternatives(c) : std::string())};
}

Remedy remedy_of(const char* path, double value_si, bool up) {
  const FieldInfo& info = *find_info(path);
  const double value = rounded_value(info, value_si, up, 3);
  return {say_field(path, info, value) + (up ? words(" or more") : words(" or less")), path, value};
}

/// More capacitors while that is up to five times as much, else a resistor.
std::optional<Remedy> calmer_bus(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  const Supply& supply = c.rig().supply;
  const Bus bus = bus_of(c.rig());
  const double trip_V = supply.trip_voltage_V.value(), chopper_V = supply.brake_voltage_V.value();
  if (!run.because.empty() || !(trip_V > bus.voltage_V)) return std::nullopt;
  const bool chops = chopper_V > bus.voltage_V && chopper_V <= trip_V;
  if (!chops && std::isfinite(supply.brake_resistor_ohm.value()))
    return remedy_of("supply.brake_voltage", (bus.voltage_V + trip_V) / 2, true);
  const WorstMoves& worst = worst_of(c);
  const double lifted = std::max(worst.lifted_J(), lifted_J(run.moves.power_W, run.moves.row_s,
                                                            bus.absorbs_A * bus.voltage_V));
  const double needed_F = needed_capacitance_F(lifted, bus.voltage_V, trip_V) * (1 + 1e-4);
  const double returned_A =
      std::max(worst.most_returned_W(), run.sums.most_returned_W) / chopper_V - bus.absorbs_A;
  if (needed_F <= 5 * bus.capacitance_F || returned_A <= 0 || !chops)
    return remedy_of("supply.bus_capacitance", needed_F, true);
  return remedy_of("supply.brake_resistor", brake_resistor_ohm(chopper_V, returned_A), false);
}

Compared brake_power(Context& c, Axis) {
  const double capacity_W = c.rig().supply.brake_power_W.value();
  if (!has_resistor(c.rig())) return absent();
  const DutyUse& use = duty_use(c);
  if (!use.because.empty()) return {std::nullopt, capacity_W, use.because};
  const double on_V = std::max(supply_run(c).run.most_V, c.rig().supply.brake_voltage_V.value());
  const double on_W = on_V * on_V / c.rig().supply.brake_resistor_ohm.value();
  return {use.resistor_W, capacity_W,
          words("mean over the duty; while it is on it takes %1: whether it stands such pulses "
                "says its data sheet",
                say(on_W, "W", "W"))};
}

Compared sag(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  if (!run.because.empty()) return unknown(run.because);
  const Bus bus = bus_of(c.rig());
  if (run.run.starved)
    return {std::nullopt, supply_rules().most_sag,
            words("the source cannot give the power through its resistance: the voltage collapses"),
            Compared::Outcome::impossible};
  const double lost_V = bus.voltage_V - run.run.least_V;
  return {lost_V / bus.voltage_V, supply_rules().most_sag,
          words("%1 of %2 in source and leads at %3; the moves are computed without it; %4",
                say(lost_V, "V", "V"), say(bus.voltage_V, "V", "V"), say(run.run.most_A, "A", "A"),
                say_rule(supply_rules().most_sag, "supply", "bus", "most_sag"))};
}

Compared lead_drop(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  if (!run.because.empty()) return unknown(run.because);
  const double drop_V = run.run.most_A * lead_ohm(c.rig());
  return {drop_V / c.rig().supply.voltage_V.value(), wire_rules().most_drop,
          words("out and back %1 at %2; %3", say(drop_V, "V", "V"), say(run.run.most_A, "A", "A"),
                say_rule(wire_rules().most_drop, "wires", "wire", "most_drop"))};
}

std::string mil_rule() {
  return words("%1 circular mil per ampere", say(wire_rules().circular_mil_per_A, "1", "1"));
}

Compared lead_current(Context& c, Axis) {
  const double rating_A = wire_rating_A(c.rig().supply.lead_conductor_m.value());
  const DutyUse& use = duty_use(c);
  if (!use.because.empty()) return {std::nullopt, rating_A, use.because};
  return {use.rms_A, rating_A, words("RMS over the duty; %1, for wires in a bundle", mil_rule())};
}

std::string say_times(double factor) {
  return factor == 2 ? words("twice") : words("%1 times", say(factor, "1", "1"));
}

Compared fuse_carries(Context& c, Axis) {
  const double fuse_A = c.rig().supply.fuse_A.value();
  const DutyUse& use = duty_use(c);
  if (!use.because.empty()) return {std::nullopt, fuse_A, use.because};
  const double lasting_A = use.rms_A / wire_rules().fuse_lasting, most_A = worst_current_A(c);
  const double pulse_A = most_A / wire_rules().fuse_short;
  const std::string peaks = words(
      "peaks reach %1, %2 of its rating: compare with its time-current curve, the charging of the "
      "capacitors at switching on too",
      say(most_A, "A", "A"), say_percent(most_A / fuse_A));
  return {std::max(lasting_A, pulse_A), fuse_A,
          (lasting_A >= pulse_A
               ? words("RMS over the duty at %1 of the rating; ",
                       say_percent(wire_rules().fuse_lasting))
               : words("%1 the rating for short peaks; ", say_times(wire_rules().fuse_short))) +
              peaks};
}

Compared fuse_wire(Context& c, Axis) {
  return {c.rig().supply.fuse_A.value(), largest_fuse_A(c.rig().supply.lead_conductor_m.value()),
          words("the fuse has to open before the lead's insulation burns: %1 circular mil per "
                "ampere of it; local codes may ask for less",
                say(wire_rules().fuse_circular_mil_per_A, "1", "1"))};
}

constexpr Lever kBrakeLevers[] = {{"supply.brake_power", Way::up, 1000},
                                  {"task.duty.moves_per_minute", Way::down, 100}};
constexpr Lever kSagLevers[] = {{"supply.source_resistance", Way::down, 100},
                                {"supply.lead_conductor", Way::up, 10},
                                {"supply.lead_length", Way::down, 100}};
constexpr Lever kDropLevers[] = {{"supply.lead_conductor", Way::up, 30},
                                 {"supply.lead_length", Way::down, 100}};
constexpr Lever kWireLevers[] = {{"supply.lead_conductor", Way::up, 30}};

/// The fuse that just carries both, without a search for each trial.
std::optional<Remedy> larger_fuse(Context& c, Axis a) {
  const Compared now = fuse_carries(c, a);
  if (!now.demand) return std::nullopt;
  return remedy_of("supply.fuse", *now.demand, true);
}

/// What the wire bears, where such a fuse still carries what it has to.
std::optional<Remedy> smaller_fuse(Context& c, Axis a) {
  const double most_A = largest_fuse_A(c.rig().supply.lead_conductor_m.value());
  Remedy smaller = remedy_of("supply.fuse", most_A, false);
  if (!c.missing(kBothSteps, a).empty()) return smaller;
  const Compared carries = fuse_carries(c, a);
  if (carries.demand && *carries.demand > smaller.value_si) return std::nullopt;
  return smaller;
}

constexpr Check kSupplyChecks[] = {
    {.id = "supply.peak_current",
     .what = "Supply gives the current of the worst moves",
     .goal = "would give it",
     .part = "supply",
     .si_unit = "A",
     .unit = "A",
     .inputs = kBothSteps,
     .compare = peak_current,
     .levers = {},
     .asked_when = once,
     .offer = more_current},
    {.id = "supply.peak_voltage",
     .what = "Bus stays below the trip voltage",
     .goal = "would keep the bus below it",
     .part = "supply",
     .si_unit = "V",
     .unit = "V",
     .inputs = kTripped,
     .compare = peak_voltage,
     .levers = {},
     .asked_when = once,
     .offer = calmer_bus,
     .lend = lend_power},
    {.id = "supply.brake_power",
     .what = "Brake resistor bears its average power",
     .goal = "would spare the resistor",
     .part = "supply",
     .si_unit = "W",
     .unit = "W",
     .inputs = kBrakePower,
     .compare = brake_power,
     .levers = kBrakeLevers,
     .asked_by = "supply.brake_power",
     .asked_when = once,
     .lend = lend_power},
    {.id = "supply.sag",
     .what = "Voltage holds under load",
     .goal = "would hold the voltage",
     .part = "supply",
     .si_unit = "1",
     .unit = "%",
     .inputs = kSag,
     .compare = sag,
     .levers = kSagLevers,
     .asked_by = "supply.source_resistance",
     .asked_when = once,
     .lend = lend_power},
    {.id = "supply.lead_drop",
     .what = "Voltage drop in the supply's leads",
     .goal = "would keep the drop small",
     .part = "supply",
     .si_unit = "1",
     .unit = "%",
     .inputs = kLeadDrop,
     .compare = lead_drop,
     .levers = kDropLevers,
     .asked_by = "supply.lead_length",
     .asked_when = once,
     .lend = lend_power},
    {.id = "supply.lead_current",
     .what = "Supply's leads bear the current",
     .goal = "would keep the leads cool",
     .part = "supply",
     .si_unit = "A",
     .unit = "A",
     .inputs = kLeadCurrent,
     .compare = lead_current,
     .levers = kWireLevers,
     .asked_by = "supply.lead_conductor",
     .asked_when = once,
     .lend = lend_power},
    {.id = "supply.fuse",
     .what = "Fuse carries the current",
     .goal = "would carry it",
     .part = "supply",
     .si_unit = "A",
     .unit = "A",
     .inputs = kFused,
     .compare = fuse_carries,
     .levers = {},
     .asked_by = "supply.fuse",
     .asked_when = once,
     .offer = larger_fuse,
     .lend = lend_search},
    {.id = "supply.fuse_wire",
     .what = "Fuse protects the leads",
     .goal = "would be protected",
     .part = "supply",
     .si_unit = "A",
     .unit = "A",
     .inputs = kFuseWire,
     .compare = fuse_wire,
     .levers = kWireLevers,
     .asked_by = "supply.fuse",
     .asked_when = once,
     .offer = smaller_fuse},
};

}  // namespace

std::span<const Check> supply_checks() { return kSupplyChecks; }

}  // namespace gazewright
