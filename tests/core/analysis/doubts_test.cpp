// What doubts about the inputs do to the figures, against hand computation, a published budget and
// random draws.
#include "core/analysis/doubts.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/analysis/doubt_runs.h"
#include "core/rig/fields.h"
#include "tests/core/analysis/doubts_support.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using namespace tests;

TEST(Doubts, OfAProductAreThoseComputedByHand) {
  // JCGM 100:2008, 4.3.7 (half-range over √3) and 5.1.2. Stall torque = η·N·Kt·i with Kt ∝ 1/KV:
  // relative u² = (s_η² + s_KV²)/3 to first order; of 1/KV the two ends are known in closed form.
  Rig rig = owl_without_loops();
  state_spread(rig, "pan.gearbox.efficiency", 0.05);
  state_spread(rig, "pan.motor.speed_constant", 0.04);
  const Doubts all = doubts(rig);
  const DoubtedFigure* torque = all.figure("pan.output.torque_stall");
  ASSERT_NE(torque, nullptr);
  const double up = 1 / 0.96 - 1, down = 1 - 1 / 1.04;
  const double of_kv = (up * up + down * down) / 2, of_efficiency = 0.05 * 0.05;
  EXPECT_NEAR(torque->uncertainty_si / torque->value, 2 * std::sqrt((of_efficiency + of_kv) / 3),
              tol(1e-12));
  // The ends of 1/KV differ from its slope by 3/2·s² of themselves, of which a third part counts.
  EXPECT_NEAR(torque->uncertainty_si / torque->value,
              2 * std::sqrt((of_efficiency + 0.04 * 0.04) / 3), tol(1.5 * 0.04 * 0.04 * 0.06));
  ASSERT_EQ(torque->shifts.size(), 2u);
  EXPECT_EQ(all.unknowns[torque->shifts[0].unknown].path, "pan.gearbox.efficiency");
  EXPECT_NEAR(torque->shifts[0].share, of_efficiency / (of_efficiency + of_kv), tol(1e-12));
  EXPECT_NEAR(*torque->shifts[0].low, 0.95 * torque->value, tol(1e-12 * torque->value));
  EXPECT_NEAR(*torque->shifts[1].high, torque->value / 1.04, tol(1e-12 * torque->value));
  EXPECT_TRUE(torque->is_known_whole);
}

TEST(Doubts, OfASumAreThoseOfAPublishedBudget) {
  // EA-4/02, example S2, weight of nominal value 10 kg: standard uncertainties 22.5 mg (standard),
  // 15/√3 (drift), 14.2 (comparator), 10/√3 (eccentricity), 10/√3 mg (air) give 29.1 mg, expanded
  // 58 mg; parts 59.6, 8.8, 23.7, 3.9 and 3.9 %. Here five bodies add up to the moving mass.
  Rig rig = owl_without_loops();
  rig.on_pan.clear();
  rig.on_pan_is_bare = true;
  rig.on_tilt.clear();
  const double half_mg[]{22.5 * std::sqrt(3), 15, 14.2 * std::sqrt(3), 10, 10};
  for (const double half : half_mg) {
    Body body{"part", si_quantity(2), {}, Point{}};
    for (Quantity& coordinate : body.centre_m) coordinate = si_quantity(0.01);
    body.mass_kg.spread_si = half * 1e-6;
    rig.on_tilt.push_back(body);
  }
  const Doubts all = doubts(rig);
  const DoubtedFigure* mass = all.figure("mass.total");
  ASSERT_NE(mass, nullptr);
  EXPECT_DOUBLE_EQ(mass->value, 10);
  EXPECT_NEAR(mass->uncertainty_si, 0.0582930e-3, tol(1e-3 * 0.0583e-3));  // 2·29.1465 mg
  ASSERT_EQ(mass->shifts.size(), 5u);
  const double shares[]{0.596, 0.237, 0.088, 0.039, 0.039};  // the largest first, three digits
  for (std::size_t i = 0; i < 5; ++i) EXPECT_NEAR(mass->shifts[i].share, shares[i], tol(6e-4)) << i;
  EXPECT_EQ(all.unknowns[mass->shifts[0].unknown].path, "on_tilt[part].mass");
  EXPECT_EQ(all.unknowns[mass->shifts[1].unknown].path, "on_tilt[part 3].mass");
}

