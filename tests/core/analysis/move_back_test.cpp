#include "core/analysis/move_back.h"

#include <gtest/gtest.h>

#include "core/analysis/analysis.h"
#include "core/analysis/price.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

Analysis analysed(const Rig& rig) { return analyse(rig, {.remedies = false, .quick = true}); }

/// The owl with its camera this far before the tilt axis, and heavier.
Rig owl_with_camera_at(double x_m) {
  Rig rig = owl();
  rig.on_tilt[1].mass_kg = si_quantity(0.4);
  rig.on_tilt[1].centre_m[0] = si_quantity(x_m);
  rig.on_tilt[1].centre_m[2] = si_quantity(0);
  rig.tilt.encoder.bits = si_quantity(28);  // counts are rounded down, the same way both ways
  return rig;
}

// Seen from the other side: with the camera as far behind the axis, up is what down was before.
TEST(MoveBack, IsTheMoveOfTheMirroredRig) {
  const Analysis nose = analysed(owl_with_camera_at(0.05)),
                 tail = analysed(owl_with_camera_at(-0.05));
  const auto value = [](const Analysis& a, const char* id) { return a.value(id).value(); };
  const double up = value(nose, "tilt.step.settle_time"),
               down = value(tail, "tilt.step.settle_time");
  ASSERT_GT(std::abs(up - down), 0.02 * down) << "weight must make a difference";
  EXPECT_NEAR(value(nose, "tilt.step.settle_time_back"), down, tol(1e-5) * down);
  EXPECT_NEAR(value(tail, "tilt.step.settle_time_back"), up, tol(1e-5) * up);
}

TEST(MoveBack, TheSlowerWayIsJudged) {
  const Analysis tail = analysed(owl_with_camera_at(-0.05));
  const double there = tail.value("tilt.step.settle_time").value();
  const double back = tail.value("tilt.step.settle_time_back").value();
  const Finding& judged = *finding(tail, "tilt.move.time");
  EXPECT_DOUBLE_EQ(*judged.demand, std::max(there, back));
  EXPECT_NE(judged.because.find("; the move back in "), std::string::npos) << judged.because;
}

TEST(MoveBack, ACableOffItsMiddlePullsToo) {
  const auto with_middle_at = [](double centre_rad) {
    Rig rig = owl();
    rig.pan.stops.centre_rad = si_quantity(centre_rad);
    rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(0.1);
    rig.pan.encoder.bits = si_quantity(28);
    return analysed(rig);
  };
  const Analysis left = with_middle_at(1.2), right = with_middle_at(-1.2);
  const double there = right.value("pan.step.settle_time").value();
  ASSERT_GT(std::abs(there - left.value("pan.step.settle_time").value()), 0.02 * there);
  EXPECT_NEAR(left.value("pan.step.settle_time_back").value(), there, tol(1e-5) * there);
}

TEST(MoveBack, IsNotAskedForWhereWeightPullsToNeitherSide) {
  const Analysis balanced = analysed(owl());
  EXPECT_TRUE(balanced.figure("pan.step.settle_time_back")->is_aside);
  EXPECT_EQ(finding(balanced, "pan.move.time")->because.find("move back"), std::string::npos);
}

TEST(MoveBack, ARemedyMendsBothWays) {
  Rig rig = owl_with_camera_at(-0.05);
  const Analysis now = analysed(rig);
  const double there = now.value("tilt.step.settle_time").value();
  const double back = now.value("tilt.step.settle_time_back").value();
  rig.task.within_s = si_quantity(0.9 * std::min(there, back));
  const Analysis late = analyse(rig);
  ASSERT_FALSE(finding(late, "tilt.move.time")->remedies.empty());
  for (const Remedy& remedy : finding(late, "tilt.move.time")->remedies) {
    const Analysis then = analysed(remedied(rig, remedy));
    for (const char* way : {"tilt.step.settle_time", "tilt.step.settle_time_back"})
      EXPECT_LE(then.value(way).value_or(1), *rig.task.within_s.si) << way << ": " << remedy.text;
  }
}

}  // namespace
}  // namespace gazewright
