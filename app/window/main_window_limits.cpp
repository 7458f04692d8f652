#include "app/window/explainer.h"
#include "app/window/main_window.h"
#include "app/window/move_limits_dialog.h"

/// What limits the moves, in a list beside the window.
namespace gazewright {

void MainWindow::showMoveLimits() {
  if (!move_limits_) {
    move_limits_ = new MoveLimitsDialog(this);
    move_limits_->setTheme(theme_);
    for (const char* id : {"edit.undo", "edit.redo", "rig.save"})
      move_limits_->addAction(actions_[id]);
    connect(move_limits_, &MoveLimitsDialog::helpWanted, this, [this] {
      explainer_->openHandbook(help_for_window(QStringLiteral("What limits the moves")));
    });
    connect(move_limits_, &MoveLimitsDialog::fieldChosen, this,
            [this](const QString& path, bool goes) {
              typeField(path);
              if (goes) activateWindow();
            });
  }
  move_limits_->show();
  fillMoveLimits();
  move_limits_->raise();
  move_limits_->activateWindow();
}

/// The gains come with the whole analysis only.
void MainWindow::fillMoveLimits() {
  if (!move_limits_ || !move_limits_->isVisible()) return;
  if (shown_ && recompute_.isFull() && !recompute_.isBehind()) {
    move_limits_->setAnalysis(*shown_);
  } else {
    move_limits_->setStale();
  }
}

}  // namespace gazewright
