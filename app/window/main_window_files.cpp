#include <QCloseEvent>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QMimeData>
#include <QPushButton>
#include <algorithm>
#include <utility>

#include "app/sheet/write_sheet.h"
#include "app/window/edits.h"
#include "app/window/guide_strip.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/places.h"

/// Open, save, drop and close.
namespace gazewright {
namespace {

QString rig_filter() { return MainWindow::tr("Rig files (*.rig.yaml);;All files (*)"); }

QString with_ending(QString file, const QString& ending, const QString& weak) {
  if (!file.isEmpty() && !file.endsWith(weak)) file += ending;
  return file;
}

QString sentence(const Diagnostic& diagnostic) {
  QString text = QString::fromStdString(diagnostic.problem);
  if (!diagnostic.file.empty())
    text = QString::fromStdString(diagnostic.file) + QStringLiteral(": ") + text;
  if (!diagnostic.fix.empty())
    text += QStringLiteral(" – ") + QString::fromStdString(diagnostic.fix);
  return text;
}

bool has_error(const std::vector<Diagnostic>& diagnostics) {
  return std::ranges::any_of(diagnostics, [](const Diagnostic& diagnostic) {
    return diagnostic.weight == Diagnostic::Weight::error;
  });
}

}  // namespace

void MainWindow::openFirst() {
  const QStringList samples = sample_files();
  if (samples.isEmpty() || !openSample(samples.front())) newRig();
  guide_->setVisible(!setup_.remember || settings_.wantsGuide());
  updateGuide();
}

void MainWindow::newRig() {
  sample_.reset();
  sheet_made_ = false;
  document_.startWith(blank_rig(), false);
  messages_->hide();
  select(QStringLiteral("rig"));
}

bool MainWindow::openFile(const QString& file) {
  const std::vector<Diagnostic> diagnostics = document_.open(file);
  const bool opened = !has_error(diagnostics);
  if (opened) sample_.reset(), sheet_made_ = false;
  tellOpened(file, diagnostics, opened);
  if (opened && setup_.remember) settings_.addRecentFile(file);
  return opened;
}

bool MainWindow::openSample(const QString& file) {
  const std::vector<Diagnostic> diagnostics = document_.openAsNew(file);
  const bool opened = !has_error(diagnostics);
  if (opened) sample_ = document_.rig(), sheet_made_ = false;
  tellOpened(file, diagnostics, opened);
  return opened;
}

void MainWindow::tellOpened(const QString& file, const std::vector<Diagnostic>& diagnostics,
                            bool opened) {
  const QString name = QFileInfo(file).fileName();
  if (!opened) {
    messages_->showProblems(
        tr("%1 was not opened; the rig before is still here. What to mend:").arg(name),
        diagnostics);
    return;
  }
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
  if (const auto fault = document_.save(file)) {
    messages_->showFault(tr("Not saved. %1").arg(sentence(*fault)));
    return false;
  }
  if (setup_.remember) settings_.addRecentFile(file);
  messages_->hide();
  return true;
}

bool MainWindow::save() { return document_.file().isEmpty() ? saveAs() : saveTo(document_.file()); }

bool MainWindow::saveAs() {
  const QString start = document_.file().isEmpty()
                            ? QDir(settings_.lastFolder()).filePath(document_.shownName())
                            : document_.file();
  QString file = QFileDialog::getSaveFileName(this, tr("Save the rig"), start, rig_filter());
  file = with_ending(file, QStringLiteral(".rig.yaml"), QStringLiteral(".yaml"));
  return !file.isEmpty() && saveTo(file);
}

void MainWindow::askSheet() {
  QString name = document_.shownName();
  name.replace(QStringLiteral(".rig.yaml"), QStringLiteral(".pdf"));
  const QString folder = document_.file().isEmpty() ? settings_.lastFolder()
                                                    : QFileInfo(document_.file()).absolutePath();
  const QString file = QFileDialog::getSaveFileName(this, tr("Write the design sheet"),
                                                    QDir(folder).filePath(name), tr("PDF (*.pdf)"));
  if (file.isEmpty()) return;
  writeSheet(with_ending(file, QStringLiteral(".pdf"), QStringLiteral(".pdf")));
}

void MainWindow::writeSheet(const QString& file) {
  waiting_sheet_ = file;
  if (recompute_.isSettled()) {
    writeWaitingSheet();
  } else {
    messages_->showNotice(tr("The sheet is written as soon as the figures are up to date."));
  }
}

void MainWindow::writeWaitingSheet() {
  if (waiting_sheet_.isEmpty()) return;
  const QString file = std::exchange(waiting_sheet_, QString());
  SheetOptions options;
  options.paper =
      QLocale().measurementSystem() == QLocale::ImperialUSSystem ? Paper::letter : Paper::a4;
  options.file_name = document_.shownName().toStdString();
  const auto fault = write_sheet(recompute_.analysedRig(), *recompute_.analysis(),
                                 &recompute_.sweeps(), file.toStdString(), options);
  if (fault) {
    messages_->showFault(tr("No sheet written. %1").arg(sentence(*fault)));
    return;
  }
  messages_->showNotice(tr("The design sheet is in %1").arg(QDir::toNativeSeparators(file)));
  sheet_made_ = true;
  updateGuide();
  emit sheetWritten(file);
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

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  const QList<QUrl> urls = event->mimeData()->urls();
  const QString file = urls.isEmpty() ? QString() : urls.front().toLocalFile();
  if (!file.endsWith(QStringLiteral(".yaml")) && !file.endsWith(QStringLiteral(".yml"))) {
    messages_->showFault(tr("%1 is not a rig file. Drop a file that ends in .rig.yaml.")
                             .arg(urls.isEmpty() ? tr("That") : urls.front().fileName()));
    return;
  }
  if (mayLeaveRig()) openFile(file);
}

}  // namespace gazewright
