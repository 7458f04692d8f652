#pragma once

#include <optional>
#include <stop_token>
#include <string>
#include <vector>

#include "core/rig/rig.h"
#include "core/travel/collide.h"
#include "core/travel/pose_windows.h"
#include "core/units/angle.h"

namespace gazewright {

class Context;

/// What keeps a pose from being reached, the first of this list that does.
enum class PoseLimit {
  none,
  pan_stop,
  pan_cable,
  pan_soft,
  tilt_stop,
  tilt_cable,
  tilt_soft,
  collision,
  keep_out
};
const char* name_of(PoseLimit limit);  ///< "none", "pan stop", "pan soft limit" ...

/// Which poses can be reached, on a grid around the middle of both travels.
struct ReachMap {
  std::vector<double> pan_rad, tilt_rad;  ///< poses, ascending, evenly spaced
  std::vector<PoseLimit> limit;           ///< of each pose, pan running first
  PoseWindow usable;                      ///< less collisions; may be endless
  std::vector<PoseWindow> keep_outs;
  std::vector<std::string> keep_out_names;
  std::vector<std::size_t> keep_out_index;  ///< in the rig's list, which may hold unfinished ones
  double blind_rad = 0;     ///< of pan, behind: 2π − usable, 0 where there is none
  double overhead_rad = 0;  ///< half angle of the cone overhead that the axis cannot look into
  Clearance clearance;
  std::string because;  ///< why it is empty ("needs pan.stops"); else empty

  PoseLimit at(std::size_t pan, std::size_t tilt) const {
    return limit[tilt * pan_rad.size() + pan];
  }
};
inline constexpr double kReachStep_rad = 2 * kDegree_rad;

/// The parts of a rig that its map depends on: stops and cables, bodies, stand, tilt axis and
/// keep-outs. Rigs with equal inputs have equal maps.
Rig reach_inputs(const Rig& rig);

/// @param step_rad  of the grid
ReachMap reach_of(const Rig& rig, double step_rad = kReachStep_rad,
                  const std::stop_token& stop = {});

/// Poses that stops, soft limits, cables and collisions leave; empty where a travel is not known.
std::optional<PoseWindow> usable_window(Context& context);
/// The keep-outs that have all their ends.
std::vector<PoseWindow> keep_out_windows(const Rig& rig);
/// What the camera's axis can look at.
std::vector<PoseWindow> looked_at(Context& context, const PoseWindow& usable);

/// Time from one end of the pan's usable travel to the other: the shortest move of the rigid train
/// (handbook: motion), with the part above the lower of drive and loop speed limit run at that
/// limit. Empty where it turns without end or cannot move that far.
/// @pre the inputs of the rigid train and of the top speed are there.
std::optional<double> long_way_s(Context& context, Axis axis);

}  // namespace gazewright
