#include <gtest/gtest.h>

#include <QLabel>
#include <QTableView>
#include <QToolButton>
#include <algorithm>

#include "app/plots/text.h"
#include "app/window/drive_line.h"
#include "app/window/empty_note.h"
#include "app/window/findings_view.h"
#include "app/window/guide_strip.h"
#include "app/window/missing_bar.h"
#include "app/window/parts.h"
#include "app/window/places.h"
#include "app/window/plots_panel.h"
#include "app/window/ratio_scale.h"
#include "app/window/settings.h"
#include "core/rig/fields.h"
#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

TEST(FirstSteps, InANewRigNothingIsDoneAndEachInputMakesItsStep) {
  const Analysis analysis;
  Rig rig = blank_rig();
  EXPECT_EQ(guide_state(rig, nullptr, analysis, false).count(), 0);
  const std::vector<std::pair<const char*, double>> task{{"task.pan_move", 0.7},
                                                         {"task.tilt_move", 0.4},
                                                         {"task.within", 0.2},
                                                         {"task.settle_band", 4}};
  for (const auto& [path, value] : task) {
    EXPECT_FALSE(guide_state(rig, nullptr, analysis, false).is_done(GuideStep::task)) << path;
    rig = with_value(rig, path, value);
  }
  EXPECT_TRUE(guide_state(rig, nullptr, analysis, false).is_done(GuideStep::task));
  EXPECT_EQ(guide_state(rig, nullptr, analysis, false).count(), 1);
}

TEST(FirstSteps, InASampleAStepIsDoneOnceItsValuesAreYours) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  const Rig sample = owl.rig();
  const Analysis& analysis = *owl.window.recompute().analysis();
  EXPECT_FALSE(guide_state(sample, &sample, analysis, false).is_done(GuideStep::masses));
  EXPECT_TRUE(guide_state(sample, nullptr, analysis, false).is_done(GuideStep::masses));
  const Rig mine = with_value(sample, "on_tilt[0].mass", 0.2);
  EXPECT_TRUE(guide_state(mine, &sample, analysis, false).is_done(GuideStep::masses));
  EXPECT_FALSE(guide_state(mine, &sample, analysis, false).is_done(GuideStep::ratios));
}

TEST(FirstSteps, FindingsAreMendedWhenNoneFails) {
  Analysis analysis;
  EXPECT_FALSE(guide_state({}, nullptr, analysis, false).is_done(GuideStep::findings));
  analysis.findings.resize(2);
  analysis.findings[0].verdict = Verdict::tight;
  analysis.findings[1].verdict = Verdict::holds;
  EXPECT_FALSE(guide_state({}, nullptr, analysis, false).is_done(GuideStep::findings))
      << "the moves are not known";
  for (const char* id : {"pan.step.settle_time", "tilt.step.settle_time"})
    analysis.figures.push_back({id, nullptr, 0.1, {}, false});
  EXPECT_TRUE(guide_state({}, nullptr, analysis, false).is_done(GuideStep::findings));
  analysis.findings[0].verdict = Verdict::fails;
  EXPECT_FALSE(guide_state({}, nullptr, analysis, false).is_done(GuideStep::findings));
}

TEST(FirstSteps, TheFirstStartShowsASampleWithTheStrip) {
  if (sample_files().isEmpty()) GTEST_FAIL() << "no samples";
  const QTemporaryDir folder;
  MainWindow window({.settings_file = folder.filePath("settings.ini"), .theme = "light"});
  window.openFirst();
  window.resize(1366, 768);
  window.show();
  EXPECT_EQ(window.document().rig().title, "Quick newt");
  EXPECT_TRUE(window.guide().isVisible());
  EXPECT_LT(window.guide().height(), 48);
  window.guide().closeButton()->click();
  EXPECT_FALSE(window.guide().isVisible());
  EXPECT_FALSE(Settings(folder.filePath("settings.ini")).wantsGuide());
  window.actions()["help.guide"]->trigger();
  EXPECT_TRUE(window.guide().isVisible());
}

TEST(FirstSteps, PutAwayTheyStayAwayOnTheNextStart) {
  const QTemporaryDir folder;
  Settings(folder.filePath("settings.ini")).setWantsGuide(false);
  MainWindow window({.settings_file = folder.filePath("settings.ini"), .theme = "light"});
  window.openFirst();
  window.show();
  EXPECT_FALSE(window.guide().isVisible());
}

TEST(FirstSteps, EachLeadsToItsPlace) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.actions()["help.guide"]->trigger();
  GuideStrip& guide = owl.window.guide();
  ASSERT_TRUE(guide.isVisible());
  guide.button(GuideStep::task)->click();
  EXPECT_EQ(owl.window.focusWidget(), owl.field("task.pan_move")->edit());
  guide.button(GuideStep::masses)->click();
  EXPECT_EQ(owl.window.focusWidget(), owl.field("on_tilt[0].mass")->edit());
  guide.button(GuideStep::parts)->click();
  EXPECT_EQ(owl.window.focusWidget(), owl.field("pan.motor.speed_constant")->edit());
  guide.button(GuideStep::ratios)->click();
  EXPECT_EQ(owl.window.focusWidget(), owl.window.driveLine(Axis::pan).ratioScale());
  EXPECT_EQ(owl.window.selected(), "pan.gearbox");
  guide.button(GuideStep::findings)->click();
  EXPECT_EQ(owl.window.focusWidget(), static_cast<QWidget*>(owl.window.findings().table()));
}

