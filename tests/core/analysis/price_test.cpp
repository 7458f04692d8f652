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

/// Whether the finding of this id fails in `then` and does not in `now`, or clearly less.
bool fails_more(const Finding& then, const Analysis& now) {
  if (then.verdict != Verdict::fails) return false;
  const Finding* before = finding(now, then.id);
  if (before == nullptr || before->verdict != Verdict::fails) return true;
  return before->margin && then.margin && *then.margin < *before->margin - 0.05;
}

// What a whole analysis of the mended rig finds failing is what the remedy warns of.
TEST(Price, ARemedySaysWhatItBreaksAndThoseThatBreakNothingComeFirst) {
  const Rig rig = heron();
  const Analysis now = analyse(rig);
  int warned = 0, harmless = 0;
  for (const Finding& found : now.findings) {
    EXPECT_LE(found.remedies.size(), 3u) << found.id;
    EXPECT_TRUE(std::ranges::is_sorted(found.remedies, {}, [](const Remedy& remedy) {
      return !remedy.is_free();
    })) << found.id;
    if (found.remedies.empty() || found.id == "gearboxes.swap") continue;
    const Remedy& remedy = found.remedies.back();
    const Analysis then = analyse(remedied(rig, remedy), {.remedies = false, .quick = true});
    const bool breaks =
        std::ranges::any_of(then.findings, [&](const Finding& f) { return fails_more(f, now); });
    EXPECT_EQ(breaks, !remedy.is_free()) << found.id << ": " << remedy.text;
    EXPECT_EQ(
        breaks,
        remedy.text.find(", but then this fails: " + remedy.price) != std::string::npos && breaks)
        << remedy.text;
    ++(breaks ? warned : harmless);
  }
  EXPECT_GT(warned, 0);
  EXPECT_GT(harmless, 0);
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
