#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"
#include "core/analysis/worst_pose.h"
#include "core/motion/slowing.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kMoveFits = joined(kUsable, std::array<InputPath, 1>{"task.<axis>_move"});
constexpr auto kInset =
    joined(joined(kBraking, kSoft),
           std::array<InputPath, 2>{"<axis>.drive.control_rate", "<axis>.drive.current_bandwidth"});

Compared move_fits(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (!travel.usable_rad)
    return {std::nullopt, std::nullopt, words("the usable travel is not known")};
  if (std::isinf(*travel.usable_rad)) return moot(words("turns without end"));
  // The move is centred on the rest pose, the travel on the stops' centre.
  const double reach = 2 * std::max(0.0, std::min(travel.most_rad(), -travel.least_rad()));
  return {c.move_rad(a), reach, words("room on both sides of the rest pose")};
}

Compared inset(Context& c, Axis a) {
  if (has_no_stops(c, a)) return absent();
  // The loop never asks for more than its speed limit; a runaway is the stop's business.
  const double speed = fastest_asked_radps(c.model(a));
  const double have = c.rig().axis(a).stops.soft_inset_rad.value();
  const AxisModel& model = worst_pose(c, a).model;
  const auto braking = stopping_angle_rad(model, Slowing::braking, speed, worst_pull_Nm(c, a));
  if (!braking)
    return {std::nullopt, have, words("it cannot brake against gravity and cable at all"),
            Compared::Outcome::impossible};
  const double unbraked = unbraked_angle_rad(model, speed);
  return {*braking + unbraked, have,
          words("braking from %1, %2 of it before the brake acts", say(speed, "rad/s", "deg/s"),
                say(unbraked, "rad", "deg")) +
              say_worst_load(c, a)};
}

/// "soft limit 142°, hard stop 148°, cable 234°", by the angle at one end, the nearest first.
std::string limits_in_order(const Travel& travel, End end) {
  struct Limit {
    double span_rad;
    std::string name;
  };
  std::vector<Limit> limits{{*travel.soft_rad, words("soft limit")},
                            {*travel.stops_rad, words("hard stop")},
                            {*travel.cable_rad, words("cable")}};
  std::stable_sort(limits.begin(), limits.end(),
                   [](const Limit& a, const Limit& b) { return a.span_rad < b.span_rad; });
  std::string text;
  for (const Limit& limit : limits) {
    const double angle = end_angle_rad(travel, limit.span_rad, end);
    text += (text.empty() ? "" : ", ") + limit.name + " " + say(angle, "rad", "deg");
  }
  return text;
}

Compared order(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  const auto& cable = travel.cable_rad;
  if (cable && std::isinf(*cable)) return absent();
  if (!cable || !travel.soft_rad || !travel.stops_rad)
    return {travel.soft_rad, cable, words("the travel of the cable or of the stops is not known")};
  if (std::isinf(*travel.soft_rad))
    return {std::nullopt, *cable, words("a cable crosses an axis that has no soft limits"),
            Compared::Outcome::impossible};
  return {*travel.soft_rad, *cable,
          words("one way %1; the other way %2", limits_in_order(travel, End::most),
                limits_in_order(travel, End::least))};
}

constexpr Lever kFitLevers[] = {
    {"<axis>.stops.soft_inset", Way::down, 100}, {"<axis>.stops.centre", Way::to_zero, 1000},
    {"<axis>.stops.window", Way::up, 10},        {"<axis>.stops.post_width", Way::down, 20},
    {"<axis>.stops.tab_width", Way::down, 20},   {"<axis>.stops.radius", Way::up, 10},
    {"<axis>.stops.trailers", Way::up, 20},      {"<axis>.cable.free_length", Way::up, 10},
    {"<axis>.cable.free_length", Way::down, 2},  // of a coil that nearly fills its room
    {"<axis>.cable.twist_rating", Way::up, 10},  {"<axis>.cable.wall_radius", Way::up, 5},
    {"<axis>.cable.hub_radius", Way::down, 5},   {"<axis>.cable.moving_radius", Way::down, 10},
    {"task.<axis>_move", Way::down, 10}};
constexpr Lever kInsetLevers[] = {{"<axis>.stops.soft_inset", Way::up, 60},
                                  {"<axis>.loop.speed_limit", Way::down, 10}};
constexpr Lever kOrderLevers[] = {{"<axis>.stops.soft_inset", Way::up, 60},
                                  {"<axis>.cable.free_length", Way::up, 10},
                                  {"<axis>.cable.twist_rating", Way::up, 10}};
constexpr Check kTravelChecks[] = {
    {"<axis>.travel.move", "The task's move fits the travel", "would make room for the move",
     "<axis>.stops", "rad", "deg", kMoveFits, move_fits, kFitLevers},
    {"<axis>.travel.soft_inset", "Room to brake between soft limit and stop",
     "would stop it before the hard stop", "<axis>.stops", "rad", "deg", kInset, inset,
     kInsetLevers},
    {"<axis>.travel.order", "Soft limits come before the cable's",
     "would stop it before the cable does", "<axis>.cable", "rad", "deg", kUsable, order,
     kOrderLevers},
};

}  // namespace

std::span<const Check> travel_checks() { return kTravelChecks; }

}  // namespace gazewright
