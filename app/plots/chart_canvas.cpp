#include "app/plots/chart_canvas.h"

#include <QPicture>
#include <algorithm>
#include <cmath>
#include <limits>

#include "app/plots/format.h"
#include "app/plots/thin_lines.h"

namespace gazewright {
namespace {

/// Ticks at 1-2-5 steps, on a logarithmic axis at 1, 2, 5, 10 ..., over many decades at 1, 10 ...;
/// labelled in the locale.
class Ticker : public QCPAxisTicker {
 public:
  explicit Ticker(bool logarithmic, double step = 0) : logarithmic_(logarithmic), step_(step) {}

 protected:
  double getTickStep(const QCPRange& range) override {
    if (step_ > 0) {
      double step = step_;
      while (range.size() > step * std::max(2, mTickCount * 8 / 5)) step *= 2;
      return step;
    }
    double magnitude = 1;
    const double mantissa = getMantissa(range.size() / mTickCount, &magnitude);
    return pickClosest(mantissa, {1, 2, 5, 10}) * magnitude;
  }
  QString getTickLabel(double tick, const QLocale&, QChar, int) override {
    return number_text(std::abs(tick) < 1e-9 ? 0 : tick, 6);
  }
  QVector<double> createTickVector(double step, const QCPRange& range) override {
    if (!logarithmic_) return QCPAxisTicker::createTickVector(step, range);
    const double decades = std::log10(range.upper / range.lower);
    if (decades > 3 || 3 * decades > mTickCount)
      return marks(range, {1}, std::max(1, int(std::ceil(decades / mTickCount))));
    return marks(range, {1, 2, 5});
  }
  QVector<double> createSubTickVector(int count, const QVector<double>& ticks) override {
    if (!logarithmic_) return QCPAxisTicker::createSubTickVector(count, ticks);
    if (ticks.size() < 2 || ticks[1] < 9.9 * ticks[0]) return {};
    return marks({ticks.first(), ticks.last()}, {2, 5});
  }

 private:
  /// In every decade, or in each whose exponent is a multiple of `every`.
  static QVector<double> marks(const QCPRange& range, std::initializer_list<double> mantissas,
                               int every = 1) {
    QVector<double> ticks;
    const int last = int(std::floor(std::log10(range.upper)));
    for (int exponent = int(std::floor(std::log10(range.lower))); exponent <= last; ++exponent) {
      if (exponent % every != 0) continue;
      for (const double mantissa : mantissas) ticks.append(mantissa * std::pow(10, exponent));
    }
    return ticks;
  }

