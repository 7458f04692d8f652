#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/reach.h"
#include "core/analysis/say.h"
#include "core/travel/joined.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::array<InputPath, 3> kBodies{"on_tilt", "on_pan", "tilt.axis_at"};
constexpr std::array<InputPath, 2> kKeepOuts{"keep_outs", "task.<axis>_move"};

std::string say_joined(const Joined& pair) {
  if (!pair.is_doubtful()) return words("%1 and %2", pair.tilting, pair.other);
  return words("%1 and %2, %3 deep in each other", pair.tilting, pair.other,
               say(pair.overlap_m, "m", "mm"));
}

bool is_doubtful(const std::vector<Joined>& joined) {
  return std::ranges::any_of(joined, &Joined::is_doubtful);
}

/// The pairs and bodies between which nothing is worked out; doubtful pairs come first.
std::string left_out(const Clearance& clearance, const std::vector<Joined>& joined) {
  std::string text, pairs, names;
  for (const bool doubtful : {true, false}) {
    for (const Joined& pair : joined)
      if (pair.is_doubtful() == doubtful) pairs += (pairs.empty() ? "" : "; ") + say_joined(pair);
  }
  if (!pairs.empty()) text = words("; left out, as they touch at rest: %1", pairs);
  if (is_doubtful(joined))
    text += words("; where they do not belong together, move one or make it smaller");
  for (const std::string& name : clearance.without_shape)
    names += (names.empty() ? "" : ", ") + name;
  if (!names.empty()) text += words("; without a shape and left out: %1", names);
  return text;
}

std::string say_contact(const Contact& contact) {
  return words("%1 meets %2 at tilt %3", contact.tilting, contact.other,
               say(contact.tilt_rad, "rad", "deg"));
}

/// The side with the lesser margin of usable tilt against its first contact.
Compared collision(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (!travel.usable_rad)
    return {std::nullopt, std::nullopt, words("the usable travel is not known")};
  const Clearance& clearance = c.clearance();
  const std::vector<Joined> joined = joined_of(c.rig());
  const std::string others = left_out(clearance, joined);
  std::optional<Compared> worst;
  const auto compare = [&](const std::optional<Contact>& contact, double travel_rad) {
    if (!contact) return;
    // A travel without end goes at least once round.
    const Compared now{std::clamp(travel_rad, 0.0, 2 * M_PI), std::abs(contact->tilt_rad),
                       say_contact(*contact) + others};
    if (!worst || *margin_of(now) < *margin_of(*worst)) worst = now;
  };
  compare(clearance.down, -travel.least_rad());
  compare(clearance.up, travel.most_rad());
  Compared found = worst ? *worst : moot(words("nothing is met within half a turn%1", others));
  if (is_doubtful(joined)) found.outcome = Compared::Outcome::doubtful;
  return found;
}

/// How far the axis may turn from the rest pose, the other at rest, before it enters a keep-out.
struct Free {
  double down_rad = kInfinity, up_rad = kInfinity;
};
Free free_of(const PoseWindow& keep_out, Axis axis) {
  const double tilt_middle = (keep_out.tilt_least_rad + keep_out.tilt_most_rad) / 2;
  const double pan_middle = (keep_out.pan_least_rad + keep_out.pan_most_rad) / 2;
  if (is_inside(keep_out, 0, 0)) return {0, 0};
  Free free;
  if (axis == Axis::tilt && is_inside(keep_out, 0, tilt_middle)) {
    if (keep_out.tilt_least_rad >= 0) free.up_rad = keep_out.tilt_least_rad;
    if (keep_out.tilt_most_rad <= 0) free.down_rad = -keep_out.tilt_most_rad;
  }
  if (axis == Axis::pan && is_inside(keep_out, pan_middle, 0)) {
    constexpr double kTurn_rad = 2 * M_PI;
    free.up_rad =
        keep_out.pan_least_rad - kTurn_rad * std::floor(keep_out.pan_least_rad / kTurn_rad);
    free.down_rad =
        -keep_out.pan_most_rad + kTurn_rad * std::ceil(keep_out.pan_most_rad / kTurn_rad);
  }
  return free;
}

Compared keep_out(Context& c, Axis a) {
  const Rig& rig = c.rig();
  double free_rad = kInfinity;
  std::string name;
  for (const KeepOut& entry : rig.keep_outs) {
    const auto window = window_of(entry);
    if (!window) continue;
    const Free free = free_of(*window, a);
    const double least = std::min(free.down_rad, free.up_rad);
    if (least < free_rad)
      free_rad = least, name = entry.name.empty() ? words("a keep-out") : entry.name;
  }
  if (std::isinf(free_rad)) return moot(words("no keep-out lies across the move"));
  const double move = c.move_rad(a);
  if (free_rad <= 0)
    return {move, 0.0, words("the rest pose itself is in %1", name), Compared::Outcome::impossible};
  return {move, 2 * free_rad,
          words("%1 lies %2 from the rest pose", name, say(free_rad, "rad", "deg"))};
}

bool is_tilt(Context&, Axis axis) { return axis == Axis::tilt; }
bool has_keep_outs(Context& c, Axis) { return !c.rig().keep_outs.empty(); }

constexpr Lever kCollisionLevers[] = {{"<axis>.stops.soft_inset", Way::up, 60}};
constexpr Lever kKeepOutLevers[] = {{"task.<axis>_move", Way::down, 20}};
constexpr Check kReachChecks[] = {
    {.id = "<axis>.travel.collision",
     .what = "Bodies stay clear over the travel",
     .goal = "would stop it before they meet",
     .part = "<axis>.stops",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kBodies,
     .compare = collision,
     .levers = kCollisionLevers,
     .asked_when = is_tilt},
    {.id = "<axis>.travel.keep_out",
     .what = "The task's move stays out of the keep-outs",
     .goal = "would stay out of it",
     .part = "keep_outs",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kKeepOuts,
     .compare = keep_out,
     .levers = kKeepOutLevers,
     .asked_when = has_keep_outs},
};

}  // namespace

std::span<const Check> reach_checks() { return kReachChecks; }

}  // namespace gazewright
