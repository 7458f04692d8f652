#include <gtest/gtest.h>

#include <QDir>
#include <QProcess>
#include <QToolButton>
#include <random>

#include "app/window/question_bar.h"
#include "app/window/safe_work.h"
#include "tests/app/window_support.h"

/// Windows that were killed, as processes of their own. The writing itself is killed two hundred
/// times in tests/core/files/journal_test.cpp.
namespace gazewright {
namespace {

using tests::OwlWindow;

/// Starts a window on the owl of the folder, kills it after some edits, and returns the number of
/// the last edit that it said was kept.
int kill_after(const QString& folder, int edits) {
  QProcess child;
  child.setProcessChannelMode(QProcess::ForwardedErrorChannel);
  child.start(QCoreApplication::applicationFilePath(), {"--edit-until-killed", folder});
  int said = 0;
  while (said < edits && child.waitForReadyRead(tests::kPatience_ms)) {
    while (child.canReadLine()) said = child.readLine().trimmed().toInt();
  }
  child.kill();
  child.waitForFinished();
  while (child.canReadLine()) said = child.readLine().trimmed().toInt();
  return child.exitStatus() == QProcess::CrashExit ? said : -1;
}

TEST(WindowKilled, ItsEditsAreOfferedAndRestoredAsOneStepAndTheFileIsUntouched) {
  OwlWindow owl;
  std::mt19937 random(7);
  for (int round = 0; round < 3; ++round) {
    QTemporaryDir folder;
    ASSERT_TRUE(QFile::copy(owl.path("owl.rig.yaml"), folder.filePath("owl.rig.yaml")));
    const int said = kill_after(folder.path(), 1 + static_cast<int>(random() % 40));
    ASSERT_GT(said, 0);
    MainWindow window({.settings_file = folder.filePath("settings.ini"), .theme = "light"});
    ASSERT_TRUE(window.openFile(folder.filePath("owl.rig.yaml")));
    window.show();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return window.questions().text().contains("Unsaved edits of"); }));
    EXPECT_EQ(window.document().rig(), owl.rig()) << "nothing is merged unasked";
    window.questions().findChild<QToolButton*>()->click();
    const int restored =
        QString::fromStdString(window.document().rig().title).section(' ', 1).toInt();
    EXPECT_TRUE(restored == said || restored == said + 1) << restored << " of " << said;
    EXPECT_TRUE(window.isWindowModified());
    EXPECT_EQ(window.document().history().count(), 1);
    window.document().history().undo();
    EXPECT_EQ(window.document().rig(), owl.rig());
    QFile file(folder.filePath("owl.rig.yaml"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().toStdString(), tests::owl_file_text());
    EXPECT_EQ(window.questions().text(), "");
    EXPECT_TRUE(window.safeWork().wait());
    EXPECT_TRUE(QDir(folder.filePath("state/documents")).entryList({"*.journal"}).isEmpty());
  }
}

}  // namespace
}  // namespace gazewright
