#pragma once

#include <QObject>
#include <QTimer>
#include <memory>

#include "core/analysis/doubts.h"

namespace gazewright {

/// The doubts of the present analysis, worked out off the GUI thread once the user pauses, and only
/// while something shows them.
class DoubtWork : public QObject {
  Q_OBJECT
 public:
  using AnalysisPointer = std::shared_ptr<const Analysis>;
  using DoubtsPointer = std::shared_ptr<const Doubts>;

  explicit DoubtWork(QObject* parent = nullptr);
  ~DoubtWork() override;

  /// The analysis that is shown is of this rig, and final. Doubts of another one are forgotten.
  void setPresent(const Rig& rig, AnalysisPointer analysis);
  void forget();              ///< the rig is another; what runs is cancelled
  void setWanted(bool on);    ///< something shows them
  void setDragging(bool on);  ///< while it is on, nothing runs
  bool isWanted() const { return wanted_; }
  bool isAwaited() const { return wanted_ && !doubts_; }
  const DoubtsPointer& doubts() const { return doubts_; }  ///< of the present; null: not there

 signals:
  void changed();  ///< they are there, or are no more

 private:
  struct Job;
  void startSoon();
  void start();
  void take(const AnalysisPointer& of, const DoubtsPointer& doubts);

  Rig rig_;
  AnalysisPointer analysis_;  ///< null: none that is final
  DoubtsPointer doubts_;
  bool wanted_ = false, dragging_ = false;
  QTimer pause_;
  std::unique_ptr<Job> job_;
};

}  // namespace gazewright
