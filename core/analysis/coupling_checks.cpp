#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/motion/slowing.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kHold = joined(kBothSteps, kToPixels);
constexpr double kRounding_rad = 1e-9;  // what is less comes from rounding
constexpr double kTrial_s = 0.3;        // of a remedy: the other axis' move and what it stirs up

constexpr Lever kLevers[] = {{"<axis>.loop.speed_gain", Way::up, 6},
                             {"<axis>.loop.speed_integral_gain", Way::up, 10},
                             {"<axis>.loop.position_gain", Way::up, 4},
                             {"<axis>.gearbox.backlash", Way::down, 20}};

Compared hold_still(Context& c, Axis a) {
  const Coupling::Held& held = c.coupling()->holding(a);  // not asked in a quick analysis
  if (held.trace.ran_away)
    return {std::nullopt, c.band_rad(), words("runs away: a loop is unstable"),
            Compared::Outcome::impossible};
  if (held.largest_rad < kRounding_rad) return moot(words("nothing ties it to the other axis"));
  const Axis other = a == Axis::pan ? Axis::tilt : Axis::pan;
  const double pull_Nm = std::abs(c.model(a).load.pull_Nm(0));
  if (slowing_radps2(c.model(a), Slowing::braking, 0, pull_Nm) < 0)
    return {held.largest_rad, c.band_rad(),
            words("cannot hold its weight: %1 pulls against %2 of the motor, and it falls by %3 "
                  "whatever %4 does",
                  say(pull_Nm, "N.m", "N.m"), say(stall_torque_Nm(c.model(a)), "N.m", "N.m"),
                  say(held.largest_rad, "rad", "deg"), words(name_of(other)))};
  return {held.largest_rad, c.band_rad(),
          words("%1's move pushes it off by %2 (%3 px) at %4", words(name_of(other)),
                say(held.largest_rad, "rad", "deg"),
                say(held.largest_rad * c.pixels_per_radian(), "1", "1"),
                say(held.largest_at_s, "s", "ms"))};
}

Compared hold_still_trial(Context& c, Axis a) {
  PanTilt move_rad{c.move_rad(Axis::pan), c.move_rad(Axis::tilt)};
  (a == Axis::pan ? move_rad.pan : move_rad.tilt) = 0;
  const CoupledTrace trace =
      simulate_both({{c.model(Axis::pan), c.model(Axis::tilt)}, c.bodies()}, move_rad, kTrial_s);
  double largest_rad = trace.ran_away ? kInfinity : 0;
  for (const double angle_rad : trace.of(a).angle_rad)
    largest_rad = std::max(largest_rad, std::abs(angle_rad));
  return {largest_rad, c.band_rad(), {}};
}

constexpr Check kCouplingChecks[] = {
    {.id = "<axis>.coupling.disturbance",
     .what = "Hold still while the other axis moves",
     .goal = "would keep it inside the settle band",
     .part = "<axis>.loop",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kHold,
     .compare = hold_still,
     .levers = kLevers,
     .trial = hold_still_trial,
     .asked_when = [](Context& c, Axis) { return !c.is_quick(); }},
};

}  // namespace

std::span<const Check> coupling_checks() { return kCouplingChecks; }

}  // namespace gazewright
