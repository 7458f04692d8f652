#pragma once

#include "app/plots/dial_layout.h"
#include "app/plots/inertia_shares.h"
#include "app/plots/plot_view.h"

namespace gazewright {

class TravelDial;

/// The travel of both axes as dials, or of one.
struct TravelPicture {
  std::array<std::optional<DialPicture>, 2> dial;  ///< by Axis; empty: not shown
  QString message;
};
/// Where the dial of an axis goes; null where it is not shown.
QRectF travel_place(const QRectF& rect, const TravelPicture& picture, Axis axis);
void paint_travel(QPainter& painter, const QRectF& rect, const TravelPicture& picture,
                  const Theme& theme);

/// Shares of the inertia that the motor of each axis turns, largest first.
struct InertiaPicture {
  std::array<std::vector<InertiaShare>, 2> shares;  ///< by Axis
  QString message;
};
InertiaPicture inertia_picture(const PlotInput& input);
void paint_inertia(QPainter& painter, const QRectF& rect, const InertiaPicture& picture,
                   const Theme& theme);

/// Its dials are widgets, so that marks can be dragged.
class TravelPlot : public PlotView {
  Q_OBJECT

 public:
  explicit TravelPlot(QWidget* parent);
  PlotKind kind() const override { return PlotKind::travel; }
  void setInput(const PlotInput& input) override;
  void setTheme(const Theme& theme) override;
  void setCursor(double time_s) override;
  QString summary() const override;
  QString csv() const override;
  void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const override;
  QSize sizeHint() const override { return {360, 220}; }
  TravelDial* dial(Axis axis) const { return dials_[std::size_t(axis)]; }

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void lay();

  TravelPicture picture_;
  std::array<TravelDial*, 2> dials_;
  std::array<Trace, 2> steps_;  ///< for the hands
  std::array<double, 2> move_rad_{};
  Theme theme_ = theme_for(ThemeKind::light);
};

class InertiaPlot final : public PlotView {
  Q_OBJECT

 public:
  explicit InertiaPlot(QWidget* parent);
  PlotKind kind() const override { return PlotKind::inertia; }
  void setInput(const PlotInput& input) override;
  void setTheme(const Theme& theme) override;
  void setCursor(double) override {}
  QString summary() const override;
  QString csv() const override;
  void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const override;
  QSize sizeHint() const override { return {360, 220}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  InertiaPicture picture_;
  Theme theme_ = theme_for(ThemeKind::light);
};

}  // namespace gazewright
