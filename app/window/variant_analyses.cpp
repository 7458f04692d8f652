#include "app/window/variant_analyses.h"

#include <algorithm>

#include "app/window/newest_wins.h"

namespace gazewright {
namespace {

using RigPointer = VariantAnalyses::RigPointer;

bool is_same(const RigPointer& a, const RigPointer& b) { return a == b || *a == *b; }

bool holds(const std::vector<RigPointer>& rigs, const RigPointer& rig) {
  return std::ranges::any_of(rigs, [&](const RigPointer& other) { return is_same(other, rig); });
}

}  // namespace

struct VariantAnalyses::Job {
  explicit Job(VariantAnalyses& owner)
      : work(
            pool,
            [](const RigPointer& rig, const std::stop_token& stop) {
              return std::make_shared<const Analysis>(analyse(*rig, {.remedies = false}, stop));
            },
            [&owner](const RigPointer& rig, const AnalysisPointer& analysis, bool) {
              owner.done_.emplace_back(rig, analysis);
              owner.startNext();
              emit owner.changed();
            }) {
    pool.setMaxThreadCount(1);
  }

  QThreadPool pool;
  NewestWins<RigPointer, AnalysisPointer> work;
};

VariantAnalyses::VariantAnalyses(QObject* parent)
    : QObject(parent), job_(std::make_unique<Job>(*this)) {}
VariantAnalyses::~VariantAnalyses() = default;

void VariantAnalyses::want(std::vector<RigPointer> rigs) {
  if (rigs == wanted_) return;
  wanted_ = std::move(rigs);
  std::erase_if(done_, [this](const auto& entry) { return !holds(wanted_, entry.first); });
  if (const RigPointer* running = job_->work.running(); running && !holds(wanted_, *running))
    job_->work.dropAll();
  startNext();
}

void VariantAnalyses::startNext() {
  if (job_->work.running()) return;
  const auto next =
      std::ranges::find_if(wanted_, [this](const RigPointer& rig) { return of(rig) == nullptr; });
  if (next != wanted_.end()) job_->work.request(*next);
}

VariantAnalyses::AnalysisPointer VariantAnalyses::of(const RigPointer& rig) const {
  const auto at =
      std::ranges::find_if(done_, [&](const auto& entry) { return is_same(entry.first, rig); });
  return at == done_.end() ? nullptr : at->second;
}

}  // namespace gazewright
