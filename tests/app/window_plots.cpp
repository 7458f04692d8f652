#include <gtest/gtest.h>

#include <QAccessible>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QLabel>
#include <QMenuBar>
#include <QMimeData>
#include <QPlainTextEdit>
#include <QTableView>
#include <QToolButton>

#include "app/plots/chart_plot.h"
#include "app/plots/csv.h"
#include "app/window/message_bar.h"
#include "app/window/plot_cursors.h"
#include "app/window/plot_menu.h"
#include "app/window/plot_table.h"
#include "app/window/plots_panel.h"
#include "app/window/title_combo.h"
#include "tests/app/window_support.h"

/// The menu of a plot and its dialogs, in the real window.
namespace gazewright {
namespace {

using tests::OwlWindow;

struct PlotsWindow : OwlWindow {
  PlotsWindow() {
    settled = settle();
    plots().menu()->setAskFile(
        [this](const QString&, const QString&, const QString&) { return answer; });
  }
  PlotsPanel& plots() { return window.plots(); }
  ChartPlot& chart(PlotKind kind) { return *plots().plot(kind)->charts().front(); }
  /// Opens the menu on a plot as the right mouse button does.
  PlotMenu& open(PlotKind kind) {
    PlotView* plot = plots().plot(kind);
    QContextMenuEvent event(QContextMenuEvent::Mouse, {5, 5}, plot->mapToGlobal(QPoint(5, 5)));
    QApplication::sendEvent(plot, &event);
    return *plots().menu();
  }
  template <class Dialog>
  Dialog* dialog() {
    for (QWidget* widget : QApplication::topLevelWidgets()) {
      auto* found = qobject_cast<Dialog*>(widget);
      if (found != nullptr && found->isVisible()) return found;
    }
    return nullptr;
  }

  bool settled = false;
  QString answer;
};

TEST(PlotMenu, OpensByButtonKeyAndRightMouseAndStandsInTheMenuBar) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  EXPECT_TRUE(owl.window.menuBar()->actions().contains(owl.plots().menu()->menuAction()));
  PlotMenu& menu = owl.open(PlotKind::torque_speed);
  EXPECT_TRUE(menu.isVisible());
  EXPECT_EQ(menu.plot()->kind(), PlotKind::torque_speed);
  EXPECT_NE(menu.action("back"), nullptr);
  menu.close();
  const auto buttons = owl.plots().findChildren<QToolButton*>("plot.menu");
  ASSERT_EQ(buttons.size(), 4);
  QTest::keyClick(buttons[1], Qt::Key_Space);
  EXPECT_TRUE(menu.isVisible());
  EXPECT_EQ(menu.plot()->kind(), PlotKind::time_ratio);
  EXPECT_TRUE(buttons[1]->accessibleName().contains(menu.plot()->title()));
  menu.close();
  owl.open(PlotKind::inertia);
  EXPECT_EQ(menu.action("back"), nullptr) << "a picture without axes has no views";
  EXPECT_NE(menu.action("table"), nullptr);
  menu.close();
}

TEST(PlotMenu, CopiesPictureAndData) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  PlotMenu& menu = owl.open(PlotKind::step);
  menu.action("copy_picture")->trigger();
  const QMimeData* data = QApplication::clipboard()->mimeData();
  ASSERT_TRUE(data->hasImage());
  EXPECT_EQ(data->imageData().value<QImage>().width(),
            2 * std::max(480, owl.plots().plot(PlotKind::step)->width()));
  EXPECT_TRUE(data->data("image/svg+xml").contains("Tide-pool owl"));
  menu.action("copy_data")->trigger();
  const QString csv = owl.plots().plot(PlotKind::step)->csv();
  EXPECT_EQ(QApplication::clipboard()->mimeData()->data("text/csv"), csv.toUtf8());
  EXPECT_EQ(QApplication::clipboard()->text(), with_tabs(csv));
  const QStringList head = QApplication::clipboard()->text().section('\n', 0, 0).split('\t');
  EXPECT_EQ(head, csv_rows(csv).front());
  EXPECT_GT(head.size(), 2);
  menu.close();
}

