#include "core/analysis/homing_plan.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/homing_values.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"
#include "core/travel/vernier.h"
#include "core/words/words.h"

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
  const std::string with = entered ? words(" with at most %1", say(*entered, "A", "A")) : "";
  if (const std::string missing = needs(c, a, kHomingBlow); !missing.empty())
    return words("%1 (the window of currents %2)", with, missing);
  const PushWindow window = push_window(c, a);
  if (window.most_A < window.least_A)
    return words(
        "%1 (no current both moves it, from %2 on, and spares gearbox and drive: look for it "
        "slower or with a softer stop)",
        with, say(window.least_A, "A", "A"));
  const std::string between =
      words("%1 to %2", say(window.least_A, "A", "A"), say(window.most_A, "A", "A"));
  if (entered) return words("%1 (window %2)", with, between);
  return words(" (enter a homing current: %1 would do)", between);
}

std::string search_speed(Context& c, Axis a) {
  const bool entered = c.rig().axis(a).homing.speed_radps.si.has_value();
  return speed(homing_speed_radps(c, a)) + (entered ? "" : words(", the usual speed"));
}

std::string candidates(Context& c, Axis a) {
  const auto searched = searched_rad(c, a);
  if (const std::string missing = needs(c, a, kRatio); !missing.empty() || !searched)
    return words("How many output angles fit one encoder reading %1.",
                 missing.empty() ? words("needs the stops") : missing);
  const double turns = encoder_turns(c, a), count = homing_candidates(*searched, turns);
  if (count <= 1) return words("Only one output angle fits the encoder's reading then.");
  return words(
      "Of %1 output angles %2 apart that fit the encoder's reading, take the one nearest to that.",
      say(count, "1", "1"), angle(homing_spacing_rad(turns)));
}

void push_to_stop(Context& c, Axis a, Plan& plan) {
  const Travel& travel = c.travel(a);
  if (has_no_stops(c, a)) {
    plan.emplace_back(
        words("There is no stop to push to: choose a flag, an encoder at the output or a second "
              "encoder."));
    return;
  }
  plan.push_back(
      words("Move slowly (%1) towards the minus end%2.", search_speed(c, a), current(c, a)));
  const std::string met = words("When the speed has stayed below %1 for %2, it stands at the stop",
                                speed(homing_speed_radps(c, a) / 10), say(kStallTime_s, "s", "s"));
  if (!travel.stops_rad) {
    plan.push_back(met + ".");
  } else {
    const std::string missing = needs(c, a, kUnsureAtStop);
    plan.push_back(
        words("%1: the output is at %2%3. From the far end that takes %4.", met,
              angle(travel.centre_rad - *travel.stops_rad / 2),
              missing.empty() ? words(" ± %1, gap and wind-up", angle(stop_unsure_rad(c, a)))
                              : words(" (how far off it may be %1)", missing),
              say(homing_time_s(*travel.stops_rad, homing_speed_radps(c, a), true), "s", "s")));
  }
  plan.push_back(candidates(c, a));
}

void find_flag(Context& c, Axis a, Plan& plan) {
  const bool stops = !has_no_stops(c, a);
  plan.push_back(words("Move slowly (%1) towards the minus end%2 until the flag switches%3.",
                       search_speed(c, a), current(c, a),
                       stops ? words("; at the stop turn back") : ""));
  const std::string missing =
      needs(c, a, std::array<InputPath, 2>{"<axis>.homing.flag_error", "<axis>.gearbox.backlash"});
  if (missing.empty()) {
    plan.push_back(
        words("The output is then where the flag is, ± %1, the flag's error and half the gap.",
              angle(flag_unsure_rad(c, a))));
  } else {
    const bool known = needs(c, a, kRatio).empty();
    plan.push_back(words("The output is then where the flag is; how far off %1%2.", missing,
                         known ? words(" (less than %1 in all would do)",
                                       angle(homing_spacing_rad(encoder_turns(c, a)) / 2))
                               : ""));
  }
  plan.push_back(candidates(c, a));
}

void compare_encoders(Context& c, Axis a, Plan& plan) {
  if (const std::string missing = needs(c, a, kSecond); !missing.empty()) {
    plan.push_back(words("Read both encoders standing still; what they tell apart %1.", missing));
    return;
  }
  const double turns = encoder_turns(c, a);
  const double second = c.rig().axis(a).homing.second_ratio.value();
  plan.push_back(
      words("Read both encoders standing still: they turn %1 and %2 times a turn of the output, "
            "and read the same again after %3.",
            say(turns, "1", "1"), say(second, "1", "1"), angle(vernier_range_rad(turns, second))));
  const auto searched = searched_rad(c, a);
  if (!searched) return;
  const auto separation = vernier_separation_rad(turns, second, *searched);
  if (!separation) {
    plan.push_back(candidates(c, a));
    return;
  }
  plan.push_back(
      words("Of %1 output angles that fit the first reading, take the one whose second reading "
            "fits: they come as near as %2 to each other at the second encoder, so all errors may "
            "add up to %3 there.",
            say(homing_candidates(*searched, turns), "1", "1"), angle(*separation),
            angle(*separation / 2)));
}

void read_output(Context& c, Axis a, Plan& plan) {
  plan.push_back(words(
      "Read the encoder at the output standing still: one reading fits one angle of a turn%1",
      c.model(a).control.encoder_at_output ? "." : words("; the motor's encoder is set from it.")));
}

void go_home(Context& c, Axis a, Plan& plan) {
  const Homing& homing = c.rig().axis(a).homing;
  const Travel& travel = c.travel(a);
  const double home = homing.home_rad.value(), park = homing.park_rad.si.value_or(home);
  std::string limits;
  if (travel.usable_rad && std::isfinite(*travel.usable_rad))
    limits = words("Set the limits to %1 and %2, then go", angle(travel.least_rad()),
                   angle(travel.most_rad()));
  plan.push_back(words("%1 home to %2.", limits.empty() ? words("Go") : limits, angle(home)));
  if (park != home) plan.push_back(words("Park at %1 before power is switched off.", angle(park)));
  plan.emplace_back(
      keeps_count(c, a)
          ? words("The drive keeps its count: do this once, and again when the count was lost.")
          : words("The drive forgets its count: do this after every power-up."));
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
