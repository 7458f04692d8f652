#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/stop_case.h"
#include "core/analysis/travel_words.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kImpact = "energy balance ½Jω² = ½kφ², Khurmi & Gupta ex. 3.21";
constexpr const char* kPushed = "energy balance ½Jω² + Tφ = energy of the spring; handbook: stops";
constexpr const char* kLost = "rigid train of design section 5, integrated; handbook: stops";
constexpr const char* kShares = "kinetic energy; handbook: stops";
constexpr const char* kStrength = "bending and shear of a short cantilever; handbook: stops";
constexpr auto kEnergy = joined(joined(kRotors, kTopSpeed), std::array<InputPath, 1>{"<load>"});
constexpr auto kSoftSpeed = joined(kBraking, kSoft);
constexpr auto kSoftBlow = joined(kSoftSpeed, std::array<InputPath, 1>{"<axis>.stops.stiffness"});
constexpr auto kTopOnly = joined(kTopSpeed, std::array<InputPath, 1>{"<axis>.stops.rebound"});
constexpr auto kRebound = joined(kEnergy, std::array<InputPath, 1>{"<axis>.stops.rebound"});
constexpr auto kHardBlow = joined(kRebound, std::array<InputPath, 1>{"<axis>.gearbox.stiffness"});

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

Answer runaway_speed(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  return {runaway_radps(c, a), why_no_travel(c, a)};
}

Answer runaway_energy(Context& c, Axis a) {
  const Answer speed = runaway_speed(c, a);
  if (!speed.value) return speed;
  return stop_energy_J(moving_inertia_kgm2(c, a), *speed.value);
}

enum class Part { load, rotor };
enum class At { top_speed, past_soft_limit };
enum class MotorThen { pushing, dead };

double speed_at(Context& c, Axis a, At at) {
  return at == At::top_speed ? top_speed_radps(c.model(a)) : c.speed_at_stop_radps(a);
}

template <Part part, At at>
Answer energy_share(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  const AxisModel& model = c.model(a);
  return stop_energy_J(
      part == Part::load ? model.load.inertia_kgm2 : model.reflected_inertia_kgm2(),
      speed_at(c, a, at));
}

/// Runs `ask` where there is a stop whose spring is known.
template <class Ask>
Answer of_blow(Context& c, Axis a, Ask ask) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  if (std::string missing = missing_of_bumper(c, a); !missing.empty())
    return Answer::none(std::move(missing));
  return ask(stop_case(c, a));
}

template <At at, MotorThen motor>
Answer blow_torque(Context& c, Axis a) {
  return of_blow(c, a, [&](const StopCase& stop) -> Answer {
    const double speed_radps = speed_at(c, a, at);
    if (speed_radps <= 0) return 0;  // it stands before the stop
    return stop.blow(speed_radps, motor == MotorThen::pushing ? stop.push_Nm : 0).torque_Nm;
  });
}

Answer press(Context& c, Axis a) {
  return of_blow(c, a, [](const StopCase& stop) -> Answer { return stop.worst().press_rad; });
}

Answer bumper_needed(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  if (!has_bumper(c, a))
    return Answer::aside(words("its stop has no bumper that could bottom out"));
  StopCase stop = stop_case(c, a);
  stop.spring.bumper_travel_rad = kInfinity;
  return stop.worst().press_rad;
}

Answer gear_torque(Context& c, Axis a) {
  return of_blow(c, a, [](const StopCase& stop) -> Answer {
    return gear_torque_Nm(stop.worst().torque_Nm, stop.push_Nm, stop.load_kgm2, stop.rotor_kgm2);
  });
}

Answer gear_torque_sprung(Context& c, Axis a) {
  return of_blow(c, a, [&](const StopCase&) -> Answer {
    const auto& peak = c.sprung_blow(a);
    if (!peak)
      return Answer::none(words("stop and gear are of too different stiffness: take the others"));
    return peak->gear_torque_Nm;
  });
}

Answer gear_torque_hard(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  const StopCase stop = stop_case(c, a);
  const SprungTrain train{stop.load_kgm2, stop.rotor_kgm2, c.model(a).gear.stiffness_Nmprad};
  return gear_torque_at_hard_stop_Nm(train, stop.top_radps, stop.rebound);
}

Answer rebound_speed(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  return c.rig().axis(a).stops.rebound.value() * top_speed_radps(c.model(a));
}

Answer rebound_energy(Context& c, Axis a) {
  const Answer speed = rebound_speed(c, a);
  if (!speed.value) return speed;
  return stop_energy_J(moving_inertia_kgm2(c, a), *speed.value);
}

template <double stress_Pa(Context&, Axis, const StopCase&)>
Answer tab_stress(Context& c, Axis a) {
  return of_blow(c, a, [&](const StopCase& stop) -> Answer { return stress_Pa(c, a, stop); });
}

Answer strength_to_count_on(Context& c, Axis a) {
  if (has_no_stops(c, a)) return Answer::none(kNoStops);
  const auto strength = tab_strength(c.rig().axis(a).stops);
  if (!strength)
    return Answer::aside(for_axis(words("needs <axis>.stops.tab_strength or a material"), a));
  return strength->tensile_Pa;
}

constexpr std::array<InputPath, 1> kStopsAtAll{"<axis>.stops.rebound"};

