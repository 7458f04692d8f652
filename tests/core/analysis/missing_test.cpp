#include "core/analysis/missing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>

#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

using tests::owl;

/// Compared with the analysis itself: a figure that loses its value waits for the entry.
TEST(Missing, AMissingEntryNamesTheFiguresThatItCosts) {
  const Rig whole = owl();
  const Analysis before = analyse(whole, {.remedies = false});
  for (const char* path : {"pan.motor.rotor_inertia", "supply.voltage", "tilt.gearbox.stiffness",
                           "camera.columns", "on_tilt[1].mass"}) {
    Rig rig = whole;
    *find_quantity(rig, path) = Quantity{};
    const Analysis after = analyse(rig, {.remedies = false});
    std::set<std::string> lost, named;
    for (const Figure& figure : after.figures) {
      if (!figure.value && !figure.is_aside && before.value(figure.id)) lost.insert(figure.id);
    }
    for (const Figure* figure : figures_without(after, path)) named.insert(figure->id);
    EXPECT_FALSE(lost.empty()) << path;
    for (const std::string& id : lost) EXPECT_TRUE(named.contains(id)) << path << ": " << id;
    for (const std::string& id : named) EXPECT_FALSE(after.value(id)) << path << ": " << id;
  }
}

TEST(Missing, AFieldWhoseNameBeginsAlikeIsAnotherOne) {
  Analysis analysis;
  const FigureInfo info{"<axis>.x", "X", "1", "1", "", "", {}};
  analysis.figures.push_back({"pan.x", &info, std::nullopt, "needs pan.motor.mass_of_it", false});
  EXPECT_TRUE(figures_without(analysis, "pan.motor.mass").empty());
  EXPECT_EQ(figures_without(analysis, "pan.motor.mass_of_it").size(), 1U);
}

TEST(Missing, WhatIsMissingIsListedByWhatItCosts) {
  Rig rig = owl();
  rig.supply.voltage_V = {};
  rig.camera.exposure_s = {};
  const Analysis analysis = analyse(rig, {.remedies = false});
  const std::vector<MissingEntry> entries = missing_inputs(analysis).all;
  const auto voltage = std::ranges::find(entries, "supply.voltage", &MissingEntry::path);
  const auto exposure = std::ranges::find(entries, "camera.exposure", &MissingEntry::path);
  ASSERT_NE(voltage, entries.end());
  ASSERT_NE(exposure, entries.end());
  EXPECT_LT(voltage - entries.begin(), exposure - entries.begin());
  const Analysis whole = analyse(owl(), {.remedies = false});
  std::size_t lost = 0;
  for (const Figure* figure : figures_without(analysis, "supply.voltage"))
    lost += whole.value(figure->id).has_value();
  EXPECT_GE(voltage->figures, lost);
  EXPECT_LE(voltage->figures, figures_without(analysis, "supply.voltage").size());
}

Rig sample(const char* name) {
  return load_rig(std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "sample-rigs" /
                  (name + std::string(".rig.yaml")))
      .rig.value();
}

/// A rig of which only this is known: what somebody has in mind who begins.
Rig nearly_empty(const Rig& whole) {
  Rig rig;
  rig.title = whole.title;
  rig.task.pan_move_rad = whole.task.pan_move_rad;
  rig.task.tilt_move_rad = whole.task.tilt_move_rad;
  for (const Axis axis : kAxes) rig.axis(axis).motor.name = whole.axis(axis).motor.name;
  return rig;
}

/// Enters what the whole rig has there. The bodies come all at once, as does a part.
void enter(Rig& rig, const Rig& whole, const std::string& path) {
  if (path == "on_tilt") {
    rig.on_tilt = whole.on_tilt;
  } else if (path == "on_pan") {
    rig.on_pan = whole.on_pan;
  } else if (path == "tilt.axis_at") {
    rig.tilt_axis_at_m = whole.tilt_axis_at_m;
  } else if (path.ends_with(".stops") || path.ends_with(".cable")) {
    const Axis axis = path.starts_with("pan") ? Axis::pan : Axis::tilt;
    if (path.ends_with(".stops")) rig.axis(axis).stops = whole.axis(axis).stops;
    if (path.ends_with(".cable")) rig.axis(axis).cable = whole.axis(axis).cable;
  } else {
    *find_quantity(rig, path) = *find_quantity(whole, path);
  }
}

