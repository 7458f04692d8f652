#include <gtest/gtest.h>

#include <QRegularExpression>
#include <cmath>

#include "app/plots/choice_word.h"
#include "app/plots/format.h"
#include "app/window/drive_line.h"
#include "app/window/drive_line_text.h"
#include "app/window/fitted_line.h"
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

/// What is left of a number that is cut reads as another number.
TEST(Tiles, NeverCutANumber) {
  const QFont font = QApplication::font();
  const QStringList lines{"stall 12.5\u202fN·m",    "−35° … +60°",
                          "up to 1250\u202fA",      "260\u202fmm free",
                          "12.34\u202fmm off axis", "±154°"};
  const QRegularExpression number("[−±+]?[0-9][0-9.]*(\u202f[^ ]+|°)");
  for (const QString& line : lines) {
    QStringList whole;
    for (auto at = number.globalMatch(line); at.hasNext();) whole << at.next().captured();
    ASSERT_FALSE(whole.isEmpty());
    for (int room = 5; room < 300; ++room) {
      const FittedLine fitted = fitted_line(line, font, room);
      if (fitted.text == "…") continue;
      for (const QString& each : whole)
        EXPECT_TRUE(fitted.text.contains(each))
            << fitted.text.toStdString() << " at " << room << " of " << line.toStdString();
      EXPECT_LE(QFontMetrics(fitted.font).horizontalAdvance(fitted.text), room);
    }
    EXPECT_EQ(fitted_line(line, font, 400).text, line);
  }
  EXPECT_TRUE(fitted_line("not stated by anybody", font, 60).text.startsWith("not"));
}

/// With text of twice the size, in a window of the usual size.
TEST(Tiles, ShowTheirNumbersInLargeTextToo) {
  tests::OwlWindow owl;
  owl.window.resize(1366, 768);
  owl.window.setTextPercent(200);
  ASSERT_TRUE(owl.settle());
  for (const Axis axis : kAxes) {
    for (const Tile* tile : owl.window.driveLine(axis).findChildren<Tile*>()) {
      const TileText& text = tile->tileText();
      const QStringList lines = text.lines + QStringList{text.figure};
      for (const QString& line : lines) {
        if (!line.contains(QRegularExpression("[0-9]"))) continue;
        EXPECT_NE(fitted_line(line, tile->font(), tile->width() - 16).text, "…")
            << tile->part().toStdString() << ": " << line.toStdString();
      }
    }
  }
  owl.window.setTextPercent(100);
}

TEST(ChoiceWords, NoChoiceOfAListIsShownAsTheFileHasIt) {
  for (const char* value : {"pair", "single", "ball", "roller", "insert", "print", "key", "side",
                            "fork", "bar", "across", "twist", "coil"})
    EXPECT_NE(choice_word(value), value);
}

}  // namespace
}  // namespace gazewright
