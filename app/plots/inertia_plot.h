#pragma once

#include <array>
#include <vector>

#include "app/plots/inertia_shares.h"
#include "app/plots/painted_plot.h"

namespace gazewright {

/// Shares of the inertia that the motor of each axis turns, largest first.
class InertiaPlot final : public PaintedPlot {
  Q_OBJECT

 public:
  explicit InertiaPlot(QWidget* parent);
  QString csv() const override;

 protected:
  void take(const PlotInput& input) override;
  QString message() const override { return message_; }
  QString words() const override;
  void paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const override;

 private:
  QString message_;
  std::array<std::vector<InertiaShare>, 2> shares_;  ///< by Axis
};

}  // namespace gazewright
