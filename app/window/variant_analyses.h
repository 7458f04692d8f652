#pragma once

#include <QObject>
#include <memory>
#include <utility>
#include <vector>

#include "core/analysis/analysis.h"

namespace gazewright {

/// Analyses of variants, worked out one after the other off the GUI thread and kept by the value of
/// their rigs as long as they are wanted.
class VariantAnalyses : public QObject {
  Q_OBJECT
 public:
  using RigPointer = std::shared_ptr<const Rig>;
  using AnalysisPointer = std::shared_ptr<const Analysis>;

  explicit VariantAnalyses(QObject* parent = nullptr);
  ~VariantAnalyses() override;

  /// Others are forgotten, and cancelled where they are being worked out.
  void want(std::vector<RigPointer> rigs);
  AnalysisPointer of(const RigPointer& rig) const;  ///< null: not there yet

 signals:
  void changed();  ///< one more is there

 private:
  struct Job;
  void startNext();

  std::vector<RigPointer> wanted_;
  std::vector<std::pair<RigPointer, AnalysisPointer>> done_;
  std::unique_ptr<Job> job_;
};

}  // namespace gazewright
