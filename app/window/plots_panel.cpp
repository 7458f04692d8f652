#include "app/window/plots_panel.h"

#include <QComboBox>
#include <QFrame>
#include <QGridLayout>
#include <QToolButton>
#include <algorithm>
#include <cmath>
#include <limits>

#include "app/window/widgets.h"

namespace gazewright {

PlotsPanel::PlotsPanel(QWidget* parent) : QWidget(parent), theme_(theme_for(ThemeKind::light)) {
  grid_ = new QGridLayout(this);
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setSpacing(6);
  setMinimumWidth(420);
  setKinds(usualKinds());
}

std::vector<PlotKind> PlotsPanel::usualKinds() {
  return {PlotKind::step, PlotKind::time_ratio, PlotKind::torque_speed, PlotKind::inertia};
}

std::vector<PlotKind> PlotsPanel::kinds() const {
  std::vector<PlotKind> kinds;
  for (const Cell& cell : cells_) kinds.push_back(cell.plot->kind());
  return kinds;
}

void PlotsPanel::setKinds(std::vector<PlotKind> wanted) {
  for (PlotKind kind : usualKinds()) {
    if (wanted.size() < kFewest) wanted.push_back(kind);
  }
  for (const Cell& cell : cells_) {
    cell.frame->hide();
    cell.frame->deleteLater();  // one of its controls may be what caused this
  }
  cells_.clear();
  for (PlotKind kind : wanted) {
    if (!plot(kind) && cells_.size() < kMost) cells_.push_back(makeCell(kind));
  }
  lay();
  emit kindsChanged();
}

void PlotsPanel::addPlot() {
  for (PlotKind kind : plot_kinds()) {
    if (plot(kind) || cells_.size() >= kMost) continue;
    cells_.push_back(makeCell(kind));
    lay();
    emit kindsChanged();
    return;
  }
}

void PlotsPanel::removePlot() {
  if (cells_.size() <= kFewest) return;
  cells_.back().frame->hide();
  cells_.back().frame->deleteLater();
  cells_.pop_back();
  lay();
  emit kindsChanged();
}

PlotsPanel::Cell PlotsPanel::makeCell(PlotKind kind) {
  Cell cell{cardFrame(), calmCombo({}), textButton(QStringLiteral("×"), tr("Close this plot")),
            make_plot(kind).release()};
  for (PlotKind entry : plot_kinds()) {
    cell.choice->addItem(plot_title(entry) + QStringLiteral(" ▾"));
  }
  const auto at = std::ranges::find(plot_kinds(), kind) - plot_kinds().begin();
  cell.choice->setCurrentIndex(static_cast<int>(at));
  cell.choice->setAccessibleName(tr("Which plot"));
  cell.choice->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  setKind(cell.choice, "title");
  setKind(cell.remove, "bare");
  auto* top = new QHBoxLayout;
  top->addWidget(cell.choice);
  top->addStretch();
  if (const PlotLink link = cell.plot->link(); !link.part.isEmpty()) {
    auto* button = textButton(link.text, link.help);
    button->setObjectName(QStringLiteral("plot.link"));
    connect(button, &QToolButton::clicked, this, [this, link] { emit partChosen(link.part); });
    top->addWidget(button);
  }
  top->addWidget(cell.remove);
  auto* layout = new QVBoxLayout(cell.frame);
  layout->setContentsMargins(6, 3, 4, 4);
  layout->setSpacing(0);
  layout->addLayout(top);
  layout->addWidget(cell.plot, 1);
  cell.plot->setAccessibleName(cell.plot->title());
  cell.plot->setTheme(theme_);
  cell.plot->setInput(input_);
  cell.plot->setAccessibleDescription(cell.plot->summary());
  connect(cell.plot, &PlotView::cursorMoved, this, &PlotsPanel::cursorMoved);
  connect(cell.plot, &PlotView::partChosen, this, &PlotsPanel::partChosen);
  QFrame* frame = cell.frame;
  connect(cell.choice, &QComboBox::activated, this, [this, frame](int index) {
    changeKind(frame, plot_kinds()[static_cast<std::size_t>(index)]);
  });
  connect(cell.remove, &QToolButton::clicked, this, [this, frame] {
    std::vector<PlotKind> left;
    for (const Cell& other : cells_) {
      if (other.frame != frame) left.push_back(other.plot->kind());
    }
    setKinds(left);
  });
  return cell;
}

void PlotsPanel::changeKind(QFrame* frame, PlotKind kind) {
  std::vector<PlotKind> next = kinds();
  const auto here = std::ranges::find(cells_, frame, &Cell::frame) - cells_.begin();
  const auto there = std::ranges::find(next, kind);
  if (there != next.end()) *there = next[static_cast<std::size_t>(here)];  // they change places
  next[static_cast<std::size_t>(here)] = kind;
  setKinds(next);
}

void PlotsPanel::setInput(const PlotInput& input) {
  input_ = input;
  for (const Cell& cell : cells_) {
    cell.plot->setInput(input);
    cell.plot->setAccessibleDescription(cell.plot->summary());
  }
}

void PlotsPanel::setTheme(const Theme& theme) {
  theme_ = theme;
  for (const Cell& cell : cells_) cell.plot->setTheme(theme);
}

void PlotsPanel::setCursor(double time_s) {
  for (const Cell& cell : cells_) cell.plot->setCursor(time_s);
}

PlotView* PlotsPanel::plot(PlotKind kind) const {
  for (const Cell& cell : cells_) {
    if (cell.plot->kind() == kind) return cell.plot;
  }
  return nullptr;
}

/// The number of columns that brings the plots nearest to three by two.
int PlotsPanel::columns() const {
  const int count = static_cast<int>(cells_.size());
  int best = 1;
  double bestOff = std::numeric_limits<double>::infinity();
  for (int columns = 1; columns <= std::min(count, 3); ++columns) {
    const int rows = (count + columns - 1) / columns;
    const double aspect = (double(width()) / columns) / (double(std::max(1, height())) / rows);
    const double empty = double(rows * columns - count) / count;
    const double off = std::abs(std::log(aspect / 1.5)) + empty;
    if (off < bestOff) {
      bestOff = off;
      best = columns;
    }
  }
  return best;
}

void PlotsPanel::lay() {
  for (const Cell& cell : cells_) grid_->removeWidget(cell.frame);
  for (int i = 0; i < kMost; ++i) {
    grid_->setColumnStretch(i, 0);
    grid_->setRowStretch(i, 0);
  }
  columns_ = columns();
  for (int i = 0; i < static_cast<int>(cells_.size()); ++i) {
    const Cell& cell = cells_[static_cast<std::size_t>(i)];
    grid_->addWidget(cell.frame, i / columns_, i % columns_);
    grid_->setColumnStretch(i % columns_, 1);
    grid_->setRowStretch(i / columns_, 1);
    cell.remove->setEnabled(cells_.size() > kFewest);
    cell.remove->setVisible(cells_.size() > kFewest);
  }
}

void PlotsPanel::resizeEvent(QResizeEvent*) {
  if (columns() != columns_) lay();
}

}  // namespace gazewright
