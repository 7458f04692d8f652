#include "core/travel/homing.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/travel/vernier.h"
#include "core/units/angle.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(Fraction, IsTheSimplestThatIsTheValue) {
  const auto is = [](double value, std::int64_t over, std::int64_t under) {
    const auto fraction = fraction_of(value);
    return fraction && fraction->numerator == over && fraction->denominator == under;
  };
  EXPECT_TRUE(is(18, 18, 1));
  EXPECT_TRUE(is(17.2, 86, 5));
  EXPECT_TRUE(is(235.0 / 13, 235, 13));
  EXPECT_TRUE(is(1.0 / 3, 1, 3));
  EXPECT_TRUE(is(999.0 / 1000, 999, 1000));
  EXPECT_FALSE(fraction_of(kPi));
  EXPECT_FALSE(fraction_of(18.0769));  // 180769/10000: written too short to be a gearbox's teeth
  EXPECT_FALSE(fraction_of(0));
  EXPECT_FALSE(fraction_of(-2));
  EXPECT_FALSE(fraction_of(std::nan("")));
  EXPECT_FALSE(fraction_of(std::numeric_limits<double>::infinity()));
}

TEST(Vernier, OfNeighbouringWholeRatiosCoversOneTurn) {
  EXPECT_DOUBLE_EQ(vernier_range_rad(18, 17), 2 * kPi);
  EXPECT_DOUBLE_EQ(vernier_range_rad(18, 16), kPi);                  // both even: half a turn
  EXPECT_DOUBLE_EQ(vernier_range_rad(17.2, 18), 5 * kPi);            // 86/5 and 90/5: 5/2 turns
  EXPECT_DOUBLE_EQ(vernier_range_rad(kPi, 3), 2 * kPi / (kPi - 3));  // no fraction: the difference
  EXPECT_EQ(vernier_range_rad(kPi, kPi), std::numeric_limits<double>::infinity());
}

TEST(Vernier, ReadsTheSameAgainAfterItsRangeAndNotBefore) {
  std::mt19937 random(11);
  const auto below = [&](int most) { return std::uniform_int_distribution(1, most)(random); };
  for (int i = 0; i < 300; ++i) {
    const double turns = double(below(400)) / below(12), second = double(below(400)) / below(12);
    const double range = vernier_range_rad(turns, second) / (2 * kPi);
    const auto off = [](double x) { return std::abs(std::remainder(x, 1.0)); };
    EXPECT_LT(off(turns * range), 1e-6);
    EXPECT_LT(off(second * range), 1e-6);
    // The first reads the same every 1/turns: none of those before the range suits the second.
    for (int k = 1; k / turns < range * (1 - 1e-9) && k < 2000; ++k)
      EXPECT_GT(off(second * k / turns), 1e-6) << turns << ' ' << second << ' ' << k;
  }
}

TEST(Vernier, SeparationIsWhatTheSecondEncoderHasToTellApart) {
  // 18 and 17 turns: a turn of the motor moves the second by 1 − 17/18 of a turn.
  EXPECT_NEAR(*vernier_separation_rad(18, 17, 1.9 * kPi), 2 * kPi / 18, tol(1e-13));
  EXPECT_EQ(*vernier_separation_rad(18, 17, 2 * kPi), 0);  // the ends of a turn read the same
  EXPECT_FALSE(vernier_separation_rad(18, 17, 0.3));       // less than 20°: nothing to tell apart
  // 5 and 2: readings of the second are 2/5, 4/5, 1/5, 3/5 of a turn apart.
  EXPECT_NEAR(*vernier_separation_rad(5, 2, 1.9 * kPi), 2 * kPi / 5, tol(1e-14));
  EXPECT_EQ(*vernier_separation_rad(7, 7, 1), 0);
  EXPECT_EQ(*vernier_separation_rad(1e5, 17, 6), 0);
}

TEST(Vernier, ErrorAddsTheFirstThroughBothGears) {
  EXPECT_DOUBLE_EQ(vernier_error_rad(18, 9, 0.01, 0.02), 0.025);
}

TEST(PushWindow, LiesBetweenFrictionAndWhatTheGearboxBears) {
  PushLimits limits{
      .torque_per_ampere_NmpA = 0.5, .moving_Nm = 1, .blow_Nm = 2, .gentle_Nm = 6, .current_A = 30};
  EXPECT_DOUBLE_EQ(push_window(limits).least_A, 2);
  EXPECT_DOUBLE_EQ(push_window(limits).most_A, 8);
  limits.current_A = 5;
  EXPECT_DOUBLE_EQ(push_window(limits).most_A, 5);
  limits.blow_Nm = 7;  // the blow alone is too much
  EXPECT_LT(push_window(limits).most_A, 0);
}

TEST(HomingResistance, AddsEverythingThatHoldsBack) {
  const Resistance all{.coulomb_Nm = 1, .pull_Nm = 4, .drag_Nm = 8, .viscous_Nmsprad = 16};
  EXPECT_DOUBLE_EQ(moving_torque_Nm(all, 0), 13);
  EXPECT_DOUBLE_EQ(moving_torque_Nm(all, 2), 45);
}

TEST(HomingTime, IsTravelOverSpeedAndTheWaitAtAStop) {
  EXPECT_DOUBLE_EQ(homing_time_s(6, 0.5, false), 12);
  EXPECT_DOUBLE_EQ(homing_time_s(6, 0.5, true), 12.2);
}

}  // namespace
}  // namespace gazewright
