#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"

namespace gazewright {
namespace {

using Way = Lever::Way;
constexpr auto kCableAndStops = joined(kStopGeometry, kTwist);
constexpr auto kMoveFits = joined(kUsable, std::array<InputPath, 1>{"task.<axis>_move"});
constexpr auto kInset = joined(joined(joined(kRigidTrain, kTopSpeed), kSoft),
                               std::array<InputPath, 1>{"<axis>.loop.speed_limit"});
constexpr auto kImpact =
    joined(joined(kStall, kRotors),
           joined(kTopSpeed, std::array<InputPath, 2>{"<load>", "<axis>.stops.stiffness"}));
constexpr auto kHomingTurn = joined(
    kResonance, std::array<InputPath, 5>{"<axis>.friction.coulomb", "<axis>.gearbox.drag",
                                         "<axis>.gearbox.backlash", "<axis>.gearbox.efficiency",
                                         "<axis>.stops.stiffness"});

bool without_stops(Context& c, Axis a) { return c.rig().axis(a).stops.presence == Presence::none; }

Compared cable(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (c.rig().axis(a).cable.presence == Presence::none) {
    return moot("no cable crosses this axis");
  }
  if (!travel.cable_rad || !travel.stops_rad) {
    return {travel.stops_rad, travel.cable_rad,
            "the travel of this routing or of the stops is not known"};
  }
  if (std::isinf(*travel.stops_rad)) {
    return {std::nullopt, *travel.cable_rad, "a cable crosses an axis that has no stops",
            Compared::Outcome::impossible};
  }
  return {*travel.stops_rad, *travel.cable_rad,
          "the stops let it turn ±" + say(*travel.stops_rad / 2, "rad", "deg") + ", the cable ±" +
              say(*travel.cable_rad / 2, "rad", "deg")};
}

Compared move_fits(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (!travel.usable_rad) return {std::nullopt, std::nullopt, "the usable travel is not known"};
  if (std::isinf(*travel.usable_rad)) return moot("turns without end");
  // The move is centred on the rest pose, the travel on the stops' centre.
  const double reach = 2 * std::max(0.0, std::min(travel.most_rad(), -travel.least_rad()));
  return {c.move_rad(a), reach, "room on both sides of the rest pose"};
}

Compared inset(Context& c, Axis a) {
  if (without_stops(c, a)) return moot("there are no stops");
  // The loop never asks for more than its speed limit; a runaway is the stop's business.
  const double top = std::min(top_speed_radps(c.model(a)), c.model(a).control.speed_limit_radps);
  const double have = c.rig().axis(a).stops.soft_inset_rad.value();
  const auto need = braking_angle_rad(c.model(a), top);
  if (!need)
    return {std::nullopt, have, "it cannot brake against gravity at all",
            Compared::Outcome::impossible};
  return {*need, have, "braking from " + say(top, "rad/s", "deg/s")};
}

Compared impact(Context& c, Axis a) {
  if (without_stops(c, a)) return moot("there are no stops");
  const AxisModel& model = c.model(a);
  const double inertia = model.load.inertia_kgm2 + model.reflected_inertia_kgm2();
  const double top = top_speed_radps(model);
  const double stiffness = c.rig().axis(a).stops.stiffness_Nmprad.value();
  return {stop_torque_Nm(inertia, top, stiffness, stall_torque_Nm(model)),
          model.gear.peak_torque_Nm,
          "hitting the stop at " + say(top, "rad/s", "deg/s") + ", the drive still pushing; " +
              say(100 * model.reflected_inertia_kgm2() / inertia, "1", "1") +
              " % of the energy is the rotor's"};
}

/// Pushing gently into a stop tells where the output is within the gap and the wind-up of friction;
/// encoder readings repeat every turn of the motor.
Compared homing_turn(Context& c, Axis a) {
  if (without_stops(c, a)) return moot("there are no stops to home against");
  const AxisModel& model = c.model(a);
  if (model.control.encoder_at_output) return moot("the encoder reads the output");
  const double push =
      model.load.coulomb_Nm + model.gear.efficiency * model.gear.ratio * model.gear.drag_Nm;
  const double stiffness = c.rig().axis(a).stops.stiffness_Nmprad.value();
  const double unsure =
      model.gear.backlash_rad / 2 + push * (1 / stiffness + 1 / model.gear.stiffness_Nmprad);
  return {unsure, M_PI / model.gear.ratio,
          "a stop found with just more torque than friction, against half the " +
              say(2 * M_PI / model.gear.ratio, "rad", "deg") + " between equal readings"};
}

constexpr Lever kCableLevers[] = {{"<axis>.cable.free_length", Way::up, 10},
                                  {"<axis>.stops.tab_width", Way::up, 20},
                                  {"<axis>.cable.twist_rating", Way::up, 10}};
constexpr Lever kFitLevers[] = {{"<axis>.stops.soft_inset", Way::down, 100},
                                {"<axis>.cable.free_length", Way::up, 10},
                                {"<axis>.stops.tab_width", Way::down, 20},
                                {"task.<axis>_move", Way::down, 10}};
constexpr Lever kInsetLevers[] = {{"<axis>.stops.soft_inset", Way::up, 60},
                                  {"<axis>.loop.speed_limit", Way::down, 10}};
constexpr Lever kImpactLevers[] = {{"<axis>.drive.speed_limit", Way::down, 20},
                                   {"<axis>.stops.stiffness", Way::down, 30}};
constexpr Lever kHomingLevers[] = {{"<axis>.stops.stiffness", Way::up, 100},
                                   {"<axis>.gearbox.backlash", Way::down, 100},
                                   {"<axis>.gearbox.ratio", Way::down, 50}};

constexpr Check kChecks[] = {
    {"<axis>.travel.cable", "Cable lasts to the stops", "would let the stop come before the cable",
     "<axis>.cable", "rad", "deg", kCableAndStops, cable, kCableLevers},
    {"<axis>.travel.move", "The task's move fits the travel", "would make room for the move",
     "<axis>.stops", "rad", "deg", kMoveFits, move_fits, kFitLevers},
    {"<axis>.travel.soft_inset", "Room to brake between soft limit and stop",
     "would stop it before the hard stop", "<axis>.stops", "rad", "deg", kInset, inset,
     kInsetLevers},
    {"<axis>.stop.torque", "Stop torque at top speed against gearbox peak",
     "would spare the gearbox", "<axis>.stops", "N.m", "N.m", kImpact, impact, kImpactLevers},
    {"<axis>.homing.turn", "A stop tells the motor's turns apart", "would tell the turns apart",
     "<axis>.encoder", "rad", "deg", kHomingTurn, homing_turn, kHomingLevers},
};

}  // namespace

std::span<const Check> travel_checks() { return kChecks; }

}  // namespace gazewright
