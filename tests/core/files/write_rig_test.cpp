#include <gtest/gtest.h>

#include <numbers>

#include "core/files/rig_file.h"
#include "core/rig/fields.h"
#include "core/units/units.h"
#include "tests/core/files/whole_rig.h"

namespace gazewright {
namespace {

Rig read(std::string_view text) {
  const LoadedRig loaded = parse_rig(text, "a.rig.yaml");
  for (const Diagnostic& diagnostic : loaded.diagnostics)
    if (diagnostic.weight == Diagnostic::Weight::error)
      ADD_FAILURE() << to_text(diagnostic) << "\n" << text;
  return loaded.rig.value_or(Rig{});
}

Quantity entry(const char* path, const char* text) {
  return std::get<Quantity>(read_quantity(text, *find_info(path)));
}

std::string with(std::string text, std::string_view from, std::string_view to) {
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return text.replace(at, from.size(), to);
}

const std::string kWhole{kWholeRig};

TEST(WriteRig, GivesTheOriginalBackWhereNothingChanged) {
  EXPECT_EQ(write_rig(read(kWholeRig), kWholeRig), kWholeRig);
  const std::string other =
      "\xEF\xBB\xBFrig:   1\r\n# \u00fc\r\nx: {y: [a, ~, \"b\"]}\r\nstand: {mass: 3kg}\r\n";
  EXPECT_EQ(write_rig(read(other), other), other);
}

TEST(WriteRig, KeepsThatPanCarriesNothing) {
  const Rig bare = read("rig: 1\non_pan: []\n");
  EXPECT_TRUE(bare.on_pan_is_bare);
  EXPECT_FALSE(read("rig: 1\n").on_pan_is_bare);
  EXPECT_EQ(read(write_rig(bare)), bare);
  EXPECT_EQ(read(write_rig(bare, "rig: 1\n")), bare);
}

TEST(WriteRig, ReplacesOnlyTheScalarThatChanged) {
  Rig rig = read(kWholeRig);
  rig.supply.voltage_V = entry("supply.voltage", "36 V");
  EXPECT_EQ(write_rig(rig, kWholeRig), with(kWhole, "24 V", "36 V"));

  rig = read(kWholeRig);
  rig.pan.gearbox.ratio = si_quantity(22.5);  // set by a slider: has no text of its own
  EXPECT_EQ(write_rig(rig, kWholeRig), with(kWhole, "ratio: 18", "ratio: 22.5"));

  rig = read(kWholeRig);
  rig.pan.motor.rotor_inertia_kgm2.si =
      120e-7;  // the unit stays as written, and so do spread and source
  EXPECT_EQ(write_rig(rig, kWholeRig), with(kWhole, "value: 118 g.cm2", "value: 120 g.cm2"));

  rig = read(kWholeRig);
  rig.title = "Owl: the second";
  rig.stand.half_width_m = entry("stand.half_width", "90 mm");
  rig.stand.height_m = entry("stand.height", "1 m");
  rig.pan.encoder.at.value = "motor";
  EXPECT_EQ(write_rig(rig, kWholeRig),
            with(with(with(with(kWhole, "title: Tide-pool owl", "title: \"Owl: the second\""),
                           "\"110 mm\"", "90 mm"),
                      "'140 mm'", "1 m"),
                 "at: output", "at: motor"));
}

TEST(WriteRig, PutsAnEntryThatWasMissingIntoItsMap) {
  Rig rig = read(kWholeRig);
  rig.camera.delay_s = entry("camera.delay", "45 ms");
  EXPECT_EQ(write_rig(rig, kWholeRig), with(kWhole, "62 deg}", "62 deg, delay: 45 ms}"));

  rig = read(kWholeRig);
  rig.stand.sway_stiffness_Nmprad = entry("stand.sway_stiffness", "900 N.m/rad");
  EXPECT_EQ(write_rig(rig, kWholeRig),
            with(kWhole, "  mass: 3.2 kg\n", "  sway_stiffness: 900 N.m/rad\n  mass: 3.2 kg\n"));
}

TEST(WriteRig, PutsAMapThatWasMissingIntoItsAxis) {
  const std::string text =
      "rig: 1\n"
      "pan:  # the big one\n"
      "  motor: {mass: 96 g}  # on the scale\n"
      "  gearbox: {ratio: 10}\n"
      "task: {within: 150 ms}\n";
  Rig rig = read(text);
  rig.pan.loop.speed_gain_Nmsprad = entry("pan.loop.speed_gain", "0.5 N.m.s/rad");
  rig.pan.loop.speed_limit_radps = entry("pan.loop.speed_limit", "900 deg/s");
  rig.pan.drive.current_limit_A = entry("pan.drive.current_limit", "12 A");
  rig.task.moves_per_minute = entry("task.duty.moves_per_minute", "30");
  rig.tilt.motor.mass_kg = entry("tilt.motor.mass", "58 g");
  rig.tilt.gearbox.ratio = entry("tilt.gearbox.ratio", "5");
  EXPECT_EQ(write_rig(rig, text),
            "rig: 1\n"
            "tilt: {motor: {mass: 58 g}, gearbox: {ratio: 5}}\n"
            "pan:  # the big one\n"
            "  motor: {mass: 96 g}  # on the scale\n"
            "  drive: {current_limit: 12 A}\n"
            "  loop: {speed_gain: 0.5 N.m.s/rad, speed_limit: 900 deg/s}\n"
            "  gearbox: {ratio: 10}\n"
            "task: {within: 150 ms, duty: {moves_per_minute: 30}}\n");
}

TEST(WriteRig, WritesNullWhereAnEntryWasTakenAway) {
  Rig rig = read(kWholeRig);
  rig.camera.rows = {};
  const std::string without = write_rig(rig, kWholeRig);
  EXPECT_EQ(without, with(kWhole, "rows: 720", "rows: null"));
  rig.camera.rows = entry("camera.rows", "720");
  EXPECT_EQ(write_rig(rig, without), kWhole);
}

TEST(WriteRig, MakesAMapOfAnEntryThatGetsASource) {
  Rig rig = read(kWholeRig);
  rig.supply.trip_voltage_V.source = Source::measured;
  EXPECT_EQ(write_rig(rig, kWholeRig),
            with(kWhole, "trip_voltage: 32 V", "trip_voltage: {value: 32 V, source: measured}"));
}

TEST(WriteRig, LaysTheFileOutAnewWhereTheStructureChanged) {
  Rig rig = read(
      "rig: 1 # mine\ntitle: Owl\nx_paint: teal\non_pan:\n  - {name: arm, mass: 2 g, x_tag: [7, "
      "\"a b\"]}\n");
  Body lamp;
  lamp.name = "lamp, left";
  lamp.mass_kg = entry("on_pan[0].mass", "30 g");
  lamp.shape = Point{};
  rig.on_pan.push_back(lamp);
  rig.pan.stops.presence = Presence::none;
  rig.tilt.cable.presence = Presence::given;
  rig.tilt_axis_at_m[2] = entry("tilt.axis_at[2]", "165 mm");
  const std::string text = write_rig(rig, "rig: 1 # mine\n");
  EXPECT_EQ(text,
            "rig: 1\n"
            "title: Owl\n"
            "pan:\n"
            "  stops: none\n"
            "tilt:\n"
            "  axis_at: [null, null, 165 mm]\n"
            "  cable: {}\n"
            "on_pan:\n"
            "  - {name: arm, mass: 2 g, x_tag: [7, \"a b\"]}\n"
            "  - {name: \"lamp, left\", mass: 30 g, shape: point}\n"
            "x_paint: teal\n");
  EXPECT_EQ(read(text), rig);
}

TEST(WriteRig, EditsAKeepOutInPlaceAndLaysANewOneOut) {
  Rig rig = read(kWholeRig);
  rig.keep_outs[0].pan_rad[1] = entry("keep_outs[0].pan[1]", "18 deg");
  rig.keep_outs[0].name = "lamp";
  EXPECT_EQ(write_rig(rig, kWholeRig),
            with(with(kWhole, "15 deg], tilt", "18 deg], tilt"), "lamp post", "lamp"));

  rig = read("rig: 1\n");
  rig.keep_outs.resize(2);
  rig.keep_outs[0].name = "wall";
  rig.keep_outs[0].tilt_rad = {entry("keep_outs[0].tilt[0]", "-30 deg"), {}};
  const std::string text = write_rig(rig, "rig: 1\n");
  EXPECT_EQ(text,
            "rig: 1\n"
            "keep_outs:\n"
            "  - {name: wall, tilt: [-30 deg, null]}\n"
            "  - {}\n");
  EXPECT_EQ(read(text), rig);
}

TEST(WriteRig, EditsADetectorInPlaceAndLaysANewPathOut) {
  Rig rig = read(kWholeRig);
  rig.detectors[0].delay_s = entry("detectors[0].delay", "30 ms");
  EXPECT_EQ(write_rig(rig, kWholeRig), with(kWhole, "delay: 22 ms", "delay: 30 ms"));

  rig = read("rig: 1\ntracking: {gain: 5 1/s}\n");
  rig.tracking.path = {{si_quantity(0), si_quantity(0), si_quantity(0)},
                       {si_quantity(2.5), si_quantity(std::numbers::pi / 6), si_quantity(0)}};
  rig.detectors.emplace_back();
  const std::string text = write_rig(rig, "rig: 1\ntracking: {gain: 5 1/s}\n");
  EXPECT_EQ(text,
            "rig: 1\n"
            "tracking:\n"
            "  gain: 5 1/s\n"
            "  path:\n"
            "    - [0 s, 0 deg, 0 deg]\n"
            "    - [2.5 s, 30 deg, 0 deg]\n"
            "detectors:\n"
            "  - {}\n");
  EXPECT_EQ(read(text).tracking.path[1].pan_rad.written, "30 deg");
}

TEST(WriteRig, ReadsBackAsTheSameRigWhenLaidOutAnew) {
  const Rig rig = read(kWholeRig);
  const std::string text = write_rig(rig);
  EXPECT_EQ(read(text), rig) << text;
  EXPECT_EQ(write_rig(read(text)), text);
}

TEST(WriteRig, WritesTextsThatYamlWouldTakeForSomethingElse) {
  for (const char* text :
       {"null",         "~",         "# no", "a: b", " ends ", "- x",          "[x]",
        "{x}",          "*x",        "&x",   "!x",   "'",      "\"",           "\\",
        "two\nlines\n", "tab\there", "\x01", "24",   "true",   "\u00fc\u2028", "%x",
        "@x",           "`x",        "?",    ":",    ",",      "a #b",         "...",
        "---",          "|",         ">"}) {
    Rig rig;
    rig.title = text;
    rig.pan.motor.name = text;
    EXPECT_EQ(read(write_rig(rig)), rig) << text;
    EXPECT_EQ(read(write_rig(rig, kWholeRig)), rig) << text;
  }
}

}  // namespace
}  // namespace gazewright
