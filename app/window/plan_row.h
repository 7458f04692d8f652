#pragma once

#include "app/window/card_row.h"

class QLabel;

namespace gazewright {

/// The homing plan of an axis on its card: steps to set up in the drive, as the analysis says them.
class PlanRow : public CardRow {
  Q_OBJECT
 public:
  explicit PlanRow(Axis axis, QWidget* parent = nullptr);
  void refresh() override {}
  void showCost(const Analysis& analysis) override;
  QString text() const;

 private:
  Axis axis_;
  QLabel* steps_;
};

}  // namespace gazewright
