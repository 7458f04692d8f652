#include <gtest/gtest.h>

#include "core/files/spelling.h"

namespace gazewright {
namespace {

TEST(SmallLetters, ReplaceTheCapitalOnesOfAsciiAndNoOthers) {
  EXPECT_EQ(in_small_letters("Tilt Motor, 300 RPM/V [@Z]"), "tilt motor, 300 rpm/v [@z]");
  EXPECT_EQ(in_small_letters("\xC3\x84rm"), "\xC3\x84rm");  // a letter of two bytes stays whole
}

TEST(SmallLetters, DoNotMakeOtherWords) {
  EXPECT_TRUE(is_same_word("PETG", "petg"));
  EXPECT_FALSE(is_same_word("pet", "petg"));
  EXPECT_FALSE(is_same_word("[", "{"));  // as far apart as a capital letter and its small one
}

}  // namespace
}  // namespace gazewright
