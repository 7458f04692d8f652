#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

#include "core/analysis/analysis.h"
#include "core/loads/rolling.h"
#include "core/rig/fields.h"
#include "tests/support/explained.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

/// Figures and findings of bearings, the gearbox's output, screws and shaft.
namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

Quantity si(double value) { return si_quantity(value); }

/// Pan in a pair of ball bearings, screwed on with eight M4; tilt on the gearbox's own output.
Rig owl_with_bearings() {
  Rig rig = owl();
  Bearing& b = rig.pan.bearing;
  b.dynamic_rating_N = si(2000);
  b.static_rating_N = si(1200);
  b.spacing_m = si(0.03);
  b.overhang_m = si(0.045);
  b.radial_play_m = si(8e-6);
  Joint& j = rig.pan.joint;
  j.thread = {"M4"};
  j.screws = si(8);
  j.circle_diameter_m = si(0.05);
  j.tightening_torque_Nm = si(2);
  rig.tilt.gearbox.overhung_load_N = si(300);
  rig.tilt.gearbox.overhung_at_m = si(0.02);
  rig.tilt.gearbox.axial_load_N = si(100);
  rig.tilt.gearbox.load_at_m = si(0.03);
  return rig;
}

Rig with_random_loads(std::uint64_t seed) {
  tests::Random random(seed);
  Rig rig = owl_with_bearings();
  const auto perhaps = [&](Quantity& place, double least, double most) {
    place = random.chance(0.15) ? Quantity() : si(random.log_uniform(least, most));
  };
  for (AxisParts* parts : {&rig.pan, &rig.tilt}) {
    Bearing& b = parts->bearing;
    b.kind = {std::array{"pair", "single", "gearbox", ""}[std::size_t(random.below(4))]};
    b.rolling = {std::array{"ball", "roller", ""}[std::size_t(random.below(3))]};
    for (Quantity* rating : {&b.dynamic_rating_N, &b.static_rating_N, &b.moment_rating_Nm})
      perhaps(*rating, 0.1, 1e5);
    perhaps(b.spacing_m, 1e-4, 1);
    perhaps(b.pitch_diameter_m, 1e-3, 1);
    perhaps(b.preload_N, 1e-3, 1e3);
    perhaps(b.radial_play_m, 1e-9, 1e-3);
    perhaps(b.axial_play_m, 1e-9, 1e-3);
    b.overhang_m = si(random.uniform(-0.2, 0.2));
    b.contact_angle_rad = si(random.chance(0.3) ? 0 : random.uniform(0, 1));
    Joint& j = parts->joint;
    j.thread = {std::array{"M2", "M3", "M8", "unstated"}[std::size_t(random.below(4))]};
    j.property_class = {std::array{"8.8", "A2-70", ""}[std::size_t(random.below(3))]};
    j.holds_in = {std::array{"nut", "metal", "insert", "print"}[std::size_t(random.below(4))]};
    j.shaft = {std::array{"none", "clamp", "flat", "key"}[std::size_t(random.below(4))]};
    for (Quantity* size : {&j.circle_diameter_m, &j.shaft_diameter_m, &j.shaft_length_m})
      perhaps(*size, 1e-4, 1);
    perhaps(j.tightening_torque_Nm, 1e-3, 100);
    perhaps(j.pull_out_N, 1, 1e4);
    perhaps(j.clamp_force_N, 1, 1e5);
    perhaps(j.shaft_pressure_Pa, 1e4, 1e9);
    j.screws = si(1 + random.below(20));
    perhaps(parts->gearbox.load_at_m, 1e-4, 1);
    parts->gearbox.overhung_at_m = si(random.chance(0.3) ? 0 : random.log_uniform(1e-4, 0.1));
    if (random.chance(0.2)) parts->stops.presence = Presence::none;
    if (random.chance(0.2)) parts->cable.presence = Presence::none;
  }
  rig.stand.lean_rad = si(random.uniform(-3, 3));
  if (random.chance(0.2)) rig.task.moves_per_minute = {};
  if (random.chance(0.3)) rig.duty = {{si(0), si(0), si(1)}, {si(0.5), si(0), si(0)}};
  return rig;
}

