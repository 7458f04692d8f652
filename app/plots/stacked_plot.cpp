#include "app/plots/stacked_plot.h"

#include <QLabel>
#include <QVBoxLayout>

#include "app/plots/charts.h"
#include "app/plots/text.h"

namespace gazewright {
namespace {

constexpr int kAboveShare_percent = 55;  // of the height
constexpr int kLeastForBoth = 16;        // lines of text

std::pair<QRectF, QRectF> halves(const QRectF& rect) {
  QRectF above = rect, below = rect;
  above.setHeight(kAboveShare_percent / 100.0 * rect.height());
  below.setTop(above.bottom());
  return {above, below};
}

}  // namespace

StackedPlot::StackedPlot(PlotKind kind, QWidget* parent, ChartPlot::Build build_above,
                         ChartPlot::Build build_below)
    : PlotView(parent),
      kind_(kind),
      above_(new ChartPlot(kind, this, build_above)),
      below_(new ChartPlot(kind, this, build_below)),
      left_out_(new QLabel(this)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(above_, kAboveShare_percent);
  layout->addWidget(below_, 100 - kAboveShare_percent);
  layout->addWidget(left_out_);
  left_out_->setAlignment(Qt::AlignCenter);
  left_out_->hide();
  for (ChartPlot* half : {above_, below_}) {
    half->setMinimumSize(200, 80);
    half->setHost(this);
    connect(half, &PlotView::menuWanted, this, &PlotView::menuWanted);
    connect(half, &PlotView::cursorsChanged, this, &PlotView::cursorsChanged);
    connect(half, &ChartPlot::viewChosen, this, &StackedPlot::noteView);
  }
  setAccessibleName(title());
  setFocusProxy(above_);
  zoomTogether(above_, below_);
  zoomTogether(below_, above_);
  setAccessibleDescription(summary());
}

/// Too low for both, it shows the upper one, whose readings speak for both, and says so.
void StackedPlot::showWhatFits() {
  const bool fits = height() >= kLeastForBoth * QFontMetrics(pixel_font(font())).height();
  below_->setVisible(fits);
  left_out_->setVisible(!fits);
}

void StackedPlot::nameLeftOut() {
  left_out_->setText(Plots::tr("Not shown, it needs more height: %1")
                         .arg(mid_sentence(below_->fullChart().y_title)));
}

void StackedPlot::resizeEvent(QResizeEvent* event) {
  PlotView::resizeEvent(event);
  showWhatFits();
}

void StackedPlot::changeEvent(QEvent* event) {
  PlotView::changeEvent(event);
  if (event->type() == QEvent::FontChange) showWhatFits();
}

void StackedPlot::zoomTogether(ChartPlot* from, ChartPlot* to) {
  connect(from, &ChartPlot::xChosen, to, &ChartPlot::setCursorX);
  connect(from, &ChartPlot::secondXChosen, to, &ChartPlot::setSecondCursorX);
  connect(from, &PlotView::cursorMoved, this, &PlotView::cursorMoved);
  connect(from, &PlotView::secondCursorMoved, this, &PlotView::secondCursorMoved);
  connect(from->canvas()->xAxis, QOverload<const QCPRange&>::of(&QCPAxis::rangeChanged), this,
          [from, to](const QCPRange& range) {
            if (from->isZoomed()) to->showX({range.lower, range.upper});
          });
}

void StackedPlot::setInput(const PlotInput& input) {
  above_->setInput(input);
  below_->setInput(input);
  nameLeftOut();
  setAccessibleDescription(summary());
}

void StackedPlot::setTheme(const Theme& theme) {
  above_->setTheme(theme);
  below_->setTheme(theme);
}

void StackedPlot::setCursor(double time_s) {
  above_->setCursor(time_s);
  below_->setCursor(time_s);
}

void StackedPlot::setSecondCursor(double time_s) {
  above_->setSecondCursor(time_s);
  below_->setSecondCursor(time_s);
}

void StackedPlot::applyOptions() {
  above_->setOptions(options());
  below_->setOptions(options());
  setAccessibleDescription(summary());
}

void StackedPlot::wholeView() {
  above_->wholeView();
  below_->wholeView();
  noteView(false);
}

/// The upper chart's table and, after an empty line, the lower one's.
QString StackedPlot::csv() const { return above_->csv() + '\n' + below_->csv(); }
QString StackedPlot::visibleCsv() const {
  return above_->visibleCsv() + '\n' + below_->visibleCsv();
}

void StackedPlot::paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const {
  const auto [above, below] = halves(rect);
  above_->paintTo(painter, above, theme);
  below_->paintTo(painter, below, theme);
}

void paint_stacked(QPainter& painter, const QRectF& rect, const Chart& above, const Chart& below,
                   const Theme& theme, const QFont& font) {
  const auto [upper, lower] = halves(rect);
  paint_chart(painter, upper, above, theme, font);
  paint_chart(painter, lower, below, theme, font);
}

}  // namespace gazewright
