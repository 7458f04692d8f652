#include "core/analysis/profiles.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/bracket_mode.h"
#include "core/analysis/context.h"
#include "core/analysis/say.h"
#include "core/motion/ringing.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kLongestMove_s = 20;  // what is planned to take longer is not simulated
constexpr double kWorthNaming = 0.01;  // of a time

/// Root of the mean square over the time up to `until_s`.
double rms_to(const Trace& trace, double until_s) {
  double sum = 0;
  std::size_t rows = 0;
  for (; rows < trace.time_s.size() && trace.time_s[rows] <= until_s; ++rows)
    sum += trace.current_A[rows] * trace.current_A[rows];
  return rows == 0 ? 0 : std::sqrt(sum / static_cast<double>(rows));
}

std::optional<BracketMode> bracket_of(Context& context, Axis axis) {
  const auto natural = bracket_mode_radps(context, axis);
  if (!natural) return std::nullopt;
  return BracketMode{*natural, context.rig().axis(axis).bracket.damping_ratio.value()};
}

void fill(ProfileRun& run, Context& context, Axis axis, const SettledStep& simulated,
          const Profile& profile) {
  const Trace& trace = simulated.trace;
  run.planned_s = profile.time_s;
  run.time_s = trace.time_s;
  run.angle_rad = trace.angle_rad;
  for (const double t : trace.time_s) run.planned_rad.push_back(profile.at(t).angle_rad);
  run.figures = simulated.figures;
  const auto& settle_s = run.figures.settle_time_s;
  if (settle_s) run.rms_current_A = rms_to(trace, *settle_s);
  if (!std::isfinite(context.band_rad())) return;
  const CameraStill still =
      profile.kind == ProfileKind::step
          ? context.step_at_camera(axis)
          : camera_still(context, axis, simulated, profile.move_rad, profile.time_s);
  run.ringing_rad = still.ringing_rad;
  run.camera_s = still.settle_s;
  const Camera& camera = context.rig().camera;
  if (still.settle_s && camera.exposure_s.si && camera.delay_s.si)
    run.usable_s = *still.settle_s + *camera.exposure_s.si + *camera.delay_s.si;
}

ProfileRun run_of(Context& context, Axis axis, ProfileKind kind, const std::stop_token& stop) {
  ProfileRun run;
  run.kind = kind;
  const AxisModel& model = context.model(axis);
  const auto profile = plan(kind, model, context.move_rad(axis));
  if (!profile) {
    run.because = words("cannot make the move: torque below friction, gravity and cable");
    return run;
  }
  if (!(profile->time_s <= kLongestMove_s)) {
    run.because = words("planned to take %1: what takes longer than %2 is not simulated",
                        say(profile->time_s, "s", "s"), say(kLongestMove_s, "s", "s"));
    return run;
  }
  if (kind == ProfileKind::step) {
    fill(run, context, axis, context.step(axis), *profile);
  } else {
    fill(run, context, axis,
         simulate_until_settled(model, *profile, context.step_band_rad(axis), stop), *profile);
  }
  return run;
}

/// What decides: the picture, else the output.
std::optional<double> until_s(const ProfileRun& run) {
  return run.usable_s ? run.usable_s : run.figures.settle_time_s;
}

const ProfileRun* best_of(const std::vector<ProfileRun>& runs) {
  const ProfileRun* best = nullptr;
  for (const ProfileRun& run : runs) {
    if (until_s(run) && (best == nullptr || *until_s(run) < *until_s(*best))) best = &run;
  }
  return best;
}

std::string against_step(const ProfileRun& best, const ProfileRun& step) {
  if (best.kind == ProfileKind::step) return words("; no planned move is quicker");
  if (!until_s(step)) return words("; the plain step never settles");
  const double sooner = *until_s(step) - *until_s(best);
  std::string text;
  if (sooner > kWorthNaming * *until_s(step))
    text = words(", %1 before the plain step", say(sooner, "s", "ms"));
  const double peak = best.figures.peak_current_A, step_peak = step.figures.peak_current_A;
  if (std::abs(peak - step_peak) > kWorthNaming * step_peak)
    text += words(", with %1 at most instead of %2", say(peak, "A", "A"), say(step_peak, "A", "A"));
  return text;
}

std::string advice_on(const AxisProfiles& profiles, const AxisModel& model) {
  const ProfileRun* best = best_of(profiles.runs);
  std::string text = words("no profile settles");
  if (best != nullptr) {
    text = words(word_of(best->kind)) +
           (best->usable_s ? words(" gives a usable picture first, after ")
                           : words(" settles first, after ")) +
           say(*until_s(*best), "s", "ms") + against_step(*best, profiles.runs.front());
  }
  if (model.control.speed_feed_forward == 0)
    text += words("; without speed feed-forward every planned move trails behind its plan");
  return text;
}

}  // namespace

const ProfileRun* AxisProfiles::run(ProfileKind kind) const {
  const auto found =
      std::ranges::find_if(runs, [kind](const ProfileRun& run) { return run.kind == kind; });
  return found == runs.end() ? nullptr : &*found;
}

CameraStill camera_still(Context& context, Axis axis, const SettledStep& run, double move_rad,
                         double planned_s) {
  const auto& settle_s = run.figures.settle_time_s;
  const auto mode = bracket_of(context, axis);
  CameraStill still{settle_s, std::nullopt, {}};
  if (!settle_s || !mode) return still;
  const CameraMotion motion = camera_motion(run.trace, *mode, move_rad, context.band_rad(),
                                            std::max(*settle_s, planned_s), &still.angle_rad);
  still.settle_s = motion.settle_time_s;
  still.ringing_rad = motion.ringing_rad;
  return still;
}

AxisProfiles profiles_of(Context& context, Axis axis, const std::stop_token& stop) {
  AxisProfiles profiles;
  for (const ProfileKind kind : kProfiles) {
    if (stop.stop_requested()) return {};
    profiles.runs.push_back(run_of(context, axis, kind, stop));
  }
  if (const ProfileRun* best = best_of(profiles.runs)) profiles.best = best->kind;
  profiles.advice = advice_on(profiles, context.model(axis));
  return profiles;
}

}  // namespace gazewright
