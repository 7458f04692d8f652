#include <gtest/gtest.h>
#include <sys/resource.h>

#include <QDir>
#include <QStandardPaths>
#include <QToolButton>
#include <csignal>

#include "app/window/drive_line.h"
#include "app/window/message_bar.h"
#include "app/window/places.h"
#include "app/window/question_bar.h"
#include "app/window/ratio_scale.h"
#include "app/window/safe_work.h"
#include "core/files/journal.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::answer_box;
using tests::drop;
using tests::OwlWindow;

/// The owl's window, and what a safe window leaves in its state folder.
struct SafeOwl : OwlWindow {
  SafeOwl() { start(); }

  void start() { window.safeWork().start(); }
  QDir documents() const { return QDir(path("state/documents")); }
  QStringList journals() { return documents().entryList({"*.journal"}); }
  QStringList written() {
    EXPECT_TRUE(window.safeWork().wait());
    return journals();
  }
  /// What a window that was killed would have left.
  void leave(const QString& file, const std::string& text,
             const QString& name = "left.journal") const {
    ASSERT_TRUE(documents().mkpath("."));
    write(("state/documents/" + name).toUtf8(), journal_text({file.toStdString(), text}));
  }
  void set_voltage(double volts) {
    window.document().edit("voltage", with_value(rig(), "supply.voltage", volts));
  }
  double voltage() { return *rig().supply.voltage_V.si; }
  QString asked() { return window.questions().text(); }
  QString told() { return window.messages().text(); }
  /// Presses an answer of the question bar by its text.
  void answer(const QString& text) {
    for (QToolButton* button : window.questions().findChildren<QToolButton*>()) {
      if (button->text() == text && button->isVisible()) return button->click();
    }
    ADD_FAILURE() << "no answer " << text.toStdString() << " to " << asked().toStdString();
  }
  bool wait_for(const char* key) {
    return QTest::qWaitFor([&] { return window.questions().asks(key); }, 20'000);
  }
};

std::string at_volts(double volts) {
  return write_rig(
      with_value(*parse_rig(tests::owl_file_text(), "owl").rig, "supply.voltage", volts),
      tests::owl_file_text());
}

TEST(WindowSafety, AnEditIsInTheJournalUntilItIsSavedOrUndone) {
  SafeOwl owl;
  EXPECT_TRUE(owl.written().isEmpty());
  owl.set_voltage(30);
  ASSERT_EQ(owl.written().size(), 1);
  const auto journal =
      read_journal(owl.read(("state/documents/" + owl.journals().front()).toUtf8().constData()));
  ASSERT_TRUE(journal);
  EXPECT_EQ(journal->file, owl.path("owl.rig.yaml").toStdString());
  EXPECT_EQ(journal->text, at_volts(30));
  owl.window.document().history().undo();
  EXPECT_TRUE(owl.written().isEmpty());
  owl.window.document().history().redo();
  EXPECT_EQ(owl.written().size(), 1);
  ASSERT_TRUE(owl.window.saveTo(owl.path("owl.rig.yaml")));
  EXPECT_TRUE(owl.written().isEmpty());
  owl.set_voltage(31);
  ASSERT_TRUE(owl.window.saveTo(owl.path("other.rig.yaml")));
  EXPECT_TRUE(owl.written().isEmpty());
}

TEST(WindowSafety, DiscardingOnCloseDropsTheJournal) {
  SafeOwl owl;
  owl.set_voltage(30);
  EXPECT_EQ(owl.written().size(), 1);
  answer_box("Cancel");
  EXPECT_FALSE(owl.window.close());
  EXPECT_EQ(owl.written().size(), 1);
  answer_box("Discard");
  EXPECT_TRUE(owl.window.close());
  EXPECT_TRUE(owl.written().isEmpty());
}

TEST(WindowSafety, TheFramesOfADragAreNotKeptItsEndIs) {
  SafeOwl owl;
  ASSERT_TRUE(owl.settle());
  RatioScale& scale = *owl.window.driveLine(Axis::pan).ratioScale();
  const QPoint middle = scale.rect().center();
  QTest::mousePress(&scale, Qt::LeftButton, {}, middle);
  QTest::mouseMove(&scale, middle + QPoint(15, 0));
  QTest::mouseMove(&scale, middle + QPoint(30, 0));
  ASSERT_TRUE(owl.window.isWindowModified());
  EXPECT_TRUE(owl.written().isEmpty());
  QTest::mouseRelease(&scale, Qt::LeftButton, {}, middle + QPoint(30, 0));
  ASSERT_EQ(owl.written().size(), 1);
}

TEST(WindowSafety, ALeftoverOfTheOpenFileIsRestoredAsOneStep) {
  SafeOwl owl;
  owl.leave(owl.path("owl.rig.yaml"), at_volts(40));
  owl.window.safeWork().offerLeftovers();
  EXPECT_TRUE(owl.asked().contains("Unsaved edits of")) << owl.asked().toStdString();
  EXPECT_TRUE(owl.asked().contains("owl.rig.yaml"));
  EXPECT_EQ(owl.voltage(), 24);
  owl.answer("Restore");
  EXPECT_EQ(owl.voltage(), 40);
  EXPECT_TRUE(owl.window.isWindowModified());
  EXPECT_TRUE(owl.told().contains("restored, but not saved"));
  EXPECT_EQ(owl.read("owl.rig.yaml"), tests::owl_file_text());
  EXPECT_EQ(owl.written().size(), 1) << "they are this window's edits now";
  EXPECT_FALSE(owl.journals().contains("left.journal"));
  EXPECT_EQ(owl.window.document().history().undoText(), "restored edits");
  owl.window.document().history().undo();
  EXPECT_EQ(owl.voltage(), 24);
  EXPECT_FALSE(owl.window.isWindowModified());
}

TEST(WindowSafety, EditsBeforeTheAnswerLeaveTheLeftoverAlone) {
  SafeOwl owl;
  owl.set_voltage(30);
  ASSERT_EQ(owl.written().size(), 1);
  const QString name = owl.journals().front();
  owl.window.document().history().undo();
  EXPECT_TRUE(owl.written().isEmpty());
  owl.window.newRig();  // frees the file's own place
  ASSERT_TRUE(owl.written().isEmpty());
  owl.leave(owl.path("owl.rig.yaml"), at_volts(40));
  ASSERT_TRUE(owl.documents().rename("left.journal", name));
  ASSERT_TRUE(owl.window.openFile(owl.path("owl.rig.yaml")));
  owl.set_voltage(31);
  EXPECT_EQ(owl.written().size(), 2);
  owl.window.safeWork().offerLeftovers();
  owl.answer("Restore");
  EXPECT_EQ(owl.voltage(), 40);
  owl.window.document().history().undo();
  EXPECT_EQ(owl.voltage(), 31);
}

TEST(WindowSafety, DiscardDeletesALeftoverAndLaterKeepsIt) {
  SafeOwl owl;
  owl.leave(owl.path("owl.rig.yaml"), at_volts(40));
  owl.window.safeWork().offerLeftovers();
  owl.answer("Later");
  EXPECT_FALSE(owl.window.questions().isVisible());
  EXPECT_EQ(owl.journals(), QStringList("left.journal"));
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);  // lets go of it
  owl.window.safeWork().offerLeftovers();
  owl.answer("Discard");
  EXPECT_TRUE(owl.journals().isEmpty());
  EXPECT_EQ(owl.voltage(), 24);
}

