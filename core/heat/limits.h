#pragma once

#include <optional>
#include <string_view>

namespace gazewright {

/// The hottest temperature that the insulation of a thermal class ("F") bears; empty for none of
/// them. [K] The classes with their sources are in resources/data/insulation.yaml.
std::optional<double> insulation_limit_K(std::string_view name);

/// What motors are taken to do where the rig does not say; sources in resources/data/duty.yaml.
struct MotorHabits {
  double winding_part;     ///< of the thermal resistance that lies between winding and housing
  double winding_time_s;   ///< time constant of the winding
  double part_into_mount;  ///< of the heat that leaves through the bracket
};
const MotorHabits& motor_habits();

}  // namespace gazewright
