#pragma once

#include <any>
#include <array>
#include <cassert>
#include <optional>
#include <set>
#include <span>
#include <stop_token>
#include <string>
#include <string_view>
#include <typeindex>
#include <unordered_map>
#include <vector>

#include "core/analysis/coupling.h"
#include "core/analysis/gain_advice.h"
#include "core/analysis/move_back.h"
#include "core/analysis/profiles.h"
#include "core/analysis/tracking.h"
#include "core/bodies/bodies.h"
#include "core/motion/gap_swing.h"
#include "core/motion/limits_in_force.h"
#include "core/motion/loop.h"
#include "core/motion/rigid_move.h"
#include "core/motion/smoothness.h"
#include "core/motion/step.h"
#include "core/rig/rig.h"
#include "core/travel/collide.h"
#include "core/travel/impact.h"
#include "core/travel/travel.h"

namespace gazewright {

/// Working values of one rig, each computed when it is first asked for and then kept. Figures,
/// checks and remedies read from here, so nothing is computed twice, and a remedy's trial costs
/// only what its check needs. Not thread-safe: one Context belongs to one thread.
class Context {
 public:
  /// @param rig  as the user wrote it; defaults are filled in here.
  /// @param is_quick  without planned moves, both axes at once and advice, see AnalyseOptions
  explicit Context(const Rig& rig, std::stop_token stop = {}, bool is_quick = false);

  /// Steps of another rig that are there are taken where the numbers of the axis are the same, as
  /// in a remedy's trial. @param base  outlives this one; no other thread changes it meanwhile
  void borrow_steps(const Context& base) { base_ = &base; }

  bool is_quick() const { return is_quick_; }
  const Rig& rig() const { return rig_; }
  const RigBodies& bodies();
  const AxisModel& model(Axis axis);
  const Travel& travel(Axis axis);
  const Clearance& clearance();  ///< of what tilts; bodies without a shape are left out
  const SettledStep& step(Axis axis);
  /// After the step. @pre the settle time's inputs are there
  const CameraStill& step_at_camera(Axis axis);
  const MoveBack& move_back(Axis axis);  ///< @pre as for step_at_camera; the step settles
  const std::optional<FastestMove>& fastest(Axis axis);
  const std::vector<LoopPoint>& loop_points(Axis axis);
  const LoopStudy& loops(Axis axis);
  const LoopMargins& speed_margins(Axis axis) { return loops(axis).speed; }
  const LoopMargins& position_margins(Axis axis) { return loops(axis).position; }
  /// Empty too where the loops are unstable, where weight and cable hold the teeth together, and
  /// where the encoder does not see it.
  const std::optional<GapSwing>& gap_swing(Axis axis);
  const GainAdvice& advice(Axis axis);  ///< empty in a quick analysis
  const std::optional<double>& best_time_ratio(Axis axis);
  /// Up to its settling; of the whole trace where it never settles.
  const std::vector<MoveLimit>& step_limits(Axis axis);
  const std::optional<LimitShares>& step_limit_shares(Axis axis);  ///< empty: never settles
  const std::optional<LimitShares>& fastest_limit_shares(Axis axis);
  /// Angle of full braking from the fastest speed that the loop asks for, gravity and cables at
  /// their worst; empty where it cannot brake.
  const std::optional<double>& braking_angle_rad(Axis axis);
  /// What full braking from that speed over the soft limit's inset leaves at the hard stop.
  double speed_at_stop_radps(Axis axis);
  /// The blow at top speed with the gear as a spring; see sprung_impact().
  const std::optional<SprungImpact>& sprung_blow(Axis axis);
  const Coupling* coupling();  ///< null in a quick analysis, or where either step lacks inputs
  /// @pre the step's inputs are there. Without runs in a quick analysis.
  const AxisProfiles& profiles(Axis axis);
  const std::optional<SlowLimits>& slow_limits(Axis axis);
  const WorstRipple& worst_cogging(Axis axis);
  const TrackingRuns& tracking();

