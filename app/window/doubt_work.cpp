#include "app/window/doubt_work.h"

#include "app/window/newest_wins.h"

namespace gazewright {
namespace {

constexpr int kPause_ms = 300;  // without an edit

struct Request {
  Rig rig;
  DoubtWork::AnalysisPointer analysis;
};

}  // namespace

struct DoubtWork::Job {
  explicit Job(DoubtWork& owner)
      : work(
            pool,
            [](const Request& request, const std::stop_token& stop) {
              return std::make_shared<const Doubts>(
                  doubts_of(request.rig, *request.analysis, stop));
            },
            [&owner](const Request& request, const DoubtsPointer& doubts, bool) {
              owner.take(request.analysis, doubts);
            }) {
    pool.setMaxThreadCount(1);
  }

  QThreadPool pool;
  NewestWins<Request, DoubtsPointer> work;
};

DoubtWork::DoubtWork(QObject* parent) : QObject(parent), job_(std::make_unique<Job>(*this)) {
  pause_.setSingleShot(true);
  pause_.setInterval(kPause_ms);
  connect(&pause_, &QTimer::timeout, this, &DoubtWork::start);
}
DoubtWork::~DoubtWork() = default;

void DoubtWork::setPresent(const Rig& rig, AnalysisPointer analysis) {
  if (analysis == analysis_) return;
  forget();
  rig_ = rig;
  analysis_ = std::move(analysis);
  startSoon();
}

void DoubtWork::forget() {
  pause_.stop();
  job_->work.dropAll();
  analysis_.reset();
  if (!std::exchange(doubts_, nullptr)) return;
  emit changed();
}

void DoubtWork::setWanted(bool on) {
  if (wanted_ == on) return;
  wanted_ = on;
  if (on) return startSoon();
  pause_.stop();
  job_->work.dropAll();
}

void DoubtWork::setDragging(bool on) {
  dragging_ = on;
  if (!on) return startSoon();
  pause_.stop();
  job_->work.dropAll();
}

void DoubtWork::startSoon() {
  if (wanted_ && !dragging_ && analysis_ && !doubts_) pause_.start();
}

void DoubtWork::start() { job_->work.request({rig_, analysis_}); }

void DoubtWork::take(const AnalysisPointer& of, const DoubtsPointer& doubts) {
  if (of != analysis_) return;
  doubts_ = doubts;
  emit changed();
}

}  // namespace gazewright
