#include "core/analysis/doubts.h"

#include <gtest/gtest.h>

#include <regex>
#include <string>

#include "core/analysis/open_verdicts.h"
#include "core/files/rig_file.h"
#include "tests/batch/json_reader.h"
#include "tests/batch/program.h"

/// The verb `doubts`: how far the figures can be trusted.
namespace gazewright::test {
namespace {

TEST(BatchDoubts, JsonCarriesThemToTheLastDigit) {
  for (const char* name : {"quick-newt", "hasty-heron", "harbour-cormorant"}) {
    const Ran ran = run_batch({"doubts", "--json", sample(name)});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = read_json(ran.out);
    ASSERT_TRUE(json) << ran.out;
    EXPECT_EQ(json->keys, (std::vector<std::string>{"rig", "coverage", "exact", "unknowns",
                                                    "figures", "worth", "open"}));
    const Rig rig = load_rig(sample(name)).rig.value();
    const Doubts doubts = doubts_of(rig, analyse(rig, {.remedies = false}));
    const auto& figures = json->at("figures").array();
    ASSERT_EQ(figures.size(), doubts.figures.size());
    for (std::size_t i = 0; i < figures.size(); ++i) {
      EXPECT_EQ(figures[i].at("id").string(), doubts.figures[i].id);
      EXPECT_EQ(figures[i].at("uncertainty").number(), doubts.figures[i].uncertainty_si);
      EXPECT_EQ(figures[i].at("shifts").array().size(), doubts.figures[i].shifts.size());
    }
    ASSERT_EQ(json->at("unknowns").array().size(), doubts.unknowns.size());
    EXPECT_EQ(json->at("exact").number(), static_cast<double>(doubts.exact));
    ASSERT_FALSE(doubts.worth.empty());
    EXPECT_EQ(json->at("worth").array()[0].at("text").string(), doubts.worth[0].text);
    const auto open = open_verdicts(analyse(rig, {.remedies = false}), doubts);
    ASSERT_EQ(json->at("open").array().size(), open.size());
    for (std::size_t i = 0; i < open.size(); ++i) {
      EXPECT_EQ(json->at("open").array()[i].at("finding").string(), open[i].finding);
      EXPECT_EQ(json->at("open").array()[i].at("text").string(), open[i].text);
    }
  }
}

TEST(BatchDoubts, CsvHasARowForEachFigureAndInputThatMovesIt) {
  const Ran ran = run_batch({"doubts", kNewt, "--csv"});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto lines = lines_of(ran.out);
  EXPECT_EQ(lines[0], "figure,unit,value,uncertainty,unknown,low,high,share,because");
  ASSERT_GT(lines.size(), 20u);
  for (const std::string& line : lines) EXPECT_EQ(fields_of(line).size(), 9u) << line;
  EXPECT_NE(ran.out.find("pan.step.settle_time,s,"), std::string::npos);
  EXPECT_NE(ran.out.find(",pan.gearbox.backlash,"), std::string::npos);
}

TEST(BatchDoubts, TheTableSaysWhatToMeasureFirst) {
  const Ran ran = run_batch({"doubts", kNewt});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto lines = lines_of(ran.out);
  ASSERT_GT(lines.size(), 10u);
  EXPECT_EQ(lines[0], "Quick newt");
  EXPECT_EQ(lines[2], "Worth measuring, the first one most");
  EXPECT_TRUE(lines[3].starts_with("  1. measuring the ")) << lines[3];
  EXPECT_NE(ran.out.find("Figures, expanded uncertainty (k = 2)"), std::string::npos);
  EXPECT_NE(ran.out.find("±4.8 g·cm²    stated\n"), std::string::npos) << ran.out;
  EXPECT_NE(ran.out.find("usual, estimate\n"), std::string::npos);
}

TEST(BatchDoubts, AFigureThatAnEndLacksIsOffByAtLeastItsUncertainty) {
  const std::string rig =
      sample_with("quick-newt", "friction: {coulomb: 18 mN.m,",
                  "friction: {coulomb: {value: 18 mN.m, spread: 20 N.m, source: estimate},");
  const Ran ran = run_batch({"doubts", "-"}, rig);
  ASSERT_EQ(ran.status, 0) << ran.err;
  EXPECT_NE(ran.out.find("at least ±"), std::string::npos) << ran.out;
  const Ran csv = run_batch({"doubts", "-", "--csv"}, rig);
  EXPECT_NE(csv.out.find(",pan.friction.coulomb,"), std::string::npos);
  EXPECT_NE(csv.out.find("cannot move"), std::string::npos) << csv.out;
}

TEST(BatchDoubts, ARigWithoutDoubtsIsASentence) {
  const Ran ran = run_batch({"doubts", "-"},
                            "rig: 1\nsupply: {voltage: 24 V}\npan:\n  gearbox: "
                            "{efficiency: 0.9}\n  friction: {stribeck_speed: 1 "
                            "deg/s}\n  bracket: {damping_ratio: 0.02}\ntilt:\n  "
                            "gearbox: {efficiency: 0.9}\n  friction: "
                            "{stribeck_speed: 1 deg/s}\n  bracket: "
                            "{damping_ratio: 0.02}\n");
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(
      ran.err,
      "gazewright-batch: no input of the rig is in doubt: 7 values without a spread are taken "
      "as exact\n  fix: say how far a value may be "
      "off, for example {value: 48 g.cm2, spread: 10 %}, or where it is from, for example "
      "source: estimate\n");
}

TEST(BatchDoubts, ValuesWithoutSourcesAreCountedAndBlamed) {
  std::string rig = bytes_of(sample("hasty-heron"));
  rig = std::regex_replace(rig, std::regex(",\\s*source: (estimate|datasheet|measured)"), "");
  rig = std::regex_replace(rig, std::regex(",\\s*spread: [^,}]*"), "");
  const Ran bare = run_batch({"doubts", "-"}, rig);
  ASSERT_EQ(bare.status, 0) << bare.err;
  EXPECT_NE(bare.out.find("  none: no value has a spread, nor a source with a usual one\n"),
            std::string::npos)
      << bare.out;
  const auto exact_in = [](const std::string& text) {
    const std::string before = "Values without a spread, taken as exact: ";
    return std::stoi(text.substr(text.find(before) + before.size()));
  };
  const Ran whole = run_batch({"doubts", sample("hasty-heron")});
  EXPECT_GT(exact_in(bare.out), exact_in(whole.out));
  EXPECT_GT(exact_in(whole.out), 0);
}

TEST(BatchDoubts, OtherOptionsAreRefused) {
  const Ran ran = run_batch({"doubts", kNewt, "--all"});
  EXPECT_EQ(ran.status, 2);
  EXPECT_EQ(ran.err,
            "gazewright-batch: --all does not belong to the verb doubts\n  fix: doubts takes "
            "--json, --csv, --data\n");
}

}  // namespace
}  // namespace gazewright::test
