#include "core/motion/search.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(WhereZero, IsFoundInFewSteps) {
  int calls = 0;
  const auto f = [&](double x) { return ++calls, std::expm1(3 * (x - 0.3)); };
  EXPECT_NEAR(where_zero(f, 0, 2, 1e-10), 0.3, tol(1e-10));
  EXPECT_LT(calls, 20);
}

TEST(WhereZero, OfARootOrAJumpIsFoundToo) {
  EXPECT_NEAR(where_zero([](double x) { return std::sqrt(x) - 1e-3; }, 0, 1, 1e-10), 1e-6,
              tol(1e-9));
  EXPECT_NEAR(where_zero([](double x) { return x < 0.7 ? -1.0 : 5.0; }, 0, 1, 1e-9), 0.7,
              tol(1e-8));
  EXPECT_EQ(where_zero([](double x) { return x + 1; }, 0, 1, 1e-9), 0) << "above from the start";
}

TEST(WhereLeast, OfASmoothFunctionTakesFewSteps) {
  int calls = 0;
  const auto f = [&](double x) { return ++calls, std::cosh(x - 0.2); };
  EXPECT_NEAR(where_least(f, -1, 1, 0, f(0), 1e-5), 0.2, tol(2e-5));
  EXPECT_LT(calls, 15);
}

TEST(WhereLeast, OfAKinkIsFoundWithinItsTolerance) {
  const auto f = [](double x) { return x < 0.37 ? 2 - x : 1.63 + 3 * (x - 0.37); };
  EXPECT_NEAR(where_least(f, 0, 1, 0.5, f(0.5), 1e-5), 0.37, tol(3e-5));
}

TEST(WhereLeast, StaysWhereThereIsAValue) {
  const auto f = [](double x) {
    return x < 0.25 ? std::numeric_limits<double>::infinity() : x * x;
  };
  EXPECT_NEAR(where_least(f, 0, 1, 0.5, f(0.5), 1e-5), 0.25, tol(3e-5));
}

}  // namespace
}  // namespace gazewright
