#include "core/motion/cable_torque.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/analysis/analysis.h"
#include "core/motion/axis_model.h"
#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::owl;
using tests::Random;

Cable cable_of(const char* routing, double count, double free_length_m) {
  Cable cable;
  cable.presence = Presence::given;
  cable.routing.value = routing;
  cable.count = si_quantity(count);
  cable.free_length_m = si_quantity(free_length_m);
  cable.torsion_stiffness_Nm2prad = cable.bending_stiffness_Nm2 = cable.friction_Nm =
      si_quantity(0);
  return cable;
}

// Source: Boresi & Schmidt, Advanced Mechanics of Materials, ex. 6.1: a tube of 25 and 22 mm radius
// and G = 77 GPa turns by 0.0264 rad/m (0.026437) under 500 N·m.
TEST(CableTorque, OfATwistedTubeIsThatOfTheBook) {
  Cable cable = cable_of("twist", 1, 1);
  const double polar_m4 = std::numbers::pi / 2 * (std::pow(0.025, 4) - std::pow(0.022, 4));
  cable.torsion_stiffness_Nm2prad = si_quantity(77e9 * polar_m4);
  EXPECT_NEAR(500 / cable_stiffness_Nmprad(cable), 0.026437, tol(5e-7));
}

// Source: Khurmi & Gupta, A Textbook of Machine Design, flat spiral springs, worked example (from
// memory): a strip of 6 mm by 0.25 mm, 2.5 m long, E = 200 kN/mm², takes 25 N·mm for 40 rad.
TEST(CableTorque, OfASpiralStripIsThatOfTheBook) {
  Cable cable = cable_of("coil", 1, 2.5);
  cable.bending_stiffness_Nm2 = si_quantity(200e9 * 6e-3 * std::pow(0.25e-3, 3) / 12);
  EXPECT_NEAR(40 * cable_stiffness_Nmprad(cable), 25e-3, tol(1e-12));
}

TEST(CableTorque, GrowsWithTheNumberOfCablesAndFallsWithTheirLength) {
  Random random(33);
  for (int i = 0; i < 200; ++i) {
    const double count = 1 + random.below(9), length_m = random.log_uniform(0.02, 5);
    const double per_cable_Nm2 = random.log_uniform(1e-6, 1);
    Cable twist = cable_of("twist", count, length_m), coil = cable_of("coil", count, length_m);
    twist.torsion_stiffness_Nm2prad = coil.bending_stiffness_Nm2 = si_quantity(per_cable_Nm2);
    const double expected = count * per_cable_Nm2 / length_m;
    EXPECT_NEAR(cable_stiffness_Nmprad(twist) / expected, 1, tol(1e-15));
    EXPECT_NEAR(cable_stiffness_Nmprad(coil) / expected, 1, tol(1e-15));
  }
}

TEST(CableTorque, IsAMatterOfTwistAndCoilEachWithItsOwnStiffness) {
  for (const char* routing : {"twist", "coil", "loop", "slip_ring", ""}) {
    Cable cable = cable_of(routing, 1, 0.5);
    cable.torsion_stiffness_Nm2prad = si_quantity(1);
    cable.bending_stiffness_Nm2 = si_quantity(3);
    cable.friction_Nm = si_quantity(0.02);
    const std::string name = routing;
    const double expected = name == "coil" ? 6 : name == "twist" || name.empty() ? 2 : 0;
    EXPECT_EQ(cable_stiffness_Nmprad(cable), expected) << name;
    EXPECT_EQ(cable_friction_Nm(cable), 0.02) << name;
  }
}

TEST(CableTorque, OfNoCableIsNone) {
  Cable cable = cable_of("twist", 1, 0.5);
  cable.torsion_stiffness_Nm2prad = si_quantity(1);
  cable.friction_Nm = si_quantity(0.02);
  cable.presence = Presence::none;
  EXPECT_EQ(cable_stiffness_Nmprad(cable), 0);
  EXPECT_EQ(cable_friction_Nm(cable), 0);
}

TEST(CableTorque, ReachesTheAxisModelAboutTheStopsCentre) {
  Rig rig = owl();
  rig.tilt.cable.torsion_stiffness_Nm2prad = si_quantity(0.009);
  rig.tilt.cable.friction_Nm = si_quantity(0.007);
  const AxisModel m = axis_model(with_defaults(rig), rig_bodies(rig), Axis::tilt);
  const double k = 2 * 0.009 / 0.18, centre = 10 * std::numbers::pi / 180;
  EXPECT_NEAR(m.load.cable_stiffness_Nmprad, k, tol(1e-15));
  EXPECT_NEAR(m.load.cable_centre_rad, centre, tol(1e-15));
  EXPECT_NEAR(m.load.coulomb_Nm, 0.030 + 0.007, tol(1e-16));
  EXPECT_NEAR(m.load.cable_Nm(0), k * centre, tol(1e-15));  // pulls up, to where it is untwisted
  EXPECT_NEAR(m.load.pull_Nm(0.5), m.load.gravity.at(0.5) - k * (0.5 - centre), tol(1e-15));
}

