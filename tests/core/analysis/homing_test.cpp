#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

/// Figures, findings and plan of homing and of the encoder's magnet.
namespace gazewright {
namespace {

using tests::finding;
using tests::owl;
constexpr double kDeg = M_PI / 180;

Analysis analysed(const Rig& rig) { return analyse(rig, {.remedies = false}); }

Verdict verdict(const Rig& rig, std::string_view id) {
  const Analysis analysis = analysed(rig);
  const Finding* found = finding(analysis, id);
  EXPECT_NE(found, nullptr) << id;
  return found == nullptr ? Verdict::unknown : found->verdict;
}
std::string plan_of(const Analysis& analysis, Axis axis = Axis::pan) {
  std::string text;
  for (const std::string& step : analysis.homing[static_cast<std::size_t>(axis)])
    text += step + '\n';
  return text;
}
bool says(const std::string& text, const std::string& words) {
  return text.find(words) != std::string::npos;
}

/// The owl with a second encoder: 18 turns at the motor, 17 beside it.
Rig two_encoders() {
  Rig rig = owl();
  rig.pan.homing.by = {"second_encoder"};
  rig.pan.homing.second_ratio = si_quantity(17);
  rig.pan.homing.second_error_rad = si_quantity(2 * kDeg);
  return rig;
}
/// The owl's pan with an encoder magnet.
Rig with_magnet() {
  Rig rig = owl();
  Encoder& encoder = rig.pan.encoder;
  encoder.magnet_offset_m = si_quantity(0.1e-3);
  encoder.magnet_tilt_rad = si_quantity(1 * kDeg);
  encoder.magnet_gap_m = si_quantity(2e-3);
  encoder.magnet_diameter_m = si_quantity(6e-3);
  encoder.magnet_thickness_m = si_quantity(2.5e-3);
  encoder.field_least_T = si_quantity(0.030);
  encoder.field_most_T = si_quantity(0.100);
  return rig;
}

TEST(HomingFindings, OfASimpleRigAreOneLineAnAxis) {
  const Analysis analysis = analysed(owl());
  const auto count = std::ranges::count_if(analysis.findings, [](const Finding& f) {
    return f.id.starts_with("pan.homing.") || f.id.starts_with("pan.encoder.magnet") ||
           f.id.starts_with("pan.encoder.field");
  });
  EXPECT_EQ(count, 1);
}

TEST(HomingWindow, IsFrictionAndGearLimitOverTheTorqueOfAnAmpere) {
  Rig rig = owl();
  const double inertia = 0.01;
  rig.pan.homing.speed_radps = si_quantity(20 * kDeg);
  const Analysis a = analysed(rig);
  const double per_ampere = 0.90 * 18 * std::sqrt(3) / 2 * 60 / (2 * M_PI * 410);
  // Pan stands upright: no gravity. Coulomb 40 mN·m, drag 6 mN·m and viscous 20 µN·m·s at the
  // input, 4 mN·m·s/rad at the output.
  const double speed = 20 * kDeg;
  const double moving = 0.040 + 0.004 * speed + 0.90 * 18 * (6e-3 + 20e-6 * 18 * speed);
  EXPECT_NEAR(*a.value("pan.homing.current_least"), moving / per_ampere, tol(1e-12));
  const double blow =
      speed *
      std::sqrt(400 * (*a.value("pan.inertia.load") + *a.value("pan.inertia.rotor_reflected")));
  EXPECT_NEAR(*a.value("pan.homing.current_most"), (6 - blow) / per_ampere, tol(1e-11));
  EXPECT_GT(*a.value("pan.inertia.load") + *a.value("pan.inertia.rotor_reflected"), inertia / 10);
  const double stops = *a.value("pan.travel.stops");
  EXPECT_NEAR(*a.value("pan.homing.time"), stops / speed + 0.2, tol(1e-12));
}

TEST(HomingWindow, OfTiltCountsGravityOnTheWay) {
  const Analysis a = analysed(owl());
  Rig heavy = owl();
  heavy.on_tilt[1].mass_kg = si_quantity(0.096);  // the camera, 38 mm before the axis, twice
  const Analysis b = analysed(heavy);
  const double per_ampere = 0.92 * 9 * std::sqrt(3) / 2 * 60 / (2 * M_PI * 410);
  // Level lies inside the travel; its lever there is 38 mm, or 38.05 mm where the 2 mm help.
  const double more =
      (*b.value("tilt.homing.current_least") - *a.value("tilt.homing.current_least")) * per_ampere;
  EXPECT_NEAR(more, 0.048 * 9.80665 * std::hypot(0.038, 0.002), tol(1e-12));
}

/// After power-up the other axis may be anywhere between its stops.
TEST(HomingWindow, TakesGravityAtTheWorstPoseOfTheOtherAxis) {
  Rig rig = owl();
  rig.stand.lean_rad = si_quantity(0.3);
  rig.on_tilt[1].mass_kg = si_quantity(0.4);
  rig.on_tilt[1].centre_m = {si_quantity(5e-3), si_quantity(0), si_quantity(0.04)};  // top-heavy
  rig.pan.cable.torsion_stiffness_Nm2prad = si_quantity(0.001);  // two cables, 260 mm
  const Analysis a = analysed(rig);
  const RigBodies bodies = rig_bodies(with_defaults(rig));
  const double pan = *a.value("pan.travel.stops") / 2, tilt = *a.value("tilt.travel.stops") / 2;
  const double centre = 10 * kDeg;  // of tilt
  double worst = 0, at_rest = 0;
  for (int i = -300; i <= 300; ++i) {
    for (int k = -300; k <= 300; ++k) {
      const double torque = gravity_torque_Nm(bodies, pan * i / 300, centre + tilt * k / 300)(0) -
                            2 * 0.001 / 0.26 * pan * i / 300;
      worst = std::max(worst, std::abs(torque));
      if (k == 0) at_rest = std::max(at_rest, std::abs(torque));
    }
  }
  ASSERT_GT(worst, 1.05 * at_rest) << "the other axis matters";
  const double speed = 30 * kDeg, per_ampere = 0.90 * 18 * std::sqrt(3) / 2 * 60 / (2 * M_PI * 410);
  const double friction = 0.040 + 0.004 * speed + 0.90 * 18 * (6e-3 + 20e-6 * 18 * speed);
  // Steps of 10 mrad miss (5 mrad)²/2 of the peak.
  EXPECT_NEAR(*a.value("pan.homing.current_least") * per_ampere - friction, worst,
              tol(3e-5 * worst));
}

TEST(HomingFindings, TheCurrentMustBeInsideTheWindow) {
  Rig rig = owl();
  const Analysis open = analysed(rig);
  const double least = *open.value("pan.homing.current_least");
  const double most = *open.value("pan.homing.current_most");
  ASSERT_LT(1.2 * least, most / 1.2);
  rig.pan.homing.current_A = si_quantity(1.2 * least);
  EXPECT_EQ(verdict(rig, "pan.homing.push"), Verdict::holds);
  EXPECT_EQ(verdict(rig, "pan.homing.contact"), Verdict::holds);
  rig.pan.homing.current_A = si_quantity(0.99 * least);
  EXPECT_EQ(verdict(rig, "pan.homing.push"), Verdict::fails);
  rig.pan.homing.current_A = si_quantity(1.01 * most);
  EXPECT_EQ(verdict(rig, "pan.homing.contact"), Verdict::fails);
  rig.pan.homing.current_A = si_quantity(0.99 * most);
  EXPECT_EQ(verdict(rig, "pan.homing.contact"), Verdict::tight);
  // At the speed that spares the gearbox the same current is the most that does.
  rig.pan.homing.current_A = si_quantity(most / 2);
  const double speed = *analysed(rig).value("pan.homing.speed_most");
  rig.pan.homing.speed_radps = si_quantity(speed);
  EXPECT_NEAR(*analysed(rig).value("pan.homing.current_most"), most / 2, tol(1e-9));
}

TEST(HomingFindings, TheFlagMustBeNearerThanHalfASpacing) {
  Rig rig = owl();
  rig.pan.homing.by = {"flag"};
  EXPECT_EQ(verdict(rig, "pan.homing.turn"), Verdict::unknown);
  const Analysis unknown = analysed(rig);
  EXPECT_EQ(finding(unknown, "pan.homing.turn")->because, "needs pan.homing.flag_error");
  EXPECT_TRUE(says(plan_of(unknown), "needs pan.homing.flag_error (less than 10°"));
  rig.pan.homing.flag_error_rad = si_quantity(9.9 * kDeg);  // and half of 8 arcmin
  const Analysis near = analysed(rig);
  EXPECT_NEAR(*finding(near, "pan.homing.turn")->demand, (9.9 + 4 / 60.0) * kDeg, tol(1e-12));
  EXPECT_NEAR(*finding(near, "pan.homing.turn")->capacity, 10 * kDeg, tol(1e-12));
  rig.pan.homing.flag_error_rad = si_quantity(10 * kDeg);
  EXPECT_EQ(verdict(rig, "pan.homing.turn"), Verdict::fails);
}

TEST(HomingFindings, TwoEncodersMustTellTheTravelsTurnsApart) {
  Rig rig = two_encoders();
  const Analysis a = analysed(rig);
  EXPECT_NEAR(*a.value("pan.homing.vernier_range"), 2 * M_PI, tol(1e-12));
  EXPECT_NEAR(*a.value("pan.homing.vernier_room"), 10 * kDeg, tol(1e-12));
  EXPECT_EQ(verdict(rig, "pan.homing.vernier"), Verdict::tight);  // 320° against 360°
  const Finding* turn = finding(a, "pan.homing.turn");
  EXPECT_NEAR(*turn->demand, (2 + 0.5 * 17 / 18) * kDeg, tol(1e-12));
  EXPECT_EQ(turn->verdict, Verdict::holds);
  EXPECT_TRUE(says(plan_of(a), "18 and 17 times a turn")) << plan_of(a);
  rig.pan.homing.second_ratio = si_quantity(16);  // repeats after half a turn
  EXPECT_EQ(verdict(rig, "pan.homing.vernier"), Verdict::fails);
  EXPECT_EQ(verdict(rig, "pan.homing.turn"), Verdict::fails);
  EXPECT_TRUE(says(plan_of(analysed(rig)), "Two encoders together cover the travel: fails"));
}

TEST(HomingFindings, WithoutStopsNothingIsFoundByPushing) {
  Rig rig = owl();
  rig.pan.stops = {};
  rig.pan.stops.presence = Presence::none;
  EXPECT_EQ(verdict(rig, "pan.homing.turn"), Verdict::fails);
  EXPECT_TRUE(says(plan_of(analysed(rig)), "There is no stop to push to"));
  rig.pan.homing.keeps_count = {"yes"};
  EXPECT_EQ(verdict(rig, "pan.homing.turn"), Verdict::holds);
  rig.pan.homing.keeps_count = {};
  rig.pan.encoder.at = {"output"};
  EXPECT_EQ(verdict(rig, "pan.homing.turn"), Verdict::holds);
}

TEST(HomingFindings, ACableThatBearsMoreThanATurnCanBeOverwoundAfterARestart) {
  Rig rig = owl();  // 900°/m on 260 mm: ±234° of cable
  rig.pan.stops = {};
  rig.pan.stops.presence = Presence::none;
  rig.pan.encoder.at = {"output"};
  const Analysis a = analysed(rig);
  const Finding* wraps = finding(a, "pan.homing.wraps");
  ASSERT_NE(wraps, nullptr);
  EXPECT_EQ(wraps->verdict, Verdict::fails);
  EXPECT_NEAR(*wraps->demand, 468 * kDeg, tol(1e-12));
  EXPECT_NEAR(*wraps->capacity, 360 * kDeg, tol(1e-12));
  EXPECT_EQ(
      wraps->because,
      "after a restart it may be 360° off: the cable, good for ±234°, could be wound to ±594°");
  rig.pan.homing.keeps_count = {"yes"};
  EXPECT_EQ(verdict(rig, "pan.homing.wraps"), Verdict::holds);
  rig.pan.homing.keeps_count = {};
  rig.pan.cable.free_length_m = si_quantity(0.15);  // ±135°: less than a turn in all
  EXPECT_EQ(verdict(rig, "pan.homing.wraps"), Verdict::holds);
  rig.pan.cable = {};
  rig.pan.cable.presence = Presence::none;
  const Analysis bare = analysed(rig);
  EXPECT_EQ(finding(bare, "pan.homing.wraps"), nullptr);
}

TEST(HomingFindings, WithoutACableToWindTheStopsAreWhatATurnTooManyMeets) {
  Rig rig = owl();
  rig.pan.stops.kind = {"trailing"};
  rig.pan.stops.trailers = si_quantity(1);
  rig.pan.stops.trailer_width_m = si_quantity(0.008);
  rig.pan.encoder.at = {"output"};
  for (const bool ring : {true, false}) {
    rig.pan.cable = {};
    rig.pan.cable.presence = ring ? Presence::given : Presence::none;
    rig.pan.cable.routing = {ring ? "slip_ring" : ""};
    const Analysis a = analyse(rig);
    const Finding* wraps = finding(a, "pan.homing.wraps");
    ASSERT_NE(wraps, nullptr) << ring;
    EXPECT_EQ(wraps->verdict, Verdict::fails);
    EXPECT_EQ(
        wraps->because,
        "after a restart it may be 360° off, and its soft limits with it: it could run into a "
        "stop at full speed");
    EXPECT_TRUE(says(plan_of(a), "could run into a stop at full speed")) << plan_of(a);
    EXPECT_FALSE(says(plan_of(a), "none")) << plan_of(a);
    ASSERT_FALSE(wraps->remedies.empty());
    EXPECT_EQ(wraps->remedies[0].path, "pan.stops.soft_inset");
  }
  rig.pan.encoder.at = {};
  EXPECT_EQ(verdict(rig, "pan.homing.wraps"), Verdict::holds) << "a stop is found again";
}

TEST(HomingFindings, HomeAndParkMustLieWithinTheTravel) {
  Rig rig = owl();
  const Analysis simple = analysed(rig);
  EXPECT_EQ(finding(simple, "pan.homing.places"), nullptr);
  rig.pan.homing.park_rad = si_quantity(-100 * kDeg);
  EXPECT_EQ(verdict(rig, "pan.homing.places"), Verdict::holds);
  EXPECT_TRUE(says(plan_of(analysed(rig)), "Park at −100° before power is switched off."));
  rig.pan.homing.park_rad = si_quantity(-170 * kDeg);
  EXPECT_EQ(verdict(rig, "pan.homing.places"), Verdict::fails);
  for (const double park_deg : {-170.0, 170.0}) {
    rig.pan.homing.park_rad = si_quantity(park_deg * kDeg);
    const Analysis failing = analyse(rig);
    const Finding* places = finding(failing, "pan.homing.places");
    ASSERT_FALSE(places->remedies.empty()) << park_deg;
    const Remedy& remedy = places->remedies[0];
    EXPECT_EQ(remedy.path, "pan.homing.park");
    EXPECT_GT(remedy.value_si * park_deg, 0) << "stays on its side";
    EXPECT_TRUE(says(remedy.text, "or nearer to 0 would bring")) << remedy.text;
    rig.pan.homing.park_rad = si_quantity(remedy.value_si);
    EXPECT_NE(verdict(rig, "pan.homing.places"), Verdict::fails);
  }
  rig = owl();
  rig.pan.stops.centre_rad = si_quantity(200 * kDeg);  // the default home, 0°, lies outside
  EXPECT_EQ(verdict(rig, "pan.homing.places"), Verdict::fails);
}

TEST(HomingPlan, NamesCurrentSpeedAngleAndHome) {
  Rig rig = owl();
  const std::string open = plan_of(analysed(rig));
  EXPECT_TRUE(says(open, "towards the minus end (enter a homing current: ")) << open;
  EXPECT_TRUE(says(open, "30 °/s, the usual speed)")) << open;
  rig.pan.homing.current_A = si_quantity(2.5);
  rig.pan.homing.speed_radps = si_quantity(20 * kDeg);
  const std::string plan = plan_of(analysed(rig));
  EXPECT_TRUE(says(plan, "Move slowly (20 °/s) towards the minus end with at most 2.5 A (window "))
      << plan;
  EXPECT_TRUE(says(plan, "below 2 °/s for 0.2 s, it stands at the stop: the output is at −160° ± "))
      << plan;
  EXPECT_TRUE(says(plan, "Of 17 output angles 20° apart")) << plan;
  EXPECT_TRUE(says(plan, "Set the limits to −154° and 154°, then go home to 0°.")) << plan;
  EXPECT_TRUE(says(plan, "do this after every power-up")) << plan;
}

TEST(HomingPlan, SaysWhatIsMissing) {
  Rig rig = owl();
  rig.pan.gearbox.drag_Nm = {};
  rig.tilt.stops = {};
  const Analysis a = analysed(rig);
  EXPECT_TRUE(says(plan_of(a), "the window of currents needs pan.gearbox.drag")) << plan_of(a);
  const std::string tilt = plan_of(a, Axis::tilt);
  EXPECT_TRUE(says(tilt, "needs tilt.stops")) << tilt;
  const Analysis empty = analysed(Rig{});
  for (const std::string& step : empty.homing[0]) {
    EXPECT_FALSE(says(step, "nan")) << step;
    EXPECT_FALSE(says(step, "inf")) << step;
  }
  EXPECT_FALSE(empty.homing[0].empty());
}

TEST(EncoderMagnet, HasFieldAndErrorAgainstTheSensorsLimits) {
  Rig rig = with_magnet();
  const Analysis a = analysed(rig);
  // (1.2/4)·[4.5/√(4.5² + 3²) − 2/√(2² + 3²)], by hand
  EXPECT_NEAR(*a.value("pan.encoder.field"), 0.0832, tol(5e-5));
  EXPECT_NEAR(*a.value("pan.encoder.eccentricity"), 0.1 / 3, tol(1e-12));
  EXPECT_EQ(verdict(rig, "pan.encoder.field_least"), Verdict::holds);
  EXPECT_EQ(verdict(rig, "pan.encoder.field_most"), Verdict::holds);
  EXPECT_EQ(verdict(rig, "pan.encoder.magnet"), Verdict::holds);
  rig.pan.encoder.magnet_gap_m = si_quantity(1e-3);
  EXPECT_EQ(verdict(rig, "pan.encoder.field_most"), Verdict::fails);
  rig.pan.encoder.magnet_gap_m = si_quantity(5e-3);
  EXPECT_EQ(verdict(rig, "pan.encoder.field_least"), Verdict::fails);
  rig.pan.encoder.magnet_gap_m = si_quantity(2e-3);
  rig.pan.encoder.magnet_offset_m = si_quantity(1e-3);
  EXPECT_EQ(verdict(rig, "pan.encoder.magnet"), Verdict::fails);
  rig.pan.encoder.magnet_offset_m = si_quantity(4e-3);  // off the magnet
  const Analysis off = analysed(rig);
  EXPECT_FALSE(off.value("pan.encoder.magnet_error"));
  EXPECT_EQ(finding(off, "pan.encoder.magnet")->verdict, Verdict::fails);
}

TEST(HomingRemedies, MakeTheirFindingHoldWhenApplied) {
  Rig rig = with_magnet();
  rig.pan.homing.current_A = si_quantity(0.01);
  rig.tilt.homing.current_A = si_quantity(25);
  rig.pan.encoder.magnet_offset_m = si_quantity(1e-3);
  rig.pan.encoder.field_most_T = si_quantity(0.05);
  int tried = 0;
  for (const Finding& f : analyse(rig).findings) {
    const bool ours =
        f.id.find(".homing.") != std::string::npos || f.id.find(".encoder.") != std::string::npos;
    if (!ours || f.verdict != Verdict::fails) continue;
    EXPECT_FALSE(f.remedies.empty()) << f.id;
    for (const Remedy& remedy : f.remedies) {
      Rig mended = rig;
      *find_quantity(mended, remedy.path) = si_quantity(remedy.value_si);
      const Verdict now = verdict(mended, f.id);
      EXPECT_TRUE(now == Verdict::holds || now == Verdict::tight) << f.id << ' ' << remedy.text;
      ++tried;
    }
  }
  EXPECT_GE(tried, 4);
}

/// Seeded: whatever is entered, nothing is NaN, and the window keeps its order.
TEST(HomingOfRandomRigs, HasFiniteFiguresInOrder) {
  std::mt19937 random(77);
  const auto between = [&](double a, double b) {
    return std::uniform_real_distribution(a, b)(random);
  };
  const char* const ways[]{"stop", "flag", "output", "second_encoder"};
  for (int i = 0; i < 24; ++i) {
    Rig rig = with_magnet();
    rig.pan.gearbox.ratio = si_quantity(std::exp(between(0, 6)));
    rig.pan.homing.by = {ways[i % 4]};
    rig.pan.homing.speed_radps = si_quantity(std::exp(between(-3, 2)));
    rig.pan.homing.current_A = si_quantity(std::exp(between(-3, 3)));
    rig.pan.homing.second_ratio = si_quantity(between(0.1, 60));
    rig.pan.homing.second_error_rad = si_quantity(between(0, 0.1));
    rig.pan.homing.flag_error_rad = si_quantity(between(0, 0.2));
    rig.pan.encoder.magnet_offset_m = si_quantity(between(0, 4e-3));
    rig.pan.encoder.magnet_gap_m = si_quantity(between(0.1e-3, 9e-3));
    const Analysis a = analysed(rig);
    for (const Finding& f : a.findings) {
      EXPECT_TRUE(std::isfinite(f.demand.value_or(0))) << f.id;
      EXPECT_TRUE(std::isfinite(f.capacity.value_or(0))) << f.id;
    }
    EXPECT_FALSE(says(plan_of(a), "nan")) << plan_of(a);
    const auto push = a.value("pan.homing.push"), contact = a.value("pan.homing.contact");
    ASSERT_TRUE(push && contact);
    EXPECT_LT(*push, *contact);
    const Finding* pushes = finding(a, "pan.homing.push");
    EXPECT_EQ(pushes->verdict == Verdict::fails, std::min(rig.pan.homing.current_A.value(), 30.0) <
                                                     *a.value("pan.homing.current_least"));
  }
}

}  // namespace
}  // namespace gazewright
