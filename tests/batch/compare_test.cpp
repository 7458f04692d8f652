#include <gtest/gtest.h>

#include <algorithm>

#include "core/analysis/analysis.h"
#include "core/files/rig_file.h"
#include "tests/batch/json_reader.h"
#include "tests/batch/program.h"

/// The verb `compare`: the present design and its variants side by side.
namespace gazewright::test {
namespace {

Rig newt() { return load_rig(kNewt).rig.value_or(Rig{}); }

/// The fields of the line of a row.
std::vector<std::string> csv_row(const std::string& csv, const std::string& id) {
  for (const std::string& line : lines_of(csv)) {
    auto fields = fields_of(line);
    if (fields.size() > 1 && fields[1] == id) return fields;
  }
  return {};
}

TEST(BatchCompare, CsvHasAColumnForEachDesignWithItsOwnFigures) {
  const Ran ran = run_batch({"compare", kNewt, "--csv"});
  ASSERT_EQ(ran.status, 0) << ran.err;
  EXPECT_EQ(lines_of(ran.out)[0], "part,id,unit,present design,ten to one on pan,touring supply");
  const Rig rig = newt();
  ASSERT_EQ(rig.variants.size(), 2u);
  EXPECT_EQ(csv_row(ran.out, "pan.gearbox.ratio"),
            (std::vector<std::string>{"input", "pan.gearbox.ratio", "1", "8", "10", "8"}));
  const auto settle = csv_row(ran.out, "pan.step.settle_time");
  ASSERT_EQ(settle.size(), 6u);
  EXPECT_EQ(settle[0], "figure");
  EXPECT_EQ(std::stod(settle[3]), analyse(rig).value("pan.step.settle_time"));
  for (std::size_t i = 0; i < 2; ++i)
    EXPECT_EQ(std::stod(settle[4 + i]),
              analyse(*rig.variants[i].rig).value("pan.step.settle_time"));
  EXPECT_EQ(csv_row(ran.out, "findings.fails")[0], "finding");
  EXPECT_TRUE(csv_row(ran.out, "tilt.gearbox.ratio").empty()) << "it is the same in all";
}

TEST(BatchCompare, TheTableSaysDifferencesWithTheirSignAndTheBestInWords) {
  const Ran ran = run_batch({"compare", kNewt});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto lines = lines_of(ran.out);
  const auto line = [&](const std::string& begin) {
    const auto at = std::ranges::find_if(
        lines, [&](const std::string& each) { return each.starts_with("  " + begin); });
    return at == lines.end() ? std::string() : *at;
  };
  EXPECT_NE(line("Pan gearbox: ratio").find("10 (+2)"), std::string::npos) << ran.out;
  EXPECT_NE(line("Supply: voltage").find("18 V (−6 V)"), std::string::npos) << ran.out;
  EXPECT_NE(line("Pan gearbox: name").find("one stage, 10 to 1 (differs)"), std::string::npos);
  EXPECT_NE(line("Pan: stall torque at the output").find(" best"), std::string::npos) << ran.out;
  EXPECT_NE(ran.out.find("touring supply: the small 18 V supply that travels with the show\n"),
            std::string::npos);
}

TEST(BatchCompare, JsonHasDesignsAndThreeListsOfRows) {
  const Ran ran = run_batch({"compare", "--json", kNewt});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto json = read_json(ran.out);
  ASSERT_TRUE(json) << ran.out;
  EXPECT_EQ(json->keys,
            (std::vector<std::string>{"rig", "designs", "inputs", "figures", "findings"}));
  EXPECT_EQ(json->at("designs").array()[1].at("name").string(), "ten to one on pan");
  EXPECT_TRUE(json->at("designs").array()[0].at("note").is_null());
  for (const char* part : {"inputs", "figures", "findings"}) {
    ASSERT_FALSE(json->at(part).array().empty()) << part;
    for (const Json& row : json->at(part).array()) EXPECT_EQ(row.at("cells").array().size(), 3u);
  }
}

TEST(BatchCompare, AllAddsFiguresToTheMainOnes) {
  const std::size_t main = lines_of(run_batch({"compare", kNewt, "--csv"}).out).size();
  const Ran all = run_batch({"compare", kNewt, "--csv", "--all"});
  EXPECT_EQ(all.status, 0);
  EXPECT_GT(lines_of(all.out).size(), main + 50);
}

TEST(BatchCompare, ARigWithoutVariantsIsASentence) {
  const Ran ran = run_batch({"compare", sample("hasty-heron")});
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(ran.err,
            "gazewright-batch: the rig has no variants to compare with\n  fix: pin the present "
            "design in the window, or write a list variants into the file\n");
}

TEST(BatchCompare, AFaultInAVariantIsToldWithItsPlace) {
  const Ran ran = run_batch(
      {"compare", "-"}, "rig: 1\nvariants:\n  - {name: a, rig: {pan: {motor: {mass: -1 g}}}}\n");
  EXPECT_EQ(ran.status, 3);
  EXPECT_NE(ran.err.find(":3:41: error: Mass (variants[0].rig.pan.motor.mass)"), std::string::npos)
      << ran.err;
}

TEST(BatchCompare, OtherOptionsAreRefused) {
  const Ran ran = run_batch({"compare", kNewt, "--strict"});
  EXPECT_EQ(ran.status, 2);
  EXPECT_EQ(ran.err,
            "gazewright-batch: --strict does not belong to the verb compare\n  fix: compare takes "
            "--json, --csv, --all, --data\n");
}

}  // namespace
}  // namespace gazewright::test
