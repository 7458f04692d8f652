#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/say.h"
#include "core/analysis/stand_values.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kSlides = joined(kStandMoves, std::array<InputPath, 1>{"stand.grip"});

bool is_screwed_down(Context& c) { return std::isinf(c.rig().stand.grip.value()); }

Compared stands(Context& c, Axis) {
  if (is_screwed_down(c)) return moot(words("it is screwed down"));
  const Tipping tip = tipping(c);
  const StandPush push = push_of(c);
  std::string text = words(
      "both axes' fastest moves at once push with %1, lean and offset with %2; at rest it tips at "
      "a lean of %3",
      say(push.overturning_Nm, "N.m", "N.m"), say(tip.resting_Nm, "N.m", "N.m"),
      say(tip.lean_rad, "rad", "deg"));
  return {tip.resting_Nm + push.overturning_Nm, tip.holding_Nm, std::move(text)};
}

Compared slides(Context& c, Axis) {
  if (is_screwed_down(c)) return moot(words("it is screwed down"));
  const FeetPull feet = pull_at_feet(c);
  return {
      feet.sum_N(), c.rig().stand.grip.value() * feet.pressing_N,
      words("pan's reaction at the feet %1, masses off their axes %2, lean %3",
            say(feet.twist_N, "N", "N"), say(feet.push_N, "N", "N"), say(feet.lean_N, "N", "N"))};
}

Compared sways(Context& c, Axis a) {
  if (!c.step(a).figures.settle_time_s)
    return {std::nullopt, std::nullopt, words("the axis itself never settles")};
  const Swayed& swayed = stand_swayed(c, a);
  const double scale = c.pixels_per_radian();
  return {
      scale * swayed.left_rad, c.rig().task.settle_band_px.value(),
      words("%1%2 (%3 px); its first mode is at %4",
            a == Axis::pan ? words("pan's move twists it by ") : words("tilt's move sways it by "),
            say(swayed.largest_rad, "rad", "deg"), say(scale * swayed.largest_rad, "1", "1"),
            say(stand_first_mode_Hz(c), "Hz", "Hz"))};
}

bool once(Context&, Axis axis) { return axis == Axis::pan; }
/// An axis that never settles has a finding of its own.
bool settles(Context& c, Axis a) {
  if (c.is_quick()) return false;
  return !c.missing(kStep, a).empty() || c.step(a).figures.settle_time_s;
}

constexpr Lever kTipLevers[] = {{"stand.half_width", Way::up, 6},
                                {"stand.mass", Way::up, 20},
                                {"stand.height", Way::down, 10},
                                {"tilt.drive.current_limit", Way::down, 10},
                                {"pan.drive.current_limit", Way::down, 10}};
constexpr Lever kSlideLevers[] = {{"stand.grip", Way::up, 10},
                                  {"stand.half_width", Way::up, 6},
                                  {"stand.mass", Way::up, 20},
                                  {"pan.drive.current_limit", Way::down, 10}};
constexpr Lever kSwayLevers[] = {{"stand.sway_stiffness", Way::up, 30},
                                 {"stand.sway_damping", Way::up, 20},
                                 {"<axis>.loop.position_gain", Way::down, 10}};

constexpr Check kStandChecks[] = {
    {.id = "stand.tipping",
     .what = "Stand stays on its feet",
     .goal = "would keep it on its feet",
     .part = "stand",
     .si_unit = "N.m",
     .unit = "N.m",
     .inputs = kStandMoves,
     .compare = stands,
     .levers = kTipLevers,
     .asked_when = once},
    {.id = "stand.sliding",
     .what = "Feet stay where they stand",
     .goal = "would keep the feet in place",
     .part = "stand",
     .si_unit = "N",
     .unit = "N",
     .inputs = kSlides,
     .compare = slides,
     .levers = kSlideLevers,
     .asked_by = "stand.grip",
     .asked_when = once},
    {.id = "<axis>.stand.sway",
     .what = "Stand is still when the axis has settled",
     .goal = "would leave the stand still",
     .part = "stand",
     .si_unit = "1",
     .unit = "px",
     .inputs = kStandSwaysInPicture,
     .compare = sways,
     .levers = kSwayLevers,
     .asked_when = settles},
};

}  // namespace

std::span<const Check> stand_checks() { return kStandChecks; }

}  // namespace gazewright
