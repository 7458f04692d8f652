#include <QCloseEvent>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>
#include <algorithm>

#include "app/window/ask_where.h"
#include "app/window/desktop_recent.h"
#include "app/window/edits.h"
#include "app/window/guide_strip.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/places.h"
#include "app/window/safe_work.h"

/// Open, save and close.
namespace gazewright {
namespace {

QString rig_filter() { return MainWindow::tr("Rig files (*.rig.yaml);;All files (*)"); }

bool has_error(const std::vector<Diagnostic>& diagnostics) {
  return std::ranges::any_of(diagnostics, [](const Diagnostic& diagnostic) {
    return diagnostic.weight == Diagnostic::Weight::error;
  });
}

}  // namespace

void MainWindow::openFirst() {
  const QStringList samples = sample_files();
  const QString last = settings_.recentFiles().value(0);
  if (preferences_.start == QStringLiteral("last") && QFileInfo::exists(last)) {
    openOrStartBlank(last);
  } else if (preferences_.start == QStringLiteral("new") || samples.isEmpty() ||
             !openSample(samples.front())) {
    newRig();
  }
  guide_->setVisible(!setup_.remember || settings_.wantsGuide());
  updateGuide();
}

void MainWindow::openOrStartBlank(const QString& file) {
  if (openFile(file, tr("%1 was not opened; this is a new rig, still empty. What to mend:")))
    return;
  document_.startWith(blank_rig(), false);  // under the list of what to mend
  select(QStringLiteral("rig"));
}

void MainWindow::newRig() {
  sample_.reset();
  sheet_made_ = false;
  document_.startWith(blank_rig(), false);
  messages_->hide();
  select(QStringLiteral("rig"));
}

bool MainWindow::openFile(const QString& file) {
  return openFile(file, tr("%1 was not opened; the rig before is still here. What to mend:"));
}

bool MainWindow::openFile(const QString& file, const QString& otherwise) {
  const std::vector<Diagnostic> diagnostics = document_.open(file);
  const bool opened = !has_error(diagnostics);
  if (opened) sample_.reset(), sheet_made_ = false;
  tellOpened(file, diagnostics, opened ? QString() : otherwise);
  if (opened) rememberFile(file);
  return opened;
}

bool MainWindow::openSample(const QString& file) {
  const std::vector<Diagnostic> diagnostics = document_.openAsNew(file);
  const bool opened = !has_error(diagnostics);
  if (opened) sample_ = document_.rig(), sheet_made_ = false;
  tellOpened(file, diagnostics, opened ? QString() : tr("%1 was not opened. What to mend:"));
  return opened;
}

void MainWindow::rememberFile(const QString& file) {
  if (!setup_.remember) return;
  settings_.addRecentFile(file);
  if (setup_.settings_file.isEmpty()) tell_desktop_of(QFileInfo(file).absoluteFilePath());
}

/// `fault` with the file's name, where it was not opened.
void MainWindow::tellOpened(const QString& file, const std::vector<Diagnostic>& diagnostics,
                            const QString& fault) {
  const QString name = QFileInfo(file).fileName();
  if (!fault.isEmpty()) return messages_->showProblems(fault.arg(name), diagnostics);
  messages_->hide();
  if (!diagnostics.empty()) {
    messages_->showProblems(tr("%1 is open. Worth a look:").arg(name), diagnostics);
  }
  if (selected_.isEmpty()) select(QStringLiteral("pan.gearbox"));
}

void MainWindow::askOpen() {
  if (!mayLeaveRig()) return;
  const QString file =
      QFileDialog::getOpenFileName(this, tr("Open a rig"), settings_.lastFolder(), rig_filter());
  if (!file.isEmpty()) openFile(file);
}

bool MainWindow::saveTo(const QString& file) {
  if (!safe_->maySave(file)) return false;
  if (const auto fault = document_.save(file)) {
    messages_->showFault(tr("Not saved. %1").arg(sentence_of(*fault)));
    return false;
  }
  rememberFile(file);
  messages_->hide();
  return true;
}

bool MainWindow::save() { return document_.file().isEmpty() ? saveAs() : saveTo(document_.file()); }

bool MainWindow::saveAs() {
  const QString start = document_.file().isEmpty()
                            ? QDir(settings_.lastFolder()).filePath(document_.shownName())
                            : document_.file();
  const QString file =
      ask_where(this, tr("Save the rig"), start, rig_filter(), QStringLiteral("rig.yaml"));
  return !file.isEmpty() && saveTo(file);
}

/// Begins in the folder of the last export, with the rig's name and `end`.
QString MainWindow::askExport(const QString& title, const QString& end, const QString& filter) {
  const QString rigs = document_.file().isEmpty() ? settings_.lastFolder()
                                                  : QFileInfo(document_.file()).absolutePath();
  const QString name = export_name(document_.shownName(), end);
  const QString file = ask_where(this, title, QDir(settings_.exportFolder(rigs)).filePath(name),
                                 filter, QFileInfo(end).suffix());
  if (!file.isEmpty() && setup_.remember) settings_.setExportFolder(QFileInfo(file).absolutePath());
  return file;
}

bool MainWindow::mayLeaveRig() {
  if (!document_.isModified()) return true;
  QMessageBox box(QMessageBox::Warning, tr("Unsaved changes"),
                  tr("Save the changes to “%1”?").arg(document_.shownName()), QMessageBox::NoButton,
                  this);
  box.setInformativeText(tr("Discarding loses every change since it was last saved."));
  QPushButton* keep = box.addButton(tr("Save"), QMessageBox::AcceptRole);
  QPushButton* discard = box.addButton(tr("Discard"), QMessageBox::DestructiveRole);
  box.addButton(tr("Cancel"), QMessageBox::RejectRole);
  box.setDefaultButton(keep);
  box.exec();
  if (box.clickedButton() == keep) return save();
  return box.clickedButton() == discard;
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (QWidget* focus = focusWidget()) focus->clearFocus();  // commits what is being typed
  if (!mayLeaveRig()) {
    event->ignore();
    return;
  }
  safe_->close();
  storeLayout();
  event->accept();
}

void MainWindow::updateTitle() {
  const QString title = QString::fromStdString(document_.rig().title);
  const QString name =
      document_.file().isEmpty() ? tr("not saved yet") : QFileInfo(document_.file()).fileName();
  setWindowTitle((title.isEmpty() ? QString() : title + QStringLiteral(" – ")) + name +
                 QStringLiteral("[*] – Gazewright"));
  setWindowModified(document_.isModified());
}

}  // namespace gazewright
