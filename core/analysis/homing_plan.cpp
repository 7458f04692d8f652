#include "core/analysis/homing_plan.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/homing_values.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"
#include "core/travel/vernier.h"

namespace gazewright {
namespace {

using Plan = std::vector<std::string>;
constexpr std::array<InputPath, 5> kUnsureAtStop{
    "<axis>.gearbox.backlash", "<axis>.gearbox.stiffness", "<axis>.gearbox.drag",
    "<axis>.friction.coulomb", "<axis>.stops.stiffness"};
constexpr std::array<InputPath, 1> kRatio{"<axis>.gearbox.ratio"};
constexpr std::array<InputPath, 2> kSecond{"<axis>.homing.second_ratio", "<axis>.gearbox.ratio"};

std::string angle(double rad) { return say(rad, "rad", "deg"); }
std::string speed(double radps) { return say(radps, "rad/s", "deg/s"); }

std::string needs(Context& c, Axis a, std::span<const InputPath> inputs) {
  constexpr std::size_t kNamed = 3;
  return say_needs(c.missing(inputs, a), kNamed);
}

/// The current to set, or which would do, or why none is known.
std::string current(Context& c, Axis a) {
  const auto& entered = c.rig().axis(a).homing.current_A.si;
  const std::string with = entered ? " with at most " + say(*entered, "A", "A") : "";
  if (const std::string missing = needs(c, a, kHomingBlow); !missing.empty())
    return with + " (the window of currents " + missing + ")";
  const PushWindow window = push_window(c, a);
  if (window.most_A < window.least_A)
    return with + " (no current both moves it, from " + say(window.least_A, "A", "A") +
           " on, and spares gearbox and drive: look for it slower or with a softer stop)";
  const std::string between = say(window.least_A, "A", "A") + " to " + say(window.most_A, "A", "A");
  if (entered) return with + " (window " + between + ")";
  return " (enter a homing current: " + between + " would do)";
}

std::string search_speed(Context& c, Axis a) {
  const bool entered = c.rig().axis(a).homing.speed_radps.si.has_value();
  return speed(homing_speed_radps(c, a)) + (entered ? "" : ", the usual speed");
}

std::string candidates(Context& c, Axis a) {
  const auto searched = searched_rad(c, a);
  if (const std::string missing = needs(c, a, kRatio); !missing.empty() || !searched)
    return "How many output angles fit one encoder reading " +
           (missing.empty() ? "needs the stops" : missing) + ".";
  const double turns = encoder_turns(c, a), count = homing_candidates(*searched, turns);
  if (count <= 1) return "Only one output angle fits the encoder's reading then.";
  return "Of " + say(count, "1", "1") + " output angles " + angle(homing_spacing_rad(turns)) +
         " apart that fit the encoder's reading, take the one nearest to that.";
}

void push_to_stop(Context& c, Axis a, Plan& plan) {
  const Travel& travel = c.travel(a);
  if (has_no_stops(c, a)) {
    plan.emplace_back(
        "There is no stop to push to: choose a flag, an encoder at the output or a second "
        "encoder.");
    return;
  }
  plan.push_back("Move slowly (" + search_speed(c, a) + ") towards the minus end" + current(c, a) +
                 ".");
  const std::string met = "When the speed has stayed below " +
                          speed(homing_speed_radps(c, a) / 10) + " for " +
                          say(kStallTime_s, "s", "s") + ", it stands at the stop";
  if (!travel.stops_rad) {
    plan.push_back(met + ".");
  } else {
    const std::string missing = needs(c, a, kUnsureAtStop);
    plan.push_back(met + ": the output is at " + angle(travel.centre_rad - *travel.stops_rad / 2) +
                   (missing.empty() ? " ± " + angle(stop_unsure_rad(c, a)) + ", gap and wind-up"
                                    : " (how far off it may be " + missing + ")") +
                   ". From the far end that takes " +
                   say(homing_time_s(*travel.stops_rad, homing_speed_radps(c, a), true), "s", "s") +
                   ".");
  }
  plan.push_back(candidates(c, a));
}

void find_flag(Context& c, Axis a, Plan& plan) {
  const bool stops = !has_no_stops(c, a);
  plan.push_back("Move slowly (" + search_speed(c, a) + ") towards the minus end" + current(c, a) +
                 " until the flag switches" + (stops ? "; at the stop turn back" : "") + ".");
  const std::string missing =
      needs(c, a, std::array<InputPath, 2>{"<axis>.homing.flag_error", "<axis>.gearbox.backlash"});
  if (missing.empty()) {
    plan.push_back("The output is then where the flag is, ± " + angle(flag_unsure_rad(c, a)) +
                   ", the flag's error and half the gap.");
  } else {
    const bool known = needs(c, a, kRatio).empty();
    plan.push_back("The output is then where the flag is; how far off " + missing +
                   (known ? " (less than " + angle(homing_spacing_rad(encoder_turns(c, a)) / 2) +
                                " in all would do)"
                          : "") +
                   ".");
  }
  plan.push_back(candidates(c, a));
}

void compare_encoders(Context& c, Axis a, Plan& plan) {
  if (const std::string missing = needs(c, a, kSecond); !missing.empty()) {
    plan.push_back("Read both encoders standing still; what they tell apart " + missing + ".");
    return;
  }
  const double turns = encoder_turns(c, a);
  const double second = c.rig().axis(a).homing.second_ratio.value();
  plan.push_back("Read both encoders standing still: they turn " + say(turns, "1", "1") + " and " +
                 say(second, "1", "1") +
                 " times a turn of the output, and read the same again after " +
                 angle(vernier_range_rad(turns, second)) + ".");
  const auto searched = searched_rad(c, a);
  if (!searched) return;
  const auto separation = vernier_separation_rad(turns, second, *searched);
  if (!separation) {
    plan.push_back(candidates(c, a));
    return;
  }
  plan.push_back(
      "Of " + say(homing_candidates(*searched, turns), "1", "1") +
      " output angles that fit the first reading, take the one whose second reading fits: " +
      "they come as near as " + angle(*separation) +
      " to each other at the second encoder, so all errors may add up to " +
      angle(*separation / 2) + " there.");
}

void read_output(Context& c, Axis a, Plan& plan) {
  plan.push_back(
      std::string("Read the encoder at the output standing still: one reading fits one "
                  "angle of a turn") +
      (c.model(a).control.encoder_at_output ? "." : "; the motor's encoder is set from it."));
}

void go_home(Context& c, Axis a, Plan& plan) {
  const Homing& homing = c.rig().axis(a).homing;
  const Travel& travel = c.travel(a);
  const double home = homing.home_rad.value(), park = homing.park_rad.si.value_or(home);
  std::string limits;
  if (travel.usable_rad && std::isfinite(*travel.usable_rad))
    limits = "Set the limits to " + angle(travel.least_rad()) + " and " + angle(travel.most_rad()) +
             ", then go";
  plan.push_back((limits.empty() ? "Go" : limits) + " home to " + angle(home) + ".");
  if (park != home) plan.push_back("Park at " + angle(park) + " before power is switched off.");
  plan.emplace_back(
      keeps_count(c, a)
          ? "The drive keeps its count: do this once, and again when the count was lost."
          : "The drive forgets its count: do this after every power-up.");
}

}  // namespace

std::vector<std::string> homing_plan(Context& context, Axis axis,
                                     std::span<const Finding> findings) {
  Plan plan;
  switch (homing_by(context, axis)) {
    case HomingBy::stop:
      push_to_stop(context, axis, plan);
      break;
    case HomingBy::flag:
      find_flag(context, axis, plan);
      break;
    case HomingBy::second_encoder:
      compare_encoders(context, axis, plan);
      break;
    case HomingBy::output:
      read_output(context, axis, plan);
      break;
  }
  go_home(context, axis, plan);
  const std::string id = for_axis("<axis>.homing.", axis);
  for (const Finding& finding : findings) {
    if (!finding.id.starts_with(id) || finding.verdict == Verdict::holds) continue;
    plan.push_back(finding.what + ": " + name_of(finding.verdict) + ", " + finding.because + ".");
  }
  return plan;
}

}  // namespace gazewright
