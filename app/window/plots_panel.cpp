#include "app/window/plots_panel.h"

#include <QApplication>
#include <QComboBox>
#include <QFrame>
#include <QGridLayout>
#include <QToolButton>
#include <algorithm>
#include <cmath>
#include <limits>

#include "app/plots/charts.h"
#include "app/window/log_dialog.h"
#include "app/window/plot_menu.h"
#include "app/window/title_combo.h"
#include "app/window/widgets.h"

namespace gazewright {

PlotsPanel::PlotsPanel(QWidget* parent)
    : QWidget(parent), theme_(theme_for(ThemeKind::light)), menu_(new PlotMenu(this)) {
  grid_ = new QGridLayout(this);
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setSpacing(6);
  setMinimumWidth(420);
  connect(menu_, &PlotMenu::told, this, &PlotsPanel::told);
  connect(menu_, &QMenu::aboutToShow, this, [this] { menu_->setPlot(current(), input_.rig); });
  connect(qApp, &QApplication::focusChanged, this, [this](QWidget*, QWidget* now) {
    if (!now || !isAncestorOf(now)) return;  // none is here while the frames are taken down
    for (const Cell& cell : cells_) {
      if (cell.frame->isAncestorOf(now)) current_ = cell.plot;
    }
  });
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
    options_[cell.plot->kind()] = cell.plot->options();
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
  Cell cell{cardFrame(), new TitleCombo,
            textButton(QStringLiteral("☰"), tr("Copy, save, zoom and cursors of this plot")),
            textButton(QStringLiteral("×"), tr("Close this plot")), make_plot(kind).release()};
  cell.frame->setParent(this);  // while it holds nothing that would be styled again
  for (PlotKind entry : plot_kinds()) {
    cell.choice->addItem(plot_title(entry) + QStringLiteral(" ▾"));
  }
  const auto at = std::ranges::find(plot_kinds(), kind) - plot_kinds().begin();
  cell.choice->setCurrentIndex(static_cast<int>(at));
  cell.choice->setAccessibleName(tr("Which plot: %1").arg(plot_title(kind)));
  cell.choice->setToolTip(plot_title(kind));
  setKind(cell.remove, "bare");
  setKind(cell.menu, "bare");
  cell.menu->setObjectName(QStringLiteral("plot.menu"));
  cell.menu->setAccessibleName(tr("Menu of %1").arg(plot_title(kind)));
  auto* top = new QHBoxLayout;
  top->addWidget(cell.choice);
  top->addStretch();
  if (const PlotLink link = cell.plot->link(); !link.part.isEmpty()) {
    auto* button = textButton(link.text, link.help);
    button->setObjectName(QStringLiteral("plot.link"));
    connect(button, &QToolButton::clicked, this, [this, link] { emit partChosen(link.part); });
    top->addWidget(button);
  }
  top->addWidget(cell.menu);
  top->addWidget(cell.remove);
  auto* layout = new QVBoxLayout(cell.frame);
  layout->setContentsMargins(6, 3, 4, 4);
  layout->setSpacing(0);
  layout->addLayout(top);
  layout->addWidget(cell.plot, 1);
  cell.plot->setAccessibleName(cell.plot->title());
  cell.plot->setTheme(theme_);
  cell.plot->setInput(input_);
  PlotOptions options = options_[kind];
  options.held = held_;
  cell.plot->setOptions(options);
  cell.plot->setSecondCursor(second_s_);
  connectPlot(cell.plot);
  connect(cell.menu, &QToolButton::clicked, this, [this, plot = cell.plot, button = cell.menu] {
    openMenu(plot, button->mapToGlobal(button->rect().bottomLeft()));
  });
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

void PlotsPanel::connectPlot(PlotView* plot) {
  connect(plot, &PlotView::cursorMoved, this, &PlotsPanel::cursorMoved);
  connect(plot, &PlotView::partChosen, this, &PlotsPanel::partChosen);
  connect(plot, &PlotView::secondCursorMoved, this, [this, plot](double time_s) {
    second_s_ = time_s;
    for (const Cell& cell : cells_) {
      if (cell.plot != plot) cell.plot->setSecondCursor(time_s);
    }
  });
  connect(plot, &PlotView::optionsChanged, this, [this, plot] { shareOptions(plot); });
  connect(plot, &PlotView::menuWanted, this,
          [this, plot](const QPoint& at) { openMenu(plot, at); });
}

void PlotsPanel::openMenu(PlotView* plot, const QPoint& at) {
  current_ = plot;
  menu_->popup(at);
}

/// The cursor is one for all plots: held in one, it is held in all.
void PlotsPanel::shareOptions(const PlotView* from) {
  held_ = from->options().held;
  for (const Cell& cell : cells_) {
    PlotOptions options = cell.plot->options();
    options.held = held_;
    cell.plot->setOptions(options);
  }
  emit optionsChanged();
}

PlotView* PlotsPanel::current() const {
  for (const Cell& cell : cells_) {
    if (cell.plot == current_) return cell.plot;
  }
  return cells_.empty() ? nullptr : cells_.front().plot;
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
  }
}

void PlotsPanel::setTheme(const Theme& theme) {
  theme_ = theme;
  for (const Cell& cell : cells_) cell.plot->setTheme(theme);
}

void PlotsPanel::setCursor(double time_s) {
  for (const Cell& cell : cells_) cell.plot->setCursor(time_s);
}

void PlotsPanel::compareLog(const QString& file) {
  auto* dialog = new LogDialog(step_chart(input_), theme_, this);
  dialog->show();
  dialog->openLog(file);
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
