#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/counterweight.h"
#include "core/analysis/power_off.h"
#include "core/analysis/say.h"
#include "core/analysis/stop_case.h"
#include "core/analysis/travel_words.h"
#include "core/analysis/worst_pose.h"
#include "core/travel/power_off.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kCoastTorque =
    joined(kCoastIntoStop,
           std::array<InputPath, 2>{"<axis>.stops.stiffness", "<axis>.gearbox.peak_torque"});

/// The other axis' angle where this one is pulled at most, if that is not its rest.
std::string say_other(Context& c, Axis a) {
  const double at = worst_pose(c, a).pull_at_rad;
  if (at == 0) return {};
  return a == Axis::pan ? words(", tilt at %1", say(at, "rad", "deg"))
                        : words(", pan at %1", say(at, "rad", "deg"));
}

Compared holds(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const double hold = friction_hold_Nm(model);
  if (std::isinf(hold)) return moot(words("the gearbox locks itself: the load cannot turn it"));
  const double pull = worst_pull_Nm(c, a);
  const bool springs = model.load.cable_stiffness_Nmprad > 0;
  std::string text = words(
      "friction %1 and the gearbox driven back %2 against %3 at the worst angle%4",
      say(model.load.coulomb_Nm, "N.m", "N.m"), say(hold - model.load.coulomb_Nm, "N.m", "N.m"),
      springs ? words("gravity and the cable's spring") : words("gravity"), say_other(c, a));
  if (pull > hold)
    text +=
        springs
            ? words(
                  ": it turns by itself, mind fingers in its way; a counterweight, a softer cable "
                  "or a brake would keep it")
            : words(
                  ": it falls, mind fingers in its way; a counterweight or a brake would keep it");
  return {pull, hold, std::move(text)};
}

Compared coast(Context& c, Axis a) {
  if (has_no_stops(c, a)) return absent();
  const Travel& travel = c.travel(a);
  if (!has_stops_to_meet(travel)) return {std::nullopt, std::nullopt, why_no_travel(c, a)};
  const AxisModel& model = worst_pose(c, a).model;
  const double fastest = hit_radps(c, a);
  const double speed = coasting_stop_speed_radps(model, travel, fastest);
  const double room = c.rig().axis(a).stops.soft_inset_rad.value();
  const double peak = model.gear.peak_torque_Nm;
  const StopCase stop = worst_stop_case(c, a);
  const std::string from =
      fastest < top_speed_radps(model) ? say(fastest, "rad/s", "deg/s") : say_top_speed(model);
  std::string text =
      speed > fastest
          ? words("power drops at %1 where gravity and cable carry it on the most: it ", from)
          : words("power drops at %1 at the soft limit, %2 before the stop: it ", from,
                  say(room, "rad", "deg"));
  if (speed == 0) {
    text += words("comes to rest before it");
  } else {
    text += words("coasts into it at %1 with %2", say(speed, "rad/s", "deg/s"),
                  say(stop_energy_J(stop.inertia_kgm2(), speed), "J", "J")) +
            say_worst_load(c, a);
  }
  if (std::isinf(peak)) return moot(words("%1; no peak torque of the gearbox is stated", text));
  if (std::string missing = missing_of_bumper(c, a); !missing.empty() && speed > 0) {
    return {std::nullopt, peak, std::move(missing)};
  }
  return {stop.blow(speed, 0).torque_Nm, peak, std::move(text)};
}

constexpr Lever kHoldLevers[] = {{"<axis>.gearbox.ratio", Way::up, 20},
                                 {"<axis>.cable.free_length", Way::up, 20},
                                 {"<axis>.friction.coulomb", Way::up, 1000}};
constexpr Lever kCoastLevers[] = {{"<axis>.drive.speed_limit", Way::down, 20},
                                  {"<axis>.stops.stiffness", Way::down, 30}};

constexpr Check kPowerOffChecks[] = {
    {"<axis>.power_off.holds",
     "Stays where it is without power",
     "would keep it from falling",
     "<axis>.friction",
     "N.m",
     "N.m",
     kHolds,
     holds,
     kHoldLevers,
     nullptr,
     {},
     nullptr,
     counterweight_remedy},
    {"<axis>.power_off.coast", "Coasting into the stop when power drops", "would spare the gearbox",
     "<axis>.stops", "N.m", "N.m", kCoastTorque, coast, kCoastLevers},
};

}  // namespace

std::span<const Check> power_off_checks() { return kPowerOffChecks; }

}  // namespace gazewright
