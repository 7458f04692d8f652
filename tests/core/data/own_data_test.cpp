#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>

#include "core/data/data_files.h"
#include "core/data/data_library.h"
#include "core/data/materials.h"
#include "core/heat/limits.h"
#include "core/loads/rolling.h"
#include "core/loads/screws.h"
#include "core/rig/fields.h"
#include "core/travel/tab_material.h"
#include "core/travel/wire.h"
#include "tests/support/environment.h"
#include "tests/support/folder.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

/// A folder of own data files; at its end none are in force and it is gone.
class OwnFiles : public ::testing::Test {
 protected:
  ~OwnFiles() override { use_own_data({}); }
  void write(const char* name, const char* text) const { kept.write(name, text); }
  std::vector<Diagnostic> use() const {
    const OwnData own = load_own_data(folder);
    use_own_data(own);
    return own.faults;
  }
  std::string only_fault() const {
    const auto faults = use();
    if (faults.size() != 1) return std::to_string(faults.size()) + " faults";
    const std::string text = to_text(faults.front());
    return text.substr(folder.string().size() + 1);
  }

  const tests::Folder kept;
  const std::filesystem::path& folder = kept.root();
};

std::vector<std::string_view> options(const PartTable<Joint>& table, std::string_view key) {
  for (const auto& row : table.choices)
    if (row.info.key == key) return {row.info.options.begin(), row.info.options.end()};
  return {};
}

TEST_F(OwnFiles, AFolderThatIsNotThereHoldsNone) {
  const OwnData own = load_own_data(folder / "nothing");
  EXPECT_TRUE(own.files.empty());
  EXPECT_TRUE(own.faults.empty());
}

TEST_F(OwnFiles, AddRowsThatTheRigCanName) {
  write("threads.yaml", "M10: {diameter: 10 mm, pitch: 1.5 mm, head_mean: 13.6 mm, source: a}\n");
  write("insulation.yaml", "C: {limit: {value: 220 degC, source: the maker}}\n");
  ASSERT_TRUE(use().empty());
  ASSERT_NE(find_thread("M10"), nullptr);
  // ISO 898-1 table A: the stress area of M10 is 58.0 mm² (as public tables print it).
  EXPECT_NEAR(find_thread("M10")->stress_area_m2() * 1e6, 58.0, tol(0.05));
  EXPECT_NE(find_thread("M3"), nullptr) << "the built-in ones stay";
  EXPECT_EQ(options(table_of<Joint>(), "thread").back(), "M10");
  EXPECT_NEAR(insulation_limit_K("C").value_or(0), 493.15, tol(1e-9));
  const LoadedRig rig = parse_rig("rig: 1\npan: {joint: {thread: M10}}\n", "a");
  EXPECT_TRUE(rig.rig) << "the reader takes the same list";
  use_own_data({});
  EXPECT_EQ(find_thread("M10"), nullptr);
  EXPECT_FALSE(parse_rig("rig: 1\npan: {joint: {thread: M10}}\n", "a").rig);
}

TEST_F(OwnFiles, ChangeTheValuesThatTheyStateAndKeepTheOthers) {
  write("materials.yaml", "PLA:\n  softening: {value: 50 degC, spread: 1 K, source: my oven}\n");
  write("wires.yaml", "wire: {circular_mil_per_ampere: 400, source: maker of the wire}\n");
  ASSERT_TRUE(use().empty());
  const auto pla = find_material({}, "pla");
  ASSERT_TRUE(pla);
  EXPECT_NEAR(least_of(pla->softening_K), 322.15, tol(1e-9));
  EXPECT_NEAR(pla->modulus_Pa.value(), 3e9, tol(1));
  EXPECT_EQ(material_source({}, "pla", "softening"), "my oven");
  EXPECT_EQ(material_names({}).size(), 7u);
  EXPECT_NEAR(wire_rating_A(25.4e-6 * 20), 1, tol(1e-12));
  EXPECT_EQ(wire_rules().most_drop, 0.03);
}

TEST_F(OwnFiles, ABearingTableIsNeverLeftEmpty) {
  std::string moved, alike;
  for (int i = 1; i <= 9; ++i) {
    const std::string row = "radial " + std::to_string(i);
    moved += row + ": {angle: 15 deg, source: a}\n";
    alike += row + ": {load: 1, source: a}\n";
  }
  const AxialFactors shipped = ball_factors(0, 0.172);
  write("bearings.yaml", moved.c_str());
  EXPECT_EQ(use().size(), 9u);
  EXPECT_EQ(ball_factors(0, 0.172).Y, shipped.Y);
  write("bearings.yaml", alike.c_str());
  ASSERT_TRUE(use().empty());
  EXPECT_EQ(ball_factors(0, 0.172).Y, shipped.Y) << "of rows for the same load the first counts";
  EXPECT_EQ(ball_factors(0, 6.89).Y, shipped.Y);
}

TEST_F(OwnFiles, AMaterialOfOnesOwnServesArmBracketAndTab) {
  write("materials.yaml",
        "My Carbon: {strength: 80 MPa, modulus: 9 GPa, softening: 110 degC, source: bars}\n");
  ASSERT_TRUE(use().empty());
  EXPECT_TRUE(find_material({}, "my carbon"));
  EXPECT_FALSE(find_material({}, "my carbon")->density_kgpm3.has_value());
  Stops stops;
  stops.material = {"My Carbon"};
  ASSERT_TRUE(tab_strength(stops));
  EXPECT_NEAR(tab_strength(stops)->tensile_Pa, 80e6, tol(1));
  EXPECT_NEAR(tab_strength(stops)->shear_Pa, 40e6, tol(1));
}

