#include "core/analysis/reach.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/travel/soft_limits.h"
#include "core/units/angle.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kHair_rad = 1e-9;
constexpr int kPathPoints = 400;

/// Even poses around a middle, the middle one among them, at least `half_rad` to each side.
std::vector<double> poses(double middle_rad, double half_rad, double step_rad) {
  const int count = static_cast<int>(std::ceil(half_rad / step_rad - kHair_rad));
  std::vector<double> angles;
  for (int i = -count; i <= count; ++i) angles.push_back(middle_rad + i * step_rad);
  return angles;
}

bool is_beyond(const std::optional<double>& span_rad, double from_middle_rad) {
  return span_rad && from_middle_rad > *span_rad / 2 + kHair_rad;
}

PoseLimit limit_of(const Travel& travel, double angle_rad, Axis axis) {
  const bool pan = axis == Axis::pan;
  const double off = std::abs(angle_rad - travel.centre_rad);
  if (is_beyond(travel.stops_rad, off)) return pan ? PoseLimit::pan_stop : PoseLimit::tilt_stop;
  if (is_beyond(travel.cable_rad, off)) return pan ? PoseLimit::pan_cable : PoseLimit::tilt_cable;
  if (is_beyond(travel.soft_rad, off)) return pan ? PoseLimit::pan_soft : PoseLimit::tilt_soft;
  return PoseLimit::none;
}

bool is_met(const Clearance& clearance, double tilt_rad) {
  return (clearance.up && tilt_rad >= clearance.up->tilt_rad) ||
         (clearance.down && tilt_rad <= clearance.down->tilt_rad);
}

/// Up to the hard stops, beyond which all is the same; where there are none up to the cable's end.
double shown_half_rad(const Travel& travel, double least, double most) {
  for (const auto& span : {travel.stops_rad, travel.cable_rad}) {
    if (span && std::isfinite(*span)) return std::clamp(*span / 2, least, most);
  }
  return least;
}

std::string needs(Context& context) {
  constexpr std::array<InputPath, 3> kBodies{"on_tilt", "on_pan", "tilt.axis_at"};
  auto missing = context.missing(kBodies, Axis::pan);
  for (const Axis axis : kAxes) {
    if (context.travel(axis).usable_rad) continue;
    auto more = context.missing(kUsable, axis);
    if (more.empty()) more.push_back(for_axis(words("<axis>.stops and <axis>.cable"), axis));
    missing.insert(missing.end(), more.begin(), more.end());
  }
  return say_needs(missing);
}

void fill_limits(ReachMap& map, Context& context, const std::stop_token& stop) {
  std::vector<PoseLimit> of_pan;
  for (const double pan : map.pan_rad)
    of_pan.push_back(limit_of(context.travel(Axis::pan), pan, Axis::pan));
  for (const double tilt : map.tilt_rad) {
    if (stop.stop_requested()) return;
    const PoseLimit of_tilt = limit_of(context.travel(Axis::tilt), tilt, Axis::tilt);
    const bool met = is_met(map.clearance, tilt);
    for (std::size_t i = 0; i < map.pan_rad.size(); ++i) {
      PoseLimit limit = of_pan[i] != PoseLimit::none ? of_pan[i] : of_tilt;
      if (limit == PoseLimit::none && met) limit = PoseLimit::collision;
      const auto closed = [&](const PoseWindow& window) {
        return is_inside(window, map.pan_rad[i], tilt);
      };
      if (limit == PoseLimit::none && std::ranges::any_of(map.keep_outs, closed))
        limit = PoseLimit::keep_out;
      map.limit.push_back(limit);
    }
  }
}

/// The same axis with its angle counted the other way.
AxisModel mirrored(AxisModel model) {
  GravityCurve& gravity = model.load.gravity;
  gravity.cos_Nm = -gravity.cos_Nm;
  gravity.constant_Nm = -gravity.constant_Nm;
  model.load.cable_centre_rad = -model.load.cable_centre_rad;
  return model;
}

/// Whether gravity and cables are the same seen from either end.
bool is_symmetric(const AxisLoad& load) {
  return load.gravity.cos_Nm == 0 && load.gravity.constant_Nm == 0 &&
         load.cable_stiffness_Nmprad * load.cable_centre_rad == 0;
}

