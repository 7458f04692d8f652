#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/homing_values.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"
#include "core/travel/vernier.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::array<InputPath, 2> kTurn{"<axis>.gearbox.ratio", "<axis>.stops.centre"};
constexpr auto kTurnByStop = joined(
    kResonance, std::array<InputPath, 5>{"<axis>.friction.coulomb", "<axis>.gearbox.drag",
                                         "<axis>.gearbox.backlash", "<axis>.gearbox.efficiency",
                                         "<axis>.stops.stiffness"});
constexpr std::array<InputPath, 2> kTurnByFlag{"<axis>.homing.flag_error",
                                               "<axis>.gearbox.backlash"};
constexpr std::array<InputPath, 3> kTurnBySecond{
    "<axis>.homing.second_ratio", "<axis>.homing.second_error", "<axis>.encoder.error"};
constexpr auto kMoved =
    joined(kMoving, std::array<InputPath, 3>{"<axis>.homing.current", "<axis>.drive.current_limit",
                                             "<axis>.motor.peak_current"});
constexpr auto kMet = joined(kHomingBlow, std::array<InputPath, 1>{"<axis>.homing.current"});
constexpr const char* kUnknownTravel = "the travel between the stops is not known";

std::string apart(Context& c, Axis a) {
  return words("%1 between equal readings",
               say(homing_spacing_rad(encoder_turns(c, a)), "rad", "deg"));
}

Compared turn_by_stop(Context& c, Axis a) {
  if (has_no_stops(c, a)) {
    if (keeps_count(c, a)) return moot(words("there are no stops, but the drive keeps its count"));
    return {std::nullopt, std::nullopt,
            words("there are no stops to home against: a flag, an encoder at the output or a "
                  "second encoder would tell the turns apart"),
            Compared::Outcome::impossible};
  }
  if (auto unknown = lacking(c, a, kTurnByStop)) return *unknown;
  return {
      stop_unsure_rad(c, a), homing_spacing_rad(encoder_turns(c, a)) / 2,
      words("a stop found with just more torque than friction, against half the %1", apart(c, a))};
}

Compared turn_by_flag(Context& c, Axis a) {
  if (auto unknown = lacking(c, a, kTurnByFlag)) return *unknown;
  return {flag_unsure_rad(c, a), homing_spacing_rad(encoder_turns(c, a)) / 2,
          words("the flag's error and half the gap, against half the %1", apart(c, a))};
}

Compared turn_by_second(Context& c, Axis a) {
  if (auto unknown = lacking(c, a, kTurnBySecond)) return *unknown;
  const auto searched = searched_rad(c, a);
  if (!searched) return {std::nullopt, std::nullopt, kUnknownTravel};
  const Homing& homing = c.rig().axis(a).homing;
  const double turns = encoder_turns(c, a), second = homing.second_ratio.value();
  const auto separation = vernier_separation_rad(turns, second, *searched);
  if (!separation) return moot(words("the travel is less than the %1", apart(c, a)));
  const double error = vernier_error_rad(turns, second, c.rig().axis(a).encoder.error_rad.value(),
                                         homing.second_error_rad.value());
  return {error, *separation / 2,
          words("the errors of both encoders, seen at the second, against half of how near its "
                "readings come where the first reads the same")};
}

/// Encoder readings repeat every turn of the motor; what the axis homes by has to tell them apart.
Compared homing_turn(Context& c, Axis a) {
  switch (homing_by(c, a)) {
    case HomingBy::output:
      return moot(words("the encoder reads the output"));
    case HomingBy::flag:
      return turn_by_flag(c, a);
    case HomingBy::second_encoder:
      return turn_by_second(c, a);
    case HomingBy::stop:
      break;
  }
  return turn_by_stop(c, a);
}

Compared vernier(Context& c, Axis a) {
  const auto searched = searched_rad(c, a);
  if (!searched) return {std::nullopt, std::nullopt, kUnknownTravel};
  return {*searched,
          vernier_range_rad(encoder_turns(c, a), c.rig().axis(a).homing.second_ratio.value()),
          has_no_stops(c, a) ? words("a turn, there being no stops, against the angle after which "
                                     "both encoders read the same again")
                             : words("the travel between the stops, against the angle after which "
                                     "both encoders read the same again")};
}

