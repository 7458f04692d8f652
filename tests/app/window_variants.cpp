#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QTableView>
#include <QToolButton>

#include "app/plots/chart_plot.h"
#include "app/plots/variant_lines.h"
#include "app/window/edits.h"
#include "app/window/message_bar.h"
#include "app/window/plot_menu.h"
#include "app/window/plots_panel.h"
#include "app/window/variant_edits.h"
#include "app/window/variants_desk.h"
#include "app/window/variants_dialog.h"
#include "tests/app/window_support.h"

/// Variants in the window: pinned, compared, renamed, restored and removed.
namespace gazewright {
namespace {

using tests::OwlWindow;

struct VariantOwl : OwlWindow {
  void trigger(const char* action) { window.actions()[action]->trigger(); }
  void setRatio(double ratio) {
    window.document().edit("ratio", with_value(rig(), "pan.gearbox.ratio", ratio));
  }
  VariantsDialog& dialog() { return window.variants().dialog(); }
  VariantsModel& model() { return dialog().model(); }
  void press(const char* name) {
    auto* button = dialog().findChild<QToolButton*>(QLatin1String(name));
    ASSERT_NE(button, nullptr) << name;
    ASSERT_TRUE(button->isEnabled()) << name;
    button->click();
  }
  bool analysed() {
    return QTest::qWaitFor([this] { return window.variants().isAnalysed(); }, tests::kPatience_ms);
  }
  /// The text of a cell by the label of its row; waits until it says what is wanted.
  QString cell(const QString& label, int column) {
    for (int row = 0; row < model().rowCount(); ++row) {
      if (model().headerData(row, Qt::Vertical, Qt::DisplayRole).toString() == label)
        return model().index(row, column).data().toString();
    }
    return QStringLiteral("no such row");
  }
  bool says(const QString& label, int column, const QString& words) {
    return QTest::qWaitFor([&] { return cell(label, column).contains(words); },
                           tests::kPatience_ms);
  }
  QStringList lineNames(PlotKind kind) {
    QStringList names;
    const auto* plot = static_cast<ChartPlot*>(window.plots().plot(kind));
    for (const Series& series : plot->canvas()->chart().series) names << series.name;
    return names;
  }
  /// Types into a cell of the table, as a user would.
  void typeInto(int row, int variant, const char* text) {
    QTableView& table = dialog().table();
    table.setFocus();
    table.setCurrentIndex(model().index(row, variant + 1));
    QTest::keyClick(&table, Qt::Key_Return);
    auto* editor = table.viewport()->findChild<QLineEdit*>();
    ASSERT_NE(editor, nullptr);
    editor->selectAll();
    QTest::keyClick(editor, Qt::Key_Delete);
    QTest::keyClicks(editor, QString::fromUtf8(text));
    QTest::keyClick(editor, Qt::Key_Return);
    QCoreApplication::processEvents();  // the table takes the entry with the next event
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
};

TEST(Variants, APinnedDesignIsAnUndoableStepAndKeepsTheDesign) {
  VariantOwl owl;
  const Rig before = owl.rig();
  owl.trigger("edit.pin");
  ASSERT_EQ(owl.rig().variants.size(), 1u);
  EXPECT_EQ(owl.rig().variants[0].name, "Variant 1");
  EXPECT_EQ(*owl.rig().variants[0].rig, *design_of(before));
  EXPECT_EQ(owl.window.document().history().undoText(), "pin “Variant 1”");
  owl.setRatio(9);
  EXPECT_EQ(owl.rig().variants[0].rig->pan.gearbox.ratio.value(), 18);
  owl.trigger("edit.undo");
  owl.trigger("edit.undo");
  EXPECT_EQ(owl.rig(), before);
}

TEST(Variants, TheSameDesignIsNotPinnedTwiceAndTheWindowSaysSo) {
  VariantOwl owl;
  owl.trigger("edit.pin");
  owl.trigger("edit.pin");
  EXPECT_EQ(owl.rig().variants.size(), 1u);
  EXPECT_TRUE(owl.window.messages().text().contains("pinned already, as “Variant 1”"))
      << owl.window.messages().text().toStdString();
}

TEST(Variants, MoreThanTwentyFourAreRefusedWithASentence) {
  VariantOwl owl;
  Rig full = owl.rig();
  for (int i = 0; i < 24; ++i) full = with_variant_pinned(full, "v" + std::to_string(i));
  full = with_value(full, "pan.gearbox.ratio", 7);
  owl.window.document().edit("many", full);
  owl.trigger("edit.pin");
  EXPECT_EQ(owl.rig().variants.size(), 24u);
  EXPECT_TRUE(owl.window.messages().text().contains("24 variants at most"));
}

TEST(Variants, AreComparedSideBySideWithSignedDifferencesAndTheBestInWords) {
  VariantOwl owl;
  owl.trigger("edit.pin");
  owl.setRatio(9);
  owl.trigger("edit.variants");
  ASSERT_TRUE(owl.dialog().isVisible());
  EXPECT_FALSE(owl.dialog().isModal());
  ASSERT_TRUE(owl.settle());
  ASSERT_TRUE(owl.analysed());
  EXPECT_EQ(owl.model().columnCount(), 2);
  EXPECT_EQ(owl.cell("Pan gearbox: ratio", 0), "9");
  EXPECT_EQ(owl.cell("Pan gearbox: ratio", 1), "18  (+9)");
  EXPECT_TRUE(owl.says("Pan: stall torque at the output", 1, "✓ best"));
  EXPECT_TRUE(owl.cell("Pan: stall torque at the output", 1).contains("(+"));
  EXPECT_TRUE(owl.says("Findings: fails", 1, ""));

  owl.setRatio(18);
  EXPECT_TRUE(owl.says("Pan gearbox: ratio", 0, "no such row")) << "nothing differs any more";
}

TEST(Variants, FiguresOfAVariantAreThoseOfItsRigAlone) {
  VariantOwl owl;
  owl.trigger("edit.pin");
  owl.setRatio(9);
  owl.trigger("edit.variants");
  ASSERT_TRUE(owl.settle());
  ASSERT_TRUE(owl.analysed());
  const Comparison comparison = owl.window.variants().comparison();
  const Analysis alone = analyse(*owl.rig().variants[0].rig, {.remedies = false});
  for (const CompareRow& row : comparison.figures)
    EXPECT_EQ(row.cells[1].value, alone.value(row.id)) << row.id;
}

/// By the key in the plot, and by the menu, which says why not where there is none.
TEST(Variants, ArePinnedAsReferenceOfADifference) {
  VariantOwl owl;
  ASSERT_TRUE(owl.settle());
  PlotsPanel& plots = owl.window.plots();
  PlotView* step = plots.plot(PlotKind::step);
  const auto open = [&](PlotView* plot) {
    emit plot->menuWanted({50, 50});
    QAction* action = plots.menu()->action("difference");
    plots.menu()->close();
    return action;
  };
  EXPECT_FALSE(open(step)->isEnabled());
  EXPECT_TRUE(open(step)->toolTip().contains("No variant is in the plots"));
  QTest::keyClick(step, Qt::Key_D);
  EXPECT_TRUE(step->shownLess().isEmpty());
  owl.trigger("edit.pin");
  owl.setRatio(9);
  ASSERT_TRUE(owl.settle());
  ASSERT_TRUE(owl.analysed());
  QTest::keyClick(step, Qt::Key_D);
  EXPECT_EQ(step->shownLess(), "Variant 1");
  EXPECT_EQ(owl.lineNames(PlotKind::step), QStringList({"Pan", "Tilt"}));
  EXPECT_TRUE(step->accessibleDescription().contains("less the variant “Variant 1”"));
  QAction* menu = open(step);
  ASSERT_TRUE(menu->isEnabled());
  ASSERT_EQ(menu->menu()->actions().size(), 2);
  EXPECT_TRUE(menu->menu()->actions()[1]->isChecked());
  menu->menu()->actions()[0]->trigger();
  EXPECT_TRUE(step->shownLess().isEmpty());
  open(step)->menu()->actions()[1]->trigger();
  EXPECT_EQ(step->shownLess(), "Variant 1");
  EXPECT_FALSE(open(plots.plot(PlotKind::inertia))->isEnabled());
  EXPECT_FALSE(open(plots.plot(PlotKind::inertia))->toolTip().isEmpty());
}

TEST(Variants, AreRenamedAndNotedInTheTableEachInOneStep) {
  VariantOwl owl;
  owl.trigger("edit.pin");
  owl.trigger("edit.variants");
  const int steps = owl.window.document().history().count();
  owl.typeInto(VariantsModel::name, 0, "low one");
  EXPECT_EQ(owl.rig().variants[0].name, "low one");
  owl.typeInto(VariantsModel::note, 0, "from the shelf");
  EXPECT_EQ(owl.rig().variants[0].note, "from the shelf");
  EXPECT_EQ(owl.window.document().history().count(), steps + 2);
  EXPECT_TRUE(owl.says("Name", 1, "low one"));
  owl.typeInto(VariantsModel::name, 0, "");
  EXPECT_EQ(owl.rig().variants[0].name, "low one");
  EXPECT_EQ(owl.dialog().findChild<QLabel*>("variants.problem")->text(), "A variant needs a name.");
  owl.trigger("edit.undo");
  owl.trigger("edit.undo");
  EXPECT_EQ(owl.rig().variants[0].name, "Variant 1");
  EXPECT_EQ(owl.rig().variants[0].note, "");
}

TEST(Variants, RestoringIsOneStepAndCanPinThePresentDesignFirst) {
  VariantOwl owl;
  const Rig first = owl.rig();
  owl.trigger("edit.pin");
  owl.setRatio(9);
  const Rig changed = owl.rig();
  owl.trigger("edit.variants");
  owl.dialog().setCurrent(0);
  owl.press("variant.restore");
  EXPECT_EQ(owl.rig().pan.gearbox.ratio.value(), 18);
  EXPECT_EQ(owl.rig().title, first.title);
  EXPECT_EQ(owl.rig().variants, changed.variants);
  EXPECT_EQ(owl.window.document().history().undoText(), "restore “Variant 1”");
  owl.trigger("edit.undo");
  EXPECT_EQ(owl.rig(), changed);

  owl.dialog().setCurrent(0);
  owl.press("variant.pin_restore");
  ASSERT_EQ(owl.rig().variants.size(), 2u);
  EXPECT_EQ(owl.rig().pan.gearbox.ratio.value(), 18);
  EXPECT_EQ(owl.rig().variants[1].rig->pan.gearbox.ratio.value(), 9);
  owl.trigger("edit.undo");
  EXPECT_EQ(owl.rig(), changed) << "both in one step";
}

TEST(Variants, AreRemovedWithTheDeleteKeyAndComeBackByUndo) {
  VariantOwl owl;
  owl.trigger("edit.pin");
  owl.setRatio(9);
  owl.trigger("edit.pin");
  const Rig before = owl.rig();
  owl.trigger("edit.variants");
  owl.dialog().setCurrent(0);
  QTest::keyClick(&owl.dialog().table(), Qt::Key_Delete);
  ASSERT_EQ(owl.rig().variants.size(), 1u);
  EXPECT_EQ(owl.rig().variants[0].name, "Variant 2");
  EXPECT_EQ(owl.model().columnCount(), 2);
  owl.trigger("edit.undo");
  EXPECT_EQ(owl.rig(), before);
  EXPECT_EQ(owl.model().columnCount(), 3);
}

TEST(Variants, ThePinnedDesignStaysInTheStepChartUntilItIsHidden) {
  VariantOwl owl;
  owl.window.plots().setKinds({PlotKind::step, PlotKind::bode});
  owl.trigger("edit.pin");
  owl.setRatio(9);
  ASSERT_TRUE(owl.settle());
  ASSERT_TRUE(
      QTest::qWaitFor([&] { return owl.lineNames(PlotKind::step).contains("Pan, Variant 1"); },
                      tests::kPatience_ms));
  const auto* plot = static_cast<ChartPlot*>(owl.window.plots().plot(PlotKind::step));
  const Chart& chart = plot->canvas()->chart();
  EXPECT_TRUE(chart_parts::is_variant(chart.series.front().line));
  EXPECT_TRUE(std::ranges::any_of(chart.marks, [](const Mark& mark) {
    return mark.kind == Mark::Kind::label && mark.text == "Variant 1";
  }));
  const Analysis alone = analyse(*owl.rig().variants[0].rig, {.remedies = false});
  EXPECT_EQ(chart.series.front().y.size(), qsizetype(alone.of(Axis::pan).step.time_s.size()));
  EXPECT_TRUE(plot->summary().contains("Variant 1"));

  owl.trigger("edit.variants");
  QTableView& table = owl.dialog().table();
  table.setFocus();
  table.setCurrentIndex(owl.model().index(VariantsModel::in_plots, 1));
  QTest::keyClick(&table, Qt::Key_Space);
  EXPECT_FALSE(owl.window.variants().isInPlots(0));
  EXPECT_FALSE(owl.lineNames(PlotKind::step).contains("Pan, Variant 1"));
}

TEST(Variants, AtMostFourAreInThePlots) {
  VariantOwl owl;
  for (int ratio = 9; ratio < 15; ++ratio) {
    owl.setRatio(ratio);
    owl.trigger("edit.pin");
  }
  owl.trigger("edit.variants");
  for (std::size_t i = 0; i < 6; ++i) owl.window.variants().setInPlots(i, true);
  ASSERT_TRUE(owl.analysed());
  EXPECT_EQ(owl.window.variants().curves().size(), 4u);
  EXPECT_TRUE(owl.dialog().findChild<QLabel*>("variants.problem")->text().contains("at most"));
}

TEST(Variants, AreKeptInTheFile) {
  VariantOwl owl;
  owl.write("owl.rig.yaml", owl.read("owl.rig.yaml") + "# a remark\n");
  ASSERT_TRUE(owl.window.openFile(owl.path("owl.rig.yaml")));
  owl.trigger("edit.pin");
  owl.setRatio(9);
  const Rig saved = owl.rig();
  ASSERT_TRUE(owl.window.saveTo(owl.path("owl.rig.yaml")));
  EXPECT_NE(owl.read("owl.rig.yaml").find("# a remark"), std::string::npos);
  EXPECT_NE(owl.read("owl.rig.yaml").find("variants:"), std::string::npos);
  owl.window.newRig();
  EXPECT_TRUE(owl.rig().variants.empty());
  ASSERT_TRUE(owl.window.openFile(owl.path("owl.rig.yaml")));
  EXPECT_EQ(owl.rig().pan.gearbox.ratio.value(), 9);
  ASSERT_EQ(owl.rig().variants.size(), 1u);
  EXPECT_EQ(owl.rig().variants[0].rig->pan.gearbox.ratio.value(), 18);
  EXPECT_EQ(saved.variants.size(), 1u);
}

TEST(Variants, TheTableIsCopiedAsTextWithTabs) {
  VariantOwl owl;
  owl.trigger("edit.pin");
  owl.setRatio(9);
  owl.trigger("edit.variants");
  ASSERT_TRUE(owl.says("Pan gearbox: ratio", 1, "18"));
  owl.press("variant.copy");
  const QString text = QGuiApplication::clipboard()->text();
  EXPECT_TRUE(text.startsWith("Name\tPresent design\tVariant 1\n")) << text.toStdString();
  EXPECT_TRUE(text.contains("\nPan gearbox: ratio\t9\t18  (+9)\n")) << text.toStdString();
}

TEST(Variants, TheEmptyDialogSaysWhatToDoAndEverythingHasAName) {
  VariantOwl owl;
  owl.trigger("edit.variants");
  EXPECT_TRUE(owl.dialog().findChild<QLabel*>("variants.empty")->isVisible());
  EXPECT_FALSE(owl.dialog().findChild<QToolButton*>("variant.restore")->isEnabled());
  owl.press("variant.pin");
  EXPECT_FALSE(owl.dialog().findChild<QLabel*>("variants.empty")->isVisible());
  EXPECT_LE(owl.dialog().width(), 1366);
  EXPECT_LE(owl.dialog().height(), 768);
  EXPECT_FALSE(owl.dialog().table().accessibleName().isEmpty());
  EXPECT_EQ(owl.model().index(VariantsModel::name, 1).data(Qt::AccessibleTextRole).toString(),
            "Name, Variant 1: Variant 1");
  for (auto* button : owl.dialog().findChildren<QToolButton*>()) {
    if (!button->objectName().startsWith("variant.")) continue;
    QAccessibleInterface* said = QAccessible::queryAccessibleInterface(button);
    ASSERT_NE(said, nullptr);
    EXPECT_FALSE(said->text(QAccessible::Name).isEmpty()) << button->objectName().toStdString();
  }
}

TEST(Variants, ARestoredFarVariantWhileItsAnalysisRunsLeavesTheRightFigures) {
  VariantOwl owl;
  for (int ratio = 9; ratio < 14; ++ratio) {
    owl.setRatio(ratio);
    owl.trigger("edit.pin");
  }
  owl.trigger("edit.variants");
  owl.window.variants().remove(0);
  owl.window.variants().restore(2, false);
  owl.window.variants().remove(1);
  ASSERT_TRUE(owl.settle());
  ASSERT_TRUE(owl.analysed());
  const Comparison comparison = owl.window.variants().comparison();
  ASSERT_EQ(comparison.names.size(), 4u);
  for (std::size_t i = 0; i < 3; ++i) {
    const Analysis alone = analyse(*owl.rig().variants[i].rig, {.remedies = false});
    EXPECT_EQ(comparison.figures[0].cells[i + 1].value, alone.value(comparison.figures[0].id));
  }
}

TEST(Variants, TheSheetWaitsForThem) {
  VariantOwl owl;
  Rig with = with_variant_pinned(owl.rig(), "as it was");
  with = with_value(with, "pan.gearbox.ratio", 9);
  owl.window.document().edit("variant", with);
  QString written;
  QObject::connect(&owl.window, &MainWindow::sheetWritten,
                   [&](const QString& file) { written = file; });
  owl.window.writeSheet(owl.path("owl.pdf"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !written.isEmpty(); }, tests::kPatience_ms));
  EXPECT_TRUE(owl.window.variants().isAnalysed());
}

TEST(Variants, PinsFasterThanTheirAnalysesShowNoMoreThanThePlotsDraw) {
  VariantOwl owl;
  for (std::size_t i = 0; i <= VariantsDesk::kMostInPlots; ++i) {
    owl.setRatio(20 + static_cast<double>(i));
    owl.trigger("edit.pin");  // no event loop between: none of them is analysed yet
  }
  ASSERT_EQ(owl.rig().variants.size(), VariantsDesk::kMostInPlots + 1);
  for (std::size_t i = 0; i < VariantsDesk::kMostInPlots; ++i)
    EXPECT_TRUE(owl.window.variants().isInPlots(i)) << i;
  EXPECT_FALSE(owl.window.variants().isInPlots(VariantsDesk::kMostInPlots));
}

}  // namespace
}  // namespace gazewright
