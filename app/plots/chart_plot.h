#pragma once

#include "app/plots/chart_canvas.h"
#include "app/plots/plot_view.h"

namespace gazewright {

/// A plot with two axes: a Chart that can be zoomed, dragged and read with the cursor.
class ChartPlot : public PlotView {
  Q_OBJECT

 public:
  ChartPlot(PlotKind kind, QWidget* parent);

  PlotKind kind() const override { return kind_; }
  void setInput(const PlotInput& input) override;
  void setTheme(const Theme& theme) override;
  void setCursor(double time_s) override;
  QString summary() const override { return summary_of(canvas_->chart()); }
  QString csv() const override { return csv_of(canvas_->chart()); }
  void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const override;
  QSize sizeHint() const override { return {360, 220}; }
  QSize minimumSizeHint() const override { return {200, 130}; }

  ChartCanvas* canvas() const { return canvas_; }

 public slots:
  void wholeView() override;

 protected:
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  void listenToMouse();
  void pointerAt(const QPointF& at);
  void choose(double x, double time_s);
  void stepCursor(int steps);
  void zoom(double factor);
  void replotSoon() { canvas_->replot(QCustomPlot::rpQueuedReplot); }

  PlotKind kind_;
  ChartCanvas* canvas_;
  bool zoomed_ = false;  ///< by the user: the scale no longer follows the data
};

}  // namespace gazewright
