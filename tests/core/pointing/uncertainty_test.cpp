#include "core/pointing/uncertainty.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <random>
#include <span>

#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(CombinedErrors, OfTheSameCauseAddAndOfOppositeOnesCancel) {
  const std::array parts{3.0, 4.0};
  EXPECT_DOUBLE_EQ(combined(parts), 5);
  EXPECT_DOUBLE_EQ(combined(parts, std::array{Correlation{0, 1, 1}}), 7);
  EXPECT_DOUBLE_EQ(combined(parts, std::array{Correlation{0, 1, -1}}), 1);
  EXPECT_DOUBLE_EQ(worst_case(std::array{3.0, -4.0}), 7);
}

TEST(CombinedErrors, OfNothingAreNothing) {
  EXPECT_EQ(combined(std::span<const double>()), 0);
  EXPECT_EQ(worst_case({}), 0);
  EXPECT_EQ(standard_deviation(Distribution::arcsine, 0), 0);
}

TEST(CombinedErrors, ThatCannotBeCorrelatedSoAreNotANumberLessThanNothing) {
  const std::array parts{1.0, 1.0, 1.0};
  const std::array impossible{Correlation{0, 1, -1}, Correlation{0, 2, -1}, Correlation{1, 2, -1}};
  EXPECT_EQ(combined(parts, impossible), 0);
}

TEST(CombinedErrors, LieBetweenTheLargestPartAndTheWorstCaseWhateverTheirScale) {
  std::mt19937 random(5);
  std::uniform_real_distribution<double> exponent(-9, 3);
  for (int i = 0; i < 300; ++i) {
    std::array<double, 6> parts{};
    for (double& part : parts) part = std::pow(10, exponent(random));
    const double largest = *std::max_element(parts.begin(), parts.end());
    EXPECT_GE(combined(parts), largest * (1 - 1e-15));
    EXPECT_LE(combined(parts), worst_case(parts) * (1 + 1e-15));
  }
}

/// Deviation of many draws.
template <class Draw>
double drawn_deviation(Draw draw) {
  std::mt19937_64 random(11);
  std::uniform_real_distribution<double> even(0, 1);
  double squares = 0;
  constexpr int kDraws = 400000;
  for (int i = 0; i < kDraws; ++i) {
    const double x = draw(even(random), even(random));
    squares += x * x;
  }
  return std::sqrt(squares / kDraws);
}

TEST(StandardDeviation, IsThatOfErrorsDrawnFromTheDistribution) {
  // The relative spread of a deviation from n draws is √((κ − 1)/4n), κ ≤ 2.4 here: 9.4e-4 of it,
  // so 4e-3 are four of them.
  const auto near = [](Distribution distribution, double drawn) {
    EXPECT_NEAR(drawn, standard_deviation(distribution, 2), tol(4e-3) * drawn)
        << name_of(distribution);
  };
  near(Distribution::rectangular, drawn_deviation([](double a, double) { return 4 * a - 2; }));
  near(Distribution::triangular,
       drawn_deviation([](double a, double b) { return 2 * (a + b - 1); }));
  near(Distribution::arcsine,
       drawn_deviation([](double a, double) { return 2 * std::sin(2 * M_PI * a); }));
}

}  // namespace
}  // namespace gazewright
