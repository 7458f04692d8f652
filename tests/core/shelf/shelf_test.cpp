#include "core/shelf/shelf.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <set>

#include "core/bodies/bodies.h"
#include "core/files/part_file.h"
#include "core/rig/fields.h"
#include "core/shelf/carried_parts.h"
#include "tests/support/environment.h"
#include "tests/support/folder.h"
#include "tests/support/owl_rig.h"

namespace gazewright {
namespace {

namespace fs = std::filesystem;

using tests::Folder;

ShelfPart part_named(const Shelf& shelf, std::string_view begin) {
  for (const ShelfEntry& entry : shelf.entries)
    if (entry.part.name.starts_with(begin)) return entry.part;
  throw std::runtime_error("no such part");
}

TEST(Shelf, GivesTheRatiosOfItsGearboxesRisingAndEachOnce) {
  Shelf shelf;
  const auto add = [&shelf](const ShelfPart::Fields& fields) {
    ShelfPart part;
    part.fields = fields;
    shelf.entries.push_back({part, {}});
  };
  for (const double ratio : {18.0, 4.0, 18.0}) {
    Gearbox gearbox;
    gearbox.ratio = si_quantity(ratio);
    add(gearbox);
  }
  add(Gearbox{});
  add(Motor{});
  EXPECT_EQ(gearbox_ratios(shelf), (std::vector<double>{4, 18}));
  EXPECT_TRUE(gearbox_ratios({}).empty());
}

TEST(Shelf, EveryBuiltInPartIsValidGenericAndAnEstimate) {
  const Shelf shelf = built_in_shelf();
  EXPECT_TRUE(shelf.problems.empty()) << to_text(shelf.problems.front());
  EXPECT_EQ(shelf.entries.size(), shelf_texts().size());
  std::set<std::string> names;
  for (const ShelfEntry& entry : shelf.entries) {
    EXPECT_TRUE(entry.part.name.starts_with("generic ")) << entry.part.name;
    EXPECT_TRUE(names.insert(entry.part.name).second) << entry.part.name << " is there twice";
    EXPECT_GE(telling_figures(entry.part).size(), 2u) << entry.part.name;
    Rig rig = put_on(Rig{}, Axis::pan, entry.part);
    for (const FieldRef& field : all_fields(rig)) {
      const auto* ref = std::get_if<QuantityRef>(&field);
      if (ref == nullptr || !ref->quantity->has_value()) continue;
      EXPECT_EQ(ref->quantity->source, Source::estimate) << entry.part.name << " " << ref->path;
    }
  }
  for (const PartKind kind : kPartKinds) EXPECT_GE(shelf.of(kind).size(), 3u) << name_of(kind);
}

TEST(Shelf, ABadFileIsNamedAndSkippedAndTheRestIsRead) {
  const Folder folder;
  folder.write("a.yaml", "shelf: 1\nname: a\nmotor: {mass: 96}\n");
  folder.write("b.yaml", "shelf: 1\nname: b\nmotor: {mass: 96 g}\n");
  folder.write("c.txt", "no part");
  const Shelf shelf = load_shelf(folder.root());
  ASSERT_EQ(shelf.entries.size(), 1u);
  EXPECT_EQ(shelf.entries[0].part.name, "b");
  ASSERT_EQ(shelf.problems.size(), 1u);
  EXPECT_TRUE(shelf.problems[0].file.ends_with("a.yaml"));
  EXPECT_EQ(shelf.problems[0].line, 3);
  EXPECT_TRUE(fs::exists(folder.root() / "a.yaml"));
}

TEST(Shelf, IsSeededOnceAndNeverAgain) {
  const Folder folder;
  const fs::path place = folder.root() / "deep/shelf";
  EXPECT_EQ(load_shelf(place).entries.size(), shelf_texts().size());
  EXPECT_FALSE(fs::exists(place));  // reading writes nothing
  ASSERT_FALSE(seed_shelf(place));
  const Shelf seeded = load_shelf(place);
  EXPECT_EQ(seeded.entries.size(), shelf_texts().size());
  EXPECT_FALSE(seeded.entries[0].file.empty());
  ASSERT_TRUE(std::holds_alternative<std::string>(remove_from_shelf(seeded.entries[0])));
  ASSERT_FALSE(seed_shelf(place));
  EXPECT_EQ(load_shelf(place).entries.size(), shelf_texts().size() - 1);
}

TEST(Shelf, APartOfARigIsKeptUnderANameOfItsOwn) {
  const Folder folder;
  const Rig rig = tests::rig_of(tests::kOwl);
  fs::create_directory(folder.root() / "shelf");
  Shelf shelf = load_shelf(folder.root() / "shelf");
  EXPECT_TRUE(shelf.entries.empty());
  for (const char* name : {"outrunner A", "outrunner A (2)"}) {
    const auto added = add_to_shelf(shelf, part_of(rig, Axis::pan, PartKind::motor));
    ASSERT_TRUE(std::holds_alternative<ShelfEntry>(added));
    EXPECT_EQ(std::get<ShelfEntry>(added).part.name, name);
    shelf = load_shelf(shelf.folder);
  }
  ASSERT_EQ(shelf.entries.size(), 2u);
  const Rig back = put_on(rig, Axis::pan, shelf.entries[0].part);
  EXPECT_EQ(back, rig);
  ASSERT_FALSE(rename_on_shelf(shelf.entries[1], "the spare"));
  EXPECT_EQ(load_shelf(shelf.folder).entries[1].part.name, "the spare");
}

TEST(Shelf, EveryKindComesBackFromARigAsItWentOn) {
  const Rig rig = tests::rig_of(tests::kOwl);
  for (const PartKind kind : kPartKinds) {
    const ShelfPart kept = part_of(rig, Axis::tilt, kind);
    const LoadedPart read = parse_part(write_part(kept), "x.yaml");
    ASSERT_TRUE(read.part) << name_of(kind) << "\n" << write_part(kept);
    Rig back = put_on(rig, Axis::tilt, *read.part);
    EXPECT_EQ(back, rig) << name_of(kind);
  }
}

TEST(Shelf, AFolderThatCannotBeWrittenIsAProblemAndNoCrash) {
  const Folder folder;
  folder.write("shelf", "a file where the folder should be");
  Shelf shelf;
  shelf.folder = folder.root() / "shelf/parts";
  const auto added = add_to_shelf(shelf, part_of(Rig{}, Axis::pan, PartKind::drive));
  ASSERT_TRUE(std::holds_alternative<Diagnostic>(added));
  EXPECT_FALSE(std::get<Diagnostic>(added).fix.empty());
  EXPECT_TRUE(seed_shelf({}).has_value());
}

TEST(Shelf, TheFolderFollowsTheBaseDirectorySpecification) {
  const tests::Environment data("XDG_DATA_HOME", "/data/of/mine");
  EXPECT_EQ(usual_shelf_folder(), "/data/of/mine/gazewright/shelf");
  const tests::Environment relative("XDG_DATA_HOME", "not/absolute");
  const tests::Environment home("HOME", "/home/maker");
  EXPECT_EQ(usual_shelf_folder(), "/home/maker/.local/share/gazewright/shelf");
}

TEST(PutOn, TakesEveryValueOfThePartAndNoneOfTheOldOne) {
  const Rig rig = tests::rig_of(tests::kOwl);
  ShelfPart bare;
  bare.fields = Motor{};
  bare.rename("bare");
  const Rig changed = put_on(rig, Axis::pan, bare);
  EXPECT_EQ(changed.pan.motor.name, "bare");
  EXPECT_FALSE(changed.pan.motor.thermal_resistance_KpW.has_value());
  EXPECT_EQ(changed.tilt, rig.tilt);
}

TEST(Differences, AreTheValuesThatThePartStatesAndTheRigHasOtherwise) {
  ShelfPart part = part_of(tests::owl(), Axis::pan, PartKind::gearbox);
  std::get<Gearbox>(part.fields).drag_Nm = {};
  Rig rig = put_on(tests::owl(), Axis::pan, part);
  EXPECT_TRUE(differences(rig, Axis::pan, part).empty());
  rig.pan.gearbox.drag_Nm = si_quantity(0.006);  // which the part leaves open
  rig.pan.gearbox.efficiency.source = Source::measured;
  EXPECT_TRUE(differences(rig, Axis::pan, part).empty());
  rig.pan.gearbox.ratio = si_quantity(12);
  rig.pan.gearbox.mass_kg = {};
  const std::vector<std::string_view> labels{"Ratio", "Mass"};
  EXPECT_EQ(differences(rig, Axis::pan, part), labels);
}

TEST(PutOn, WhatBelongsToThePlaceStays) {
  Rig rig = tests::rig_of(tests::kOwl);
  rig.pan.motor.mount_material = "petg";
  const Shelf shelf = built_in_shelf();
  rig = put_on(rig, Axis::pan, part_named(shelf, "generic 42 mm outrunner, 100"));
  EXPECT_EQ(rig.pan.motor.mount_material, "petg");
  rig = put_on(rig, Axis::pan, part_named(shelf, "generic flexible cable"));
  EXPECT_DOUBLE_EQ(*rig.pan.cable.free_length_m.si, 0.26);
  EXPECT_DOUBLE_EQ(*rig.pan.cable.outer_diameter_m.si, 0.003);
  rig = put_on(rig, Axis::pan, part_named(shelf, "generic slip ring"));
  EXPECT_EQ(rig.pan.cable.routing.value, "slip_ring");
}

TEST(PutOn, ABodyThatStandsForTheMotorFollowsItsMass) {
  const Rig rig = tests::rig_of(tests::kOwl);
  ASSERT_TRUE(is_carried(rig, Axis::tilt, PartKind::motor));
  EXPECT_FALSE(is_carried(rig, Axis::tilt, PartKind::gearbox));
  EXPECT_FALSE(is_carried(rig, Axis::pan, PartKind::motor));
  const ShelfPart heavy = part_named(built_in_shelf(), "generic 86 mm outrunner");
  const Rig changed = put_on(rig, Axis::tilt, heavy);
  EXPECT_DOUBLE_EQ(*changed.on_pan[1].mass_kg.si, 0.42);
  EXPECT_EQ(changed.on_pan[0], rig.on_pan[0]);
  const double before = mass_matrix_kgm2(rig_bodies(with_defaults(rig)), 0)(0, 0);
  const double after = mass_matrix_kgm2(rig_bodies(with_defaults(changed)), 0)(0, 0);
  // Steiner's part of 280 g more, 88 mm off the pan axis, is the least that it adds.
  EXPECT_GT(after - before, 0.28 * 0.088 * 0.088);
}

TEST(PutOn, ABodyOfMotorAndGearboxTakesTheDifference) {
  Rig rig = tests::rig_of(tests::kOwl);
  rig.on_pan[1].name = "Tilt motor and gearbox";
  rig.on_pan[1].mass_kg = si_quantity(0.4);
  const ShelfPart heavy = part_named(built_in_shelf(), "generic 86 mm outrunner");
  EXPECT_NEAR(*put_on(rig, Axis::tilt, heavy).on_pan[1].mass_kg.si, 0.4 + 0.42 - 0.14, 1e-12);
  ShelfPart unknown = heavy;
  std::get<Motor>(unknown.fields).mass_kg = {};
  EXPECT_FALSE(put_on(rig, Axis::tilt, unknown).on_pan[1].mass_kg.has_value());
}

}  // namespace
}  // namespace gazewright
