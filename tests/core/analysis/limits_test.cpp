#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/analysis/analysis.h"
#include "core/units/angle.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

/// Soft limits and power failure as figures and findings of whole rigs.
namespace gazewright {
namespace {

using tests::owl;

Analysis analysed(const Rig& rig) { return analyse(rig, {.remedies = false}); }

const Finding& the_finding(const Analysis& analysis, std::string_view id) {
  static const Finding none;
  const auto found = std::ranges::find(analysis.findings, id, &Finding::id);
  if (found != analysis.findings.end()) return *found;
  ADD_FAILURE() << "no finding " << id;
  return none;
}

/// The rig seen in a mirror across its x axis: every angle changes its sign.
Rig mirrored(Rig rig) {
  const auto turn = [](Quantity& q) {
    if (q.si) q.si = -*q.si;
  };
  for (auto* bodies : {&rig.on_pan, &rig.on_tilt})
    for (Body& body : *bodies) turn(body.centre_m[0]);
  turn(rig.tilt_axis_at_m[0]);
  turn(rig.stand.lean_rad);
  turn(rig.pan.stops.centre_rad);
  turn(rig.tilt.stops.centre_rad);
  return rig;
}

Rig leaning_owl() {
  Rig rig = owl();
  rig.stand.lean_rad = si_quantity(0.2);
  rig.pan.stops.centre_rad = si_quantity(0.3);
  return rig;
}

TEST(Limits, AMirroredRigMirrorsThemAll) {
  const Analysis here = analysed(leaning_owl()), there = analysed(mirrored(leaning_owl()));
  int compared = 0;
  for (const Figure& figure : here.figures) {
    const bool of_limits = figure.id.find(".travel.") != std::string::npos ||
                           figure.id.find(".power_off.") != std::string::npos;
    if (!of_limits) continue;
    const auto other = there.value(figure.id);
    ASSERT_EQ(figure.value.has_value(), other.has_value()) << figure.id;
    if (!other) continue;
    EXPECT_NEAR(*figure.value, *other, tol(1e-9 * (1 + std::abs(*other)))) << figure.id;
    ++compared;
  }
  EXPECT_GE(compared, 20);
  for (const Axis axis : kAxes) {
    const SpeedBound& a = here.of(axis).speed_over_travel.stop(End::most);
    const SpeedBound& b = there.of(axis).speed_over_travel.stop(End::least);
    ASSERT_FALSE(a.angle_rad.empty());
    ASSERT_EQ(a.angle_rad.size(), b.angle_rad.size());
    for (std::size_t i = 0; i < a.angle_rad.size(); ++i) {
      EXPECT_NEAR(a.speed_radps[i], b.speed_radps[b.speed_radps.size() - 1 - i], tol(1e-8));
    }
  }
}

TEST(Limits, TheLeastInsetJustHoldsTheAxis) {
  Rig rig = owl();
  const double least = analysed(rig).value("pan.travel.least_inset").value();
  const double braking = analysed(rig).value("pan.travel.braking_angle_limit").value();
  // Two samples at 8 kHz and 1/(2π·1 kHz) at 900°/s.
  EXPECT_NEAR(least - braking, 900 * kDegree_rad * (2 / 8e3 + 1 / (2 * std::numbers::pi * 1e3)),
              tol(1e-12));
  rig.pan.stops.soft_inset_rad = si_quantity(least * 1.0001);
  EXPECT_EQ(analysed(rig).value("pan.travel.speed_at_stop"), 0);
  EXPECT_EQ(the_finding(analysed(rig), "pan.travel.soft_inset").verdict, Verdict::tight);
  rig.pan.stops.soft_inset_rad = si_quantity(braking / 2);
  const double left = analysed(rig).value("pan.travel.speed_at_stop").value();
  EXPECT_GT(left, 0.5 * 900 * kDegree_rad);  // half the way takes half the energy, or near that
  EXPECT_LT(left, 0.85 * 900 * kDegree_rad);
  EXPECT_EQ(the_finding(analysed(rig), "pan.travel.soft_inset").verdict, Verdict::fails);
}

TEST(Limits, TheSpeedAllowedOverTheTravelAgreesWithTheLeastInset) {
  const Analysis analysis = analysed(owl());
  for (const Axis axis : kAxes) {
    const AxisCurves& curves = analysis.of(axis);
    const double need =
        analysis.value(std::string(name_of(axis)) + ".travel.braking_angle_limit").value();
    for (const End end : kEnds) {
      const double angle =
          end_angle_rad(curves.travel, *curves.travel.stops_rad, end) - sign_of(end) * need;
      // Gravity at its angle is never worse than the worst; the bound is drawn with 60 chords.
      EXPECT_GT(bound_at_radps(curves.speed_over_travel.stop(end), angle),
                0.97 * 900 * kDegree_rad);
    }
  }
}

TEST(Limits, ACableShorterThanTheSoftLimitsIsOutOfOrder) {
  Rig rig = owl();
  EXPECT_EQ(the_finding(analysed(rig), "pan.travel.order").verdict, Verdict::holds);
  rig.pan.cable.free_length_m = si_quantity(0.12);  // ±108°, the soft limits are at ±153°
  const Analysis analysis = analysed(rig);
  const Finding& order = the_finding(analysis, "pan.travel.order");
  EXPECT_EQ(order.verdict, Verdict::fails);
  EXPECT_NEAR(*order.capacity, 216 * kDegree_rad, tol(1e-9));
  EXPECT_TRUE(order.because.starts_with("one way cable 108°, soft limit ")) << order.because;
  EXPECT_NE(order.because.find("the other way cable −108°, soft limit "), std::string::npos)
      << order.because;
  rig.pan.stops.presence = Presence::none;
  EXPECT_EQ(the_finding(analysed(rig), "pan.travel.order").verdict, Verdict::fails);
  rig.pan.cable.presence = Presence::none;
  EXPECT_EQ(tests::finding(analysed(rig), "pan.travel.order"), nullptr);
}

TEST(PowerOff, ANoseHeavyTiltFallsAndSaysSo) {
  Rig rig = owl();
  EXPECT_EQ(the_finding(analysed(rig), "tilt.power_off.holds").verdict, Verdict::holds);
  rig.on_tilt[1].mass_kg = si_quantity(0.4);  // 0.4 kg 38 mm in front: 149 mN·m
  const Analysis analysis = analysed(rig);
  const Finding& holds = the_finding(analysis, "tilt.power_off.holds");
  EXPECT_EQ(holds.verdict, Verdict::fails);
  EXPECT_NEAR(*holds.demand, 0.4 * 9.80665 * std::hypot(0.038, 0.002), tol(1e-9));
  EXPECT_NEAR(*holds.capacity, 0.030 + 9 * 0.005 / 0.91, tol(1e-12));
  EXPECT_NE(holds.because.find("it falls"), std::string::npos) << holds.because;
  EXPECT_FALSE(analysis.value("tilt.power_off.coast_angle"));
  EXPECT_TRUE(analysis.figure("tilt.power_off.coast_angle")
                  ->because.starts_with("coasts into the stop: gravity is more than"))
      << analysis.figure("tilt.power_off.coast_angle")->because;
}

TEST(PowerOff, AStiffCableTurnsTheAxisFromItsEnds) {
  Rig rig = owl();
  rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(0.02);  // two cables, 260 mm
  const Analysis soft = analysed(owl()), stiff = analysed(rig);
  EXPECT_EQ(the_finding(soft, "pan.power_off.holds").verdict, Verdict::holds);
  const Finding& holds = the_finding(stiff, "pan.power_off.holds");
  // Pan stands upright, so only the cable pulls: most at the stops.
  EXPECT_NEAR(*holds.demand, 2 * 0.02 / 0.26 * *soft.value("pan.travel.stops") / 2, tol(1e-12));
  EXPECT_EQ(holds.verdict, Verdict::fails);
  EXPECT_NE(holds.because.find("it turns by itself"), std::string::npos) << holds.because;
  EXPECT_FALSE(stiff.value("pan.power_off.coast_angle"));
  EXPECT_NE(stiff.figure("pan.power_off.coast_angle")->because.find("gravity and cable"),
            std::string::npos);
  for (const char* id :
       {"pan.travel.braking_angle", "pan.travel.braking_angle_limit", "pan.travel.least_inset"})
    EXPECT_GT(*stiff.value(id), *soft.value(id)) << id;
  // Outwards from the soft limit the cable holds back.
  EXPECT_LT(*stiff.value("pan.power_off.stop_speed"), *soft.value("pan.power_off.stop_speed"));
  Rig near = owl();
  near.pan.stops.soft_inset_rad = rig.pan.stops.soft_inset_rad = si_quantity(0.005);
  EXPECT_GT(*analysed(rig).value("pan.travel.speed_at_stop"),
            *analysed(near).value("pan.travel.speed_at_stop"));
  rig.pan.cable.free_length_m = {};
  EXPECT_EQ(analysed(rig).figure("pan.power_off.coast_angle")->because,
            "needs pan.cable.free_length");
}

TEST(PowerOff, AGearThatLocksItselfHolds) {
  Rig rig = owl();
  rig.on_tilt[1].mass_kg = si_quantity(0.4);
  rig.tilt.gearbox.back_efficiency = si_quantity(0);
  const Analysis analysis = analysed(rig);
  EXPECT_EQ(the_finding(analysis, "tilt.power_off.holds").verdict, Verdict::holds);
  EXPECT_FALSE(analysis.value("tilt.power_off.holding_torque"));
}

TEST(PowerOff, CoastingIsJudgedByWhatTheGearboxBears) {
  Rig rig = owl();
  const Analysis analysis = analysed(rig);
  const Finding& coast = the_finding(analysis, "pan.power_off.coast");
  const double speed = analysis.value("pan.power_off.stop_speed").value();
  EXPECT_GT(speed, 0);
  EXPECT_LT(speed, analysis.value("pan.output.speed_top").value());
  const double inertia = analysis.value("pan.inertia.load").value() +
                         analysis.value("pan.inertia.rotor_reflected").value();
  EXPECT_NEAR(*coast.demand, speed * std::sqrt(400 * inertia), tol(1e-9));
  EXPECT_LT(*coast.demand, *the_finding(analysis, "pan.stop.torque").demand);
  EXPECT_NE(coast.because.find("coasts into it at"), std::string::npos) << coast.because;
  Rig bumped = rig;
  bumped.pan.stops.bumper_travel_rad = si_quantity(0.01);
  EXPECT_EQ(the_finding(analysed(bumped), "pan.power_off.coast").verdict, Verdict::unknown)
      << "the bumper ends, and nobody says what follows";
  bumped.pan.stops.hard_stiffness_Nmprad = si_quantity(4000);
  EXPECT_GT(*the_finding(analysed(bumped), "pan.power_off.coast").demand, *coast.demand);
  rig.pan.friction.coulomb_Nm = si_quantity(80);
  const Analysis stiff = analysed(rig);
  EXPECT_EQ(stiff.value("pan.power_off.stop_speed"), 0);
  EXPECT_EQ(the_finding(stiff, "pan.power_off.coast").verdict, Verdict::holds);
  rig.pan.stops.presence = Presence::none;
  EXPECT_EQ(tests::finding(analysed(rig), "pan.power_off.coast"), nullptr) << "there are no stops";
}

TEST(PowerOff, TheLoopsLimitBoundsTheBlowUntilItFails) {
  Rig rig = owl();
  rig.pan.loop.speed_limit_radps = si_quantity(1);
  const Analysis analysis = analysed(rig);
  const double top = analysis.value("pan.output.speed_top").value();
  ASSERT_GT(top, 2);
  const double limited = analysis.value("pan.power_off.limited_stop_speed").value();
  EXPECT_LE(limited, 1);
  EXPECT_GT(analysis.value("pan.power_off.stop_speed").value(), limited);
  EXPECT_NE(the_finding(analysis, "pan.power_off.coast")
                .because.find("(if the loop's limit of 57.3 °/s fails)"),
            std::string::npos)
      << the_finding(analysis, "pan.power_off.coast").because;
  rig.pan.loop.speed_limit_radps = si_quantity(10 * top);
  const Analysis free = analysed(rig);
  EXPECT_EQ(free.value("pan.power_off.limited_stop_speed"), free.value("pan.power_off.stop_speed"));
  EXPECT_EQ(the_finding(free, "pan.power_off.coast").because.find("if the loop"),
            std::string::npos);
}

TEST(Limits, AreUnknownWithTheirInputsAndNeverNotANumber) {
  const auto without = [](auto&& forget) {
    Rig rig = owl();
    forget(rig.pan);
    return analysed(rig);
  };
  const Analysis no_gap = without([](AxisParts& p) { p.stops.soft_inset_rad = {}; });
  EXPECT_TRUE(no_gap.value("pan.travel.least_inset")) << "helps to choose one";
  EXPECT_FALSE(no_gap.value("pan.travel.speed_at_stop"));
  EXPECT_EQ(the_finding(no_gap, "pan.power_off.coast").verdict, Verdict::unknown);
  EXPECT_TRUE(no_gap.of(Axis::pan).speed_over_travel.stop(End::most).angle_rad.empty());
  const Analysis wide = without([](AxisParts& p) { p.stops.tab_width_m = si_quantity(0.2); });
  EXPECT_FALSE(wide.value("pan.power_off.stop_speed"));
  EXPECT_EQ(the_finding(wide, "pan.power_off.coast").verdict, Verdict::unknown);
  const Analysis narrow = without([](AxisParts& p) { p.stops.soft_inset_rad = si_quantity(3); });
  EXPECT_EQ(narrow.value("pan.travel.soft"), 0);
  EXPECT_TRUE(narrow.of(Axis::pan).speed_over_travel.soft(End::most).angle_rad.empty());
  for (const Analysis* analysis : {&no_gap, &wide, &narrow})
    for (const Finding& f : analysis->findings)
      EXPECT_TRUE(!f.demand || std::isfinite(*f.demand)) << f.id;
}

}  // namespace
}  // namespace gazewright
