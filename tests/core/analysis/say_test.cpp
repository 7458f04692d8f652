#include "core/analysis/say.h"

#include <gtest/gtest.h>

#include <vector>

namespace gazewright {
namespace {

TEST(Say, WritesATrueMinusPowersOfTenAndNoDust) {
  EXPECT_EQ(say(-0.5, "V", "V"), "−0.5 V");
  EXPECT_EQ(say_percent(-0.174), "−17 %");
  EXPECT_EQ(say(1.22e7, "deg", "deg"), "1.22×10⁷°");
  EXPECT_EQ(say(-2.5e-5, "A", "A"), "−2.5×10⁻⁵ A");
  EXPECT_EQ(say(6.62e-14, "deg", "deg"), "0°");
  EXPECT_EQ(say(-6.62e-14, "deg", "deg"), "0°");
}

TEST(Say, ScalesLargeEnergiesAndCapsALifeNobodyWaitsFor) {
  EXPECT_EQ(say(731082, "J", "J"), "731 kJ");
  EXPECT_EQ(say(9999, "J", "J"), "9999 J");
  EXPECT_EQ(say(-12300, "N", "N"), "−12.3 kN");
  EXPECT_EQ(say(2.34e15 * 3600, "s", "h"), "more than 10⁶ h");
  EXPECT_EQ(say(20000 * 3600.0, "s", "h"), "20000 h");
}

TEST(SayNeeds, NamesWhatIsMissingAndCountsTheRest) {
  const std::vector<std::string> missing{"a", "b", "c", "d"};
  EXPECT_EQ(say_needs(missing), "needs a, b, c, d");
  EXPECT_EQ(say_needs(missing, 2), "needs a, b and 2 more");
  EXPECT_EQ(say_needs(missing, 4), "needs a, b, c, d");
  EXPECT_EQ(say_needs({}), "");
}

}  // namespace
}  // namespace gazewright
