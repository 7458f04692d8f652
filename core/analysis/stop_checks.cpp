#include <cmath>
#include <optional>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/stop_case.h"
#include "core/analysis/travel_words.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::array<InputPath, 1> kHardStop{"<axis>.stops.hard_stiffness"};

/// Where the drive's limit keeps the top speed below what a runaway reaches; else empty.
std::string say_runaway(Context& c, Axis a) {
  if (!c.missing(kRunawayBlow, a).empty()) return {};
  const double speed = runaway_radps(c, a).value_or(0);
  if (speed <= top_speed_radps(c.model(a))) return {};
  return words(
      "; a runaway (encoder lost, commutation wrong), which no speed limit holds, would hit "
      "with %1 at %2: a stop that bears it or a switch that cuts the supply, and hands off "
      "while it is powered",
      say(stop_energy_J(moving_inertia_kgm2(c, a), speed), "J", "J"), say(speed, "rad/s", "deg/s"));
}

/// Empty where inputs of the gear as a spring are missing, or it has no answer.
std::optional<double> sprung_gear_torque_Nm(Context& c, Axis a) {
  if (!c.missing(kSprungBlow, a).empty() || !missing_of_bumper(c, a).empty()) return std::nullopt;
  const auto& sprung = worst_sprung_blow(c, a);
  return sprung ? std::optional(sprung->gear_torque_Nm) : std::nullopt;
}

double sum_at_stop_Nm(Context& c, Axis a) {
  const StopCase stop = worst_stop_case(c, a);
  return stop_torque_Nm(stop.inertia_kgm2(), stop.top_radps,
                        c.rig().axis(a).stops.stiffness_Nmprad.value(), stop.push_Nm);
}

/// The speed of the blow: the motor's top speed, or what the travel lets it reach.
std::string say_hit(Context& c, Axis a) {
  const double hit = hit_radps(c, a);
  if (hit >= top_speed_radps(c.model(a))) return say_top_speed(c.model(a));
  return words("%1 (full torque over the whole travel reaches no more)",
               say(hit, "rad/s", "deg/s"));
}

Compared impact(Context& c, Axis a) {
  if (has_no_stops(c, a)) return absent();
  const AxisModel& model = c.model(a);
  const double inertia = worst_stop_case(c, a).inertia_kgm2(), at_stop = sum_at_stop_Nm(c, a);
  const double in_gear = sprung_gear_torque_Nm(c, a).value_or(0);
  return {
      at_stop, model.gear.peak_torque_Nm,
      words("hitting the stop at %1, the drive still pushing; %2 % of the energy is the rotor's",
            say_hit(c, a), say(100 * model.reflected_inertia_kgm2() / inertia, "1", "1")) +
          say_worst_load(c, a) +
          (in_gear > at_stop
               ? words("; the gear is a spring, and its teeth swing to %1 as it pushes",
                       say(in_gear, "N.m", "N.m"))
               : "") +
          say_runaway(c, a)};
}

/// Runs `compare` where there is a stop whose spring is known.
template <class Compare>
Compared of_blow(Context& c, Axis a, Compare compare) {
  if (has_no_stops(c, a)) return absent();
  if (std::string missing = missing_of_bumper(c, a); !missing.empty())
    return {std::nullopt, std::nullopt, std::move(missing)};
  return compare(worst_stop_case(c, a));
}

Compared bumper(Context& c, Axis a) {
  return of_blow(c, a, [&](const StopCase& stop) -> Compared {
    if (!has_bumper(c, a)) return absent();
    const Impact worst = stop.worst();
    StopCase endless = stop;
    endless.spring.bumper_travel_rad = kInfinity;
    return {endless.worst().press_rad, stop.spring.bumper_travel_rad,
            words("hitting the stop at %1, the drive still pushing; it bears %2%3", say_hit(c, a),
                  say(worst.torque_Nm, "N.m", "N.m"),
                  worst.bottoms_out ? words(" as the bumper bottoms out") : "") +
                say_worst_load(c, a)};
  });
}

Compared gear_torque(Context& c, Axis a) {
  return of_blow(c, a, [&](const StopCase& stop) -> Compared {
    const AxisModel& model = c.model(a);
    const double torque_Nm = stop.worst().torque_Nm;
    const double rigid_Nm =
        gear_torque_Nm(torque_Nm, stop.push_Nm, stop.load_kgm2, stop.rotor_kgm2);
    const auto& sprung = worst_sprung_blow(c, a);
    return {sprung ? sprung->gear_torque_Nm : rigid_Nm, model.gear.peak_torque_Nm,
            words("the stop bears %1, a rigid gear would carry %2 of it",
                  say(torque_Nm, "N.m", "N.m"), say(rigid_Nm, "N.m", "N.m")) +
                say_worst_load(c, a)};
  });
}

