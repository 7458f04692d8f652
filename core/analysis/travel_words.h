#pragma once

#include <cmath>

#include "core/analysis/figures.h"
#include "core/travel/soft_limits.h"

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

/// Braking from the fastest speed that the loop asks for, with what its delay lets through; empty
/// where it cannot brake.
inline std::optional<double> least_inset_rad(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const auto& braking = c.braking_angle_rad(a);
  if (!braking) return std::nullopt;
  return *braking + unbraked_angle_rad(model, fastest_asked_radps(model));
}

}  // namespace gazewright
