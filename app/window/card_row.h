#pragma once

#include <QWidget>

#include "core/analysis/analysis.h"

namespace gazewright {

/// A row of a card. It shows the document and edits it; it keeps nothing of its own.
class CardRow : public QWidget {
  Q_OBJECT
 public:
  using QWidget::QWidget;
  virtual void refresh() = 0;  ///< from the document
  virtual void showCost(const Analysis&) {}

 signals:
  void focused(const QString& help);
};

}  // namespace gazewright
