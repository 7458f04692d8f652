#include <algorithm>
#include <cmath>
#include <limits>

#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"

/// Cursors and keys of a plot with two axes.
namespace gazewright {
namespace {

using chart_parts::kMsPerS;

constexpr double kNowhere = std::numeric_limits<double>::quiet_NaN();
constexpr double kCloser = 0.8;      // of the range that a key zooms to
constexpr double kPanByKey = 0.125;  // of the range

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

const Series* first_path(const Chart& chart) {
  const auto at = std::ranges::find_if(chart.series, &Series::is_path);
  return at == chart.series.end() ? nullptr : &*at;
}

}  // namespace

bool ChartPlot::isTimed() const { return full_.x_per_s > 0 || first_path(full_) != nullptr; }

void ChartPlot::setCursor(double time_s) {
  if (!isTimed() && options().held) return;
  canvas_->setCursor(time_s * (full_.x_per_s > 0 ? full_.x_per_s : kNowhere), time_s);
  emit cursorsChanged();
}

void ChartPlot::setSecondCursor(double time_s) {
  if (!isTimed()) return;  // it has one of its own
  canvas_->setSecondCursor({time_s * (full_.x_per_s > 0 ? full_.x_per_s : kNowhere), time_s});
  emit cursorsChanged();
}

void ChartPlot::setCursorX(double x) {
  canvas_->setCursor(x, kNowhere);
  emit cursorsChanged();
}

void ChartPlot::setSecondCursorX(double x) {
  canvas_->setSecondCursor({x, kNowhere});
  emit cursorsChanged();
}

void ChartPlot::pointerAt(const QPointF& at) {
  const Chart& chart = canvas_->chart();
  if (options().held) return;
  if (!canvas_->axisRect()->rect().contains(at.toPoint())) return choose(kNowhere, kNowhere);
  if (first_path(chart) != nullptr) return choose(kNowhere, nearest_path_time_s(*canvas_, at));
  const double x = snapped_x(chart, canvas_->xAxis->pixelToCoord(at.x()));
  choose(x, chart.x_per_s > 0 ? x / chart.x_per_s : kNowhere);
}

/// Moves the cursor and tells the other plots, where it stands for a time.
void ChartPlot::choose(double x, double time_s) {
  canvas_->setCursor(x, time_s);
  emit xChosen(x);
  emit cursorsChanged();
  if (isTimed()) emit cursorMoved(time_s);
}

double ChartPlot::cursorPlace(Cursor cursor) const {
  const CursorPlace& place = cursor == Cursor::a ? canvas_->cursor() : canvas_->secondCursor();
  return first_path(full_) != nullptr ? place.time_s * kMsPerS : place.x;
}

QString ChartPlot::cursorUnit() const {
  return first_path(full_) != nullptr ? QStringLiteral("ms") : full_.x_unit;
}

void ChartPlot::placeCursor(Cursor cursor, double at) {
  const Series* path = first_path(full_);
  double x = kNowhere, time_s = kNowhere;
  if (path != nullptr) {
    const qsizetype i = sample_at(*path, kNowhere, at / kMsPerS);
    if (i >= 0) time_s = path->time_s[i];
  } else {
    x = std::isfinite(at) ? snapped_x(full_, at) : kNowhere;
    if (full_.x_per_s > 0) time_s = x / full_.x_per_s;
  }
  if (cursor == Cursor::a) return choose(x, time_s);
  canvas_->setSecondCursor({x, time_s});
  emit secondXChosen(x);
  emit cursorsChanged();
  if (isTimed()) emit secondCursorMoved(time_s);
}

QString ChartPlot::cursorTable() const {
  return readout_table(canvas_->chart(),
                       read(canvas_->chart(), canvas_->cursor(), canvas_->secondCursor()));
}

/// Where cursor A is, or in the middle of the view.
void ChartPlot::toggleSecondCursor() {
  if (std::isfinite(cursorPlace(Cursor::b))) return placeCursor(Cursor::b, kNowhere);
  const double here = cursorPlace(Cursor::a);
  const Series* path = first_path(full_);
  const double middle = path != nullptr
                            ? path->time_s[path->time_s.size() / 2] * kMsPerS
                            : canvas_->xAxis->pixelToCoord(canvas_->axisRect()->center().x());
  placeCursor(Cursor::b, std::isfinite(here) ? here : middle);
}

void ChartPlot::zoomToCursors() {
  const double a = canvas_->cursor().x, b = canvas_->secondCursor().x;
  if (!std::isfinite(a) || !std::isfinite(b) || a == b) return;
  zoomed_ = true;
  canvas_->setView({std::min(a, b), std::max(a, b)}, canvas_->viewY());
  touched(false);
  replotSoon();
}

void ChartPlot::stepCursor(int steps) {
  if (first_path(canvas_->chart()) != nullptr) return stepAlongPath(steps);
  const QCPAxis* axis = canvas_->xAxis;
  const QRect inside = canvas_->axisRect()->rect();
  const double from = std::isfinite(canvas_->cursorX()) ? axis->coordToPixel(canvas_->cursorX())
                                                        : inside.center().x();
  const double x = snapped_x(canvas_->chart(), axis->pixelToCoord(from + steps));
  const double per_s = canvas_->chart().x_per_s;
  choose(x, per_s > 0 ? x / per_s : kNowhere);
}

void ChartPlot::stepAlongPath(int steps) {
  const Series& path = *first_path(canvas_->chart());
  const qsizetype now = sample_at(path, kNowhere, canvas_->cursor().time_s);
  const qsizetype next =
      std::clamp<qsizetype>(std::max<qsizetype>(now, 0) + steps, 0, path.time_s.size() - 1);
  choose(kNowhere, path.time_s[next]);
}

void ChartPlot::zoom(double factor, Qt::Orientations along) {
  zoomed_ = true;
  for (QCPAxis* axis : {canvas_->xAxis, canvas_->yAxis}) {
    if (!along.testFlag(axis->orientation())) continue;
    axis->scaleRange(factor, axis->pixelToCoord(axis->orientation() == Qt::Horizontal
                                                    ? canvas_->axisRect()->center().x()
                                                    : canvas_->axisRect()->center().y()));
  }
  touched(true);
  replotSoon();
}

/// By parts of what is seen; also right on a logarithmic axis.
void ChartPlot::pan(double x_part, double y_part) {
  zoomed_ = true;
  const QRect inside = canvas_->axisRect()->rect();
  const auto moved = [](const QCPAxis* axis, double from, double to) {
    const double a = axis->pixelToCoord(from), b = axis->pixelToCoord(to);
    return Range{std::min(a, b), std::max(a, b)};
  };
  const double dx = x_part * inside.width(), dy = -y_part * inside.height();
  canvas_->setView(moved(canvas_->xAxis, inside.left() + dx, inside.left() + inside.width() + dx),
                   moved(canvas_->yAxis, inside.top() + dy, inside.top() + inside.height() + dy));
  touched(true);
  replotSoon();
}

void ChartPlot::keyPressEvent(QKeyEvent* event) {
  if (pressViewKey(event) || pressOptionKey(event)) return;
  const int stride = event->modifiers() & Qt::ShiftModifier ? 20 : 2;
  switch (event->key()) {
    case Qt::Key_Left:
      return stepCursor(-stride);
    case Qt::Key_Right:
      return stepCursor(stride);
    case Qt::Key_Escape:
      return choose(kNowhere, kNowhere);
    default:
      PlotView::keyPressEvent(event);
  }
}

bool ChartPlot::pressViewKey(QKeyEvent* event) {
  const bool ctrl = event->modifiers() & Qt::ControlModifier;
  const bool alt = event->modifiers() & Qt::AltModifier;
  const Qt::Orientations along = alt ? Qt::Horizontal : Qt::Horizontal | Qt::Vertical;
  switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal:
      return zoom(kCloser, along), true;
    case Qt::Key_Minus:
      return zoom(1 / kCloser, along), true;
    case Qt::Key_Up:
      return ctrl ? pan(0, kPanByKey) : zoom(kCloser, Qt::Vertical), true;
    case Qt::Key_Down:
      return ctrl ? pan(0, -kPanByKey) : zoom(1 / kCloser, Qt::Vertical), true;
    case Qt::Key_Home:
      return host_->wholeView(), true;
    case Qt::Key_Left:
      if (!ctrl && !alt) return false;
      return alt ? host_->goBack() : pan(-kPanByKey, 0), true;
    case Qt::Key_Right:
      if (!ctrl && !alt) return false;
      return alt ? host_->goForward() : pan(kPanByKey, 0), true;
    default:
      return false;
  }
}

