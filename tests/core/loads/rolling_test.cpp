#include "core/loads/rolling.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>

#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::Random;
constexpr double kDegree = 3.14159265358979323846 / 180;

RollingBearing random_bearing(Random& random) {
  return {random.chance(0.5) ? Rolling::ball : Rolling::roller, random.log_uniform(100, 1e4),
          random.log_uniform(50, 1e4), random.uniform(1, 45) * kDegree, random.uniform(10, 16)};
}

TEST(RollingBearing, FactorsRunOnBetweenAnglesAndLoads) {
  for (const double load : {0.0, 0.1, 0.172, 0.5, 1.0, 3.0, 6.89, 50.0}) {
    for (double degrees = 0.25; degrees < 50; degrees += 0.25) {
      const AxialFactors a = ball_factors((degrees - 0.25) * kDegree, load);
      const AxialFactors b = ball_factors(degrees * kDegree, load);
      // Steepest: Y falls by 1.3 from 0 to 15 deg, so by 0.022 a quarter of a degree.
      EXPECT_NEAR(a.Y, b.Y, 0.025) << degrees << ' ' << load;
      EXPECT_NEAR(a.e, b.e, 0.015) << degrees << ' ' << load;
      EXPECT_GE(b.e, a.e) << "a steeper contact bears more thrust before it counts, " << degrees;
    }
  }
}

TEST(RollingBearing, EquivalentLoadHardlyJumpsWhereTheAxialLoadBeginsToCount) {
  for (std::uint64_t seed = 0; seed < 300; ++seed) {
    Random random(seed);
    const RollingBearing bearing = random_bearing(random);
    const double radial = random.log_uniform(1, 1e4);
    double before = equivalent_load(bearing, radial, 0)->dynamic_N;
    EXPECT_DOUBLE_EQ(before, radial);
    for (double axial = radial / 500; axial < 2 * radial; axial += radial / 500) {
      const auto load = equivalent_load(bearing, radial, axial);
      // The table's own rows miss X + Y·e = 1 by up to 4 %.
      EXPECT_NEAR(load->dynamic_N, before, 0.07 * radial) << seed << ' ' << axial / radial;
      EXPECT_GE(load->static_N, radial);
      before = load->dynamic_N;
    }
  }
}

TEST(RollingBearing, LifeFallsWithThePowerOfTheLoad) {
  EXPECT_DOUBLE_EQ(rating_life_turns(Rolling::ball, 1000, 1000), 1e6);
  EXPECT_DOUBLE_EQ(rating_life_turns(Rolling::ball, 1000, 500), 8e6);
  EXPECT_NEAR(rating_life_turns(Rolling::roller, 1000, 500), 1e6 * std::pow(2, 10.0 / 3),
              tol(1e-3));
  EXPECT_TRUE(std::isinf(rating_life_turns(Rolling::ball, 1000, 0)));
}

TEST(RollingBearing, CylindricalRollersBearNoAxialLoad) {
  const RollingBearing cylindrical{Rolling::roller, 1000, 1000, 0, 14};
  EXPECT_FALSE(equivalent_load(cylindrical, 100, 1));
  EXPECT_DOUBLE_EQ(equivalent_load(cylindrical, 100, 0)->dynamic_N, 100);
}

TEST(RollingBearing, ACrossedRollerRingTakesTheMomentOnItsPitchCircle) {
  const RollingBearing ring{Rolling::roller, 5000, 7000, 0, 14};
  // F = 100 + 2·3/0.06 = 200 N, by hand; Fa = 250 is 1.25·F, Fa = 400 is twice F.
  const auto light = equivalent_load_alone(ring, 100, 250, 3, 0.06);
  EXPECT_DOUBLE_EQ(light->dynamic_N, 200 + 0.45 * 250);
  EXPECT_DOUBLE_EQ(light->static_N, 200 + 0.44 * 250);
  EXPECT_DOUBLE_EQ(equivalent_load_alone(ring, 100, 400, 3, 0.06)->dynamic_N, 0.67 * 600);
}

TEST(BearingPair, BearsWhatItIsGiven) {
  for (std::uint64_t seed = 0; seed < 100; ++seed) {
    Random random(seed);
    const double radial = random.log_uniform(0.1, 1000), spacing = random.log_uniform(0.005, 0.3);
    const double overhang = random.uniform(-spacing, 3 * spacing);
    const PairLoad pair = pair_load(radial, 0, spacing, overhang);
    // Forces and moments about the nearer bearing; the farther one pulls back unless the load lies
    // between both.
    const double far = overhang > 0 ? -pair.far_N : pair.far_N;
    EXPECT_NEAR(pair.near_N + far, radial, tol(1e-12) * pair.near_N + tol(1e-12) * radial);
    EXPECT_NEAR(-far * spacing, radial * overhang, tol(1e-12) * radial * spacing * 5);
    const PairLoad couple = pair_load(0, 7, spacing, overhang);
    EXPECT_DOUBLE_EQ(couple.near_N, 7 / spacing);
    EXPECT_DOUBLE_EQ(couple.far_N, couple.near_N);
  }
}

TEST(BearingPlay, IsThatOfAStraightShaftPushedAnyhow) {
  for (std::uint64_t seed = 0; seed < 50; ++seed) {
    Random random(seed);
    const double play = random.log_uniform(1e-6, 1e-4), spacing = random.log_uniform(0.01, 0.1);
    const double arm = random.uniform(-1.5 * spacing, 4 * spacing);
    double across = 0, tip = 0;
    for (const double near : {-play / 2, play / 2}) {
      for (const double far : {-play / 2, play / 2}) {
        across = std::max(across, std::abs(near + (near - far) / spacing * arm));
        tip = std::max(tip, (near - far) / spacing);
      }
    }
    const Play ours = pair_play(play, spacing, arm);
    EXPECT_NEAR(ours.across_m, 2 * across, tol(1e-15));
    EXPECT_NEAR(ours.tip_rad, 2 * tip, tol(1e-12));
  }
}

}  // namespace
}  // namespace gazewright