TEST(PlotMenu, SavesAPictureOfTheAskedSizeAndSaysSo) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  owl.open(PlotKind::step).close();
  owl.answer = owl.path("step");
  owl.plots().menu()->savePicture(
      {.ending = "png", .width_mm = 100, .height_mm = 60, .dpi = 254, .variant = "B"});
  EXPECT_EQ(QImage(owl.path("step.png")).size(), QSize(1000, 600)) << "the ending is put to it";
  EXPECT_TRUE(owl.window.messages().text().contains("step.png is written"));
  EXPECT_TRUE(owl.plots().menu()->caption().contains("Tide-pool owl · B · "));
  owl.answer = owl.path("data.csv");
  owl.plots().menu()->saveData(false);
  EXPECT_EQ(owl.read("data.csv"), owl.plots().plot(PlotKind::step)->csv().toStdString());
  owl.answer = owl.path("no-such-folder/data.csv");
  owl.plots().menu()->saveData(true);
  EXPECT_TRUE(owl.window.messages().text().contains("was not written"))
      << owl.window.messages().text().toStdString();
}

TEST(PlotMenu, SwitchesOptionsThatOutliveAChangeOfPlots) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  PlotMenu& menu = owl.open(PlotKind::step);
  menu.action("grid")->trigger();
  menu.action("fixed")->trigger();
  menu.action("hold")->trigger();
  menu.close();
  EXPECT_TRUE(owl.plots().plot(PlotKind::torque_speed)->options().held) << "one cursor for all";
  EXPECT_TRUE(owl.plots().plot(PlotKind::torque_speed)->options().grid);
  owl.plots().setKinds({PlotKind::speed, PlotKind::step});
  EXPECT_FALSE(owl.plots().plot(PlotKind::step)->options().grid);
  EXPECT_TRUE(owl.plots().plot(PlotKind::step)->options().fixed_scale);
}

TEST(PlotMenu, KeepsTheFixedScaleWhileAnEditComes) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  owl.open(PlotKind::step).action("fixed")->trigger();
  owl.plots().menu()->close();
  ChartPlot& step = owl.chart(PlotKind::step);
  const Range y = step.canvas()->viewY();
  const QString curves = step.csv();
  owl.window.select("task");
  ASSERT_NE(owl.type("task.pan_move", "70 deg"), nullptr);
  ASSERT_TRUE(owl.settle());
  EXPECT_NE(step.csv(), curves);
  EXPECT_EQ(step.canvas()->viewY(), y);
  EXPECT_GT(y_range(step.fullChart(), {0, 1e9}).hi, y.hi) << "the curve left the view";
}

/// With large letters a title is elided, never cut, and said in full.
TEST(PlotsPanel, ElidesTitlesThatFindNoRoomAndSaysThemInFull) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  owl.plots().setKinds({PlotKind::torque_speed, PlotKind::step});
  QCoreApplication::processEvents();  // the frames of before go, those of now come in sight
  QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  const auto combos = owl.plots().findChildren<QComboBox*>();
  int seen = 0;
  for (QComboBox* combo : combos) {
    auto* title = dynamic_cast<TitleCombo*>(combo);
    if (title == nullptr || !title->isVisible() || !title->currentText().startsWith("Torque"))
      continue;
    ++seen;
    const QString whole = plot_title(PlotKind::torque_speed);
    EXPECT_EQ(title->toolTip(), whole);
    EXPECT_TRUE(title->accessibleName().contains(whole));
    title->resize(title->sizeHint());
    EXPECT_EQ(title->shownText(), whole + " ▾");
    for (const int width : {160, 120, 90}) {
      title->resize(width, title->height());
      EXPECT_TRUE(title->shownText().endsWith("… ▾")) << title->shownText().toStdString();
      EXPECT_LE(title->fontMetrics().horizontalAdvance(title->shownText()), width);
    }
    EXPECT_LE(title->minimumSizeHint().width(), 90) << "so that a narrow plot may be narrow";
  }
  EXPECT_EQ(seen, 1);
}