TEST(LoadFigures, OfASimpleRigAreThereAndAskNothing) {
  const Analysis a = analyse(owl(), {.remedies = false});
  for (const std::string axis : {"pan", "tilt"}) {
    for (const char* id : {".bearing.radial_load", ".bearing.axial_load", ".bearing.moment_load",
                           ".bearing.weight_radial", ".bearing.weight_moment",
                           ".bearing.mean_speed", ".bearing.stop_force", ".joint.torque"})
      EXPECT_TRUE(a.value(axis + id)) << axis << id << ": " << a.figure(axis + id)->because;
    for (const Figure& figure : a.figures)
      if (figure.id.starts_with(axis + ".bearing.") || figure.id.starts_with(axis + ".joint.")) {
        EXPECT_TRUE(figure.value || figure.is_aside) << figure.id << ": " << figure.because;
      }
  }
  for (const Finding& f : a.findings)
    EXPECT_TRUE(f.id.find(".bearing.") == std::string::npos &&
                f.id.find(".joint.") == std::string::npos)
        << f.id;
}

TEST(LoadFigures, CountTheBrakingWhereItIsHarderThanTheStart) {
  Rig rig = owl();
  rig.on_tilt.resize(1);  // the ball, on its axis: tilt's motion adds no force
  const Analysis a = analyse(rig, {.remedies = false});
  const double rotor = *a.value("pan.inertia.rotor_reflected") / 18;
  const double largest = *a.value("stand.pan_reaction") / (*a.value("pan.inertia.load") + rotor);
  EXPECT_GT(largest, *a.value("pan.output.acceleration_peak"));
  const double speed = std::min(*a.value("pan.output.speed_top"), 900 * std::numbers::pi / 180);
  EXPECT_NEAR(
      *a.value("pan.bearing.radial_load"),
      *a.value("mass.total") * *a.value("pan.balance.offset") * std::hypot(largest, speed * speed),
      tol(1e-9));
}

TEST(LoadFigures, OfAPairFollowFromTheLoads) {
  const Analysis a = analyse(owl_with_bearings(), {.remedies = false});
  const auto of = [&](const char* id) { return a.value(std::string("pan.bearing.") + id).value(); };
  const double radial = of("radial_load"), moment = of("moment_load"), axial = of("axial_load");
  EXPECT_NEAR(of("near_load"), radial * (1 + 0.045 / 0.03) + moment / 0.03, tol(1e-9));
  EXPECT_NEAR(of("far_load"), radial * 0.045 / 0.03 + moment / 0.03, tol(1e-9));
  const RollingBearing bearing{Rolling::ball, 2000, 1200, 0, 14};
  const auto load = equivalent_load(bearing, of("near_load"), axial);
  EXPECT_NEAR(of("equivalent_load"), load->dynamic_N, tol(1e-9));
  EXPECT_NEAR(of("static_safety"), 1200 / load->static_N, tol(1e-9));
  EXPECT_NEAR(of("life") * of("mean_speed") / (2 * std::numbers::pi),
              1e6 * std::pow(2000 / load->dynamic_N, 3), 1e-9 * 1e12);
  // 40 moves of 40° a minute.
  EXPECT_NEAR(of("mean_speed"), 40 * 40 * std::numbers::pi / 180 / 60, tol(1e-12));
  EXPECT_LT(of("stop_safety"), of("static_safety"));
  EXPECT_NEAR(of("play"), 2 * 8e-6 / 0.03, tol(1e-15));
  EXPECT_NEAR(of("stop_force"), *a.value("pan.stop.torque_pushing") / 0.026, tol(1e-9));
}

TEST(LoadFigures, PreloadLoadsTheBearingsAndTakesTheirPlayOut) {
  Rig rig = owl_with_bearings();
  const double before = *analyse(rig, {.remedies = false}).value("pan.bearing.equivalent_load");
  rig.pan.bearing.preload_N = si(120);
  rig.pan.bearing.radial_play_m = {};
  const Analysis a = analyse(rig, {.remedies = false});
  EXPECT_GT(*a.value("pan.bearing.equivalent_load"), before);
  EXPECT_EQ(a.value("pan.bearing.play"), 0);
  EXPECT_EQ(a.value("pan.bearing.play_lens"), 0);
}