TEST(WindowSafety, QuestionsStandTogetherAndEachGoesWithItsAnswer) {
  SafeOwl owl;
  owl.leave(owl.path("owl.rig.yaml"), at_volts(40));
  owl.window.safeWork().offerLeftovers();
  owl.write("owl.rig.yaml", at_volts(36));
  ASSERT_TRUE(owl.wait_for("on disk"));
  EXPECT_EQ(owl.asked().count('\n'), 1) << owl.asked().toStdString();
  owl.answer("Reload");
  EXPECT_FALSE(owl.asked().contains("changed by another program"));
  EXPECT_TRUE(owl.window.questions().isVisible());
  owl.answer("Restore");
  EXPECT_EQ(owl.voltage(), 40);
  EXPECT_FALSE(owl.window.questions().isVisible());
}

TEST(WindowSafety, ALeftoverWithoutAFileComesBackWithoutOne) {
  SafeOwl owl;
  owl.leave({}, "# from nowhere\n" + at_volts(40));
  owl.window.safeWork().offerLeftovers();
  EXPECT_TRUE(owl.asked().contains("Tide-pool owl")) << owl.asked().toStdString();
  owl.answer("Restore");
  EXPECT_EQ(owl.voltage(), 40);
  EXPECT_TRUE(owl.window.document().file().isEmpty());
  ASSERT_TRUE(owl.window.saveTo(owl.path("found.rig.yaml")));
  EXPECT_EQ(owl.read("found.rig.yaml"), "# from nowhere\n" + at_volts(40));
}

