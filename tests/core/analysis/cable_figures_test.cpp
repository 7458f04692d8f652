#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <set>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;
using tests::owl;
constexpr double kDeg = M_PI / 180;

Analysis quick(const Rig& rig) { return analyse(rig, {.remedies = false}); }

/// The owl with a clock spring on pan: ±1.2 turns.
Rig coiled() {
  Rig rig = owl();
  Cable cable;
  cable.presence = Presence::given;
  cable.routing = {"coil"};
  cable.outer_diameter_m = si_quantity(0.012);  // a ribbon's width
  cable.thickness_m = si_quantity(0.001);
  cable.free_length_m = si_quantity(0.6);
  cable.hub_radius_m = si_quantity(0.015);
  cable.wall_radius_m = si_quantity(0.03);
  rig.pan.cable = cable;
  return rig;
}

/// The owl with a hanging bend on tilt.
Rig looped() {
  Rig rig = owl();
  Cable cable;
  cable.presence = Presence::given;
  cable.routing = {"loop"};
  cable.outer_diameter_m = si_quantity(0.004);
  cable.bend_radius_m = si_quantity(0.03);
  cable.free_length_m = si_quantity(0.2);
  cable.anchor_radius_m = si_quantity(0.1);
  cable.moving_radius_m = si_quantity(0.03);
  rig.tilt.cable = cable;
  return rig;
}

Rig ringed() {
  Rig rig = owl();
  rig.pan.stops = {};
  rig.pan.stops.presence = Presence::none;
  Cable cable;
  cable.presence = Presence::given;
  cable.routing = {"slip_ring"};
  cable.count = si_quantity(2);
  cable.conductors = si_quantity(4);
  cable.current_A = si_quantity(3);
  cable.signal_bandwidth_Hz = si_quantity(50e6);
  cable.ring_circuits = si_quantity(12);
  cable.ring_current_A = si_quantity(2);
  cable.ring_bandwidth_Hz = si_quantity(100e6);
  rig.pan.cable = cable;
  return rig;
}

TEST(CableFigures, ATwistedBundleIsAHelixAtTheEndOfTheTravel) {
  const Analysis a = quick(owl());
  const double lay = 2.6e-3, twist = *a.value("pan.travel.usable") / 2, length = 0.26;
  EXPECT_NEAR(*a.value("pan.cable.bundle_diameter"), 10.4e-3, tol(1e-15));
  EXPECT_NEAR(*a.value("pan.cable.strain"), std::sqrt(1 + std::pow(lay * twist / length, 2)) - 1,
              tol(1e-14));
  EXPECT_NEAR(*a.value("pan.cable.shortening"),
              length - std::sqrt(length * length - lay * lay * twist * twist), tol(1e-14));
  EXPECT_NEAR(*a.value("pan.cable.tightest_bend"), length * length / (lay * twist * twist),
              tol(1e-12));
  EXPECT_TRUE(a.figure("pan.cable.fill")->is_aside);
}

TEST(CableFigures, EveryRoutingGivesATravelThatTheUsableOneKeepsTo) {
  const Analysis coil = quick(coiled()), loop = quick(looped()), ring = quick(ringed());
  EXPECT_NEAR(
      *coil.value("pan.travel.cable"),
      2 * M_PI * (*coil.value("pan.cable.turns_on_hub") - *coil.value("pan.cable.turns_at_wall")),
      tol(1e-12));
  EXPECT_EQ(coil.value("pan.travel.usable"), coil.value("pan.travel.soft"));
  // D = 0.2 − (π − 2)·0.03 m is more than 0.13 m: right across.
  EXPECT_DOUBLE_EQ(*loop.value("tilt.travel.cable"), 2 * M_PI);
  EXPECT_DOUBLE_EQ(*loop.value("tilt.cable.tightest_bend"), 0.035);
  EXPECT_FALSE(ring.value("pan.travel.cable").has_value());
  EXPECT_EQ(ring.figure("pan.travel.cable")->because, "a slip ring turns without end");
  EXPECT_EQ(ring.value("pan.travel.blind"), 0.0);
  EXPECT_EQ(finding(ring, "pan.travel.cable")->verdict, Verdict::holds);
  EXPECT_EQ(finding(ring, "pan.travel.move")->verdict, Verdict::holds);
  EXPECT_TRUE(ring.value("pan.gravity.torque_max").has_value());
}

TEST(CableFindings, AreNotMadeForACableThatIsNotThere) {
  Rig rig = ringed();
  rig.pan.cable.presence = Presence::none;
  for (const Finding& f : quick(rig).findings)
    EXPECT_FALSE(f.id.starts_with("pan.cable.") || f.id == "pan.travel.cable" ||
                 f.id == "pan.travel.order")
        << f.id << ": " << f.because;
  EXPECT_NE(finding(quick(ringed()), "pan.travel.cable"), nullptr);
}

