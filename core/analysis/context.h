#pragma once

#include <array>
#include <optional>
#include <set>
#include <span>
#include <stop_token>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/tracking.h"
#include "core/bodies/bodies.h"
#include "core/motion/loop.h"
#include "core/motion/rigid_move.h"
#include "core/motion/step.h"
#include "core/rig/rig.h"
#include "core/travel/collide.h"
#include "core/travel/travel.h"

namespace gazewright {

/// Working values of one rig, each computed when it is first asked for and then kept. Figures,
/// checks and remedies read from here, so nothing is computed twice, and a remedy's trial costs
/// only what its check needs. Not thread-safe: one Context belongs to one thread.
class Context {
 public:
  /// @param rig  as the user wrote it; defaults are filled in here.
  explicit Context(const Rig& rig, std::stop_token stop = {});

  const Rig& rig() const { return rig_; }
  const RigBodies& bodies();
  const AxisModel& model(Axis axis);
  const Travel& travel(Axis axis);
  const Clearance& clearance();  ///< of what tilts; bodies without a shape are left out
  const SettledStep& step(Axis axis);
  const std::optional<FastestMove>& fastest(Axis axis);
  const LoopMargins& speed_margins(Axis axis);
  const LoopMargins& position_margins(Axis axis);
  const std::optional<double>& best_time_ratio(Axis axis);
  const TrackingRuns& tracking();

  /// Works out the slow values of both axes at the same time, each on a thread of its own, as far
  /// as their inputs are there.
  void prepare();

  double move_rad(Axis axis) const;
  double pixels_per_radian() const;  ///< at the picture's centre; NaN where the camera is unknown
  double band_rad() const;           ///< settle band in radians at the picture's centre

  /// Which of these inputs have no value, as paths. `<axis>` is replaced; a path may name a whole
  /// part ("on_tilt", "<axis>.stops"); "<load>" stands for all that decides inertia and gravity of
  /// the axis, "<stops>" ("pan.<stops>") for all that decides the travel between stops of their
  /// kind, "<cable>" for the length of cables that have a stiffness. A part that is absent on
  /// purpose (`none`) is not missing.
  std::vector<std::string> missing(std::span<const std::string_view> inputs, Axis axis);

 private:
  struct PerAxis {
    std::optional<AxisModel> model;
    std::optional<Travel> travel;
    std::optional<SettledStep> step;
    std::optional<std::optional<FastestMove>> fastest;
    std::optional<LoopMargins> speed_margins, position_margins;
    std::optional<std::optional<double>> best_time_ratio;
  };
  void prepare(Axis axis, bool moves, bool loops, bool steps);
  PerAxis& of(Axis axis) { return axis_[static_cast<std::size_t>(axis)]; }
  void add_missing(const std::string& path, std::vector<std::string>& missing);

  Rig rig_;
  std::stop_token stop_;
  std::optional<RigBodies> bodies_;
  std::optional<Clearance> clearance_;
  std::optional<TrackingRuns> tracking_;
  std::array<PerAxis, 2> axis_;
  std::optional<std::set<std::string>> empty_paths_;  ///< fields without a value
};

/// Replaces every "<axis>" in a pattern.
std::string for_axis(std::string_view pattern, Axis axis);

}  // namespace gazewright