TEST(WindowSafety, ALeftoverOfAnotherFileOpensItAfterAsking) {
  SafeOwl owl;
  owl.write("heron.rig.yaml", tests::owl_file_text());
  owl.leave(owl.path("heron.rig.yaml"), at_volts(40));
  owl.set_voltage(30);
  owl.window.safeWork().offerLeftovers();
  answer_box("Cancel");
  owl.answer("Restore");
  EXPECT_EQ(owl.voltage(), 30);
  EXPECT_TRUE(owl.asked().contains("heron.rig.yaml")) << "it is offered again";
  answer_box("Discard");
  owl.answer("Restore");
  EXPECT_EQ(owl.voltage(), 40);
  EXPECT_EQ(owl.window.document().shownName(), "heron.rig.yaml");
  EXPECT_EQ(owl.read("heron.rig.yaml"), tests::owl_file_text());
}

TEST(WindowSafety, EveryLeftoverIsOfferedInARowOfItsOwnAndItsFileIsOpenNowhereElse) {
  SafeOwl owl;
  owl.write("heron.rig.yaml", tests::owl_file_text());
  ASSERT_TRUE(owl.window.openFile(owl.path("heron.rig.yaml")));
  owl.set_voltage(30);
  ASSERT_EQ(owl.written().size(), 1);
  const QString name_of_heron = owl.journals().front();
  owl.window.document().history().undo();
  ASSERT_TRUE(owl.window.openFile(owl.path("owl.rig.yaml")));
  ASSERT_TRUE(owl.written().isEmpty());
  owl.leave(owl.path("owl.rig.yaml"), at_volts(40));
  owl.leave(owl.path("heron.rig.yaml"), at_volts(44), name_of_heron);
  owl.window.safeWork().offerLeftovers();
  EXPECT_EQ(owl.asked().count("Unsaved edits of"), 2) << owl.asked().toStdString();
  ASSERT_TRUE(owl.window.openFile(owl.path("heron.rig.yaml")));
  EXPECT_FALSE(owl.asked().contains("open in another window")) << owl.asked().toStdString();
  EXPECT_EQ(owl.asked().count("Unsaved edits of"), 2);
}

TEST(WindowSafety, OpeningAFileOffersWhatWasLeftOfIt) {
  SafeOwl owl;
  owl.write("heron.rig.yaml", tests::owl_file_text());
  owl.settle();
  owl.leave(owl.path("heron.rig.yaml"), at_volts(44));
  EXPECT_EQ(owl.asked(), "");
  ASSERT_TRUE(owl.window.openFile(owl.path("heron.rig.yaml")));
  EXPECT_TRUE(owl.asked().contains("heron.rig.yaml")) << owl.asked().toStdString();
  owl.answer("Later");
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);  // lets go of it
  ASSERT_TRUE(owl.window.openFile(owl.path("owl.rig.yaml")));
  EXPECT_EQ(owl.asked(), "");
  ASSERT_TRUE(owl.window.openFile(owl.path("heron.rig.yaml")));
  owl.answer("Restore");
  EXPECT_EQ(owl.voltage(), 44);
}

