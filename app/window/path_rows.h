#pragma once

#include "app/window/card_row.h"
#include "core/rig/rig.h"

class QLabel;
class QTableWidget;
class QTableWidgetItem;
class QToolButton;

namespace gazewright {

class Document;

/// The points of the target's path as a table of time, pan and tilt: typed, added and taken away,
/// each in one step to undo. A path has no point or at least two, and its times ascend; what breaks
/// that is refused, with the reason below the table.
class PathRows final : public CardRow {
  Q_OBJECT
 public:
  explicit PathRows(Document& document);
  void refresh() override;
  QString errorText() const;  ///< what was wrong with the last entry; empty: nothing

 private:
  void addPoint();
  void removePoint();
  void take(QTableWidgetItem* item);
  void showProblem(const QString& problem);
  void fill();

  Document& document_;
  QTableWidget* table_;
  QLabel* problem_;
  QToolButton *add_, *remove_;
  std::vector<PathPoint> shown_;
};

}  // namespace gazewright
