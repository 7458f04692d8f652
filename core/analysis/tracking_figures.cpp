#include "core/analysis/figures.h"
#include "core/analysis/inputs.h"
#include "core/analysis/left_out.h"
#include "core/analysis/tracking.h"
#include "core/tracking/eye.h"
#include "core/tracking/outer_loop.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kTrackingSource = "handbook: tracking";
constexpr const char* kRunSource = "simulated; handbook: tracking";
constexpr std::array<InputPath, 4> kPicture{"camera.columns", "camera.rows",
                                            "camera.horizontal_view", "camera.exposure"};
constexpr std::array<InputPath, 1> kRow{"camera.rows"};
constexpr auto kTracking = joined(joined(kLoops, kPicture), kTopSpeed);
constexpr std::array<InputPath, 1> kLoopSpeed{"<axis>.loop.speed_limit"};
constexpr auto kPursuit = joined(kTopSpeed, kLoopSpeed);
constexpr auto kCone =
    joined(joined(kPursuit, kAcceleration), std::array<InputPath, 1>{"tracking.passing_distance"});

std::size_t index(Axis axis) { return static_cast<std::size_t>(axis); }

/// A figure of the runs, or why there are none.
template <class Of>
Answer of_runs(Context& c, Of of) {
  const TrackingRuns& runs = c.tracking();
  return runs.because.empty() ? Answer(of(runs)) : Answer::none(runs.because);
}
template <class Of>
Answer of_first(Context& c, Of of) {
  return of_runs(c, [&](const TrackingRuns& runs) { return of(runs.detectors.front()); });
}

/// Of the runs with none and all of the speed fed forward.
template <class Of>
Answer of_fed(Context& c, Of of) {
  return c.is_quick() ? left_out_of_drag() : of_runs(c, of);
}

Answer ramp_lag(Context& c, Axis a) {
  const TrackingRuns& runs = c.tracking();
  if (!runs.because.empty()) return Answer::none(runs.because);
  if (c.rig().tracking.target.value == "jump")
    return Answer::aside(words("a target that jumps has no speed"));
  return runs.detectors.front().loop[index(a)].ramp_lag_rad;
}

Answer at_limit(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (!travel.soft_rad && !travel.stops_rad)
    return Answer::none(for_axis(words("needs %1", "<axis>.stops"), a));
  return of_first(c, [a](const DetectorRun& d) { return d.at_limit[index(a)]; });
}

Answer best_detector(Context& c, Axis) {
  const TrackingRuns& runs = c.tracking();
  if (!runs.because.empty()) return Answer::none(runs.because);
  if (runs.detectors.size() < 2) return Answer::aside(words("there is one detector only"));
  return static_cast<double>(runs.best + 1);
}

Answer blind_cone(Context& c, Axis a) {
  const double most_radps2 = peak_acceleration_radps2(c.model(a));
  if (!(most_radps2 > 0)) return Answer::none(words("it cannot move against friction and gravity"));
  const Tracking& tracking = c.rig().tracking;
  return blind_cone_rad(tracking.speed_mps.value(), tracking.passing_distance_m.value(),
                        fastest_asked_radps(c.model(a)), most_radps2);
}

