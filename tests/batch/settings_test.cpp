#include <gtest/gtest.h>

#include "core/analysis/drive_settings.h"
#include "core/analysis/parts_list.h"
#include "core/files/rig_file.h"
#include "tests/batch/json_reader.h"
#include "tests/batch/program.h"

/// The verbs `settings` and `parts`.
namespace gazewright::test {
namespace {

TEST(BatchSettings, JsonCarriesThemToTheLastDigit) {
  const Ran ran = run_batch({"settings", "--json", kNewt});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto json = read_json(ran.out);
  ASSERT_TRUE(json) << ran.out;
  EXPECT_EQ(json->keys, (std::vector<std::string>{"rig", "conventions", "caution", "settings"}));
  const Rig rig = load_rig(kNewt).rig.value();
  const Analysis analysis = analyse(rig, {.remedies = false});
  const auto& rows = json->at("settings").array();
  std::size_t i = 0;
  for (const Axis axis : kAxes) {
    for (const DriveSetting& setting : drive_settings(rig, analysis, axis)) {
      ASSERT_LT(i, rows.size());
      EXPECT_EQ(rows[i].at("axis").string(), name_of(axis));
      EXPECT_EQ(rows[i].at("key").string(), setting.key);
      if (setting.value) {
        EXPECT_EQ(rows[i].at("value").number(), *setting.value) << setting.key;
      }
      if (setting.first) {
        EXPECT_EQ(rows[i].at("first").number(), *setting.first) << setting.key;
      }
      ++i;
    }
  }
  EXPECT_EQ(i, rows.size());
}

TEST(BatchSettings, CsvAndTableSayTheSame) {
  const Ran csv = run_batch({"settings", kNewt, "--csv"});
  ASSERT_EQ(csv.status, 0) << csv.err;
  const auto lines = lines_of(csv.out);
  EXPECT_EQ(lines[0], "axis,key,unit,value,first,from,formula,text");
  for (const std::string& line : lines) EXPECT_EQ(fields_of(line).size(), 8u) << line;
  EXPECT_NE(csv.out.find("pan,pole_pairs,1,7,,pan.motor.pole_pairs,,\n"), std::string::npos);
  const Ran table = run_batch({"settings", kNewt});
  ASSERT_EQ(table.status, 0) << table.err;
  EXPECT_NE(table.out.find("0.0393 N·m·s/turn"), std::string::npos) << table.out;
  EXPECT_NE(table.out.find("drive's own manual"), std::string::npos);
}

TEST(BatchParts, EveryFormHasEveryLine) {
  const std::size_t count = parts_list(load_rig(kNewt).rig.value()).size();
  const Ran csv = run_batch({"parts", kNewt, "--csv"});
  ASSERT_EQ(csv.status, 0) << csv.err;
  const auto lines = lines_of(csv.out);
  EXPECT_EQ(lines[0], "number,part,name,axis,mass_kg,key,because");
  EXPECT_EQ(lines.size(), count + 1);
  for (const std::string& line : lines) EXPECT_EQ(fields_of(line).size(), 7u) << line;
  const auto json = read_json(run_batch({"parts", kNewt, "--json"}).out);
  ASSERT_TRUE(json);
  EXPECT_EQ(json->at("parts").array().size(), count);
  const Ran table = run_batch({"parts", kNewt});
  EXPECT_EQ(lines_of(table.out).size(), count + 3);
  EXPECT_NE(table.out.find("flat outrunner 42"), std::string::npos);
}

}  // namespace
}  // namespace gazewright::test
