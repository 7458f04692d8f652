#include <gtest/gtest.h>

#include <QPlainTextEdit>
#include <algorithm>

#include "app/window/drive_line.h"
#include "app/window/findings_view.h"
#include "app/window/log_dialog.h"
#include "app/window/message_bar.h"
#include "app/window/plots_panel.h"
#include "app/window/tile.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::drop;
using tests::OwlWindow;

TEST(WindowOpen, ShowsTheFiguresOfTheRig) {
  OwlWindow owl;
  ASSERT_TRUE(owl.opened) << owl.window.messages().text().toStdString();
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(owl.rig().title, "Tide-pool owl");
  EXPECT_TRUE(owl.window.windowTitle().startsWith("Tide-pool owl"));
  const Tile* gearbox = owl.window.driveLine(Axis::pan).tile("pan.gearbox");
  ASSERT_NE(gearbox, nullptr);
  EXPECT_EQ(gearbox->tileText().figure, "18 : 1");
  // Kt = (√3/2)·60/(2π·410) = 20.17 mN·m/A; design section 3.
  const Tile* motor = owl.window.driveLine(Axis::tilt).tile("tilt.motor");
  ASSERT_FALSE(motor->tileText().lines.isEmpty());
  EXPECT_EQ(motor->tileText().lines[0], QString::fromUtf8("20.2\u202fmN·m/A"));
  EXPECT_FALSE(owl.window.findings().summary().isEmpty());
  EXPECT_FALSE(owl.window.isWindowModified());
}

TEST(WindowOpen, SaysWhileTheFiguresAreBehindTheRig) {
  OwlWindow owl;
  EXPECT_TRUE(owl.window.showsUpdating());
  ASSERT_TRUE(owl.settle());
  EXPECT_FALSE(owl.window.showsUpdating());
  owl.window.document().edit("edit", with_value(owl.rig(), "pan.gearbox.ratio", 20));
  EXPECT_TRUE(owl.window.showsUpdating());
  ASSERT_TRUE(owl.settle());
  EXPECT_FALSE(owl.window.showsUpdating());
}

TEST(WindowOpen, ListsEveryProblemOfABrokenFileAndKeepsTheRig) {
  OwlWindow owl;
  const Rig before = owl.rig();
  owl.write("broken.rig.yaml",
            "rig: 1\nsupply: {voltage: 24 kg}\npan:\n  gearbox: {ratio: heavy, backlash: 3}\n");
  EXPECT_FALSE(owl.window.openFile(owl.path("broken.rig.yaml")));
  EXPECT_EQ(owl.rig(), before);
  const QString told = owl.window.messages().text();
  EXPECT_TRUE(told.contains("broken.rig.yaml:2:")) << told.toStdString();
  EXPECT_TRUE(told.contains("broken.rig.yaml:4:")) << told.toStdString();
  EXPECT_TRUE(told.contains("fix:")) << told.toStdString();
  EXPECT_GE(told.count("error"), 3) << told.toStdString();
}

TEST(WindowOpen, TellsOfAFileThatIsNotThere) {
  OwlWindow owl;
  const Rig before = owl.rig();
  EXPECT_FALSE(owl.window.openFile(owl.path("nowhere.rig.yaml")));
  EXPECT_EQ(owl.rig(), before);
  EXPECT_TRUE(owl.window.messages().text().contains("nowhere.rig.yaml"));
}

TEST(WindowOpen, OpensARigFileThatIsDropped) {
  OwlWindow owl;
  std::string text = tests::owl_file_text();
  text.replace(text.find("Tide-pool owl"), 13, "Harbour heron");
  owl.write("heron.rig.yaml", text);
  drop(owl.window, owl.path("heron.rig.yaml"));
  EXPECT_EQ(owl.rig().title, "Harbour heron");
}

TEST(WindowOpen, RefusesToDropAnythingElseAndSaysWhy) {
  OwlWindow owl;
  drop(owl.window, owl.path("picture.png"));
  EXPECT_EQ(owl.rig().title, "Tide-pool owl");
  EXPECT_TRUE(owl.window.messages().text().contains("picture.png is nothing that"));
}

TEST(WindowOpen, ADroppedLogLiesOverTheStep) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.write("move.csv", "t / s,angle / deg\n0,0\n0.1,20\n0.2,40\n");
  drop(owl.window, owl.path("move.csv"));
  const auto* dialog = owl.window.findChild<LogDialog*>();
  ASSERT_NE(dialog, nullptr);
  EXPECT_TRUE(QTest::qWaitFor([&] { return dialog->words().contains("points compared"); },
                              tests::kPatience_ms))
      << dialog->words().toStdString();
  EXPECT_TRUE(owl.rig().tracking.path.empty());
}

TEST(WindowOpen, ATableWithMoreColumnsIsALogWhereItLandsOnThePlots) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.write("move.csv", "0,0,1.5\n0.1,20,2.5\n0.2,40,0.5\n");
  drop(owl.window, owl.path("move.csv"),
       owl.window.plots().mapTo(&owl.window, owl.window.plots().rect().center()));
  EXPECT_NE(owl.window.findChild<LogDialog*>(), nullptr);
  EXPECT_TRUE(owl.rig().tracking.path.empty());
}

TEST(WindowOpen, ANewRigSaysWhatIsMissingInsteadOfShowingZeros) {
  OwlWindow owl;
  owl.window.newRig();
  ASSERT_TRUE(owl.settle());
  const Tile* gearbox = owl.window.driveLine(Axis::pan).tile("pan.gearbox");
  EXPECT_EQ(gearbox->tileText().figure, "ratio missing");
  EXPECT_EQ(gearbox->tileText().lines.join(' '), "stall unknown top unknown");
  EXPECT_TRUE(owl.window.findings().summary().contains("unknown"));
}

TEST(WindowOpen, ABrokenFileAtTheStartDoesNotSpeakOfARigBefore) {
  OwlWindow owl;
  QString text = QString::fromStdString(tests::owl_file_text());
  text.replace(" mm", " mmm");
  owl.write("broken.rig.yaml", text.toStdString());
  owl.window.openOrStartBlank(owl.path("broken.rig.yaml"));
  const QString told = owl.window.messages().text();
  EXPECT_TRUE(told.startsWith("✕ broken.rig.yaml was not opened; this is a new rig"))
      << told.toStdString();
  EXPECT_EQ(owl.rig(), blank_rig());
  auto* list = owl.window.messages().findChild<QPlainTextEdit*>("problems");
  ASSERT_NE(list, nullptr);
  const int lines = list->blockCount(), spacing = list->fontMetrics().lineSpacing();
  EXPECT_GE(lines, 32) << "sixteen problems, each with its mend";
  EXPECT_GE(list->height(), std::min(lines * spacing, 400)) << "half of the window is theirs";
}

}  // namespace
}  // namespace gazewright
