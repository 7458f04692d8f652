#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "tests/support/explained.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

/// Figures and findings of a blow into the stop.
namespace gazewright {
namespace {

using tests::finding;
using tests::owl;

/// A printed tab and a bumper that ends.
Rig owl_with_bumper() {
  Rig rig = owl();
  Stops& stops = rig.pan.stops;
  stops.bumper_travel_rad = si_quantity(0.05);
  stops.hard_stiffness_Nmprad = si_quantity(4000);
  stops.tab_height_m = si_quantity(0.008);
  stops.tab_thickness_m = si_quantity(0.006);
  stops.material = {"petg"};
  return rig;
}

Rig with_random_stops(std::uint64_t seed) {
  tests::Random random(seed);
  Rig rig = owl_with_bumper();
  for (AxisParts* parts : {&rig.pan, &rig.tilt}) {
    Stops& stops = parts->stops;
    stops.kind = {std::array{"tab", "trailing", "window"}[std::size_t(random.below(3))]};
    stops.radius_m = si_quantity(random.log_uniform(0.01, 0.1));
    for (Quantity* width : {&stops.tab_width_m, &stops.post_width_m, &stops.trailer_width_m})
      *width = si_quantity(random.uniform(0.02, 2.2) * *stops.radius_m.si);
    stops.trailers = si_quantity(1 + random.below(5));
    stops.window_rad = si_quantity(random.uniform(0.1, 6));
    stops.soft_inset_rad = si_quantity(random.uniform(0, 0.4));
    stops.stiffness_Nmprad = si_quantity(random.log_uniform(1, 1e5));
    stops.bumper_travel_rad =
        si_quantity(random.chance(0.3) ? kInfinity : random.log_uniform(1e-4, 1));
    stops.hard_stiffness_Nmprad = si_quantity(random.log_uniform(1, 1e6));
    stops.rebound = si_quantity(random.uniform(0, 1));
    stops.tab_height_m = si_quantity(random.log_uniform(1e-4, 0.1));
    parts->loop.speed_limit_radps = si_quantity(random.log_uniform(0.1, 100));
    parts->drive.speed_limit_radps = si_quantity(random.log_uniform(0.1, 100));
  }
  return rig;
}

TEST(StopFigures, SharesOfLoadAndRotorAddUpToTheEnergy) {
  const Analysis a = analyse(owl(), {.remedies = false});
  for (const std::string axis : {"pan", "tilt"}) {
    EXPECT_DOUBLE_EQ(*a.value(axis + ".stop.energy_load") + *a.value(axis + ".stop.energy_rotor"),
                     *a.value(axis + ".stop.energy"));
    EXPECT_NEAR(*a.value(axis + ".stop.energy_load") / *a.value(axis + ".stop.energy_rotor"),
                *a.value(axis + ".inertia.ratio"), tol(1e-12));
    EXPECT_NEAR(*a.value(axis + ".stop.rebound_energy"), *a.value(axis + ".stop.energy") / 4,
                tol(1e-12))
        << "half the speed by default";
  }
}

TEST(StopFigures, KeepTheirOrderWhateverTheRig) {
  for (std::uint64_t seed = 0; seed < 40; ++seed) {
    const Analysis a = analyse(with_random_stops(seed), {.remedies = false});
    for (const std::string axis : {"pan.stop.", "tilt.stop."}) {
      const auto of = [&](const char* id) { return a.value(axis + id).value(); };
      const double rounding = 1 - 1e-12;
      EXPECT_GE(of("torque_pushing"), of("torque_dead") * rounding) << axis << seed;
      EXPECT_GE(of("torque_soft_pushing"), of("torque_soft_dead") * rounding) << axis << seed;
      EXPECT_GE(of("torque_pushing"), of("torque_soft_pushing") * rounding) << axis << seed;
      EXPECT_GE(of("energy_load"), of("energy_soft_load") * rounding) << axis << seed;
      EXPECT_GE(of("energy_rotor"), of("energy_soft_rotor") * rounding) << axis << seed;
      EXPECT_GE(of("torque_pushing"), of("gear_torque") * rounding) << axis << seed;
      EXPECT_GE(of("energy"), of("rebound_energy")) << axis << seed;
      EXPECT_GE(of("press"), 0) << axis << seed;
    }
  }
}

TEST(StopFigures, AreFiniteOrSayWhyNotWhateverTheRig) {
  for (std::uint64_t seed = 100; seed < 140; ++seed) {
    tests::expect_finite_or_explained(analyse(with_random_stops(seed), {.remedies = false}), seed);
  }
}

TEST(StopFigures, OfAMirroredRigAreTheSame) {
  for (std::uint64_t seed = 200; seed < 210; ++seed) {
    const Rig rig = with_random_stops(seed);
    // Left for right: pan turns the other way, tilt does not notice.
    Rig mirrored = rig;
    mirrored.pan.stops.centre_rad = si_quantity(-*rig.pan.stops.centre_rad.si);
    for (auto* bodies : {&mirrored.on_pan, &mirrored.on_tilt})
      for (Body& body : *bodies) body.centre_m[1] = si_quantity(-*body.centre_m[1].si);
    const Analysis a = analyse(rig, {.remedies = false});
    const Analysis b = analyse(mirrored, {.remedies = false});
    for (const Figure& figure : a.figures) {
      if (figure.id.find(".stop.") == std::string::npos &&
          figure.id.find(".travel.") == std::string::npos)
        continue;
      const auto other = b.value(figure.id);
      ASSERT_EQ(figure.value.has_value(), other.has_value()) << figure.id;
      if (!other) continue;
      EXPECT_NEAR(*figure.value, *other, tol(1e-12) * std::abs(*other)) << figure.id << seed;
    }
  }
}

TEST(StopFigures, AnInsetThatIsLongEnoughLeavesNothingForTheStop) {
  Rig rig = owl();
  const Analysis before = analyse(rig, {.remedies = false});
  const double braking_rad = *finding(before, "pan.travel.soft_inset")->demand;
  rig.pan.stops.soft_inset_rad = si_quantity(1.01 * braking_rad);
  const Analysis enough = analyse(rig, {.remedies = false});
  EXPECT_EQ(enough.value("pan.travel.speed_at_stop"), 0);
  EXPECT_EQ(enough.value("pan.stop.energy_soft_load"), 0);
  EXPECT_EQ(enough.value("pan.stop.torque_soft_dead"), 0);
  EXPECT_EQ(enough.value("pan.stop.torque_soft_pushing"), 0);
  rig.pan.stops.soft_inset_rad = si_quantity(0.5 * braking_rad);
  EXPECT_GT(*analyse(rig, {.remedies = false}).value("pan.travel.speed_at_stop"), 0);
  rig.pan.stops.soft_inset_rad = si_quantity(0);
  const Analysis none = analyse(rig, {.remedies = false});
  EXPECT_DOUBLE_EQ(*none.value("pan.travel.speed_at_stop"),
                   std::min(*none.value("pan.output.speed_top"), 900 * M_PI / 180));
}

TEST(StopFigures, ABumperThatEndsNeedsWhatFollows) {
  Rig rig = owl_with_bumper();
  rig.pan.stops.hard_stiffness_Nmprad = {};
  const Analysis a = analyse(rig, {.remedies = false});
  EXPECT_EQ(a.figure("pan.stop.torque_pushing")->because,
            "needs pan.stops.hard_stiffness, as its bumper has a travel");
  EXPECT_TRUE(a.value("pan.stop.torque")) << "keeps to the first stage";
  EXPECT_EQ(finding(a, "pan.stop.bumper"), nullptr);
  EXPECT_EQ(finding(a, "pan.stop.tab_shear")->verdict, Verdict::unknown);
}

TEST(StopFigures, ThereAreNoneWhereItTurnsWithoutEnd) {
  Rig rig = owl_with_bumper();
  rig.pan.stops.presence = Presence::none;
  const Analysis a = analyse(rig, {.remedies = false});
  for (const Figure& figure : a.figures)
    EXPECT_FALSE(figure.value && figure.id.starts_with("pan.stop.")) << figure.id;
}

TEST(StopFindings, AskNothingOfASimpleRig) {
  const Analysis a = analyse(owl(), {.remedies = false});
  for (const char* id : {"bumper", "gear_torque", "tab_bending", "tab_shear"})
    EXPECT_EQ(finding(a, std::string("pan.stop.") + id), nullptr) << id;
}

// A spring that a constant torque is laid on at rest swings to twice the torque: what a slow axis
// does to its teeth (mechanics of one mass on a spring, 0.5·k·x² = T·x).
TEST(StopFindings, ASlowAxisThatPushesSwingsItsTeethBeyondTheSumOfBlowAndPush) {
  Rig rig = owl();
  rig.pan.drive.speed_limit_radps = si_quantity(0.02);
  const Analysis a = analyse(rig, {.remedies = false});
  const double sum = a.value("pan.stop.torque").value();
  const double in_gear = a.value("pan.stop.gear_torque_sprung").value();
  ASSERT_GT(in_gear, 1.2 * sum);
  EXPECT_NE(finding(a, "pan.stop.torque")->because.find("its teeth swing to"), std::string::npos);
  // The verdict is not left to the smaller number.
  ASSERT_NE(finding(a, "pan.stop.gear_torque"), nullptr);
  EXPECT_DOUBLE_EQ(*finding(a, "pan.stop.gear_torque")->demand, in_gear);
  const Analysis fast = analyse(owl(), {.remedies = false});
  ASSERT_LT(fast.value("pan.stop.gear_torque_sprung"), fast.value("pan.stop.torque"));
  EXPECT_EQ(finding(fast, "pan.stop.torque")->because.find("its teeth swing"), std::string::npos);
}

TEST(StopFindings, ABumperThatBottomsOutFailsAndItsRemediesMendIt) {
  Rig rig = owl_with_bumper();
  rig.pan.gearbox.peak_torque_Nm = si_quantity(20);
  rig.pan.drive.speed_limit_radps = si_quantity(5);
  rig.pan.stops.bumper_travel_rad = si_quantity(0.01);
  const Analysis a = analyse(rig);
  int tried = 0;
  for (const char* id : {"pan.stop.bumper", "pan.stop.gear_torque", "pan.stop.tab_bending"}) {
    const Finding* f = finding(a, id);
    ASSERT_NE(f, nullptr) << id;
    EXPECT_EQ(f->verdict, Verdict::fails) << id;
    EXPECT_FALSE(f->remedies.empty()) << id;
    for (const Remedy& remedy : f->remedies) {
      Rig mended = rig;
      *find_quantity(mended, remedy.path) = si_quantity(remedy.value_si);
      const Verdict now = finding(analyse(mended, {.remedies = false}), id)->verdict;
      EXPECT_TRUE(now == Verdict::holds || now == Verdict::tight) << id << ": " << remedy.text;
      ++tried;
    }
  }
  EXPECT_GE(tried, 6);
}

TEST(StopFindings, ATabOfUnknownMaterialIsUnknown) {
  Rig rig = owl_with_bumper();
  rig.pan.stops.material = {};
  const Analysis a = analyse(rig, {.remedies = false});
  const Finding* f = finding(a, "pan.stop.tab_bending");
  ASSERT_NE(f, nullptr);
  EXPECT_EQ(f->verdict, Verdict::unknown);
  EXPECT_TRUE(f->demand);
  EXPECT_EQ(f->because, "needs pan.stops.tab_strength or a material");
}

TEST(StopFindings, TheNarrowestTabOfATrailingStopCounts) {
  Rig rig = owl_with_bumper();
  const double alone = *analyse(rig, {.remedies = false}).value("pan.stop.tab_bending");
  rig.pan.stops.kind = {"trailing"};
  rig.pan.stops.trailer_width_m = si_quantity(0.004);
  EXPECT_NEAR(*analyse(rig, {.remedies = false}).value("pan.stop.tab_bending") / alone, 4,
              tol(1e-12));
}

}  // namespace
}  // namespace gazewright
