#pragma once

#include <array>
#include <optional>

#include "app/plots/dial_layout.h"
#include "app/plots/painted_plot.h"

namespace gazewright {

class TravelDial;

/// The travel of both axes as dials, or of one. The dials are widgets, so that marks can be
/// dragged.
class TravelPlot final : public PaintedPlot {
  Q_OBJECT

 public:
  explicit TravelPlot(QWidget* parent);
  void setTheme(const Theme& theme) override;
  void setCursor(double time_s) override;
  QString csv() const override;
  TravelDial* dial(Axis axis) const { return dials_[std::size_t(axis)]; }

 protected:
  void take(const PlotInput& input) override;
  QString message() const override { return message_; }
  QString words() const override;
  void paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const override;
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  QRectF placeOf(const QRectF& inside, Axis axis) const;  ///< null where it is not shown
  void lay();

  QString message_;
  std::array<std::optional<DialPicture>, 2> pictures_;  ///< by Axis; empty: not shown
  std::array<TravelDial*, 2> dials_;
  std::array<Trace, 2> steps_;  ///< for the hands
  std::array<double, 2> move_rad_{};
};

}  // namespace gazewright
