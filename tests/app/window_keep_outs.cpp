#include <gtest/gtest.h>

#include <QLabel>
#include <QMouseEvent>
#include <QTableView>
#include <QToolButton>

#include "app/plots/reach_plot.h"
#include "app/window/edits.h"
#include "app/window/findings_model.h"
#include "app/window/findings_view.h"
#include "app/window/parts.h"
#include "app/window/plots_panel.h"
#include "core/units/angle.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

struct KeepOutOwl : OwlWindow {
  KeepOutOwl() {
    window.plots().setKinds({PlotKind::reach, PlotKind::step});
    QCoreApplication::processEvents();
  }

  void press(const char* name) {
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    for (auto* button : window.findChildren<QToolButton*>(QLatin1String(name))) {
      if (button->isVisible()) return button->click();
    }
    ADD_FAILURE() << name << " is not there";
  }
  ReachPlot& map() { return *static_cast<ReachPlot*>(window.plots().plot(PlotKind::reach)); }
  bool mapped() {
    return QTest::qWaitFor(
        [this] { return !window.recompute().isBehind() && !window.recompute().isReachBehind(); },
        tests::kPatience_ms);
  }
};

TEST(KeepOuts, AreAddedNamedEnteredAndRemovedEachInOneUndoStep) {
  KeepOutOwl owl;
  const Rig before = owl.rig();
  owl.press("plot.link");
  EXPECT_EQ(owl.window.selected(), "keep_outs");
  owl.press("keep_out.add");
  ASSERT_EQ(owl.rig().keep_outs.size(), 1u);
  EXPECT_EQ(owl.window.selected(), "keep_outs");
  auto* name = owl.window.card().findChild<QLineEdit*>("keep_outs[0].name");
  ASSERT_NE(name, nullptr);
  name->setFocus();
  name->selectAll();
  QTest::keyClicks(name, "lamp post");
  QTest::keyClick(name, Qt::Key_Return);
  EXPECT_EQ(owl.rig().keep_outs[0].name, "lamp post");
  ASSERT_NE(owl.type("keep_outs[0].pan[0]", "-20"), nullptr);
  ASSERT_NE(owl.type("keep_outs[0].pan[1]", "0.1 rad"), nullptr);
  ASSERT_NE(owl.type("keep_outs[0].tilt[1]", "70 deg"), nullptr);
  const KeepOut& lamp = owl.rig().keep_outs[0];
  EXPECT_NEAR(*lamp.pan_rad[0].si, -20 * kDegree_rad, 1e-12);
  EXPECT_NEAR(*lamp.pan_rad[1].si, 0.1, 1e-12);
  EXPECT_NEAR(*lamp.tilt_rad[1].si, 70 * kDegree_rad, 1e-12);
  EXPECT_EQ(owl.window.document().history().count(), 5);
  const Rig entered = owl.rig();

  owl.press("keep_out.remove");
  EXPECT_TRUE(owl.rig().keep_outs.empty());
  EXPECT_EQ(owl.window.document().history().undoText(), "remove lamp post");
  owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), entered);
  for (int i = 0; i < 5; ++i) owl.window.document().history().undo();
  EXPECT_EQ(owl.rig(), before);
}

TEST(KeepOuts, RefuseAnEndBelowTheBeginningBesideTheField) {
  KeepOutOwl owl;
  owl.window.document().edit("keep-out", with_new_keep_out(owl.rig()));
  owl.window.select("keep_outs[0]");
  const Rig before = owl.rig();
  for (const auto& [path, entry] : {std::pair{"keep_outs[0].pan[0]", "15.5"},
                                    {"keep_outs[0].pan[1]", "-16 deg"},
                                    {"keep_outs[0].tilt[1]", "29"}}) {
    const QuantityField* field = owl.type(path, entry);
    ASSERT_NE(field, nullptr) << path;
    EXPECT_EQ(owl.rig(), before) << path;
    EXPECT_TRUE(field->errorText().contains("below where it begins"))
        << field->errorText().toStdString();
    EXPECT_TRUE(field->errorText().contains("Still")) << field->errorText().toStdString();
    QTest::keyClick(field->edit(), Qt::Key_Escape);
  }
  for (const char* entry : {"far", "3 kg", "4000 deg"}) {
    const QuantityField* field = owl.type("keep_outs[0].pan[0]", entry);
    EXPECT_EQ(owl.rig(), before) << entry;
    EXPECT_FALSE(field->errorText().isEmpty()) << entry;
  }
}