/// Letters of the menu's entries, and the digits of the legend's.
bool ChartPlot::pressOptionKey(QKeyEvent* event) {
  if ((event->modifiers() & ~Qt::KeypadModifier) != Qt::NoModifier) return false;
  PlotOptions options = host_->options();
  const int digit = event->key() - Qt::Key_1;
  if (digit >= 0 && digit < 9) {
    const bool known = digit < canvas_->chart().legend.size();
    if (known) host_->toggleLine(canvas_->chart().legend[digit].text);
    return known;
  }
  switch (event->key()) {
    case Qt::Key_B:
      return toggleSecondCursor(), true;
    case Qt::Key_Z:
      return zoomToCursors(), true;
    case Qt::Key_D:
      if (!whyNoDifference().isEmpty()) return false;
      return showLess(nextVariant()), true;
    case Qt::Key_F:
      options.fixed_scale = !options.fixed_scale;
      break;
    case Qt::Key_G:
      options.grid = !options.grid;
      break;
    case Qt::Key_H:
      options.held = !options.held;
      break;
    case Qt::Key_L:
      if (!full_.x_may_be_log) return false;
      options.log_time = !options.log_time;
      break;
    case Qt::Key_R:
      if (!full_.x_may_be_radps) return false;
      options.radps = !options.radps;
      break;
    default:
      return false;
  }
  host_->setOptions(options);
  return true;
}

}  // namespace gazewright
