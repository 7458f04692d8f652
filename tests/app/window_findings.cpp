#include <gtest/gtest.h>

#include <QLabel>
#include <QRegularExpression>
#include <QSignalSpy>
#include <QTableView>
#include <algorithm>

#include "app/plots/charts.h"
#include "app/window/findings_model.h"
#include "app/window/findings_view.h"
#include "app/window/message_bar.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

Finding finding(const char* id, Verdict verdict) {
  Finding made;
  made.id = id;
  made.what = id;
  made.verdict = verdict;
  made.part = "pan.gearbox";
  return made;
}

TEST(Findings, AreCountedInWords) {
  FindingsView view;
  view.setFindings({finding("a", Verdict::fails), finding("b", Verdict::fails),
                    finding("c", Verdict::tight), finding("d", Verdict::holds)},
                   true);
  EXPECT_EQ(view.summary(), "2 fail, 1 tight, 1 holds");
}

TEST(Findings, ARowIsPaintedAgainOnlyWhereItSaysSomethingElse) {
  FindingsView view;
  std::vector<Finding> findings{finding("a", Verdict::fails), finding("b", Verdict::tight),
                                finding("c", Verdict::holds)};
  view.setFindings(findings, false);
  const QSignalSpy changed(view.table()->model(), &QAbstractItemModel::dataChanged);
  const QSignalSpy reset(view.table()->model(), &QAbstractItemModel::modelReset);
  findings[1].margin = 0.1;
  view.setFindings(findings, false);
  ASSERT_EQ(changed.size(), 1);
  EXPECT_EQ(changed[0][0].toModelIndex().row(), 1);
  EXPECT_EQ(changed[0][1].toModelIndex().row(), 1);
  view.setFindings(findings, true);  // its remedies are in now: each may have some
  EXPECT_EQ(changed.size(), 1 + 3);
  EXPECT_EQ(reset.size(), 0);
  EXPECT_EQ(view.table()->model()->index(1, FindingsModel::margin).data().toString(), "+10\u202f%");
}

/// The first finding with a remedy that changes a field.
int row_with_remedy(const std::vector<Finding>& findings, bool fails) {
  for (std::size_t row = 0; row < findings.size(); ++row) {
    const auto& remedies = findings[row].remedies;
    if (fails && findings[row].verdict != Verdict::fails) continue;
    if (!remedies.empty() && !remedies[0].path.empty()) return static_cast<int>(row);
  }
  return -1;
}

TEST(Findings, PressingARemedyAppliesItAndUndoTakesItBack) {
  OwlWindow owl;
  owl.window.document().edit("hard task", with_value(owl.rig(), "supply.current_limit", 6));
  ASSERT_TRUE(owl.settle());
  const std::vector<Finding> findings = owl.window.recompute().analysis()->findings;
  const int row = row_with_remedy(findings, true);
  ASSERT_GE(row, 0) << "the owl on 6 A has nothing to mend";
  const Finding& failing = findings[static_cast<std::size_t>(row)];
  const Rig before = owl.rig();

  QTableView* table = owl.window.findings().table();
  const QModelIndex cell = table->model()->index(row, FindingsModel::remedy);
  table->scrollTo(cell);
  const QPoint at(table->visualRect(cell).left() + 14, table->visualRect(cell).center().y());
  QTest::mouseClick(table->viewport(), Qt::LeftButton, {}, at);
  const Remedy& remedy = failing.remedies[0];
  EXPECT_EQ(owl.rig(), with_remedy(before, remedy));
  EXPECT_NE(owl.rig(), before);

  ASSERT_TRUE(owl.settle());
  for (const Finding& now : owl.window.recompute().analysis()->findings) {
    if (now.id == failing.id) {
      EXPECT_NE(now.verdict, Verdict::fails) << remedy.text;
    }
  }
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
}

TEST(Findings, SelectingOneShowsThePartsCard) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.select("camera");
  QTableView* table = owl.window.findings().table();
  for (int row = 0; row < table->model()->rowCount(); ++row) {
    table->setCurrentIndex(table->model()->index(row, 0));
    const std::string part =
        owl.window.recompute().analysis()->findings[static_cast<std::size_t>(row)].part;
    owl.window.select(QString::fromStdString(part));
    const QString wanted = owl.window.selected();
    owl.window.select("camera");
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {},
                      table->visualRect(table->model()->index(row, 2)).center());
    EXPECT_EQ(owl.window.selected(), wanted) << part;
  }
}

TEST(Findings, TheSwapRemedyExchangesTheGearboxes) {
  OwlWindow owl;
  const Rig before = owl.rig();
  Remedy swap;
  swap.path = "swap";
  const Rig after = with_remedy(before, swap);
  EXPECT_EQ(after.pan.gearbox, before.tilt.gearbox);
  EXPECT_EQ(after.tilt.gearbox, before.pan.gearbox);
  EXPECT_EQ(with_remedy(after, swap), before);
  swap.also = {{"pan.loop.speed_gain", 2.5}};
  EXPECT_EQ(with_remedy(before, swap), with_value(after, "pan.loop.speed_gain", 2.5));
}