TEST(LoadFigures, TheGearboxBearsTheMomentOfTheLoadAboutItsFace) {
  Rig rig = owl_with_bearings();
  const Analysis a = analyse(rig, {.remedies = false});
  const double radial = *a.value("tilt.bearing.radial_load");
  const double moment = *a.value("tilt.bearing.moment_load");
  EXPECT_NEAR(*a.value("tilt.bearing.output_radial"),
              std::max(radial, (radial * 0.03 + moment) / 0.02), tol(1e-9));
  EXPECT_TRUE(a.figure("tilt.bearing.near_load")->is_aside);
  EXPECT_TRUE(a.figure("pan.bearing.output_radial")->is_aside) << "bearings of its own carry pan";
  EXPECT_EQ(finding(a, "pan.bearing.output_radial"), nullptr);
  rig.tilt.gearbox.overhung_at_m = {};
  const Analysis b = analyse(rig, {.remedies = false});
  const Finding* f = finding(b, "tilt.bearing.output_radial");
  ASSERT_NE(f, nullptr);
  EXPECT_EQ(f->verdict, Verdict::unknown);
  EXPECT_EQ(f->because, "needs tilt.gearbox.overhung_at, as the load has a moment about its face");
}

TEST(LoadFigures, ASingleRingBearsTheMoment) {
  Rig rig = owl_with_bearings();
  Bearing& b = rig.pan.bearing;
  b.kind = {"single"};
  b.rolling = {"roller"};
  b.moment_rating_Nm = si(60);
  b.pitch_diameter_m = si(0.06);
  b.axial_play_m = si(3e-6);
  const Analysis a = analyse(rig, {.remedies = false});
  const double radial = *a.value("pan.bearing.radial_load");
  const double tilting = radial * 0.045 + *a.value("pan.bearing.moment_load");
  EXPECT_NEAR(*a.value("pan.bearing.moment_at_bearing"), tilting, tol(1e-9));
  EXPECT_NEAR(*a.value("pan.bearing.static_load"),
              radial + 2 * tilting / 0.06 + 0.44 * *a.value("pan.bearing.axial_load"), tol(1e-9));
  EXPECT_DOUBLE_EQ(*finding(a, "pan.bearing.moment")->capacity, 20) << "60 over a safety of 3";
  EXPECT_NEAR(*a.value("pan.bearing.play"), 2 * 3e-6 / 0.06, tol(1e-15));
}

TEST(LoadFigures, TheDutysListIsSweptInItsTime) {
  Rig rig = owl_with_bearings();
  rig.duty = {{si(0.5), si(0.1), si(2)}, {si(-0.3), si(0.1), si(3)}};
  const Analysis a = analyse(rig, {.remedies = false});
  const double speed = std::min(*a.value("pan.output.speed_top"), 900 * std::numbers::pi / 180);
  EXPECT_NEAR(*a.value("pan.bearing.mean_speed"), 1.6 / (5 + 1.6 / speed), tol(1e-12));
  EXPECT_EQ(a.value("tilt.bearing.mean_speed"), 0);
}

TEST(LoadFigures, WithoutStopsTheJointHoldsTheMotor) {
  Rig rig = owl_with_bearings();
  const Analysis with = analyse(rig, {.remedies = false});
  EXPECT_GE(*with.value("pan.joint.torque"), *with.value("pan.stop.gear_torque"));
  EXPECT_GE(*with.value("pan.joint.torque"), *with.value("pan.output.torque_stall"));
  rig.pan.stops.presence = Presence::none;
  const Analysis without = analyse(rig, {.remedies = false});
  EXPECT_EQ(without.value("pan.joint.torque"), without.value("pan.output.torque_stall"));
  EXPECT_FALSE(without.value("pan.bearing.stop_force"));
}

TEST(LoadFigures, AreTheSameInAQuickAnalysis) {
  const Rig rig = owl_with_bearings();
  const Analysis full = analyse(rig, {.remedies = false}), quick = analyse(rig, {.quick = true});
  for (const Figure& figure : full.figures)
    if (figure.id.find(".bearing.") != std::string::npos ||
        figure.id.find(".joint.") != std::string::npos) {
      EXPECT_EQ(figure.value, quick.value(figure.id)) << figure.id;
    }
}

TEST(LoadFigures, AreFiniteOrSayWhyNotWhateverTheRig) {
  for (std::uint64_t seed = 0; seed < 60; ++seed) {
    const Analysis a = analyse(with_random_loads(seed), {.remedies = false});
    tests::expect_finite_or_explained(a, seed);
    for (const Finding& f : a.findings) {
      EXPECT_FALSE(f.demand && !std::isfinite(*f.demand)) << f.id << seed;
      EXPECT_FALSE(f.because.empty()) << f.id << seed;
    }
  }
}

