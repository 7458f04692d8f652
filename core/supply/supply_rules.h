#pragma once

namespace gazewright {

/// Rules for the supply, with their sources in resources/data/supply.yaml. Shares.
struct SupplyRules {
  double most_sag;         ///< of the voltage that source and leads may take
  double chopper_of_trip;  ///< where the brake resistor cuts in, of the trip voltage
};
const SupplyRules& supply_rules();

}  // namespace gazewright
