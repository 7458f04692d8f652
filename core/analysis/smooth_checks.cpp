#include <algorithm>

#include "core/analysis/checks.h"
#include "core/analysis/say.h"
#include "core/analysis/smooth_values.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kRipple = joined(kSlow, kToPixels);

/// Picture ripple of slow moves against the settle band.
Compared ripple(Context& c, Axis a) {
  const double band_px = c.rig().task.settle_band_px.value();
  if (auto why = why_not_slow(c, a)) {
    if (begins_as("needs %1", *why)) return {std::nullopt, band_px, *why};
    return {std::nullopt, band_px, *why, Compared::Outcome::impossible};
  }
  const SlowParts parts = slow_parts(c.rig(), a);
  const SlowLimits& limits = *c.slow_limits(a);
  const double per_rad = c.pixels_per_radian();
  const WorstRipple& worst = c.worst_cogging(a);
  const bool sticks = limits.friction_radps > 0;
  const double jump_px = sticks ? stick_slip_jump_rad(c.model(a), parts) * per_rad : 0;
  const double cogging_px = worst.ripple_rad * per_rad;
  std::string because =
      jump_px > cogging_px
          ? words("sticks and slips below %1: friction falls faster than the loops hold",
                  say(limits.friction_radps, "rad/s", "deg/s"))
          : words("cogging shakes it most at %1", say(worst.speed_radps, "rad/s", "deg/s"));
  because += words("; steady from %1 on", say(limits.lowest_radps(), "rad/s", "deg/s"));
  return {std::max(jump_px, cogging_px), band_px, because};
}

constexpr Lever kLevers[] = {{"<axis>.loop.speed_gain", Way::up, 10},
                             {"<axis>.loop.position_gain", Way::up, 6},
                             {"<axis>.loop.speed_integral_gain", Way::up, 20},
                             {"<axis>.motor.cogging_torque", Way::down, 20},
                             {"<axis>.friction.breakaway", Way::down, 4}};

const Check kSmoothChecks[] = {
    {.id = "<axis>.smooth.ripple",
     .what = "Slow moves without jerks",
     .goal = "would keep slow moves within the settle band",
     .part = "<axis>.friction",
     .si_unit = "1",
     .unit = "px",
     .inputs = kRipple,
     .compare = ripple,
     .levers = kLevers,
     .asked_when = [](Context& c,
                      Axis a) { return has_cogging(c, a) || has_falling_friction(c, a); }},
};

}  // namespace

std::span<const Check> smooth_checks() { return kSmoothChecks; }

}  // namespace gazewright
