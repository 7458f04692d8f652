#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <utility>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "core/travel/cable_twist.h"
#include "core/travel/wire.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

constexpr double kTurn_rad = 2 * std::numbers::pi;

/// The diameter of a gauge as the rig file reads it.
double gauge_m(int gauge) {
  std::string yaml = tests::kOwl;
  const std::string routing = "routing: twist,";
  yaml.replace(yaml.find(routing), routing.size(),
               routing + " conductor: " + std::to_string(gauge) + " AWG,");
  return tests::rig_of(yaml).pan.cable.conductor_m.value();
}

TEST(Wire, GaugesHaveTheirDiameters) {
  // Source: ASTM B258, 0.127 mm·92^((36 − n)/39).
  const std::pair<int, double> rows[]{{10, 2.588}, {16, 1.291}, {20, 0.812}, {22, 0.644},
                                      {24, 0.511}, {26, 0.405}, {28, 0.321}, {30, 0.255}};
  for (const auto& [gauge, diameter_mm] : rows)  // half a unit of the last printed digit
    EXPECT_NEAR(gauge_m(gauge) * 1e3, diameter_mm, tol(0.0006)) << gauge;
}

TEST(Wire, HasTheResistanceOfTheTables) {
  // Source: ASTM B258 and NBS Handbook 100, annealed copper at 20 °C, Ω/km; the tables' last digit
  // and rounded diameters are worth 0.2 %.
  const std::pair<int, double> rows[]{{10, 3.28},  {12, 5.21},  {14, 8.28},  {16, 13.18},
                                      {18, 20.95}, {20, 33.30}, {22, 52.95}, {24, 84.22},
                                      {26, 133.9}, {28, 212.9}, {30, 338.6}};
  for (const auto& [gauge, ohm_per_km] : rows)
    EXPECT_NEAR(wire_resistance_ohmpm(gauge_m(gauge)) * 1e3, ohm_per_km, tol(2e-3 * ohm_per_km))
        << gauge;
}

TEST(Wire, OfATextbookHasItsResistance) {
  // Source: J. O. Bird, Electrical Circuit Theory and Technology, ch. 3, problem 7: 1200 m of 12 mm
  // with ρ = 1.7e-8 have 0.180 Ω (0.1804). Ours is of 1/58 Ω·mm²/m.
  const double ohm = 1200 * wire_resistance_ohmpm(0.012);
  EXPECT_NEAR(ohm * 1.7e-8 / wire_rules().copper_ohmm, 0.1804, tol(5e-5));
}

TEST(Wire, DropsVoltageOutAndBack) {
  // 2 A through 5 m of 22 AWG at 52.95 Ω/km: 1.059 V.
  EXPECT_NEAR(wire_drop_V(2, wire_resistance_ohmpm(gauge_m(22)), 5), 1.0592, tol(2e-3 * 1.0592));
  EXPECT_DOUBLE_EQ(wire_drop_V(2, 0.05295, 5), 1.059);
}

TEST(Wire, BearsAnAmpereTo700CircularMil) {
  // Source: Handbook of Electronic Tables and Formulas: 16 AWG, 2583 circular mil, 3.7 A.
  EXPECT_NEAR(wire_rating_A(gauge_m(16)), 3.7, tol(0.05));
  EXPECT_NEAR(wire_rating_A(gauge_m(16)), 2583 / 700.0, tol(2e-3));
}

TEST(Wire, IsProtectedByNoLargerFuseThanTheCodeLets) {
  // Source: NFPA 70 (2017), 240.4(D): copper of 18, 16, 14, 12 and 10 AWG.
  const std::pair<int, double> kMost_A[]{{18, 7}, {16, 10}, {14, 15}, {12, 20}, {10, 30}};
  for (const auto& [gauge, most_A] : kMost_A) {
    EXPECT_LT(largest_fuse_A(gauge_m(gauge)), most_A) << gauge;
    EXPECT_GT(largest_fuse_A(gauge_m(gauge)), 0.6 * most_A) << gauge;
    EXPECT_GT(largest_fuse_A(gauge_m(gauge)), wire_rating_A(gauge_m(gauge))) << gauge;
  }
}

TEST(Wire, OfCopperGainsTwentyPercentInFiftyKelvin) {
  // Common practice, no source: 0.393 % a kelvin from 20 °C.
  EXPECT_NEAR(wire_resistance_ohmpm(1e-3, 343.15) / wire_resistance_ohmpm(1e-3), 1.1965,
              tol(1e-12));
}

TEST(TwistedCable, StretchesAsTheHelixDoes) {
  // Helix geometry: 2 mm off the axis, a turn over 1 m and over 0.1 m.
  EXPECT_NEAR(helix_strain(0.002, kTurn_rad, 1), 7.8954e-5, tol(1e-3 * 7.8954e-5));
  EXPECT_NEAR(helix_strain(0.002, kTurn_rad, 0.1), 7.865e-3, tol(1e-3 * 7.865e-3));
}

TEST(BendRadius, FollowsTheRule) {
  // Source: NASA-STD-8739.4, 7.3.21: 6 outer diameters for a short time and 10 for good, flat
  // cable 3 and 10.
  Rig rig = tests::owl();
  rig.pan.cable.bend_radius_m = {};
  EXPECT_DOUBLE_EQ(with_defaults(rig).pan.cable.bend_radius_m.value(), 10 * 5.2e-3);
  Analysis a = analyse(rig, {.remedies = false});
  EXPECT_DOUBLE_EQ(*a.value("pan.cable.bend_rule"), 10 * 5.2e-3);
  EXPECT_DOUBLE_EQ(*a.value("pan.cable.bend_rule_still"), 6 * 5.2e-3);
  rig.pan.cable.thickness_m = si_quantity(1e-3);
  a = analyse(rig, {.remedies = false});
  EXPECT_DOUBLE_EQ(with_defaults(rig).pan.cable.bend_radius_m.value(), 10e-3);
  EXPECT_DOUBLE_EQ(*a.value("pan.cable.bend_rule"), 10e-3);
  EXPECT_DOUBLE_EQ(*a.value("pan.cable.bend_rule_still"), 3e-3);
}

}  // namespace
}  // namespace gazewright
