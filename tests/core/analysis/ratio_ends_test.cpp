#include "core/analysis/ratio_ends.h"

#include <gtest/gtest.h>

#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

RatioEnds ends_of(const Rig& rig) {
  return ratio_ends(rig, Axis::pan,
                    sweep_ratio(rig, Axis::pan, usual_ratios(60), {.settle = false}));
}

TEST(RatioEnds, LowRatiosLackTorqueAndHighOnesSpeed) {
  const RatioEnds ends = ends_of(tests::owl());
  ASSERT_TRUE(ends.below);
  ASSERT_TRUE(ends.above);
  EXPECT_EQ(*ends.below, MoveLimit::drive_current);
  EXPECT_TRUE(*ends.above == MoveLimit::voltage || *ends.above == MoveLimit::supply);
}

TEST(RatioEnds, TheLesserCurrentLimitIsNamed) {
  Rig rig = tests::owl();
  rig.pan.motor.peak_current_A = si_quantity(12);
  EXPECT_EQ(ends_of(rig).below, MoveLimit::motor_current);
}

TEST(RatioEnds, NothingIsSaidWhereInputsAreMissing) {
  Rig rig = tests::owl();
  rig.pan.motor.rotor_inertia_kgm2 = {};
  EXPECT_FALSE(ends_of(rig).below);
  EXPECT_FALSE(ends_of(rig).above);
}

}  // namespace
}  // namespace gazewright
