#include <gtest/gtest.h>

#include <QAccessible>
#include <QCheckBox>
#include <QDir>
#include <QDropEvent>
#include <QLabel>
#include <QMenu>
#include <QMimeData>
#include <QSignalSpy>
#include <QTableWidget>
#include <QToolButton>
#include <algorithm>
#include <numbers>

#include "app/plots/chart_plot.h"
#include "app/window/drive_line.h"
#include "app/window/fit_dialog.h"
#include "app/window/message_bar.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "app/window/shelf_list.h"
#include "app/window/shelf_note.h"
#include "app/window/shelf_panel.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::kPatience_ms;
using tests::OwlWindow;

/// The window with a data folder of its own.
struct ShelfWindow : OwlWindow {
  ShelfWindow() { qputenv("XDG_DATA_HOME", folder.filePath("data").toUtf8()); }
  ~ShelfWindow() { qunsetenv("XDG_DATA_HOME"); }
  ShelfWindow(const ShelfWindow&) = delete;
  ShelfWindow& operator=(const ShelfWindow&) = delete;

  bool ready() {
    return QTest::qWaitFor([this] { return !panel().isBusy() && panel().shelf(); }, kPatience_ms);
  }
  ShelfPanel& panel() { return window.shelf(); }
  /// Opens the shelf and goes to the part of this name.
  bool go(const char* name) {
    window.actions()["show.shelf"]->trigger();
    if (!ready()) return false;
    const auto& entries = panel().shelf()->entries;
    for (std::size_t i = 0; i < entries.size(); ++i)
      if (entries[i].part.name == name) {
        panel().list().choose(i);
        return panel().list().current() == i;
      }
    return false;
  }
  QToolButton* button(const char* name) {
    return panel().findChild<QToolButton*>(QString::fromLatin1(name));
  }
  QStringList files() const {
    return QDir(folder.filePath("data/gazewright/shelf")).entryList(QDir::Files);
  }
};

constexpr const char* kMotor = "generic 42 mm outrunner, 100 rpm/V";

TEST(WindowShelf, IsFilledOnFirstUseAndNotBefore) {
  ShelfWindow owl;
  EXPECT_TRUE(owl.files().isEmpty());
  owl.window.actions()["show.shelf"]->trigger();
  ASSERT_TRUE(owl.ready());
  EXPECT_EQ(owl.files().size(), static_cast<qsizetype>(shelf_texts().size()));
  EXPECT_FALSE(owl.panel().isModal());
  EXPECT_EQ(owl.panel().list().topLevelItemCount(), 7);
}

TEST(WindowShelf, ItsRatiosAreTheTicksOfTheScalesAndOfThePlot) {
  ShelfWindow owl;
  const auto ticks = [&] { return owl.window.driveLine(Axis::pan).ratioScale()->stock(); };
  const std::vector<double> built_in = gearbox_ratios(built_in_shelf());
  ASSERT_FALSE(built_in.empty());
  ASSERT_TRUE(owl.settle());
  ASSERT_TRUE(QTest::qWaitFor([&] { return ticks() == built_in; }, kPatience_ms));
  EXPECT_TRUE(owl.files().isEmpty()) << "it is only read";
  Gearbox gearbox;
  gearbox.ratio = si_quantity(13.7);
  ShelfPart odd;
  odd.fields = gearbox;
  odd.rename("odd one");
  owl.panel().add(odd);
  const auto has_it = [&] { return std::ranges::count(ticks(), 13.7) == 1; };
  ASSERT_TRUE(QTest::qWaitFor(has_it, kPatience_ms));
  const auto* plot = owl.window.plots().plot(PlotKind::time_ratio);
  ASSERT_NE(plot, nullptr);
  EXPECT_TRUE(plot->charts().front()->fullChart().ticks.contains(13.7));
}

