#include "core/analysis/coupling.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;

/// The owl with its camera far off to the side and out of balance.
Rig lopsided_owl() {
  Rig rig = tests::owl();
  rig.on_tilt[1].mass_kg = si_quantity(0.3);
  rig.on_tilt[1].centre_m = {si_quantity(0.06), si_quantity(0.05), si_quantity(0.03)};
  return rig;
}

TEST(Coupling, IsGivenInDegreesAndInPixelsOfThePicture) {
  const Analysis analysis = analyse(tests::owl(), {.remedies = false});
  for (const std::string axis : {"pan", "tilt"}) {
    const double off_rad = analysis.value(axis + ".coupling.disturbance").value();
    EXPECT_NEAR(analysis.value(axis + ".coupling.disturbance_px").value(),
                off_rad * analysis.value("camera.pixels_per_radian").value(), tol(1e-12));
  }
  EXPECT_EQ(analysis.value("both.peak_bus_current"), analysis.coupling.peak_bus_A);
  EXPECT_LE(analysis.coupling.peak_bus_A, 15 * (1 + 1e-12)) << "supply.current_limit";
}

TEST(Coupling, OfABalancedRoundLoadHardlyPushesAndOfALopsidedOneFails) {
  const Analysis good = analyse(tests::owl(), {.remedies = false});
  const Analysis bad = analyse(lopsided_owl(), {.remedies = false});
  const char* id = "tilt.coupling.disturbance";
  EXPECT_GT(bad.value(id).value(), 3 * good.value(id).value());
  ASSERT_NE(finding(bad, id), nullptr);
  EXPECT_EQ(finding(bad, id)->verdict, Verdict::fails) << finding(bad, id)->because;
  EXPECT_EQ(finding(bad, id)->demand, bad.value(id));
  EXPECT_NEAR(finding(bad, id)->capacity.value(), bad.of(Axis::tilt).band_rad, tol(1e-15));
}

TEST(Coupling, IsLeftOutOfAQuickAnalysisWithAReason) {
  const Analysis quick = analyse(tests::owl(), {.quick = true});
  EXPECT_TRUE(quick.coupling.both.bus_A.empty());
  EXPECT_EQ(quick.figure("both.settle_time")->because, "worked out when nothing is dragged");
  EXPECT_EQ(finding(quick, "pan.coupling.disturbance"), nullptr);
}

TEST(Coupling, NamesWhatIsMissingOnEitherAxis) {
  Rig rig = tests::owl();
  rig.tilt.gearbox.stiffness_Nmprad = {};
  const Analysis analysis = analyse(rig, {.remedies = false});
  EXPECT_EQ(analysis.figure("pan.coupling.disturbance")->because, "needs tilt.gearbox.stiffness");
  EXPECT_EQ(analysis.figure("both.settle_time")->because, "needs tilt.gearbox.stiffness");
}

TEST(Coupling, OfALoopThatNeverSettlesIsUnknownWithAReason) {
  Rig rig = tests::owl();
  rig.supply.current_limit_A = si_quantity(kInfinity);
  rig.tilt.loop.speed_integral_gain_Nmprad = si_quantity(3000);  // swings by four times the band
  const Analysis analysis = analyse(rig, {.remedies = false});
  const Figure* settle = analysis.figure("both.settle_time");
  EXPECT_FALSE(settle->value);
  EXPECT_FALSE(settle->because.empty());
  for (const double bus_A : analysis.coupling.both.bus_A) ASSERT_TRUE(std::isfinite(bus_A));
}

TEST(Coupling, OfAWeakSupplySettlesLaterThanEitherAlone) {
  Rig rig = tests::owl();
  rig.supply.current_limit_A = si_quantity(1.2);
  const Analysis analysis = analyse(rig, {.remedies = false});
  EXPECT_GT(analysis.coupling.both.short_s, 0.005);
  EXPECT_LE(analysis.coupling.peak_bus_A, 1.2 * (1 + 1e-12));
  const double pan_s = analysis.value("pan.step.settle_time").value();
  EXPECT_GT(analysis.value("both.settle_time").value(), pan_s);
}

TEST(CouplingFindings, AnAxisThatCannotHoldItsWeightFalls) {
  Rig rig = tests::owl();
  rig.on_tilt[1].centre_m[0] = si_quantity(1.0);  // 48 g at 1 m: 0.47 N·m
  const auto disturbed = [&rig] {
    return *finding(analyse(rig, {.remedies = false}), "tilt.coupling.disturbance");
  };
  EXPECT_NE(disturbed().because.find("pushes it off"), std::string::npos) << disturbed().because;
  rig.tilt.drive.current_limit_A = si_quantity(0.5);  // some 0.1 N·m at the output
  EXPECT_NE(disturbed().because.find("cannot hold its weight"), std::string::npos)
      << disturbed().because;
  EXPECT_EQ(disturbed().verdict, Verdict::fails);
}

}  // namespace
}  // namespace gazewright
