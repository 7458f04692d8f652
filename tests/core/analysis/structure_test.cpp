#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/analysis/analysis.h"
#include "core/bodies/bodies.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

/// Figures and findings of the arm and of the stand.
namespace gazewright {
namespace {

using tests::finding;
using tests::owl;
constexpr double kG = kStandardGravity_mps2;

/// The owl with its side arm described: 150 mm of petg, 40 by 16 mm, wall 2.4 mm, quarter filled.
Rig armed() {
  Rig rig = owl();
  rig.arm.material = "petg";
  rig.arm.length_m = si_quantity(0.15);
  rig.arm.width_m = si_quantity(0.04);
  rig.arm.height_m = si_quantity(0.016);
  rig.arm.wall_m = si_quantity(0.0024);
  rig.arm.infill = si_quantity(0.25);
  return rig;
}

TEST(ArmFigures, StayAsideWithoutAnArm) {
  const Analysis a = analyse(owl(), {.remedies = false});
  for (const Figure& figure : a.figures) {
    const bool is_of_arm =
        figure.id.starts_with("arm.") || figure.id.find(".arm.") != std::string::npos;
    EXPECT_TRUE(!is_of_arm || figure.is_aside) << figure.id;
  }
  for (const Finding& f : a.findings) EXPECT_EQ(f.id.find("arm."), std::string::npos) << f.id;
}

TEST(ArmFigures, AreTheCantileverOfTheHandbook) {
  const Analysis a = analyse(armed(), {.remedies = false});
  // Ball and camera tilt; of on_pan only the motor is as high as the arm's last quarter.
  EXPECT_NEAR(*a.value("arm.carried"), 0.160 + 0.048 + 0.140, tol(1e-12));
  // The ball's 60 mm and half of 16 mm; the load's centre is 140 g of 348 g at 88 mm.
  const double overhang = std::abs(0.068 - 0.140 * 0.088 / 0.348);
  EXPECT_NEAR(*a.value("arm.overhang"), overhang, tol(1e-12));
  const double in_w = 0.04 - 0.0048, in_h = 0.016 - 0.0048;
  const double I = (0.04 * std::pow(0.016, 3) - (1 - 0.0625) * in_w * std::pow(in_h, 3)) / 12;
  const double angle = 0.348 * kG * overhang * 0.15 / (1.9e9 * I);
  EXPECT_NEAR(*a.value("arm.droop_angle"), angle, tol(1e-9));
  const double mass = 1270 * 0.15 * (0.04 * 0.016 - 0.75 * in_w * in_h);
  EXPECT_NEAR(*a.value("arm.mass"), mass, tol(1e-9));
  EXPECT_NEAR(*a.value("arm.bending_mode"),
              std::sqrt(3 * 1.9e9 * I / (std::pow(0.15, 3) * (0.348 + 33.0 / 140 * mass))) /
                  (2 * std::numbers::pi),
              tol(1e-6));
  EXPECT_LT(*a.value("arm.first_mode"), *a.value("arm.bending_mode"));
  EXPECT_LT(*a.value("arm.first_mode"), *a.value("arm.torsion_mode"));
  EXPECT_DOUBLE_EQ(*a.value("arm.first_mode"), *a.value("arm.side.first_mode"));
  EXPECT_GT(*a.value("arm.fork.first_mode"), *a.value("arm.side.first_mode"));
  EXPECT_LT(*a.value("arm.fork.droop"), *a.value("arm.side.droop"));
  EXPECT_NEAR(*a.value("arm.fork.inertia"), 2 * *a.value("arm.side.inertia"), tol(1e-12));
  EXPECT_GE(*a.value("pan.arm.mode"), *a.value("arm.first_mode"));
  EXPECT_GE(*a.value("tilt.arm.mode"), *a.value("arm.first_mode"));
  const double J = *a.value("pan.inertia.load") + *a.value("pan.inertia.rotor_reflected");
  EXPECT_NEAR(*a.value("pan.arm.speed_gain_ceiling"),
              J * 2 * std::numbers::pi * *a.value("pan.arm.mode") / 3, tol(1e-12));
}

/// The loops know one spring, the gearbox's: the arm's own mode ends their model.
TEST(ArmFigures, TheArmsModeEndsTheModelOfTheLoops) {
  const Analysis bare = analyse(owl(), {.remedies = false});
  EXPECT_EQ(*bare.value("pan.loop.model_end"), 1000) << "the current loop's bandwidth";
  const Analysis a = analyse(armed(), {.remedies = false});
  for (const char* axis : {"pan", "tilt"}) {
    const double mode = *a.value(std::string(axis) + ".arm.mode");
    ASSERT_LT(mode, 1000);
    EXPECT_EQ(*a.value(std::string(axis) + ".loop.model_end"), mode);
  }
}

TEST(ArmFigures, LayersAcrossTheArmMakeItWeaker) {
  Rig rig = armed();
  const Analysis along = analyse(rig, {.remedies = false});
  rig.arm.layers = {"across"};
  const Analysis across = analyse(rig, {.remedies = false});
  EXPECT_LT(*across.value("arm.first_mode"), *along.value("arm.first_mode"));
  EXPECT_LT(*finding(across, "arm.strength")->capacity, *finding(along, "arm.strength")->capacity);
  EXPECT_NEAR(*finding(along, "arm.strength")->capacity, 35e6 / 3, tol(1));
}

TEST(ArmFigures, TheRigsOwnMaterialGoesFirstAndSaysWhatItLacks) {
  Rig rig = armed();
  Material own;
  own.name = "petg";
  own.modulus_Pa = si_quantity(3.8e9);
  rig.materials.push_back(own);
  const Analysis lacking = analyse(rig, {.remedies = false});
  EXPECT_EQ(lacking.figure("arm.first_mode")->because, "needs materials[0].density");
  rig.materials[0].density_kgpm3 = si_quantity(1270);
  const Analysis a = analyse(rig, {.remedies = false});
  EXPECT_NEAR(*a.value("arm.bending_mode") /
                  *analyse(armed(), {.remedies = false}).value("arm.bending_mode"),
              std::sqrt(2.0), tol(1e-9));
  const Finding* strength = finding(a, "arm.strength");
  EXPECT_EQ(strength->verdict, Verdict::unknown);
  EXPECT_EQ(strength->because, "needs materials[0].strength");
}

TEST(ArmFindings, AnUnknownMaterialFailsWithTheNamesThatThereAre) {
  Rig rig = armed();
  rig.arm.material = "petq";
  const Analysis a = analyse(rig);
  const Finding* material = finding(a, "arm.material");
  ASSERT_NE(material, nullptr);
  EXPECT_EQ(material->verdict, Verdict::fails);
  EXPECT_FALSE(material->axis);
  EXPECT_TRUE(material->because.starts_with("there is no material “petq”; did you mean petg?"));
  EXPECT_FALSE(a.value("arm.first_mode"));
  const Analysis known = analyse(armed(), {.remedies = false});
  EXPECT_EQ(finding(known, "arm.material"), nullptr);
}

TEST(ArmFindings, AMissingWallOrMaterialIsNamed) {
  Rig rig = armed();
  rig.arm.wall_m = {};
  EXPECT_EQ(analyse(rig, {.remedies = false}).figure("arm.droop")->because, "needs arm.wall");
  rig.arm.section = {"bar"};
  EXPECT_TRUE(analyse(rig, {.remedies = false}).value("arm.droop"));
  rig.arm.infill = si_quantity(0);
  EXPECT_EQ(analyse(rig, {.remedies = false}).figure("arm.droop")->because,
            "needs arm.infill above 0, as a bar without a filling is nothing: a tube is a box");
  rig.arm.infill = {};  // of a bar all of it
  const double droop = analyse(rig, {.remedies = false}).value("arm.droop").value();
  rig.arm.infill = si_quantity(1);
  EXPECT_EQ(analyse(rig, {.remedies = false}).value("arm.droop"), droop);
  rig.arm.material.clear();
  EXPECT_EQ(analyse(rig, {.remedies = false}).figure("arm.droop")->because, "needs arm.material");
}

TEST(ArmFindings, ALoopThatIsTooQuickForTheArmIsOfferedAStifferOne) {
  Rig rig = armed();
  rig.arm.height_m = si_quantity(0.008);
  const Analysis a = analyse(rig);
  const Finding* soft = finding(a, "pan.arm.crossover");
  ASSERT_NE(soft, nullptr);
  EXPECT_EQ(soft->verdict, Verdict::fails) << soft->because;
  ASSERT_FALSE(soft->remedies.empty());
  for (const Remedy& remedy : soft->remedies) {
    Rig mended = rig;
    *find_quantity(mended, remedy.path) = si_quantity(remedy.value_si);
    const Analysis after = analyse(mended, {.remedies = false});
    EXPECT_GE(*finding(after, "pan.arm.crossover")->margin, 0) << remedy.text;
  }
}

TEST(ArmFindings, ALoopWithoutCrossoverEitherLeavesTheArmAloneOrFails) {
  Rig rig = armed();
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(1e6);
  EXPECT_EQ(finding(analyse(rig, {.remedies = false}), "pan.arm.crossover")->verdict,
            Verdict::fails);
  rig.pan.loop.speed_gain_Nmsprad = si_quantity(1e-9);
  rig.pan.loop.speed_integral_gain_Nmprad = si_quantity(0);
  EXPECT_EQ(finding(analyse(rig, {.remedies = false}), "pan.arm.crossover")->verdict,
            Verdict::holds);
}

TEST(StandFigures, OfTheOwlNeedNoDetail) {
  const Analysis a = analyse(owl());
  const double moving = 0.350 + 0.208;
  EXPECT_NEAR(*a.value("stand.holding_moment"), (3.2 + moving) * kG * 0.11, tol(1e-9));
  for (const char* id :
       {"stand.resting_moment", "stand.tip_lean", "stand.moving_moment", "stand.pan_reaction",
        "stand.grip_needed", "stand.first_mode", "stand.sway", "stand.sway_px", "pan.stand.sway",
        "tilt.stand.sway", "pan.stand.sway_left_px", "tilt.stand.sway_left_px"})
    EXPECT_TRUE(a.value(id)) << id << ": " << a.figure(id)->because;
  EXPECT_GT(*a.value("stand.sway"), 0);
  EXPECT_NEAR(*a.value("stand.sway_px"),
              *a.value("stand.sway") * *a.value("camera.pixels_per_radian"), tol(1e-9));
  ASSERT_NE(finding(a, "stand.tipping"), nullptr);
  EXPECT_FALSE(finding(a, "stand.tipping")->axis);
  EXPECT_EQ(finding(a, "stand.sliding"), nullptr) << "nobody entered a grip";
}

TEST(StandFigures, TheReactionIsThatOfLoadAndRotor) {
  const Analysis a = analyse(owl(), {.remedies = false});
  const double rotor = *a.value("pan.inertia.rotor_reflected") / 18;
  const double inertia = *a.value("pan.inertia.load") + rotor;
  // At least that of starting; braking is harder by gear losses and friction.
  const double starting = inertia * *a.value("pan.output.acceleration_peak");
  EXPECT_GE(*a.value("stand.pan_reaction"), starting);
  EXPECT_LT(*a.value("stand.pan_reaction"), 1.5 * starting);
}

TEST(StandFindings, ANarrowStandTipsAndAWiderOneIsOffered) {
  Rig rig = owl();
  rig.stand.half_width_m = si_quantity(0.06);
  const Analysis a = analyse(rig);
  const Finding* tips = finding(a, "stand.tipping");
  ASSERT_EQ(tips->verdict, Verdict::fails) << tips->because;
  ASSERT_FALSE(tips->remedies.empty());
  for (const Remedy& remedy : tips->remedies) {
    Rig mended = rig;
    *find_quantity(mended, remedy.path) = si_quantity(remedy.value_si);
    const Analysis after = analyse(mended, {.remedies = false});
    const Finding* now = finding(after, "stand.tipping");
    EXPECT_GE(*now->margin, 0) << remedy.text;
  }
}

TEST(StandFindings, FeetThatAreScrewedDownDoNotSlideAndSmoothOnesDo) {
  Rig rig = owl();
  rig.stand.grip = si_quantity(kInfinity);
  const Analysis screwed = analyse(rig, {.remedies = false});
  EXPECT_EQ(finding(screwed, "stand.sliding")->verdict, Verdict::holds);
  rig.stand.grip = si_quantity(0.02);
  const Analysis a = analyse(rig);
  EXPECT_EQ(finding(a, "stand.sliding")->verdict, Verdict::fails);
  EXPECT_NEAR(*finding(a, "stand.sliding")->demand / *finding(a, "stand.sliding")->capacity,
              *a.value("stand.grip_needed") / 0.02, tol(1e-9));
}

TEST(StandFigures, AQuickAnalysisLeavesTheSwayOut) {
  const Analysis a = analyse(owl(), {.quick = true});
  EXPECT_FALSE(a.value("stand.sway"));
  EXPECT_TRUE(a.value("stand.holding_moment"));
}

}  // namespace
}  // namespace gazewright
