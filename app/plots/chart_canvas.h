#pragma once

#include "app/plots/chart_items.h"

namespace gazewright {

/// Draws a Chart with QCustomPlot: the one painter of screen, print and PDF.
class ChartCanvas : public QCustomPlot {
  Q_OBJECT

 public:
  explicit ChartCanvas(QWidget* parent = nullptr);

  /// The data; the view stays as it is.
  void setChart(const Chart& chart);
  void setStyle(const Theme& theme, const QFont& font);
  void setView(Range x, Range y);
  void fitTicks(QSize size);  ///< as many as find room for their labels in a plot of this size
  Range viewX() const;
  Range viewY() const;
  const Chart& chart() const { return chart_; }
  const ChartStyle& style() const { return style_; }

  /// Moves the cursor to an x and a time (NaN hides it) and repaints only its layer.
  void setCursor(double x, double time_s);
  double cursorX() const { return cursor_->a.x; }
  /// The same for the second cursor, which differences are taken from.
  void setSecondCursor(const CursorPlace& place);
  const CursorPlace& cursor() const { return cursor_->a; }
  const CursorPlace& secondCursor() const { return cursor_->b; }

  void setGrid(bool shown);
  /// Keeps as many lines for the legend and shows all of it, as on paper; 0: as on a screen.
  void setLegendRows(int rows);
  int legendAt(QPointF at);  ///< the entry at a place on the screen, or kNoEntry or kMoreEntries
  const MarksItem& marks() const { return *marks_; }

 signals:
  /// The wheel, or a drag that ended, may have changed the view.
  void viewTouched(bool by_wheel);

 protected:
  void wheelEvent(QWheelEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;

 private:
  void makePlottables();
  void fillPlottables();
  void applyStyle();
  void applyMargins();

  Chart chart_;
  ChartStyle style_;
  CursorItem* cursor_;
  MarksItem* marks_;
  bool is_stale_ = true;  ///< not drawn since the chart came
  bool grid_ = true;
};

/// Paints a chart as vectors, in its whole view unless one is given.
void paint_chart(QPainter& painter, const QRectF& rect, const Chart& chart, const Theme& theme,
                 const QFont& font, std::optional<std::pair<Range, Range>> view = {},
                 bool grid = true);

/// The font with its size in pixels, so that a picture does not depend on the device's resolution.
QFont pixel_font(const QFont& font);

}  // namespace gazewright
