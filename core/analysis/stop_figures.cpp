#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

constexpr const char* kImpact = "energy balance ½Jω² = ½kφ², Khurmi & Gupta ex. 3.21";
constexpr auto kStopTorque =
    joined(joined(kStall, kRotors),
           joined(kTopSpeed, std::array<InputPath, 2>{"<load>", "<axis>.stops.stiffness"}));
constexpr auto kStopEnergy = joined(joined(kRotors, kTopSpeed), std::array<InputPath, 1>{"<load>"});

Answer stop_energy(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  return stop_energy_J(moving_inertia_kgm2(c, a), top_speed_radps(c.model(a)));
}

Answer stop_torque(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  return stop_torque_Nm(moving_inertia_kgm2(c, a), top_speed_radps(c.model(a)),
                        c.rig().axis(a).stops.stiffness_Nmprad.value(),
                        stall_torque_Nm(c.model(a)));
}

const FigureRow kRows[] = {
    {{"<axis>.stop.energy", "Energy into the stop at top speed", "J", "J",
      "½·(load + rotor_reflected)·speed_top²", kImpact, kStopEnergy},
     Axes::both,
     stop_energy},
    {{"<axis>.stop.torque", "Torque on the stop at top speed", "N.m", "N.m",
      "speed_top·√(stiffness·(load + rotor_reflected)) + torque_stall", kImpact, kStopTorque},
     Axes::both,
     stop_torque},
};

}  // namespace

std::span<const FigureRow> stop_figures() { return kRows; }

}  // namespace gazewright
