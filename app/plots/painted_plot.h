#pragma once

#include "app/plots/plot_view.h"

namespace gazewright {

/// A plot without the axes of a chart, painted as a whole: what such plots share. One paints its
/// picture, or says in words why there is none.
class PaintedPlot : public PlotView {
  Q_OBJECT

 public:
  PaintedPlot(PlotKind kind, QWidget* parent) : PlotView(parent), kind_(kind) {
    setFocusPolicy(Qt::StrongFocus);  // for its menu
  }

  PlotKind kind() const final { return kind_; }
  void setInput(const PlotInput& input) final;
  void setTheme(const Theme& theme) override;
  void setCursor(double) override {}
  QString summary() const final;
  void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const final;
  QSize sizeHint() const override { return {360, 220}; }

 protected:
  virtual void take(const PlotInput& input) = 0;
  virtual QString message() const = 0;  ///< instead of the picture; empty: it is painted
  virtual QString words() const = 0;    ///< of the picture, as a summary
  /// @param inside  what the frame leaves, its ground painted
  virtual void paintPicture(QPainter& painter, const QRectF& inside, const Theme& theme) const = 0;
  static QRectF inside(const QRectF& rect) { return rect.adjusted(6, 4, -6, -4); }
  const Theme& theme() const { return theme_; }
  void paintEvent(QPaintEvent* event) override;

 private:
  PlotKind kind_;
  Theme theme_ = theme_for(ThemeKind::light);
};

}  // namespace gazewright
