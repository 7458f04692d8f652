#pragma once

#include <array>
#include <string>
#include <vector>

#include "app/plots/theme.h"
#include "app/window/seen_dialog.h"
#include "core/analysis/analysis.h"

class QLabel;
class QTableWidget;
class QToolButton;

namespace gazewright {

/// "What limits the moves", beside the window: what holds each axis back, and which change of one
/// field would save how much, the most first. A click or Enter leads to the field.
class MoveLimitsDialog : public SeenDialog {
  Q_OBJECT
 public:
  explicit MoveLimitsDialog(QWidget* parent = nullptr);

  /// @pre the analysis has its gains (not a quick one)
  void setAnalysis(const Analysis& analysis);
  void setStale();  ///< what is shown is of the rig before, or nothing is there yet
  void setTheme(const Theme& theme);
  QTableWidget& table() { return *table_; }
  QString text() const;  ///< everything it says, cells with tabs between

 signals:
  /// `goes`: the window is to come to the front, else only its card.
  void fieldChosen(const QString& path, bool goes);
  void helpWanted();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  struct Row {
    Axis axis;
    LimitGain gain;
  };
  void build();
  void buildTable();
  void fillTable();
  void fitColumns();
  void choose(int row, bool goes);
  void copy() const;

  Theme theme_;
  std::vector<Row> rows_;
  std::array<QLabel*, 2> names_{}, sentences_{};
  QLabel *state_, *empty_;
  QTableWidget* table_;
  QToolButton* copy_;
};

}  // namespace gazewright
