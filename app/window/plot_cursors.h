#pragma once

#include <QDialog>
#include <QPointer>

#include "app/plots/plot_view.h"

class QLineEdit;
class QPlainTextEdit;
class QCheckBox;

namespace gazewright {

/// Both cursors of a plot by number, and what they read as a table that can be copied. It follows
/// the plot while that is shown.
class PlotCursors : public QDialog {
  Q_OBJECT
 public:
  PlotCursors(PlotView* plot, QWidget* parent);

  QLineEdit* placeOfA() const { return a_; }
  QLineEdit* placeOfB() const { return b_; }
  QString table() const;

 private:
  QLineEdit* placeEdit(const QString& name);
  void place(QLineEdit* edit);
  void refresh();

  QPointer<PlotView> plot_;
  QLineEdit *a_, *b_;
  QCheckBox* held_;
  QPlainTextEdit* table_;
};

}  // namespace gazewright