TEST(Doubts, AgreeWithRandomDrawsOfAllUnknowns) {
  // JCGM 101:2008: every unknown drawn evenly within its range, 4000 times. The standard deviation
  // of the draws is uncertain by 1/√(2·4000) = 1.1 % of itself (less for sums of even spreads):
  // four of that, and 0.5 % for the curvature of the figure (s² with s up to 6 %).
  Rig rig = owl_without_loops();
  const char* paths[]{"pan.motor.speed_constant", "pan.gearbox.efficiency",
                      "pan.motor.rotor_inertia", "on_pan[0].mass", "pan.friction.coulomb"};
  for (const char* path : paths) state_spread(rig, path, 0.06);
  const Doubts all = doubts(rig);
  const DoubtedFigure* figure = all.figure("pan.output.acceleration_peak");
  ASSERT_NE(figure, nullptr);
  std::mt19937 random(101);
  std::uniform_real_distribution<double> part(-0.06, 0.06);
  constexpr int kDraws = 4000;
  double sum = 0, squares = 0;
  int inside = 0;
  for (int i = 0; i < kDraws; ++i) {
    Rig drawn = rig;
    for (const char* path : paths) *find_quantity(drawn, path)->si *= 1 + part(random);
    const double off = *quick(drawn).value(figure->id) - figure->value;
    sum += off;
    squares += off * off;
    inside += std::abs(off) <= figure->uncertainty_si ? 1 : 0;
  }
  const double deviation = std::sqrt(squares / kDraws - std::pow(sum / kDraws, 2));
  EXPECT_NEAR(figure->uncertainty_si / 2, deviation, tol(0.05 * deviation));
  // "About 95 %": even spreads have no tails, so that a little more lies inside.
  EXPECT_GT(inside, 0.94 * kDraws);
  EXPECT_LT(inside, 0.995 * kDraws);
}

TEST(Doubts, LeaveOutWhatIsMeasuredOrUnstatedWithoutASpread) {
  Rig rig = owl_without_loops();
  rig.pan.motor.phase_resistance_ohm.source = Source::measured;
  rig.pan.motor.rotor_inertia_kgm2.source = Source::estimate;
  rig.pan.friction.coulomb_Nm.source = Source::datasheet;
  rig.pan.friction.viscous_Nmsprad.source = Source::datasheet;
  rig.tilt.motor.phase_resistance_ohm.source = Source::measured;
  state_spread(rig, "tilt.motor.phase_resistance", 0.02);
  const Doubts all = doubts(rig);
  EXPECT_EQ(unknown(all, "pan.motor.phase_resistance"), nullptr);
  EXPECT_EQ(unknown(all, "pan.motor.speed_constant"), nullptr);
  // The usual spreads of needs that were seen: rotor 30 %; friction 40 % dry, 15 % viscous.
  const auto part = [&](const char* path) {
    const Unknown* found = unknown(all, path);
    return found == nullptr ? 0 : found->spread_si / found->value_si;
  };
  EXPECT_DOUBLE_EQ(part("pan.motor.rotor_inertia"), 0.3);
  EXPECT_DOUBLE_EQ(part("pan.friction.coulomb"), 0.4);
  EXPECT_DOUBLE_EQ(part("pan.friction.viscous"), 0.15);
  EXPECT_DOUBLE_EQ(part("tilt.motor.phase_resistance"), 0.02);
  EXPECT_FALSE(unknown(all, "pan.motor.rotor_inertia")->is_stated);
  EXPECT_TRUE(unknown(all, "tilt.motor.phase_resistance")->is_stated);
  EXPECT_EQ(unknown(all, "pan.motor.rotor_inertia")->label, "Pan motor: rotor inertia");
}

TEST(Doubts, LeaveOutWishesSettingsAndLimits) {
  Rig rig = owl();
  const char* wishes[]{"task.pan_move",        "task.within",
                       "task.settle_band",     "pan.loop.position_gain",
                       "pan.loop.speed_gain",  "pan.drive.current_limit",
                       "pan.stops.soft_inset", "pan.motor.winding_limit",
                       "pan.gearbox.ratio",    "pan.gearbox.rated_torque",
                       "camera.columns"};
  for (const char* path : wishes) {
    state_spread(rig, path, 0.1);
    find_quantity(rig, path)->source = Source::estimate;
  }
  const auto found = unknowns_of(rig);
  for (const char* path : wishes)
    EXPECT_TRUE(std::ranges::none_of(found, [&](const FoundUnknown& f) { return f.at == path; }))
        << path;
}

TEST(Doubts, DefaultsCountAndThoseThatFollowMoveAlong) {
  Rig rig = owl_without_loops();
  rig.pan.gearbox.efficiency = {};
  rig.pan.gearbox.back_efficiency = {};
  const Doubts all = doubts(rig);
  const Unknown* efficiency = unknown(all, "pan.gearbox.efficiency");
  ASSERT_NE(efficiency, nullptr);
  EXPECT_EQ(efficiency->source, Source::by_default);
  EXPECT_DOUBLE_EQ(efficiency->value_si, 0.85);
  EXPECT_EQ(unknown(all, "pan.gearbox.back_efficiency"), nullptr);
  EXPECT_NE(all.figure("pan.output.torque_stall"), nullptr);
}

}  // namespace
}  // namespace gazewright