TEST(WindowSafety, TheNoticeOfRestoredEditsGoesWhenNothingIsUnsaved) {
  SafeOwl owl;
  owl.leave(owl.path("owl.rig.yaml"), at_volts(40));
  owl.window.safeWork().offerLeftovers();
  owl.answer("Restore");
  ASSERT_TRUE(owl.told().contains("not saved yet"));
  ASSERT_TRUE(owl.window.saveTo(owl.path("owl.rig.yaml")));
  EXPECT_FALSE(owl.told().contains("not saved yet")) << owl.told().toStdString();
}

TEST(WindowSafety, ALeftoverOfAFileThatIsGoneComesBackWithoutAFile) {
  SafeOwl owl;
  owl.leave(owl.path("gone.rig.yaml"), at_volts(40));
  owl.window.safeWork().offerLeftovers();
  owl.answer("Restore");
  EXPECT_EQ(owl.voltage(), 40);
  EXPECT_TRUE(owl.window.document().file().isEmpty());
}

TEST(WindowSafety, ALeftoverThatWasSavedIsNotOffered) {
  SafeOwl owl;
  owl.leave(owl.path("owl.rig.yaml"), tests::owl_file_text());
  owl.window.safeWork().offerLeftovers();
  EXPECT_EQ(owl.asked(), "");
  EXPECT_TRUE(owl.journals().isEmpty());
}

TEST(WindowSafety, HalfWrittenJournalsOfYesterdayAreClearedAway) {
  SafeOwl owl;
  for (const char* name : {"state/documents/.saving-7-0", "state/documents/.saving-8-0"}) {
    owl.write(name, "# gazewright journal 1");
  }
  QFile old(owl.path("state/documents/.saving-7-0"));
  ASSERT_TRUE(old.open(QIODevice::ReadWrite));
  ASSERT_TRUE(
      old.setFileTime(QDateTime::currentDateTime().addDays(-2), QFileDevice::FileModificationTime));
  old.close();
  owl.window.safeWork().offerLeftovers();
  EXPECT_EQ(owl.documents().entryList({".saving-*"}, QDir::Files | QDir::Hidden),
            QStringList(".saving-8-0"));
}

TEST(WindowSafety, ALeftoverThatCannotBeReadIsToldAndStays) {
  SafeOwl owl;
  owl.leave(owl.path("owl.rig.yaml"), "rig: 1\nsupply: {voltage: -");
  owl.window.safeWork().offerLeftovers();
  owl.answer("Restore");
  EXPECT_TRUE(owl.told().contains("cannot be read; they stay")) << owl.told().toStdString();
  EXPECT_EQ(owl.journals(), QStringList("left.journal"));
  EXPECT_EQ(owl.voltage(), 24);
}

TEST(WindowSafety, AFileThatAnotherProgramWroteIsReloadedAsOneStep) {
  SafeOwl owl;
  owl.write("owl.rig.yaml", at_volts(36));
  ASSERT_TRUE(owl.wait_for("on disk"));
  EXPECT_TRUE(owl.asked().contains("owl.rig.yaml was changed by another program"));
  EXPECT_EQ(owl.voltage(), 24);
  owl.answer("Reload");
  EXPECT_EQ(owl.voltage(), 36);
  EXPECT_FALSE(owl.window.isWindowModified());
  owl.window.document().history().undo();
  EXPECT_EQ(owl.voltage(), 24);
  EXPECT_TRUE(owl.window.isWindowModified());
  ASSERT_TRUE(owl.window.saveTo(owl.path("owl.rig.yaml"))) << owl.asked().toStdString();
}