const FigureRow kTrackingFigures[] = {
    {{"<axis>.tracking.target_speed", "Peak speed of the target", "rad/s", "deg/s",
      "largest speed of the angle that points at it", kTrackingSource, kTracking},
     Axes::both,
     [](Context& c, Axis a) {
       return of_runs(c, [a](const TrackingRuns& r) { return r.peak_speed_radps[index(a)]; });
     }},
    {{"<axis>.tracking.dead_time", "Dead time of the outer loop", "s", "ms",
      "delay + mean age of a held answer + 1/speed loop crossover; acting on the angle only the "
      "last",
      kTrackingSource, kTracking},
     Axes::both,
     [](Context& c, Axis a) {
       return of_first(c, [a](const DetectorRun& d) { return d.loop[index(a)].dead_time_s; });
     }},
    {{"<axis>.tracking.gain", "Gain of the outer loop", "1/s", "1/s",
      "as entered; else 0.5/dead time, acting on the angle the position gain", kTrackingSource,
      kTracking},
     Axes::both,
     [](Context& c, Axis a) {
       return of_first(c, [a](const DetectorRun& d) { return d.loop[index(a)].gain_1ps; });
     }},
    {{"<axis>.tracking.gain_ceiling", "Gain ceiling of the outer loop", "1/s", "1/s",
      "(π/2 − 45°)/dead time", "integrator with dead time; handbook: tracking", kTracking},
     Axes::both,
     [](Context& c, Axis a) {
       return of_first(c, [a](const DetectorRun& d) { return d.loop[index(a)].gain_ceiling_1ps; });
     }},
    {{"<axis>.tracking.ramp_lag", "Lag behind a steady target", "rad", "deg",
      "peak target speed · (1/gain + age of the angle) · (1 − feed-forward); the age counts only "
      "where it acts on the angle",
      "type-1 loop on a ramp, Franklin, Powell & Emami-Naeini; handbook: tracking", kTracking},
     Axes::both,
     ramp_lag},
    {{"<axis>.tracking.error_rms", "Tracking error", "rad", "deg",
      "root mean square of target less axis, first detector", kRunSource, kTracking},
     Axes::both,
     [](Context& c, Axis a) {
       return of_first(c, [a](const DetectorRun& d) { return d.rms_rad[index(a)]; });
     }},
    {{"<axis>.tracking.error_rms_unfed", "Tracking error, no speed fed forward", "rad", "deg",
      "the same with feed-forward 0", kRunSource, kTracking},
     Axes::both,
     [](Context& c, Axis a) {
       return of_fed(c, [a](const TrackingRuns& r) { return r.rms_unfed_rad[index(a)]; });
     }},
    {{"<axis>.tracking.error_rms_fed", "Tracking error, all speed fed forward", "rad", "deg",
      "the same with feed-forward 1", kRunSource, kTracking},
     Axes::both,
     [](Context& c, Axis a) {
       return of_fed(c, [a](const TrackingRuns& r) { return r.rms_fed_rad[index(a)]; });
     }},
    {{"<axis>.tracking.error_px", "Largest tracking error in the picture", "1", "px",
      "pixels_per_radian · tan(error), pan's error times cos tilt, first detector", kRunSource,
      kTracking},
     Axes::both,
     [](Context& c, Axis a) {
       return of_first(c, [a](const DetectorRun& d) { return d.most_px[index(a)]; });
     }},
    {{"<axis>.tracking.at_limit", "Held at the end of its travel", "1", "%",
      "part of the time at the soft limit, where none is known at the hard stop, first detector",
      kRunSource, kTracking},
     Axes::both,
     at_limit},
    {{"tracking.in_middle", "Time in the middle of the picture", "1", "%",
      "part of the time within the inner third of width and height, first detector", kRunSource,
      kPicture},
     Axes::rig,
     [](Context& c, Axis) {
       return of_first(c, [](const DetectorRun& d) { return d.in_middle; });
     }},
    {{"tracking.blur_px", "Smear while it follows", "1", "px",
      "slip of target against axis over the exposure, less in 95 % of the pictures", kRunSource,
      kPicture},
     Axes::rig,
     [](Context& c, Axis) { return of_first(c, [](const DetectorRun& d) { return d.blur_px; }); }},
    {{"tracking.skew_px", "Lean of upright lines", "1", "px",
      "pixels_per_radian · largest pan speed while it follows · readout", kRunSource, kPicture},
     Axes::rig,
     [](Context& c, Axis) { return of_first(c, [](const DetectorRun& d) { return d.skew_px; }); }},
    {{"tracking.best_detector", "Detector with the least error", "1", "1",
      "its place in the list, by root mean square in the picture", kRunSource, kRow},
     Axes::rig,
     best_detector},
    {{"<axis>.tracking.blind_cone", "Blind cone straight up, half angle", "rad", "deg",
      "asin(v/d · max(1/ω, √(0.65/α)))", "geometry; handbook: tracking", kCone},
     Axes::pan_only,
     blind_cone},
    {{"<axis>.eye.speed_ratio", "Peak speed against a human saccade", "1", "1",
      "step peak_speed / (551°/s · (1 − exp(−move/14°)))",
      "Baloh et al., Neurology 25, 1975 (coefficients from memory)", kStep},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return c.step(a).figures.peak_speed_radps / saccade_peak_radps(c.move_rad(a));
     }},
    {{"<axis>.eye.pursuit_ratio", "Top speed against smooth pursuit", "1", "1",
      "lower of speed_top and the loop's limit, over 100°/s",
      "smooth pursuit of an eye ends at about 100°/s (lecture notes)", kPursuit},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return fastest_asked_radps(c.model(a)) / kPursuitLimit_radps;
     }},
};

}  // namespace

std::span<const FigureRow> tracking_figures() { return kTrackingFigures; }

}  // namespace gazewright
