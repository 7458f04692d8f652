#include "core/files/part_file.h"

#include <gtest/gtest.h>

#include "core/shelf/shelf.h"

namespace gazewright {
namespace {

const char* const kMotor = R"(# from the drawer by the window
shelf: 1
name: "my outrunner, 300 rpm/V"   # written on its bell
note: bought second-hand
motor: {speed_constant: {value: 300 rpm/V, spread: 5 %, source: measured}, rotor_inertia: 48 g.cm2,
        mass: 96 g, insulation: F}
)";

TEST(PartFile, ReadsAMotorWithTheKeysOfTheRigFile) {
  const LoadedPart loaded = parse_part(kMotor, "m.yaml");
  ASSERT_TRUE(loaded.part);
  EXPECT_TRUE(loaded.diagnostics.empty());
  EXPECT_EQ(loaded.part->kind(), PartKind::motor);
  EXPECT_EQ(loaded.part->name, "my outrunner, 300 rpm/V");
  EXPECT_EQ(loaded.part->note, "bought second-hand");
  const Motor& motor = std::get<Motor>(loaded.part->fields);
  EXPECT_EQ(motor.name, loaded.part->name);
  EXPECT_DOUBLE_EQ(*motor.mass_kg.si, 0.096);
  EXPECT_EQ(motor.speed_constant_radpsV.source, Source::measured);
  EXPECT_EQ(motor.insulation.value, "F");
  EXPECT_FALSE(motor.phase_resistance_ohm.has_value());
}

TEST(PartFile, ANameInsideThePartCountsAndSoDoesTheFilesName) {
  EXPECT_EQ(parse_part("drive: {name: bench drive, current_limit: 8 A}", "d.yaml").part->name,
            "bench drive");
  EXPECT_EQ(parse_part("gearbox: {name: old box, ratio: 8}", "g.yaml").part->name, "old box");
  EXPECT_EQ(parse_part("camera: {columns: 640}", "/somewhere/wide.yaml").part->name, "wide");
}

TEST(PartFile, FaultsHavePlaceProblemAndMend) {
  const LoadedPart bare = parse_part("shelf: 1\nname: x\nmotor:\n  mass: 96\n", "m.yaml");
  EXPECT_FALSE(bare.part);
  ASSERT_EQ(bare.diagnostics.size(), 1u);
  EXPECT_EQ(bare.diagnostics[0].line, 4);
  EXPECT_EQ(bare.diagnostics[0].column, 9);
  EXPECT_NE(bare.diagnostics[0].problem.find("Mass (motor.mass): 96 has no unit"),
            std::string::npos)
      << bare.diagnostics[0].problem;
  EXPECT_FALSE(bare.diagnostics[0].fix.empty());

  const LoadedPart two = parse_part("motor: {mass: 96 g}\ngearbox: {ratio: 3}\n", "m.yaml");
  ASSERT_EQ(two.diagnostics.size(), 1u);
  EXPECT_EQ(two.diagnostics[0].problem, "the file holds a second part");
  EXPECT_EQ(two.diagnostics[0].line, 2);

  EXPECT_EQ(parse_part("name: x\n", "m.yaml").diagnostics.at(0).problem, "the file holds no part");
  EXPECT_EQ(parse_part("- 1\n", "m.yaml").diagnostics.at(0).problem,
            "the file is no map of a part's fields");
  EXPECT_EQ(parse_part("", "m.yaml").diagnostics.at(0).problem,
            "the file is no map of a part's fields");
  EXPECT_NE(parse_part("shelf: 2\nmotor: {}\n", "m.yaml").diagnostics.at(0).problem.find("\"2\""),
            std::string::npos);
}

TEST(PartFile, UnknownKeysAreKeptWithAWarning) {
  const char* const text = "shelf: 1\nname: x\nmotor: {mas: 96 g, mass: 96 g}\nprice: 12\n";
  const LoadedPart loaded = parse_part(text, "m.yaml");
  ASSERT_TRUE(loaded.part);
  EXPECT_EQ(loaded.diagnostics.size(), 2u);
  EXPECT_EQ(loaded.part->unknown_keys.size(), 2u);
  const LoadedPart again = parse_part(write_part(*loaded.part), "m.yaml");
  ASSERT_TRUE(again.part);
  EXPECT_EQ(*again.part, *loaded.part);
}

TEST(PartFile, WhatIsWrittenReadsBackAsTheSamePart) {
  for (const ShelfText& text : shelf_texts()) {
    const LoadedPart loaded = parse_part(text.yaml, std::string(text.file_name));
    ASSERT_TRUE(loaded.part) << text.file_name;
    const LoadedPart again = parse_part(write_part(*loaded.part), "other.yaml");
    ASSERT_TRUE(again.part) << text.file_name << "\n" << write_part(*loaded.part);
    EXPECT_EQ(*again.part, *loaded.part) << text.file_name;
  }
}

TEST(PartFile, ARenameLeavesCommentsAndLayoutAlone) {
  const LoadedPart loaded = parse_part(kMotor, "m.yaml");
  const std::string renamed = with_part_name(kMotor, *loaded.part, "spare: the other one");
  EXPECT_NE(renamed.find("# from the drawer"), std::string::npos);
  EXPECT_NE(renamed.find("name: \"spare: the other one\"   # written on its bell"),
            std::string::npos)
      << renamed;
  const LoadedPart again = parse_part(renamed, "m.yaml");
  ASSERT_TRUE(again.part);
  EXPECT_EQ(again.part->name, "spare: the other one");
  EXPECT_EQ(std::get<Motor>(again.part->fields).mass_kg,
            std::get<Motor>(loaded.part->fields).mass_kg);
}

TEST(PartFile, ANameInsideThePartIsRenamedToo) {
  const LoadedPart loaded = parse_part("motor: {name: old, mass: 5 g}\n", "m.yaml");
  const LoadedPart again =
      parse_part(with_part_name("motor: {name: old, mass: 5 g}\n", *loaded.part, "new"), "m.yaml");
  ASSERT_TRUE(again.part);
  EXPECT_EQ(again.part->name, "new");
}

}  // namespace
}  // namespace gazewright
