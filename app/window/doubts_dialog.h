#pragma once

#include <memory>

#include "app/plots/theme.h"
#include "app/window/seen_dialog.h"
#include "core/analysis/doubts.h"

class QLabel;
class QTableView;
class QToolButton;

namespace gazewright {

class DoubtsModel;

/// "Worth measuring": which values the headline figures hang on, beside the window. Enter or a
/// click leads to the value's field.
class DoubtsDialog : public SeenDialog {
  Q_OBJECT
 public:
  explicit DoubtsDialog(QWidget* parent = nullptr);

  /// Of this analysis. The current row stays with its value.
  void setDoubts(std::shared_ptr<const Doubts> doubts, const Analysis& analysis);
  /// What is shown is of the rig before, or nothing is there yet.
  void setStale();
  void setTheme(const Theme& theme);
  DoubtsModel& model() { return *model_; }
  QTableView& table() { return *table_; }

 signals:
  /// `goes`: the window is to come to the front, else only its card.
  void fieldChosen(const QString& path, bool goes);
  void figuresAsked();
  void helpWanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void build();
  void buildTable();
  void fitColumns();
  void currentChanged();
  void choose(int row, bool goes);
  void copy() const;

  DoubtsModel* model_;
  QTableView* table_;
  QToolButton *figures_, *copy_;
  QLabel *trust_, *exact_, *state_, *empty_, *sentence_;
};

}  // namespace gazewright
