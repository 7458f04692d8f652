#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "core/analysis/analysis.h"
#include "core/files/rig_file.h"
#include "tests/batch/json_reader.h"
#include "tests/batch/program.h"

/// The verb `figures`: table, JSON and CSV of the same analysis.
namespace gazewright::test {
namespace {

Json figures_json(const std::vector<std::string>& arguments, const std::string& input = {}) {
  const Ran ran = run_batch(arguments, input);
  EXPECT_EQ(ran.status, 0) << ran.err;
  const auto json = read_json(ran.out);
  EXPECT_TRUE(json) << "not JSON: " << ran.out.substr(0, 400);
  return json.value_or(Json{});
}

TEST(BatchFigures, JsonCarriesEveryFigureToTheLastDigit) {
  for (const char* name : {"quick-newt", "harbour-cormorant", "hasty-heron"}) {
    const Json json = figures_json({"figures", "--json", sample(name)});
    const LoadedRig loaded = load_rig(sample(name));
    ASSERT_TRUE(loaded.rig);
    const Analysis analysis = analyse(*loaded.rig);
    EXPECT_EQ(json.keys, (std::vector<std::string>{"rig", "figures", "findings", "homing", "limits",
                                                   "advice", "missing"}));
    EXPECT_EQ(json.at("rig").string(), loaded.rig->title);
    ASSERT_EQ(json.at("figures").keys.size(), analysis.figures.size());
    for (std::size_t i = 0; i < analysis.figures.size(); ++i) {
      const Figure& figure = analysis.figures[i];
      EXPECT_EQ(json.at("figures").keys[i], figure.id);
      const Json& value = json.at("figures").at(figure.id);
      EXPECT_EQ(value.is_null(), !figure.value) << figure.id;
      if (figure.value && !value.is_null()) {
        EXPECT_EQ(value.number(), *figure.value) << figure.id;
      }
    }
  }
}

TEST(BatchFigures, JsonFindingsHaveExactlyTheirEightKeys) {
  const Json json = figures_json({"figures", "--json", sample("hasty-heron")});
  const std::vector<std::string> keys{"id",       "axis",   "verdict", "demand",
                                      "capacity", "margin", "because", "remedy"};
  const std::set<std::string> axes{"pan", "tilt", "both"},
      verdicts{"holds", "tight", "fails", "unknown"};
  ASSERT_FALSE(json.at("findings").array().empty());
  for (const Json& finding : json.at("findings").array()) {
    EXPECT_EQ(finding.keys, keys);
    EXPECT_TRUE(axes.contains(finding.at("axis").string()));
    EXPECT_TRUE(verdicts.contains(finding.at("verdict").string()));
    if (finding.at("margin").is_null()) continue;
    const double demand = finding.at("demand").number(), capacity = finding.at("capacity").number();
    const double margin = capacity / demand - 1;
    EXPECT_NEAR(finding.at("margin").number(), margin, 1e-12 * (1 + std::abs(margin)))
        << finding.at("id").string();
  }
}

TEST(BatchFigures, MissingInputsAreNullAndNeverZero) {
  const std::string text = sample_with(
      "quick-newt", "    rotor_inertia: {value: 48 g.cm2, spread: 10 %, source: estimate}\n", "");
  const Json json = figures_json({"figures", "-", "--json"}, text);
  EXPECT_TRUE(json.at("figures").at("pan.inertia.rotor_reflected").is_null());
  EXPECT_TRUE(json.at("figures").at("pan.step.settle_time").is_null());
  EXPECT_GT(json.at("figures").at("tilt.step.settle_time").number(), 0);
  bool named = false;
  for (const Json& finding : json.at("findings").array())
    if (finding.at("id").string() == "pan.move.time") {
      EXPECT_EQ(finding.at("verdict").string(), "unknown");
      EXPECT_TRUE(finding.at("remedy").is_null());
      named = finding.at("because").string().find("pan.motor.rotor_inertia") != std::string::npos;
    }
  EXPECT_TRUE(named);
}

TEST(BatchFigures, ABareRigNamesEachMissingInputOnce) {
  const Json json = figures_json({"figures", "--json", "-"}, "rig: 1\ntitle: bare\n");
  int checked = 0;
  for (const Json& finding : json.at("findings").array()) {
    EXPECT_EQ(finding.at("verdict").string(), "unknown") << finding.at("id").string();
    const std::string because =
        finding.at("because").is_null() ? "" : finding.at("because").string();
    if (!because.starts_with("needs ")) continue;
    ++checked;
    std::set<std::string> named;
    for (const std::string& name : fields_of(because))
      EXPECT_TRUE(named.insert(name.substr(name.find_last_of(' ') + 1)).second) << because;
  }
  EXPECT_GT(checked, 20);
}

/// The few to begin with, in the table and in JSON, counted over again from the reasons.
TEST(BatchFigures, ABareRigSaysWhichFewToFillInFirst) {
  const std::string bare = "rig: 1\ntitle: bare\n";
  const Json json = figures_json({"figures", "--json", "-"}, bare);
  const Json& missing = json.at("missing");
  EXPECT_EQ(missing.keys,
            (std::vector<std::string>{"figures", "findings", "first", "then", "entries"}));
  const auto& first = missing.at("first").array();
  const auto& entries = missing.at("entries").array();
  ASSERT_FALSE(first.empty());
  EXPECT_LE(first.size(), 8u);
  EXPECT_GT(entries.size(), 40u);
  for (const Json& entry : first) {
    EXPECT_EQ(entry.keys,
              (std::vector<std::string>{"path", "part", "label", "figures", "findings"}));
    std::size_t findings = 0;
    for (const Json& finding : json.at("findings").array()) {
      if (finding.at("because").is_null()) continue;
      const std::string because = finding.at("because").string() + ',';
      findings += because.find(' ' + entry.at("path").string() + ',') != std::string::npos;
    }
    EXPECT_EQ(entry.at("findings").number(), double(findings)) << entry.at("path").string();
  }
  for (std::size_t i = 1; i < entries.size(); ++i) {
    const auto waiting = [&](std::size_t at) {
      return entries[at].at("figures").number() + entries[at].at("findings").number();
    };
    EXPECT_GE(waiting(i - 1), waiting(i));
  }
  const std::string table = run_batch({"figures", "-"}, bare).out;
  const std::size_t count = static_cast<std::size_t>(missing.at("figures").number());
  EXPECT_NE(table.find(std::to_string(entries.size()) +
                       " inputs are missing: " + std::to_string(count) + " figures and "),
            std::string::npos)
      << table.substr(0, 2000);
  const auto head = table.find("Fill in first these " + std::to_string(first.size()) + ": ");
  ASSERT_NE(head, std::string::npos) << table.substr(0, 2000);
  EXPECT_LT(head, table.find("Findings, worst first"));
  for (const Json& entry : first)
    EXPECT_NE(table.find(entry.at("path").string(), head), std::string::npos);
}

TEST(BatchFigures, AWholeRigSaysNothingOfMissingInputs) {
  const Ran ran = run_batch({"figures", sample("quick-newt")});
  EXPECT_EQ(ran.out.find("missing"), std::string::npos);
  const Json json = figures_json({"figures", "--json", sample("quick-newt")});
  EXPECT_TRUE(json.at("missing").at("entries").array().empty());
}

TEST(BatchFigures, CsvHasTheSameNumbersAndTheReasonsOfEmptyOnes) {
  const std::string text = sample_with(
      "quick-newt", "    rotor_inertia: {value: 48 g.cm2, spread: 10 %, source: estimate}\n", "");
  const Json json = figures_json({"figures", "-", "--json"}, text);
  const auto lines = lines_of(run_batch({"figures", "-", "--csv"}, text).out);
  ASSERT_EQ(lines.size(), json.at("figures").keys.size() + 1);
  EXPECT_EQ(lines[0], "id,value,unit,because");
  for (std::size_t i = 1; i < lines.size(); ++i) {
    const auto fields = fields_of(lines[i]);
    ASSERT_EQ(fields.size(), 4u) << lines[i];
    const Json& value = json.at("figures").at(fields[0]);
    if (value.is_null()) {
      EXPECT_EQ(fields[1], "");
      EXPECT_NE(fields[3], "") << fields[0];
    } else {
      EXPECT_EQ(std::stod(fields[1]), value.number()) << fields[0];
    }
  }
}

TEST(BatchFigures, TheTableSaysVerdictsInWordsAndFiguresWithUnits) {
  const Ran ran = run_batch({"figures", sample("hasty-heron")});
  EXPECT_EQ(ran.status, 0);
  EXPECT_TRUE(ran.out.starts_with("Hasty heron\n")) << ran.out.substr(0, 100);
  EXPECT_NE(ran.out.find("✕ fails"), std::string::npos);
  EXPECT_NE(ran.out.find("✓ holds"), std::string::npos);
  EXPECT_NE(ran.out.find("remedy: "), std::string::npos);
  EXPECT_EQ(ran.out.find(" nan "), std::string::npos);
  EXPECT_EQ(ran.out.find(" inf "), std::string::npos);
  bool found = false;
  for (const std::string& line : lines_of(ran.out))
    // 82 + 70 + 180 + 120 g of bodies on pan in the file.
    if (line.find("mass.on_pan") != std::string::npos)
      found = line.find(" 452 g ") != std::string::npos;
  EXPECT_TRUE(found);
}

TEST(BatchFigures, TheHomingPlanStandsInTableAndJson) {
  const Json json = figures_json({"figures", "--json", sample("quick-newt")});
  const std::string table = run_batch({"figures", sample("quick-newt")}).out;
  for (const char* axis : {"pan", "tilt"}) {
    const auto& steps = json.at("homing").at(axis).array();
    ASSERT_GE(steps.size(), 3u);
    EXPECT_NE(table.find(std::string("\nHoming plan, ") + axis + "\n  1. " + steps[0].string()),
              std::string::npos);
  }
}

TEST(BatchFigures, WhatLimitsTheMoveStandsInTableAndJsonWithItsGains) {
  const Json json = figures_json({"figures", "--json", sample("hasty-heron")});
  const std::string table = run_batch({"figures", sample("hasty-heron")}).out;
  std::size_t count = 0;
  for (const char* axis : {"pan", "tilt"}) {
    const Json& limits = json.at("limits").at(axis);
    EXPECT_NE(table.find(std::string("\nWhat limits the move, ") + axis + "\n  " +
                         limits.at("step").string()),
              std::string::npos);
    double last = 1e9;
    for (const Json& gain : limits.at("gains").array()) {
      ++count;
      EXPECT_NE(table.find("  remedy: " + gain.at("text").string()), std::string::npos);
      EXPECT_LE(gain.at("saved").number(), last) << "the most saving first";
      last = gain.at("saved").number();
      const Json& figures = json.at("figures");
      const std::string id = std::string(axis) + ".limits." + gain.at("limit").string();
      EXPECT_EQ(figures.at(id).number(), gain.at("share").number());
      EXPECT_GT(last, 0.01 * figures.at(std::string(axis) + ".step.settle_time").number());
    }
  }
  EXPECT_GT(count, 0u);
}

TEST(BatchFigures, StrictTellsAFailureFromTheRest) {
  EXPECT_EQ(run_batch({"figures", "--strict", sample("hasty-heron")}).status, 1);
  EXPECT_EQ(run_batch({"figures", "--strict", "--json", sample("hasty-heron")}).status, 1);
  EXPECT_EQ(run_batch({"figures", sample("hasty-heron")}).status, 0);
  EXPECT_EQ(run_batch({"figures", "--strict", sample("quick-newt")}).status, 0);
}

TEST(BatchFigures, StandardInputIsAsGoodAsAFile) {
  const std::string text = bytes_of(sample("quick-newt"));
  EXPECT_EQ(run_batch({"figures", "--json", "-"}, text).out,
            run_batch({"figures", "--json", sample("quick-newt")}).out);
}

TEST(BatchFigures, AnyTitleIsAJsonString) {
  const std::string text = sample_with("quick-newt", "title: Quick newt",
                                       "title: \"a \\\"b\\\" \\\\ c\\n\\t\\e[31m é 🦎\"");
  const Json json = figures_json({"figures", "--json", "-"}, text);
  EXPECT_EQ(json.at("rig").string(), "a \"b\" \\ c\n\t\x1b[31m é 🦎");
  const std::string table = run_batch({"figures", "-"}, text).out;
  EXPECT_EQ(table.find('\x1b'), std::string::npos) << "a title must not drive the terminal";
  EXPECT_TRUE(table.starts_with("a \"b\" \\ c   [31m é 🦎\n"));
}

}  // namespace
}  // namespace gazewright::test
