#include "app/plots/charts.h"
#include "app/window/doubts_dialog.h"
#include "app/window/drive_line.h"
#include "app/window/explainer.h"
#include "app/window/figures_window.h"
#include "app/window/findings_view.h"
#include "app/window/main_window.h"
#include "app/window/parts.h"
#include "app/window/plots_panel.h"

/// How far the figures can be trusted, and what is worth measuring.
namespace gazewright {

void MainWindow::connectDoubts() {
  connect(&doubt_work_, &DoubtWork::changed, this, &MainWindow::doubtsChanged);
  connect(plots_, &PlotsPanel::kindsChanged, this, &MainWindow::wantDoubts);
  connect(plots_, &PlotsPanel::optionsChanged, this, &MainWindow::wantDoubts);
  connect(explainer_, &Explainer::figuresShownOrHidden, this, &MainWindow::wantDoubts);
  actions_.on("show.doubts", [this] { showDoubtsDialog(); });
  wantDoubts();
}

void MainWindow::showDoubtsDialog() {
  if (!doubts_dialog_) {
    doubts_dialog_ = new DoubtsDialog(this);
    doubts_dialog_->setTheme(theme_);
    for (const char* id : {"edit.undo", "edit.redo", "rig.save"})
      doubts_dialog_->addAction(actions_[id]);
    connect(doubts_dialog_, &DoubtsDialog::shownOrHidden, this, &MainWindow::wantDoubts);
    connect(doubts_dialog_, &DoubtsDialog::figuresAsked, this,
            [this] { explainer_->showFigures(); });
    connect(doubts_dialog_, &DoubtsDialog::helpWanted, this, [this] {
      explainer_->openHandbook({QStringLiteral("doubts.md"), {}});
    });
    connect(doubts_dialog_, &DoubtsDialog::fieldChosen, this,
            [this](const QString& path, bool goes) {
              typeField(QString::fromStdString(field_path(document_.rig(), path.toStdString())));
              if (goes) activateWindow();
            });
    if (doubts()) doubts_dialog_->setDoubts(doubts(), *shown_);
  }
  doubts_dialog_->show();
  doubts_dialog_->raise();
  doubts_dialog_->activateWindow();
}

std::shared_ptr<const Doubts> MainWindow::doubts() const {
  return dragging_ ? nullptr : doubt_work_.doubts();
}

/// They cost a second of work, so only while something shows them.
void MainWindow::wantDoubts() {
  const PlotView* step = plots_->plot(PlotKind::step);
  const bool in_plot = step && !step->options().hidden.contains(doubt_band_text());
  const FiguresWindow* figures = explainer_->figures();
  doubt_work_.setWanted(in_plot || (figures && figures->isVisible()) ||
                        (doubts_dialog_ && doubts_dialog_->isVisible()) ||
                        waiting_sheet_ != nullptr);
}

/// Those that are gone leave the plots with the curves they belong to, when the next analysis
/// comes.
void MainWindow::doubtsChanged() {
  const auto known = doubt_work_.doubts();
  if (doubts_dialog_ && known) doubts_dialog_->setDoubts(known, *shown_);
  if (doubts_dialog_ && !known) doubts_dialog_->setStale();
  if (!known) return;
  for (DriveLine* line : lines_) line->setDoubts(*known, *shown_);
  findings_->setOpen(open_verdicts(*shown_, *known));
  feedPlots();
  explainer_->resultsShown();
  if (recompute_.isSettled()) writeWaitingSheet();
}

}  // namespace gazewright