TEST(CableFigures, NameJustTheInputsThatTheirRoutingLacks) {
  Rig rig = coiled();
  rig.pan.cable.hub_radius_m = {};
  Analysis a = quick(rig);
  for (const char* id : {"pan.travel.cable", "pan.travel.usable", "pan.travel.blind",
                         "pan.cable.turns_on_hub", "pan.cable.tightest_bend"})
    EXPECT_EQ(a.figure(id)->because, "needs pan.cable.hub_radius") << id;
  EXPECT_EQ(a.figure("tilt.gravity.torque_max")->because, "needs pan.cable.hub_radius");
  EXPECT_EQ(finding(a, "pan.travel.cable")->because, "needs pan.cable.hub_radius");
  EXPECT_EQ(finding(a, "pan.travel.move")->verdict, Verdict::unknown);
  EXPECT_TRUE(a.value("pan.inertia.load_max").has_value()) << "of the tilt travel alone";

  rig = looped();
  rig.tilt.cable.anchor_radius_m = {};
  a = quick(rig);
  EXPECT_EQ(a.figure("tilt.travel.cable")->because, "needs tilt.cable.anchor_radius");
  EXPECT_EQ(a.figure("pan.inertia.load_max")->because, "needs tilt.cable.anchor_radius");

  rig = owl();
  rig.pan.cable.routing = {};
  rig.pan.cable.twist_rating_radpm = {};
  EXPECT_EQ(quick(rig).figure("pan.travel.usable")->because, "needs pan.cable.twist_rating");
  rig.pan.cable = {};
  EXPECT_EQ(quick(rig).figure("pan.travel.cable")->because, "needs pan.cable");
}

TEST(CableFindings, ACableThatCannotBeFailsAndSaysWhy) {
  Rig rig = coiled();
  rig.pan.cable.free_length_m = si_quantity(3);
  Analysis a = analyse(rig);
  const Finding* f = finding(a, "pan.travel.cable");
  EXPECT_EQ(f->verdict, Verdict::fails);
  EXPECT_EQ(f->because, "the coil does not fit between hub and wall");
  EXPECT_EQ(a.figure("pan.travel.cable")->because, f->because);
  ASSERT_FALSE(f->remedies.empty());

  rig = looped();
  rig.tilt.cable.free_length_m = si_quantity(0.1);
  a = analyse(rig);
  f = finding(a, "tilt.travel.cable");
  EXPECT_EQ(f->verdict, Verdict::fails);
  EXPECT_EQ(f->because, "the loop is taut already where its clamps pass each other");
  ASSERT_FALSE(f->remedies.empty());
  EXPECT_EQ(f->remedies.front().path, "tilt.cable.free_length");
}

TEST(CableFindings, EachRemedyMendsIts) {
  std::vector<Rig> rigs;
  Rig rig = coiled();  // overfull, and the hub too small
  rig.pan.cable.free_length_m = si_quantity(2.05);
  rig.pan.cable.bend_radius_m = si_quantity(0.02);
  rigs.push_back(rig);
  rig = looped();  // clamps too near, the cable too short
  rig.tilt.cable.moving_radius_m = si_quantity(0.05);
  rig.tilt.cable.free_length_m = si_quantity(0.1);
  rigs.push_back(rig);
  rig = ringed();
  rig.pan.cable.ring_circuits = si_quantity(5);
  rig.pan.cable.ring_bandwidth_Hz = si_quantity(10e6);
  rig.pan.cable.conductor_m = si_quantity(0.5e-3);
  rig.pan.cable.supply_length_m = si_quantity(4);
  rigs.push_back(rig);
  rig = owl();  // a thick bundle that is short and taut
  rig.pan.cable.count = si_quantity(12);
  rig.pan.cable.slack_m = si_quantity(1e-3);
  rig.pan.cable.free_length_m = si_quantity(0.19);
  rig.pan.cable.bend_radius_m = si_quantity(0.02);
  rigs.push_back(rig);
  std::set<std::string> failing;
  for (const Rig& bad : rigs) {
    for (const Finding& f : analyse(bad).findings) {
      if (f.verdict != Verdict::fails) continue;
      if (f.id.find(".cable") == std::string::npos) continue;
      failing.insert(f.id.substr(f.id.find('.') + 1));
      EXPECT_FALSE(f.remedies.empty()) << f.id << ": " << f.because;
      for (const Remedy& remedy : f.remedies) {
        Rig mended = bad;
        *find_quantity(mended, remedy.path) = si_quantity(remedy.value_si);
        const Analysis after = quick(mended);
        const Verdict now = finding(after, f.id)->verdict;
        EXPECT_TRUE(now == Verdict::holds || now == Verdict::tight) << f.id << ": " << remedy.text;
      }
    }
  }
  const std::set<std::string> expected{
      "travel.cable",         "cable.bend",         "cable.bend_rule",
      "cable.slack",          "cable.circuits",     "cable.ring_current",
      "cable.ring_bandwidth", "cable.wire_current", "cable.drop"};
  EXPECT_EQ(failing, expected);
}