/// How many figures and findings wait for an entry, counted over again from the reasons.
std::pair<std::size_t, std::size_t> waiting(const Analysis& analysis) {
  std::size_t figures = 0, findings = 0;
  for (const Figure& figure : analysis.figures)
    figures += !figure.value && !figure.is_aside && !needs_in(figure.because).empty();
  for (const Finding& finding : analysis.findings)
    findings += finding.verdict == Verdict::unknown && !needs_in(finding.because).empty();
  return {figures, findings};
}

Figure unknown_figure(const char* id, const FigureInfo& info, const char* because) {
  return {id, &info, std::nullopt, because, false};
}
Finding unknown_finding(const char* because) {
  Finding finding;
  finding.because = because;
  return finding;
}

TEST(Missing, AReasonNamesItsEntries) {
  using Paths = std::vector<std::string>;
  EXPECT_EQ(needs_in("needs pan.gearbox.drag, pan.stops"),
            (Paths{"pan.gearbox.drag", "pan.stops"}));
  EXPECT_EQ(needs_in("needs on_tilt[1].mass"), Paths{"on_tilt[1].mass"});
  EXPECT_EQ(needs_in("needs on_tilt[1].shape.inertia[0], on_tilt[1].shape.inertia[1]"),
            Paths{"on_tilt[1].shape.inertia"});  // one entry of six numbers
  EXPECT_EQ(needs_in("needs the usable travel, pan.stops"), Paths{"pan.stops"});
  EXPECT_EQ(needs_in("never settles: runs away, tilt.stops"), Paths{});
  EXPECT_EQ(needs_in(""), Paths{});
}

/// Counted by hand: six answers, of which two come for supply.voltage alone, two more for the two
/// entries of the motor, and two wait for all three and a fourth.
TEST(Missing, CountsFiguresAndFindingsAndBeginsWithThoseThatGiveMost) {
  const FigureInfo info{"x", "X", "1", "1", "", "", {}};
  Analysis analysis;
  analysis.figures = {
      unknown_figure("a", info, "needs supply.voltage"),
      unknown_figure("b", info, "needs pan.motor.mass, pan.motor.pole_pairs"),
      unknown_figure("c", info,
                     "needs pan.motor.mass, pan.motor.pole_pairs, supply.voltage, camera.rows")};
  analysis.findings = {
      unknown_finding("needs supply.voltage"),
      unknown_finding("needs pan.motor.pole_pairs, pan.motor.mass"),
      unknown_finding("needs pan.motor.mass, pan.motor.pole_pairs, supply.voltage, camera.rows")};
  const MissingInputs missing = missing_inputs(analysis);
  const std::vector<MissingEntry> all{{"supply.voltage", "supply", 2, 2},
                                      {"pan.motor.mass", "pan.motor", 2, 2},
                                      {"pan.motor.pole_pairs", "pan.motor", 2, 2},
                                      {"camera.rows", "camera", 1, 1}};
  EXPECT_EQ(missing.all, all);
  EXPECT_EQ(missing.figures, 3U);
  EXPECT_EQ(missing.findings, 3U);
  EXPECT_TRUE(missing.are_few());
  EXPECT_EQ(missing.of_first_figures, 3U);
}

/// More entries than the list has room for: those that the most answers come for at the fewest
/// entries each, though an entry of the others is waited for by more.
TEST(Missing, TheFirstFewAreAWholeSet) {
  const FigureInfo info{"x", "X", "1", "1", "", "", {}};
  Analysis analysis;
  std::string ten = "needs camera.columns";
  for (int i = 0; i < 9; ++i) ten += ", duty[" + std::to_string(i) + "].angle";
  for (int i = 0; i < 5; ++i) analysis.figures.push_back(unknown_figure("a", info, ten.c_str()));
  for (int i = 0; i < 4; ++i)
    analysis.figures.push_back(unknown_figure("b", info, "needs pan.motor.mass, supply.voltage"));
  analysis.findings = {unknown_finding("needs supply.voltage, tilt.motor.mass")};
  const MissingInputs missing = missing_inputs(analysis);
  std::vector<std::string> first;
  for (const MissingEntry& entry : missing.first) first.push_back(entry.path);
  EXPECT_EQ(first,
            (std::vector<std::string>{"supply.voltage", "pan.motor.mass", "tilt.motor.mass"}));
  EXPECT_EQ(missing.of_first_figures, 4U);
  EXPECT_EQ(missing.of_first_findings, 1U);
  EXPECT_EQ(missing.figures, 9U);
  EXPECT_FALSE(missing.are_few());
}

