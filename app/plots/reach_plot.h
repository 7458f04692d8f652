#pragma once

#include "app/plots/painted_plot.h"
#include "app/plots/reach_picture.h"

namespace gazewright {

/// The reach map. A press on a region that cannot be reached asks for the card of what limits it.
class ReachPlot final : public PaintedPlot {
  Q_OBJECT

 public:
  explicit ReachPlot(QWidget* parent);
  QString csv() const override;
  PlotLink link() const override;
  ReachGrid grid() const;  ///< as it is on screen. @pre it shows a map
  std::optional<ReachPlace> placeAt(QPointF point) const;

 protected:
  void take(const PlotInput& input) override { picture_ = reach_picture(input); }
  QString message() const override { return picture_.message; }
  QString words() const override { return picture_.summary; }
  void paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const override;
  void mousePressEvent(QMouseEvent* event) override;
  bool event(QEvent* event) override;

 private:
  ReachPicture picture_;
};

}  // namespace gazewright
