#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "core/loads/rolling.h"
#include "tests/support/tol.h"

/// Rolling bearings against standards and textbooks.
namespace gazewright {
namespace {

struct Row {
  double load, e, Y;
};

TEST(PublishedBearings, DeepGrooveFactorsAreThoseOfIso281) {
  // ISO 281:2007 table 3, normal clearance, as nine public sources print it; X = 0.56.
  constexpr std::array<Row, 9> kRows{{{0.172, .19, 2.30},
                                      {0.345, .22, 1.99},
                                      {0.689, .26, 1.71},
                                      {1.03, .28, 1.55},
                                      {1.38, .30, 1.45},
                                      {2.07, .34, 1.31},
                                      {3.45, .38, 1.15},
                                      {5.17, .42, 1.04},
                                      {6.89, .44, 1.00}}};
  for (const Row& row : kRows) {
    const AxialFactors f = ball_factors(0, row.load);
    EXPECT_DOUBLE_EQ(f.e, row.e) << row.load;
    EXPECT_DOUBLE_EQ(f.Y, row.Y) << row.load;
    EXPECT_DOUBLE_EQ(f.X, 0.56) << row.load;
  }
}

TEST(PublishedBearings, EquivalentLoadBetweenTwoRows) {
  // ISO 281:2007 table 3 and linear interpolation: Fr = 50 N, Fa = 40 N, f0·Fa/C0 = 0.5 gives
  // e = 0.2380, Y = 1.8638, P = 102.55 N. f0 = 14, so C0 = 14·40/0.5 = 1120 N.
  const RollingBearing bearing{Rolling::ball, 1000, 1120, 0, 14};
  const AxialFactors f = ball_factors(0, 0.5);
  EXPECT_NEAR(f.e, 0.2380, tol(5e-5));
  EXPECT_NEAR(f.Y, 1.8638, tol(5e-5));
  EXPECT_NEAR(equivalent_load(bearing, 50, 40)->dynamic_N, 102.55, tol(0.01));
}

TEST(PublishedBearings, LifeInTurns) {
  // U. C. Jindal, Machine Design, ex. 18-2, p. 508: C = 5590 N, P = 0.56·1250 + 1.2·625 = 1450 N:
  // 57.3 million turns; with the outer ring turning P = 1.2·0.56·1250 + 1.2·625 = 1590 N: 43.46.
  EXPECT_NEAR(rating_life_turns(Rolling::ball, 5590, 1450) / 1e6, 57.3, tol(0.05));
  EXPECT_NEAR(rating_life_turns(Rolling::ball, 5590, 1590) / 1e6, 43.46, tol(0.05));
}

TEST(PublishedBearings, LifeInHours) {
  // U. C. Jindal, Machine Design, ex. 18-4, p. 509: C = 41 kN, P = 20 kN, 720 rpm: 199.42 h.
  const double turns = rating_life_turns(Rolling::ball, 41e3, 20e3);
  EXPECT_NEAR(turns / (720 * 60), 199.42, tol(0.01));
}

TEST(PublishedBearings, RatingForAMeanLoadGivesTheWantedLife) {
  // U. C. Jindal, Machine Design, ex. 18-9, p. 512: 3 kN at 1440 rpm for a quarter of the time, 4
  // kN at 1080 rpm for half, 5 kN at 720 rpm for a quarter; 10 000 h need C = 34 219 N. By Miner's
  // sum the parts of the life used up in that time are 1 together.
  double used = 0;
  struct Stretch {
    double load_N, rpm, part;
  };
  for (const Stretch s : {Stretch{3e3, 1440, 0.25}, {4e3, 1080, 0.5}, {5e3, 720, 0.25}})
    used += 1e4 * 60 * s.rpm * s.part / rating_life_turns(Rolling::ball, 34219, s.load_N);
  EXPECT_NEAR(used, 1, tol(3.0 / 34219));  // C to 1 N, to the power of three
}

TEST(PublishedBearings, StaticEquivalentLoad) {
  // ISO 76:2006, deep groove: P0 = max(Fr, 0.6·Fr + 0.5·Fa).
  const RollingBearing bearing{Rolling::ball, 1000, 1000, 0, 14};
  EXPECT_DOUBLE_EQ(equivalent_load(bearing, 1000, 200)->static_N, 1000);
  EXPECT_DOUBLE_EQ(equivalent_load(bearing, 1000, 2000)->static_N, 1600);
}

TEST(PublishedBearings, OverhungLoadOnTwoBearings) {
  // Statics: R_near = F·(1 + a/b), R_far = −F·a/b; F = 10 N, a = 30 mm, b = 20 mm: 25 N and −15 N.
  const PairLoad pair = pair_load(10, 0, 0.020, 0.030);
  EXPECT_DOUBLE_EQ(pair.near_N, 25);
  EXPECT_DOUBLE_EQ(pair.far_N, 15);
}

TEST(PublishedBearings, AxialThrustOfARadialLoad) {
  // Public catalogue, load distribution by Sjövall, half of the elements loaded: Fa = 1.216·Fr·tan
  // α (point contact), 1.260·Fr·tan α (line contact); tan 45° = 1.
  const double angle = std::atan(1.0);
  EXPECT_NEAR(thrust_of_radial_N({Rolling::ball, 1, 1, angle, 14}, 100), 121.6, tol(1e-10));
  EXPECT_NEAR(thrust_of_radial_N({Rolling::roller, 1, 1, angle, 14}, 100), 126.0, tol(1e-10));
}

}  // namespace
}  // namespace gazewright