TEST(WindowShelf, AButtonPutsAPartOnAnAxisAndUndoTakesItBack) {
  ShelfWindow owl;
  ASSERT_TRUE(owl.go(kMotor));
  const Rig before = owl.rig();
  owl.button("shelf tilt")->click();
  EXPECT_EQ(owl.rig().tilt.motor.name, kMotor);
  EXPECT_EQ(owl.rig().pan, before.pan);
  EXPECT_EQ(owl.window.selected(), "tilt.motor");
  EXPECT_EQ(owl.window.document().history().undoText(), QString("tilt motor: ") + kMotor);
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
}

TEST(WindowShelf, EnterPutsItOnTheAxisOfTheCard) {
  ShelfWindow owl;
  owl.window.select("tilt.gearbox");
  ASSERT_TRUE(owl.go(kMotor));
  ShelfList& list = owl.panel().list();
  QTest::keyClick(&list, Qt::Key_Return);
  EXPECT_EQ(owl.rig().tilt.motor.name, kMotor);
  owl.window.select("pan.gearbox");  // while the shelf is open
  ASSERT_NE(owl.rig().pan.motor.name, kMotor);
  QTest::keyClick(&list, Qt::Key_Return);
  EXPECT_EQ(owl.rig().pan.motor.name, kMotor);
}

/// The name is the user's; what is no longer so of the shelf's part of that name is said under it.
TEST(WindowShelf, TheCardSaysWhereANamedPartIsNotTheShelfsAnyMore) {
  ShelfWindow owl;
  ASSERT_TRUE(owl.go(kMotor));
  owl.button("shelf tilt")->click();
  const auto note = [&] { return owl.window.card().findChild<ShelfNote*>(); };
  ASSERT_NE(note(), nullptr);
  EXPECT_TRUE(note()->isHidden()) << note()->text().toStdString();
  owl.type("tilt.motor.speed_constant", "120 KV");
  EXPECT_NEAR(owl.rig().tilt.motor.speed_constant_radpsV.value(), 4 * std::numbers::pi, 1e-12);
  EXPECT_EQ(owl.rig().tilt.motor.name, kMotor);
  EXPECT_FALSE(note()->isHidden());
  EXPECT_EQ(note()->text(),
            QString("Changed: not as “%1” on the shelf in speed constant (KV).").arg(kMotor));
  owl.type("tilt.motor.speed_constant", "100 KV");
  EXPECT_TRUE(note()->isHidden()) << note()->text().toStdString();
  owl.window.document().edit("another name", with_text(owl.rig(), "tilt.motor.name", "bench find"));
  owl.type("tilt.motor.speed_constant", "120 KV");
  EXPECT_TRUE(note()->isHidden()) << "the shelf has none of that name";
}

TEST(WindowShelf, ADroppedPartGetsOnTheShelf) {
  ShelfWindow owl;
  owl.write("mine.yaml",
            "shelf: 1\nname: cellar find\nmotor: {speed_constant: {value: 310 rpm/V, source: "
            "measured}}\n");
  tests::drop(owl.window, owl.path("mine.yaml"));
  ASSERT_TRUE(owl.ready());
  const auto& entries = owl.panel().shelf()->entries;
  EXPECT_TRUE(std::ranges::any_of(
      entries, [](const ShelfEntry& entry) { return entry.part.name == "cellar find"; }));
  EXPECT_EQ(owl.rig().title, "Tide-pool owl");
  owl.write("bad.yaml", "shelf: 1\nmotor: {speed_constant: 310 rpm}\n");
  tests::drop(owl.window, owl.path("bad.yaml"));
  EXPECT_TRUE(owl.window.messages().text().contains("bad.yaml"))
      << owl.window.messages().text().toStdString();
}

