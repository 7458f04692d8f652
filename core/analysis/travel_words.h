#pragma once

#include <cmath>

#include "core/analysis/figures.h"
#include "core/analysis/say.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

/// What the figures of stops, cables and limits share.
namespace gazewright {

inline constexpr const char* kTravelSource = "geometry; handbook: travel";
inline constexpr const char* kStopSource = "geometry; handbook: stops";
inline constexpr const char* kTooWide = "tab or post is wider than twice the stop radius";
inline constexpr const char* kNoStops = "there are no stops: it turns without end";

/// Why stops of that kind leave no travel.
inline const char* why_no_travel(Context& c, Axis a) {
  const std::string& kind = c.rig().axis(a).stops.kind.value;
  if (kind == "window")
    return "the tab does not fit into the window, or is wider than twice the stop radius";
  if (kind == "trailing") return "a tab, loose tab or post is wider than twice the stop radius";
  return kTooWide;
}

/// A span as an answer: infinity means that nothing limits it.
inline Answer span(const std::optional<double>& rad, const char* unknown, const char* endless) {
  if (!rad) return Answer::none(unknown);
  return std::isinf(*rad) ? Answer::none(endless) : Answer(*rad);
}

inline bool has_no_stops(Context& c, Axis a) {
  return c.rig().axis(a).stops.presence == Presence::none;
}

inline double moving_inertia_kgm2(Context& c, Axis a) {
  return c.model(a).load.inertia_kgm2 + c.model(a).reflected_inertia_kgm2();
}

/// The speed that the motor could reach; where the loop keeps below it, that this has to fail
/// first.
inline std::string say_top_speed(const AxisModel& model) {
  const double top_radps = top_speed_radps(model), limit_radps = model.control.speed_limit_radps;
  std::string top = say(top_radps, "rad/s", "deg/s");
  if (!(limit_radps < top_radps)) return top;
  return words("%1 (if the loop's limit of %2 fails)", top, say(limit_radps, "rad/s", "deg/s"));
}

/// Braking from the fastest speed that the loop asks for, with what its delay lets through; empty
/// where it cannot brake.
inline std::optional<double> least_inset_rad(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const auto& braking = c.braking_angle_rad(a);
  if (!braking) return std::nullopt;
  return *braking + unbraked_angle_rad(model, fastest_asked_radps(model));
}

}  // namespace gazewright
