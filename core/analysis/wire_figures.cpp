#include "core/analysis/cable_words.h"
#include "core/analysis/figures.h"
#include "core/analysis/wire_words.h"
#include "core/travel/wire.h"

namespace gazewright {
namespace {

constexpr const char* kCopper = "annealed copper, 100 % IACS, IEC 60028; handbook: cables";
constexpr const char* kOhm = "Ohm's law; handbook: cables";
constexpr InputPath kConductor[]{"<axis>.cable.conductor"};
constexpr InputPath kWarm[]{"<axis>.cable.conductor", "surroundings.temperature"};
constexpr InputPath kCircuits[]{"<axis>.cable.count", "<axis>.cable.conductors"};

/// Nothing to say where no cable crosses the axis.
template <double compute(Context&, Axis)>
Answer of_cable(Context& c, Axis a) {
  if (has_no_cable(c.rig().axis(a).cable)) return Answer::aside(kNoCable);
  return compute(c, a);
}

double cold_ohmpm(Context& c, Axis a) {
  return wire_resistance_ohmpm(c.rig().axis(a).cable.conductor_m.value());
}
double rating_A(Context& c, Axis a) {
  return wire_rating_A(c.rig().axis(a).cable.conductor_m.value());
}

const FigureRow kWireFigures[] = {
    {{"<axis>.cable.circuits", "Wires across the axis", "1", "1", "count·conductors",
      "what a slip ring needs in circuits; handbook: cables", kCircuits},
     Axes::both,
     of_cable<circuits_needed>,
     true},
    {{"<axis>.cable.wire_resistance", "Wire resistance at 20 °C", "ohm/m", "mohm/m",
      "ρ/A, ρ = 1/58 Ω·mm²/m", kCopper, kConductor},
     Axes::both,
     of_cable<cold_ohmpm>,
     true},
    {{"<axis>.cable.wire_resistance_warm", "Wire resistance in its surroundings", "ohm/m", "mohm/m",
      "ρ·(1 + 0.00393·(T − 20 °C))/A", kCopper, kWarm},
     Axes::both,
     of_cable<warm_ohmpm>,
     true},
    {{"<axis>.cable.wire_rating", "Cautious current of one wire", "A", "A",
      "700 circular mil per ampere; as shipped, data file wires",
      "Handbook of Electronic Tables and Formulas", kConductor},
     Axes::both,
     of_cable<rating_A>,
     true},
    {{"<axis>.cable.drop", "Voltage drop, out and back", "V", "V",
      "2·current·R'·supply_length, R' in its surroundings", kOhm, kDrop},
     Axes::both,
     of_cable<drop_V>,
     true},
    {{"<axis>.cable.drop_share", "Voltage drop over supply voltage", "1", "%", "drop / voltage",
      kOhm, kDropShare},
     Axes::both,
     of_cable<drop_share>,
     true},
};

}  // namespace

std::span<const FigureRow> wire_figures() { return kWireFigures; }

}  // namespace gazewright