TEST(WindowShelf, ADropOnADriveLinePutsItThere) {
  ShelfWindow owl;
  ASSERT_TRUE(owl.go(kMotor));
  QMimeData data;
  data.setData(kPartMime, QByteArray::number(qulonglong(*owl.panel().list().current())));
  DriveLine& line = owl.window.driveLine(Axis::pan);
  QDragEnterEvent enter({20, 20}, Qt::CopyAction, &data, Qt::LeftButton, {});
  QCoreApplication::sendEvent(&line, &enter);
  EXPECT_TRUE(enter.isAccepted());
  QDropEvent drop({20, 20}, Qt::CopyAction, &data, Qt::LeftButton, {});
  QCoreApplication::sendEvent(&line, &drop);
  EXPECT_EQ(owl.rig().pan.motor.name, kMotor);
  QMimeData file;
  file.setUrls({QUrl::fromLocalFile("/x.rig.yaml")});
  QDragEnterEvent other({20, 20}, Qt::CopyAction, &file, Qt::LeftButton, {});
  QCoreApplication::sendEvent(&line, &other);
  EXPECT_TRUE(other.isAccepted());  // by the window behind it, which opens files
}

TEST(WindowShelf, WhatIsDraggedIsThePart) {
  ShelfWindow owl;
  ASSERT_TRUE(owl.go(kMotor));
  ShelfList& list = owl.panel().list();
  EXPECT_TRUE(list.currentItem()->flags() & Qt::ItemIsDragEnabled);
  const std::unique_ptr<QMimeData> data(list.model()->mimeData({list.model()->index(0, 0)}));
  ASSERT_NE(list.currentItem(), nullptr);
  const std::unique_ptr<QMimeData> alone(list.model()->mimeData({list.currentIndex()}));
  ASSERT_NE(alone, nullptr);
  EXPECT_EQ(alone->data(kPartMime).toULongLong(), *list.current());
  EXPECT_EQ(data, nullptr);  // a heading is no part
}

TEST(WindowShelf, SavesThePartOfTheCardRemovesItAndBringsItBack) {
  ShelfWindow owl;
  owl.window.select("pan.gearbox");
  owl.window.actions()["edit.to_shelf"]->trigger();
  ASSERT_TRUE(owl.ready());
  EXPECT_EQ(owl.panel().note(), "“two-stage” is on the shelf now.");
  EXPECT_TRUE(owl.files().contains("gearbox-two-stage.yaml"));
  ASSERT_TRUE(owl.panel().list().current());
  QTest::keyClick(&owl.panel().list(), Qt::Key_Delete);
  ASSERT_TRUE(owl.ready());
  EXPECT_FALSE(owl.files().contains("gearbox-two-stage.yaml"));
  EXPECT_EQ(owl.panel().note(), "“two-stage” is off the shelf.");
  owl.button("shelf undo")->click();
  ASSERT_TRUE(owl.ready());
  EXPECT_TRUE(owl.files().contains("gearbox-two-stage.yaml"));
}

TEST(WindowShelf, AnythingElseIsNotSavedAndSaysWhy) {
  ShelfWindow owl;
  owl.window.select("task");
  owl.window.actions()["edit.to_shelf"]->trigger();
  EXPECT_TRUE(owl.window.messages().text().startsWith("The shelf keeps motors"));
}

TEST(WindowShelf, TheCardsListOffersIt) {
  ShelfWindow owl;
  owl.window.select("pan.motor");
  QMenu* menu = owl.window.card().findChild<QToolButton*>("card.title")->menu();
  emit menu->aboutToShow();
  EXPECT_TRUE(menu->actions().contains(owl.window.actions()["edit.to_shelf"]));
  owl.window.select("stand");
  emit menu->aboutToShow();
  EXPECT_FALSE(menu->actions().contains(owl.window.actions()["edit.to_shelf"]));
}

TEST(WindowShelf, ANameIsTypedInTheListAndTakenBack) {
  ShelfWindow owl;
  ASSERT_TRUE(owl.go(kMotor));
  owl.panel().list().currentItem()->setText(0, "the grey one");
  ASSERT_TRUE(owl.ready());
  EXPECT_TRUE(owl.go("the grey one"));
  owl.panel().bringBack();
  ASSERT_TRUE(owl.ready());
  EXPECT_TRUE(owl.go(kMotor));
}

