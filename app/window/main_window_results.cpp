#include <QLabel>
#include <QMenuBar>
#include <algorithm>

#include "app/plots/text.h"
#include "app/window/card.h"
#include "app/window/drawing_panel.h"
#include "app/window/drive_line.h"
#include "app/window/edits.h"
#include "app/window/explainer.h"
#include "app/window/findings_view.h"
#include "app/window/main_window.h"
#include "app/window/parts.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "app/window/safe_work.h"
#include "app/window/variants_desk.h"

/// From an edit to the screen: the rig goes to Recompute, what comes back goes to every panel.
namespace gazewright {

void MainWindow::rigChanged() {
  const Rig& rig = document_.rig();
  drawing_->setRig(rig);
  drawing_->setSelected(card_->part());
  for (DriveLine* line : lines_) line->setRatio(rig);
  showMarks();
  doubt_work_.forget();
  fillMoveLimits();
  updateTitle();
  updateUndoTexts();
}

void MainWindow::behindChanged() {
  if (recompute_.isBehind()) {
    if (!dragging_) badge_->setText(tr("◌ updating"));  // in a drag it would only flicker
    dim_timer_.start();
  } else {
    badge_->clear();
    dim_timer_.stop();
    dimFigures(false);
  }
}

bool MainWindow::showsUpdating() const { return !badge_->text().isEmpty(); }

void MainWindow::dimFigures(bool dimmed) {
  if (dimmed) badge_->setText(tr("◌ updating"));
  for (DriveLine* line : lines_) line->setDimmed(dimmed);
  findings_->setDimmed(dimmed);
}

void MainWindow::showAnalysis() {
  shown_ = recompute_.analysis();
  variants_->setPresent(shown_);
  for (DriveLine* line : lines_) line->setResults(recompute_.analysedRig(), *shown_);
  driveLine(Axis::pan).setRatio(document_.rig());
  driveLine(Axis::tilt).setRatio(document_.rig());
  findings_->setFindings(shown_->findings, recompute_.isFull());
  card_->setAnalysis(*shown_);
  feedPlots();
  if (recompute_.isFull() && !recompute_.isBehind())
    doubt_work_.setPresent(recompute_.analysedRig(), shown_);
  fillMoveLimits();
  explainer_->resultsShown();
  feedDriveSettings();
  readStock();
  updateGuide();
  updateEmptyViews();
}

void MainWindow::showSweep(Axis axis) {
  driveLine(axis).setSweep(recompute_.sweep(axis));
  // They do not hang on the ratio, so a drag of one need not ask again.
  if (!dragging_)
    driveLine(axis).setRatioEnds(
        ratio_ends(recompute_.analysedRig(), axis, recompute_.sweep(axis)));
  feedPlots();
}

void MainWindow::feedPlots() {
  PlotInput input;
  input.rig = &recompute_.analysedRig();
  input.now = shown_.get();
  input.ghost = ghost_.get();
  const bool haveSweeps =
      !recompute_.isSweepBehind(Axis::pan) && !recompute_.isSweepBehind(Axis::tilt);
  input.sweeps = haveSweeps ? &recompute_.sweeps() : nullptr;
  input.reach = &recompute_.reach();
  input.reach_waits = recompute_.reachWaits();
  input.variants = variants_->curves();
  if (stock_) input.stock = *stock_;
  input.fixed_scale = dragging_;
  drawn_doubts_ = doubts();
  input.doubts = drawn_doubts_.get();
  input.doubts_come = true;
  plots_->setInput(input);
  if (recompute_.isBehind()) showMarks();  // the plots' dials are of a rig before
}

void MainWindow::setPlotCursor(double time_s) {
  plots_->setCursor(time_s);
  if (shown_) drawing_->setPose(pose_at(*shown_, time_s));
}

void MainWindow::moveRatio(Axis axis, double ratio, int dragId) {
  const std::string path = std::string(name_of(axis)) + ".gearbox.ratio";
  const QString gearbox = part_title(document_.rig(), std::string(name_of(axis)) + ".gearbox");
  document_.edit(tr("%1: ratio").arg(mid_sentence(gearbox)),
                 with_value(document_.rig(), path, ratio), dragId);
}

void MainWindow::startDrag() {
  dragging_ = true;
  ghost_ = shown_;
  recompute_.setDragging(true);
  doubt_work_.setDragging(true);
  safe_->setDragging(true);
}

void MainWindow::endDrag() {
  dragging_ = false;
  ghost_.reset();
  recompute_.setDragging(false);
  doubt_work_.setDragging(false);
  safe_->setDragging(false);
  feedPlots();
}

void MainWindow::applyRemedy(const Remedy& remedy) {
  document_.edit(tr("remedy “%1”").arg(QString::fromStdString(remedy.text)),
                 with_remedy(document_.rig(), remedy));
}

void MainWindow::select(const QString& part) {
  const std::string card = card_of(part.toStdString());
  selected_ = QString::fromStdString(card);
  card_->showPart(part.toStdString());
  for (DriveLine* line : lines_) line->setSelected(selected_);
  drawing_->setSelected(card);
  if (narrow_ && !card_in_place_) togglePlace();
}

void MainWindow::stepPart(int by) {
  std::vector<PartEntry> parts = all_parts(document_.rig());
  std::erase_if(parts, [](const PartEntry& entry) { return entry.part.empty(); });
  const auto at = std::ranges::find(parts, selected_.toStdString(), &PartEntry::part);
  const int count = static_cast<int>(parts.size());
  const int here = at == parts.end() ? 0 : static_cast<int>(at - parts.begin());
  select(QString::fromStdString(parts[static_cast<std::size_t>((here + by + count) % count)].part));
}

}  // namespace gazewright