TEST(FirstSteps, AnEditTicksItsStepAndUndoTakesTheTickBack) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.actions()["help.guide"]->trigger();
  EXPECT_TRUE(owl.window.guide().state().is_done(GuideStep::parts));
  owl.window.document().edit("edit", with_quantity(owl.rig(), "supply.voltage", {}));
  ASSERT_TRUE(owl.settle());
  EXPECT_FALSE(owl.window.guide().state().is_done(GuideStep::parts));
  owl.window.document().history().undo();
  ASSERT_TRUE(owl.settle());
  EXPECT_TRUE(owl.window.guide().state().is_done(GuideStep::parts));
}

TEST(EmptyViews, ANewRigSaysWhatToDoEverywhere) {
  OwlWindow owl;
  owl.window.newRig();
  ASSERT_TRUE(owl.settle());
  EXPECT_TRUE(owl.window.missing().text().contains("inputs are missing; without them unknown: "))
      << owl.window.missing().text().toStdString();
  EXPECT_TRUE(owl.window.drawingNote().isHidden()) << "a new rig begins with a camera";
  owl.window.document().edit("edit", with_body_removed(owl.rig(), {.on_tilt = true, .index = 0}));
  ASSERT_TRUE(owl.settle());
  EXPECT_FALSE(owl.window.drawingNote().isHidden());
  owl.window.drawingNote().button()->click();
  EXPECT_EQ(owl.rig().on_tilt.size(), 1U);
  ASSERT_TRUE(owl.settle());
  EXPECT_TRUE(owl.window.drawingNote().isHidden());
  for (const PlotKind kind : owl.window.plots().kinds()) {
    EXPECT_FALSE(owl.window.plots().plot(kind)->summary().isEmpty());
  }
}

/// A nearly empty rig says which few to begin with, by part and with what waits for each; each
/// leads to the card of its part and to the field.
TEST(EmptyViews, TheMissingBarNamesTheFewToBeginWithAndLeadsToEach) {
  OwlWindow owl;
  owl.window.newRig();
  ASSERT_TRUE(owl.settle());
  const MissingInputs missing = missing_inputs(*owl.window.recompute().analysis());
  ASSERT_FALSE(missing.are_few());
  const QString text = owl.window.missing().text();
  EXPECT_TRUE(text.contains(QString("? %1 inputs are missing").arg(missing.all.size())))
      << text.toStdString();
  EXPECT_TRUE(text.contains("Fill in first, then nothing else is missing for "))
      << text.toStdString();
  for (const MissingEntry& entry : missing.first) {
    const QString title = part_title(owl.rig(), card_of(entry.path));
    EXPECT_TRUE(text.contains(title + ":")) << title.toStdString() << " in " << text.toStdString();
    if (const FieldInfo* info = find_info(entry.path)) {
      EXPECT_TRUE(text.contains(
          QString("%1 (%2)").arg(mid_sentence(worded(info->label))).arg(entry.waiting())))
          << entry.path << " in " << text.toStdString();
      emit owl.window.missing().label()->linkActivated(QString::fromStdString(entry.path));
      EXPECT_EQ(owl.window.selected().toStdString(), card_of(entry.path));
      EXPECT_EQ(owl.window.focusWidget(), owl.field(entry.path.c_str())->edit()) << entry.path;
      emit owl.window.missing().label()->linkHovered(QString::fromStdString(entry.path));
      EXPECT_TRUE(
          owl.window.missing().label()->toolTip().contains(QString("%1 f").arg(entry.figures)));
    }
  }
}

TEST(EmptyViews, TheMissingBarLeadsToTheCostliestEntryAndGoesWhenAllIsThere) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  EXPECT_TRUE(owl.window.missing().isHidden());
  owl.window.document().edit("edit", with_quantity(owl.rig(), "supply.voltage", {}));
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(owl.window.missing().path(), "supply.voltage");
  owl.window.missing().button()->click();
  EXPECT_EQ(owl.window.focusWidget(), owl.field("supply.voltage")->edit());
  owl.type("supply.voltage", "24 V");
  ASSERT_TRUE(owl.settle());
  EXPECT_TRUE(owl.window.missing().isHidden());
}

/// Whatever waits, a press leads to where it is entered, and enters nothing itself.
TEST(EmptyViews, EveryMissingEntryIsEnteredOnTheCardThatThePressShows) {
  OwlWindow owl;
  owl.window.newRig();
  Rig bare = owl.rig();
  bare.on_tilt.clear();
  for (const Axis axis : kAxes) bare.axis(axis).stops.presence = Presence::missing;
  owl.window.document().edit("less", bare);
  ASSERT_TRUE(owl.settle());
  const Rig before = owl.rig();
  const MissingInputs missing = missing_inputs(*owl.window.recompute().analysis());
  const auto lacks = [&](const char* path) {
    return std::ranges::find(missing.all, path, &MissingEntry::path) != missing.all.end();
  };
  ASSERT_TRUE(lacks("on_tilt") && lacks("on_pan") && lacks("tilt.axis_at") && lacks("pan.stops"));
  for (const MissingEntry& entry : missing.all) {
    owl.window.driveLine(Axis::pan).ratioScale()->setFocus();
    emit owl.window.missing().fieldChosen(QString::fromStdString(entry.path));
    const QWidget* focus = owl.window.focusWidget();
    EXPECT_EQ(owl.window.selected().toStdString(), card_of(entry.path));
    EXPECT_TRUE(focus && owl.window.card().isAncestorOf(focus) && focus->isVisible())
        << entry.path << ": " << (focus ? focus->objectName().toStdString() : "no focus");
    EXPECT_EQ(owl.rig(), before) << entry.path;
  }
  emit owl.window.missing().fieldChosen("on_tilt");
  EXPECT_EQ(owl.window.focusWidget()->objectName(), "body.add");
  emit owl.window.missing().fieldChosen("tilt.axis_at");
  EXPECT_EQ(owl.window.focusWidget(), owl.field("tilt.axis_at[0]")->edit());
}

}  // namespace
}  // namespace gazewright
