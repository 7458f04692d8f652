#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/supply_power.h"
#include "core/supply/bus.h"
#include "core/supply/worst_moves.h"

/// What figures, checks and curves of the supply share.
namespace gazewright {

inline constexpr auto kBusVoltage =
    joined(kBothSteps, std::array<InputPath, 1>{"supply.bus_capacitance"});
inline constexpr auto kTripped =
    joined(kBusVoltage, std::array<InputPath, 1>{"supply.trip_voltage"});

/// Source and bus of a rig with defaults. A resistance that is not entered is left out; a resistor
/// whose chopper would be on at the supply's own voltage too.
Bus bus_of(const Rig& rig);
/// The same; where capacitors are not known the source swallows everything, so that currents are.
Bus bus_for_currents(const Rig& rig);
bool has_resistor(const Rig& rig);  ///< one that a chopper can put across the bus
double lead_ohm(const Rig& rig);    ///< out and back, warm; 0 where length or copper is missing

/// The task's moves of both axes, begun together.
struct SupplyRun {
  std::string because;  ///< why there is none; else empty
  MovesPower moves{};
  PowerSums sums{};
  BusRun run{};
};
const SupplyRun& supply_run(Context& context);

/// The rig's duty, or the task's moves at their rate.
struct DutyUse {
  std::string because;  ///< why there is none; else empty
  double time_s = 0;    ///< of the whole duty; may be infinite
  double mean_W = 0, mean_A = 0, rms_A = 0;
  double returned_W = 0;  ///< mean
  double resistor_W = 0;  ///< mean
};
const DutyUse& duty_use(Context& context);

/// Empty where it is left out or a loop runs away.
const WorstMoves& worst_of(Context& context);
/// Hands what was found to a context whose rig has the same bus, and lend_power().
void lend_search(Context& from, Context& to, std::string_view path);
/// The larger of the task's moves and of the worst ones found. @pre supply_run has one
double worst_current_A(Context& context);
double worst_voltage_V(Context& context);

/// "pan goes from -80° to 80° and tilt from 0° to 30°, begun 42 ms later"
std::string say_moves(const BusMoves& moves, Context& context);
std::string say_worst_current(Context& context);  ///< with time and pose
std::string say_worst_voltage(Context& context);

}  // namespace gazewright
