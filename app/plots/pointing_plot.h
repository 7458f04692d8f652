#pragma once

#include "app/plots/painted_plot.h"
#include "app/plots/share_bars.h"

namespace gazewright {

/// Which errors make an axis point amiss, by their part of the sum of squares, largest first.
class PointingPlot final : public PaintedPlot {
  Q_OBJECT

 public:
  explicit PointingPlot(QWidget* parent);
  QString csv() const override;

 protected:
  void take(const PlotInput& input) override;
  QString message() const override { return message_; }
  QString words() const override;
  void paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const override;

 private:
  QString message_;
  std::vector<ShareList> lists_;
  std::array<PointingBudget, 2> budgets_;  ///< by Axis; empty where the axis is not shown
};

/// "Bearing play", translated.
QString pointing_word(const std::string& id);

}  // namespace gazewright
