#pragma once

#include "app/plots/chart_plot.h"

class QLabel;

namespace gazewright {

/// A chart above another over the same x: gain and phase, current and voltage. They zoom and point
/// together.
class StackedPlot : public PlotView {
  Q_OBJECT

 public:
  StackedPlot(PlotKind kind, QWidget* parent, ChartPlot::Build build_above,
              ChartPlot::Build build_below);

  PlotKind kind() const override { return kind_; }
  void setInput(const PlotInput& input) override;
  void setTheme(const Theme& theme) override;
  void setCursor(double time_s) override;
  void setSecondCursor(double time_s) override;
  QString summary() const override { return above_->summary(); }
  QString csv() const override;
  QString visibleCsv() const override;
  std::vector<ChartPlot*> charts() const override { return {above_, below_}; }
  void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const override;
  QSize sizeHint() const override { return {360, 260}; }
  QSize minimumSizeHint() const override { return {200, 160}; }

  ChartPlot* above() const { return above_; }
  ChartPlot* below() const { return below_; }

 public slots:
  void wholeView() override;

 protected:
  void applyOptions() override;

 private:
  void showWhatFits();
  void nameLeftOut();
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  void zoomTogether(ChartPlot* from, ChartPlot* to);

  PlotKind kind_;
  ChartPlot *above_, *below_;
  QLabel* left_out_;  ///< says so while the lower one finds no room
};

/// The same picture without a widget in sight.
void paint_stacked(QPainter& painter, const QRectF& rect, const Chart& above, const Chart& below,
                   const Theme& theme, const QFont& font);

}  // namespace gazewright