double current_A(Context& c, Axis a) {
  return std::min(c.rig().axis(a).homing.current_A.value(), c.model(a).drive.current_limit_A);
}

Compared push(Context& c, Axis a) {
  return {moving_torque_Nm(c, a), torque_per_ampere_NmpA(c, a) * current_A(c, a),
          words("friction, gearbox, cable and gravity at %1, against the push at %2",
                say(homing_speed_radps(c, a), "rad/s", "deg/s"), say(current_A(c, a), "A", "A"))};
}

Compared contact(Context& c, Axis a) {
  if (has_no_stops(c, a) || homing_by(c, a) != HomingBy::stop) return absent();
  const double blow = stop_blow_Nm(c, a);
  return {torque_per_ampere_NmpA(c, a) * current_A(c, a) + blow, gentle_torque_Nm(c, a),
          words("the push and %1 from meeting the stop at %2, against the lesser of the gearbox's "
                "rated and peak torque",
                say(blow, "N.m", "N.m"), say(homing_speed_radps(c, a), "rad/s", "deg/s"))};
}

/// Angle within which homing gives the output's angle and not only its place in a turn; infinity:
/// any.
double told_apart_rad(Context& c, Axis a) {
  const HomingBy by = homing_by(c, a);
  if (keeps_count(c, a) || (by == HomingBy::stop && !has_no_stops(c, a))) return kInfinity;
  if (by != HomingBy::second_encoder) return 2 * M_PI;
  return vernier_range_rad(encoder_turns(c, a), c.rig().axis(a).homing.second_ratio.value());
}

/// A cable may be wound too far, or stops met at speed, where a turn can be taken for another.
bool may_wrap(Context& c, Axis a) {
  const auto& stops = c.travel(a).stops_rad;
  if (!stops || *stops <= 2 * M_PI) return false;
  const Presence cable = c.rig().axis(a).cable.presence;
  return cable == Presence::given || (cable == Presence::none && std::isfinite(*stops));
}

/// What becomes of taking one turn for another, `off_rad` away. @pre the cable's travel is known
std::string when_wrong(const Travel& travel, double off_rad) {
  const std::string off = words("after a restart it may be %1 off", say(off_rad, "rad", "deg"));
  if (std::isinf(*travel.cable_rad))
    return words("%1, and its soft limits with it: it could run into a stop at full speed", off);
  const double wound = std::min(*travel.usable_rad + 2 * off_rad, *travel.stops_rad);
  return words("%1: the cable, good for ±%2, could be wound to ±%3", off,
               say(*travel.cable_rad / 2, "rad", "deg"), say(wound / 2, "rad", "deg"));
}

Compared wraps(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (homing_by(c, a) == HomingBy::second_encoder)
    if (auto unknown = lacking(c, a, std::span(kTurnBySecond).first(1))) return *unknown;
  const double told = told_apart_rad(c, a);
  if (std::isinf(told)) {
    return moot(keeps_count(c, a) ? words("the drive keeps its count through a restart")
                                  : words("the stop is found again after each restart"));
  }
  if (!travel.usable_rad) return {std::nullopt, told, words("the usable travel is not known")};
  if (std::isinf(*travel.usable_rad))
    return moot(words("nothing winds up, and a turn is all it needs"));
  std::string because = words("what homing tells apart after a restart, against the usable travel");
  if (*travel.usable_rad > told && travel.cable_rad) {
    // Taken for the angle at the other end of what fits, it may be wound on by as much.
    because = when_wrong(travel, told * std::floor(*travel.usable_rad / told));
  }
  return {*travel.usable_rad, told, std::move(because)};
}

/// The farther of home and park from the middle of the travel. [rad]
double farthest_place_rad(Context& c, Axis a) {
  const Homing& homing = c.rig().axis(a).homing;
  const double centre = c.travel(a).centre_rad;
  const double home = homing.home_rad.value();
  return std::max(std::abs(home - centre), std::abs(homing.park_rad.si.value_or(home) - centre));
}

