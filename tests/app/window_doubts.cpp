#include <gtest/gtest.h>

#include <QLabel>
#include <QLineEdit>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTableView>
#include <QTextBrowser>

#include "app/plots/chart_plot.h"
#include "app/plots/charts.h"
#include "app/plots/doubt_text.h"
#include "app/window/doubts_dialog.h"
#include "app/window/doubts_model.h"
#include "app/window/drive_line.h"
#include "app/window/explainer.h"
#include "app/window/figures_model.h"
#include "app/window/figures_window.h"
#include "app/window/handbook.h"
#include "app/window/parts.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "app/window/special_tiles.h"
#include "tests/app/window_support.h"

/// How far to trust the figures, in the window.
namespace gazewright {
namespace {

using tests::OwlWindow;

/// The owl with two guesses: the efficiencies (datasheet, ± 5 %) are in its file.
struct DoubtOwl : OwlWindow {
  DoubtOwl() {
    Rig rig = window.document().rig();
    rig.pan.motor.rotor_inertia_kgm2.source = Source::estimate;
    rig.pan.motor.rotor_inertia_kgm2.spread_si = 0.3 * *rig.pan.motor.rotor_inertia_kgm2.si;
    rig.pan.motor.rotor_inertia_kgm2.spread_written = "30 %";
    rig.on_tilt[1].mass_kg.source = Source::estimate;
    rig.on_tilt[1].mass_kg.spread_si = 0.2 * *rig.on_tilt[1].mass_kg.si;
    rig.on_tilt[1].mass_kg.spread_written = "20 %";
    window.document().edit("guesses", rig);
  }
  bool known() {
    return QTest::qWaitFor([this] { return window.doubts() != nullptr; }, tests::kPatience_ms);
  }
  void setRatio(double ratio) {
    window.document().edit("ratio", with_value(rig(), "pan.gearbox.ratio", ratio));
  }
  DoubtsDialog& dialog() {
    if (!window.doubtsDialog()) window.actions()["show.doubts"]->trigger();
    return *window.doubtsDialog();
  }
  QString label(const char* name) { return dialog().findChild<QLabel*>(name)->text(); }
  int rowOf(const char* path) {
    for (int row = 0; row < dialog().model().rowCount(); ++row)
      if (dialog().model().unknown(row).path == path) return row;
    return -1;
  }
  ChartPlot& step() { return *static_cast<ChartPlot*>(window.plots().plot(PlotKind::step)); }
  qsizetype ribbons() { return step().canvas()->chart().ribbons.size(); }
};

TEST(WorthMeasuring, RanksWhatTheFiguresHangOnAsTheDoubtsDo) {
  DoubtOwl owl;
  DoubtsModel& model = owl.dialog().model();
  EXPECT_EQ(model.rowCount(), 0);
  EXPECT_EQ(owl.label("doubts.state"), "Being worked out.");
  ASSERT_TRUE(owl.known());
  const Doubts& doubts = *owl.window.doubts();
  ASSERT_EQ(model.rowCount(), int(doubts.worth.size()));
  ASSERT_GE(model.rowCount(), 2);
  const auto turns = [&](int row) {
    return model.worth(row).text.find("alone it can turn a verdict") != std::string::npos;
  };
  double before = 1;
  for (int row = 0; row < model.rowCount(); ++row) {
    if (row > 0 && turns(row - 1) && !turns(row)) before = 1;
    EXPECT_FALSE(row > 0 && turns(row) && !turns(row - 1)) << "those that turn a verdict lead";
    EXPECT_LE(model.worth(row).share, before);
    before = model.worth(row).share;
    EXPECT_EQ(model.index(row, DoubtsModel::name).data().toString().toStdString(),
              model.unknown(row).label);
    EXPECT_EQ(model.index(row, DoubtsModel::share).data().toString(), share_text(before));
    EXPECT_EQ(model.index(row, DoubtsModel::sentence).data().toString().toStdString(),
              model.worth(row).text);
  }
  const int rotor = owl.rowOf("pan.motor.rotor_inertia");
  ASSERT_GE(rotor, 0);
  EXPECT_TRUE(model.index(rotor, DoubtsModel::value).data().toString().endsWith("±30 %"));
  EXPECT_EQ(model.index(rotor, DoubtsModel::source).data().toString(), "estimate");
  EXPECT_TRUE(owl.label("doubts.trust").contains("±"));
  EXPECT_EQ(owl.label("doubts.sentence").toStdString(), model.worth(0).text);
}

TEST(WorthMeasuring, EnterGoesToTheFieldOfTheValue) {
  DoubtOwl owl;
  QTableView& table = owl.dialog().table();
  ASSERT_TRUE(owl.known());
  table.selectRow(owl.rowOf("pan.motor.rotor_inertia"));
  QTest::keyClick(&table, Qt::Key_Return);
  EXPECT_EQ(owl.window.selected(), "pan.motor");
  EXPECT_EQ(owl.window.focusWidget(), owl.field("pan.motor.rotor_inertia")->edit());
}

TEST(WorthMeasuring, AClickOnABodysValueShowsItsCard) {
  DoubtOwl owl;
  QTableView& table = owl.dialog().table();
  ASSERT_TRUE(owl.known());
  const int row = owl.rowOf("on_tilt[camera].mass");
  ASSERT_GE(row, 0);
  table.scrollTo(owl.dialog().model().index(row, 0));
  const QRect cell = table.visualRect(owl.dialog().model().index(row, 0));
  QTest::mouseClick(table.viewport(), Qt::LeftButton, Qt::NoModifier, cell.center());
  EXPECT_EQ(owl.window.selected(), "on_tilt[1]");
}

TEST(WorthMeasuring, NeverShowsTheListOfAnotherRigAsCurrent) {
  DoubtOwl owl;
  QTableView& table = owl.dialog().table();
  ASSERT_TRUE(owl.known());
  const auto before = owl.window.doubts();
  table.selectRow(1);
  const std::string chosen = owl.dialog().model().unknown(1).path;
  owl.setRatio(9);
  EXPECT_EQ(owl.window.doubts(), nullptr);
  EXPECT_EQ(owl.label("doubts.state"),
            "Of the rig before the last change; being worked out again.");
  EXPECT_TRUE(owl.label("doubts.trust").isEmpty());
  ASSERT_TRUE(owl.known());
  EXPECT_NE(owl.window.doubts(), before);
  EXPECT_TRUE(owl.dialog().findChild<QLabel*>("doubts.state")->isHidden());
  EXPECT_EQ(owl.dialog().model().unknown(table.currentIndex().row()).path, chosen);
}

TEST(WorthMeasuring, SaysWhatToDoWhereNothingIsInDoubt) {
  DoubtsDialog dialog;
  dialog.setDoubts(std::make_shared<const Doubts>(), Analysis());
  const auto* empty = dialog.findChild<QLabel*>("doubts.empty");
  EXPECT_FALSE(empty->isHidden());
  EXPECT_TRUE(empty->text().contains("State a source or a spread"));
  EXPECT_TRUE(empty->text().contains("no value has a spread")) << empty->text().toStdString();
  EXPECT_TRUE(dialog.table().isHidden());
}

TEST(WorthMeasuring, SaysOrMoreWhereAnEndHasNoValue) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  const Analysis& analysis = *owl.window.recompute().analysis();
  Doubts doubts;
  DoubtedFigure& doubted = doubts.figures.emplace_back();
  doubted.id = "pan.step.settle_time";
  doubted.value = 0.1;
  doubted.uncertainty_si = 0.006;
  const QString whole = plus_minus(doubts, analysis, "pan.step.settle_time");
  doubted.is_known_whole = false;
  EXPECT_EQ(plus_minus(doubts, analysis, "pan.step.settle_time"), whole + " or more");
}

TEST(WorthMeasuring, ColumnsAndRowsFollowTheTextSize) {
  DoubtOwl owl;
  QTableView& table = owl.dialog().table();
  ASSERT_TRUE(owl.known());
  const int column = table.columnWidth(DoubtsModel::name), row = table.rowHeight(0);
  owl.window.setTextPercent(160);
  QCoreApplication::processEvents();
  EXPECT_GT(table.columnWidth(DoubtsModel::name), column * 5 / 4);
  EXPECT_GT(table.rowHeight(0), row);
  owl.window.setTextPercent(100);
}

TEST(WorthMeasuring, SaysHowManyValuesAreTakenAsExact) {
  DoubtOwl owl;
  owl.dialog();
  ASSERT_TRUE(owl.known());
  EXPECT_EQ(owl.label("doubts.exact"), QStringLiteral("Values without a spread, taken as exact: %1")
                                           .arg(owl.window.doubts()->exact));
  EXPECT_GT(owl.window.doubts()->exact, 10u);
}

TEST(WorthMeasuring, F1OpensItsPageOfTheHandbook) {
  DoubtOwl owl;
  emit owl.dialog().helpWanted();
  ASSERT_NE(owl.window.explainer().handbook(), nullptr);
  EXPECT_EQ(owl.window.explainer().handbook()->page(), "doubts.md");
}

TEST(StepBandInTheWindow, ComesAfterAPauseAndGoesWithTheNextEdit) {
  DoubtOwl owl;
  ASSERT_TRUE(owl.known());
  EXPECT_EQ(owl.ribbons(), 2);
  EXPECT_EQ(owl.step().canvas()->chart().ribbons.front().x.size(),
            owl.step().canvas()->chart().series.front().x.size());
  owl.setRatio(12);
  ASSERT_TRUE(owl.analysed());
  EXPECT_EQ(owl.ribbons(), 0) << "the curve is newer than the doubts";
  ASSERT_TRUE(owl.known());
  EXPECT_EQ(owl.ribbons(), 2);
}

TEST(StepBandInTheWindow, IsOffWhileSomethingIsDragged) {
  DoubtOwl owl;
  ASSERT_TRUE(owl.known());
  RatioScale* scale = owl.window.driveLine(Axis::pan).ratioScale();
  emit scale->dragStarted();
  emit scale->ratioMoved(14, 77);
  ASSERT_TRUE(owl.analysed());
  EXPECT_EQ(owl.ribbons(), 0);
  EXPECT_EQ(owl.window.doubts(), nullptr);
  emit scale->dragEnded();
  ASSERT_TRUE(owl.known());
  EXPECT_EQ(owl.ribbons(), 2);
}

TEST(StepBandInTheWindow, SwitchedOffNothingIsWorkedOutUntilSomethingShowsIt) {
  DoubtOwl owl;
  owl.step().toggleLine(doubt_band_text());
  EXPECT_FALSE(owl.window.areDoubtsAwaited());
  ASSERT_TRUE(owl.settle());
  EXPECT_FALSE(owl.window.areDoubtsAwaited());
  owl.window.actions()["show.figures"]->trigger();
  EXPECT_TRUE(owl.window.areDoubtsAwaited());
  ASSERT_TRUE(owl.known());
  EXPECT_EQ(owl.ribbons(), 0);
  owl.step().toggleLine(doubt_band_text());
  EXPECT_EQ(owl.ribbons(), 2);
}

TEST(FiguresInDoubt, HaveTheirPlusMinusInTheListAndTheExplanation) {
  DoubtOwl owl;
  owl.window.actions()["show.figures"]->trigger();
  ASSERT_TRUE(owl.known());
  FiguresWindow& figures = *owl.window.explainer().figures();
  const auto& model = *static_cast<FiguresModel*>(figures.table()->model());
  const std::string id = "pan.step.settle_time";
  const QString expected = plus_minus(*owl.window.doubts(), *owl.window.recompute().analysis(), id);
  ASSERT_FALSE(expected.isEmpty());
  EXPECT_EQ(model.index(model.rowOf(id), FiguresModel::doubt).data().toString(), expected);
  figures.explainFigure(id);
  const QString text = figures.text()->toPlainText();
  EXPECT_TRUE(text.contains("How far to trust it")) << text.toStdString();
  const DoubtedFigure& doubted = *owl.window.doubts()->figure(id);
  const Unknown& largest = owl.window.doubts()->unknowns[doubted.shifts.front().unknown];
  EXPECT_TRUE(text.contains(QString::fromStdString(largest.label))) << text.toStdString();
  owl.setRatio(9);
  ASSERT_TRUE(owl.analysed());
  EXPECT_TRUE(model.index(model.rowOf(id), FiguresModel::doubt).data().toString().isEmpty());
  EXPECT_FALSE(figures.text()->toPlainText().contains("How far to trust it"));
}

TEST(FiguresInDoubt, TheHeadlineTellsItsPlusMinusUntilTheNextEdit) {
  DoubtOwl owl;
  ASSERT_TRUE(owl.known());
  auto* headline = owl.window.driveLine(Axis::pan).findChild<HeadlineTile*>();
  const QString expected =
      plus_minus(*owl.window.doubts(), *owl.window.recompute().analysis(), "pan.step.settle_time");
  EXPECT_TRUE(headline->accessibleDescription().contains(expected));
  EXPECT_TRUE(headline->toolTip().contains(expected));
  owl.setRatio(9);
  ASSERT_TRUE(owl.analysed());
  EXPECT_FALSE(headline->accessibleDescription().contains("±"));
}

TEST(FiguresInDoubt, AreInTheSheetOfTheWindow) {
  DoubtOwl owl;
  owl.step().toggleLine(doubt_band_text());
  QSignalSpy written(&owl.window, &MainWindow::sheetWritten);
  owl.window.writeSheet(owl.path("owl.pdf"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return written.count() == 1; }, tests::kPatience_ms));
  EXPECT_NE(owl.window.doubts(), nullptr) << "the sheet waited for them";
}

TEST(FieldPath, IsThatOfTheNamedBody) {
  OwlWindow owl;
  EXPECT_EQ(field_path(owl.rig(), "on_tilt[camera].mass"), "on_tilt[1].mass");
  EXPECT_EQ(field_path(owl.rig(), "pan.motor.mass"), "pan.motor.mass");
  EXPECT_EQ(field_path(owl.rig(), "on_tilt[lamp].mass"), "on_tilt[lamp].mass");
}

}  // namespace
}  // namespace gazewright
