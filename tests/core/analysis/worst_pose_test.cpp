// What must not break or hurt is judged with the other axis where that is worst.
#include <gtest/gtest.h>

#include <cmath>

#include "core/analysis/analysis.h"
#include "core/bodies/bodies.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

Analysis analysed(const Rig& rig) { return analyse(rig, {.remedies = false}); }

/// A long body that stands upright with tilt at 0 and lies down as it tilts.
Rig upright() {
  Rig rig = owl();
  rig.on_tilt.push_back({.name = "long lens",
                         .mass_kg = si_quantity(1),
                         .centre_m = {si_quantity(0), si_quantity(0), si_quantity(0)},
                         .shape = Box{{si_quantity(0.04), si_quantity(0.04), si_quantity(0.5)}}});
  rig.tilt.stops.centre_rad = si_quantity(0);
  return rig;
}

TEST(WorstPose, TheStopsBearPanWithTheCameraLyingDown) {
  const Analysis a = analysed(upright());
  const double rest = a.value("pan.inertia.load").value();
  const double most = a.value("pan.inertia.load_max").value();
  ASSERT_GT(most, 2 * rest);
  const double rotor = a.value("pan.inertia.rotor_reflected").value();
  const double top = a.value("pan.output.speed_top").value();
  const double stall = a.value("pan.output.torque_stall").value();
  // Section 6 with the largest load: the blow on a spring of 400 N·m/rad, the drive pushing on.
  const Finding& stop = *finding(a, "pan.stop.torque");
  EXPECT_NEAR(*stop.demand, top * std::sqrt(400 * (most + rotor)) + stall, tol(1e-6));
  EXPECT_GT(*stop.demand, 1.1 * a.value("pan.stop.torque").value()) << "the figure is at rest";
  EXPECT_NE(stop.because.find("with tilt at"), std::string::npos) << stop.because;

  const Finding& inset = *finding(a, "pan.travel.soft_inset");
  EXPECT_GT(*inset.demand, a.value("pan.travel.least_inset").value());
  const Finding& coast = *finding(a, "pan.power_off.coast");
  EXPECT_GT(*coast.demand,
            a.value("pan.power_off.stop_speed").value() * std::sqrt(400 * (rest + rotor)));
}

TEST(WorstPose, ALoadThatIsTheSameEverywhereIsNotSpokenOf) {
  const Analysis a = analysed(owl());
  for (const char* id : {"tilt.stop.torque", "tilt.travel.soft_inset", "tilt.power_off.coast"})
    EXPECT_EQ(finding(a, id)->because.find("where its load"), std::string::npos) << id;
  EXPECT_NEAR(*finding(a, "tilt.stop.torque")->demand, a.value("tilt.stop.torque").value(),
              tol(1e-12));
}

TEST(WorstPose, ALeaningPanThatSwingsWithTheCameraAsideIsSaidTo) {
  Rig rig = owl();
  rig.stand.lean_rad = si_quantity(0.3);
  rig.on_tilt.push_back({.name = "weight under the axis",
                         .mass_kg = si_quantity(2),
                         .centre_m = {si_quantity(0), si_quantity(0), si_quantity(-0.09)},
                         .shape = Box{{si_quantity(0.04), si_quantity(0.04), si_quantity(0.04)}}});
  const Analysis a = analysed(rig);
  const Finding& holds = *finding(a, "pan.power_off.holds");
  // Its own figure looks over both travels; between the stops is a little more of pan's.
  EXPECT_GE(*holds.demand, (1 - 1e-9) * a.value("pan.gravity.torque_max").value());
  EXPECT_EQ(holds.verdict, Verdict::fails) << holds.because;
  EXPECT_NE(holds.because.find(", tilt at"), std::string::npos) << holds.because;
}

TEST(WorstPose, AStopIsNotHitFasterThanFullTorqueGoesOverTheTravel) {
  Rig rig = owl();
  rig.tilt.motor.peak_current_A = si_quantity(0.6);
  const Analysis a = analysed(rig);
  const double runaway = a.value("tilt.stop.runaway_speed").value();
  const double top = a.value("tilt.output.speed_top").value();
  ASSERT_LT(runaway, 0.5 * top);
  const Finding& stop = *finding(a, "tilt.stop.torque");
  EXPECT_LT(*stop.demand, 0.9 * a.value("tilt.stop.torque").value());
  // No less than without gravity, which pushes on here.
  const double inertia =
      a.value("tilt.inertia.load").value() + a.value("tilt.inertia.rotor_reflected").value();
  EXPECT_GE(*stop.demand,
            runaway * std::sqrt(300 * inertia) + a.value("tilt.output.torque_stall").value());
  EXPECT_NE(stop.because.find("full torque over the whole travel"), std::string::npos)
      << stop.because;
}

}  // namespace
}  // namespace gazewright
