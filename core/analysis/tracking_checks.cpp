#include <algorithm>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/tracking.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr std::array<InputPath, 2> kPicture{"camera.columns", "camera.rows"};
constexpr auto kTracking = joined(kLoops, kPicture);

Compared in_picture_of(Context& c, Axis a, const TrackingRuns& runs) {
  if (!runs.because.empty()) return {std::nullopt, std::nullopt, runs.because};
  const Camera& camera = c.rig().camera;
  const DetectorRun& run = runs.detectors.front();
  const auto i = static_cast<std::size_t>(a);
  if (run.most_px[i] == 0) return moot(words("the target does not move this axis"));
  const double half_px = (a == Axis::pan ? camera.columns.value() : camera.rows.value()) / 2;
  std::string because = words("with %1 the target is off by %2 on average (root mean square)",
                              run.name, say(run.rms_rad[i], "rad", "deg"));
  if (run.at_limit[i] > 0)
    because += words("; it leads beyond the travel, which holds the axis for %1 of the time",
                     say(run.at_limit[i], "1", "%"));
  return {run.most_px[i], half_px, because};
}

Compared in_picture(Context& c, Axis a) { return in_picture_of(c, a, c.tracking()); }
Compared in_picture_trial(Context& c, Axis a) { return in_picture_of(c, a, first_detector_of(c)); }

Compared gain(Context& c, Axis a) {
  const TrackingRuns& runs = c.tracking();
  if (!runs.because.empty()) return {std::nullopt, std::nullopt, runs.because};
  // The detector that leaves least.
  const auto i = static_cast<std::size_t>(a);
  const auto worst = std::ranges::max_element(runs.detectors, {}, [i](const DetectorRun& run) {
    return run.loop[i].gain_1ps / run.loop[i].gain_ceiling_1ps;
  });
  const OuterLoop& loop = worst->loop[i];
  return {loop.gain_1ps, loop.gain_ceiling_1ps,
          words("with %1 the dead time is %2; a phase margin of 45° is common practice",
                worst->name, say(loop.dead_time_s, "s", "ms"))};
}

constexpr Lever kPictureLevers[] = {
    {"tracking.gain", Way::up, 10},          {"tracking.gain", Way::down, 10},
    {"camera.delay", Way::down, 20},         {"camera.frame_rate", Way::up, 8},
    {"detectors[0].delay", Way::down, 20},   {"detectors[0].frame_rate", Way::up, 8},
    {"<axis>.loop.speed_limit", Way::up, 4}, {"tracking.speed", Way::down, 10},
    {"tracking.jump", Way::down, 10},        {"tracking.amplitude", Way::down, 10},
    {"tracking.frequency", Way::down, 10}};
constexpr Lever kGainLevers[] = {{"tracking.gain", Way::down, 100},
                                 {"camera.delay", Way::down, 20},
                                 {"camera.frame_rate", Way::up, 8},
                                 {"<axis>.loop.position_gain", Way::down, 30}};

constexpr Check kTrackingChecks[] = {
    {.id = "<axis>.tracking.in_picture",
     .what = "Keeps the target in the picture",
     .goal = "would keep it in the picture",
     .part = "tracking",
     .si_unit = "1",
     .unit = "px",
     .inputs = kTracking,
     .compare = in_picture,
     .levers = kPictureLevers,
     .trial = in_picture_trial},
    {.id = "<axis>.tracking.gain",
     .what = "Gain of the outer loop below its ceiling",
     .goal = "would leave a phase margin of 45°",
     .part = "tracking",
     .si_unit = "1/s",
     .unit = "1/s",
     .inputs = kTracking,
     .compare = gain,
     .levers = kGainLevers},
};

}  // namespace

std::span<const Check> tracking_checks() { return kTrackingChecks; }

}  // namespace gazewright
