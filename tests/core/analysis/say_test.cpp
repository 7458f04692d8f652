#include "core/analysis/say.h"

#include <gtest/gtest.h>

#include <vector>

namespace gazewright {
namespace {

TEST(SayNeeds, NamesWhatIsMissingAndCountsTheRest) {
  const std::vector<std::string> missing{"a", "b", "c", "d"};
  EXPECT_EQ(say_needs(missing), "needs a, b, c, d");
  EXPECT_EQ(say_needs(missing, 2), "needs a, b and 2 more");
  EXPECT_EQ(say_needs(missing, 4), "needs a, b, c, d");
  EXPECT_EQ(say_needs({}), "");
}

}  // namespace
}  // namespace gazewright
