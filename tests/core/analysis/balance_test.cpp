#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/analysis/counterweight.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;
using tests::owl;
constexpr double kG = kStandardGravity_mps2;

/// The owl with so little friction and ratio that its head falls.
Rig falling_owl() {
  Rig rig = owl();
  rig.on_tilt[1].centre_m[0] = si_quantity(0.12);
  rig.tilt.gearbox.drag_Nm = si_quantity(1e-4);
  rig.tilt.friction.coulomb_Nm = si_quantity(2e-3);
  rig.tilt.balance.counterweight_arm_m = si_quantity(0.05);
  return rig;
}

TEST(Balance, OfTheOwlIsThatOfItsCameraAlone) {
  const Analysis a = analyse(owl(), {.remedies = false});
  // The ball is on the axis: 48 g at 38 mm forward and 2 mm up.
  EXPECT_NEAR(*a.value("tilt.balance.forward"), 0.048 * 0.038, tol(1e-12));
  EXPECT_NEAR(*a.value("tilt.balance.up"), 0.048 * 0.002, tol(1e-12));
  // Torque g·m·√(x² + z²) where the camera is level: at −atan(2/38), within the travel.
  EXPECT_NEAR(*a.value("tilt.balance.worst_angle"), -std::atan2(0.002, 0.038), tol(1e-9));
  const double torque = kG * 0.048 * std::hypot(0.038, 0.002);
  EXPECT_NEAR(*a.value("tilt.gravity.torque_max"), torque, tol(1e-9));
  const double current = torque / (9 * *a.value("tilt.motor.torque_constant"));
  EXPECT_NEAR(*a.value("tilt.balance.hold_current"), current, tol(1e-9));
  EXPECT_NEAR(*a.value("tilt.balance.hold_heat"), 1.5 * 0.062 * current * current, tol(1e-9));
  EXPECT_NEAR(*a.value("tilt.balance.friction_share"),
              *a.value("tilt.power_off.holding_torque") / torque, tol(1e-9));
}

TEST(Balance, ItsWorstAngleIsFoundWhereverTheTravelLies) {
  for (const double turned : {-6.0, -4.0, -3.0, 3.0, 4.0, 6.0}) {
    Rig rig = owl();
    rig.tilt.stops.centre_rad = si_quantity(turned);
    const Analysis a = analyse(rig, {.remedies = false});
    const double at = *a.value("tilt.balance.worst_angle");
    // Gravity's torque on the camera follows cos(q + atan(2/38)).
    EXPECT_NEAR(
        kG * 0.048 * std::hypot(0.038, 0.002) * std::abs(std::cos(at + std::atan2(0.002, 0.038))),
        *a.value("tilt.gravity.torque_max"), tol(1e-9))
        << turned;
  }
}

TEST(Balance, TiltsDriveIsMissedWhereTheBodiesOnPanAreTooLightForIt) {
  Rig rig = owl();
  rig.on_pan.resize(1);
  rig.tilt.motor.mass_kg = si_quantity(0.1);
  rig.tilt.gearbox.mass_kg = si_quantity(0.2);
  const auto weigh = [&](double on_pan_kg, double ball_kg) {
    rig.on_pan[0].mass_kg = si_quantity(on_pan_kg);
    rig.on_tilt[0].mass_kg = si_quantity(ball_kg);
    return analyse(rig, {.remedies = false, .quick = true});
  };
  const Analysis light = weigh(0.27, 0.8);
  ASSERT_NE(finding(light, "mass.tilt_drive"), nullptr);
  EXPECT_EQ(finding(light, "mass.tilt_drive")->verdict, Verdict::tight);
  EXPECT_EQ(finding(light, "mass.tilt_drive")->because.substr(0, 72),
            "tilt's motor and gearbox weigh 300 g together, the bodies on pan 270 g: ");
  EXPECT_EQ(finding(weigh(0.33, 0.8), "mass.tilt_drive"), nullptr);
  // What rides in the ball may be the motor, the gearbox or both.
  for (const double ball_kg : {0.11, 0.19, 0.33})
    EXPECT_EQ(finding(weigh(0.27, ball_kg), "mass.tilt_drive"), nullptr) << ball_kg;
  rig.tilt.motor.mass_kg = {};
  EXPECT_EQ(finding(weigh(0.01, 0.8), "mass.tilt_drive"), nullptr) << "nothing to compare with";
}

TEST(Balance, OfPanIsThatOfAllThatTurns) {
  const Analysis a = analyse(owl(), {.remedies = false});
  const double left = 0.210 * 0.062 + 0.140 * 0.088, forward = 0.048 * 0.038;
  EXPECT_NEAR(*a.value("pan.balance.left"), left, tol(1e-12));
  EXPECT_NEAR(*a.value("pan.balance.forward"), forward, tol(1e-12));
  EXPECT_NEAR(*a.value("pan.balance.offset"), std::hypot(left, forward) / (0.350 + 0.208),
              tol(1e-12));
}