TEST(Findings, TheSwapOfTheMenuSaysThatTheGainsAreThoseOfBefore) {
  OwlWindow owl;
  const Rig before = owl.rig();
  owl.window.actions()["axis.swap"]->trigger();
  EXPECT_EQ(owl.rig(), with_gearboxes_swapped(before));
  EXPECT_TRUE(owl.window.messages().text().contains("the gains are still those of before"))
      << owl.window.messages().text().toStdString();
}

TEST(Findings, StayInTheOrderOfTheAnalysisAndKeepTheSelection) {
  FindingsView view;
  view.setFindings({finding("a", Verdict::fails), finding("b", Verdict::holds)}, true);
  view.table()->selectRow(0);
  view.setFindings({finding("b", Verdict::tight), finding("a", Verdict::holds)}, true);
  EXPECT_EQ(view.table()->currentIndex().row(), 1);
}

TEST(Findings, StayWhereTheyAreScrolledToWhenTheSelectedOneIsMendedAndGoesDown) {
  FindingsView view;
  view.resize(900, 220);
  view.show();
  std::vector<Finding> before(30, finding("f", Verdict::fails));
  for (std::size_t i = 0; i < before.size(); ++i) before[i].id += std::to_string(i);
  before[1].id = "mended";
  std::vector<Finding> after = before;
  after[1].verdict = Verdict::holds;
  std::rotate(after.begin() + 1, after.begin() + 2, after.end());
  view.setFindings(before, true);
  view.table()->selectRow(1);
  view.setFindings(after, false);
  after.push_back(finding("of the full analysis", Verdict::holds));
  view.setFindings(after, true);
  EXPECT_EQ(view.table()->currentIndex().row(), 29);
  EXPECT_EQ(view.table()->rowAt(2), 0) << "the worst ones are in view";
  view.table()->selectRow(25);
  const int top = view.table()->rowAt(2);
  ASSERT_GT(top, 0);
  view.setFindings(before, true);
  EXPECT_EQ(view.table()->rowAt(2), top);
}

TEST(Findings, MarkVerdictsWithinTheDoubtUntilTheNextOnesCome) {
  FindingsView view;
  const std::vector<Finding> findings{finding("a", Verdict::holds), finding("b", Verdict::holds)};
  view.setFindings(findings, true);
  view.table()->selectRow(0);
  const QAbstractItemModel& model = *view.table()->model();
  const QString sure = model.index(0, FindingsModel::verdict).data().toString();
  view.setOpen({{"a", "holds, but within the doubt: 42 ms left, ±393 ms", {}}});
  EXPECT_EQ(model.index(0, FindingsModel::verdict).data().toString(), sure + " ±");
  EXPECT_TRUE(model.index(0, FindingsModel::remedy).data().toString().startsWith("holds, but "));
  EXPECT_EQ(model.index(1, FindingsModel::verdict).data().toString(), sure);
  EXPECT_TRUE(view.findChild<QLabel*>("findings.because")->text().startsWith("holds, but within"));
  view.setFindings(findings, true);
  EXPECT_EQ(model.index(0, FindingsModel::verdict).data().toString(), sure);
}

/// People read labels; the keys of the file are in the tool tip.
TEST(Findings, NameWhatIsMissingByItsLabelAndTheKeyInTheTip) {
  OwlWindow owl;
  Rig rig = owl.rig();
  for (Quantity& place : rig.tilt_axis_at_m) place = {};
  rig.on_tilt[1].mass_kg = {};
  owl.window.document().edit("less", rig);
  ASSERT_TRUE(owl.settle());
  const QAbstractItemModel& model = *owl.window.findings().table()->model();
  const QRegularExpression key("\\b(pan|tilt|on_pan|on_tilt)(\\[|\\.[a-z])");
  bool is_place_said = false;
  for (int row = 0; row < model.rowCount(); ++row) {
    const QString said = model.index(row, FindingsModel::remedy).data().toString();
    const QString tip = model.index(row, FindingsModel::remedy).data(Qt::ToolTipRole).toString();
    EXPECT_FALSE(said.contains(key)) << said.toStdString();
    if (!said.contains("the place of the tilt axis")) continue;
    is_place_said = true;
    EXPECT_TRUE(tip.contains("the place of the tilt axis")) << tip.toStdString();
    EXPECT_TRUE(tip.contains("In the rig file: ") && tip.contains("tilt.axis_at"))
        << tip.toStdString();
  }
  EXPECT_TRUE(is_place_said);
  for (const Figure& figure : owl.window.recompute().analysis()->figures)
    EXPECT_FALSE(reason_text(figure.because).contains(key))
        << reason_text(figure.because).toStdString();
}

}  // namespace
}  // namespace gazewright
