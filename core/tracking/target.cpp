#include "core/tracking/target.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gazewright {
namespace {

constexpr double kLongest_s = 12;       // of a walk or a sine
constexpr double kLongestPath_s = 120;  // of a path
constexpr double kJumpAt_s = 0.1, kJumpWatched_s = 2;
constexpr double kSwings = 4;
const double kWalkEnd = std::tan(std::numbers::pi / 3);  // it comes and goes at 60° of pan

TargetKind kind_of(const Choice& choice) {
  if (choice.value == "sine") return TargetKind::sine;
  if (choice.value == "jump") return TargetKind::jump;
  if (choice.value == "path") return TargetKind::path;
  return TargetKind::walk;
}

double duration_s(const Target& target) {
  switch (target.kind) {
    case TargetKind::walk:
      return std::min(2 * kWalkEnd * target.distance_m / target.speed_mps, kLongest_s);
    case TargetKind::sine:
      return std::clamp(kSwings / target.frequency_Hz, 1.0, kLongest_s);
    case TargetKind::jump:
      return kJumpWatched_s;
    case TargetKind::path:
      return target.points.empty() ? 0 : std::min(target.points.back().time_s, kLongestPath_s);
  }
  return 0;
}

PerAxis walk_rad(const Target& target, double time_s) {
  const double off_m = target.speed_mps * (time_s - target.duration_s / 2);
  return {std::atan2(off_m, target.distance_m),
          std::atan2(target.height_m, std::hypot(target.distance_m, off_m))};
}

PerAxis on_path_rad(const std::vector<TargetPoint>& points, double time_s) {
  const auto after = std::ranges::upper_bound(points, time_s, {}, &TargetPoint::time_s);
  if (after == points.begin()) return points.front().angle_rad;
  if (after == points.end()) return points.back().angle_rad;
  const TargetPoint &from = *std::prev(after), &to = *after;
  const double part = (time_s - from.time_s) / (to.time_s - from.time_s);
  return {std::lerp(from.angle_rad[0], to.angle_rad[0], part),
          std::lerp(from.angle_rad[1], to.angle_rad[1], part)};
}

/// With u = v·t/d and h = height/distance the tilt's speed is v/d·h·u/(√(1 + u²)·(1 + u² + h²)),
/// largest where 2u⁴ + u² = 1 + h², or at the end of the walk before that.
PerAxis walk_peak_radps(const Target& target) {
  const double turn_radps = target.speed_mps / target.distance_m;
  const double h = target.height_m / target.distance_m;
  const double end = turn_radps * target.duration_s / 2;
  const double u = std::min(std::sqrt((std::sqrt(9 + 8 * h * h) - 1) / 4), end);
  return {turn_radps, turn_radps * std::abs(h) * u / (std::sqrt(1 + u * u) * (1 + u * u + h * h))};
}

PerAxis path_peak_radps(const std::vector<TargetPoint>& points, double until_s) {
  PerAxis peak{};
  for (std::size_t i = 1; i < points.size() && points[i - 1].time_s < until_s; ++i) {
    const TargetPoint &from = points[i - 1], &to = points[i];
    for (std::size_t axis = 0; axis < peak.size(); ++axis)
      peak[axis] = std::max(peak[axis], std::abs(to.angle_rad[axis] - from.angle_rad[axis]) /
                                            (to.time_s - from.time_s));
  }
  return peak;
}

}  // namespace

PerAxis Target::angle_rad(double time_s) const {
  switch (kind) {
    case TargetKind::walk:
      return walk_rad(*this, time_s);
    case TargetKind::sine: {
      const double at = amplitude_rad * std::sin(2 * std::numbers::pi * frequency_Hz * time_s);
      return {at, at};
    }
    case TargetKind::jump:
      return time_s < kJumpAt_s ? PerAxis{} : jump_rad;
    case TargetKind::path:
      return on_path_rad(points, time_s);
  }
  return {};
}

PerAxis Target::peak_speed_radps() const {
  switch (kind) {
    case TargetKind::walk:
      return walk_peak_radps(*this);
    case TargetKind::sine: {
      const double peak = 2 * std::numbers::pi * frequency_Hz * amplitude_rad;
      return {peak, peak};
    }
    case TargetKind::jump:
      return {};
    case TargetKind::path:
      return path_peak_radps(points, duration_s);
  }
  return {};
}

Target target_of(const Rig& rig) {
  const Tracking& tracking = rig.tracking;
  Target target;
  target.kind = kind_of(tracking.target);
  target.speed_mps = tracking.speed_mps.value();
  target.distance_m = tracking.passing_distance_m.value();
  target.height_m = tracking.height_m.value();
  target.amplitude_rad = tracking.amplitude_rad.value();
  target.frequency_Hz = tracking.frequency_Hz.value();
  target.jump_rad = {tracking.jump_rad.si.value_or(rig.task.pan_move_rad.value()),
                     tracking.jump_rad.si.value_or(rig.task.tilt_move_rad.value())};
  for (const PathPoint& point : tracking.path)
    target.points.push_back(
        {point.time_s.value(), {point.pan_rad.value(), point.tilt_rad.value()}});
  target.duration_s = duration_s(target);
  return target;
}

bool has_path(const Rig& rig) {
  const auto is_whole = [](const PathPoint& point) {
    return point.time_s.si && point.pan_rad.si && point.tilt_rad.si;
  };
  const auto is_late = [](const PathPoint& before, const PathPoint& after) {
    return !(*before.time_s.si < *after.time_s.si);
  };
  const std::vector<PathPoint>& path = rig.tracking.path;
  return path.size() >= 2 && std::ranges::all_of(path, is_whole) &&
         std::ranges::adjacent_find(path, is_late) == path.end();
}

}  // namespace gazewright
