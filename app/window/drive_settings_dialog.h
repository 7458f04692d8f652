#pragma once

#include "app/plots/theme.h"
#include "app/window/list_dialog.h"
#include "core/analysis/analysis.h"

namespace gazewright {

class DriveSettingsModel;

/// "Drive settings": what to set in the drives, beside the window. Enter or a click leads to the
/// field that a value comes from.
class DriveSettingsDialog : public ListDialog {
  Q_OBJECT
 public:
  explicit DriveSettingsDialog(QWidget* parent = nullptr);

  /// The current row stays. @pre the analysis is that of the rig
  void setResults(const Rig& rig, const Analysis& analysis);
  void setTheme(const Theme& theme);
  DriveSettingsModel& model() { return *model_; }
  QTableView& table() { return *list(); }
  QString text() const override;

 protected:
  void fitColumns() override;
  std::string pathAt(const QModelIndex& index) const override;

 private:
  void build();

  DriveSettingsModel* model_;
};

}  // namespace gazewright
