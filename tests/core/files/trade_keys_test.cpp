#include "core/files/trade_keys.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "core/rig/fields.h"

namespace gazewright {
namespace {

/// The last word of every path there is, and the parts on the way.
std::set<std::string, std::less<>> keys_of_rigs() {
  Rig rig;
  rig.pan.stops.presence = rig.pan.cable.presence = Presence::given;
  rig.on_tilt.emplace_back();
  rig.detectors.emplace_back();
  std::set<std::string, std::less<>> keys;
  for (const FieldRef& field : all_fields(rig)) {
    std::string word;
    for (const char c : path_of(field) + ".") {
      if (c != '.' && c != '[') {
        word += c;
        continue;
      }
      keys.insert(word);
      word.clear();
    }
  }
  return keys;
}

TEST(TradeKeys, EachStandsForAFieldAndIsNoneItself) {
  const auto keys = keys_of_rigs();
  for (const TradeKey& row : trade_keys()) {
    EXPECT_TRUE(keys.contains(row.key)) << row.word << " -> " << row.key;
    EXPECT_NE(row.word, row.key);
    EXPECT_TRUE(std::ranges::all_of(row.word, [](char c) { return c >= 'a' && c <= 'z'; }))
        << row.word;
  }
}

TEST(TradeKeys, CapitalsAndLinesDoNotMatter) {
  const std::vector<std::string> known{"columns", "horizontal_view"};
  for (const char* word : {"FOV", "field_of_view", "Field of View", "h-fov"}) {
    const TradeKey* key = trade_key(word, known);
    ASSERT_NE(key, nullptr) << word;
    EXPECT_EQ(key->key, "horizontal_view");
  }
  EXPECT_EQ(trade_key("kv", known), nullptr);
  EXPECT_EQ(trade_key("", known), nullptr);
}

}  // namespace
}  // namespace gazewright
