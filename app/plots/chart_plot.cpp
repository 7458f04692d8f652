#include "app/plots/chart_plot.h"

#include <QApplication>
#include <QVBoxLayout>
#include <cmath>
#include <limits>

#include "app/plots/charts.h"
#include "app/plots/difference.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {
constexpr double kNowhere = std::numeric_limits<double>::quiet_NaN();
}  // namespace

ChartPlot::ChartPlot(PlotKind kind, QWidget* parent, Build build)
    : PlotView(parent), kind_(kind), build_(build), canvas_(new ChartCanvas(this)), host_(this) {
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
    const int entry = canvas_->legendAt(event->position());
    if (event->button() != Qt::LeftButton) return;
    if (entry >= 0) host_->toggleLine(canvas_->chart().legend[entry].text);
    if (entry == kMoreEntries) emit menuWanted(canvas_->mapToGlobal(event->pos()));
  });
  connect(canvas_, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) {
    if (event->buttons() == Qt::NoButton) return pointerAt(event->position());
    if (event->buttons() & Qt::LeftButton) zoomed_ = true;
  });
  connect(canvas_, &QCustomPlot::mouseDoubleClick, this, [this](QMouseEvent* event) {
    if (canvas_->legendAt(event->position()) == kNoEntry) host_->wholeView();
  });
  connect(canvas_, &QCustomPlot::mouseWheel, this, [this](QWheelEvent* event) {
    Qt::Orientations along = Qt::Horizontal | Qt::Vertical;
    if (event->modifiers() & Qt::ControlModifier) along = Qt::Horizontal;
    if (event->modifiers() & Qt::ShiftModifier) along = Qt::Vertical;
    canvas_->axisRect()->setRangeZoom(along);
    zoomed_ = true;
  });
  connect(canvas_, &ChartCanvas::viewTouched, this, [this](bool by_wheel) {
    if (zoomed_) touched(by_wheel);
  });
}

void ChartPlot::setInput(const PlotInput& input) {
  built_ = build_ != nullptr ? build_(input) : chart_of(kind_, input);
  has_variants_ = !input.variants.empty();
  const QString less_before = full_.less;
  full_ = difference_of(built_, options().less_variant);
  if (full_.less != less_before) zoomed_ = has_view_ = false;  // the variant came or went
  showChart(input.fixed_scale);
  setAccessibleDescription(summary());
}

/// A view that the user chose stays, whatever comes; so does one for as long as something is
/// dragged, unless there was nothing to see.
void ChartPlot::showChart(bool keeps_scale) {
  const auto is_empty = [](const Chart& chart) {
    return !chart.message.isEmpty() || chart.series.isEmpty();
  };
  const bool was_empty = is_empty(canvas_->chart()) && canvas_->chart().legend.isEmpty();
  Chart chart = without_hidden(full_, options().hidden);
  if (options().log_time && chart.x_may_be_log) chart = with_log_x(chart);
  if (options().radps && chart.x_may_be_radps) chart = with_radps(chart);
  canvas_->setChart(chart);
  const bool chosen = zoomed_ || options().fixed_scale;
  if (!has_view_ || !(chosen || (keeps_scale && !was_empty))) canvas_->setView(chart.x, chart.y);
  has_view_ = has_view_ || !is_empty(full_);
  replotSoon();
}

void ChartPlot::applyOptions() {
  const Chart& shown = canvas_->chart();
  const bool has_radps = shown.x_unit != full_.x_unit;
  const QString less_before = full_.less;
  full_ = difference_of(built_, options().less_variant);
  const bool x_changed = (shown.x_may_be_log && shown.x_log != options().log_time) ||
                         (shown.x_may_be_radps && has_radps != options().radps);
  const bool less_changed = full_.less != less_before;
  if (x_changed || less_changed) zoomed_ = false;
  canvas_->setGrid(options().grid);
  showChart(!x_changed && !less_changed);
  if (less_changed) setAccessibleDescription(summary());
  if (x_changed || less_changed) canvas_->setView(canvas_->chart().x, canvas_->chart().y);
}

QString ChartPlot::whyNoDifference() const {
  if (!has_variants_) return Plots::tr("No variant is in the plots. Pin the present design first.");
  if (!built_.no_difference.isEmpty()) return built_.no_difference;
  return built_.variants.isEmpty() ? Plots::tr("No variant has a curve here.") : QString();
}

QStringList ChartPlot::variants() const {
  QStringList names;
  for (const VariantLine& variant : built_.variants) names << variant.name;
  return names;
}

QString ChartPlot::nextVariant() const { return next_variant(built_, full_.less); }

void ChartPlot::showLess(const QString& variant) {
  PlotOptions options = host_->options();
  options.less_variant = variant;
  host_->setOptions(options);
}

QString ChartPlot::visibleCsv() const {
  return csv_of(part_of(canvas_->chart(), canvas_->viewX()));
}

void ChartPlot::setTheme(const Theme& theme) {
  canvas_->setStyle(theme, font());
  replotSoon();
  update();
}

void ChartPlot::touched(bool merges) {
  zoomed_ = true;
  noteView(merges);
  emit viewChosen(merges);
}

ViewHistory::One ChartPlot::view() const {
  if (!zoomed_) return {};
  return std::pair{canvas_->viewX(), canvas_->viewY()};
}

void ChartPlot::showView(const ViewHistory::One& view) {
  zoomed_ = view.has_value();
  const auto [x, y] = view.value_or(std::pair{canvas_->chart().x, canvas_->chart().y});
  canvas_->setView(x, y);
  replotSoon();
}

void ChartPlot::showX(Range x) {
  zoomed_ = true;
  if (canvas_->viewX() == x) return;
  canvas_->setView(x, canvas_->viewY());
  replotSoon();
}

void ChartPlot::wholeView() {
  showView({});
  noteView(false);
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
  const bool has_menu = QApplication::activePopupWidget() != nullptr;  // it speaks of the cursor
  if (!options().held && !has_menu) choose(kNowhere, kNowhere);
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
              std::pair{canvas_->viewX(), canvas_->viewY()}, options().grid);
}

}  // namespace gazewright
