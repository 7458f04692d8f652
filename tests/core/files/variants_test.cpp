// Variants in the rig file: read with their places, written, and kept while other things change.
#include <gtest/gtest.h>

#include <cmath>

#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "tests/core/files/whole_rig.h"

namespace gazewright {
namespace {

/// Two variants, with remarks and a key that nobody knows.
constexpr std::string_view kVariants = R"(variants:   # what else was thought of
  - name: low ratio   # from the shelf
    note: quicker at the top
    rig:
      supply: {voltage: 24 V, current_limit: 15 A}
      pan:
        gearbox: {ratio: 9, wobble: 3}   # one stage
      on_tilt:
        - {name: lens, mass: 20 g, centre: [40 mm, 0 mm, 0 mm], shape: point}
  # the second one
  - {name: bare, rig: {supply: {voltage: 12 V}}}

# the end
)";

std::string whole_text() { return std::string(kWholeRig) + std::string(kVariants); }

Rig read(const std::string& text) {
  const LoadedRig loaded = parse_rig(text, "owl.rig.yaml");
  for (const Diagnostic& diagnostic : loaded.diagnostics)
    EXPECT_EQ(diagnostic.weight, Diagnostic::Weight::warning) << to_text(diagnostic);
  return loaded.rig.value_or(Rig{});
}

std::vector<std::string> errors_of(const std::string& variants) {
  std::vector<std::string> errors;
  for (const Diagnostic& diagnostic : parse_rig("rig: 1\n" + variants, "owl.rig.yaml").diagnostics)
    if (diagnostic.weight == Diagnostic::Weight::error) errors.push_back(to_text(diagnostic));
  return errors;
}

Rig with_ratio(const Rig& from, double ratio) {
  Rig rig = from;
  rig.pan.gearbox.ratio = si_quantity(ratio);
  rig.pan.gearbox.ratio.written = std::to_string(std::lround(ratio));
  return rig;
}

TEST(VariantsFile, AreReadWithTheirOwnUnknownKeys) {
  const Rig rig = read(whole_text());
  ASSERT_EQ(rig.variants.size(), 2u);
  EXPECT_EQ(rig.variants[0].name, "low ratio");
  EXPECT_EQ(rig.variants[0].note, "quicker at the top");
  EXPECT_EQ(rig.variants[0].rig->pan.gearbox.ratio.value(), 9);
  EXPECT_EQ(rig.variants[0].rig->on_tilt.size(), 1u);
  EXPECT_EQ(rig.variants[0].rig->unknown_keys,
            (std::vector<UnknownKey>{{"pan.gearbox", "wobble", "3"}}));
  EXPECT_EQ(rig.variants[1].rig->supply.voltage_V.value(), 12);
  EXPECT_EQ(rig.pan.gearbox.ratio.value(), 18) << "the present design is another";
  EXPECT_EQ(rig.unknown_keys, read(std::string(kWholeRig)).unknown_keys);
}

TEST(VariantsFile, SayWhereTheyAreWrong) {
  EXPECT_EQ(
      errors_of("variants:\n  - name: a\n    rig:\n      pan:\n        motor: {mass: -2 g}\n"),
      (std::vector<std::string>{
          "owl.rig.yaml:6:23: error: Mass (variants[0].rig.pan.motor.mass): -2 g is negative; a "
          "mass cannot be negative\n  fix: write a value above 0 g"}));
  EXPECT_EQ(errors_of("variants: {a: 1}\n"),
            (std::vector<std::string>{"owl.rig.yaml:2:11: error: variants is a map; a list of "
                                      "variants is due\n  fix: begin each with a dash: - {name: "
                                      "low ratio, rig: {...}}"}));
  EXPECT_EQ(errors_of("variants:\n  - {name: a}\n"),
            (std::vector<std::string>{
                "owl.rig.yaml:3:5: error: variants[0] has no rig: nothing says what the variant "
                "is\n  fix: write rig: and under it supply, pan, tilt ... as in a rig file"}));
  EXPECT_EQ(errors_of("variants:\n  - 3\n").size(), 1u);
  EXPECT_EQ(errors_of("variants:\n  - {name: a, rig: 7}\n").size(), 1u);
}

TEST(VariantsFile, HoldAtMostTwentyFour) {
  std::string text = "variants:\n";
  for (int i = 0; i < 24; ++i) text += "  - {name: a, rig: {}}\n";
  EXPECT_TRUE(errors_of(text).empty());
  EXPECT_EQ(errors_of(text + "  - {name: a, rig: {}}\n"),
            (std::vector<std::string>{"owl.rig.yaml:3:3: error: variants holds 25 variants; at "
                                      "most 24 are read\n  fix: leave some of them out"}));
}

TEST(VariantsFile, TitleNotesAndVariantsOfAVariantAreKeptAndNotUsed) {
  const Rig rig = read("rig: 1\nvariants:\n  - name: a\n    rig: {title: b, variants: []}\n");
  ASSERT_EQ(rig.variants.size(), 1u);
  EXPECT_EQ(rig.variants[0].rig->title, "");
  EXPECT_EQ(rig.variants[0].rig->unknown_keys.size(), 2u);
  EXPECT_EQ(read(write_rig(rig)), rig);
}

TEST(VariantsFile, AreNoFieldsOfTheRig) {
  Rig with = read(whole_text()), without = with;
  without.variants.clear();
  EXPECT_EQ(all_fields(with).size(), all_fields(without).size());
}

TEST(VariantsFile, WriteBackEveryByteWhereNothingChanged) {
  EXPECT_EQ(write_rig(read(whole_text()), whole_text()), whole_text());
}

TEST(VariantsFile, LaidOutAnewReadBack) {
  const Rig rig = read(whole_text());
  const std::string anew = write_rig(rig);
  EXPECT_EQ(read(anew), rig) << anew;
  EXPECT_EQ(write_rig(read(anew), anew), anew);
}

TEST(VariantsFile, ANewOneGoesToTheEndAndEverythingElseStays) {
  Rig rig = read(std::string(kWholeRig));
  rig.variants.push_back({"first: one", "", std::make_shared<const Rig>(with_ratio(Rig{}, 7))});
  const std::string text = write_rig(rig, kWholeRig);
  EXPECT_EQ(text, std::string(kWholeRig) + R"(variants:
  - name: "first: one"
    rig:
      pan:
        gearbox:  {ratio: 7}
)");
  EXPECT_EQ(read(text), rig);

  rig.variants.push_back({"second", "a note", std::make_shared<const Rig>()});
  const std::string more = write_rig(rig, text);
  EXPECT_EQ(more, text + "  - name: second\n    note: a note\n    rig: {}\n");
}

TEST(VariantsFile, ANewOneInAFileWithoutALastLineEnd) {
  Rig rig = read("rig: 1\ntitle: a");
  rig.variants.push_back({"b", "", std::make_shared<const Rig>()});
  EXPECT_EQ(write_rig(rig, "rig: 1\ntitle: a"),
            "rig: 1\ntitle: a\nvariants:\n  - name: b\n    rig: {}\n");
}

TEST(VariantsFile, RemovingOneLeavesTheOtherWithItsRemarks) {
  Rig rig = read(whole_text());
  rig.variants.erase(rig.variants.begin() + 1);
  const std::string text = write_rig(rig, whole_text());
  EXPECT_EQ(read(text), rig);
  for (const char* kept :
       {"variants:   # what else was thought of\n", "- name: low ratio   # from the shelf\n",
        "# one stage\n", "\n# the end"})
    EXPECT_NE(text.find(kept), std::string::npos) << kept << "\n" << text;
  EXPECT_EQ(text.find("bare"), std::string::npos);
  rig.variants.clear();
  const std::string none = write_rig(rig, text);
  EXPECT_EQ(read(none), rig);
  EXPECT_EQ(none.find("variants"), std::string::npos) << none;
  EXPECT_NE(none.find("# the end"), std::string::npos);
}

TEST(VariantsFile, ANewNameOrValueChangesOnlyItsEntry) {
  Rig rig = read(whole_text());
  rig.variants[1].name = "plain";
  rig.variants[0].note = "";
  Rig low = *rig.variants[0].rig;
  low.pan.gearbox.ratio = si_quantity(8);
  rig.variants[0].rig = std::make_shared<const Rig>(low);
  std::string wanted = whole_text();
  const auto replace = [&](const std::string& from, const std::string& to) {
    const auto at = wanted.find(from);
    ASSERT_NE(at, std::string::npos) << from;
    wanted.replace(at, from.size(), to);
  };
  replace("name: bare", "name: plain");
  replace("note: quicker at the top", "note: \"\"");
  replace("ratio: 9", "ratio: 8");
  EXPECT_EQ(write_rig(rig, whole_text()), wanted);
}

TEST(VariantsFile, AnEditOfThePresentDesignBesideANewVariantKeepsRemarks) {
  Rig rig = read(whole_text());
  rig.variants.push_back({"pinned", "", std::make_shared<const Rig>(with_ratio(Rig{}, 18))});
  rig = with_ratio(rig, 20);
  const std::string text = write_rig(rig, whole_text());
  EXPECT_EQ(read(text), rig);
  for (const char* kept : {"# bench supply", "# level", "# by the door", "# from the shelf",
                           "# the second one", "# the end", "ratio: 20", "name: pinned"})
    EXPECT_NE(text.find(kept), std::string::npos) << kept << "\n" << text;
}

TEST(VariantsFile, InBracesAreLaidOutAnewWhenOneMoreComes) {
  const std::string text = "rig: 1\ntitle: a\nvariants: [{name: b, rig: {}}]\n";
  Rig rig = read(text);
  rig.variants.push_back({"c", "", std::make_shared<const Rig>()});
  EXPECT_EQ(read(write_rig(rig, text)), rig);
}

}  // namespace
}  // namespace gazewright
