#include "core/analysis/tracking.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/tracking/follow.h"
#include "core/tracking/outer_loop.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

// Of the gain that nobody entered: a phase margin of 90° − 0.5 rad = 61°.
constexpr double kUsualGainTimesDeadTime = 0.5;
constexpr double kInnerThird = 1.0 / 3;
constexpr double kMostOfThePictures = 0.95;

constexpr std::array<InputPath, 6> kCamera{"camera.columns",  "camera.rows",
                                           "camera.exposure", "camera.horizontal_view",
                                           "camera.readout",  "detectors"};
constexpr auto kAxisInputs = joined(joined(joined(kLoops, kAcceleration), kTopSpeed),
                                    std::array<InputPath, 1>{"<axis>.loop.speed_limit"});

std::vector<InputPath> target_inputs(const Rig& rig) {
  const std::string& target = rig.tracking.target.value;
  if (target == "walk") return {"tracking.passing_distance"};
  if (target == "jump" && !rig.tracking.jump_rad.si) return {"task.pan_move", "task.tilt_move"};
  return {};
}

std::string needs(Context& context) {
  const Rig& rig = context.rig();
  std::vector<std::string> missing = context.missing(kCamera, Axis::pan);
  const auto add = [&](std::span<const InputPath> inputs, Axis axis) {
    for (std::string& path : context.missing(inputs, axis))
      if (std::ranges::find(missing, path) == missing.end()) missing.push_back(std::move(path));
  };
  constexpr std::array<InputPath, 2> kOwnDetector{"camera.frame_rate", "camera.delay"};
  if (rig.detectors.empty()) add(kOwnDetector, Axis::pan);
  add(target_inputs(rig), Axis::pan);
  for (const Axis axis : kAxes) add(kAxisInputs, axis);
  if (rig.tracking.target.value == "path" && !has_path(rig)) missing.emplace_back("tracking.path");
  return say_needs(missing);
}

/// Why an axis cannot be commanded a speed, or empty.
std::string why_no_axis(Context& context, Axis axis) {
  const LoopMargins& margins = context.speed_margins(axis);
  const std::string name = name_of(axis);
  if (!margins.crossover_radps) return words("%1: its speed loop never crosses unit gain", name);
  if (*margins.phase_margin_rad <= 0) return words("%1: its speed loop is unstable", name);
  if (!(peak_acceleration_radps2(context.model(axis)) > 0))
    return words("%1: it cannot move against friction and gravity", name);
  return {};
}

struct Eyes {
  std::string name;
  Vision vision;
};
std::vector<Eyes> eyes_of(const Rig& rig) {
  std::vector<Eyes> all;
  for (const Detector& detector : rig.detectors) {
    const auto number = static_cast<unsigned>(all.size() + 1);
    all.push_back(
        {detector.name.empty() ? words("detector %1", std::to_string(number)) : detector.name,
         {.interval_s = 1 / detector.frame_rate_Hz.value(),
          .delay_s = detector.delay_s.value(),
          .noise_px = detector.noise_px.value(),
          .drop_outs = detector.drop_outs.value(),
          .seed = number}});
  }
  if (all.empty())
    all.push_back({"camera",
                   {.interval_s = 1 / rig.camera.frame_rate_Hz.value(),
                    .delay_s = rig.camera.delay_s.value(),
                    .seed = 1}});
  return all;
}

OuterLoop outer_loop(Context& context, Axis axis, const Vision& vision, double peak_radps) {
  const Tracking& tracking = context.rig().tracking;
  const bool on_angle = tracking.acts_on.value == "angle";
  const double late_s = vision.delay_s + vision.mean_hold_s();
  const double lag_s = 1 / *context.speed_margins(axis).crossover_radps;
  OuterLoop loop;
  loop.dead_time_s = lag_s + (on_angle ? 0 : late_s);
  loop.late_s = on_angle ? late_s : 0;
  const double usual = on_angle ? context.model(axis).control.position_gain_1ps
                                : kUsualGainTimesDeadTime / loop.dead_time_s;
  loop.gain_1ps = tracking.gain_1ps.si.value_or(usual);
  loop.gain_ceiling_1ps = gain_ceiling_1ps(loop.dead_time_s, kWantedOuterMargin_rad);
  loop.ramp_lag_rad =
      ramp_lag_rad(peak_radps, loop.gain_1ps, loop.late_s, tracking.feed_forward.value());
  return loop;
}

