#include "app/plots/bode_plot.h"

#include <QVBoxLayout>

#include "app/plots/charts.h"

namespace gazewright {
namespace {

constexpr int kGainShare_percent = 55;  // of the height
constexpr int kLeastForBoth = 240;      // pixels

std::pair<QRectF, QRectF> halves(const QRectF& rect) {
  QRectF above = rect, below = rect;
  above.setHeight(kGainShare_percent / 100.0 * rect.height());
  below.setTop(above.bottom());
  return {above, below};
}

}  // namespace

BodePlot::BodePlot(QWidget* parent)
    : PlotView(parent),
      gain_(new ChartPlot(PlotKind::bode, this, gain_chart)),
      phase_(new ChartPlot(PlotKind::bode, this, phase_chart)) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(gain_, kGainShare_percent);
  layout->addWidget(phase_, 100 - kGainShare_percent);
  for (ChartPlot* half : {gain_, phase_}) half->setMinimumSize(200, 80);
  setAccessibleName(title());
  setFocusProxy(gain_);
  zoomTogether(gain_, phase_);
  zoomTogether(phase_, gain_);
}

/// Too low for both, it shows the gain; the margins of phase stand in its readings.
void BodePlot::resizeEvent(QResizeEvent* event) {
  PlotView::resizeEvent(event);
  phase_->setVisible(height() >= kLeastForBoth);
}

void BodePlot::zoomTogether(ChartPlot* from, ChartPlot* to) {
  connect(from, &ChartPlot::xChosen, to, &ChartPlot::setCursorX);
  connect(from->canvas()->xAxis, QOverload<const QCPRange&>::of(&QCPAxis::rangeChanged), this,
          [from, to](const QCPRange& range) {
            if (from->isZoomed()) to->showX({range.lower, range.upper});
          });
}

void BodePlot::setInput(const PlotInput& input) {
  gain_->setInput(input);
  phase_->setInput(input);
  setAccessibleDescription(summary());
}

void BodePlot::setTheme(const Theme& theme) {
  gain_->setTheme(theme);
  phase_->setTheme(theme);
}

void BodePlot::wholeView() {
  gain_->wholeView();
  phase_->wholeView();
}

/// The gain's table and, after an empty line, the phase's.
QString BodePlot::csv() const { return gain_->csv() + '\n' + phase_->csv(); }

void BodePlot::paintTo(QPainter& painter, const QRectF& rect, const Theme& theme) const {
  const auto [above, below] = halves(rect);
  gain_->paintTo(painter, above, theme);
  phase_->paintTo(painter, below, theme);
}

void paint_bode(QPainter& painter, const QRectF& rect, const Chart& gain, const Chart& phase,
                const Theme& theme, const QFont& font) {
  const auto [above, below] = halves(rect);
  paint_chart(painter, above, gain, theme, font);
  paint_chart(painter, below, phase, theme, font);
}

}  // namespace gazewright