Compared places(Context& c, Axis a) {
  const auto& usable = c.travel(a).usable_rad;
  if (!usable) return {std::nullopt, std::nullopt, words("the usable travel is not known")};
  if (std::isinf(*usable)) return moot(words("it turns without end"));
  return {farthest_place_rad(c, a), *usable / 2,
          words("the farther of home and park, against where the usable travel ends, both from its "
                "middle")};
}

/// The places are their defaults and inside the travel: nothing worth a line.
bool places_are_chosen(Context& c, Axis a) {
  const Homing& homing = c.rig().axis(a).homing;
  const double home = homing.home_rad.value();
  return home != 0 || homing.park_rad.si.value_or(home) != home ||
         verdict_of(places(c, a)) == Verdict::fails;
}

constexpr Lever kTurnLevers[] = {
    {"<axis>.stops.stiffness", Way::up, 100},       {"<axis>.gearbox.backlash", Way::down, 100},
    {"<axis>.gearbox.ratio", Way::down, 50},        {"<axis>.homing.flag_error", Way::down, 100},
    {"<axis>.homing.second_error", Way::down, 100}, {"<axis>.encoder.error", Way::down, 100}};
constexpr Lever kVernierLevers[] = {{"<axis>.homing.second_ratio", Way::down, 2},
                                    {"<axis>.homing.second_ratio", Way::up, 2},
                                    {"<axis>.stops.tab_width", Way::up, 20}};
constexpr Lever kPushLevers[] = {{"<axis>.homing.current", Way::up, 100},
                                 {"<axis>.homing.speed", Way::down, 20}};
constexpr Lever kContactLevers[] = {{"<axis>.homing.current", Way::down, 100},
                                    {"<axis>.homing.speed", Way::down, 50},
                                    {"<axis>.stops.stiffness", Way::down, 100}};
constexpr Lever kWrapLevers[] = {{"<axis>.cable.free_length", Way::down, 20},
                                 {"<axis>.stops.soft_inset", Way::up, 100}};
constexpr Lever kPlaceLevers[] = {{"<axis>.homing.home", Way::to_zero, 1000},
                                  {"<axis>.homing.park", Way::to_zero, 1000},
                                  {"<axis>.stops.soft_inset", Way::down, 100},
                                  {"<axis>.cable.free_length", Way::up, 10}};

const Check kHomingChecks[] = {
    {.id = "<axis>.homing.turn",
     .what = "Homing tells the motor's turns apart",
     .goal = "would tell the turns apart",
     .part = "<axis>.homing",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kTurn,
     .compare = homing_turn,
     .levers = kTurnLevers},
    {.id = "<axis>.homing.vernier",
     .what = "Two encoders together cover the travel",
     .goal = "would make the two encoders cover the travel",
     .part = "<axis>.homing",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kVernier,
     .compare = vernier,
     .levers = kVernierLevers,
     .asked_by = "<axis>.homing.second_ratio"},
    {.id = "<axis>.homing.push",
     .what = "Homing current beats friction",
     .goal = "would move it to the stop",
     .part = "<axis>.homing",
     .si_unit = "N.m",
     .unit = "N.m",
     .inputs = kMoved,
     .compare = push,
     .levers = kPushLevers,
     .asked_by = "<axis>.homing.current"},
    {.id = "<axis>.homing.contact",
     .what = "Homing spares the gearbox",
     .goal = "would spare the gearbox",
     .part = "<axis>.homing",
     .si_unit = "N.m",
     .unit = "N.m",
     .inputs = kMet,
     .compare = contact,
     .levers = kContactLevers,
     .asked_by = "<axis>.homing.current"},
    {.id = "<axis>.homing.wraps",
     .what = "The turn is known after a restart",
     .goal = "would leave one turn only",
     .part = "<axis>.homing",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = {},
     .compare = wraps,
     .levers = kWrapLevers,
     .asked_when = may_wrap},
    {.id = "<axis>.homing.places",
     .what = "Home and park lie within the travel",
     .goal = "would bring home and park within the travel",
     .part = "<axis>.homing",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = {},
     .compare = places,
     .levers = kPlaceLevers,
     .asked_when = places_are_chosen},
};

}  // namespace

std::span<const Check> homing_checks() { return kHomingChecks; }

}  // namespace gazewright