const FigureRow kStopFigures[] = {
    {{"<axis>.stop.energy", "Energy into the stop at top speed", "J", "J",
      "½·(load + rotor_reflected)·speed_top²", kImpact, kEnergy},
     Axes::both,
     stop_energy},
    {{"<axis>.stop.energy_load", "Energy into the stop at top speed, load's share", "J", "J",
      "½·load·speed_top²", kShares, kEnergy},
     Axes::both,
     energy_share<Part::load, At::top_speed>},
    {{"<axis>.stop.energy_rotor", "Energy into the stop at top speed, rotor's share", "J", "J",
      "½·rotor_reflected·speed_top²", kShares, kEnergy},
     Axes::both,
     energy_share<Part::rotor, At::top_speed>},
    {{"<axis>.stop.runaway_speed", "Speed of a runaway at the stop", "rad/s", "deg/s",
      "from rest at one soft limit to the far stop, full driving torque; the drive's speed limit "
      "does not bind",
      kLost, kRunawayBlow},
     Axes::both,
     runaway_speed},
    {{"<axis>.stop.runaway_energy", "Energy of a runaway into the stop", "J", "J",
      "½·(load + rotor_reflected)·runaway_speed²", kLost, kRunawayBlow},
     Axes::both,
     runaway_energy},
    {{"<axis>.stop.torque", "Torque on the stop at top speed", "N.m", "N.m",
      "speed_top·√(stiffness·(load + rotor_reflected)) + torque_stall", kImpact, kStopBlow},
     Axes::both,
     stop_torque},
    {{"<axis>.stop.torque_pushing", "Torque on the stop, bumper and all, drive pushing", "N.m",
      "N.m",
      "T + √(T² + stiffness·J·speed_top²), T = torque_stall; past the bumper the second "
      "spring",
      kPushed, kStopBlow},
     Axes::both,
     blow_torque<At::top_speed, MotorThen::pushing>},
    {{"<axis>.stop.torque_dead", "Torque on the stop, bumper and all, drive dead", "N.m", "N.m",
      "speed_top·√(stiffness·J); past the bumper the second spring", kPushed, kStopBlow},
     Axes::both,
     blow_torque<At::top_speed, MotorThen::dead>},
    {{"<axis>.stop.energy_soft_load", "Energy past the soft limit, load's share", "J", "J",
      "½·load·travel.speed_at_stop²", kShares, kSoftSpeed},
     Axes::both,
     energy_share<Part::load, At::past_soft_limit>},
    {{"<axis>.stop.energy_soft_rotor", "Energy past the soft limit, rotor's share", "J", "J",
      "½·rotor_reflected·travel.speed_at_stop²", kShares, kSoftSpeed},
     Axes::both,
     energy_share<Part::rotor, At::past_soft_limit>},
    {{"<axis>.stop.torque_soft_pushing", "Torque on the stop past the soft limit, drive pushing",
      "N.m", "N.m", "as torque_pushing, at travel.speed_at_stop; 0 where it stands before the stop",
      kPushed, kSoftBlow},
     Axes::both,
     blow_torque<At::past_soft_limit, MotorThen::pushing>},
    {{"<axis>.stop.torque_soft_dead", "Torque on the stop past the soft limit, drive dead", "N.m",
      "N.m", "as torque_dead, at travel.speed_at_stop", kPushed, kSoftBlow},
     Axes::both,
     blow_torque<At::past_soft_limit, MotorThen::dead>},
    {{"<axis>.stop.press", "How far the stop gives way at top speed", "rad", "deg",
      "where ½Jω² + Tφ is in the spring", kPushed, kStopBlow},
     Axes::both,
     press},
    {{"<axis>.stop.bumper_needed", "Bumper travel that takes the blow", "rad", "deg",
      "(T + √(T² + stiffness·J·speed_top²))/stiffness", kPushed, kStopBlow},
     Axes::both,
     bumper_needed},
    {{"<axis>.stop.gear_torque", "Torque through the gearbox in the blow, gear rigid", "N.m", "N.m",
      "(torque_pushing·rotor_reflected + T·load)/J", "equal deceleration; handbook: stops",
      kStopBlow},
     Axes::both,
     gear_torque},
    {{"<axis>.stop.gear_torque_sprung", "Torque through the gearbox in the blow, gear as a spring",
      "N.m", "N.m", "load and rotor about the gear's stiffness, integrated", "handbook: stops",
      kSprungBlow},
     Axes::both,
     gear_torque_sprung},
    {{"<axis>.stop.gear_torque_hard", "Most through the gearbox at a stop that gives no way", "N.m",
      "N.m", "speed_top·√(gear stiffness·(rotor_reflected + rebound²·load))",
      "energy balance; handbook: stops", kHardBlow},
     Axes::both,
     gear_torque_hard},
    {{"<axis>.stop.rebound_speed", "Speed after the blow", "rad/s", "deg/s", "rebound·speed_top",
      "definition of the rebound", kTopOnly},
     Axes::both,
     rebound_speed},
    {{"<axis>.stop.rebound_energy", "Energy given back by the stop", "J", "J",
      "½·(load + rotor_reflected)·rebound_speed²", kShares, kRebound},
     Axes::both,
     rebound_energy},
    {{"<axis>.stop.tab_bending", "Bending stress at the tab's root", "Pa", "MPa",
      "torque_pushing/radius·tab_height/(tab_thickness·tab_width²/6)", kStrength, kTabBending},
     Axes::both,
     tab_stress<tab_bending_Pa>,
     true},
    {{"<axis>.stop.tab_shear", "Shear stress in the tab", "Pa", "MPa",
      "torque_pushing/radius/(tab_width·tab_thickness)", kStrength, kTabShear},
     Axes::both,
     tab_stress<tab_shear_Pa>,
     true},
    {{"<axis>.stop.tab_strength", "Tensile strength to count on in the tab", "Pa", "MPa",
      "entered less its spread, or the least of the material",
      "typical data sheets, from memory; handbook: stops", kStopsAtAll},
     Axes::both,
     strength_to_count_on},
};

}  // namespace

std::span<const FigureRow> stop_figures() { return kStopFigures; }

}  // namespace gazewright