TEST(WindowShelf, TheFilterHidesWhatHasNotEveryWord) {
  ShelfWindow owl;
  ASSERT_TRUE(owl.go(kMotor));
  owl.panel().filter().setText("42 100");
  EXPECT_FALSE(owl.panel().list().currentItem()->isHidden());
  owl.panel().filter().setText("42 camera");
  EXPECT_TRUE(owl.panel().list().currentItem()->isHidden());
  EXPECT_FALSE(owl.panel().list().current());
  EXPECT_FALSE(owl.button("shelf pan")->isEnabled());
}

TEST(WindowShelf, ABadFileIsNamedInThePanel) {
  ShelfWindow owl;
  ASSERT_TRUE(owl.go(kMotor));
  QDir(owl.folder.path()).mkpath("data/gazewright/shelf");
  owl.write("data/gazewright/shelf/bad.yaml", "shelf: 1\nname: x\nmotor: {mass: 96}\n");
  owl.panel().load();
  ASSERT_TRUE(owl.ready());
  bool is_named = false;
  for (const QLabel* label : owl.panel().findChildren<QLabel*>())
    is_named = is_named || label->text().contains("bad.yaml:3:15");
  EXPECT_TRUE(is_named);
}

TEST(WindowShelf, RanksTheShelfAndAPressOnARowTriesIt) {
  ShelfWindow owl;
  const Rig before = owl.rig();
  owl.window.actions()["axis.fit"]->trigger();
  FitDialog* fits = owl.window.fits();
  ASSERT_NE(fits, nullptr);
  EXPECT_FALSE(fits->isModal());
  ASSERT_TRUE(QTest::qWaitFor([&] { return fits->table().rowCount() > 0 && !fits->isRunning(); },
                              kPatience_ms));
  EXPECT_EQ(fits->fits().combinations, 10000u);
  EXPECT_TRUE(fits->summary().contains("combinations"));
  EXPECT_EQ(fits->table().rowCount(), 20);
  EXPECT_EQ(owl.rig(), before);
  emit fits->table().cellClicked(0, 0);
  const Shelf& shelf = *owl.panel().shelf();
  EXPECT_EQ(owl.rig(), with_fit(before, shelf, fits->fits().rows[0]));
  EXPECT_NE(owl.rig(), before);
  emit fits->table().cellClicked(3, 1);
  EXPECT_EQ(owl.window.document().history().count(), 1);  // tried ones are one step
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
  fits->table().setCurrentCell(2, 0);
  EXPECT_TRUE(fits->reason().startsWith(QString::fromStdString(fits->fits().rows[2].reason)));
  EXPECT_TRUE(fits->fits().rows[0].simulated.has_value());
}

TEST(WindowShelf, ARowSaysWhatIsMissingForItsSettlingAndGains) {
  ShelfWindow owl;
  Rig rig = owl.rig();
  rig.pan.loop.estimator_bandwidth_Hz = {};
  owl.window.document().edit("test", rig);
  owl.window.actions()["axis.fit"]->trigger();
  FitDialog* fits = owl.window.fits();
  ASSERT_TRUE(QTest::qWaitFor([&] { return fits->table().rowCount() > 0 && !fits->isRunning(); },
                              kPatience_ms));
  fits->table().setCurrentCell(0, 0);
  EXPECT_EQ(fits->table().item(0, 3)->text(), "unknown");
  EXPECT_EQ(fits->table().verticalHeaderItem(0)->text(), "1");
  EXPECT_TRUE(fits->reason().contains(
      "Whether it settles is unknown: it needs pan.loop.estimator_bandwidth."))
      << fits->reason().toStdString();
  EXPECT_TRUE(
      fits->reason().contains("No gains are advised for pan: needs pan.loop.estimator_bandwidth"))
      << fits->reason().toStdString();
}