TEST(CableFindings, ARadiusBelowTheRuleForMovingBendsIsToBeLookedUp) {
  Rig rig = owl();
  const auto judged = [&](double diameters, Source source) {
    rig.pan.cable.bend_radius_m = si_quantity(diameters * 5.2e-3, source);
    return *finding(quick(rig), "pan.cable.bend_rule");
  };
  EXPECT_EQ(judged(7, Source::estimate).verdict, Verdict::tight);
  EXPECT_NE(judged(7, Source::estimate).because.find("look up"), std::string::npos);
  EXPECT_EQ(judged(7, Source::datasheet).verdict, Verdict::holds);
  EXPECT_EQ(judged(10.1, Source::estimate).verdict, Verdict::holds);
  EXPECT_EQ(judged(10.1, Source::estimate).because.find("look up"), std::string::npos);
  EXPECT_EQ(judged(5, Source::datasheet).verdict, Verdict::fails);
}

TEST(CableFindings, SlackIsWhatTheTwistTakesUp) {
  Rig rig = owl();
  EXPECT_EQ(finding(quick(rig), "pan.cable.slack"), nullptr) << "nobody entered it";
  rig.pan.cable.slack_m = si_quantity(5e-3);
  Analysis a = quick(rig);
  EXPECT_EQ(finding(a, "pan.cable.slack")->verdict, Verdict::holds);
  EXPECT_EQ(finding(a, "pan.cable.slack")->demand, a.value("pan.cable.shortening"));
  rig.pan.cable.slack_m = si_quantity(0.26);
  a = quick(rig);
  EXPECT_EQ(finding(a, "pan.cable.slack")->verdict, Verdict::fails);
  EXPECT_EQ(finding(a, "pan.cable.slack")->because, "with so much slack the clamps would touch");
}

TEST(CableFindings, RingsInParallelAreCounted) {
  const Finding* f = nullptr;
  const Analysis a = quick(ringed());
  f = finding(a, "pan.cable.ring_current");
  EXPECT_EQ(f->verdict, Verdict::fails);
  EXPECT_EQ(f->because, "2 rings in parallel would carry one wire's current");
  EXPECT_EQ(*finding(a, "pan.cable.circuits")->demand, 8);
}

TEST(CableFindings, ASimpleRigHearsNothingOfRingsAndWires) {
  const Analysis a = quick(owl());
  for (const char* id : {"cable.slack", "cable.circuits", "cable.ring_current", "cable.drop",
                         "cable.ring_bandwidth", "cable.wire_current"})
    EXPECT_EQ(finding(a, std::string("pan.") + id), nullptr) << id;
}

TEST(CableFindings, TheMirroredTravelHasTheSameCable) {
  Rig rig = looped();
  rig.tilt.stops.centre_rad = si_quantity(-10 * kDeg);
  const Analysis a = quick(looped()), b = quick(rig);
  for (const Figure& figure : a.figures) {
    if (figure.id.find(".cable") == std::string::npos) continue;
    EXPECT_EQ(figure.value, b.value(figure.id)) << figure.id;
  }
}

TEST(CableFigures, AreFiniteOrExplainedForRandomCables) {
  std::mt19937 random(4204);
  std::uniform_real_distribution<double> exponent(-1, 1);
  int travels = 0;
  for (int i = 0; i < 90; ++i) {
    Rig rig = i % 3 == 0 ? coiled() : i % 3 == 1 ? looped() : ringed();
    for (const FieldRef& field : fields_under(rig, i % 3 == 1 ? "tilt.cable" : "pan.cable")) {
      const auto* ref = std::get_if<QuantityRef>(&field);
      if (ref == nullptr || !ref->quantity->si || ref->info->whole) continue;
      ref->quantity->si = *ref->quantity->si * std::pow(10, exponent(random));
    }
    const Analysis a = quick(rig);
    for (const Figure& figure : a.figures) {
      EXPECT_NE(figure.value.has_value(), !figure.because.empty()) << i << " " << figure.id;
      EXPECT_TRUE(std::isfinite(figure.value.value_or(0))) << i << " " << figure.id;
    }
    const bool tilts = i % 3 == 1;
    const Finding* f = finding(a, tilts ? "tilt.travel.cable" : "pan.travel.cable");
    EXPECT_NE(f->verdict, Verdict::unknown) << f->because;
    travels += a.value(tilts ? "tilt.travel.cable" : "pan.travel.cable").has_value();
  }
  EXPECT_GT(travels, 15);
}

}  // namespace
}  // namespace gazewright