TEST_F(OwnFiles, WhatIsWrongIsNamedWithItsPlaceAndTheRestIsUsed) {
  write("threads.yaml",
        "M9: {diameter: 9 mm, head_mean: 12 mm, source: a}\n"
        "M10: {diameter: 10 mm, pitch: 1.5 mm, head_mean: 13.6 mm, source: a}\n");
  EXPECT_EQ(only_fault(),
            "threads.yaml:1:1: error: M9 has no pitch that can be used\n  fix: add for example "
            "pitch: {value: 1 mm, source: \"data sheet\"}");
  EXPECT_EQ(find_thread("M9"), nullptr);
  EXPECT_NE(find_thread("M10"), nullptr);

  write("threads.yaml", "M10: {diameter: 10 mm, pitch: 15 mm, head_mean: 13 mm, source: a}\n");
  EXPECT_EQ(only_fault(),
            "threads.yaml:1:1: error: M10: its pitch is too coarse for its diameter\n  fix: check "
            "its values and their units");
  write("threads.yaml", "M3:\n  pitch: {value: 0.5 kg, source: a}\n");
  EXPECT_TRUE(only_fault().starts_with("threads.yaml:2:3: error: M3.pitch cannot be read: "));
  EXPECT_EQ(find_thread("M3")->pitch_m, 0.5e-3);
  write("threads.yaml", "M3: [\n");
  EXPECT_TRUE(only_fault().starts_with("threads.yaml:")) << only_fault();
  EXPECT_EQ(find_thread("M3")->diameter_m, 3e-3);
}

TEST_F(OwnFiles, AMistypedNameIsNotPassedOver) {
  write("thread.yaml", "M3: {pitch: 0.6 mm, source: a}\n");
  EXPECT_EQ(only_fault(),
            "thread.yaml: warning: no data file has this name; it is not read\n  fix: did you mean "
            "threads.yaml?");
  std::filesystem::remove(folder / "thread.yaml");
  write("wires.yaml", "wyre: {most_drop: 0.02, source: a}\n");
  EXPECT_EQ(only_fault(),
            "wires.yaml:1:1: error: wyre is no row that the program uses\n  fix: the rows of this "
            "file are copper, wire, fuse");
  write("wires.yaml", "copper: {most_drop: 0.02, source: a}\n");
  EXPECT_EQ(only_fault(),
            "wires.yaml:1:1: error: copper has no use for most_drop\n  fix: leave it out");
}

TEST_F(OwnFiles, BytesThatAreNoTextAreAFaultAndNothingElse) {
  const std::string noise(2'000'000, '\xfe');
  write("materials.yaml", noise.c_str());
  std::filesystem::create_directory(folder / "screws.yaml");
  EXPECT_EQ(use().size(), 2u);
  EXPECT_TRUE(find_material({}, "pla"));
}

TEST_F(OwnFiles, BearingRowsOutOfOrderStayATable) {
  write("bearings.yaml", "radial 2: {load: 0.172, source: a}\nradial 3: {load: 9, source: a}\n");
  ASSERT_TRUE(use().empty());
  for (const double load : {0.1, 0.172, 0.2, 1.0, 7.0, 9.0, 20.0}) {
    EXPECT_GE(ball_factors(0, load).e, 0.19) << load;
    EXPECT_LE(ball_factors(0, load).e, 0.44) << load;
  }
}

TEST_F(OwnFiles, TheValuesThatARigRestsOnAreListedWithTheirSource) {
  write("materials.yaml",
        "pla: {softening: 50 degC, source: my oven}\npetg: {softening: 60 degC, source: b}\n");
  write("supply.yaml", "bus: {most_sag: 0.05, source: my customer}\n");
  ASSERT_TRUE(use().empty());
  Rig rig;
  rig.pan.motor.mount_material = "PLA";
  const auto values = own_values_of(rig);
  ASSERT_EQ(values.size(), 2u) << "petg is not in this rig";
  EXPECT_EQ(values[0].source, "my customer");
  EXPECT_EQ(values[1].file, "materials.yaml");
  EXPECT_EQ(values[1].row + '.' + values[1].key + " = " + values[1].written,
            "pla.softening = 50 degC");
  Material own;
  own.name = "pla";
  rig.materials.push_back(own);
  EXPECT_EQ(own_values_of(rig).size(), 1u) << "the rig's own material goes before";
  use_own_data({});
  EXPECT_TRUE(own_values_of(rig).empty());
}

TEST(OwnDataFolder, FollowsTheDesktopsRule) {
  // Source: XDG Base Directory Specification: a relative path is ignored.
  const tests::Environment data("XDG_DATA_HOME", "/some/where");
  EXPECT_EQ(own_data_folder(), "/some/where/gazewright/data");
  const tests::Environment relative("XDG_DATA_HOME", "some/where");
  const tests::Environment home("HOME", "/home/maker");
  EXPECT_EQ(own_data_folder(), "/home/maker/.local/share/gazewright/data");
}

TEST(OwnDataFolder, WithoutAHomeThereIsNone) {
  const tests::Environment data("XDG_DATA_HOME", "");
  const tests::Environment home("HOME", "");
  EXPECT_EQ(own_data_folder(), "");
  EXPECT_TRUE(load_own_data({}).files.empty());
  EXPECT_TRUE(load_own_data({}).faults.empty());
}

}  // namespace
}  // namespace gazewright
