#include <algorithm>
#include <cmath>
#include <complex>

#include "core/analysis/bracket_mode.h"
#include "core/analysis/cable_load.h"
#include "core/analysis/checks.h"
#include "core/analysis/crossover.h"
#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/move_back.h"
#include "core/analysis/say.h"
#include "core/units/angle.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

// Wanted margins of the loops: common practice, no source (control texts give 30°-60° and 6 dB).
constexpr double kWantedPhase_rad = 45 * kDegree_rad;
constexpr double kWantedGain = 2;

constexpr auto kMoveTime = joined(kSettle, std::array<InputPath, 1>{"task.within"});
constexpr auto kBreakaway =
    joined(kStall, std::array<InputPath, 4>{"<load>", "<axis>.friction.coulomb",
                                            "<axis>.gearbox.drag", "<axis>.cable.<spring>"});

/// The planned move along which a camera that swings is still first, where that is in time.
std::string sooner_along(Context& c, Axis a, double within_s) {
  const ProfileRun* best = nullptr;
  for (const ProfileRun& run : c.profiles(a).runs) {
    if (run.kind == ProfileKind::step || !run.camera_s) continue;
    if (best == nullptr || *run.camera_s < *best->camera_s) best = &run;
  }
  if (best == nullptr || *best->camera_s > within_s) return {};
  return words("; along the %1 move in %2", words(word_of(best->kind)),
               say(*best->camera_s, "s", "ms"));
}

/// The later of both ways, where weight or a cable makes the way back another move.
Compared slower_way(Context& c, Axis a, Compared there) {
  const MoveBack& back = c.move_back(a);
  if (!back.differs) return there;
  if (!back.settle_s)
    return {std::nullopt, there.capacity, there.because + words("; the move back never settles"),
            Compared::Outcome::impossible};
  there.because += words("; the move back in %1, as weight or cable pull to one side",
                         say(*back.settle_s, "s", "ms"));
  there.demand = std::max(*there.demand, *back.settle_s);
  return there;
}

/// Judged at the camera: behind a bracket that gives way it is still later than the output.
Compared move_time(Context& c, Axis a) {
  const auto& settle = c.step(a).figures.settle_time_s;
  const double within = c.rig().task.within_s.value();
  if (!settle)
    return {std::nullopt, within, words("never settles: %1", why_never_settles(c, a)),
            Compared::Outcome::impossible};
  const std::string axis = words("settles in %1", say(*settle, "s", "ms"));
  if (!bracket_mode_radps(c, a)) return slower_way(c, a, {*settle, within, axis});
  const auto& camera = c.step_at_camera(a).settle_s;
  const bool is_late = !camera || *camera > within;
  const std::string planned = is_late ? sooner_along(c, a, within) : std::string();
  if (!camera)
    return {std::nullopt, within,
            words("%1, but the camera swings on its bracket for longer than 30 s", axis) + planned,
            Compared::Outcome::impossible};
  return slower_way(
      c, a,
      {*camera, within,
       words("%1, the camera on its bracket in %2", axis, say(*camera, "s", "ms")) + planned});
}

/// Of a camera on a bracket. What rings after the simulation rings about where the output was then,
/// so that this one ends where the step's own does; one that has not settled by then is too late.
double camera_trial_s(Context& c, Axis a, double within_s) {
  const double move_rad = c.move_rad(a);
  const SettledStep run =
      simulate_until_settled(c.model(a), move_rad, c.band_rad(), c.stop(), within_s);
  return camera_still(c, a, run, move_rad, 0).settle_s.value_or(kInfinity);
}

/// Simulates only twice the wanted time: enough to tell whether the band is kept from `within` on.
double output_trial_s(Context& c, Axis a, double within_s) {
  const double move = c.move_rad(a);
  const Trace trace = simulate_step(c.model(a), move, 2 * within_s);
  const auto settle = step_figures(trace, move, c.band_rad()).settle_time_s;
  const bool complete = !trace.time_s.empty() && trace.time_s.back() > 1.9 * within_s;
  return complete ? settle.value_or(kInfinity) : kInfinity;
}

Compared move_time_trial(Context& c, Axis a) {
  const double within = c.rig().task.within_s.value();
  const double there =
      bracket_mode_radps(c, a) ? camera_trial_s(c, a, within) : output_trial_s(c, a, within);
  if (there > within) return {there, within, {}};
  const MoveBack back = move_back_within(c, a, within);
  return {back.differs ? std::max(there, back.settle_s.value_or(kInfinity)) : there, within, {}};
}

