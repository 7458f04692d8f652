#include "app/plots/plot_view.h"

#include <QContextMenuEvent>

#include "app/plots/chart_plot.h"
#include "app/plots/text.h"
#include "app/plots/view_history.h"

/// What all plots share: options, the history of views, and the way to their menu.
namespace gazewright {
namespace {

constexpr qint64 kSameGesture_ms = 700;  // turning the wheel on within it is one step

void show_views(const std::vector<ChartPlot*>& charts, const ViewHistory::View& view) {
  for (std::size_t i = 0; i < charts.size(); ++i) {
    charts[i]->showView(i < view.size() ? view[i] : std::nullopt);
  }
}

}  // namespace

PlotView::PlotView(QWidget* parent) : QWidget(parent), history_(std::make_unique<ViewHistory>()) {
  setLayoutDirection(Qt::LeftToRight);  // axes run to the right in every language
}
PlotView::~PlotView() = default;

void PlotView::setOptions(const PlotOptions& options) {
  if (options_ == options) return;
  if (options_.log_time != options.log_time || options_.radps != options.radps ||
      options_.less_variant != options.less_variant)
    *history_ = {};  // its views are of other axes
  options_ = options;
  applyOptions();
  emit optionsChanged();
}

QString PlotView::shownLess() const {
  return charts().empty() ? QString() : charts().front()->fullChart().less;
}

QString PlotView::whyNoDifference() const {
  return charts().empty() ? Plots::tr("There are no curves over one x here.")
                          : charts().front()->whyNoDifference();
}

void PlotView::toggleLine(const QString& legend_text) {
  PlotOptions options = options_;
  if (options.hidden.removeAll(legend_text) == 0) options.hidden << legend_text;
  setOptions(options);
}

QString PlotView::readout() const {
  QStringList tables;
  for (const ChartPlot* chart : charts()) tables << chart->cursorTable();
  return tables.isEmpty() ? summary() : tables.join('\n');
}

bool PlotView::canGoBack() const { return history_->canGoBack(); }
bool PlotView::canGoForward() const { return history_->canGoForward(); }

void PlotView::goBack() {
  if (canGoBack()) show_views(charts(), history_->goBack());
}

void PlotView::goForward() {
  if (canGoForward()) show_views(charts(), history_->goForward());
}

void PlotView::noteView(bool merges) {
  ViewHistory::View view;
  view.reserve(2);
  for (const ChartPlot* chart : charts()) view.push_back(chart->view());
  const bool soon = since_note_.isValid() && since_note_.elapsed() < kSameGesture_ms;
  history_->add(view, merges && soon);
  since_note_.start();
}

void PlotView::contextMenuEvent(QContextMenuEvent* event) {
  const bool by_keys = event->reason() == QContextMenuEvent::Keyboard;
  emit menuWanted(by_keys ? mapToGlobal(rect().center()) : event->globalPos());
  event->accept();
}

}  // namespace gazewright
