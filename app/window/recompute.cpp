#include "app/window/recompute.h"

#include "app/window/newest_wins.h"

namespace gazewright {
namespace {

struct AnalysisRequest {
  Rig rig;
  bool full = false;
};
enum class SweepKind { coarse, live, fine };  ///< times only; few ratios; all ratios
struct SweepRequest {
  Rig rig;
  SweepKind kind = SweepKind::coarse;
};

RatioSweep sweep_of(const SweepRequest& request, Axis axis, const std::stop_token& stop) {
  const bool settle = request.kind != SweepKind::coarse;
  const int ratios = request.kind == SweepKind::live   ? 40
                     : request.kind == SweepKind::fine ? 100
                                                       : 200;
  return sweep_ratio(request.rig, axis, usual_ratios(ratios), {.settle = settle, .threads = 1},
                     stop);
}

/// The rig less what an axis' sweep does not depend on.
Rig sweep_key(const Rig& rig) {
  Rig key = rig;
  key.title.clear();
  key.notes.clear();
  key.unknown_keys.clear();
  key.variants.clear();
  for (Axis axis : kAxes) {
    Quantity& ratio = key.axis(axis).gearbox.ratio;
    if (ratio.si) ratio = si_quantity(10);
  }
  return key;
}

}  // namespace

struct Recompute::Jobs {
  explicit Jobs(Recompute& owner)
      : analysis(
            analysis_pool,
            [](const AnalysisRequest& request, const std::stop_token& stop) {
              return std::make_shared<const Analysis>(
                  analyse(request.rig, {.quick = !request.full}, stop));
            },
            [&owner](const AnalysisRequest& request, const AnalysisPointer& result, bool isLatest) {
              owner.analysisDone(request.rig, request.full, result, isLatest);
            }),
        reach(
            reach_pool,
            [](const Rig& inputs, const std::stop_token& stop) {
              return std::make_shared<const ReachMap>(reach_of(inputs, kReachStep_rad, stop));
            },
            [&owner](const Rig& inputs, const MapPointer& map, bool isLatest) {
              owner.reachDone(inputs, map, isLatest);
            }),
        sweeps{sweepJob(owner, Axis::pan), sweepJob(owner, Axis::tilt)} {
    for (QThreadPool* pool : {&analysis_pool, &reach_pool, &sweep_pool}) pool->setMaxThreadCount(1);
  }
  ~Jobs() {
    for (const auto& sweep : sweeps) sweep->dropAll();  // none waits for another one's end
  }
  Jobs(const Jobs&) = delete;
  Jobs& operator=(const Jobs&) = delete;

  using AnalysisPointer = std::shared_ptr<const Analysis>;
  using MapPointer = std::shared_ptr<const ReachMap>;
  using SweepJob = NewestWins<SweepRequest, RatioSweep>;
  std::unique_ptr<SweepJob> sweepJob(Recompute& owner, Axis axis) {
    return std::make_unique<SweepJob>(
        sweep_pool,
        [axis](const SweepRequest& request, const std::stop_token& stop) {
          return sweep_of(request, axis, stop);
        },
        [&owner, axis](const SweepRequest& request, const RatioSweep& result, bool) {
          owner.sweepDone(axis, request.rig, request.kind == SweepKind::fine, result);
        });
  }

  // A thread each, so that none delays the analysis and no sweep the map.
  QThreadPool analysis_pool, reach_pool, sweep_pool;
  NewestWins<AnalysisRequest, AnalysisPointer> analysis;
  NewestWins<Rig, MapPointer> reach;
  std::array<std::unique_ptr<SweepJob>, 2> sweeps;
};

Recompute::Recompute(QObject* parent) : QObject(parent), jobs_(std::make_unique<Jobs>(*this)) {}
Recompute::~Recompute() = default;

void Recompute::request(const Rig& rig) {
  wanted_ = rig;
  const bool wasBehind = behind_;
  behind_ = true;
  if (const AnalysisRequest* running = jobs_->analysis.running(); running && running->full) {
    jobs_->analysis.dropRunning();
  }
  jobs_->analysis.request({rig, false});
  wanted_inputs_ = reach_inputs(rig);
  if (mapped_ != wanted_inputs_) {
    mapped_.reset();
    jobs_->reach.dropAll();
  }
  const Rig key = sweep_key(rig);
  for (Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    sweep_behind_[i] = shown_[i] != key;
    if (swept_[i] != key) forgetSweep(axis);
  }
  if (!wasBehind) emit behindChanged();
}

void Recompute::setDragging(bool on) {
  dragging_ = on;
  if (on || behind_) return;
  if (!full_) jobs_->analysis.request({wanted_, true});
  requestReach();
  requestSweeps();
}

/// What runs for another rig is dropped, less a live sweep during a drag: it shows the way.
void Recompute::forgetSweep(Axis axis) {
  const auto i = static_cast<std::size_t>(axis);
  swept_[i].reset();
  Jobs::SweepJob& job = *jobs_->sweeps[i];
  const SweepRequest* running = job.running();
  if (!dragging_ || (running != nullptr && running->kind != SweepKind::live)) job.dropAll();
}

bool Recompute::isSettled() const {
  return !behind_ && full_ && !isReachBehind() && sweep_fine_[0] && sweep_fine_[1] &&
         !sweep_behind_[0] && !sweep_behind_[1];
}

void Recompute::analysisDone(const Rig& rig, bool full,
                             const std::shared_ptr<const Analysis>& analysis, bool isLatest) {
  analysis_ = analysis;
  analysed_ = rig;
  full_ = full;
  const bool wasBehind = behind_;
  behind_ = !isLatest;
  emit analysisReady();
  if (wasBehind != behind_) emit behindChanged();
  if (isLatest || dragging_) requestSweeps();
  if (!isLatest) return;
  if (!full && !dragging_) jobs_->analysis.request({wanted_, true});
  if (!dragging_) requestReach();
  tellWhenSettled();
}

void Recompute::requestReach() {
  if (mapped_ == wanted_inputs_) return;
  mapped_ = wanted_inputs_;
  if (isReachBehind()) jobs_->reach.request(wanted_inputs_);
}

void Recompute::reachDone(const Rig& inputs, const std::shared_ptr<const ReachMap>& map,
                          bool isLatest) {
  if (!isLatest) return;
  reach_ = map;
  map_shown_ = inputs;
  emit reachChanged();
  tellWhenSettled();
}

void Recompute::requestSweeps() {
  const Rig key = sweep_key(wanted_);
  for (Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    if (swept_[i] != key) {
      swept_[i] = key;
      sweep_fine_[i] = false;
      jobs_->sweeps[i]->request({key, dragging_ ? SweepKind::live : SweepKind::coarse});
    } else if (!sweep_fine_[i] && !dragging_ && jobs_->sweeps[i]->isIdle()) {
      jobs_->sweeps[i]->request({key, SweepKind::fine});
    }
  }
}

/// A sweep of an older rig is shown too, so that it follows a drag.
void Recompute::sweepDone(Axis axis, const Rig& key, bool fine, const RatioSweep& sweep) {
  const auto i = static_cast<std::size_t>(axis);
  sweeps_[i] = sweep;
  shown_[i] = key;
  sweep_behind_[i] = key != sweep_key(wanted_);
  sweep_fine_[i] = fine && !sweep_behind_[i];
  emit sweepReady(axis);
  if (!fine && !dragging_ && swept_[i] == key) jobs_->sweeps[i]->request({key, SweepKind::fine});
  tellWhenSettled();
}

void Recompute::tellWhenSettled() {
  if (isSettled()) emit settled();
}

}  // namespace gazewright
