#pragma once

#include "app/window/card_row.h"

class QLabel;
class QToolButton;
class QVBoxLayout;

namespace gazewright {

/// What limits the move of an axis on its card, and a button for each change that would shorten it.
class LimitsRow : public CardRow {
  Q_OBJECT
 public:
  explicit LimitsRow(Axis axis, QWidget* parent = nullptr);
  void refresh() override {}
  void showCost(const Analysis& analysis) override;
  QString text() const;
  const std::vector<QToolButton*>& buttons() const { return buttons_; }

 signals:
  void remedyChosen(const gazewright::Remedy& remedy);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void addButton(const LimitGain& gain);
  void wrapButtons();

  Axis axis_;
  QLabel* text_;
  QVBoxLayout* layout_;
  std::vector<QToolButton*> buttons_;
  QStringList changes_;             ///< what the buttons say, in one line each
  std::vector<std::string> shown_;  ///< texts of the buttons
};

}  // namespace gazewright