/// Quickest move over a travel, no faster than the speed limits.
std::optional<double> way_s(const AxisModel& model, double travel_rad) {
  const auto path = fastest_move_path(model, travel_rad, kPathPoints);
  if (!path) return std::nullopt;
  const double limit_radps = fastest_asked_radps(model);
  double time_s = 0, cruise_rad = 0;
  for (std::size_t i = 1; i < path->time_s.size(); ++i) {
    const double lower = std::min(path->speed_radps[i - 1], path->speed_radps[i]);
    const double upper = std::max(path->speed_radps[i - 1], path->speed_radps[i]);
    // The part of this piece below the limit; speed is taken as straight in time between points.
    const double below = upper <= limit_radps   ? 1
                         : lower >= limit_radps ? 0
                                                : (limit_radps - lower) / (upper - lower);
    const double piece_s = path->time_s[i] - path->time_s[i - 1];
    const double above_rad = (1 - below) * piece_s * (std::max(lower, limit_radps) + upper) / 2;
    time_s += below * piece_s;
    cruise_rad += above_rad;
  }
  return time_s + (cruise_rad > 0 ? cruise_rad / limit_radps : 0);
}

}  // namespace

const char* name_of(PoseLimit limit) {
  constexpr std::array<const char*, 9> kNames{
      "none",       "pan stop",        "pan cable", "pan soft limit", "tilt stop",
      "tilt cable", "tilt soft limit", "collision", "keep-out"};
  return kNames[static_cast<std::size_t>(limit)];
}

std::optional<PoseWindow> usable_window(Context& context) {
  const Travel &pan = context.travel(Axis::pan), &tilt = context.travel(Axis::tilt);
  if (!pan.usable_rad || !tilt.usable_rad) return std::nullopt;
  PoseWindow window{pan.least_rad(), pan.most_rad(), tilt.least_rad(), tilt.most_rad()};
  const Clearance& clearance = context.clearance();
  if (clearance.up) window.tilt_most_rad = std::min(window.tilt_most_rad, clearance.up->tilt_rad);
  if (clearance.down)
    window.tilt_least_rad = std::max(window.tilt_least_rad, clearance.down->tilt_rad);
  return window;
}

std::vector<PoseWindow> keep_out_windows(const Rig& rig) {
  std::vector<PoseWindow> windows;
  for (const KeepOut& keep_out : rig.keep_outs) {
    if (const auto window = window_of(keep_out)) windows.push_back(*window);
  }
  return windows;
}

std::vector<PoseWindow> looked_at(Context& context, const PoseWindow& usable) {
  return looked_at(usable, keep_out_windows(context.rig()));
}

std::optional<double> long_way_s(Context& context, Axis axis) {
  const auto& usable_rad = context.travel(axis).usable_rad;
  if (!usable_rad || !std::isfinite(*usable_rad) || *usable_rad <= 0) return std::nullopt;
  const AxisModel model = counted_from(context.model(axis), context.travel(axis).centre_rad);
  const auto there = way_s(model, *usable_rad);
  const auto back = is_symmetric(model.load) ? there : way_s(mirrored(model), *usable_rad);
  if (!there || !back) return std::nullopt;
  return std::max(*there, *back);
}

Rig reach_inputs(const Rig& rig) {
  Rig inputs;
  inputs.stand = rig.stand;
  for (const Axis axis : kAxes) {
    inputs.axis(axis).stops = rig.axis(axis).stops;
    inputs.axis(axis).cable = rig.axis(axis).cable;
  }
  inputs.tilt_axis_at_m = rig.tilt_axis_at_m;
  inputs.on_pan = rig.on_pan;
  inputs.on_tilt = rig.on_tilt;
  inputs.on_pan_is_bare = rig.on_pan_is_bare;
  inputs.keep_outs = rig.keep_outs;
  return inputs;
}

ReachMap reach_of(const Rig& rig, double step_rad, const std::stop_token& stop) {
  ReachMap map;
  Context context(reach_inputs(rig), stop);
  map.because = needs(context);
  if (!map.because.empty()) return map;
  map.clearance = context.clearance();
  map.usable = *usable_window(context);
  map.keep_outs = keep_out_windows(context.rig());
  const std::vector<KeepOut>& keep_outs = context.rig().keep_outs;
  for (std::size_t i = 0; i < keep_outs.size(); ++i) {
    if (!window_of(keep_outs[i])) continue;
    map.keep_out_names.push_back(keep_outs[i].name);
    map.keep_out_index.push_back(i);
  }
  const Travel &pan = context.travel(Axis::pan), &tilt = context.travel(Axis::tilt);
  map.pan_rad = poses(pan.centre_rad, shown_half_rad(pan, kPi, 4 * kPi), step_rad);
  map.tilt_rad = poses(tilt.centre_rad, shown_half_rad(tilt, kPi / 2, kPi), step_rad);
  map.blind_rad = std::max(0.0, 2 * kPi - *pan.usable_rad);
  map.overhead_rad = std::max(0.0, kPi / 2 - map.usable.tilt_most_rad);
  fill_limits(map, context, stop);
  return map;
}

}  // namespace gazewright
