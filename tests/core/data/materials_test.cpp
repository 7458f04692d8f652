#include "core/data/materials.h"

#include <gtest/gtest.h>

#include <cmath>
#include <filesystem>
#include <fstream>
#include <iterator>

#include "core/data/data_text.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

constexpr DataColumn kColumns[]{{"mass", "kg", "g"}, {"length", "m", "mm"}};

TEST(DataFiles, AreBuiltInAsTheyStandInTheFolder) {
  int files = 0;
  for (const auto& entry : std::filesystem::directory_iterator(
           std::filesystem::path(GAZEWRIGHT_SOURCE_DIR) / "resources/data")) {
    if (entry.path().extension() != ".yaml") continue;
    ++files;
    std::ifstream in(entry.path(), std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(in), {}};
    EXPECT_EQ(data_text(entry.path().stem().string()), text) << entry.path();
  }
  EXPECT_EQ(data_texts().size(), std::size_t(files));
  EXPECT_TRUE(data_text("no such file").empty());
}

TEST(DataTable, ReadsValuesWithUnitSpreadAndSource) {
  const DataTable table = read_data(
      "brick:\n  mass: {value: 3.5 kg, spread: 10 %, source: scale}\n"
      "  length: {value: 250 mm, spread: 5 mm, source: ruler}\n  note: red\n",
      kColumns);
  EXPECT_TRUE(table.faults.empty());
  ASSERT_NE(table.find("brick"), nullptr);
  const DataRow& brick = *table.find("brick");
  EXPECT_DOUBLE_EQ(brick.si("mass"), 3.5);
  EXPECT_DOUBLE_EQ(brick.least("mass"), 3.15);
  EXPECT_DOUBLE_EQ(brick.least("length"), 0.245);
  EXPECT_EQ(brick.find("length")->source, "ruler");
  EXPECT_EQ(brick.words.at("note"), "red");
  EXPECT_TRUE(std::isnan(brick.si("width")));
}

TEST(DataTable, NamesWhatItCannotRead) {
  const auto fault = [](const char* row) {
    const DataTable table = read_data(std::string("brick:\n  ") + row + "\n", kColumns);
    return table.faults.size() == 1 ? table.faults.front().problem : std::string("not one fault");
  };
  EXPECT_EQ(fault("mass: {value: 3 kg}"), "brick.mass has no source");
  EXPECT_EQ(fault("mass: 3 kg"), "brick.mass has no source");
  EXPECT_EQ(fault("mass: [3 kg]"), "brick.mass is no {value, source}");
  EXPECT_EQ(fault("width: {value: 3 mm, source: ruler}"), "brick.width is no known column");
  EXPECT_TRUE(fault("mass: {value: 3, source: scale}").starts_with("brick.mass cannot be read: "));
  EXPECT_TRUE(fault("mass: {value: 3 mm, source: a}").starts_with("brick.mass cannot be read: "));
  EXPECT_TRUE(fault("mass: {value: 3 kg, spread: 1 s, source: a}")
                  .starts_with("brick.mass has a spread that cannot be read: "));
  EXPECT_EQ(read_data("- a\n- b\n", kColumns).faults.size(), 1u);
  EXPECT_FALSE(read_data("a: [", kColumns).faults.empty());
}

TEST(Materials, TheTableIsReadWithoutAFaultAndEveryValueHasItsSource) {
  const DataTable& table = material_table();
  for (const Diagnostic& fault : table.faults) ADD_FAILURE() << to_text(fault);
  EXPECT_EQ(table.rows.size(), 7u);
  for (const DataRow& row : table.rows) {
    EXPECT_EQ(row.values.size(), 7u) << row.name;
    for (const auto& [key, value] : row.values) {
      EXPECT_FALSE(value.source.empty()) << row.name << ' ' << key;
      EXPECT_LT(value.spread_si, value.si) << row.name << ' ' << key;
    }
    EXPECT_LE(row.si("layer_modulus"), row.si("modulus")) << row.name;
    EXPECT_LE(row.si("layer_strength"), row.si("strength")) << row.name;
  }
}

TEST(Materials, ComeWithTheirValuesInSi) {
  const auto petg = find_material(Rig{}, "PETG");
  ASSERT_TRUE(petg);
  EXPECT_NEAR(petg->modulus_Pa.value(), 1.9e9, tol(1));
  EXPECT_NEAR(least_of(petg->strength_Pa), 35e6, tol(1e-1));
  EXPECT_NEAR(petg->softening_K.value(), 343.15, tol(1e-9));
  EXPECT_NEAR(petg->density_kgpm3.value(), 1270, tol(1e-9));
  EXPECT_NE(material_source(Rig{}, "petg", "modulus").find("from memory"), std::string::npos);
}

TEST(Materials, TheRigsOwnGoBeforeTheBuiltInOnes) {
  Rig rig;
  Material own;
  own.name = "petg";
  own.modulus_Pa = si_quantity(2.2e9);
  own.source = "test bars of 3 March";
  rig.materials.push_back(own);
  const auto found = find_material(rig, "petg");
  ASSERT_TRUE(found);
  EXPECT_DOUBLE_EQ(found->modulus_Pa.value(), 2.2e9);
  EXPECT_FALSE(found->strength_Pa.has_value()) << "what nobody entered is missing";
  EXPECT_EQ(material_source(rig, "petg", "strength"), "test bars of 3 March");
  EXPECT_EQ(material_names(rig).size(), 7u) << "the name stands once";
}

TEST(Materials, AnUnknownNameSaysWhichThereAre) {
  EXPECT_EQ(material_problem(Rig{}, ""), "");
  EXPECT_EQ(material_problem(Rig{}, "Steel"), "");
  EXPECT_EQ(material_problem(Rig{}, "petq"),
            "there is no material “petq”; did you mean petg? There are pla, petg, asa, nylon, "
            "polycarbonate, aluminium, steel; a material of your own can be added to the rig or "
            "to your data folder");
  EXPECT_FALSE(find_material(Rig{}, "")) << "a material without a name is none";
}

}  // namespace
}  // namespace gazewright
