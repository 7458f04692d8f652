#pragma once

#include <QFrame>
#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "app/plots/theme.h"
#include "app/window/card_groups.h"
#include "core/analysis/analysis.h"
#include "core/rig/fields.h"

class QLabel;
class QScrollArea;
class QToolButton;
class QVBoxLayout;

namespace gazewright {

class CardRow;
class Document;
struct Shelf;

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
  /// What named parts are held against.
  void setShelf(std::shared_ptr<const Shelf> shelf);
  void setTheme(const Theme& theme);
  /// Puts the focus into a field, its text selected; for a list ("tilt.axis_at") or a whole part
  /// ("pan.stops", "on_tilt") into what fills it in. Nothing happens where it is not on this card.
  void focusField(const std::string& path);
  /// Starts to type into the field that has the focus, as if its first key had been pressed there.
  void typeInto(const QString& text);
  QToolButton* placeButton() const { return place_; }  ///< to the drawing, where they share a place

 signals:
  void partChosen(const QString& part);
  void remedyChosen(const gazewright::Remedy& remedy);

 private:
  void refresh();
  void rebuild();
  void addSection(QVBoxLayout* rows, const QString& heading, const std::string& prefix);
  void addRow(QVBoxLayout* rows, CardRow* row);
  CardRow* rowOf(const std::string& path) const;  ///< null where the card has none
  CardRow* makeRow(const FieldRef& field, const QString& part);
  void addGroupHeading(QVBoxLayout* rows, const QString& prefix, const FieldGroup& group);
  void showRows();  ///< those that apply and are not folded away
  void unfold(const QString& part);
  QString structure() const;
  void fillPartMenu();

  /// Rows under one heading; the heading is null where there is none.
  struct Group {
    QWidget* heading = nullptr;
    QToolButton* fold = nullptr;
    QString key;  ///< of the remembered folding
    std::vector<std::pair<CardRow*, std::string>> rows;
  };

  Document& document_;
  const Analysis* analysis_ = nullptr;
  std::shared_ptr<const Shelf> shelf_;  ///< null until it is read
  Theme theme_;
  std::string part_ = "rig";
  QString structure_;
  std::vector<CardRow*> rows_;
  std::vector<Group> groups_;
  std::map<QString, bool> open_;  ///< groups that were opened or folded by hand
  QToolButton *title_, *place_;
  QLabel* help_;
  QScrollArea* scroll_;
};

}  // namespace gazewright
