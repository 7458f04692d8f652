#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <utility>

#include "core/analysis/analysis.h"
#include "core/files/rig_file.h"
#include "core/rig/fields.h"

/// The sample rigs tell the stories that their notes claim.
namespace gazewright {
namespace {

const std::filesystem::path kSamples = std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs";

std::vector<std::filesystem::path> sample_files() {
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(kSamples))
    if (entry.path().string().ends_with(".rig.yaml")) files.push_back(entry.path());
  std::ranges::sort(files);
  return files;
}

Rig rig_of(const std::filesystem::path& file) {
  const LoadedRig loaded = load_rig(file);
  for (const Diagnostic& diagnostic : loaded.diagnostics) ADD_FAILURE() << to_text(diagnostic);
  EXPECT_TRUE(loaded.rig) << file;
  return loaded.rig.value_or(Rig{});
}

const Finding* find(const Analysis& analysis, const std::string& id) {
  const auto at = std::ranges::find(analysis.findings, id, &Finding::id);
  return at == analysis.findings.end() ? nullptr : &*at;
}

bool is_good(Verdict verdict) { return verdict == Verdict::holds || verdict == Verdict::tight; }

void apply(Rig& rig, const Remedy& remedy) {
  if (remedy.path == "swap") {
    std::swap(rig.pan.gearbox, rig.tilt.gearbox);
    return;
  }
  Quantity* quantity = find_quantity(rig, remedy.path);
  ASSERT_NE(quantity, nullptr) << remedy.path;
  *quantity = si_quantity(remedy.value_si);
  for (const FieldValue& other : remedy.also)
    *find_quantity(rig, other.path) = si_quantity(other.value_si);
}

TEST(SampleRigs, ThereAreThreeAndEachIsReadWithoutAWord) {
  EXPECT_EQ(sample_files().size(), 3u);
  for (const auto& file : sample_files()) {
    const Rig rig = rig_of(file);
    EXPECT_FALSE(rig.title.empty()) << file;
    EXPECT_GT(rig.notes.size(), 100u) << file << " has a story";
  }
}

TEST(SampleRigs, AreFullySpecifiedSoThatNoFindingIsUnknown) {
  for (const auto& file : sample_files())
    for (const Finding& finding : analyse(rig_of(file)).findings)
      EXPECT_NE(finding.verdict, Verdict::unknown)
          << file << ' ' << finding.id << ": " << finding.because;
}

TEST(SampleRigs, TheTiltDriveTrainRidesOnPanWithItsOwnMass) {
  for (const auto& file : sample_files()) {
    const Rig rig = rig_of(file);
    const auto mass_of = [&](const std::string& name) {
      const auto at = std::ranges::find(rig.on_pan, name, &Body::name);
      return at == rig.on_pan.end() ? -1.0 : at->mass_kg.value();
    };
    EXPECT_DOUBLE_EQ(mass_of("tilt motor"), rig.tilt.motor.mass_kg.value()) << file;
    EXPECT_DOUBLE_EQ(mass_of("tilt gearbox"), rig.tilt.gearbox.mass_kg.value()) << file;
  }
}

TEST(SampleRigs, EverythingHoldsOnTheQuickNewtAndTheHarbourCormorant) {
  for (const char* name : {"quick-newt.rig.yaml", "harbour-cormorant.rig.yaml"})
    for (const Finding& finding : analyse(rig_of(kSamples / name)).findings)
      EXPECT_EQ(finding.verdict, Verdict::holds)
          << name << ' ' << finding.id << ": demand " << finding.demand.value_or(-1)
          << ", capacity " << finding.capacity.value_or(-1) << ", " << finding.because;
}

TEST(SampleRigs, TheQuickNewtMovesAboutAsFastAsAnEye) {
  const Analysis analysis = analyse(rig_of(kSamples / "quick-newt.rig.yaml"));
  EXPECT_LT(analysis.value("eye.duration_ratio").value_or(9), 1.2);
  for (const char* axis : {"pan", "tilt"})
    EXPECT_LT(analysis.value(std::string(axis) + ".step.overshoot").value_or(9), 0.05) << axis;
}

TEST(SampleRigs, TheHastyHeronFailsInManyWaysAndEachRemedyMendsItsFinding) {
  const Rig rig = rig_of(kSamples / "hasty-heron.rig.yaml");
  int fails = 0;
  for (const Finding& finding : analyse(rig).findings) {
    if (finding.verdict != Verdict::fails) continue;
    ++fails;
    EXPECT_FALSE(finding.remedies.empty()) << finding.id << " offers nothing: " << finding.because;
    for (const Remedy& remedy : finding.remedies) {
      Rig mended = rig;
      apply(mended, remedy);
      const Analysis after = analyse(mended, {.remedies = false});
      const Finding* now = find(after, finding.id);
      ASSERT_NE(now, nullptr) << finding.id;
      EXPECT_TRUE(is_good(now->verdict)) << finding.id << " after: " << remedy.text;
    }
  }
  EXPECT_GE(fails, 5);
}

TEST(SampleRigs, TheHastyHeronIsMendedByItsRemediesOneAfterAnother) {
  Rig rig = rig_of(kSamples / "hasty-heron.rig.yaml");
  for (int step = 0; step < 20; ++step) {
    const Analysis analysis = analyse(rig);
    const Finding& worst = analysis.findings.front();
    if (worst.verdict != Verdict::fails) {
      SUCCEED();
      return;
    }
    ASSERT_FALSE(worst.remedies.empty()) << worst.id << ": " << worst.because;
    apply(rig, worst.remedies.front());
  }
  const Analysis last = analyse(rig);
  FAIL() << "still fails after 20 remedies: " << last.findings.front().id;
}

}  // namespace
}  // namespace gazewright
