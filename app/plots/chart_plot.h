#pragma once

#include "app/plots/chart_canvas.h"
#include "app/plots/plot_view.h"
#include "app/plots/view_history.h"

namespace gazewright {

/// A plot with two axes: a Chart that can be zoomed, dragged and read with two cursors. Cursor A
/// follows the pointer; cursor B stays where it was put.
class ChartPlot : public PlotView {
  Q_OBJECT

 public:
  using Build = Chart (*)(const PlotInput&);
  enum class Cursor { a, b };
  /// `build`: for one of several charts of a kind; null: the kind's chart.
  ChartPlot(PlotKind kind, QWidget* parent, Build build = nullptr);

  PlotKind kind() const override { return kind_; }
  void setInput(const PlotInput& input) override;
  void setTheme(const Theme& theme) override;
  void setCursor(double time_s) override;
  void setSecondCursor(double time_s) override;
  QString summary() const override { return summary_of(full_); }
  QString csv() const override { return csv_of(full_); }
  QString visibleCsv() const override;
  void paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const override;
  QSize sizeHint() const override { return {360, 220}; }
  QSize minimumSizeHint() const override { return {200, 130}; }
  std::vector<ChartPlot*> charts() const override { return {const_cast<ChartPlot*>(this)}; }

  ChartCanvas* canvas() const { return canvas_; }
  const Chart& fullChart() const { return full_; }  ///< with the lines that are switched off
  QString whyNoDifference() const;                  ///< see PlotView
  QStringList variants() const;                     ///< whose lines lie under the present design's
  QString nextVariant() const;  ///< after the one that the curves are less of; empty: none
  void showLess(const QString& variant);  ///< empty: the curves themselves
  bool isZoomed() const { return zoomed_; }
  void showX(Range x);  ///< as zoomed to by a chart beside it
  ViewHistory::One view() const;
  void showView(const ViewHistory::One& view);
  /// The plot that keys, clicks and the menu speak of, where this is a part of one.
  void setHost(PlotView* host) { host_ = host; }

  /// Place of a cursor [unit of x, of a path ms]; NaN: it is not set.
  double cursorPlace(Cursor cursor) const;
  /// Puts a cursor to the nearest sample and tells the other plots; NaN takes it away.
  void placeCursor(Cursor cursor, double at);
  QString cursorUnit() const;
  QString cursorTable() const;  ///< all that both cursors read, with tabs
  void toggleSecondCursor();
  void zoomToCursors();  ///< x from one cursor to the other; nothing where one is not set

 public slots:
  void wholeView() override;
  void setCursorX(double x);
  void setSecondCursorX(double x);

 signals:
  void xChosen(double x);  ///< the pointer or the keys moved the cursor
  void secondXChosen(double x);
  void viewChosen(bool merges);  ///< the user zoomed or dragged; see ViewHistory

 protected:
  void applyOptions() override;
  void keyPressEvent(QKeyEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void changeEvent(QEvent* event) override;
  void leaveEvent(QEvent* event) override;

 private:
  void listenToMouse();
  void showChart(bool keeps_scale);
  void pointerAt(const QPointF& at);
  void choose(double x, double time_s);
  bool isTimed() const;  ///< its cursors stand for times
  void stepCursor(int steps);
  void stepAlongPath(int steps);
  bool pressViewKey(QKeyEvent* event);
  bool pressOptionKey(QKeyEvent* event);
  void zoom(double factor, Qt::Orientations along);
  void pan(double x_part, double y_part);
  void touched(bool merges);  ///< the user changed the view
  void replotSoon() { canvas_->replot(QCustomPlot::rpQueuedReplot); }

  PlotKind kind_;
  Build build_;
  ChartCanvas* canvas_;
  PlotView* host_;
  Chart built_;  ///< what the input says
  Chart full_;   ///< that, or its difference to a variant
  bool has_variants_ = false;
  bool zoomed_ = false;  ///< by the user: the scale no longer follows the data
  bool has_view_ = false;
};

}  // namespace gazewright