TEST(KeepOuts, HaveEveryFieldOnTheirCardWithFromAndTo) {
  KeepOutOwl owl;
  owl.window.document().edit("two", with_new_keep_out(with_new_keep_out(owl.rig())));
  owl.window.select("keep_outs[1]");
  Rig rig = owl.rig();
  const auto fields = fields_under(rig, "keep_outs");
  ASSERT_EQ(fields.size(), 10u);
  for (const FieldRef& field : fields) {
    const QString row = QString::fromStdString(path_of(field) + " row");
    EXPECT_NE(owl.window.card().findChild<CardRow*>(row), nullptr) << row.toStdString();
  }
  QStringList labels;
  for (const QLabel* label : owl.window.card().findChildren<QLabel*>()) labels << label->text();
  for (const char* label : {"Pan from", "Pan to", "Tilt from", "Tilt to"}) {
    EXPECT_EQ(labels.count(label), 2) << label;
  }
  const auto parts = all_parts(rig);
  EXPECT_TRUE(std::ranges::any_of(
      parts, [](const PartEntry& entry) { return entry.title == "Keep-outs"; }));
}

TEST(KeepOuts, TheFindingLeadsToTheirCardAndTheMenuAddsOne) {
  KeepOutOwl owl;
  owl.window.actions()["edit.keep_out"]->trigger();
  EXPECT_EQ(owl.window.selected(), "keep_outs");
  ASSERT_EQ(owl.rig().keep_outs.size(), 1u);
  ASSERT_TRUE(owl.settle());
  owl.window.select("camera");
  const auto& findings = owl.window.recompute().analysis()->findings;
  const auto at = std::ranges::find(findings, "tilt.travel.keep_out", &Finding::id);
  ASSERT_NE(at, findings.end());
  QTableView* table = owl.window.findings().table();
  table->setCurrentIndex(table->model()->index(int(at - findings.begin()), 0));
  EXPECT_EQ(owl.window.selected(), "keep_outs");
}

void press_map(ReachPlot& plot, double pan_deg, double tilt_deg) {
  const ReachGrid grid = plot.grid();
  const QPointF at(grid.x(pan_deg * kDegree_rad), grid.y(tilt_deg * kDegree_rad));
  QMouseEvent event(QEvent::MouseButtonPress, at, plot.mapToGlobal(at), Qt::LeftButton,
                    Qt::LeftButton, Qt::NoModifier);
  QCoreApplication::sendEvent(&plot, &event);
}

TEST(KeepOuts, APressOnTheMapShowsTheCardOfWhatLimitsThere) {
  KeepOutOwl owl;
  Rig rig = with_new_keep_out(owl.rig());  // pan ±15°, tilt 30° to 60°
  rig.keep_outs.insert(rig.keep_outs.begin(), KeepOut{"unfinished", {}, {}});
  owl.window.document().edit("keep-out", rig);
  ASSERT_TRUE(owl.mapped());
  QCoreApplication::processEvents();
  ReachPlot& map = owl.map();
  const auto place = map.placeAt({map.grid().x(0.1), map.grid().y(45 * kDegree_rad)});
  ASSERT_TRUE(place);
  EXPECT_EQ(place->limit, PoseLimit::keep_out);
  EXPECT_EQ(place->part, "keep_outs[1]") << "the first one has no ends yet";
  press_map(map, 5, 45);
  EXPECT_EQ(owl.window.selected(), "keep_outs");
  press_map(map, 170, 0);  // the stops are at 160°
  EXPECT_EQ(owl.window.selected(), "pan.stops");
  press_map(map, 0, 0);
  EXPECT_EQ(owl.window.selected(), "pan.stops") << "nothing limits there";
}

}  // namespace
}  // namespace gazewright