TEST(LoadFindings, SayWhatIsMissing) {
  Rig rig = owl_with_bearings();
  rig.pan.bearing.static_rating_N = {};
  rig.pan.joint.holds_in = {"insert"};
  rig.pan.joint.thread = {"unstated"};
  const Analysis a = analyse(rig, {.remedies = false});
  EXPECT_EQ(finding(a, "pan.bearing.life")->because, "needs pan.bearing.static_rating");
  EXPECT_EQ(finding(a, "pan.joint.slip")->because, "needs pan.joint.thread");
  EXPECT_EQ(finding(a, "pan.joint.pull_out")->because, "needs pan.joint.pull_out");
  for (const char* id : {"pan.bearing.life", "pan.joint.slip", "pan.joint.pull_out"})
    EXPECT_EQ(finding(a, id)->verdict, Verdict::unknown) << id;
  rig = owl_with_bearings();
  rig.pan.bearing.rolling = {"roller"};
  const Analysis rollers = analyse(rig, {.remedies = false});
  EXPECT_EQ(finding(rollers, "pan.bearing.life")->because,
            "cylindrical rollers bear no axial load: see pan.bearing.contact_angle");
}

TEST(LoadFindings, PlasticHoldsLess) {
  Rig rig = owl_with_bearings();
  const double metal = *analyse(rig, {.remedies = false}).value("pan.joint.slip_torque");
  rig.pan.joint.holds_in = {"insert"};
  rig.pan.joint.pull_out_N = si(800);
  const Analysis a = analyse(rig, {.remedies = false});
  EXPECT_NEAR(*a.value("pan.joint.slip_torque"), metal / 2, tol(1e-12));
  EXPECT_EQ(finding(a, "pan.joint.pull_out")->verdict, Verdict::fails);
  // The advised torque gives half of the pull-out force.
  rig.pan.joint.tightening_torque_Nm = si(*a.value("pan.joint.advised_torque"));
  EXPECT_NEAR(*analyse(rig, {.remedies = false}).value("pan.joint.preload"), 400, tol(1e-9));
}

TEST(LoadFindings, ThatFailAreMendedByTheirRemedies) {
  Rig rig = owl_with_bearings();
  rig.pan.bearing.dynamic_rating_N = si(60);
  rig.pan.bearing.static_rating_N = si(120);
  rig.pan.bearing.radial_play_m = si(2e-4);
  rig.pan.joint.screws = si(6);
  rig.pan.joint.shaft = {"key"};
  rig.pan.joint.shaft_diameter_m = si(0.012);
  rig.pan.joint.shaft_length_m = si(0.02);
  rig.pan.joint.shaft_pressure_Pa = si(50e6);
  rig.tilt.gearbox.overhung_load_N = si(5);
  rig.tilt.gearbox.axial_load_N = si(0.5);
  rig.tilt.joint = rig.pan.joint;
  rig.tilt.joint.tightening_torque_Nm = si(8);
  rig.tilt.joint.holds_in = {"insert"};
  rig.tilt.joint.pull_out_N = si(700);
  const Analysis a = analyse(rig);
  int tried = 0;
  for (const char* id :
       {"pan.bearing.life", "pan.bearing.static", "pan.bearing.stop", "pan.bearing.play",
        "pan.joint.slip", "pan.joint.shaft", "tilt.bearing.output_radial",
        "tilt.bearing.output_axial", "tilt.joint.stress", "tilt.joint.pull_out"}) {
    const Finding* f = finding(a, id);
    ASSERT_NE(f, nullptr) << id;
    EXPECT_EQ(f->verdict, Verdict::fails) << id << ": " << f->because;
    EXPECT_FALSE(f->remedies.empty()) << id;
    for (const Remedy& remedy : f->remedies) {
      Rig mended = rig;
      *find_quantity(mended, remedy.path) = si_quantity(remedy.value_si);
      const Verdict now = finding(analyse(mended, {.remedies = false}), id)->verdict;
      EXPECT_TRUE(now == Verdict::holds || now == Verdict::tight) << id << ": " << remedy.text;
      ++tried;
    }
  }
  EXPECT_GE(tried, 10) << "one for each at least";
}

}  // namespace
}  // namespace gazewright
