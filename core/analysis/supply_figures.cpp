#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/left_out.h"
#include "core/analysis/supply_values.h"
#include "core/travel/wire.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kSimulated = "simulation of both axes at once; handbook: supply";
constexpr const char* kSearched = "search with simulated moves; handbook: supply";
constexpr const char* kBalance = "energy balance of the bus; handbook: supply";
constexpr const char* kOhm = "Ohm's law; handbook: supply";
constexpr const char* kNoResistor = "there is no brake resistor";

constexpr auto kSag = joined(kBothSteps, std::array<InputPath, 1>{"supply.source_resistance"});
constexpr std::array<InputPath, 1> kConductor{"supply.lead_conductor"};
constexpr std::array<InputPath, 3> kLeads{"supply.lead_length", "supply.lead_conductor",
                                          "surroundings.temperature"};
constexpr auto kLeadDrop = joined(kBothSteps, kLeads);
constexpr auto kFused = joined(kBothSteps, std::array<InputPath, 1>{"supply.fuse"});

/// Why a simulation has nothing to say.
Answer why(const Context& c, const std::string& because) {
  return c.is_quick() ? left_out_of_drag() : Answer::none(because);
}

/// Of the task's moves.
template <double (*of)(Context&, const SupplyRun&)>
Answer of_run(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  return run.because.empty() ? Answer(of(c, run)) : why(c, run.because);
}
template <double (*of)(Context&, const DutyUse&)>
Answer of_duty(Context& c, Axis) {
  const DutyUse& use = duty_use(c);
  return use.because.empty() ? Answer(of(c, use)) : why(c, use.because);
}
template <double (*of)(Context&, const WorstMoves&)>
Answer of_worst(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  if (!run.because.empty()) return why(c, run.because);
  const WorstMoves& worst = worst_of(c);
  return worst.tried.empty() ? Answer::none(words("no moves were found")) : Answer(of(c, worst));
}

Answer voltage_or_why(double voltage_V) {
  if (std::isfinite(voltage_V)) return voltage_V;
  return Answer::none(words("without capacitors nothing holds the bus while braking"));
}

Answer peak_voltage(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  return run.because.empty() ? voltage_or_why(run.run.most_V) : why(c, run.because);
}
Answer worst_voltage(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  return run.because.empty() ? voltage_or_why(worst_voltage_V(c)) : why(c, run.because);
}

double wire_sag_V(Context& c, const SupplyRun& run) { return run.run.most_A * lead_ohm(c.rig()); }

/// Nothing to say of a resistor that is not there.
template <Answer (*compute)(Context&, Axis)>
Answer of_resistor(Context& c, Axis a) {
  return has_resistor(c.rig()) ? compute(c, a) : Answer::aside(kNoResistor);
}

Answer most_resistor(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  if (!run.because.empty()) return why(c, run.because);
  const Bus bus = bus_of(c.rig());
  const double chopper_V = c.rig().supply.brake_voltage_V.value();
  if (!(chopper_V > bus.voltage_V))
    return Answer::none(words("the chopper's voltage is not above the supply's"));
  const double returned_A =
      std::max(run.sums.most_returned_W, worst_of(c).most_returned_W()) / chopper_V - bus.absorbs_A;
  if (returned_A <= 0)
    return Answer::none(words("nothing is returned that the source does not absorb"));
  return brake_resistor_ohm(chopper_V, returned_A);
}

Answer needed_capacitance(Context& c, Axis) {
  const SupplyRun& run = supply_run(c);
  if (!run.because.empty()) return why(c, run.because);
  const Bus bus = bus_of(c.rig());
  const double trip_V = c.rig().supply.trip_voltage_V.value();
  if (!(trip_V > bus.voltage_V))
    return Answer::none(words("the trip voltage is not above the supply's"));
  const double task_J = lifted_J(run.moves.power_W, run.moves.row_s, bus.absorbs_A * bus.voltage_V);
  return needed_capacitance_F(std::max(task_J, worst_of(c).lifted_J()), bus.voltage_V, trip_V);
}

constexpr std::array<InputPath, 2> kChopper{"supply.brake_voltage", "supply.voltage"};
constexpr auto kResistor = joined(kBothSteps, kChopper);
constexpr auto kNeeded = joined(kBothSteps, std::array<InputPath, 1>{"supply.trip_voltage"});