TEST(Balance, TheCurveIsGravityOverTheTravelWithItsWorstAtTheWorstAngle) {
  Rig rig = owl();
  rig.stand.lean_rad = si_quantity(0.2);
  const Analysis a = analyse(rig, {.remedies = false});
  for (const Axis axis : kAxes) {
    const std::string name = name_of(axis);
    const GravityOverTravel& over = a.gravity[static_cast<std::size_t>(axis)];
    ASSERT_EQ(over.angle_rad.size(), over.torque_Nm.size());
    ASSERT_GT(over.angle_rad.size(), 50u);
    EXPECT_NEAR(over.angle_rad.back() - over.angle_rad.front(), *a.value(name + ".travel.usable"),
                tol(1e-9));
    double largest = 0;
    for (const double torque : over.torque_Nm) largest = std::max(largest, std::abs(torque));
    const double most = *a.value(name + ".gravity.torque_max");
    EXPECT_LE(largest, most * (1 + 1e-9));
    // The peak of a sinusoid between points of 91: 1 − cos(half a step) of a turn, 6e-4 at most.
    EXPECT_GE(largest, most * (1 - 6e-4));
    EXPECT_NEAR(over.friction_Nm, *a.value(name + ".power_off.holding_torque"), tol(1e-12));
  }
}

TEST(Balance, WithoutACounterweightsArmItsFiguresStayAside) {
  const Analysis a = analyse(owl(), {.remedies = false});
  EXPECT_FALSE(a.value("tilt.balance.counterweight_mass"));
  EXPECT_TRUE(a.figure("tilt.balance.counterweight_mass")->is_aside);
  EXPECT_EQ(finding(a, "tilt.balance.torque"), nullptr);
}

TEST(Balance, ACounterweightCancelsTheOffsetAndCostsItsInertia) {
  Rig rig = owl();
  rig.tilt.balance.counterweight_arm_m = si_quantity(0.05);
  const Analysis before = analyse(rig, {.remedies = false});
  const double mass = 0.048 * std::hypot(0.038, 0.002) / 0.05;
  EXPECT_NEAR(*before.value("tilt.balance.counterweight_mass"), mass, tol(5.1e-5)) << "0.1 g";
  const Rig after_rig = *with_whole_remedy(rig, {"", "counterweight.tilt", 0});
  ASSERT_EQ(after_rig.on_tilt.size(), 3u);
  EXPECT_EQ(after_rig.on_tilt.back().mass_kg.written, "36.5 g");
  const Analysis after = analyse(after_rig, {.remedies = false});
  EXPECT_LT(*after.value("tilt.balance.offset"), 0.01 * *before.value("tilt.balance.offset"));
  EXPECT_NEAR(*after.value("tilt.inertia.load") - *before.value("tilt.inertia.load"),
              *before.value("tilt.balance.counterweight_inertia"), tol(1e-12));
}

TEST(Balance, OfPanGoesOppositeAtTheHeightOfTheCentre) {
  Rig rig = owl();
  rig.pan.balance.counterweight_arm_m = si_quantity(0.1);
  const Rig after = *with_whole_remedy(rig, {"", "counterweight.pan", 0});
  ASSERT_EQ(after.on_pan.size(), 3u);
  EXPECT_LT(after.on_pan.back().centre_m[1].value(), 0);
  const double before_m = *analyse(rig, {.remedies = false}).value("pan.balance.offset");
  EXPECT_LT(*analyse(after, {.remedies = false}).value("pan.balance.offset"), 0.01 * before_m);
}

TEST(Balance, AHeadThatFallsIsOfferedACounterweightThatKeepsIt) {
  const Rig rig = falling_owl();
  const Analysis before = analyse(rig);
  const Finding* falls = finding(before, "tilt.power_off.holds");
  ASSERT_NE(falls, nullptr);
  ASSERT_EQ(falls->verdict, Verdict::fails);
  ASSERT_FALSE(falls->remedies.empty());
  EXPECT_EQ(falls->remedies[0].path, "counterweight.tilt");
  EXPECT_TRUE(falls->remedies[0].text.ends_with("would keep it from falling"));
  const Analysis after = analyse(*with_whole_remedy(rig, falls->remedies[0]), {.remedies = false});
  EXPECT_EQ(finding(after, "tilt.power_off.holds")->verdict, Verdict::holds);
}

TEST(Balance, OtherRemediesAreFieldsValues) {
  EXPECT_FALSE(with_whole_remedy(owl(), {"", "pan.gearbox.ratio", 12}));
  EXPECT_TRUE(with_whole_remedy(owl(), {"", "swap", 0}));
}

TEST(Balance, RandomRigsAreBalancedOrExplained) {
  tests::Random random(77);
  for (int i = 0; i < 200; ++i) {
    Rig rig = tests::random_bodies_rig(random);
    for (const Axis axis : kAxes)
      rig.axis(axis).balance.counterweight_arm_m = si_quantity(random.log_uniform(0.01, 1));
    const Rig filled = with_defaults(rig);
    const RigBodies bodies = rig_bodies(filled);
    for (const Axis axis : kAxes) {
      const auto body = counterweight_of(filled, bodies, axis);
      const double off = off_axis(bodies, axis).size_kgm();
      if (!body) {
        EXPECT_LT(off / filled.axis(axis).balance.counterweight_arm_m.value(), 1e-4) << i;
        continue;
      }
      const Rig balanced = *with_whole_remedy(rig, {"", counterweight_path(axis), 0});
      const double left = off_axis(rig_bodies(with_defaults(balanced)), axis).size_kgm();
      // Mass to 0.1 g at the arm, place to 0.05 mm along two directions.
      const double arm = filled.axis(axis).balance.counterweight_arm_m.value();
      EXPECT_LE(left, 5.1e-5 * arm + 7.2e-5 * body->mass_kg.value() + 1e-12) << i;
    }
  }
}

}  // namespace
}  // namespace gazewright
