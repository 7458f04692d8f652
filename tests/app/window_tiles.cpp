#include <gtest/gtest.h>

#include <cmath>

#include "app/plots/choice_word.h"
#include "app/plots/format.h"
#include "app/window/drive_line_text.h"
#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "tests/app/window_support.h"

/// What the tiles say.
namespace gazewright {
namespace {

TileText tile_of(const Rig& rig, Axis axis, const char* part) {
  for (const TilePart& tile : tile_texts(rig, analyse(rig), axis))
    if (tile.part == part) return tile.text;
  return {};
}

Rig owl() { return *parse_rig(tests::owl_file_text(), "owl.rig.yaml").rig; }

TEST(Tiles, SayThatThereIsNoLimitInsteadOfNone) {
  Rig rig = with_value(owl(), "supply.current_limit", INFINITY);
  rig = with_value(rig, "pan.loop.speed_limit", INFINITY);
  rig = with_value(rig, "pan.drive.current_limit", INFINITY);
  EXPECT_EQ(tile_of(rig, Axis::pan, "supply").lines[0], "no current limit");
  EXPECT_EQ(tile_of(rig, Axis::pan, "pan.drive").figure, "no current limit");
  EXPECT_EQ(tile_of(rig, Axis::pan, "pan.drive").lines[1], "no speed limit");
}

TEST(Tiles, SayWhatIsMissing) {
  const TileText supply = tile_of(blank_rig(), Axis::pan, "supply");
  EXPECT_EQ(supply.figure, "voltage missing");
  EXPECT_EQ(supply.lines[0], "no current limit") << "left empty there is none";
  EXPECT_EQ(supply.lines[1], "capacitance missing");
  for (const TilePart& tile : tile_texts(blank_rig(), analyse(blank_rig()), Axis::tilt)) {
    EXPECT_NE(tile.text.figure, "missing") << tile.part.toStdString();
    for (const QString& line : tile.text.lines) {
      EXPECT_NE(line, "missing") << tile.part.toStdString();
      EXPECT_NE(line, "unknown") << tile.part.toStdString();
    }
  }
}

TEST(Tiles, LabelTorqueAndSpeedOfTheGearbox) {
  const Rig rig = owl();
  const Analysis analysis = analyse(rig);
  const TileText gearbox = tile_of(rig, Axis::pan, "pan.gearbox");
  EXPECT_EQ(gearbox.lines[0],
            "stall " + format_value(analysis.value("pan.output.torque_stall"), "N.m", "N.m"));
  EXPECT_TRUE(gearbox.lines[1].startsWith("held to 900")) << gearbox.lines[1].toStdString();
  Rig free = rig;
  free.pan.loop.speed_limit_radps = si_quantity(kInfinity);
  const TileText unheld = tile_of(free, Axis::pan, "pan.gearbox");
  EXPECT_TRUE(unheld.lines[1].startsWith("top ")) << unheld.lines[1].toStdString();
}

TEST(Tiles, SayHowFarOffItsAxisTheLoadIsInMillimetres) {
  Rig rig = owl();
  rig.on_tilt.resize(1);
  rig = with_value(rig, "on_tilt[0].centre[0]", 0.007);
  const QString line = tile_of(rig, Axis::tilt, "tilt.load").lines[1];
  EXPECT_TRUE(line.endsWith("mm off axis")) << line.toStdString();
}

TEST(ChoiceWords, NoChoiceOfAListIsShownAsTheFileHasIt) {
  for (const char* value : {"pair", "single", "ball", "roller", "insert", "print", "key", "side",
                            "fork", "bar", "across", "twist", "coil"})
    EXPECT_NE(choice_word(value), value);
}

}  // namespace
}  // namespace gazewright
