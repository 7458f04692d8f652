#pragma once

#include <string>

#include "app/window/seen_dialog.h"

class QModelIndex;
class QTableView;
class QToolButton;

namespace gazewright {

/// A list beside the main window. A click on a row shows the card of its field, Enter or a double
/// click goes there; Ctrl+C copies the list, F1 asks for its page of the handbook. Rows are as high
/// as their text, columns follow the text size.
class ListDialog : public SeenDialog {
  Q_OBJECT
 public:
  /// @param name  of objects: the table is "name.table", its button "name.copy"
  ListDialog(QTableView* table, const QString& name, const QString& title, QWidget* parent);

  virtual QString text() const = 0;  ///< what is copied: cells with tabs between

 signals:
  /// `goes`: the window is to come to the front, else only its card.
  void fieldChosen(const QString& path, bool goes);
  void helpWanted();

 protected:
  /// Once the table has its columns.
  void layOutList();
  virtual void fitColumns() = 0;  ///< to the table's font
  /// The field that a cell leads to; empty: none.
  virtual std::string pathAt(const QModelIndex& index) const = 0;
  QTableView* list() const { return list_; }
  QToolButton* copyButton() const { return copy_; }  ///< to be put into the layout

  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void choose(const QModelIndex& index, bool goes);
  void copy() const;

  QTableView* list_;
  QToolButton* copy_;
};

}  // namespace gazewright
