#pragma once

#include <QFutureWatcher>
#include <QThreadPool>
#include <QtConcurrentRun>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <utility>

#include "app/window/clean_registers.h"

namespace gazewright {

/// Work off the GUI thread: one job runs, one waits, the newest request wins. Results come back in
/// order on the GUI thread, so that a drag keeps moving; `isLatest` tells whether nothing newer was
/// asked for. The job owns a copy of its request; the destructor stops and joins it. Jobs that
/// share a pool of one thread take turns.
template <class Request, class Result>
class NewestWins {
 public:
  using Work = std::function<Result(const Request&, const std::stop_token&)>;
  using Done = std::function<void(const Request&, const Result&, bool isLatest)>;

  NewestWins(QThreadPool& pool, Work work, Done done)
      : pool_(pool), work_(std::move(work)), done_(std::move(done)) {
    QObject::connect(&watcher_, &QFutureWatcherBase::finished, &watcher_, [this] { finish(); });
  }
  ~NewestWins() {
    watcher_.disconnect();
    stop_.request_stop();
    watcher_.waitForFinished();
  }
  NewestWins(const NewestWins&) = delete;
  NewestWins& operator=(const NewestWins&) = delete;

  void request(Request request) {
    waiting_ = std::move(request);
    if (!running_) start();
  }
  /// Ends the running job early; its result is dropped.
  void dropRunning() {
    stop_.request_stop();
    dropped_ = running_ != nullptr;
  }
  /// Forgets what runs and what waits.
  void dropAll() {
    waiting_.reset();
    dropRunning();
  }
  bool isIdle() const { return !running_; }
  const Request* running() const { return dropped_ ? nullptr : running_.get(); }

 private:
  void start() {
    running_ = std::make_shared<const Request>(std::move(*waiting_));
    waiting_.reset();
    stop_ = std::stop_source();
    dropped_ = false;
    watcher_.setFuture(
        QtConcurrent::run(&pool_, [work = work_, request = running_, token = stop_.get_token()] {
          clean_registers();
          return work(*request, token);
        }));
  }
  void finish() {
    const std::shared_ptr<const Request> request = std::exchange(running_, nullptr);
    const bool dropped = std::exchange(dropped_, false);
    const bool isLatest = !waiting_;
    if (dropped) {
      if (waiting_) start();
      return;
    }
    const Result result = watcher_.result();
    if (waiting_) start();
    done_(*request, result, isLatest);
  }

  QThreadPool& pool_;
  Work work_;
  Done done_;
  std::optional<Request> waiting_;
  std::shared_ptr<const Request> running_;
  bool dropped_ = false;
  std::stop_source stop_;
  QFutureWatcher<Result> watcher_;
};

}  // namespace gazewright
