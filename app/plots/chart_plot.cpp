#include "app/plots/chart_plot.h"

#include <QVBoxLayout>
#include <cmath>
#include <limits>

#include "app/plots/charts.h"

namespace gazewright {
namespace {

constexpr double kNowhere = std::numeric_limits<double>::quiet_NaN();

/// The time of the path point nearest to a place on the screen, of all paths. NaN: no path.
double nearest_path_time_s(const ChartCanvas& canvas, const QPointF& at) {
  double best = kInfinity, time_s = kNowhere;
  for (const Series& series : canvas.chart().series) {
    if (!series.is_path()) continue;
    for (qsizetype i = 0; i < series.x.size(); ++i) {
      const double dx = canvas.xAxis->coordToPixel(series.x[i]) - at.x();
      const double dy = canvas.yAxis->coordToPixel(series.y[i]) - at.y();
      if (dx * dx + dy * dy >= best) continue;
      best = dx * dx + dy * dy;
      time_s = series.time_s[i];
    }
  }
  return time_s;
}

/// The x of the first line's sample nearest to the cursor.
double snapped_x(const Chart& chart, double x) {
  for (const Series& series : chart.series) {
    const qsizetype i = series.is_path() ? -1 : sample_at(series, x, kNowhere);
    if (i >= 0) return series.x[i];
  }
  return kNowhere;
}

bool has_paths(const Chart& chart) {
  return std::any_of(chart.series.begin(), chart.series.end(),
                     [](const Series& s) { return s.is_path(); });
}

}  // namespace

ChartPlot::ChartPlot(PlotKind kind, QWidget* parent, Build build)
    : PlotView(parent), kind_(kind), build_(build), canvas_(new ChartCanvas(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(2, 2, 2, 2);
  layout->addWidget(canvas_);
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(title());
  canvas_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
  canvas_->setMouseTracking(true);
  listenToMouse();
  setInput({});
}

void ChartPlot::listenToMouse() {
  connect(canvas_, &QCustomPlot::mousePress, this, [this](QMouseEvent* event) {
    setFocus(Qt::MouseFocusReason);
    const bool box = event->modifiers() & Qt::ControlModifier;
    canvas_->setSelectionRectMode(box ? QCP::srmZoom : QCP::srmNone);
  });
  connect(canvas_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) {
    if (event->buttons() == Qt::NoButton) return pointerAt(event->position());
    zoomed_ = true;
  });
  connect(canvas_, &QCustomPlot::mouseDoubleClick, this, &PlotView::wholeView);
  connect(canvas_, &QCustomPlot::mouseWheel, this, [this](QWheelEvent* event) {
    Qt::Orientations along = Qt::Horizontal | Qt::Vertical;
    if (event->modifiers() & Qt::ControlModifier) along = Qt::Horizontal;
    if (event->modifiers() & Qt::ShiftModifier) along = Qt::Vertical;
    canvas_->axisRect()->setRangeZoom(along);
    zoomed_ = true;
  });
}

void ChartPlot::setInput(const PlotInput& input) {
  const bool was_empty = !canvas_->chart().message.isEmpty() || canvas_->chart().series.isEmpty();
  canvas_->setChart(build_ != nullptr ? build_(input) : chart_of(kind_, input));
  if (was_empty || !(input.fixed_scale || zoomed_)) {
    canvas_->setView(canvas_->chart().x, canvas_->chart().y);
  }
  setAccessibleDescription(summary());
  replotSoon();
}

void ChartPlot::setTheme(const Theme& theme) {
  canvas_->setStyle(theme, font());
  replotSoon();
  update();
}

void ChartPlot::setCursor(double time_s) {
  canvas_->setCursor(time_s * (canvas_->chart().x_per_s > 0 ? canvas_->chart().x_per_s : kNowhere),
                     time_s);
}

void ChartPlot::pointerAt(const QPointF& at) {
  const Chart& chart = canvas_->chart();
  if (!canvas_->axisRect()->rect().contains(at.toPoint())) return choose(kNowhere, kNowhere);
  if (has_paths(chart)) return choose(kNowhere, nearest_path_time_s(*canvas_, at));
  const double x = snapped_x(chart, canvas_->xAxis->pixelToCoord(at.x()));
  choose(x, chart.x_per_s > 0 ? x / chart.x_per_s : kNowhere);
}

/// Moves the cursor and tells the other plots, where it stands for a time.
void ChartPlot::choose(double x, double time_s) {
  canvas_->setCursor(x, time_s);
  emit xChosen(x);
  if (canvas_->chart().x_per_s > 0 || has_paths(canvas_->chart())) emit cursorMoved(time_s);
}

void ChartPlot::setCursorX(double x) { canvas_->setCursor(x, kNowhere); }

void ChartPlot::showX(Range x) {
  zoomed_ = true;
  if (canvas_->viewX() == x) return;
  canvas_->setView(x, canvas_->viewY());
  replotSoon();
}

void ChartPlot::stepCursor(int steps) {
  const QCPAxis* axis = canvas_->xAxis;
  const QRect inside = canvas_->axisRect()->rect();
  const double from = std::isfinite(canvas_->cursorX()) ? axis->coordToPixel(canvas_->cursorX())
                                                        : inside.center().x();
  const double x = snapped_x(canvas_->chart(), axis->pixelToCoord(from + steps));
  const double per_s = canvas_->chart().x_per_s;
  choose(x, per_s > 0 ? x / per_s : kNowhere);
}

void ChartPlot::zoom(double factor) {
  zoomed_ = true;
  for (QCPAxis* axis : {canvas_->xAxis, canvas_->yAxis}) {
    axis->scaleRange(factor, axis->pixelToCoord(axis->orientation() == Qt::Horizontal
                                                    ? canvas_->axisRect()->center().x()
                                                    : canvas_->axisRect()->center().y()));
  }
  replotSoon();
}

void ChartPlot::wholeView() {
  zoomed_ = false;
  canvas_->setView(canvas_->chart().x, canvas_->chart().y);
  replotSoon();
}

void ChartPlot::keyPressEvent(QKeyEvent* event) {
  const int stride = event->modifiers() & Qt::ShiftModifier ? 20 : 2;
  switch (event->key()) {
    case Qt::Key_Left:
      return stepCursor(-stride);
    case Qt::Key_Right:
      return stepCursor(stride);
    case Qt::Key_Plus:
      return zoom(0.8);
    case Qt::Key_Minus:
      return zoom(1.25);
    case Qt::Key_Home:
      return wholeView();
    case Qt::Key_Escape:
      return choose(kNowhere, kNowhere);
    default:
      PlotView::keyPressEvent(event);
  }
}

void ChartPlot::focusInEvent(QFocusEvent* event) {
  PlotView::focusInEvent(event);
  update();
}

void ChartPlot::focusOutEvent(QFocusEvent* event) {
  PlotView::focusOutEvent(event);
  update();
}

void ChartPlot::leaveEvent(QEvent* event) {
  PlotView::leaveEvent(event);
  choose(kNowhere, kNowhere);
}

void ChartPlot::changeEvent(QEvent* event) {
  PlotView::changeEvent(event);
  if (event->type() != QEvent::FontChange) return;
  canvas_->setStyle(canvas_->style().theme, font());
  replotSoon();
}

void ChartPlot::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), canvas_->style().theme.card);
  if (!hasFocus()) return;
  painter.setPen(QPen(canvas_->style().theme.focus, 2));
  painter.drawRect(rect().adjusted(1, 1, -1, -1));
}

void ChartPlot::paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const {
  paint_chart(painter, rect, canvas_->chart(), theme, font(),
              std::pair{canvas_->viewX(), canvas_->viewY()});
}

}  // namespace gazewright
