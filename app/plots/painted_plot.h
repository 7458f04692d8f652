#pragma once

#include "app/plots/inertia_shares.h"
#include "app/plots/plot_view.h"

namespace gazewright {

/// The travel of both axes as dials, or of one.
struct TravelPicture {
  std::array<std::optional<Travel>, 2> travel;  ///< by Axis; empty: not shown
  std::array<double, 2> angle_rad{};            ///< of the hands; NaN: none
  QString message;
};
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

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  TravelPicture picture_;
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