TEST(Missing, WhereEveryAnswerNeedsMoreThanTheyAreThoseThatMostWaitsForComeFirst) {
  const FigureInfo info{"x", "X", "1", "1", "", "", {}};
  Analysis analysis;
  std::string twelve = "needs camera.columns";
  for (int i = 0; i < 11; ++i) twelve += ", duty[" + std::to_string(i) + "].angle";
  analysis.figures = {unknown_figure("a", info, twelve.c_str())};
  EXPECT_EQ(missing_inputs(analysis).first.size(), kMostFirstInputs);
  EXPECT_EQ(missing_inputs(analysis).of_first_figures, 0U);
}

TEST(Missing, ItsPartsAreSaidInWords) {
  EXPECT_EQ(missing_part_words({"pan.motor.mass", "pan.motor"}), "pan motor");
  EXPECT_EQ(missing_entry_words({"pan.motor.rotor_inertia", "pan.motor"}), "Rotor inertia");
  EXPECT_EQ(missing_part_words({"on_tilt", "on_tilt"}), "the bodies on tilt");
  EXPECT_EQ(missing_entry_words({"pan.stops", "pan.stops"}), "pan stops");
}

class MissingInSample : public testing::TestWithParam<const char*> {};

/// The few that are said to come first are entered: what was said to wait for nothing else has an
/// answer then, or a reason that is no missing entry.
TEST_P(MissingInSample, TheFirstFewGiveWhatTheySay) {
  const Rig whole = sample(GetParam());
  Rig rig = nearly_empty(whole);
  const Analysis before = analyse(rig, {.remedies = false});
  const MissingInputs missing = missing_inputs(before);
  EXPECT_GT(missing.all.size(), 30U);
  EXPECT_LE(missing.first.size(), kMostFirstInputs);
  EXPECT_LE(missing.figures, waiting(before).first);  // details are left out
  EXPECT_EQ(missing.findings, waiting(before).second);
  EXPECT_GT(missing.of_first_figures + missing.of_first_findings, missing.first.size());
  std::set<std::string> entered;
  for (const MissingEntry& entry : missing.first) {
    enter(rig, whole, entry.path);
    entered.insert(entry.path);
  }
  const Analysis after = analyse(rig, {.remedies = false});
  std::size_t ready = 0;
  for (std::size_t i = 0; i < before.figures.size(); ++i) {
    const auto needs = needs_in(before.figures[i].because);
    if (before.figures[i].value || before.figures[i].is_aside || needs.empty() ||
        !std::ranges::all_of(needs, [&](const auto& path) { return entered.contains(path); }))
      continue;
    const Figure& figure = after.figures[i];
    // Some are about another kind of cable or stops than the sample has.
    if (!figure.is_aside) {
      EXPECT_EQ(needs_in(figure.because), std::vector<std::string>{}) << figure.id;
      ++ready;
    }
  }
  EXPECT_LE(ready, missing.of_first_figures);
  EXPECT_GT(ready, missing.of_first_figures / 2);
}

/// Whoever enters the first few, and the next few after them, and so on, gets to a rig that waits
/// for nothing; no round leads nowhere.
TEST_P(MissingInSample, FollowedToItsEndItGivesAWholeRig) {
  const Rig whole = sample(GetParam());
  Rig rig = nearly_empty(whole);
  int rounds = 0;
  for (;; ++rounds) {
    const MissingInputs missing = missing_inputs(analyse(rig, {.remedies = false, .quick = true}));
    if (missing.all.empty()) break;
    ASSERT_LT(rounds, 40);
    ASSERT_FALSE(missing.first.empty());
    const Rig before = rig;
    for (const MissingEntry& entry : missing.first) enter(rig, whole, entry.path);
    ASSERT_FALSE(rig == before) << missing.first.front().path;
  }
  EXPECT_GT(rounds, 3);
}
INSTANTIATE_TEST_SUITE_P(Samples, MissingInSample,
                         testing::Values("quick-newt", "hasty-heron", "harbour-cormorant"));

}  // namespace
}  // namespace gazewright
