#include "core/data/data_files.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "core/data/data_library.h"
#include "core/data/data_text.h"
#include "core/heat/limits.h"
#include "core/loads/rolling.h"
#include "core/loads/screws.h"
#include "core/supply/supply_rules.h"
#include "core/travel/bend_rule.h"
#include "core/travel/wire.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

TEST(DataFiles, EachHasItsColumnsAndEachListHasItsFile) {
  EXPECT_EQ(data_files().size(), data_texts().size());
  for (const DataFile& file : data_files()) EXPECT_FALSE(data_text(file.name).empty()) << file.name;
  for (const char* key : {"thread", "property_class", "insulation", "material", "mount_material"})
    EXPECT_NE(find_data_file(data_file_of(key)), nullptr) << key;
  EXPECT_EQ(data_file_of("ratio"), "");
}

TEST(DataFiles, EveryShippedValueHasItsSourceItsUnitAndIsInRange) {
  // read_data leaves out and names whatever has none of them; so no fault says that all have.
  for (const DataFile& file : data_files()) {
    const DataTable& table = built_in_data(file.name);
    for (const Diagnostic& fault : table.faults) ADD_FAILURE() << to_text(fault);
    EXPECT_FALSE(table.rows.empty()) << file.name;
    for (const DataRow& row : table.rows) {
      EXPECT_FALSE(row.values.empty()) << file.name << ' ' << row.name;
      EXPECT_FALSE(row.is_own());
      for (const auto& [key, value] : row.values) {
        EXPECT_GE(value.source.size(), 6u) << file.name << ' ' << row.name << ' ' << key;
        EXPECT_TRUE(std::isfinite(value.si) && value.spread_si >= 0) << row.name << ' ' << key;
      }
      for (const DataColumn& column : file.columns)
        EXPECT_TRUE(!column.is_needed || row.find(column.key) != nullptr) << row.name;
      if (file.problem != nullptr) {
        EXPECT_EQ(file.problem(row), "") << row.name;
      }
    }
  }
}

TEST(DataFiles, EveryColumnIsUsedByARowAndNoNameStandsTwice) {
  for (const DataFile& file : data_files()) {
    const DataTable& table = built_in_data(file.name);
    for (const DataColumn& column : file.columns)
      EXPECT_TRUE(std::ranges::any_of(
          table.rows, [&](const DataRow& row) { return row.find(column.key) != nullptr; }))
          << file.name << ' ' << column.key;
    for (const DataRow& row : table.rows) EXPECT_EQ(table.find(row.name), &row) << row.name;
  }
}

TEST(DataFiles, GiveTheValuesThatTheFiguresUsedWhenTheyStoodInCode) {
  EXPECT_EQ(find_thread("M6")->pitch_m, 1e-3);
  EXPECT_EQ(find_thread("M3")->head_mean_m, 4.45e-3);
  EXPECT_EQ(find_screw_class("A2-70")->proof_Pa, 450e6);
  EXPECT_EQ(joint_rules().of_proof, 0.8);
  EXPECT_EQ(insulation_limit_K("N"), 273.15 + 200);
  EXPECT_EQ(wire_rules().copper_ohmm, 1e-6 / 58);
  EXPECT_EQ(wire_rules().fuse_lasting, 0.75);
  EXPECT_EQ(bend_rule(true).still, 3);
  EXPECT_EQ(motor_habits().winding_time_s, 5);
  EXPECT_EQ(supply_rules().chopper_of_trip, 0.9);
  EXPECT_EQ(wanted_static_safety(Rolling::roller), 3);
  EXPECT_EQ(ball_factors(0, 0.345).Y, 1.99);
}

TEST(DataFiles, ARowMayStateOneSourceForAllOfItsValues) {
  constexpr DataColumn columns[]{{"mass", "kg", "g", 0, 10}, {"length", "m", "mm"}};
  const DataTable table = read_data(
      "brick: {mass: 3 kg, length: {value: 250 mm, source: ruler}, source: scale}\n", columns);
  EXPECT_TRUE(table.faults.empty());
  EXPECT_EQ(table.find("Brick")->source("mass"), "scale");
  EXPECT_EQ(table.find("brick")->source("length"), "ruler");
}

TEST(DataFiles, AFaultSaysWhereItIsAndHowToMendIt) {
  constexpr DataColumn columns[]{{"mass", "kg", "g", 0, 10}};
  const DataTable table =
      read_data("brick:\n  mass: {value: 30 kg, source: scale}\n  mas: 1 kg\n", columns, "a.yaml");
  ASSERT_EQ(table.faults.size(), 2u);
  EXPECT_EQ(to_text(table.faults[1]),
            "a.yaml:3:3: error: brick.mas is no known column\n  fix: did you mean mass?");
  EXPECT_EQ(table.faults[0].line, 2);
  EXPECT_NE(table.faults[0].problem.find("30"), std::string::npos) << table.faults[0].problem;
  EXPECT_TRUE(read_data("# nothing yet\n", columns).faults.empty());
}

}  // namespace
}  // namespace gazewright
