#pragma once

#include <limits>
#include <span>
#include <vector>

/// The direct-current bus between one source and the drives: what it does while they draw and
/// return power. Formulas and limits: resources/handbook/supply.md.
namespace gazewright {

/// A source of fixed voltage behind a resistance, capacitors, and a chopper that puts a resistor
/// across the bus.
struct Bus {
  double voltage_V = 0;       ///< of the source without load
  double resistance_ohm = 0;  ///< of source and leads together
  double capacitance_F = 0;
  double absorbs_A = 0;  ///< that may flow back into the source
  double chopper_V = std::numeric_limits<double>::infinity();     ///< above voltage_V
  double resistor_ohm = std::numeric_limits<double>::infinity();  ///< infinity: none
};

/// The bus at an instant. The source's current is negative where it takes power back.
struct BusPoint {
  double voltage_V = 0, source_A = 0, resistor_W = 0;
  bool starved = false;  ///< the source cannot give the power through its resistance
};
/// As it stands under a lasting power. @param power_W  that the drives take; negative: return
BusPoint steady_bus(const Bus& bus, double power_W);

/// A value at each row of the power. A voltage is infinite where power is returned and neither
/// capacitors nor source nor resistor take it.
struct BusRun {
  std::vector<double> voltage_V, source_A, resistor_W;
  double least_V = 0, most_V = 0, most_A = 0;
  double most_resistor_W = 0;  ///< while it is on: V²/R
  double resistor_J = 0;
  bool starved = false;

  double source_mean_A() const;
  double source_rms_A() const;
};
/// C·V·dV/dt = V·I_source − P − P_resistor from the steady state of the first row, power straight
/// between rows. The source's current is (V₀ − V)/R, at least −absorbs; the chopper holds its
/// voltage as long as V²/R is enough. Implicit Euler, `substeps` a row, each in closed form; order
/// 1 in the step.
BusRun run_bus(const Bus& bus, std::span<const double> power_W, double row_s, int substeps = 4);

/// What a power over time, straight between rows, comes to.
struct PowerSums {
  double most_W = 0, most_returned_W = 0;  ///< both as magnitudes, 0 where there is none
  double drawn_J = 0, returned_J = 0;      ///< of its positive and its negative part
};
PowerSums power_sums(std::span<const double> power_W, double row_s);
/// ∫ of a value straight between rows, over the first `until_s`; beyond the last row it stays.
double integral(std::span<const double> value, double row_s, double until_s);

/// Most energy above the source's voltage that the capacitors hold at once: returned power less
/// what is absorbed fills them, what is drawn comes out of them first. Source and leads without
/// resistance, no resistor. [J]
double lifted_J(std::span<const double> power_W, double row_s, double absorbed_W);

/// ½CV². [J] Source: J. O. Bird, Electrical Circuit Theory and Technology, ch. 6.
double capacitor_energy_J(double capacitance_F, double voltage_V);
/// √(V² + 2E/C): where energy put into the capacitors lifts the bus to. [V]
double lifted_voltage_V(double voltage_V, double energy_J, double capacitance_F);
/// 2E/(V₂² − V₁²): what takes that energy between both voltages. [F] @pre upper above lower
double needed_capacitance_F(double energy_J, double lower_V, double upper_V);
/// V/I − R: the resistor that lets this current flow at this voltage, with what lies in series.
/// Source: G. K. Dubey, Fundamentals of Electrical Drives, ex. 5.9 (dynamic braking).
double brake_resistor_ohm(double voltage_V, double current_A, double in_series_ohm = 0);

}  // namespace gazewright
