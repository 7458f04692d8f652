#pragma once

#include <array>
#include <string>
#include <vector>

#include "app/plots/theme.h"
#include "app/window/list_dialog.h"
#include "core/analysis/analysis.h"

class QLabel;
class QTableWidget;

namespace gazewright {

/// "What limits the moves", beside the window: what holds each axis back, and which change of one
/// field would save how much, the most first. A click or Enter leads to the field.
class MoveLimitsDialog : public ListDialog {
  Q_OBJECT
 public:
  explicit MoveLimitsDialog(QWidget* parent = nullptr);

  /// @pre the analysis has its gains (not a quick one)
  void setAnalysis(const Analysis& analysis);
  void setStale();  ///< what is shown is of the rig before, or nothing is there yet
  void setTheme(const Theme& theme);
  QTableWidget& table() { return *table_; }
  QString text() const override;  ///< everything it says, cells with tabs between

 protected:
  void fitColumns() override;
  std::string pathAt(const QModelIndex& index) const override;

 private:
  struct Row {
    Axis axis;
    LimitGain gain;
  };
  void build();
  void fillTable();

  Theme theme_;
  std::vector<Row> rows_;
  std::array<QLabel*, 2> names_{}, sentences_{};
  QLabel *state_, *empty_;
  QTableWidget* table_;
};

}  // namespace gazewright
