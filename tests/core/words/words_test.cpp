#include "core/words/words.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <tuple>

#include "core/analysis/analysis.h"
#include "core/analysis/compare.h"
#include "core/analysis/doubts.h"
#include "core/analysis/explain.h"
#include "core/analysis/input_names.h"
#include "core/analysis/missing.h"
#include "core/files/rig_file.h"

namespace gazewright {
namespace {

/// A language that no rule of English fits: «text» with its holes in the other order.
std::string strange(std::string_view english) {
  std::string text = "«" + std::string(english) + "»";
  const auto one = text.find("%1"), two = text.find("%2");
  if (one != std::string::npos && two != std::string::npos) std::swap(text[one + 1], text[two + 1]);
  if (english.starts_with("needs ")) text = "«needs» " + std::string(english.substr(6));
  return text;
}

bool is_strange(const std::string& text) { return text.find("«") != std::string::npos; }

class Words : public testing::Test {
 protected:
  void TearDown() override { use_translation(nullptr); }
};

TEST_F(Words, AreEnglishUntilATranslationIsUsed) {
  EXPECT_EQ(words("no limit is stated"), "no limit is stated");
  EXPECT_EQ(words("%1 at %2", "30 A", std::string("40 °C")), "30 A at 40 °C");
  EXPECT_TRUE(is_english());
  use_translation(strange);
  EXPECT_EQ(words("no limit is stated"), "«no limit is stated»");
  EXPECT_FALSE(is_english());
}

TEST_F(Words, FillTheHolesInTheOrderOfTheTranslation) {
  use_translation(strange);
  EXPECT_EQ(words("%1 at %2", "30 A", "40 °C"), "«40 °C at 30 A»");
}

TEST_F(Words, LeaveAloneWhatIsNoHole) {
  EXPECT_EQ(words("24 % of %1 and %9", "it"), "24 % of it and %9");
  EXPECT_EQ(words("100 %", "it"), "100 %");
  EXPECT_EQ(words("%1%2", "%2", "%1"), "%2%1") << "what fills a hole is not looked at again";
}

TEST_F(Words, ATextWithoutTranslationStaysEnglish) {
  use_translation([](std::string_view) { return std::string(); });
  EXPECT_EQ(words("%1 at most", "30 A"), "30 A at most");
}

TEST_F(Words, AreRecognisedByTheirBeginningInAnyLanguage) {
  EXPECT_TRUE(begins_as("needs %1", "needs pan.stops"));
  EXPECT_FALSE(begins_as("needs %1", "runs away"));
  use_translation(strange);
  EXPECT_TRUE(begins_as("needs %1", words("needs %1", "pan.stops")));
  EXPECT_FALSE(begins_as("needs %1", "needs pan.stops"));
}

TEST_F(Words, ALabelKeepsItsCapitalInOtherLanguages) {
  EXPECT_EQ(in_sentence("Speed constant (KV)"), "speed constant (KV)");
  EXPECT_EQ(in_sentence("Coulomb friction"), "Coulomb friction");
  EXPECT_EQ(in_sentence("RMS current"), "RMS current");
  EXPECT_EQ(in_sentence(""), "");
  use_translation([](std::string_view) { return std::string("Trägheitsmoment"); });
  EXPECT_EQ(in_sentence("Rotor inertia"), "Trägheitsmoment");
}

TEST_F(Words, WhatMeasuringIsCalledComesFromThePathAndNotFromTheWords) {
  EXPECT_EQ(measuring_phrase("on_tilt[camera].mass", "Mass"), "weighing the camera");
  EXPECT_EQ(measuring_phrase("on_tilt[ball].shape.shell.wall", "Wall"),
            "measuring the wall of the ball");
  EXPECT_EQ(measuring_phrase("pan.motor.rotor_inertia", "Rotor inertia"),
            "measuring the rotor inertia of the pan motor");
  use_translation(strange);
  EXPECT_EQ(measuring_phrase("on_tilt[camera].mass", "Mass"), "«weighing the camera»");
}

struct Told {
  Analysis analysis;
  Doubts doubts;
  std::vector<MissingEntry> missing;
};
Told told(const std::filesystem::path& file, bool lacks_something) {
  LoadedRig loaded = load_rig(file);
  Rig rig = loaded.rig.value();
  if (lacks_something) rig.pan.motor.rotor_inertia_kgm2 = {};
  Told out{analyse(rig), {}, {}};
  out.doubts = doubts_of(rig, out.analysis);
  out.missing = missing_inputs(out.analysis).all;
  return out;
}

/// Whatever the language, nothing is worked out from what is said in it.
class RigInAnotherLanguage : public testing::TestWithParam<std::tuple<const char*, bool>> {};
TEST_P(RigInAnotherLanguage, HasTheSameFiguresFindingsAndRemedies) {
  const auto& [name, lacks_something] = GetParam();
  const auto file = std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs" /
                    (name + std::string(".rig.yaml"));
  const Told english = told(file, lacks_something);
  use_translation(strange);
  const Told other = told(file, lacks_something);
  use_translation(nullptr);
  ASSERT_EQ(other.analysis.figures.size(), english.analysis.figures.size());
  int reasons = 0;
  for (std::size_t i = 0; i < english.analysis.figures.size(); ++i) {
    const Figure &a = english.analysis.figures[i], &b = other.analysis.figures[i];
    EXPECT_EQ(a.value, b.value) << a.id;
    EXPECT_EQ(a.is_aside, b.is_aside) << a.id;
    EXPECT_EQ(a.because.empty(), b.because.empty()) << a.id;
    reasons += !a.because.empty();
    if (!a.because.empty()) {
      EXPECT_TRUE(is_strange(b.because)) << a.id << ": " << b.because;
    }
  }
  EXPECT_GT(reasons, 0);
  ASSERT_EQ(other.analysis.findings.size(), english.analysis.findings.size());
  for (std::size_t i = 0; i < english.analysis.findings.size(); ++i) {
    const Finding &a = english.analysis.findings[i], &b = other.analysis.findings[i];
    EXPECT_EQ(a.id, b.id) << "in the same order";
    EXPECT_EQ(a.verdict, b.verdict) << a.id;
    EXPECT_EQ(a.margin, b.margin) << a.id;
    ASSERT_EQ(a.remedies.size(), b.remedies.size()) << a.id;
    for (std::size_t k = 0; k < a.remedies.size(); ++k)
      EXPECT_EQ(a.remedies[k].value_si, b.remedies[k].value_si) << a.id;
    EXPECT_TRUE(is_strange(b.what)) << a.id;
    if (!a.because.empty()) {
      EXPECT_TRUE(is_strange(b.because)) << a.id << ": " << b.because;
    }
  }
  ASSERT_EQ(other.missing.size(), english.missing.size());
  for (std::size_t i = 0; i < english.missing.size(); ++i)
    EXPECT_EQ(other.missing[i].path, english.missing[i].path);
  EXPECT_EQ(english.missing.empty(), !lacks_something);
  EXPECT_EQ(other.doubts.worth.size(), english.doubts.worth.size());
}
INSTANTIATE_TEST_SUITE_P(Samples, RigInAnotherLanguage,
                         testing::Combine(testing::Values("quick-newt", "hasty-heron",
                                                          "harbour-cormorant"),
                                          testing::Bool()));

}  // namespace
}  // namespace gazewright