TEST(PlotCursors, AreTypedFollowedAndCopied) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  owl.open(PlotKind::step).action("cursors")->trigger();
  owl.plots().menu()->close();
  auto* dialog = owl.dialog<PlotCursors>();
  ASSERT_NE(dialog, nullptr);
  const auto type = [](QLineEdit* edit, const char* text) {
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, text);
    QTest::keyClick(edit, Qt::Key_Return);
  };
  type(dialog->placeOfA(), "120");
  type(dialog->placeOfB(), "50");
  ChartPlot& step = owl.chart(PlotKind::step);
  const double half_ms = 500 * owl.window.recompute().analysis()->of(Axis::pan).step.sample_time_s;
  EXPECT_NEAR(step.cursorPlace(ChartPlot::Cursor::a), 120, half_ms) << "at the nearest sample";
  EXPECT_NEAR(step.cursorPlace(ChartPlot::Cursor::b), 50, half_ms);
  EXPECT_DOUBLE_EQ(owl.chart(PlotKind::torque_speed).cursorPlace(ChartPlot::Cursor::b),
                   step.cursorPlace(ChartPlot::Cursor::b))
      << "linked by time, along the path";
  EXPECT_TRUE(dialog->table().contains("14.3")) << "1/70 ms: " << dialog->table().toStdString();
  EXPECT_EQ(dialog->table(), owl.plots().plot(PlotKind::step)->readout());
  type(dialog->placeOfA(), "soon");
  EXPECT_NEAR(step.cursorPlace(ChartPlot::Cursor::a), 120, half_ms) << "no number: nothing moves";
  EXPECT_EQ(dialog->placeOfA()->text(), "120");
  type(dialog->placeOfB(), " ");
  EXPECT_TRUE(std::isnan(step.cursorPlace(ChartPlot::Cursor::b))) << "empty takes it away";
  dialog->close();
}

TEST(PlotTable, ShowsTheDataOfEveryKindAndWhatThePlotSays) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  ASSERT_TRUE(owl.sweep());
  int with_table = 0;
  for (const PlotKind kind : plot_kinds()) {
    owl.plots().setKinds({kind, kind == PlotKind::step ? PlotKind::speed : PlotKind::step});
    owl.open(kind).action("table")->trigger();
    owl.plots().menu()->close();
    auto* dialog = owl.dialog<PlotTable>();
    ASSERT_NE(dialog, nullptr) << plot_key(kind).toStdString();
    const PlotView* plot = owl.plots().plot(kind);
    const auto tables = dialog->findChildren<QTableView*>();
    const QVector<QStringList> rows = csv_rows(plot->csv());
    if (rows[0].isEmpty()) {
      EXPECT_TRUE(tables.isEmpty());  // the words say why there is nothing
    } else {
      ++with_table;
      ASSERT_FALSE(tables.isEmpty()) << plot_key(kind).toStdString();
      EXPECT_EQ(tables[0]->model()->headerData(0, Qt::Horizontal).toString(), rows[0][0]);
      EXPECT_FALSE(tables[0]->accessibleName().isEmpty());
      const bool stacked = plot->charts().size() > 1;
      EXPECT_EQ(tables.size(), stacked ? 2 : 1) << plot_key(kind).toStdString();
      if (!stacked) {
        EXPECT_EQ(tables[0]->model()->rowCount(), rows.size() - 1);
      }
    }
    bool says = false;
    for (const QLabel* label : dialog->findChildren<QLabel*>())
      says = says || label->text() == plot->summary();
    EXPECT_TRUE(says) << plot_key(kind).toStdString();
    delete dialog;
  }
  EXPECT_GT(with_table, 14);
}

TEST(PlotView, SaysItsSummaryToAScreenReader) {
  PlotsWindow owl;
  ASSERT_TRUE(owl.settled);
  for (const PlotKind kind : owl.plots().kinds()) {
    PlotView* plot = owl.plots().plot(kind);
    QAccessibleInterface* spoken = QAccessible::queryAccessibleInterface(plot);
    ASSERT_NE(spoken, nullptr);
    EXPECT_EQ(spoken->text(QAccessible::Name), plot->title());
    EXPECT_EQ(spoken->text(QAccessible::Description), plot->summary());
  }
}

}  // namespace
}  // namespace gazewright
