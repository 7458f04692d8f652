#include <gtest/gtest.h>

#include "app/window/plan_row.h"
#include "tests/app/window_support.h"

namespace gazewright::tests {
namespace {

const PlanRow* plan_of(OwlWindow& owl, const char* name) {
  return owl.window.card().findChild<PlanRow*>(QString::fromUtf8(name));
}

TEST(WindowHoming, ThePlanStandsOnTheCardOfTheStopsAndFollowsAnEntry) {
  OwlWindow owl;
  ASSERT_TRUE(owl.settle());
  owl.window.select("pan.homing");
  EXPECT_EQ(owl.window.selected(), "pan.stops");
  const PlanRow* row = plan_of(owl, "pan.homing plan");
  ASSERT_NE(row, nullptr);
  EXPECT_TRUE(row->text().contains("enter a homing current")) << row->text().toStdString();
  ASSERT_NE(owl.type("pan.homing.current", "2 A"), nullptr);
  ASSERT_TRUE(owl.settle());
  row = plan_of(owl, "pan.homing plan");
  EXPECT_TRUE(row->text().contains("with at most 2 A (window")) << row->text().toStdString();
}

TEST(WindowHoming, ItNamesWhatIsMissingByTheFieldsLabel) {
  OwlWindow owl;
  owl.window.document().edit("flag", [&] {
    Rig rig = owl.rig();
    rig.pan.homing.by = {"flag"};
    return rig;
  }());
  owl.window.select("pan.homing");
  ASSERT_TRUE(owl.settle());
  const PlanRow* row = plan_of(owl, "pan.homing plan");
  ASSERT_NE(row, nullptr);
  EXPECT_TRUE(row->text().contains("needs pan homing flag error")) << row->text().toStdString();
}

}  // namespace
}  // namespace gazewright::tests
