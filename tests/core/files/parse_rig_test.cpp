#include <gtest/gtest.h>

#include <numbers>

#include "core/files/rig_file.h"
#include "tests/core/files/whole_rig.h"

namespace gazewright {
namespace {

std::string all_of(const LoadedRig& loaded) {
  std::string text;
  for (const Diagnostic& diagnostic : loaded.diagnostics)
    text += (text.empty() ? "" : "\n") + to_text(diagnostic);
  return text;
}
/// Every problem of a rig file that begins with the line `rig: 1`.
std::string problems(const std::string& after_first_line) {
  const LoadedRig loaded = parse_rig("rig: 1\n" + after_first_line, "a.rig.yaml");
  EXPECT_FALSE(loaded.rig.has_value());
  return all_of(loaded);
}
/// What is said of a rig file that can be used.
std::string warnings(const std::string& after_first_line) {
  const LoadedRig loaded = parse_rig("rig: 1\n" + after_first_line, "a.rig.yaml");
  EXPECT_TRUE(loaded.rig.has_value()) << all_of(loaded);
  return all_of(loaded);
}
std::string problems_of_file(const std::string& text) {
  const LoadedRig loaded = parse_rig(text, "a.rig.yaml");
  EXPECT_FALSE(loaded.rig.has_value());
  return all_of(loaded);
}

TEST(ParseRig, ReadsEverythingARigFileCanSay) {
  const LoadedRig loaded = parse_rig(kWholeRig, "owl.rig.yaml");
  ASSERT_EQ(all_of(loaded), "");
  const Rig& rig = loaded.rig.value();
  EXPECT_EQ(rig.title, "Tide-pool owl");
  EXPECT_EQ(rig.notes, "the lobby owl\nthat watches visitors\n");
  EXPECT_EQ(rig.supply.voltage_V.si, 24.0);
  EXPECT_EQ(rig.supply.voltage_V.written, "24 V");
  EXPECT_DOUBLE_EQ(*rig.surroundings.temperature_K.si, 303.15);
  EXPECT_EQ(rig.pan.motor.name, "outrunner A");
  EXPECT_DOUBLE_EQ(*rig.pan.motor.rotor_inertia_kgm2.si, 118e-7);
  EXPECT_DOUBLE_EQ(rig.pan.motor.rotor_inertia_kgm2.spread_si, 11.8e-7);
  EXPECT_EQ(rig.pan.motor.rotor_inertia_kgm2.source, Source::datasheet);
  EXPECT_EQ(rig.pan.drive.speed_limit_radps.si, kInfinity);
  EXPECT_DOUBLE_EQ(*rig.pan.gearbox.peak_torque_Nm.si, 25 * 0.0980665);
  EXPECT_EQ(rig.pan.encoder.at.value, "output");
  EXPECT_EQ(rig.pan.stops.presence, Presence::none);
  EXPECT_EQ(rig.pan.cable.presence, Presence::given);
  EXPECT_EQ(rig.pan.cable.routing.value, "coil");
  EXPECT_EQ(rig.tilt.cable.presence, Presence::missing);
  EXPECT_DOUBLE_EQ(*rig.tilt_axis_at_m[2].si, 0.165);
  ASSERT_EQ(rig.on_pan.size(), 2u);
  EXPECT_EQ(rig.on_pan[1].name, "lamp: left");
  EXPECT_EQ(std::get<Tube>(rig.on_pan[1].shape).along.value, "z");
  ASSERT_EQ(rig.on_tilt.size(), 4u);
  EXPECT_TRUE(std::holds_alternative<Point>(rig.on_tilt[1].shape));
  EXPECT_DOUBLE_EQ(*std::get<Tensor>(rig.on_tilt[3].shape).element_kgm2[5].si, -2e-7);
  ASSERT_EQ(rig.keep_outs.size(), 1u);
  EXPECT_EQ(rig.keep_outs[0].name, "lamp post");
  EXPECT_DOUBLE_EQ(*rig.keep_outs[0].pan_rad[0].si, -20 * std::numbers::pi / 180);
  EXPECT_EQ(rig.keep_outs[0].tilt_rad[1].written, "60 deg");
  EXPECT_EQ(rig.task.moves_per_minute.si, 40.0);
  EXPECT_EQ(rig.tracking.target.value, "path");
  ASSERT_EQ(rig.tracking.path.size(), 2u);
  EXPECT_EQ(rig.tracking.path[1].time_s.si, 1.5);
  EXPECT_EQ(rig.tracking.path[1].pan_rad.written, "25 deg");
  ASSERT_EQ(rig.detectors.size(), 1u);
  EXPECT_EQ(rig.detectors[0].name, "fast");
  EXPECT_EQ(rig.detectors[0].drop_outs.si, 0.05);
}

TEST(ParseRig, LeavesWhatIsNotThereMissing) {
  const LoadedRig loaded =
      parse_rig("rig: 1\nstand:\nsupply: {voltage: }\non_pan:\n  - {name: arm}\n", "a");
  ASSERT_EQ(all_of(loaded), "");
  EXPECT_FALSE(loaded.rig->supply.voltage_V.has_value());
  EXPECT_FALSE(loaded.rig->stand.mass_kg.has_value());
  EXPECT_FALSE(loaded.rig->on_pan[0].mass_kg.has_value());
  // A body without a shape has an inertia that nobody knows; it is no point.
  ASSERT_TRUE(std::holds_alternative<Tensor>(loaded.rig->on_pan[0].shape));
  EXPECT_FALSE(std::get<Tensor>(loaded.rig->on_pan[0].shape).element_kgm2[0].has_value());
}

TEST(ParseRig, SaysPlaceFieldDimensionAndAnExampleForABareNumber) {
  EXPECT_EQ(problems("pan:\n  motor: {rotor_inertia: 35}\n"),
            "a.rig.yaml:3:26: error: Rotor inertia (pan.motor.rotor_inertia): 35 has no unit; an "
            "inertia is due\n"
            "  fix: write for example 35 g.cm2");
}

TEST(ParseRig, PutsANumberTogetherThatACommaHasCut) {
  EXPECT_EQ(
      problems("pan:\n  motor: {phase_resistance: 0,065 ohm, mass: 96 g}\n"),
      "a.rig.yaml:3:29: error: Phase resistance (pan.motor.phase_resistance): 0,065 ohm has a "
      "comma in its number\n"
      "  fix: write 0.065 ohm");
  // The same end twice is no key that is written twice.
  EXPECT_EQ(problems("pan:\n  stops: {tab_width: {value: 7,5 mm, source: measured}, post_width: "
                     "7,5 mm, radius: 8,5 mm}\n"),
            "a.rig.yaml:3:30: error: Tab width (pan.stops.tab_width): 7,5 mm has a comma in its "
            "number\n"
            "  fix: write 7.5 mm\n"
            "a.rig.yaml:3:69: error: Post width (pan.stops.post_width): 7,5 mm has a comma in its "
            "number\n"
            "  fix: write 7.5 mm\n"
            "a.rig.yaml:3:85: error: Radius (pan.stops.radius): 8,5 mm has a comma in its number\n"
            "  fix: write 8.5 mm");
  EXPECT_EQ(
      problems("tilt:\n  axis_at: [-0,5 mm, 0 mm, 150 mm]\n"),
      "a.rig.yaml:3:13: error: Tilt axis at (tilt.axis_at): -0,5 mm has a comma in its number\n"
      "  fix: write -0.5 mm");
  // Two entries, not one: a blank behind the comma.
  EXPECT_NE(warnings("pan:\n  motor: {pole_pairs: 7, 14 magnets}\n").find("the key 14 magnets"),
            std::string::npos);
}

TEST(ParseRig, ReadsARatioOfTwoNumbersAsTheOneThatWasMeant) {
  for (const char* written : {"1:10", "\"10 : 1\"", "10 to 1"})
    EXPECT_NE(problems("pan:\n  gearbox: {ratio: " + std::string(written) + "}\n")
                  .find("is two numbers; a ratio is one\n"
                        "  fix: write 10: so many turns of the motor for one of the output"),
              std::string::npos)
        << problems("pan:\n  gearbox: {ratio: " + std::string(written) + "}\n");
}

TEST(ParseRig, WarnsOfAValueFarOutsideOfWhatTheHelpCallsUsual) {
  EXPECT_EQ(warnings("tilt:\n  motor: {mass: 34 kg, speed_constant: 900 rpm/V}\n"),
            "a.rig.yaml:3:17: warning: Mass (tilt.motor.mass): 34 kg is unusual; usually 30 g to "
            "1000 g\n"
            "  fix: check the number and its unit, or leave it so");
  EXPECT_EQ(warnings("pan:\n  motor: {phase_resistance: {value: 160 ohm, source: datasheet}}\n"),
            "a.rig.yaml:3:37: warning: Phase resistance (pan.motor.phase_resistance): 160 ohm is "
            "unusual; usually 20 mohm to 10 ohm\n"
            "  fix: check the number and its unit, or leave it so");
  EXPECT_NE(warnings("pan:\n  gearbox: {ratio: 0.125}\n").find("usually 1 to 60"),
            std::string::npos);
  EXPECT_NE(warnings("pan:\n  motor: {speed_constant: 3000 rpm/V}\n").find("usually 30 rpm/V to"),
            std::string::npos);
  // No play, no friction and no limit are not unusual.
  EXPECT_EQ(warnings("pan:\n  gearbox: {backlash: 0 deg, drag: 0 N.m, input_speed_limit: none}\n"),
            "");
}

TEST(ParseRig, CountsColumnsInLettersAndTakesEveryLineEnd) {
  EXPECT_NE(problems("supply: {\"m\u00fcll\": 1, voltage: 24}\n")
                .find("\na.rig.yaml:2:30: error: Voltage (supply.voltage): 24 has no unit"),
            std::string::npos);
  EXPECT_EQ(
      problems_of_file("\xEF\xBB\xBFrig: 1\r\ntitle: \u00dc\r\nsupply: {trip_voltage: 24}\r\n"),
      "a.rig.yaml:3:24: error: Trip voltage (supply.trip_voltage): 24 has no unit; a voltage is "
      "due\n"
      "  fix: write for example 24 V");
}

TEST(ParseRig, RefusesValuesOneByOneWithTheirReason) {
  const auto in_supply = [](const std::string& entry) {
    return problems("supply: {" + entry + "}\n");
  };
  EXPECT_EQ(in_supply("voltage: 5 A"),
            "a.rig.yaml:2:19: error: Voltage (supply.voltage): 5 A is a current; a voltage is due\n"
            "  fix: write for example 5 V");
  EXPECT_EQ(in_supply("voltage: 5 blob"),
            "a.rig.yaml:2:19: error: Voltage (supply.voltage): the unit \"blob\" is not known; a "
            "voltage is due\n"
            "  fix: write for example 5 V");
  EXPECT_EQ(in_supply("voltage: nan V"),
            "a.rig.yaml:2:19: error: Voltage (supply.voltage): nan V is not a finite number; a "
            "voltage is due\n"
            "  fix: write for example 1 V");
  EXPECT_EQ(
      in_supply("absorbs: -1 A"),
      "a.rig.yaml:2:19: error: Absorbs (supply.absorbs): -1 A is below the least allowed, 0 A\n"
      "  fix: write a value of at least 0 A");
  EXPECT_EQ(in_supply("voltage: none"),
            "a.rig.yaml:2:19: error: Voltage (supply.voltage): none is not allowed here; a voltage "
            "is due\n"
            "  fix: write for example 1 V");
  EXPECT_EQ(
      in_supply("voltage: \"\""),
      "a.rig.yaml:2:19: error: Voltage (supply.voltage): nothing is written; a voltage is due\n"
      "  fix: write for example 1 V");
  EXPECT_EQ(in_supply("voltage: [24 V]"),
            "a.rig.yaml:2:19: error: Voltage (supply.voltage): a list where one quantity is due\n"
            "  fix: write one number with its unit");
  EXPECT_EQ(
      problems("on_pan:\n  - {mass: -2 g}\n"),
      "a.rig.yaml:3:12: error: Mass (on_pan[0].mass): -2 g is negative; a mass cannot be negative\n"
      "  fix: write a value above 0 g");
}

TEST(ParseRig, ChecksTheMapOfAValueItsSpreadAndItsSource) {
  const auto in_mass = [](const std::string& map) {
    return problems("stand: {mass: {" + map + "}}\n");
  };
  EXPECT_EQ(in_mass("value: 3 kg, source: guess"),
            "a.rig.yaml:2:37: error: Source of Mass (stand.mass): \"guess\" is not known\n"
            "  fix: write measured, datasheet, estimate or default");
  EXPECT_EQ(in_mass("value: 3 kg, spread: 5 V"),
            "a.rig.yaml:2:37: error: Spread of Mass (stand.mass): 5 V is a voltage; a mass is due\n"
            "  fix: write for example 10 %");
  EXPECT_EQ(in_mass("spread: 10 %"),
            "a.rig.yaml:2:15: error: Mass (stand.mass): the map has no value\n"
            "  fix: write for example {value: 1 kg, source: measured}");
}

TEST(ParseRig, RefusesTheWrongKindOfThing) {
  EXPECT_EQ(problems("supply: [24 V]\n"),
            "a.rig.yaml:2:9: error: supply is a list; a map of its fields is due\n"
            "  fix: write for example {voltage: ...}");
  EXPECT_EQ(problems("pan: {stops: maybe}\n"),
            "a.rig.yaml:2:14: error: pan.stops is a text; a map of its fields is due\n"
            "  fix: write for example {kind: ...}");
  EXPECT_EQ(problems("on_tilt: {name: x}\n"),
            "a.rig.yaml:2:10: error: on_tilt is a map; a list of bodies is due\n"
            "  fix: begin each body with a dash: - {name: ball, mass: 160 g, ...}");
  EXPECT_EQ(problems("title: [a]\n"),
            "a.rig.yaml:2:8: error: title is a list; a text is due\n"
            "  fix: write a text, in quotes where it holds : or #");
  EXPECT_EQ(
      problems("pan: {encoder: {at: moter}}\n"),
      "a.rig.yaml:2:21: error: Mounted at (pan.encoder.at): \"moter\" is not one of its choices\n"
      "  fix: write motor or output");
  EXPECT_EQ(problems("tilt: {axis_at: [0 mm, 0 mm]}\n"),
            "a.rig.yaml:2:17: error: Tilt axis at (tilt.axis_at): the list holds 2; 3 are due\n"
            "  fix: write 3 quantities in brackets: [x, y, z]");
}

TEST(ParseRig, RefusesShapesThatNoBodyCanHave) {
  const auto with_shape = [](const std::string& shape) {
    return problems("on_pan:\n  - {shape: " + shape + "}\n");
  };
  EXPECT_EQ(with_shape("{inertia: [1 g.cm2, 1 g.cm2, 3 g.cm2, 0 g.cm2, 0 g.cm2, 0 g.cm2]}"),
            "a.rig.yaml:3:13: error: on_pan[0].shape: no body can have this inertia; each "
            "principal moment is at most "
            "the sum of the other two\n"
            "  fix: check the six values and their order: [xx, yy, zz, xy, xz, yz]");
  EXPECT_EQ(with_shape("{inertia: [1 g.cm2]}"),
            "a.rig.yaml:3:23: error: Moment of inertia (on_pan[0].shape.inertia): the list holds "
            "1; 6 are due\n"
            "  fix: write 6 quantities in brackets: [xx, yy, zz, xy, xz, yz]");
  EXPECT_EQ(with_shape("{bal: {diameter: 3 mm}}"),
            "a.rig.yaml:3:14: error: on_pan[0].shape: the shape bal is not known\n  fix: did you "
            "mean ball?");
  EXPECT_EQ(with_shape("{ball: {diameter: 3 mm}, box: [1 mm, 1 mm, 1 mm]}"),
            "a.rig.yaml:3:13: error: on_pan[0].shape: 2 shapes where one shape is due\n"
            "  fix: write point, or one of {ball: ...}, {shell: ...}, {tube: ...}, {box: ...}, "
            "{inertia: ...}");
  EXPECT_EQ(with_shape("{shell: {diameter: 10 mm, wall: 6 mm}}"),
            "a.rig.yaml:3:13: error: on_pan[0].shape: a wall of 6 mm does not fit into a diameter "
            "of 10 mm\n"
            "  fix: write a wall of at most half the diameter");
  EXPECT_EQ(with_shape("{tube: {diameter: 10 mm, bore: 1 cm}}"),
            "a.rig.yaml:3:13: error: on_pan[0].shape: a bore of 1 cm does not fit into a diameter "
            "of 10 mm\n"
            "  fix: write a bore that is less than the diameter");
  EXPECT_EQ(problems("pan: {stops: {tab_width: 60 mm, radius: 26 mm}}\n"),
            "a.rig.yaml:2:14: error: pan.stops: a tab of 60 mm does not fit on a radius of 26 mm\n"
            "  fix: write a width under twice the radius");
  EXPECT_EQ(
      problems("pan: {stops: {kind: trailing, trailer_width: 60 mm, radius: 26 mm}}\n"),
      "a.rig.yaml:2:14: error: pan.stops: a loose tab of 60 mm does not fit on a radius of 26 "
      "mm\n"
      "  fix: write a width under twice the radius");
  EXPECT_EQ(
      problems("pan: {stops: {kind: window, tab_width: 26 mm, radius: 26 mm, window: 60 deg}}\n"),
      "a.rig.yaml:2:14: error: pan.stops: a window of 60 deg leaves no room to turn for a tab of "
      "26 "
      "mm on a radius of 26 mm\n"
      "  fix: write a wider window, or a narrower tab");
}

TEST(ParseRig, ChecksPathsAndDetectors) {
  const std::string fix =
      "  fix: write points of time, pan and tilt: [[0 s, -20 deg, 0 deg], [1 s, 20 deg, 5 deg]]";
  EXPECT_EQ(problems("tracking: {path: 3}\n"),
            "a.rig.yaml:2:18: error: tracking.path is a text; a list of points is due\n" + fix);
  EXPECT_EQ(
      problems("tracking: {path: [[0 s, 1 deg, 2 deg]]}\n"),
      "a.rig.yaml:2:18: error: tracking.path holds fewer than two points; nothing moves\n" + fix);
  EXPECT_EQ(
      problems("tracking: {path: [[0 s, 1 deg, null], [1 s, 1 deg, 2 deg]]}\n"),
      "a.rig.yaml:2:19: error: tracking.path[0]: a point lacks one of its three values\n" + fix);
  EXPECT_EQ(
      problems("tracking: {path: [[1 s, 1 deg, 2 deg], [500 ms, 1 deg, 2 deg]]}\n"),
      "a.rig.yaml:2:40: error: tracking.path[1] is at 500 ms, not after the point before it at "
      "1 s\n  fix: write the points in the order of their times");
  EXPECT_EQ(problems("detectors: fast\n"),
            "a.rig.yaml:2:12: error: detectors is a text; a list of detectors is due\n"
            "  fix: begin each with a dash: - {name: fast, frame_rate: 60 Hz, delay: 20 ms, noise: "
            "6}");
  EXPECT_EQ(problems("detectors: [{}, {}, {}, {}, {}, {}]\n"),
            "a.rig.yaml:2:12: error: detectors holds 6 detectors; at most 5 are read\n"
            "  fix: leave some of them out");
}

TEST(ParseRig, ChecksKeepOuts) {
  EXPECT_EQ(problems("keep_outs:\n  - {pan: [15 deg, -20 deg], tilt: [30 deg, 60 deg]}\n"),
            "a.rig.yaml:3:11: error: keep_outs[0].pan: it ends at -20 deg, below where it begins, "
            "15 deg\n"
            "  fix: write the lower angle first: [from, to]");
  EXPECT_EQ(problems("keep_outs:\n  - {tilt: [1 deg, 0.5 deg]}\n"),
            "a.rig.yaml:3:12: error: keep_outs[0].tilt: it ends at 0.5 deg, below where it begins, "
            "1 deg\n"
            "  fix: write the lower angle first: [from, to]");
  EXPECT_EQ(problems("keep_outs: {pan: 3}\n"),
            "a.rig.yaml:2:12: error: keep_outs is a map; a list of keep-outs is due\n"
            "  fix: begin each with a dash: - {name: lamp post, pan: [-20 deg, 15 deg], tilt: "
            "[30 deg, 60 deg]}");
  EXPECT_EQ(problems("keep_outs:\n  - {pan: [3, 4 mm]}\n"),
            "a.rig.yaml:3:12: error: Pan (keep_outs[0].pan[0]): 3 has no unit; an angle is due\n"
            "  fix: write for example 3 deg\n"
            "a.rig.yaml:3:15: error: Pan (keep_outs[0].pan[1]): 4 mm is a length; an angle is due\n"
            "  fix: write for example 4 deg");
  EXPECT_EQ(problems("keep_outs:\n  - {pan: 3 deg}\n"),
            "a.rig.yaml:3:11: error: Pan (keep_outs[0].pan): a text where a list of 2 is due\n"
            "  fix: write 2 quantities in brackets: [from, to]");
}

TEST(ParseRig, KeepsUnknownKeysAndAsksWhetherAnotherWasMeant) {
  const LoadedRig loaded = parse_rig(
      "rig: 1\nx_paint: {colour: teal, coats: [1, 2]}\npan:\n  gearbox: {efficency: 0.9}\n",
      "a.rig.yaml");
  EXPECT_EQ(all_of(loaded),
            "a.rig.yaml:2:1: warning: the key x_paint is not known; it is kept and not used\n"
            "  fix: check the spelling, or leave it as a remark of your own\n"
            "a.rig.yaml:4:13: warning: the key efficency of pan.gearbox is not known; it is kept "
            "and not used\n"
            "  fix: did you mean efficiency?");
  ASSERT_TRUE(loaded.rig.has_value());
  const std::vector<UnknownKey> kept{{"", "x_paint", "{colour: teal, coats: [1, 2]}"},
                                     {"pan.gearbox", "efficency", "0.9"}};
  EXPECT_EQ(loaded.rig->unknown_keys, kept);
}

TEST(ParseRig, KnowsWhatTheTradeCallsAField) {
  const auto mend = [](const std::string& part, const std::string& key) {
    const std::string said = warnings("pan:\n  " + part + ": {" + key + ": 3}\n");
    return said.substr(said.rfind("fix: ") + 5);
  };
  for (const char* key : {"KV", "Kv", "kv", "motor_kv"})
    EXPECT_EQ(mend("motor", key), "did you mean speed_constant?") << key;
  EXPECT_EQ(mend("motor", "resistance"),
            "did you mean phase_resistance? (half of what is measured between two leads)");
  EXPECT_EQ(mend("motor", "poles"), "did you mean pole_pairs? (half of the magnets)");
  EXPECT_EQ(mend("motor", "max_current"), "did you mean peak_current?");
  EXPECT_EQ(mend("drive", "max_current"), "did you mean current_limit?");
  EXPECT_EQ(mend("gearbox", "reduction"), "did you mean ratio?");
  EXPECT_EQ(mend("gearbox", "kv"), "check the spelling, or leave it as a remark of your own");
}

TEST(ParseRig, RefusesAKeyThatIsWrittenTwice) {
  EXPECT_EQ(problems("supply: {voltage: 24 V, voltage: 48 V}\n"),
            "a.rig.yaml:2:25: error: the key voltage is written twice in one map\n  fix: keep one "
            "of the two");
}

TEST(ParseRig, ReportsEveryProblemAtOnceInTheOrderOfTheFile) {
  EXPECT_EQ(problems("camera: {columns: 0.5}\nsupply: {voltage: 24, voltage: 24 V}\ntitel: x\n"),
            "a.rig.yaml:2:19: error: Columns (camera.columns): 0.5 is below the least allowed, 1\n"
            "  fix: write a whole number from 1 to 100000\n"
            "a.rig.yaml:3:19: error: Voltage (supply.voltage): 24 has no unit; a voltage is due\n"
            "  fix: write for example 24 V\n"
            "a.rig.yaml:3:23: error: the key voltage is written twice in one map\n"
            "  fix: keep one of the two\n"
            "a.rig.yaml:4:1: warning: the key titel is not known; it is kept and not used\n"
            "  fix: did you mean title?");
}

TEST(ParseRig, EndsALongListOfProblemsWithTheirNumber) {
  std::string text = "rig: 1\non_pan:\n";
  for (int i = 0; i < 150; ++i) text += "  - {mass: 5}\n";
  const LoadedRig loaded = parse_rig(text, "a.rig.yaml");
  ASSERT_EQ(loaded.diagnostics.size(), 101u);
  EXPECT_EQ(to_text(loaded.diagnostics.back()),
            "a.rig.yaml: error: there are 50 more problems\n  fix: mend these first");
}

TEST(ParseRig, AsksForTheVersionAndRefusesANewerOnePolitely) {
  EXPECT_EQ(problems_of_file("title: x\n"),
            "a.rig.yaml:1:1: error: the line rig: 1 is missing; this may not be a rig file\n"
            "  fix: write the line rig: 1 at the top of the file");
  EXPECT_EQ(problems_of_file("rig: 2\nwings: 4\n"),
            "a.rig.yaml:1:6: error: this rig is of version 2; this program reads version 1\n"
            "  fix: open it with a newer Gazewright, or save it there as version 1");
  EXPECT_EQ(problems_of_file("rig: owl\n"),
            "a.rig.yaml:1:6: error: rig is \"owl\"; the version of the file is due\n"
            "  fix: write the line rig: 1 at the top of the file");
  for (const char* empty : {"", "\n", "# only a remark\n"})
    EXPECT_EQ(problems_of_file(empty),
              "a.rig.yaml:1:1: error: the file is empty\n  fix: write the line rig: 1 at the top "
              "of the file");
  EXPECT_EQ(problems_of_file("- 1\n"),
            "a.rig.yaml:1:1: error: the file holds a list; a rig is a map of keys\n"
            "  fix: write the line rig: 1 at the top of the file");
  EXPECT_EQ(problems("---\nrig: 1\n"),
            "a.rig.yaml:3:1: error: the file holds more than one document\n  fix: keep one rig in "
            "a file");
}

TEST(ParseRig, RefusesBytesThatAreNoText) {
  EXPECT_EQ(problems_of_file(std::string("rig: 1\nti\0tle: x\n", 16)),
            "a.rig.yaml:2:3: error: the file holds a NUL byte; it is not text\n"
            "  fix: choose a rig file, or save it as UTF-8 text");
  for (const char* bad : {"\xff", "\xc0\xaf", "\xed\xa0\x80", "\xf5\x80\x80\x80", "\xe2\x82"})
    EXPECT_EQ(problems(std::string("title: ") + bad + "\n"),
              "a.rig.yaml:2:8: error: the file is not UTF-8 text from here on\n"
              "  fix: save it as UTF-8 in a text editor");
  EXPECT_EQ(problems("title: \x04\n"),
            "a.rig.yaml:2:8: error: the file holds a control character\n  fix: remove it in a text "
            "editor");
}

TEST(ParseRig, SaysWhereYamlIsBroken) {
  const std::string fix =
      "\n  fix: check brackets, quotes and indentation here; a text with : or # goes in quotes";
  EXPECT_EQ(problems("title: owl: big\n"),
            "a.rig.yaml:2:11: error: this is not YAML: illegal map value" + fix);
  EXPECT_EQ(problems("supply: {voltage: 24 V\n"),
            "a.rig.yaml:3:1: error: this is not YAML: end of map flow not found" + fix);
  EXPECT_EQ(problems("supply:\n\tvoltage: 24 V\n"),
            "a.rig.yaml:3:1: error: a tab stands before the first word of this line\n  fix: indent "
            "with spaces");
  EXPECT_EQ(problems("title: \"owl\nsupply: {voltage: 24}\n"),
            "a.rig.yaml:2:8: error: the quotes that open here never close\n"
            "  fix: put a quote sign at the end of the text");
}

TEST(ParseRig, RefusesAnchorsAndAliases) {
  const std::string words =
      "error: anchors (&) and aliases (*) are not read in a rig file\n"
      "  fix: write the value out, or put a text that begins with & or * in quotes";
  EXPECT_EQ(problems("supply: &s {voltage: 24 V}\ncamera: *s\n"),
            "a.rig.yaml:2:9: " + words + "\na.rig.yaml:3:9: " + words);
}

TEST(ParseRig, RefusesTooMuchOfAnythingQuickly) {
  const std::size_t most = 1024 * 1024;
  const std::string too_large = "rig: 1\n#" + std::string(most, 'x');
  EXPECT_EQ(problems_of_file(too_large),
            "a.rig.yaml:1:1: error: the file is larger than 1 MiB\n"
            "  fix: a rig takes a few kilobytes; choose another file");
  EXPECT_EQ(problems("title: " + std::string(200'000, 'x') + "\n"),
            "a.rig.yaml:2:8: error: a text of 200000 bytes is too long\n"
            "  fix: keep every entry under 100 000 bytes");
  for (const char* nest : {"[", "{a: ", "{", "[{? "}) {
    std::string deep = "x: ";
    while (deep.size() < most / 2) deep += nest;
    EXPECT_NE(problems(deep).find("error: lists and maps are nested more than 32 deep\n"),
              std::string::npos)
        << nest;
  }
  std::string bodies = "on_pan:\n";
  for (int i = 0; i < 501; ++i) bodies += "  - {}\n";
  EXPECT_EQ(problems(bodies),
            "a.rig.yaml:3:3: error: on_pan holds 501 bodies; at most 500 are read\n  fix: join "
            "small bodies into one");
}

}  // namespace
}  // namespace gazewright
