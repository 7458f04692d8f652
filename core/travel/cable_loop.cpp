#include "core/travel/cable_loop.h"

#include <algorithm>
#include <cmath>

#include "core/units/angle.h"

namespace gazewright {
const char* loop_problem(const HangingLoop& loop) {
  if (!(loop.anchor_radius_m > 0 && loop.moving_radius_m > 0))
    return "a clamp on the axis twists the cable instead of bending it";
  if (!(loop.length_m >= kPi * loop.bend_radius_m))
    return "the loop is shorter than half a turn at its bend radius";
  if (!(loop_reach_m(loop) > loop_gap_m(loop)))
    return "the loop is taut already where its clamps pass each other";
  return "";
}

double loop_reach_m(const HangingLoop& loop) {
  return loop.length_m - (kPi - 2) * loop.bend_radius_m;
}

double loop_gap_m(const HangingLoop& loop) {
  return std::abs(loop.anchor_radius_m - loop.moving_radius_m);
}

double loop_depth_m(const HangingLoop& loop) {
  const double radius_m = loop_gap_m(loop) / 2;
  return (loop.length_m - kPi * radius_m) / 2 + radius_m;
}

double loop_travel_rad(const HangingLoop& loop) {
  const double a = loop.anchor_radius_m, b = loop.moving_radius_m, reach_m = loop_reach_m(loop);
  if (reach_m >= a + b) return 2 * kPi;
  // (D − (a − b))(D + (a − b)) keeps what a² + b² − D² loses where the clamps nearly meet.
  const double beyond = (reach_m - loop_gap_m(loop)) * (reach_m + loop_gap_m(loop)) / (2 * a * b);
  return 2 * std::acos(std::clamp(1 - beyond, -1.0, 1.0));
}

}  // namespace gazewright
