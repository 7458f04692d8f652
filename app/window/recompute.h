#pragma once

#include <QObject>
#include <array>
#include <memory>
#include <optional>

#include "core/analysis/analysis.h"
#include "core/analysis/reach.h"
#include "core/analysis/sweep.h"

namespace gazewright {

/// Keeps an Analysis, the reach map and the two ratio sweeps in step with a rig, off the GUI
/// thread. Each change first gets a quick analysis (no remedies); when nothing newer waits, a full
/// one follows. The map and an axis' sweep are worked out again only when something they depend on
/// changed: the sweep not for either ratio, the map only for reach_inputs(). During a drag the
/// sweeps follow at fewer ratios, on a thread of their own.
class Recompute : public QObject {
  Q_OBJECT
 public:
  explicit Recompute(QObject* parent = nullptr);
  ~Recompute() override;

  void request(const Rig& rig);
  void setDragging(bool on);  ///< while it is on, full analyses, map and fine sweeps wait
  bool isBehind() const { return behind_; }
  bool isFull() const { return full_; }  ///< remedies and swap are in
  bool isSettled() const;                ///< analysis full, map and both sweeps in

  /// Never null; the pointer is another after each analysisReady().
  const std::shared_ptr<const Analysis>& analysis() const { return analysis_; }
  const Rig& analysedRig() const { return analysed_; }
  const ReachMap& reach() const { return *reach_; }  ///< the newest there is
  bool isReachBehind() const { return map_shown_ != wanted_inputs_; }
  bool reachWaits() const { return dragging_ && isReachBehind(); }  ///< for the end of the drag
  const RatioSweep& sweep(Axis axis) const { return sweeps_[static_cast<std::size_t>(axis)]; }
  const std::array<RatioSweep, 2>& sweeps() const { return sweeps_; }
  bool isSweepBehind(Axis axis) const { return sweep_behind_[static_cast<std::size_t>(axis)]; }

 signals:
  void behindChanged();
  void analysisReady();
  void sweepReady(gazewright::Axis axis);
  void reachChanged();  ///< the map is another, or whether it waits
  void settled();

 private:
  struct Jobs;
  void requestReach();
  void requestSweeps();
  void forgetSweep(Axis axis);
  void analysisDone(const Rig& rig, bool full, const std::shared_ptr<const Analysis>& analysis,
                    bool isLatest);
  void reachDone(const Rig& inputs, const std::shared_ptr<const ReachMap>& map, bool isLatest);
  void sweepDone(Axis axis, const Rig& key, bool fine, const RatioSweep& sweep);
  void tellWhenSettled();

  Rig wanted_, wanted_inputs_, analysed_;
  std::array<std::optional<Rig>, 2> swept_, shown_;  ///< keys of the sweep asked for, and shown
  std::optional<Rig> mapped_, map_shown_;            ///< the same of the map
  std::shared_ptr<const Analysis> analysis_ = std::make_shared<const Analysis>();
  std::shared_ptr<const ReachMap> reach_ = std::make_shared<const ReachMap>();
  std::array<RatioSweep, 2> sweeps_;
  std::array<bool, 2> sweep_behind_{true, true}, sweep_fine_{false, false};
  bool behind_ = false, full_ = false, dragging_ = false;
  std::unique_ptr<Jobs> jobs_;
};

}  // namespace gazewright