CameraPicture picture_of(Context& context) {
  const Camera& camera = context.rig().camera;
  return {.pixels_per_radian = context.pixels_per_radian(),
          .half_width_px = camera.columns.value() / 2,
          .half_height_px = camera.rows.value() / 2,
          .exposure_s = camera.exposure_s.value()};
}

/// Between the soft limits, where none are known between the hard stops; empty: free to turn.
std::optional<double> held_span_rad(const Travel& travel) {
  const auto& span_rad = travel.soft_rad ? travel.soft_rad : travel.stops_rad;
  return span_rad && std::isfinite(*span_rad) ? span_rad : std::nullopt;
}

Following following_of(Context& context, const DetectorRun& run) {
  const Tracking& tracking = context.rig().tracking;
  Following following{.acts_on_angle = tracking.acts_on.value == "angle",
                      .feed_forward = tracking.feed_forward.value()};
  for (const Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    const AxisModel& model = context.model(axis);
    following.axis[i] = {.gain_1ps = run.loop[i].gain_1ps,
                         .lag_s = 1 / *context.speed_margins(axis).crossover_radps,
                         .speed_limit_radps = fastest_asked_radps(model),
                         .acceleration_limit_radps2 = peak_acceleration_radps2(model)};
    const Travel& travel = context.travel(axis);
    if (const auto span_rad = held_span_rad(travel)) {
      following.axis[i].least_rad = end_angle_rad(travel, *span_rad, End::least);
      following.axis[i].most_rad = end_angle_rad(travel, *span_rad, End::most);
    }
  }
  return following;
}

double rms(const std::vector<double>& a, const std::vector<double>& b) {
  double sum = 0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += (a[i] - b[i]) * (a[i] - b[i]);
  return std::sqrt(sum / static_cast<double>(a.size()));
}

/// What the rows say: places in the picture and their sums.
void judge_rows(DetectorRun& run, const TrackingRuns& all, const CameraPicture& picture) {
  double squares = 0;
  std::size_t in_middle = 0;
  for (std::size_t row = 0; row < all.time_s.size(); ++row) {
    const PerAxis at{all.target_rad[0][row], all.target_rad[1][row]};
    const PerAxis place =
        picture.place_px({at[0] - run.angle_rad[0][row], at[1] - run.angle_rad[1][row]}, at[1]);
    for (std::size_t i = 0; i < 2; ++i) {
      run.place_px[i].push_back(place[i]);
      run.most_px[i] = std::max(run.most_px[i], std::abs(place[i]));
      squares += place[i] * place[i];
    }
    if (picture.holds(place, kInnerThird)) ++in_middle;
  }
  const auto rows = static_cast<double>(all.time_s.size());
  run.rms_px = std::sqrt(squares / rows);
  run.in_middle = static_cast<double>(in_middle) / rows;
  for (std::size_t i = 0; i < 2; ++i) run.rms_rad[i] = rms(all.target_rad[i], run.angle_rad[i]);
}

/// Part of the rows in which an axis stands at the end of its travel.
double part_held(const std::vector<double>& angle_rad, const FollowedAxis& axis) {
  const auto held =
      std::ranges::count_if(angle_rad, [&](double angle) { return axis.is_held(angle); });
  return static_cast<double>(held) / static_cast<double>(angle_rad.size());
}

