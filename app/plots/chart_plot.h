#pragma once

#include "app/plots/chart_canvas.h"
#include "app/plots/plot_view.h"

namespace gazewright {

/// A plot with two axes: a Chart that can be zoomed, dragged and read with the cursor.
class ChartPlot : public PlotView {
  Q_OBJECT

 public:
  using Build = Chart (*)(const PlotInput&);
  /// `build`: for one of several charts of a kind; null: the kind's chart.
  ChartPlot(PlotKind kind, QWidget* parent, Build build = nullptr);

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
  bool isZoomed() const { return zoomed_; }
  void showX(Range x);  ///< as zoomed to by a chart beside it

 public slots:
  void wholeView() override;
  void setCursorX(double x);

 signals:
  void xChosen(double x);  ///< the pointer or the keys moved the cursor

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
  Build build_;
  ChartCanvas* canvas_;
  bool zoomed_ = false;  ///< by the user: the scale no longer follows the data
};

}  // namespace gazewright
