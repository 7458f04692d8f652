#include <gtest/gtest.h>

#include <QClipboard>
#include <QGuiApplication>
#include <QLabel>
#include <QRegularExpression>
#include <QTableView>
#include <QTextBlock>
#include <QTextBrowser>
#include <QToolButton>

#include "app/plots/format.h"
#include "app/window/drive_line.h"
#include "app/window/explain_text.h"
#include "app/window/explainer.h"
#include "app/window/figures_model.h"
#include "app/window/figures_window.h"
#include "app/window/findings_view.h"
#include "app/window/parts.h"
#include "app/window/ratio_scale.h"
#include "app/window/tile.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// F2 as the window takes it: its action, with the focus where the user has it.
void press_why(OwlWindow& owl, QWidget* at) {
  at->setFocus();
  owl.window.actions()["show.why"]->trigger();
}

/// No-break spaces come out of a text document as plain ones.
QString plain(QString text) { return text.replace(QChar(0x202F), ' ').replace(QChar(0x00A0), ' '); }

QString shown(OwlWindow& owl) {
  return plain(owl.window.explainer().figures()->text()->toPlainText());
}

TEST(Why, ExplainsTheSelectedFinding) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  QTableView* table = owl.window.findings().table();
  table->selectRow(0);
  const Finding finding = owl.window.recompute().analysis()->findings.front();
  press_why(owl, table);
  const QString text = shown(owl);
  EXPECT_TRUE(text.contains(QString::fromStdString(finding.what))) << text.toStdString();
  EXPECT_TRUE(text.contains(plain(format_value(finding.demand, finding.si_unit, finding.unit))))
      << text.toStdString();
  EXPECT_TRUE(text.contains("Inputs"));
}

TEST(Why, TheButtonBesideTheFindingsDoesTheSame) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.findings().table()->selectRow(1);
  owl.window.findings().findChild<QToolButton*>("findings.why")->click();
  const Finding& finding = owl.window.recompute().analysis()->findings[1];
  EXPECT_TRUE(shown(owl).contains(QString::fromStdString(finding.what)));
}

TEST(Why, WithoutFocusExplainsTheWorstFinding) {
  OwlWindow owl;
  owl.window.document().edit("hard task", with_value(owl.rig(), "supply.current_limit", 6));
  ASSERT_TRUE(owl.settle());
  if (QWidget* focus = owl.window.focusWidget()) focus->clearFocus();
  owl.window.actions()["show.why"]->trigger();
  const Finding worst = owl.window.recompute().analysis()->findings.front();
  EXPECT_EQ(worst.verdict, Verdict::fails);
  EXPECT_TRUE(shown(owl).contains(QString::fromStdString(worst.what))) << shown(owl).toStdString();
}

TEST(Why, OnATileListsItsFiguresAndExplainsTheFirst) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  press_why(owl, owl.window.driveLine(Axis::tilt).tile("tilt.motor"));
  const FiguresWindow* figures = owl.window.explainer().figures();
  ASSERT_NE(figures, nullptr);
  EXPECT_EQ(figures->table()->model()->rowCount(), 2);
  const QString text = shown(owl);
  EXPECT_TRUE(text.contains("Torque constant")) << text.toStdString();
  // Kt = (√3/2)·60/(2π·410) = 20.17 mN·m/A; design section 3.
  EXPECT_TRUE(text.contains(QString::fromUtf8("20.2 mN·m/A"))) << text.toStdString();
  EXPECT_TRUE(text.contains("0.02017")) << "all digits in SI: " << text.toStdString();
}

TEST(Why, TellsWhereEachInputIsFrom) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  press_why(owl, owl.window.driveLine(Axis::pan).tile("pan.gearbox"));
  // In the owl's file the efficiency is from the datasheet, with a spread; all else is unstated.
  const QString text = shown(owl);
  EXPECT_TRUE(text.contains("datasheet")) << text.toStdString();
  EXPECT_TRUE(text.contains(QString::fromUtf8("±5"))) << text.toStdString();
  EXPECT_TRUE(text.contains("source not stated"));
}

TEST(Why, AnInputLeadsToItsField) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  press_why(owl, owl.window.driveLine(Axis::pan).tile("pan.motor"));
  QTextBrowser* text = owl.window.explainer().figures()->text();
  emit text->anchorClicked(QUrl("field:pan.motor.speed_constant"));
  EXPECT_EQ(owl.window.selected(), "pan.motor");
  EXPECT_EQ(owl.window.focusWidget(), owl.field("pan.motor.speed_constant")->edit());
}

