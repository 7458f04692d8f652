#pragma once

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/travel/wire.h"

/// What the figures and the checks of wires share.
namespace gazewright {

inline constexpr std::array<InputPath, 4> kDrop{"<axis>.cable.conductor", "<axis>.cable.current",
                                                "<axis>.cable.supply_length",
                                                "surroundings.temperature"};
inline constexpr auto kDropShare = joined(kDrop, std::array<InputPath, 1>{"supply.voltage"});

inline double circuits_needed(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  return cable.count.value() * cable.conductors.value();
}
inline double warm_ohmpm(Context& c, Axis a) {
  return wire_resistance_ohmpm(c.rig().axis(a).cable.conductor_m.value(),
                               c.rig().surroundings.temperature_K.value());
}
inline double drop_V(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  return wire_drop_V(cable.current_A.value(), warm_ohmpm(c, a), cable.supply_length_m.value());
}
inline double drop_share(Context& c, Axis a) {
  return drop_V(c, a) / c.rig().supply.voltage_V.value();
}

}  // namespace gazewright