const Finding* finding(const Analysis& analysis, std::string_view id) {
  for (const Finding& f : analysis.findings)
    if (f.id == id) return &f;
  return nullptr;
}

TEST(CableFigures, GiveStiffnessAndTheTorqueAtTheEndOfTheTravel) {
  Rig rig = owl();
  rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(0.013);
  rig.pan.cable.friction_Nm = si_quantity(0.02);
  const Analysis a = analyse(rig, {.remedies = false});
  EXPECT_NEAR(a.value("pan.cable.stiffness").value(), 0.1, tol(1e-15));
  EXPECT_NEAR(a.value("pan.cable.torque_max").value(),
              0.1 * a.value("pan.travel.usable").value() / 2 + 0.02, tol(1e-14));
  // Nobody entered one: not a zero that could be taken for a soft cable.
  for (const char* id : {"tilt.cable.stiffness", "tilt.cable.torque_max"}) {
    EXPECT_FALSE(a.value(id)) << id;
    EXPECT_TRUE(a.figure(id)->is_aside) << id;
  }
  rig.pan.cable.routing.value = "slip_ring";
  const Analysis ring = analyse(rig, {.remedies = false});
  EXPECT_EQ(ring.value("pan.cable.stiffness").value(), 0);
  EXPECT_EQ(ring.value("pan.cable.torque_max").value(), 0.02);
}

TEST(CableFigures, OfAStiffCableNeedItsFreeLength) {
  Rig rig = owl();
  rig.pan.cable.free_length_m = {};
  const Analysis without = analyse(rig, {.remedies = false});
  EXPECT_TRUE(without.value("pan.step.settle_time"));
  EXPECT_TRUE(without.figure("pan.cable.stiffness")->is_aside);
  rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(0.01);
  const Analysis with = analyse(rig, {.remedies = false});
  for (const char* id :
       {"pan.cable.stiffness", "pan.cable.torque_max", "pan.step.settle_time",
        "pan.move.shortest_time", "pan.loop.phase_margin", "pan.travel.braking_angle"})
    EXPECT_EQ(with.figure(id)->because, "needs pan.cable.free_length") << id;
  EXPECT_TRUE(with.value("pan.output.acceleration_peak"));
  EXPECT_TRUE(with.value("pan.loop.resonance"));
  EXPECT_EQ(finding(with, "pan.move.torque")->verdict, Verdict::unknown);
  EXPECT_EQ(finding(with, "pan.cable.torque")->verdict, Verdict::unknown);
}

TEST(CableFinding, ComesOnlyWithATorqueAndLeavesWhatTheRestTakes) {
  Rig rig = owl();
  EXPECT_EQ(finding(analyse(rig, {.remedies = false}), "pan.cable.torque"), nullptr);
  rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(0.013);
  rig.pan.cable.friction_Nm = si_quantity(0.02);
  const Analysis a = analyse(rig, {.remedies = false});
  const Finding *cable = finding(a, "pan.cable.torque"), *start = finding(a, "pan.move.torque");
  ASSERT_NE(cable, nullptr);
  EXPECT_EQ(finding(a, "tilt.cable.torque"), nullptr);
  EXPECT_EQ(cable->verdict, Verdict::holds);
  EXPECT_NEAR(cable->demand.value(), a.value("pan.cable.torque_max").value(), tol(1e-15));
  // Both weigh the same torques: what is left over is the same.
  EXPECT_NEAR(*cable->capacity - *cable->demand, *start->capacity - *start->demand, tol(1e-14));
  EXPECT_NE(start->because.find("cable wound up"), std::string::npos) << start->because;
}

TEST(CableFinding, OfACableTooStiffNamesALengthThatMendsIt) {
  Rig rig = owl();
  rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(2);
  const Analysis a = analyse(rig);
  const Finding* f = finding(a, "pan.cable.torque");
  ASSERT_NE(f, nullptr);
  EXPECT_EQ(f->verdict, Verdict::fails);
  const Remedy* longer = nullptr;
  for (const Remedy& remedy : f->remedies)
    if (remedy.path == "pan.cable.free_length") longer = &remedy;
  ASSERT_NE(longer, nullptr);
  rig.pan.cable.free_length_m = si_quantity(longer->value_si);
  const Analysis mended = analyse(rig, {.remedies = false});
  EXPECT_NE(finding(mended, "pan.cable.torque")->verdict, Verdict::fails);
  EXPECT_NE(finding(mended, "pan.move.torque")->verdict, Verdict::fails);
}

TEST(CableFinding, IsUnknownWhereNothingSaysHowFarTheCableWindsUp) {
  Rig rig = owl();
  rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(0.01);
  rig.pan.stops.soft_inset_rad = {};
  const Analysis a = analyse(rig, {.remedies = false});
  EXPECT_FALSE(a.value("pan.cable.torque_max"));
  EXPECT_EQ(finding(a, "pan.cable.torque")->verdict, Verdict::unknown);
  EXPECT_TRUE(a.value("pan.step.settle_time"));
}

}  // namespace
}  // namespace gazewright
