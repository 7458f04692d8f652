#pragma once

#include <memory>

#include "app/plots/theme.h"
#include "app/window/list_dialog.h"
#include "core/analysis/doubts.h"

class QLabel;
class QToolButton;

namespace gazewright {

class DoubtsModel;

/// "Worth measuring": which values the headline figures hang on, beside the window. Enter or a
/// click leads to the value's field.
class DoubtsDialog : public ListDialog {
  Q_OBJECT
 public:
  explicit DoubtsDialog(QWidget* parent = nullptr);

  /// Of this analysis. The current row stays with its value.
  void setDoubts(std::shared_ptr<const Doubts> doubts, const Analysis& analysis);
  /// What is shown is of the rig before, or nothing is there yet.
  void setStale();
  void setTheme(const Theme& theme);
  DoubtsModel& model() { return *model_; }
  QTableView& table() { return *list(); }
  QString text() const override;

 signals:
  void figuresAsked();

 protected:
  void fitColumns() override;
  std::string pathAt(const QModelIndex& index) const override;

 private:
  void build();
  void currentChanged();

  DoubtsModel* model_;
  QToolButton* figures_;
  QLabel *trust_, *exact_, *state_, *empty_, *sentence_;
};

}  // namespace gazewright