Compared tab(Context& c, Axis a, const StopCase& stop, bool bends) {
  const Stops& stops = c.rig().axis(a).stops;
  const double stress_Pa = bends ? tab_bending_Pa(c, a, stop) : tab_shear_Pa(c, a, stop);
  const double force_N = stop.worst().torque_Nm / stops.radius_m.value();
  const auto strength = tab_strength(stops);
  if (!strength)
    return {stress_Pa, std::nullopt,
            for_axis(words("needs <axis>.stops.tab_strength or a material"), a)};
  return {
      stress_Pa, bends ? strength->tensile_Pa : strength->shear_Pa,
      words("%1 on the tab; its material bears %2 to %3 pulled, the least counts%4",
            say(force_N, "N", "N"), say(strength->tensile_Pa, "Pa", "MPa"),
            say(strength->most_tensile_Pa, "Pa", "MPa"), bends ? "" : words(", less in shear")) +
          say_worst_load(c, a)};
}
Compared tab_bending(Context& c, Axis a) {
  return of_blow(c, a, [&](const StopCase& stop) -> Compared { return tab(c, a, stop, true); });
}
Compared tab_shear(Context& c, Axis a) {
  return of_blow(c, a, [&](const StopCase& stop) -> Compared { return tab(c, a, stop, false); });
}

/// Where somebody has looked into the bumper, or where the teeth carry more than the sum that
/// `stop.torque` compares.
bool teeth_count(Context& c, Axis a) {
  if (c.missing(kHardStop, a).empty()) return true;
  if (!c.missing(kStopBlow, a).empty() || has_no_stops(c, a)) return false;
  return sprung_gear_torque_Nm(c, a).value_or(0) > sum_at_stop_Nm(c, a);
}

/// A softer stop first: it costs the moves no time.
constexpr Lever kImpactLevers[] = {{"<axis>.stops.stiffness", Way::down, 30},
                                   {"<axis>.drive.speed_limit", Way::down, 20}};
constexpr Lever kBumperLevers[] = {{"<axis>.stops.bumper_travel", Way::up, 20},
                                   {"<axis>.drive.speed_limit", Way::down, 20},
                                   {"<axis>.stops.stiffness", Way::up, 30}};
constexpr Lever kGearLevers[] = {{"<axis>.drive.speed_limit", Way::down, 20},
                                 {"<axis>.drive.current_limit", Way::down, 10},
                                 {"<axis>.stops.stiffness", Way::down, 30},
                                 {"<axis>.stops.bumper_travel", Way::up, 20},
                                 {"<axis>.stops.hard_stiffness", Way::down, 30}};
constexpr Lever kBendingLevers[] = {
    {"<axis>.stops.tab_width", Way::up, 5},     {"<axis>.stops.trailer_width", Way::up, 5},
    {"<axis>.stops.tab_thickness", Way::up, 8}, {"<axis>.stops.tab_height", Way::down, 5},
    {"<axis>.stops.radius", Way::up, 4},        {"<axis>.stops.stiffness", Way::down, 30},
    {"<axis>.drive.speed_limit", Way::down, 20}};
constexpr Lever kShearLevers[] = {
    {"<axis>.stops.tab_width", Way::up, 5},     {"<axis>.stops.trailer_width", Way::up, 5},
    {"<axis>.stops.tab_thickness", Way::up, 8}, {"<axis>.stops.radius", Way::up, 4},
    {"<axis>.stops.stiffness", Way::down, 30},  {"<axis>.drive.speed_limit", Way::down, 20}};

constexpr Check kStopChecks[] = {
    {"<axis>.stop.torque", "Stop torque at top speed against gearbox peak",
     "would spare the gearbox", "<axis>.stops", "N.m", "N.m", kStopBlow, impact, kImpactLevers},
    {"<axis>.stop.bumper", "The bumper takes the blow at top speed",
     "would keep the bumper from bottoming out", "<axis>.stops", "rad", "deg", kStopBlow, bumper,
     kBumperLevers, nullptr, "<axis>.stops.hard_stiffness"},
    {.id = "<axis>.stop.gear_torque",
     .what = "Blow through the gearbox against its peak torque",
     .goal = "would spare the teeth",
     .part = "<axis>.stops",
     .si_unit = "N.m",
     .unit = "N.m",
     .inputs = kSprungBlow,
     .compare = gear_torque,
     .levers = kGearLevers,
     .asked_when = teeth_count},
    {"<axis>.stop.tab_bending", "The tab bears the bending of the blow", "would keep the tab whole",
     "<axis>.stops", "Pa", "MPa", kTabBending, tab_bending, kBendingLevers, nullptr,
     "<axis>.stops.tab_height"},
    {"<axis>.stop.tab_shear", "The tab bears the shear of the blow",
     "would keep the tab from shearing off", "<axis>.stops", "Pa", "MPa", kTabShear, tab_shear,
     kShearLevers, nullptr, "<axis>.stops.tab_thickness"},
};

}  // namespace

std::span<const Check> stop_checks() { return kStopChecks; }

}  // namespace gazewright
