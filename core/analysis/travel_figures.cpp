#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"

namespace gazewright {
namespace {

constexpr const char* kTravel = "geometry of tab and post; handbook: travel";
constexpr const char* kImpact = "energy balance ½Jω² = ½kφ², Khurmi & Gupta ex. 3.21";
constexpr const char* kTooWide = "tab or post is wider than twice the stop radius";
constexpr const char* kNoStops = "there are no stops: it turns without end";
constexpr auto kBraking = joined(kRigidTrain, kTopSpeed);
constexpr auto kStopTorque =
    joined(joined(kStall, kRotors),
           joined(kTopSpeed, std::array<InputPath, 2>{"<load>", "<axis>.stops.stiffness"}));
constexpr auto kHoming = joined(kStopGeometry, std::array<InputPath, 1>{"<axis>.gearbox.ratio"});
constexpr std::array<InputPath, 1> kRatio{"<axis>.gearbox.ratio"};
constexpr auto kStopEnergy = joined(joined(kRotors, kTopSpeed), std::array<InputPath, 1>{"<load>"});

/// A span as an answer: infinity means that nothing limits it.
Answer span(const std::optional<double>& rad, const char* unknown, const char* endless) {
  if (!rad) return Answer::none(unknown);
  return std::isinf(*rad) ? Answer::none(endless) : Answer(*rad);
}

Answer cable_travel(Context& c, Axis a) {
  const Cable& cable = c.rig().axis(a).cable;
  if (cable.presence == Presence::none) return Answer::none("there is no cable across this axis");
  return span(c.travel(a).cable_rad, "this routing's travel is not worked out yet; enter twist",
              "the cable does not limit the travel");
}

Answer usable_travel(Context& c, Axis a) {
  return span(c.travel(a).usable_rad, "stops or cable do not give a travel", kNoStops);
}

Answer blind_sector(Context& c, Axis a) {
  const auto& usable = c.travel(a).usable_rad;
  if (!usable) return usable_travel(c, a);
  return std::max(0.0, 2 * M_PI - *usable);
}

double moving_inertia_kgm2(Context& c, Axis a) {
  return c.model(a).load.inertia_kgm2 + c.model(a).reflected_inertia_kgm2();
}

bool has_no_stops(Context& c, Axis a) { return c.rig().axis(a).stops.presence == Presence::none; }

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

bool reads_output(Context& c, Axis a) { return c.model(a).control.encoder_at_output; }

Answer homing_spacing(Context& c, Axis a) {
  return homing_spacing_rad(reads_output(c, a) ? 1 : c.model(a).gear.ratio);
}

Answer candidates(Context& c, Axis a) {
  const auto& stops = c.travel(a).stops_rad;
  if (!stops) return Answer::none(kTooWide);
  if (std::isinf(*stops)) return Answer::none(kNoStops);
  return homing_candidates(*stops, reads_output(c, a) ? 1 : c.model(a).gear.ratio);
}

const FigureRow kRows[] = {
    {{"<axis>.travel.stops", "Travel between the hard stops", "rad", "deg",
      "2π − 2·asin(tab/2r) − 2·asin(post/2r)", kTravel, kStopGeometry},
     Axes::both,
     [](Context& c, Axis a) { return span(c.travel(a).stops_rad, kTooWide, kNoStops); }},
    {{"<axis>.travel.cable", "Travel the cable allows", "rad", "deg",
      "twist: 2·twist_rating·free_length", "rating by the cable's maker; handbook: travel", kTwist},
     Axes::both,
     cable_travel},
    {{"<axis>.travel.soft", "Travel between the soft limits", "rad", "deg", "stops − 2·soft_inset",
      kTravel, kSoft},
     Axes::both,
     [](Context& c, Axis a) { return span(c.travel(a).soft_rad, kTooWide, kNoStops); }},
    {{"<axis>.travel.usable", "Usable travel", "rad", "deg", "the part that all limits leave",
      kTravel, kUsable},
     Axes::both,
     usable_travel},
    {{"<axis>.travel.blind", "Blind sector", "rad", "deg", "2π − usable", kTravel, kUsable},
     Axes::both,
     blind_sector},
    {{"<axis>.travel.braking_angle", "Angle to stop from top speed", "rad", "deg",
      "rigid train, full braking, gravity at rest pushing on", "handbook: motion", kBraking},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {braking_angle_rad(c.model(a), top_speed_radps(c.model(a))),
               "cannot brake: gravity is more than braking torque and friction"};
     }},
    {{"<axis>.stop.energy", "Energy into the stop at top speed", "J", "J",
      "½·(load + rotor_reflected)·speed_top²", kImpact, kStopEnergy},
     Axes::both,
     stop_energy},
    {{"<axis>.stop.torque", "Torque on the stop at top speed", "N.m", "N.m",
      "speed_top·√(stiffness·(load + rotor_reflected)) + torque_stall", kImpact, kStopTorque},
     Axes::both,
     stop_torque},
    {{"<axis>.homing.spacing", "Angle between equal encoder readings", "rad", "deg",
      "2π/N, encoder at the motor; 2π at the output", "geometry; handbook: travel", kRatio},
     Axes::both,
     homing_spacing},
    {{"<axis>.homing.candidates", "Output angles that fit one reading", "1", "1",
      "⌈travel between stops / spacing⌉", "geometry; handbook: travel", kHoming},
     Axes::both,
     candidates},
};

}  // namespace

std::span<const FigureRow> travel_figures() { return kRows; }

}  // namespace gazewright
