#pragma once

#include <optional>
#include <span>
#include <vector>

#include "core/heat/flow.h"

/// A motor's winding and housing as two heat capacities, with copper's growing resistance fed back.
/// Linear, so everything is in closed form; derivation and limits in resources/handbook/heat.md.
namespace gazewright {

struct MotorThermal {
  double to_housing_KpW = 0;  ///< winding to housing; 0: winding and housing are one
  double to_air_KpW = 0;      ///< housing to air, or all of it where they are one
  double winding_time_s = 0;  ///< of the winding, the housing held; unused where they are one
  double housing_time_s = 0;  ///< of the housing
  double air_K = 0;
  double copper_perK = 0;  ///< growth of the copper loss, of that at 20 °C

  bool has_two_nodes() const { return to_housing_KpW > 0; }
  double all_KpW() const { return to_housing_KpW + to_air_KpW; }
};

/// Losses: in the copper at 20 °C, and in the gear, which goes into the housing. [W]
struct Losses {
  double copper20_W = 0, gear_W = 0;
};
/// A stretch of a duty with its mean losses.
struct DutyPiece {
  double time_s = 0;
  Losses losses;
};
struct Temperatures {
  double winding_K = 0, housing_K = 0;
};

/// After the losses have lasted for long; empty: thermal runaway, the copper loss outgrows the
/// cooling.
std::optional<Temperatures> steady_temperatures(const MotorThermal& motor, const Losses& losses);
/// Copper loss at 20 °C that brings the winding to `limit_K` in the end. 0 or less where the gear's
/// loss alone does. [W]
double lasting_copper20_W(const MotorThermal& motor, double limit_K, double gear_W = 0);
/// Copper loss at 20 °C from which on there is no steady temperature. [W]
double runaway_copper20_W(const MotorThermal& motor);

/// Winding and housing over 20 °C.
LinearRate<2> thermal_rate(const MotorThermal& motor, const Losses& losses);

/// A duty repeated without end, once it repeats itself.
struct DutyTemperatures {
  Temperatures hottest;  ///< each at its own time
  Temperatures start;    ///< at the beginning of the first piece
};
/// Empty: thermal runaway (the largest multiplier of a cycle is not below 1).
/// @pre the pieces last longer than no time
std::optional<DutyTemperatures> steady_duty(const MotorThermal& motor,
                                            std::span<const DutyPiece> pieces);

/// From a beginning on, the duty repeated; `until_s` long, about `points` of them. Where a cycle is
/// shorter than the time between points, the hottest of it. Ends early above `most_K`.
struct TemperatureRun {
  std::vector<double> time_s, winding_K, housing_K;
};
TemperatureRun run_duty(const MotorThermal& motor, std::span<const DutyPiece> pieces,
                        const Temperatures& from, double until_s, int points, double most_K);

}  // namespace gazewright
