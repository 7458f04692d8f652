#include <cmath>

#include "core/analysis/cable_words.h"
#include "core/analysis/checks.h"
#include "core/analysis/say.h"
#include "core/analysis/say_rule.h"
#include "core/analysis/wire_words.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr InputPath kCircuits[]{"<axis>.cable.count", "<axis>.cable.conductors",
                                "<axis>.cable.ring_circuits"};
constexpr InputPath kRingCurrent[]{"<axis>.cable.current", "<axis>.cable.ring_current"};
constexpr InputPath kRingBand[]{"<axis>.cable.signal_bandwidth", "<axis>.cable.ring_bandwidth"};
constexpr InputPath kWireCurrent[]{"<axis>.cable.conductor", "<axis>.cable.current"};

bool has_no_ring(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  return has_no_cable(cable) || routing_of(cable) != Routing::slip_ring;
}

Compared ring_circuits(Context& c, Axis a) {
  if (has_no_ring(c, a)) return absent();
  const Cable& cable = c.rig().axis(a).cable;
  return {circuits_needed(c, a), cable.ring_circuits.value(),
          words("wires of all cables against rings; shields count as wires")};
}

Compared ring_current(Context& c, Axis a) {
  if (has_no_ring(c, a)) return absent();
  const Cable& cable = c.rig().axis(a).cable;
  const double wire_A = cable.current_A.value(), ring_A = cable.ring_current_A.value();
  const double rings = std::ceil(wire_A / ring_A);
  return {wire_A, ring_A,
          rings > 1
              ? words("%1 rings in parallel would carry one wire's current", say(rings, "1", "1"))
              : words("one ring to a wire")};
}

Compared ring_bandwidth(Context& c, Axis a) {
  if (has_no_ring(c, a)) return absent();
  const Cable& cable = c.rig().axis(a).cable;
  return {cable.signal_bandwidth_Hz.value(), cable.ring_bandwidth_Hz.value(),
          words("what the ring passes; brush noise comes on top")};
}

Compared wire_current(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  if (has_no_cable(cable)) return absent();
  return {cable.current_A.value(), wire_rating_A(cable.conductor_m.value()),
          words("%1 circular mil per ampere, for wires in a bundle; one in free air bears about "
                "six times that",
                say(wire_rules().circular_mil_per_A, "1", "1"))};
}

Compared supply_drop(Context& c, Axis a) {
  if (has_no_cable(c.rig().axis(a).cable)) return absent();
  return {drop_share(c, a), wire_rules().most_drop,
          words("out and back %1; %2", say(drop_V(c, a), "V", "V"),
                say_rule(wire_rules().most_drop, "wires", "wire", "most_drop"))};
}

constexpr Lever kCircuitLevers[] = {{"<axis>.cable.ring_circuits", Way::up, 100},
                                    {"<axis>.cable.conductors", Way::down, 100}};
constexpr Lever kRingCurrentLevers[] = {{"<axis>.cable.ring_current", Way::up, 100},
                                        {"<axis>.cable.current", Way::down, 100}};
constexpr Lever kRingBandLevers[] = {{"<axis>.cable.ring_bandwidth", Way::up, 1000},
                                     {"<axis>.cable.signal_bandwidth", Way::down, 1000}};
constexpr Lever kWireLevers[] = {{"<axis>.cable.conductor", Way::up, 30},
                                 {"<axis>.cable.current", Way::down, 100}};
constexpr Lever kDropLevers[] = {{"<axis>.cable.conductor", Way::up, 30},
                                 {"<axis>.cable.supply_length", Way::down, 100},
                                 {"<axis>.cable.current", Way::down, 100}};

constexpr Check kWireChecks[] = {
    {"<axis>.cable.circuits", "Slip ring has rings enough", "would give every wire its ring",
     "<axis>.cable", "1", "1", kCircuits, ring_circuits, kCircuitLevers, nullptr,
     "<axis>.cable.ring_circuits"},
    {"<axis>.cable.ring_current", "Slip ring bears the current", "would spare the rings",
     "<axis>.cable", "A", "A", kRingCurrent, ring_current, kRingCurrentLevers, nullptr,
     "<axis>.cable.ring_current"},
    {"<axis>.cable.ring_bandwidth", "Slip ring passes the signal", "would let the signal through",
     "<axis>.cable", "Hz", "MHz", kRingBand, ring_bandwidth, kRingBandLevers, nullptr,
     "<axis>.cable.ring_bandwidth"},
    {"<axis>.cable.wire_current", "Wire bears its current", "would keep the wire cool",
     "<axis>.cable", "A", "A", kWireCurrent, wire_current, kWireLevers, nullptr,
     "<axis>.cable.conductor"},
    {"<axis>.cable.drop", "Voltage drop in the lead", "would keep the drop small", "<axis>.cable",
     "1", "%", kDropShare, supply_drop, kDropLevers, nullptr, "<axis>.cable.supply_length"},
};

}  // namespace

std::span<const Check> wire_checks() { return kWireChecks; }

}  // namespace gazewright
