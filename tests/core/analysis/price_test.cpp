#include "core/analysis/price.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/files/rig_file.h"
#include "tests/support/finding.h"

namespace gazewright {
namespace {

using tests::finding;

Rig heron() {
  const auto loaded =
      load_rig(std::string(GAZEWRIGHT_SOURCE_DIR) + "/sample-rigs/hasty-heron.rig.yaml");
  return loaded.rig.value();
}

// What an analysis of the mended rig finds failing that did not fail is what the remedy warns of.
TEST(Price, ARemedySaysWhatItBreaksAndThoseThatBreakNothingComeFirst) {
  const Rig rig = heron();
  const Analysis now = analyse(rig);
  const auto fails_anew = [&](const Finding& then) {
    const Finding* before = finding(now, then.id);
    return then.verdict == Verdict::fails && (!before || before->verdict != Verdict::fails);
  };
  int warned = 0, harmless = 0;
  for (const Finding& found : now.findings) {
    EXPECT_LE(found.remedies.size(), 3u) << found.id;
    EXPECT_TRUE(std::ranges::is_sorted(found.remedies, {}, [](const Remedy& remedy) {
      return !remedy.is_free();
    })) << found.id;
    for (const Remedy& remedy : found.remedies) {
      EXPECT_EQ(remedy.text.find(", but then this fails: ") == std::string::npos, remedy.is_free());
      const Analysis then = analyse(remedied(rig, remedy), {.remedies = false, .quick = true});
      const bool breaks = std::ranges::any_of(then.findings, fails_anew);
      EXPECT_FALSE(breaks && remedy.is_free()) << found.id << ": " << remedy.text;
      ++(remedy.is_free() ? harmless : warned);
    }
  }
  EXPECT_GT(warned, 0);
  EXPECT_GT(harmless, 0);
}

TEST(Price, AFindingThatFailsAlreadyCountsWhereItFailsClearlyMore) {
  Rig rig = heron();
  rig.tilt.gearbox.input_speed_limit_radps = si_quantity(10);
  const Analysis then = analyse(rig, {.remedies = false, .quick = true});
  const double margin = *finding(then, "tilt.gearbox.input_speed")->margin;
  const auto price_beside = [&](std::optional<double> before) {
    std::vector<Finding> all = then.findings;  // all else is as bad already
    std::ranges::find(all, "tilt.gearbox.input_speed", &Finding::id)->margin = before;
    return price_of(rig, Axis::tilt, all, {});
  };
  EXPECT_EQ(price_beside(margin + 0.04), "");
  EXPECT_EQ(price_beside(margin + 0.06).substr(0, 19), "Gearbox input speed");
  EXPECT_EQ(price_beside(std::nullopt), "") << "it could not be worse than impossible";
}

TEST(Price, WhatBecomesImpossibleFailsMoreThanByANumber) {
  const Rig rig = heron();
  const Analysis then = analyse(rig, {.remedies = false, .quick = true});
  ASSERT_FALSE(finding(then, "tilt.move.time")->margin) << "never settles";
  std::vector<Finding> before = then.findings;
  std::ranges::find(before, "tilt.move.time", &Finding::id)->margin = -0.5;
  EXPECT_EQ(price_of(rig, Axis::tilt, before, {}), "Move and settle in time");
}

TEST(Price, NamesTheWorstWithItsNumbersAndTheOtherAxis) {
  Rig rig = heron();
  const Analysis now = analyse(rig, {.remedies = false, .quick = true});
  EXPECT_EQ(price_of(rig, Axis::pan, now.findings, {}), "") << "nothing has changed";
  Rig worse = rig;
  worse.tilt.gearbox.input_speed_limit_radps = si_quantity(10);
  const std::string price = price_of(worse, Axis::pan, now.findings, {});
  EXPECT_EQ(price.substr(0, 25), "tilt: Gearbox input speed");
  EXPECT_NE(price.find("capacity 95.5 rpm"), std::string::npos) << price;
  EXPECT_EQ(price_of(worse, Axis::tilt, now.findings, {}).substr(0, 19), "Gearbox input speed");
}

}  // namespace
}  // namespace gazewright
