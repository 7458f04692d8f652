#include "app/window/drive_settings_dialog.h"
#include "app/window/explainer.h"
#include "app/window/main_window.h"

/// What to set in the drives, beside the window.
namespace gazewright {

void MainWindow::showDriveSettings() {
  if (!drive_settings_) {
    drive_settings_ = new DriveSettingsDialog(this);
    drive_settings_->setTheme(theme_);
    for (const char* id : {"edit.undo", "edit.redo", "rig.save"})
      drive_settings_->addAction(actions_[id]);
    connect(drive_settings_, &DriveSettingsDialog::helpWanted, this, [this] {
      explainer_->openHandbook({QStringLiteral("settings.md"), {}});
    });
    connect(drive_settings_, &DriveSettingsDialog::fieldChosen, this,
            [this](const QString& path, bool goes) {
              typeField(path);
              if (goes) activateWindow();
            });
  }
  drive_settings_->show();
  feedDriveSettings();
  drive_settings_->raise();
  drive_settings_->activateWindow();
}

/// With each analysis that is shown; in a drag they stay as they were before it.
void MainWindow::feedDriveSettings() {
  if (drive_settings_ && drive_settings_->isVisible() && shown_ && !dragging_)
    drive_settings_->setResults(recompute_.analysedRig(), *shown_);
}

}  // namespace gazewright
