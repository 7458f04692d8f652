#include "app/window/recompute.h"

#include "app/window/newest_wins.h"

namespace gazewright {
namespace {

using SharedAnalysis = std::shared_ptr<const Analysis>;

struct AnalysisRequest {
  Rig rig;
  bool full = false;
};
struct SweepRequest {
  Rig rig;
  bool fine = false;  ///< with settling times
};

/// The rig less what an axis' sweep does not depend on.
Rig sweep_key(const Rig& rig) {
  Rig key = rig;
  key.title.clear();
  key.notes.clear();
  key.unknown_keys.clear();
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
            [](const AnalysisRequest& request, const std::stop_token& stop) {
              return std::make_shared<const Analysis>(
                  analyse(request.rig, {.remedies = request.full}, stop));
            },
            [&owner](const AnalysisRequest& request, const SharedAnalysis& result, bool isLatest) {
              owner.analysisDone(request.rig, request.full, result, isLatest);
            }),
        sweeps{sweepJob(owner, Axis::pan), sweepJob(owner, Axis::tilt)} {}

  using SweepJob = NewestWins<SweepRequest, RatioSweep>;
  static std::unique_ptr<SweepJob> sweepJob(Recompute& owner, Axis axis) {
    return std::make_unique<SweepJob>(
        [axis](const SweepRequest& request, const std::stop_token& stop) {
          return sweep_ratio(request.rig, axis, usual_ratios(request.fine ? 120 : 200),
                             {.settle = request.fine, .threads = 1}, stop);
        },
        [&owner, axis](const SweepRequest& request, const RatioSweep& result, bool isLatest) {
          owner.sweepDone(axis, result, request.fine, isLatest);
        });
  }

  NewestWins<AnalysisRequest, SharedAnalysis> analysis;
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
  const Rig key = sweep_key(rig);
  for (Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    if (swept_[i] == key) continue;
    jobs_->sweeps[i]->dropAll();
    swept_[i].reset();
    sweep_behind_[i] = true;
  }
  if (!wasBehind) emit behindChanged();
}

void Recompute::setDragging(bool on) {
  dragging_ = on;
  if (!on && !behind_ && !full_) jobs_->analysis.request({wanted_, true});
}

bool Recompute::isSettled() const {
  return !behind_ && full_ && sweep_fine_[0] && sweep_fine_[1] && !sweep_behind_[0] &&
         !sweep_behind_[1];
}

void Recompute::analysisDone(const Rig& rig, bool full, const SharedAnalysis& analysis,
                             bool isLatest) {
  analysis_ = analysis;
  analysed_ = rig;
  full_ = full;
  const bool wasBehind = behind_;
  behind_ = !isLatest;
  emit analysisReady();
  if (wasBehind != behind_) emit behindChanged();
  if (!isLatest) return;
  if (!full && !dragging_) jobs_->analysis.request({wanted_, true});
  requestSweeps();
  tellWhenSettled();
}

void Recompute::requestSweeps() {
  const Rig key = sweep_key(wanted_);
  for (Axis axis : kAxes) {
    const auto i = static_cast<std::size_t>(axis);
    if (swept_[i] == key) continue;
    swept_[i] = key;
    sweep_fine_[i] = false;
    jobs_->sweeps[i]->request({key, false});
  }
}

void Recompute::sweepDone(Axis axis, const RatioSweep& sweep, bool fine, bool isLatest) {
  if (!isLatest) return;
  const auto i = static_cast<std::size_t>(axis);
  sweeps_[i] = sweep;
  sweep_behind_[i] = false;
  sweep_fine_[i] = fine;
  emit sweepReady(axis);
  if (!fine && swept_[i]) jobs_->sweeps[i]->request({*swept_[i], true});
  tellWhenSettled();
}

void Recompute::tellWhenSettled() {
  if (isSettled()) emit settled();
}

}  // namespace gazewright