  /// A working value kept by its type and not as a member, so that this header need not know the
  /// subject that it belongs to. Each type stands for one value an axis; one of both axes is kept
  /// with pan. Never asked for within prepare(), where each thread may touch its own axis only.
  template <class Value, class Make>
  const Value& kept(Axis axis, Make make) {
    assert(!is_preparing_);
    std::any& place = of(axis).others[typeid(Value)];
    if (!place.has_value()) place = std::any(Value(make()));
    return *std::any_cast<Value>(&place);
  }

  const std::stop_token& stop() const { return stop_; }

  /// Works out the slow values of both axes at the same time, each on a thread of its own, as far
  /// as their inputs are there.
  void prepare();

  double move_rad(Axis axis) const;
  double pixels_per_radian() const;  ///< at the picture's centre; NaN where the camera is unknown
  double band_rad() const;           ///< settle band in radians at the picture's centre
  double step_band_rad(Axis axis) const;  ///< the same, 2 % of the move where there is no camera

  /// Which of these inputs have no value, as paths. `<axis>` is replaced; a path may name a whole
  /// part ("on_tilt", "<axis>.stops"); "<load>" stands for all that decides inertia and gravity of
  /// the axis, "<both steps>" for all that the steps of both axes need, and others for what the
  /// kind of a part needs (see fields_in_use). A part that is absent on purpose (`none`) is not
  /// missing. The texts have to outlive the Context: string literals.
  std::vector<std::string> missing(std::span<const std::string_view> inputs, Axis axis);

 private:
  /// What many subjects read, and what prepare() works out.
  struct PerAxis {
    std::optional<AxisModel> model;
    std::optional<Travel> travel;
    std::optional<SettledStep> step;
    std::optional<CameraStill> step_at_camera;
    std::optional<MoveBack> move_back;
    std::optional<std::optional<FastestMove>> fastest;
    std::optional<std::vector<LoopPoint>> loop_points;
    std::optional<LoopStudy> loops;
    std::optional<std::optional<GapSwing>> gap_swing;
    std::optional<GainAdvice> advice;
    std::optional<std::optional<double>> best_time_ratio, braking_angle_rad;
    std::optional<double> speed_at_stop_radps;
    std::optional<std::optional<SprungImpact>> sprung_blow;
    std::optional<std::vector<MoveLimit>> step_limits;
    std::optional<std::optional<LimitShares>> step_limit_shares, fastest_limit_shares;
    std::optional<AxisProfiles> profiles;
    std::optional<std::optional<SlowLimits>> slow_limits;
    std::optional<WorstRipple> worst_cogging;
    /// By input. The texts are literals, so that where one stands tells it from all others.
    std::unordered_map<const char*, std::vector<std::string>> missing;
    std::unordered_map<std::type_index, std::any> others;
  };
  struct Wanted {
    bool moves = false, loops = false, gap = false, steps = false, settling = false, blow = false;
  };
  void prepare(Axis axis, const Wanted& wanted);
  const SettledStep* borrowed_step(Axis axis);
  PerAxis& of(Axis axis) { return axis_[static_cast<std::size_t>(axis)]; }
  const std::vector<std::string>& missing_of(std::string_view input, Axis axis);
  std::vector<std::string> load_missing(Axis axis);
  void add_missing(const std::string& path, std::vector<std::string>& missing);

  Rig rig_;
  std::stop_token stop_;
  bool is_quick_;
  const Context* base_ = nullptr;
  std::optional<RigBodies> bodies_;
  std::optional<Clearance> clearance_;
  std::optional<Coupling> coupling_;
  std::optional<TrackingRuns> tracking_;
  std::array<PerAxis, 2> axis_;
  std::optional<std::set<std::string>> empty_paths_;  ///< fields without a value
  bool is_preparing_ = false;                         ///< on two threads
};

/// Replaces every "<axis>" in a pattern.
std::string for_axis(std::string_view pattern, Axis axis);

}  // namespace gazewright
