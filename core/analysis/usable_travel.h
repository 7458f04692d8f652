#pragma once

#include <algorithm>
#include <numbers>
#include <optional>

#include "core/analysis/context.h"
#include "core/analysis/scan.h"

namespace gazewright {

/// The usable travel as an interval no longer than a turn; empty where it is not known. [rad]
inline std::optional<Interval> usable_interval(Context& context, Axis axis) {
  const Travel& travel = context.travel(axis);
  if (!travel.usable_rad) return std::nullopt;
  const double half = std::min(*travel.usable_rad, 2 * std::numbers::pi) / 2;
  return Interval{travel.centre_rad - half, travel.centre_rad + half};
}
inline constexpr const char* kNeedsTravel =
    "needs the usable travel of both axes, see their stops and cables";

}  // namespace gazewright