/// What the pictures look like.
void judge_frames(DetectorRun& run, const FollowTrace& trace, const Target& target,
                  const CameraPicture& picture, double readout_s) {
  std::vector<double> blur_px;
  double fastest_radps = 0;
  for (std::size_t k = 0; k < trace.frame_s.size(); ++k) {
    const double across = trace.slip_radps[0][k] * std::cos(target.angle_rad(trace.frame_s[k])[1]);
    blur_px.push_back(std::hypot(across, trace.slip_radps[1][k]) * picture.pixels_per_radian *
                      picture.exposure_s);
    fastest_radps = std::max(fastest_radps, std::abs(trace.at_frame_radps[0][k]));
  }
  run.skew_px = fastest_radps * picture.pixels_per_radian * readout_s;
  if (blur_px.empty()) return;
  const auto place =
      static_cast<std::size_t>(kMostOfThePictures * static_cast<double>(blur_px.size() - 1));
  std::ranges::nth_element(blur_px, blur_px.begin() + static_cast<std::ptrdiff_t>(place));
  run.blur_px = blur_px[place];
}

DetectorRun run_of(Context& context, const Eyes& eyes, const Target& target,
                   const TrackingRuns& all) {
  DetectorRun run;
  run.name = eyes.name;
  run.frame_rate_Hz = 1 / eyes.vision.interval_s;
  run.delay_s = eyes.vision.delay_s;
  for (const Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    run.loop[i] = outer_loop(context, axis, eyes.vision, all.peak_speed_radps[i]);
  }
  const CameraPicture picture = picture_of(context);
  const Following following = following_of(context, run);
  FollowTrace trace = follow(target, eyes.vision, following, picture);
  run.angle_rad = std::move(trace.angle_rad);
  for (std::size_t i = 0; i < 2; ++i)
    run.at_limit[i] = part_held(run.angle_rad[i], following.axis[i]);
  judge_rows(run, all, picture);
  judge_frames(run, trace, target, picture, context.rig().camera.readout_s.value());
  return run;
}

/// The first detector's error with this part of the target's speed fed forward.
PerAxis rms_fed_rad(Context& context, const Eyes& eyes, const Target& target,
                    const TrackingRuns& all, double feed_forward) {
  const DetectorRun& first = all.detectors.front();
  Following following = following_of(context, first);
  if (following.feed_forward == feed_forward) return first.rms_rad;  // that run is there
  following.feed_forward = feed_forward;
  const FollowTrace trace = follow(target, eyes.vision, following, picture_of(context));
  return {rms(all.target_rad[0], trace.angle_rad[0]), rms(all.target_rad[1], trace.angle_rad[1])};
}

TrackingRuns runs_of(Context& context, bool all_detectors) {
  TrackingRuns all;
  all.because = needs(context);
  for (const Axis axis : kAxes)
    if (all.because.empty()) all.because = why_no_axis(context, axis);
  if (!all.because.empty()) return all;
  const Target target = target_of(context.rig());
  all.time_s = follow_times_s(target.duration_s);
  for (const double time_s : all.time_s) {
    const PerAxis at = target.angle_rad(time_s);
    for (std::size_t i = 0; i < 2; ++i) all.target_rad[i].push_back(at[i]);
  }
  all.peak_speed_radps = target.peak_speed_radps();
  const CameraPicture picture = picture_of(context);
  all.middle_px = kInnerThird * picture.half_width_px;
  all.middle_height_px = kInnerThird * picture.half_height_px;
  const std::vector<Eyes> eyes = eyes_of(context.rig());
  for (const Eyes& each : eyes) {
    all.detectors.push_back(run_of(context, each, target, all));
    if (!all_detectors) return all;
  }
  const auto best = std::ranges::min_element(all.detectors, {}, &DetectorRun::rms_px);
  all.best = static_cast<std::size_t>(best - all.detectors.begin());
  all.rms_unfed_rad = all.rms_fed_rad = {std::nan(""), std::nan("")};
  if (context.is_quick()) return all;
  all.rms_unfed_rad = rms_fed_rad(context, eyes.front(), target, all, 0);
  all.rms_fed_rad = rms_fed_rad(context, eyes.front(), target, all, 1);
  return all;
}

}  // namespace

TrackingRuns tracking_of(Context& context) { return runs_of(context, true); }
TrackingRuns first_detector_of(Context& context) { return runs_of(context, false); }

}  // namespace gazewright
