#pragma once

#include "app/window/card_row.h"
#include "core/analysis/gain_advice.h"

class QLabel;
class QToolButton;

namespace gazewright {

class Document;

/// The advised gains of an axis on its drive's card: a button that takes all three in one step,
/// what that does, and, unfolded, the reasons.
class AdviceRow : public CardRow {
  Q_OBJECT
 public:
  AdviceRow(Document& document, Axis axis, QWidget* parent = nullptr);
  void refresh() override {}
  void showCost(const Analysis& analysis) override;
  QString text() const;
  QToolButton* button() const { return use_; }

 private:
  void use();
  void fold(bool open);

  Document& document_;
  Axis axis_;
  std::vector<FieldValue> values_;
  QLabel *effect_, *reasons_;
  QToolButton *use_, *fold_;
};

}  // namespace gazewright
