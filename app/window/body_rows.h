#pragma once

#include <string>

#include "app/window/card_row.h"
#include "app/window/edits.h"

class QComboBox;
class QToolButton;
class QVBoxLayout;

namespace gazewright {

class Document;

/// Above a body's fields: its carrier, its shape, and what can be done with it as a whole.
class BodyControls : public CardRow {
  Q_OBJECT
 public:
  BodyControls(Document& document, const BodyPlace& place);
  void refresh() override;

 signals:
  void partChosen(const QString& part);

 private:
  void connectParts();
  void duplicate();
  void removeBody();
  void change(const QString& what, const Rig& after, const BodyPlace& next);
  const Body& body() const;

  Document& document_;
  BodyPlace place_;
  QComboBox *carrier_, *shape_;
  QToolButton *up_, *down_;
};

/// The bodies that an axis turns, each a button to its card, and one to add another.
class BodyList : public CardRow {
  Q_OBJECT
 public:
  BodyList(Document& document, bool on_tilt);
  void refresh() override;

 signals:
  void partChosen(const QString& part);

 private:
  Document& document_;
  bool on_tilt_;
  QVBoxLayout* layout_;
  std::vector<QToolButton*> buttons_;
};

}  // namespace gazewright
