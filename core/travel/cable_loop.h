#pragma once

namespace gazewright {

/// A bend that hangs between a clamp that stands still and one that turns about the axis. In the
/// middle of the travel the clamps pass each other; both let the cable out along the axis.
struct HangingLoop {
  double length_m, bend_radius_m;
  double anchor_radius_m, moving_radius_m;  ///< of the two clamps, from the axis
};

/// Why such a loop cannot be, or "". All other functions take a loop that can.
const char* loop_problem(const HangingLoop& loop);

/// Distance of the clamps at which it is taut, L − (π − 2)·R: a quarter turn at the bend radius at
/// each clamp and a straight line between them.
double loop_reach_m(const HangingLoop& loop);
/// Distance of the clamps where they pass each other; the loop bends at half of it there.
double loop_gap_m(const HangingLoop& loop);
/// How far below the clamps it hangs in the middle: two legs and half a turn of radius gap/2.
double loop_depth_m(const HangingLoop& loop);
/// End to end, 2·acos((a² + ρ² − D²)/2aρ) with the reach D, at most one turn: half a turn each way
/// the cable lies across the axis, and beyond that it would wrap about it. Source: law of cosines;
/// resources/handbook/cables.md.
double loop_travel_rad(const HangingLoop& loop);

}  // namespace gazewright