Compared breakaway(Context& c, Axis a) {
  const double stall = stall_torque_Nm(c.model(a));
  const HeldBack back = held_back(c.model(a));
  const auto wound = cable_wound_Nm(c, a);
  if (!wound) return {std::nullopt, stall, kWindsUnknown};
  const auto torque = [](double value_Nm) { return say(value_Nm, "N.m", "N.m"); };
  return {back.sum_Nm() + *wound, stall,
          words("friction %1, gravity at its worst angle %2, gearbox drag %3%4",
                torque(back.friction_Nm), torque(back.weight_Nm), torque(back.drag_Nm),
                *wound > 0 ? words(", cable wound up %1", torque(*wound)) : "")};
}

/// Of one loop. One that never crosses unit gain below half the sample rate is
/// below it all the way, and cannot swing (infinite), or above it, which no sampled loop can hold
/// (empty).
std::optional<double> phase_margin_rad(const LoopMargins& margins, std::complex<double> last_gain) {
  if (margins.phase_margin_rad || std::abs(last_gain) >= 1) return margins.phase_margin_rad;
  return kInfinity;
}

std::string say_phase(double margin_rad) {
  return std::isinf(margin_rad) ? words("no crossover, cannot swing")
                                : say(margin_rad, "rad", "deg");
}

Compared phase_margin(Context& c, Axis a) {
  const double half_rate_radps = M_PI * c.model(a).control.control_rate_Hz;
  const auto speed = phase_margin_rad(c.speed_margins(a), speed_loop(c.model(a), half_rate_radps));
  const auto position =
      phase_margin_rad(c.position_margins(a), position_loop(c.model(a), half_rate_radps));
  if (!speed || !position)
    return {kWantedPhase_rad, std::nullopt, say_never_below_1(speed ? "position" : "speed"),
            Compared::Outcome::impossible};
  const double least_rad = std::min(*speed, *position);
  if (std::isinf(least_rad))
    return moot(words("the gain of both loops stays below 1: slow, no swing"));
  return {kWantedPhase_rad, least_rad,
          words("speed loop %1, position loop %2; 45° is common practice", say_phase(*speed),
                say_phase(*position))};
}

Compared gain_margin(Context& c, Axis a) {
  const auto& speed = c.speed_margins(a).gain_margin;
  const auto& position = c.position_margins(a).gain_margin;
  if (!speed && !position) {
    return moot(words("the phase never reaches −180° below half the sample rate"));
  }
  return {kWantedGain, std::min(speed.value_or(kInfinity), position.value_or(kInfinity)),
          words("a factor of 2 (6 dB) is common practice")};
}

constexpr Lever kMoveTimeLevers[] = {{"<axis>.gearbox.ratio", Way::down, 8},
                                     {"<axis>.gearbox.ratio", Way::up, 8},
                                     {"supply.current_limit", Way::up, 6},
                                     {"<axis>.drive.current_limit", Way::up, 4},
                                     {"<axis>.drive.speed_limit", Way::up, 10},
                                     {"<axis>.loop.speed_limit", Way::up, 10},
                                     {"<axis>.loop.position_gain", Way::up, 6},
                                     {"<axis>.loop.position_gain", Way::down, 6},
                                     {"<axis>.loop.speed_gain", Way::up, 6},
                                     {"<axis>.loop.speed_gain", Way::down, 6},
                                     {"<axis>.loop.speed_integral_gain", Way::down, 30},
                                     {"<axis>.gearbox.backlash", Way::down, 20},
                                     {"<axis>.bracket.stiffness", Way::up, 20}};
constexpr Lever kBreakawayLevers[] = {{"<axis>.gearbox.ratio", Way::up, 20},
                                      {"<axis>.drive.current_limit", Way::up, 10}};
constexpr Lever kMarginLevers[] = {{"<axis>.loop.speed_gain", Way::down, 30},
                                   {"<axis>.loop.speed_integral_gain", Way::down, 100},
                                   {"<axis>.loop.position_gain", Way::down, 30},
                                   {"<axis>.loop.speed_gain", Way::up, 10}};

constexpr Check kMotionChecks[] = {
    {"<axis>.move.time", "Move and settle in time", "would make the move in time", "<axis>.gearbox",
     "s", "ms", kMoveTime, move_time, kMoveTimeLevers, move_time_trial},
    {"<axis>.move.torque", "Torque to start moving", "would start it moving", "<axis>.motor", "N.m",
     "N.m", kBreakaway, breakaway, kBreakawayLevers},
    {"<axis>.loop.phase_margin",
     "Phase margin of the loops",
     "would leave 45°",
     "<axis>.loop",
     "rad",
     "deg",
     kLoops,
     phase_margin,
     kMarginLevers,
     nullptr,
     {},
     nullptr,
     advised_gains},
    {"<axis>.loop.gain_margin",
     "Gain margin of the loops",
     "would leave a factor of 2",
     "<axis>.loop",
     "1",
     "1",
     kLoops,
     gain_margin,
     kMarginLevers,
     nullptr,
     {},
     nullptr,
     advised_gains},
};

}  // namespace

std::span<const Check> motion_checks() { return kMotionChecks; }

}  // namespace gazewright