TEST(WindowSafety, AReplacedAndARemovedFileAreNoticedToo) {
  SafeOwl owl;
  for (int round = 0; round < 2; ++round) {  // a replacement takes the first watch away
    ASSERT_FALSE(save_text(owl.path("owl.rig.yaml").toStdString(), at_volts(40 + round)));
    ASSERT_TRUE(owl.wait_for("on disk"));
    owl.answer("Reload");
    EXPECT_EQ(owl.voltage(), 40 + round);
  }
  ASSERT_TRUE(QFile::remove(owl.path("owl.rig.yaml")));
  ASSERT_TRUE(owl.wait_for("on disk"));
  EXPECT_TRUE(owl.asked().contains("moved or removed"));
  owl.answer("Save it again");
  EXPECT_EQ(owl.read("owl.rig.yaml"), at_volts(41));
}

TEST(WindowSafety, AFileThatComesBackAsItWasIsNoQuestionAnyMore) {
  SafeOwl owl;
  owl.write("owl.rig.yaml", at_volts(36));
  ASSERT_TRUE(owl.wait_for("on disk"));
  owl.write("owl.rig.yaml", tests::owl_file_text());
  EXPECT_TRUE(QTest::qWaitFor([&] { return !owl.window.questions().asks("on disk"); }, 20'000));
}

TEST(WindowSafety, SavingNeverReplacesWhatAnotherProgramWroteUnasked) {
  SafeOwl owl;
  owl.set_voltage(30);
  owl.write("owl.rig.yaml", at_volts(36));
  EXPECT_FALSE(owl.window.saveTo(owl.path("owl.rig.yaml")));  // before the watch has told
  EXPECT_TRUE(owl.asked().contains("Not saved")) << owl.asked().toStdString();
  EXPECT_EQ(owl.read("owl.rig.yaml"), at_volts(36));
  EXPECT_EQ(owl.written().size(), 1) << "the edits are still in the journal";
  owl.answer("Keep mine");
  EXPECT_EQ(owl.read("owl.rig.yaml"), at_volts(36));
  EXPECT_TRUE(owl.window.isWindowModified());
  ASSERT_TRUE(owl.window.saveTo(owl.path("owl.rig.yaml")));
  EXPECT_EQ(owl.read("owl.rig.yaml"), at_volts(30));
}

TEST(WindowSafety, AChangedFileWithAnErrorIsNotReloaded) {
  SafeOwl owl;
  owl.write("owl.rig.yaml", "rig: 1\nsupply: {voltage: -3 V}\n");
  ASSERT_TRUE(owl.wait_for("on disk"));
  owl.answer("Reload");
  EXPECT_TRUE(owl.told().contains("Not reloaded")) << owl.told().toStdString();
  EXPECT_EQ(owl.voltage(), 24);
}

TEST(WindowSafety, AFileThatIsOpenInAnotherWindowIsToldAndCanBeCopied) {
  SafeOwl owl;
  MainWindow second({.settings_file = owl.path("settings.ini"), .theme = "light"});
  ASSERT_TRUE(second.openFile(owl.path("owl.rig.yaml")));
  second.show();
  second.safeWork().start();
  EXPECT_EQ(owl.asked(), "");
  EXPECT_TRUE(second.questions().text().contains("owl.rig.yaml is open in another window"));
  second.questions().findChild<QToolButton*>()->click();
  EXPECT_TRUE(second.document().file().isEmpty());
  EXPECT_TRUE(second.isWindowModified());
  EXPECT_EQ(second.document().rig(), owl.rig());
  EXPECT_EQ(second.questions().text(), "");
  owl.window.newRig();  // the first lets the file go
  EXPECT_TRUE(second.openFile(owl.path("owl.rig.yaml")));
  EXPECT_EQ(second.questions().text(), "");
}

TEST(WindowSafety, ADiskThatIsFullLeavesTheOldFileTheWindowAndAClearMessage) {
  SafeOwl owl;
  rlimit old_limit{};
  ASSERT_EQ(::getrlimit(RLIMIT_FSIZE, &old_limit), 0);
  rlimit small = old_limit;
  small.rlim_cur = 1000;
  const auto old_handler = std::signal(SIGXFSZ, SIG_IGN);
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &small), 0);
  owl.set_voltage(30);
  EXPECT_FALSE(owl.window.safeWork().wait());
  QCoreApplication::processEvents();
  const QString of_journal = owl.told();
  EXPECT_FALSE(owl.window.saveTo(owl.path("owl.rig.yaml")));
  const QString of_save = owl.told();
  ASSERT_EQ(::setrlimit(RLIMIT_FSIZE, &old_limit), 0);
  std::signal(SIGXFSZ, old_handler);
  EXPECT_TRUE(of_journal.contains("not kept safe")) << of_journal.toStdString();
  EXPECT_TRUE(of_save.contains("Not saved.")) << of_save.toStdString();
  EXPECT_TRUE(of_save.contains("larger than is allowed")) << of_save.toStdString();
  EXPECT_EQ(owl.read("owl.rig.yaml"), tests::owl_file_text());
  EXPECT_TRUE(owl.window.isVisible());
  EXPECT_TRUE(owl.window.isWindowModified());
  ASSERT_TRUE(owl.window.saveTo(owl.path("owl.rig.yaml")));
  EXPECT_EQ(owl.read("owl.rig.yaml"), at_volts(30));
}

