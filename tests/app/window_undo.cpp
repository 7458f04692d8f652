#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "tests/app/window_support.h"

namespace gazewright {
namespace {

using tests::OwlWindow;

/// One change of the kind that cards, scales and remedies make, chosen at random.
Rig random_edit(const Rig& rig, std::mt19937& random) {
  const auto pick = [&](int count) {
    return std::uniform_int_distribution<int>(0, count - 1)(random);
  };
  const double factor = std::pow(10.0, std::uniform_real_distribution<double>(-0.5, 0.5)(random));
  switch (pick(9)) {
    case 0:
      return with_value(rig, "pan.gearbox.ratio", *rig.pan.gearbox.ratio.si * factor);
    case 1:
      return with_value(rig, "supply.voltage", 24 * factor);
    case 2:
      return with_quantity(rig, "tilt.motor.mass", Quantity{});
    case 3:
      return with_gearboxes_swapped(rig);
    case 4:
      return with_new_body(rig, pick(2) == 1);
    case 5:
      return rig.on_tilt.empty() ? rig : with_body_removed(rig, {true, 0});
    case 6:
      return with_presence(rig, "pan.cable", static_cast<Presence>(pick(3)));
    case 7:
      return with_text(rig, "title", "owl " + std::to_string(pick(1000)));
    default:
      return rig.on_pan.empty() ? rig
                                : with_shape(rig, {false, 0}, static_cast<std::size_t>(pick(6)));
  }
}

TEST(WindowUndo, RandomEditsUndoneReturnToTheStartAndRedoneToTheEnd) {
  OwlWindow owl;
  const Rig start = owl.rig();
  std::mt19937 random(20240607);
  QUndoStack& history = owl.window.document().history();
  const char* parts[] = {"pan.gearbox", "tilt.motor", "on_tilt[0]", "pan.cable", "rig"};
  for (int round = 0; round < 3; ++round) {
    for (int i = 0; i < 40; ++i) {
      owl.window.document().edit("edit", random_edit(owl.rig(), random));
      owl.window.select(QString::fromUtf8(parts[static_cast<std::size_t>(i) % std::size(parts)]));
      if (i % 7 == 0) history.undo();
      if (i % 14 == 0) history.redo();
    }
    const Rig end = owl.rig();
    while (history.canUndo()) history.undo();
    EXPECT_EQ(owl.rig(), start);
    EXPECT_FALSE(owl.window.isWindowModified());
    while (history.canRedo()) history.redo();
    EXPECT_EQ(owl.rig(), end);
    while (history.canUndo()) history.undo();
    QCoreApplication::processEvents();
  }
  ASSERT_TRUE(owl.settle());
  EXPECT_EQ(owl.window.recompute().analysedRig(), start);
}

TEST(WindowUndo, TheActionNamesWhatItUndoes) {
  OwlWindow owl;
  owl.window.select("pan.gearbox");
  owl.type("pan.gearbox.backlash", "8 arcmin");
  EXPECT_EQ(owl.window.actions()["edit.undo"]->text(), "&Undo pan gearbox: backlash");
  owl.window.actions()["edit.undo"]->trigger();
  EXPECT_EQ(owl.window.actions()["edit.redo"]->text(), "&Redo pan gearbox: backlash");
  EXPECT_FALSE(owl.window.actions()["edit.undo"]->isEnabled());
}

TEST(WindowUndo, ADragBackToWhereItBeganLeavesNoStep) {
  OwlWindow owl;
  const Rig before = owl.rig();
  const int id = Document::newDragId();
  owl.window.document().edit("drag", with_value(owl.rig(), "pan.gearbox.ratio", 20), id);
  owl.window.document().edit("drag", with_value(owl.rig(), "pan.gearbox.ratio", 22), id);
  owl.window.document().edit("drag", before, id);
  EXPECT_EQ(owl.window.document().history().count(), 0);
  EXPECT_FALSE(owl.window.isWindowModified());
}

TEST(WindowUndo, TwoDragsAreTwoSteps) {
  OwlWindow owl;
  for (double ratio : {20.0, 22.0}) {
    owl.window.document().edit("drag", with_value(owl.rig(), "pan.gearbox.ratio", ratio),
                               Document::newDragId());
  }
  EXPECT_EQ(owl.window.document().history().count(), 2);
}

}  // namespace
}  // namespace gazewright
