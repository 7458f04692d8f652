#include "core/analysis/ratio_ends.h"

#include <gtest/gtest.h>

#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

RatioEnds ends_of(const Rig& rig) {
  return ratio_ends(rig, Axis::pan,
                    sweep_ratio(rig, Axis::pan, usual_ratios(60), {.settle = false}));
}

TEST(RatioEnds, AWeakGearboxHoldsHighRatiosBack) {
  // At a ratio of 200 the gearbox's 12 N·m leave 12/(0.9·200) = 0.067 N·m at the motor of 0.6 N·m:
  // 0.067/1.3e-5 kg·m² = 5.1e3 rad/s² over 140 rad there and back peaks at 845 rad/s, below the
  // 24 V · 410 rpm/V = 1030 rad/s of the bus. So it is the gearbox all the way.
  const RatioEnds ends = ends_of(tests::owl());
  EXPECT_EQ(ends.below, MoveLimit::drive_current);
  EXPECT_EQ(ends.above, MoveLimit::gear_torque);
}

TEST(RatioEnds, LowRatiosLackTorqueAndHighOnesSpeed) {
  // With a strong gearbox 0.6/1.3e-5 = 4.6e4 rad/s² reach 1030 rad/s in 22 ms, and most of the 140
  // rad are turned at it.
  Rig rig = tests::owl();
  rig.pan.gearbox.peak_torque_Nm = si_quantity(1000);
  EXPECT_EQ(ends_of(rig).below, MoveLimit::drive_current);
  EXPECT_EQ(ends_of(rig).above, MoveLimit::voltage);
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
