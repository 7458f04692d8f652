#include <gtest/gtest.h>

#include <cmath>

#include "core/analysis/analysis.h"
#include "core/units/angle.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

Analysis analysed(const Rig& rig) { return analyse(rig, {.remedies = false, .quick = true}); }

/// The owl's pan, read at the output.
Rig read_at_output() {
  Rig rig = owl();
  rig.pan.encoder.at.value = "output";
  return rig;
}

TEST(Commutation, AtTheMotorItIsThePolePairsTimesTheReadingsError) {
  // 7 pole pairs, 0.5° and half of 360°/2^14: 7·0.51099° by hand.
  const Analysis a = analysed(owl());
  EXPECT_NEAR(*a.value("pan.encoder.commutation_error"), 3.57690 * kDegree_rad, tol(1e-5) * 0.06);
  EXPECT_EQ(finding(a, "pan.encoder.commutation")->verdict, Verdict::holds);
  EXPECT_EQ(finding(a, "pan.encoder.commutation")->because,
            "the motor gives 100 % of its torque in the worst place");
}

TEST(Commutation, BehindAGearTheGapAndTheSpringCountTimesTheRatio) {
  const Analysis a = analysed(read_at_output());
  const double wound =
      *a.value("pan.output.torque_stall") / owl().pan.gearbox.stiffness_Nmprad.value();
  const double gap = owl().pan.gearbox.backlash_rad.value();
  const double off = 0.5 * kDegree_rad + M_PI / 16384 + gap / 2 + wound;
  EXPECT_NEAR(*a.value("pan.encoder.commutation_error"), 7 * 18 * off, tol(1e-12) * 10);
  const Finding& found = *finding(a, "pan.encoder.commutation");
  EXPECT_EQ(found.verdict, Verdict::tight) << "nobody has said that the motor has none";
  EXPECT_NE(found.because.find("may push the wrong way"), std::string::npos);
  Rig none = read_at_output();
  none.pan.encoder.motor_sensor.value = "no";
  none.pan.encoder.error_rad = si_quantity(2.9 * kDegree_rad);  // beyond a whole electrical turn
  const Analysis b = analysed(none);
  ASSERT_GT(*b.value("pan.encoder.commutation_error"), 2 * M_PI);
  EXPECT_EQ(finding(b, "pan.encoder.commutation")->verdict, Verdict::fails);
  EXPECT_EQ(finding(b, "pan.encoder.commutation")->because.substr(0, 32),
            "the motor may push the wrong way");
}

TEST(Commutation, ASensorOfTheMotorsOwnIsAllThatIsAsked) {
  Rig rig = read_at_output();
  rig.pan.encoder.motor_sensor.value = "yes";
  const Analysis a = analysed(rig);
  EXPECT_FALSE(a.value("pan.encoder.commutation_error"));
  EXPECT_TRUE(a.figure("pan.encoder.commutation_error")->is_aside);
  EXPECT_EQ(finding(a, "pan.encoder.commutation")->verdict, Verdict::holds);
}

TEST(Commutation, WithoutTheGearsSpringItIsUnknownBehindIt) {
  Rig rig = read_at_output();
  rig.pan.gearbox.stiffness_Nmprad = {};
  const Analysis a = analysed(rig);
  EXPECT_EQ(finding(a, "pan.encoder.commutation")->verdict, Verdict::unknown);
  EXPECT_NE(a.figure("pan.encoder.commutation_error")->because.find("pan.gearbox.stiffness"),
            std::string::npos);
}

TEST(Commutation, SamplesATurnFollowFromRateAndTopSpeed) {
  Rig rig = owl();
  rig.pan.drive.speed_limit_radps = si_quantity(10);  // at the output, 18 times that at the motor
  // 8000 samples a second over 7·180/2π = 200.5 electrical turns a second.
  EXPECT_NEAR(*analysed(rig).value("pan.drive.samples_per_turn"), 39.8932, tol(1e-5) * 40);
}

}  // namespace
}  // namespace gazewright
