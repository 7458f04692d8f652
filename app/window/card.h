#pragma once

#include <QFrame>
#include <string>
#include <vector>

#include "app/plots/theme.h"
#include "core/analysis/analysis.h"

class QLabel;
class QScrollArea;
class QToolButton;
class QVBoxLayout;

namespace gazewright {

class CardRow;
class Document;

/// The card of the selected part: every field of it. It is laid out anew only when other fields
/// are due; else its rows refresh in place, so that the focus stays.
class Card : public QFrame {
  Q_OBJECT
 public:
  explicit Card(Document& document, QWidget* parent = nullptr);

  const std::string& part() const { return part_; }
  /// Shows a part and, where it is only a section of a card, scrolls to it.
  void showPart(const std::string& part);
  /// @pre the analysis outlives its use here, until the next call.
  void setAnalysis(const Analysis& analysis);
  void setTheme(const Theme& theme);
  QToolButton* placeButton() const { return place_; }  ///< to the drawing, where they share a place

 signals:
  void partChosen(const QString& part);

 private:
  void refresh();
  void rebuild();
  void addSection(QVBoxLayout* rows, const QString& heading, const std::string& prefix);
  void addRow(QVBoxLayout* rows, CardRow* row);
  QString structure() const;
  void fillPartMenu();

  Document& document_;
  const Analysis* analysis_ = nullptr;
  Theme theme_;
  std::string part_ = "rig";
  QString structure_;
  std::vector<CardRow*> rows_;
  QToolButton *title_, *place_;
  QLabel* help_;
  QScrollArea* scroll_;
};

}  // namespace gazewright
