#include <gtest/gtest.h>

#include <QFileInfo>
#include <QPrintDialog>
#include <QPrinter>
#include <QProcess>
#include <QSignalSpy>
#include <memory>

#include "app/window/message_bar.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::answer_box;
using tests::OwlWindow;

TEST(WindowFiles, SavedAndReopenedIsTheSameRig) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.backlash", "8 arcmin");
  owl.type("pan.gearbox.ratio", "14.5");
  const Rig edited = owl.rig();
  EXPECT_TRUE(owl.window.isWindowModified());
  ASSERT_TRUE(owl.window.saveTo(owl.path("copy.rig.yaml")))
      << owl.window.messages().text().toStdString();
  EXPECT_FALSE(owl.window.isWindowModified());
  EXPECT_EQ(owl.window.document().shownName(), "copy.rig.yaml");
  OwlWindow other;
  ASSERT_TRUE(other.window.openFile(owl.path("copy.rig.yaml")));
  EXPECT_EQ(other.rig(), edited);
}

TEST(WindowFiles, AFileThatIsSavedUnchangedStaysAsItWasWritten) {
  OwlWindow owl;
  ASSERT_TRUE(owl.window.saveTo(owl.path("owl.rig.yaml")));
  EXPECT_EQ(owl.read("owl.rig.yaml"), tests::owl_file_text());
}

TEST(WindowFiles, UndoAfterSavingMarksTheWindowAndRedoClearsIt) {
  OwlWindow owl;
  owl.window.document().edit("edit", with_value(owl.rig(), "supply.voltage", 36));
  ASSERT_TRUE(owl.window.saveTo(owl.path("owl.rig.yaml")));
  owl.window.document().history().undo();
  EXPECT_TRUE(owl.window.isWindowModified());
  owl.window.document().history().redo();
  EXPECT_FALSE(owl.window.isWindowModified());
}

TEST(WindowFiles, SavingToAnImpossiblePlaceLeavesFileAndWindow) {
  OwlWindow owl;
  owl.window.document().edit("edit", with_value(owl.rig(), "supply.voltage", 36));
  const Rig edited = owl.rig();
  for (const char* place : {"missing/folder/owl.rig.yaml", "owl.rig.yaml/inside.rig.yaml"}) {
    EXPECT_FALSE(owl.window.saveTo(owl.path(place))) << place;
    EXPECT_TRUE(owl.window.messages().text().contains("Not saved"));
    EXPECT_EQ(owl.rig(), edited);
    EXPECT_TRUE(owl.window.isWindowModified());
    EXPECT_TRUE(owl.window.isVisible());
    EXPECT_EQ(owl.window.document().shownName(), "owl.rig.yaml");
  }
  EXPECT_FALSE(owl.window.saveTo("/proc/owl.rig.yaml"));
  EXPECT_EQ(owl.read("owl.rig.yaml"), tests::owl_file_text());
}

TEST(WindowFiles, ClosingWithUnsavedEditsAsksAndCancelCancels) {
  OwlWindow owl;
  owl.window.document().edit("edit", with_value(owl.rig(), "supply.voltage", 36));
  answer_box("Cancel");
  EXPECT_FALSE(owl.window.close());
  EXPECT_TRUE(owl.window.isVisible());
  answer_box("Save");
  EXPECT_TRUE(owl.window.close());
  OwlWindow other;
  ASSERT_TRUE(other.window.openFile(owl.path("owl.rig.yaml")));
  EXPECT_DOUBLE_EQ(*other.rig().supply.voltage_V.si, 36);
}

TEST(WindowFiles, DiscardClosesAndKeepsTheOldFile) {
  OwlWindow owl;
  owl.window.document().edit("edit", with_value(owl.rig(), "supply.voltage", 36));
  answer_box("Discard");
  EXPECT_TRUE(owl.window.close());
  EXPECT_EQ(owl.read("owl.rig.yaml"), tests::owl_file_text());
}

TEST(WindowFiles, AFailedSaveOnClosingKeepsTheWindow) {
  OwlWindow owl;
  QFile::remove(owl.path("owl.rig.yaml"));
  ASSERT_TRUE(QDir().mkdir(owl.path("owl.rig.yaml")));  // a folder where the file was
  owl.window.document().edit("edit", with_value(owl.rig(), "supply.voltage", 36));
  answer_box("Save");
  EXPECT_FALSE(owl.window.close());
  EXPECT_TRUE(owl.window.isVisible());
  EXPECT_TRUE(owl.window.messages().text().contains("Not saved"));
}

TEST(WindowFiles, TheSheetIsWrittenOnceTheFiguresAreIn) {
  OwlWindow owl;
  QSignalSpy written(&owl.window, &MainWindow::sheetWritten);
  owl.window.writeSheet(owl.path("owl.pdf"));
  ASSERT_TRUE(owl.sweep());
  ASSERT_TRUE(QTest::qWaitFor([&] { return written.count() == 1; }, tests::kPatience_ms))
      << owl.window.messages().text().toStdString();
  EXPECT_TRUE(owl.read("owl.pdf").starts_with("%PDF"));
}

TEST(WindowFiles, ASheetThatCannotBeWrittenIsTold) {
  OwlWindow owl;
  ASSERT_TRUE(owl.sweep());
  owl.window.writeSheet(owl.path("missing/owl.pdf"));
  EXPECT_TRUE(
      QTest::qWaitFor([&] { return owl.window.messages().text().contains("No sheet written"); },
                      tests::kPatience_ms));
  EXPECT_FALSE(QFileInfo::exists(owl.path("missing/owl.pdf")));
}

TEST(WindowFiles, TheSheetIsPrintedAsSoonAsTheFiguresAreThere) {
  OwlWindow owl;
  const auto printer = std::make_shared<QPrinter>();
  printer->setOutputFormat(QPrinter::PdfFormat);
  printer->setOutputFileName(owl.path("printed.pdf"));
  owl.window.printSheet(printer);
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return owl.window.messages().text().contains("is printed, pages: "); },
                      tests::kPatience_ms))
      << owl.window.messages().text().toStdString();
  QProcess reader;
  reader.start("pdftotext", {"-layout", owl.path("printed.pdf"), "-"});
  ASSERT_TRUE(reader.waitForFinished()) << "this test needs the package poppler-utils";
  const QString text = QString::fromUtf8(reader.readAllStandardOutput());
  EXPECT_TRUE(text.contains("Tide-pool owl"));
  EXPECT_TRUE(text.contains("owl.rig.yaml"));
  EXPECT_GT(text.count('\f'), 5);
}

TEST(WindowFiles, PrintAsksForThePrinterAndCancelPrintsNothing) {
  OwlWindow owl;
  ASSERT_EQ(owl.window.actions()["rig.print"]->shortcut(), QKeySequence("Ctrl+P"));
  bool asked = false;
  QTimer::singleShot(0, [&] {
    auto* dialog = qobject_cast<QPrintDialog*>(QApplication::activeModalWidget());
    asked = dialog != nullptr;
    if (dialog) dialog->reject();
  });
  owl.window.actions()["rig.print"]->trigger();
  EXPECT_TRUE(asked);
  EXPECT_FALSE(owl.window.messages().text().contains("sheet"));
}

}  // namespace
}  // namespace gazewright
