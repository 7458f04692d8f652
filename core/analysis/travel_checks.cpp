#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

using Way = Lever::Way;
constexpr auto kMoveFits = joined(kUsable, std::array<InputPath, 1>{"task.<axis>_move"});
constexpr auto kInset = joined(joined(joined(kRigidTrain, kTopSpeed), kSoft),
                               std::array<InputPath, 1>{"<axis>.loop.speed_limit"});
Compared move_fits(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (!travel.usable_rad) return {std::nullopt, std::nullopt, "the usable travel is not known"};
  if (std::isinf(*travel.usable_rad)) return moot("turns without end");
  // The move is centred on the rest pose, the travel on the stops' centre.
  const double reach = 2 * std::max(0.0, std::min(travel.most_rad(), -travel.least_rad()));
  return {c.move_rad(a), reach, "room on both sides of the rest pose"};
}

Compared inset(Context& c, Axis a) {
  if (has_no_stops(c, a)) return moot("there are no stops");
  // The loop never asks for more than its speed limit; a runaway is the stop's business.
  const double top = std::min(top_speed_radps(c.model(a)), c.model(a).control.speed_limit_radps);
  const double have = c.rig().axis(a).stops.soft_inset_rad.value();
  const auto need = braking_angle_rad(c.model(a), top);
  if (!need)
    return {std::nullopt, have, "it cannot brake against gravity and cable at all",
            Compared::Outcome::impossible};
  return {*need, have, "braking from " + say(top, "rad/s", "deg/s")};
}

constexpr Lever kFitLevers[] = {
    {"<axis>.stops.soft_inset", Way::down, 100}, {"<axis>.cable.free_length", Way::up, 10},
    {"<axis>.cable.wall_radius", Way::up, 5},    {"<axis>.cable.hub_radius", Way::down, 5},
    {"<axis>.stops.tab_width", Way::down, 20},   {"task.<axis>_move", Way::down, 10}};
constexpr Lever kInsetLevers[] = {{"<axis>.stops.soft_inset", Way::up, 60},
                                  {"<axis>.loop.speed_limit", Way::down, 10}};
constexpr Check kChecks[] = {
    {"<axis>.travel.move", "The task's move fits the travel", "would make room for the move",
     "<axis>.stops", "rad", "deg", kMoveFits, move_fits, kFitLevers},
    {"<axis>.travel.soft_inset", "Room to brake between soft limit and stop",
     "would stop it before the hard stop", "<axis>.stops", "rad", "deg", kInset, inset,
     kInsetLevers},
};

}  // namespace

std::span<const Check> travel_checks() { return kChecks; }

}  // namespace gazewright