/// Every link of every explanation leads somewhere.
TEST(Why, EveryFigureOfTheRigIsExplainedAndItsLinksHold) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  const auto& analysis = *owl.window.recompute().analysis();
  const std::vector<PartEntry> parts = all_parts(owl.rig());
  const QRegularExpression link(QStringLiteral("href=\"field:([^\"]*)\""));
  for (const Figure& figure : analysis.figures) {
    const auto why = explain(owl.rig(), analysis, figure.id);
    ASSERT_TRUE(why) << figure.id;
    const QString html = explanation_of(*why, owl.rig());
    EXPECT_TRUE(html.contains(QString::fromStdString(figure.id))) << figure.id;
    auto links = link.globalMatch(html);
    while (links.hasNext()) {
      const std::string path = links.next().captured(1).toStdString();
      const bool leads = std::ranges::find(parts, card_of(path), &PartEntry::part) != parts.end();
      EXPECT_TRUE(leads) << figure.id << " needs " << path;
    }
  }
}

TEST(Why, OnAFieldListsWhatStandsOnIt) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.select("pan.gearbox");
  press_why(owl, owl.field("pan.gearbox.backlash")->edit());
  const QString text = shown(owl);
  EXPECT_TRUE(text.contains("Backlash")) << text.toStdString();
  EXPECT_TRUE(text.contains("What stands on it")) << text.toStdString();
  EXPECT_GT(owl.window.explainer().figures()->table()->model()->rowCount(), 3);
}

TEST(Why, CopiesAsPlainText) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  press_why(owl, owl.window.driveLine(Axis::pan).tile("pan.load"));
  for (QToolButton* button : owl.window.explainer().figures()->findChildren<QToolButton*>()) {
    if (button->text() == "Copy") button->click();
  }
  const QString copied = QGuiApplication::clipboard()->text();
  EXPECT_TRUE(copied.contains("pan.inertia.load")) << copied.toStdString();
  EXPECT_FALSE(copied.contains("<b>"));
}

TEST(AllFigures, AreSearchedByWordsInAnyOrder) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.actions()["show.figures"]->trigger();
  FiguresWindow* figures = owl.window.explainer().figures();
  const auto* model = figures->table()->model();
  EXPECT_EQ(model->rowCount(), static_cast<int>(owl.window.recompute().analysis()->figures.size()));
  QTest::keyClicks(figures->search(), "time shortest tilt");
  ASSERT_GE(model->rowCount(), 1);
  EXPECT_EQ(model->index(0, FiguresModel::name).data().toString(), "Shortest time of the move");
  EXPECT_TRUE(shown(owl).contains("tilt.move.shortest_time"));
  figures->search()->setText("no such figure at all");
  EXPECT_EQ(model->rowCount(), 0);
}

TEST(AllFigures, FollowAnEditWhileTheyAreOpen) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  press_why(owl, owl.window.driveLine(Axis::pan).tile("pan.motor"));
  const QString before = shown(owl);
  owl.window.document().edit("edit", with_value(owl.rig(), "pan.motor.speed_constant", 30));
  ASSERT_TRUE(owl.settle());
  EXPECT_NE(shown(owl), before);
}

TEST(MissingCost, NamesTheFiguresUnderTheField) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.peak_torque", " ");
  ASSERT_TRUE(owl.settle());
  QString told;
  for (const QLabel* label : owl.field("pan.gearbox.peak_torque")->findChildren<QLabel*>()) {
    if (label->isVisible() && label->text().contains("without it")) told = label->text();
  }
  EXPECT_TRUE(told.contains("figures are unknown: ")) << told.toStdString();
}

TEST(RefusedEntry, StaysInPlaceWithTheRangeAndTheLastValue) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  const Rig before = owl.rig();
  QuantityField* field = owl.type("pan.gearbox.efficiency", "130 %");
  EXPECT_EQ(owl.rig(), before);
  const QString text = field->errorText();
  EXPECT_TRUE(text.contains("write a value above 0 and up to 1")) << text.toStdString();
  EXPECT_TRUE(text.contains("Still")) << text.toStdString();
  EXPECT_EQ(field->edit()->text(), "130 %") << "what was typed stays to be mended";
  QTest::keyClick(field->edit(), Qt::Key_Escape);
  EXPECT_TRUE(field->errorText().isEmpty());
}

TEST(RatioScaleWords, NameTheLimitOnEachSide) {
  OwlWindow owl;
  ASSERT_TRUE(owl.sweep());
  const RatioScale* scale = owl.window.driveLine(Axis::pan).ratioScale();
  EXPECT_EQ(scale->below(), "drive current");
  EXPECT_FALSE(scale->above().isEmpty());
  EXPECT_TRUE(scale->accessibleDescription().contains("run out of drive current"))
      << scale->accessibleDescription().toStdString();
}

TEST(RatioScaleWords, ADigitGoesToTheField) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  RatioScale* scale = owl.window.driveLine(Axis::tilt).ratioScale();
  scale->setFocus();
  QTest::keyClick(scale, Qt::Key_2);
  QuantityField* field = owl.field("tilt.gearbox.ratio");
  ASSERT_NE(field, nullptr);
  EXPECT_EQ(owl.window.focusWidget(), field->edit());
  QTest::keyClick(field->edit(), Qt::Key_4);
  QTest::keyClick(field->edit(), Qt::Key_Return);
  EXPECT_DOUBLE_EQ(*owl.rig().tilt.gearbox.ratio.si, 24);
}

}  // namespace
}  // namespace gazewright
