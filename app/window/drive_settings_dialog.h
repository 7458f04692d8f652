#pragma once

#include "app/plots/theme.h"
#include "app/window/seen_dialog.h"
#include "core/analysis/analysis.h"

class QLabel;
class QTableView;
class QToolButton;

namespace gazewright {

class DriveSettingsModel;

/// "Drive settings": what to set in the drives, beside the window. Enter or a click leads to the
/// field that a value comes from.
class DriveSettingsDialog : public SeenDialog {
  Q_OBJECT
 public:
  explicit DriveSettingsDialog(QWidget* parent = nullptr);

  /// The current row stays. @pre the analysis is that of the rig
  void setResults(const Rig& rig, const Analysis& analysis);
  void setTheme(const Theme& theme);
  DriveSettingsModel& model() { return *model_; }
  QTableView& table() { return *table_; }

 signals:
  /// `goes`: the window is to come to the front, else only its card.
  void fieldChosen(const QString& path, bool goes);
  void helpWanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  void buildTable();
  void choose(const QModelIndex& index, bool goes);
  void copy() const;

  DriveSettingsModel* model_;
  QTableView* table_;
  QToolButton* copy_;
};

}  // namespace gazewright