TEST(WindowShelf, AllThatTheRigLacksForARankingIsNamedAtOnceAndLeadsToItsField) {
  ShelfWindow owl;
  Rig rig = owl.rig();
  for (const Axis axis : kAxes) rig.axis(axis).drive.current_limit_A = {};
  rig.camera.columns = {};
  owl.window.document().edit("test", rig);
  owl.window.actions()["axis.fit"]->trigger();
  FitDialog* fits = owl.window.fits();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !fits->isRunning() && !fits->lacking().isEmpty(); },
                              kPatience_ms));
  EXPECT_EQ(fits->summary(), "No ranking: the rig lacks 2 inputs, see below.");
  for (const char* text : {"Pan drive: current limit", "Tilt drive: current limit",
                           "Missing for single measures", "Camera: columns"})
    EXPECT_TRUE(fits->lacking().contains(text)) << text << " in " << fits->lacking().toStdString();
  emit fits->lackingLabel().linkActivated("tilt.drive.current_limit");
  EXPECT_EQ(owl.window.selected(), "tilt.drive");
}

TEST(WindowShelf, CancelEndsTheRankingAndTheWindowGoesOn) {
  ShelfWindow owl;
  owl.window.actions()["show.shelf"]->trigger();
  ASSERT_TRUE(owl.ready());
  owl.window.actions()["axis.fit"]->trigger();
  FitDialog* fits = owl.window.fits();
  ASSERT_TRUE(fits->isRunning());
  EXPECT_TRUE(fits->cancelButton().isVisible());
  fits->cancelButton().click();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !fits->isRunning(); }, kPatience_ms));
  EXPECT_TRUE(fits->fits().is_stopped);
  EXPECT_TRUE(fits->summary().startsWith("Cancelled"));
}

TEST(WindowShelf, ANewRankingTakesThePlaceOfTheOneThatRuns) {
  ShelfWindow owl;
  owl.window.actions()["show.shelf"]->trigger();
  ASSERT_TRUE(owl.ready());
  owl.window.actions()["axis.fit"]->trigger();
  FitDialog* fits = owl.window.fits();
  ASSERT_TRUE(fits->isRunning());
  QSignalSpy finished(fits, &FitDialog::finished);
  fits->drives().toggle();
  fits->drives().toggle();
  ASSERT_TRUE(QTest::qWaitFor([&] { return !fits->isRunning(); }, kPatience_ms));
  EXPECT_EQ(finished.count(), 1);
  EXPECT_FALSE(fits->fits().is_stopped) << "the stop was for those before";
  EXPECT_EQ(fits->fits().combinations, 10000u);
}

TEST(WindowShelf, ClosingWhileItRanksEndsIt) {
  auto owl = std::make_unique<ShelfWindow>();
  owl->window.actions()["show.shelf"]->trigger();
  ASSERT_TRUE(owl->ready());
  owl->window.actions()["axis.fit"]->trigger();
  ASSERT_TRUE(owl->window.fits()->isRunning());
  owl.reset();
}

TEST(WindowShelf, EverythingHasANameForScreenReaders) {
  ShelfWindow owl;
  owl.window.actions()["axis.fit"]->trigger();
  ASSERT_TRUE(owl.ready());
  for (QWidget* top :
       {static_cast<QWidget*>(&owl.panel()), static_cast<QWidget*>(owl.window.fits())}) {
    for (QWidget* widget : top->findChildren<QWidget*>()) {
      if (widget->focusPolicy() == Qt::NoFocus || widget->objectName().startsWith("qt_")) continue;
      QAccessibleInterface* face = QAccessible::queryAccessibleInterface(widget);
      ASSERT_NE(face, nullptr);
      const bool is_inside = qobject_cast<QTableWidget*>(widget->parentWidget()) ||
                             qobject_cast<QTreeWidget*>(widget->parentWidget());
      if (is_inside) continue;
      EXPECT_FALSE(face->text(QAccessible::Name).isEmpty())
          << widget->metaObject()->className() << " " << widget->objectName().toStdString();
    }
  }
}

}  // namespace
}  // namespace gazewright