TEST(WindowSafety, WhatIsRememberedIsInTheStateFolderAndSettingsAreNot) {
  SafeOwl owl;
  owl.window.setThemeName("dark");
  answer_box("Discard");
  owl.set_voltage(30);
  ASSERT_TRUE(owl.window.close());
  Settings again(owl.path("settings.ini"));
  EXPECT_EQ(again.recentFiles(), QStringList(owl.path("owl.rig.yaml")));
  EXPECT_EQ(again.exportFolder("/elsewhere"), "/elsewhere");
  again.setExportFolder(owl.folder.path());
  EXPECT_EQ(again.exportFolder("/elsewhere"), owl.folder.path());
  const QSettings kept(owl.path("settings.ini"), QSettings::IniFormat);
  EXPECT_EQ(kept.allKeys(), QStringList("theme"));
  const QSettings state(owl.path("state/window.ini"), QSettings::IniFormat);
  EXPECT_TRUE(state.contains("recent"));
  EXPECT_TRUE(state.contains("layout/window"));
}

TEST(WindowSafety, TheStateFolderFollowsTheSpecification) {
  // QStandardPaths' test mode keeps the tester's own folder out of it.
  EXPECT_TRUE(state_folder().startsWith(QDir::homePath() + "/.qttest/state"));
  QStandardPaths::setTestModeEnabled(false);
  const QByteArray before = qgetenv("XDG_STATE_HOME");
  qputenv("XDG_STATE_HOME", "/var/of/its/own");
  EXPECT_EQ(state_folder(), "/var/of/its/own/gazewright");
  for (const char* none : {"", "not/absolute"}) {
    qputenv("XDG_STATE_HOME", none);
    EXPECT_EQ(state_folder(), QDir::homePath() + "/.local/state/gazewright");
  }
  before.isNull() ? qunsetenv("XDG_STATE_HOME") : qputenv("XDG_STATE_HOME", before);
  QStandardPaths::setTestModeEnabled(true);
}

TEST(WindowSafety, ADroppedPathIsTakenAndABadOneRefusedWithAReason) {
  SafeOwl owl;
  owl.write("walk.csv", "time,pan,tilt\n0,0,0\n1,10,5\n2,-10,5\n");
  drop(owl.window, owl.path("walk.csv"));
  EXPECT_EQ(owl.rig().tracking.path.size(), 3u);
  EXPECT_EQ(owl.window.document().history().undoText(), "import a path");
  owl.write("bad.csv", "0,0,0\n1,ten,5\n");
  drop(owl.window, owl.path("bad.csv"));
  EXPECT_TRUE(owl.told().contains("No path taken")) << owl.told().toStdString();
  EXPECT_TRUE(owl.told().contains("bad.csv:2"));
  EXPECT_EQ(owl.rig().tracking.path.size(), 3u);
}

}  // namespace
}  // namespace gazewright
