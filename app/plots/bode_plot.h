#pragma once

#include "app/plots/chart_plot.h"

namespace gazewright {

/// Gain above phase over the same frequencies: two charts that zoom and point together.
class BodePlot : public PlotView {
  Q_OBJECT

 public:
  explicit BodePlot(QWidget* parent);

  PlotKind kind() const override { return PlotKind::bode; }
  void setInput(const PlotInput& input) override;
  void setTheme(const Theme& theme) override;
  void setCursor(double) override {}
  QString summary() const override { return gain_->summary(); }
  QString csv() const override;
  void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const override;
  QSize sizeHint() const override { return {360, 260}; }
  QSize minimumSizeHint() const override { return {200, 160}; }

  ChartPlot* gain() const { return gain_; }
  ChartPlot* phase() const { return phase_; }

 public slots:
  void wholeView() override;

 private:
  void resizeEvent(QResizeEvent* event) override;
  void zoomTogether(ChartPlot* from, ChartPlot* to);

  ChartPlot *gain_, *phase_;
};

/// The same picture without a widget in sight.
void paint_bode(QPainter& painter, const QRectF& rect, const Chart& gain, const Chart& phase,
                const Theme& theme, const QFont& font);

}  // namespace gazewright