  bool logarithmic_;
  double step_;
};

/// What is not finite leaves a gap; a line to infinity would cross the plot.
QVector<double> with_gaps(QVector<double> values) {
  if (std::ranges::any_of(values, [](double v) { return std::isinf(v); })) {
    for (double& value : values) {
      if (std::isinf(value)) value = std::numeric_limits<double>::quiet_NaN();
    }
  }
  return values;
}

}  // namespace

QFont pixel_font(const QFont& font) {
  QFont result = font;
  result.setPixelSize(std::max(8, QFontInfo(font).pixelSize()));
  return result;
}

ChartCanvas::ChartCanvas(QWidget* parent) : QCustomPlot(parent) {
  style_.font = pixel_font(QWidget::font());
  setFocusPolicy(Qt::NoFocus);
  setNoAntialiasingOnDrag(true);
  setPlottingHint(QCP::phCacheLabels, true);
  setPlottingHint(QCP::phImmediateRefresh, false);  // with the rest of the window, once
  (new BandsItem(this, chart_, style_))->setLayer(QStringLiteral("background"));
  (new RibbonsItem(this, chart_, style_))->setLayer(QStringLiteral("background"));
  (new StretchesItem(this, chart_, style_))->setLayer(QStringLiteral("legend"));
  marks_ = new MarksItem(this, chart_, style_);
  marks_->setLayer(QStringLiteral("legend"));
  cursor_ = new CursorItem(this, chart_, style_);
  cursor_->setLayer(QStringLiteral("overlay"));
  axisRect()->setAutoMargins(QCP::msNone);
  for (QCPAxis* axis : {xAxis, yAxis}) axis->setTicker(QSharedPointer<Ticker>::create(false));
  connect(this, &QCustomPlot::beforeReplot, this, [this] { fitTicks(viewport().size()); });
  connect(this, &QCustomPlot::afterReplot, this, [this] { is_stale_ = false; });
  applyStyle();
}

void ChartCanvas::setChart(const Chart& chart) {
  const bool log_changed = chart.x_log != chart_.x_log,
             step_changed = chart.y_step != chart_.y_step;
  const bool same_kinds =
      plottableCount() == chart.series.size() && chart.series.size() == chart_.series.size() &&
      std::equal(chart.series.begin(), chart.series.end(), chart_.series.begin(),
                 [](const Series& a, const Series& b) { return a.is_path() == b.is_path(); });
  chart_ = chart;
  is_stale_ = true;
  if (log_changed) {
    xAxis->setScaleType(chart.x_log ? QCPAxis::stLogarithmic : QCPAxis::stLinear);
    xAxis->setTicker(QSharedPointer<Ticker>::create(chart.x_log));
  }
  if (step_changed) {
    yAxis->setTicker(QSharedPointer<Ticker>::create(false, chart.y_step));
    applyMargins();
  }
  if (!same_kinds) makePlottables();
  fillPlottables();
  for (QCPAxis* axis : {xAxis, yAxis}) axis->setVisible(chart_.message.isEmpty());
}

void ChartCanvas::makePlottables() {
  clearPlottables();
  for (const Series& series : chart_.series) {
    if (series.is_path()) {
      new ThinCurve(xAxis, yAxis);
    } else {
      new ThinGraph(xAxis, yAxis);
    }
  }
}

void ChartCanvas::fillPlottables() {
  for (int i = 0; i < plottableCount(); ++i) {
    const Series& series = chart_.series[i];
    QCPAbstractPlottable* line = plottable(i);
    line->setSelectable(QCP::stNone);
    line->setPen(line_pen(style_, series.axis, series.line));
    if (auto* curve = qobject_cast<QCPCurve*>(line)) {
      curve->setData(series.time_s, series.x, with_gaps(series.y), true);
    } else if (auto* graph = qobject_cast<QCPGraph*>(line)) {
      graph->setData(series.x, with_gaps(series.y), true);
      graph->setBrush(series.filled ? QBrush(tint(style_, series.axis)) : QBrush(Qt::NoBrush));
    }
  }
}

void ChartCanvas::setStyle(const Theme& theme, const QFont& font) {
  style_ = {theme, pixel_font(font), style_.legend_rows};
  applyStyle();
  fillPlottables();
}

void ChartCanvas::applyStyle() {
  const Theme& theme = style_.theme;
  setBackground(QBrush(theme.card));
  for (QCPAxis* axis : {xAxis, yAxis}) {
    axis->setBasePen(QPen(theme.control, 1));
    axis->setTickPen(QPen(theme.control, 1));
    axis->setSubTickPen(QPen(theme.control, 1));
    axis->setTickLength(0, 4);
    axis->setSubTickLength(0, 2);
    axis->setTickLabelColor(theme.quiet);
    axis->setTickLabelFont(style_.font);
    axis->setTickLabelPadding(3);
    axis->grid()->setPen(grid_ ? QPen(theme.grid, 1) : QPen(Qt::NoPen));
    axis->grid()->setZeroLinePen(QPen(theme.control, 1));
  }
  applyMargins();
}

/// Room for labels that does not change with them, so that a plot never jumps.
void ChartCanvas::applyMargins() {
  const QFontMetrics metrics(style_.font);
  const int line = metrics.height();
  const int more_rows = std::max(0, style_.legend_rows - 1) * (line + 2);
  axisRect()->setMargins({metrics.horizontalAdvance(QStringLiteral("−0.0000")) + 8,
                          line * 4 / 3 + 8 + more_rows, 12, 2 * line + 9});
}

void ChartCanvas::fitTicks(QSize size) {
  const QFontMetrics metrics(style_.font);
  const int line = metrics.height(), digit = metrics.horizontalAdvance('0');
  const QSize inside = size.shrunkBy(axisRect()->margins());
  yAxis->ticker()->setTickCount(std::clamp(inside.height() * 5 / (9 * line), 2, 5));
  xAxis->ticker()->setTickCount(chart_.x_log ? std::max(1, inside.width() / (5 * digit))
                                             : std::clamp(inside.width() / (8 * digit), 2, 5));
}

void ChartCanvas::setView(Range x, Range y) {
  xAxis->setRange(x.lo, x.hi);
  yAxis->setRange(y.lo, y.hi);
}

Range ChartCanvas::viewX() const { return {xAxis->range().lower, xAxis->range().upper}; }
Range ChartCanvas::viewY() const { return {yAxis->range().lower, yAxis->range().upper}; }

void ChartCanvas::setCursor(double x, double time_s) {
  cursor_->a = {x, time_s};
  if (isVisible()) cursor_->layer()->replot();
}

void ChartCanvas::setSecondCursor(const CursorPlace& place) {
  cursor_->b = place;
  if (isVisible()) cursor_->layer()->replot();
}

void ChartCanvas::setGrid(bool shown) {
  if (grid_ == shown) return;
  grid_ = shown;
  applyStyle();
}

void ChartCanvas::setLegendRows(int rows) {
  style_.legend_rows = rows;
  applyMargins();
}

int ChartCanvas::legendAt(QPointF at) {
  if (is_stale_) replot(rpImmediateRefresh);
  return marks_->entryAt(at);
}

void ChartCanvas::wheelEvent(QWheelEvent* event) {
  QCustomPlot::wheelEvent(event);
  emit viewTouched(true);
}

void ChartCanvas::mouseReleaseEvent(QMouseEvent* event) {
  QCustomPlot::mouseReleaseEvent(event);
  emit viewTouched(false);
}

namespace {

/// QCustomPlot wants a painter of its own class.
QPicture recorded(ChartCanvas& canvas, QSize size) {
  canvas.fitTicks(size);
  QPicture picture;
  QCPPainter recorder;
  recorder.begin(&picture);
  recorder.setModes(QCPPainter::pmVectorized | QCPPainter::pmNoCaching | QCPPainter::pmNonCosmetic);
  canvas.toPainter(&recorder, size.width(), size.height());
  recorder.end();
  return picture;
}

}  // namespace

void paint_chart(QPainter& painter, const QRectF& rect, const Chart& chart, const Theme& theme,
                 const QFont& font, std::optional<std::pair<Range, Range>> view, bool grid) {
  ChartCanvas canvas;
  canvas.setGrid(grid);
  canvas.setStyle(theme, font);
  canvas.setChart(chart);
  const auto [x, y] = view.value_or(std::pair{chart.x, chart.y});
  canvas.setView(x, y);
  QPicture picture;
  do {  // how many lines the legend takes is known when it is drawn
    canvas.setLegendRows(canvas.marks().legendRows());
    picture = recorded(canvas, rect.size().toSize());
  } while (canvas.marks().legendRows() > canvas.style().legend_rows);
  painter.save();
  painter.setClipRect(rect, Qt::IntersectClip);
  painter.translate(rect.topLeft());
  // A picture grows with the resolution of what it is played on; this one shall not.
  painter.scale(double(picture.logicalDpiX()) / painter.device()->logicalDpiX(),
                double(picture.logicalDpiY()) / painter.device()->logicalDpiY());
  picture.play(&painter);
  painter.restore();
}

}  // namespace gazewright