const FigureRow kSupplyFigures[] = {
    {{"supply.peak_power", "Peak power from the supply, task's moves", "W", "W",
      "largest Σ 1.5·i·(R·i + e) + idle power, both axes begun together", kSimulated, kBothSteps},
     Axes::rig,
     of_run<[](Context&, const SupplyRun& run) { return run.sums.most_W; }>},
    {{"supply.peak_current", "Peak current from the supply, task's moves", "A", "A",
      "largest current of the source while both axes move", kSimulated, kBothSteps},
     Axes::rig,
     of_run<[](Context&, const SupplyRun& run) { return run.run.most_A; }>},
    {{"supply.average_power", "Average power over the duty", "W", "W",
      "mean of the power into the drives, moves and rests", kSimulated, kBothSteps},
     Axes::rig,
     of_duty<[](Context&, const DutyUse& use) { return use.mean_W; }>},
    {{"supply.average_current", "Average current over the duty", "A", "A",
      "mean of the source's current, moves and rests", kSimulated, kBothSteps},
     Axes::rig,
     of_duty<[](Context&, const DutyUse& use) { return use.mean_A; }>},
    {{"supply.rms_current", "RMS current over the duty", "A", "A",
      "root mean square of the source's current, moves and rests", kSimulated, kBothSteps},
     Axes::rig,
     of_duty<[](Context&, const DutyUse& use) { return use.rms_A; }>},
    {{"supply.returned_energy", "Energy returned while braking, task's moves", "J", "J",
      "∫ of the power's negative part, after all losses, both axes together", kSimulated,
      kBothSteps},
     Axes::rig,
     of_run<[](Context&, const SupplyRun& run) { return run.sums.returned_J; }>},
    {{"supply.returned_power", "Peak power returned while braking, task's moves", "W", "W",
      "largest power that both drives together give back", kSimulated, kBothSteps},
     Axes::rig,
     of_run<[](Context&, const SupplyRun& run) { return run.sums.most_returned_W; }>},
    {{"supply.peak_voltage", "Peak voltage of the bus, task's moves", "V", "V",
      "½·C·(V₂² − V₁²) = energy returned and neither absorbed nor burnt; trip left out", kBalance,
      kBusVoltage},
     Axes::rig,
     peak_voltage},
    {{"supply.stored_energy", "Energy in the capacitors at the peak voltage", "J", "J", "½·C·V²",
      kBalance, kBusVoltage},
     Axes::rig,
     of_run<[](Context& c, const SupplyRun& run) {
       return capacitor_energy_J(c.rig().supply.bus_capacitance_F.value(), run.run.most_V);
     }>},
    {{"supply.sag", "Voltage lost in source and leads", "V", "V",
      "voltage − least voltage of the bus in the task's moves", kOhm, kSag},
     Axes::rig,
     of_run<[](Context& c, const SupplyRun& run) {
       return c.rig().supply.voltage_V.value() - run.run.least_V;
     }>,
     true},
    {{"supply.lead_drop", "Voltage drop of the leads, out and back", "V", "V",
      "2·peak current·R'·length, R' in its surroundings", kOhm, kLeadDrop},
     Axes::rig,
     of_run<wire_sag_V>,
     true},
    {{"supply.lead_rating", "Cautious current of a lead", "A", "A",
      "700 circular mil per ampere; as shipped, data file wires",
      "Handbook of Electronic Tables and Formulas", kConductor},
     Axes::rig,
     [](Context& c, Axis) -> Answer {
       return wire_rating_A(c.rig().supply.lead_conductor_m.value());
     },
     true},
    {{"supply.fuse_load", "RMS current over the fuse's rating", "1", "%", "rms_current / fuse",
      kSimulated, kFused},
     Axes::rig,
     of_duty<[](Context& c, const DutyUse& use) {
       return use.rms_A / c.rig().supply.fuse_A.value();
     }>,
     true},
    {{"supply.fuse_peak", "Largest current over the fuse's rating", "1", "%",
      "worst_current / fuse; for how long it stands that says its curve", kSearched, kFused},
     Axes::rig,
     of_worst<[](Context& c, const WorstMoves&) {
       return worst_current_A(c) / c.rig().supply.fuse_A.value();
     }>,
     true},
    {{"supply.worst_current", "Largest current found", "A", "A",
      "over sizes, speeds, poses and shifts of both axes' moves", kSearched, kBothSteps},
     Axes::rig,
     of_worst<[](Context& c, const WorstMoves&) { return worst_current_A(c); }>},
    {{"supply.worst_voltage", "Highest bus voltage found", "V", "V",
      "over sizes, speeds, poses and shifts of both axes' moves", kSearched, kBusVoltage},
     Axes::rig,
     worst_voltage},
    {{"supply.worst_returned_power", "Largest power returned, as found", "W", "W",
      "over sizes, speeds, poses and shifts of both axes' moves", kSearched, kBothSteps},
     Axes::rig,
     of_worst<[](Context& c, const WorstMoves& worst) {
       return std::max(worst.most_returned_W(), supply_run(c).sums.most_returned_W);
     }>},
    {{"supply.capacitance_needed", "Capacitance that would do without a resistor", "F", "mF",
      "2E/(trip² − voltage²), E the most energy in the capacitors at once, worst moves", kBalance,
      kNeeded},
     Axes::rig,
     needed_capacitance},
    {{"supply.brake_resistor_most", "Largest brake resistor that would do", "ohm", "ohm",
      "V/I at the chopper's voltage, I = returned power/V − absorbed, worst moves",
      "Dubey, Fundamentals of Electrical Drives, ex. 5.9; handbook: supply", kResistor},
     Axes::rig,
     most_resistor},
    {{"supply.brake_peak_power", "Power of the brake resistor while it is on", "W", "W",
      "V²/R at the highest voltage of the worst moves, at least the chopper's", kBalance,
      kResistor},
     Axes::rig,
     of_resistor<[](Context& c, Axis) -> Answer {
       const Supply& supply = c.rig().supply;
       const double most_V = std::max(worst_voltage_V(c), supply.brake_voltage_V.value());
       return most_V * most_V / supply.brake_resistor_ohm.value();
     }>,
     true},
    {{"supply.brake_energy", "Energy into the brake resistor, task's moves", "J", "J",
      "∫ of its power", kBalance, kBusVoltage},
     Axes::rig,
     of_resistor<of_run<[](Context&, const SupplyRun& run) { return run.run.resistor_J; }>>,
     true},
    {{"supply.brake_average_power", "Average power of the brake resistor", "W", "W",
      "mean over the duty", kBalance, kBusVoltage},
     Axes::rig,
     of_resistor<of_duty<[](Context&, const DutyUse& use) { return use.resistor_W; }>>,
     true},
    {{"supply.returned_average", "Average power returned over the duty", "W", "W",
      "mean of what the drives give back: the most that a resistor would have to burn", kSimulated,
      kBothSteps},
     Axes::rig,
     of_duty<[](Context&, const DutyUse& use) { return use.returned_W; }>},
};

}  // namespace

std::span<const FigureRow> supply_figures() { return kSupplyFigures; }

}  // namespace gazewright
