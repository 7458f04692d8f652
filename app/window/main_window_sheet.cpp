#include <QDir>
#include <QLocale>
#include <QPrintDialog>
#include <QPrinter>
#include <utility>

#include "app/sheet/sheet.h"
#include "app/window/main_window.h"
#include "app/window/message_bar.h"
#include "app/window/variants_desk.h"

/// The design sheet: into a file or onto paper, as soon as all that stands in it is there.
namespace gazewright {
namespace {

Paper paper_of(const QString& choice) {
  const bool imperial = QLocale().measurementSystem() == QLocale::ImperialUSSystem;
  if (choice == QStringLiteral("region")) return imperial ? Paper::letter : Paper::a4;
  return choice == QStringLiteral("letter") ? Paper::letter : Paper::a4;
}

}  // namespace

void MainWindow::askSheet() {
  const QString file =
      askExport(tr("Write the design sheet"), QStringLiteral(".pdf"), tr("PDF (*.pdf)"));
  if (!file.isEmpty()) writeSheet(file);
}

void MainWindow::askPrint() {
  auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
  printer->setPageLayout(sheet_layout(paper_of(preferences_.paper)));
  QPrintDialog dialog(printer.get(), this);
  dialog.setWindowTitle(tr("Print the design sheet"));
  dialog.setOption(QAbstractPrintDialog::PrintPageRange, false);
  if (dialog.exec() == QDialog::Accepted) printSheet(printer);
}

void MainWindow::writeSheet(const QString& file) {
  makeSheet([this, file](const SheetContent& sheet) {
    const auto fault =
        write_sheet(sheet.rig, sheet.analysis, sheet.sweeps, file.toStdString(), sheet.options);
    if (fault) {
      messages_->showFault(tr("No sheet written. %1").arg(sentence_of(*fault)));
      return;
    }
    messages_->showNotice(tr("The design sheet is in %1").arg(QDir::toNativeSeparators(file)));
    sheet_made_ = true;
    updateGuide();
    emit sheetWritten(file);
  });
}

void MainWindow::printSheet(const std::shared_ptr<QPrinter>& printer) {
  makeSheet([this, printer](const SheetContent& sheet) {
    printer->setDocName(sheet_title(sheet));
    const int pages = paint_sheet(*printer, sheet);
    if (printer->printerState() == QPrinter::Error) {
      messages_->showFault(tr("The design sheet could not be printed."));
      return;
    }
    messages_->showNotice(tr("The design sheet is printed, pages: %1.").arg(pages));
    sheet_made_ = true;
    updateGuide();
  });
}

void MainWindow::makeSheet(std::function<void(const SheetContent&)> use) {
  waiting_sheet_ = std::move(use);
  if (!recompute_.isSettled() || !doubt_work_.doubts())
    messages_->showNotice(tr("The sheet is written as soon as the figures are up to date."));
  if (recompute_.isSettled()) writeWaitingSheet();
}

void MainWindow::writeWaitingSheet() {
  if (!waiting_sheet_) return;
  if (!variants_->isAnalysed()) return variants_->analyseAll();
  if (!doubt_work_.doubts()) return wantDoubts();
  const auto use = std::exchange(waiting_sheet_, nullptr);
  wantDoubts();
  SheetOptions options;
  if (!document_.rig().variants.empty()) options.comparison = variants_->comparison();
  options.doubts = *doubt_work_.doubts();
  options.paper = paper_of(preferences_.paper);
  options.file_name = document_.shownName().toStdString();
  use({recompute_.analysedRig(), *recompute_.analysis(), &recompute_.sweeps(), options});
}

}  // namespace gazewright
