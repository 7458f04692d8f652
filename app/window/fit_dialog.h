#pragma once

#include <QDialog>
#include <QTimer>
#include <memory>
#include <thread>

#include "core/shelf/fit.h"

class QCheckBox;
class QLabel;
class QProgressBar;
class QTableWidget;
class QToolButton;

namespace gazewright {

/// Which parts of the shelf fit best: the ranking on a thread of its own, with progress and Cancel,
/// and its table. A press on a row, or Enter, tries it.
class FitDialog : public QDialog {
  Q_OBJECT
 public:
  explicit FitDialog(QWidget* parent = nullptr);
  ~FitDialog() override;

  /// Ranks for this rig. What runs is told to stop, and nobody waits for it.
  void start(const Rig& rig, const std::shared_ptr<const Shelf>& shelf);
  void cancel();

  bool isRunning() const { return running_; }  ///< ranks, or simulates the best
  const Fits& fits() const { return fits_; }
  QTableWidget& table() { return *table_; }
  QToolButton& cancelButton() { return *cancel_; }
  QCheckBox& drives() { return *drives_; }
  QString summary() const;
  QString lacking() const;  ///< what the rig lacks, without the links
  QLabel& lackingLabel() { return *lacking_; }
  QString reason() const;

 signals:
  void fieldWanted(const QString& path);  ///< to enter what is missing there
  /// The rig with the row's parts is wanted. The shelf is that of the ranking.
  void rowWanted(const gazewright::FitRow& row, const gazewright::Shelf& shelf);
  void rankWanted();  ///< once more, for the rig as it is now
  void finished();

 private:
  struct Job;
  void build();
  void poll();
  void showFits(const Fits& fits);
  void showRow(int row, const FitRow& fit);
  void showReason();
  void want(int row);
  void setRunning(bool running);

  Fits fits_;
  Rig rig_;  ///< of the ranking
  std::shared_ptr<const Shelf> shelf_;
  std::shared_ptr<Job> job_;  ///< its thread has it too
  bool running_ = false;
  QTimer poll_;
  QLabel *summary_, *lacking_, *reason_, *notes_;
  QTableWidget* table_;
  QProgressBar* progress_;
  QToolButton *cancel_, *again_;
  QCheckBox* drives_;
  std::jthread thread_;  ///< stopped and joined when the dialog goes
};

}  // namespace gazewright
