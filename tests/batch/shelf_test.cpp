#include <gtest/gtest.h>

#include "core/files/rig_file.h"
#include "tests/batch/json_reader.h"
#include "tests/batch/program.h"
#include "tests/support/environment.h"

/// The verbs `shelf` and `fit`: the user's parts, and which of them fit a rig best.
namespace gazewright::test {
namespace {

constexpr const char* kMotor = R"(shelf: 1
name: drawer motor
motor: {speed_constant: 300 rpm/V, phase_resistance: 160 mohm, phase_inductance: 58 uH, pole_pairs: 7,
        rotor_inertia: 48 g.cm2, peak_current: 24 A, mass: 96 g, thermal_resistance: 5.2 K/W, winding_limit: 120 degC}
)";
constexpr const char* kGearbox = R"(shelf: 1
name: eight
gearbox: {ratio: 8, efficiency: 0.94, inertia: 6 g.cm2, backlash: 9 arcmin, stiffness: 750 N.m/rad, drag: 4 mN.m,
          rated_torque: 5 N.m, peak_torque: 12 N.m, input_speed_limit: 8000 rpm, mass: 175 g}
)";

TEST(BatchShelf, WithoutAFolderOfItsOwnListsTheBuiltInParts) {
  const Folder folder;
  const tests::Environment data("XDG_DATA_HOME", folder.path("data"));
  const Ran summary = run_batch({"shelf"});
  EXPECT_EQ(summary.status, 0) << summary.err;
  EXPECT_NE(summary.out.find("the built-in parts\n"), std::string::npos);
  EXPECT_NE(summary.out.find("motor    10\n"), std::string::npos) << summary.out;
  const Ran list = run_batch({"shelf", "--list"});
  EXPECT_EQ(list.status, 0);
  EXPECT_NE(list.out.find("generic 42 mm outrunner, 100 rpm/V"), std::string::npos);
  EXPECT_FALSE(std::filesystem::exists(folder.path("data")));  // it writes nothing
}

TEST(BatchShelf, ABadFileIsNamedWithItsPlaceAndLeftOut) {
  const Folder folder;
  folder.write("bad.yaml", "shelf: 1\nname: x\nmotor: {mass: 96}\n");
  folder.write("good.yaml", kMotor);
  const Ran ran = run_batch({"shelf", "--list", "--shelf", folder.path("")});
  EXPECT_EQ(ran.status, 0);
  EXPECT_EQ(lines_of(ran.out).size(), 1u);
  EXPECT_NE(ran.err.find("bad.yaml:3:15: error: Mass (motor.mass): 96 has no unit"),
            std::string::npos)
      << ran.err;
}

TEST(BatchShelf, WrongUsageIsASentence) {
  EXPECT_EQ(run_batch({"shelf", kNewt}).status, 2);
  EXPECT_EQ(run_batch({"fit", kNewt, "--most", "0"}).status, 2);
  EXPECT_EQ(run_batch({"fit", kNewt, "--list"}).status, 2);
  const Ran absent = run_batch({"fit", kNewt, "--shelf", "/there/is/no/such/folder"});
  EXPECT_EQ(absent.status, 3);
  EXPECT_NE(absent.err.find("there is no folder /there/is/no/such/folder"), std::string::npos);
}

TEST(BatchFit, RanksTheShelfAndSavesARigWithTheBest) {
  const Folder folder;
  folder.write("m.yaml", kMotor);
  folder.write("g.yaml", kGearbox);
  folder.write("n.yaml", "shelf: 1\nname: bare\nmotor: {speed_constant: 100 rpm/V}\n");
  const Ran ran = run_batch(
      {"fit", kNewt, "--shelf", folder.path(""), "--json", "--save", folder.path("best.rig.yaml")});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto json = read_json(ran.out);
  ASSERT_TRUE(json) << ran.out;
  EXPECT_EQ(json->at("combinations").number(), 4);
  EXPECT_EQ(json->at("lacking").number(), 3);
  const LoadedRig best = load_rig(folder.path("best.rig.yaml"));
  ASSERT_TRUE(best.rig);
  EXPECT_EQ(best.rig->pan.motor.name, "drawer motor");
  EXPECT_EQ(best.rig->tilt.gearbox.name, "eight");
  const Ran table = run_batch({"fit", kNewt, "--shelf", folder.path("")});
  EXPECT_NE(table.out.find("not ranked: bare needs"), std::string::npos) << table.out;
}

TEST(BatchFit, ASavedRigKeepsItsCommentsAndSaysWhichGainsItGoesWithout) {
  const Folder folder;
  folder.write("m.yaml", kMotor);
  folder.write("g.yaml", kGearbox);
  const std::string text = "# the owlet of the foyer\n" +
                           sample_with("quick-newt", "estimator_bandwidth", "left_out");  // of pan
  folder.write("owlet.rig.yaml", text);
  const std::vector<std::string> fit{"fit", folder.path("owlet.rig.yaml"), "--shelf",
                                     folder.path("")};
  const Ran table = run_batch(fit);
  EXPECT_NE(table.out.find("settling unknown: needs pan.loop.estimator_bandwidth"),
            std::string::npos)
      << table.out;
  EXPECT_EQ(table.out.find("no time"), std::string::npos);
  auto save = fit;
  save.insert(save.end(), {"--json", "--save", folder.path("best.rig.yaml")});
  const Ran saved = run_batch(save);
  ASSERT_EQ(saved.status, 0) << saved.err;
  EXPECT_NE(saved.err.find("gazewright-batch: no gains are written for pan: needs "
                           "pan.loop.estimator_bandwidth\n"),
            std::string::npos)
      << saved.err;
  EXPECT_EQ(saved.err.find("for tilt"), std::string::npos) << saved.err;
  const auto json = read_json(saved.out);
  ASSERT_TRUE(json) << saved.out;
  const auto& row = json->at("rows").array().at(0);
  EXPECT_EQ(row.at("settle_needs").array().size(), 1u);
  const std::string best = bytes_of(folder.path("best.rig.yaml"));
  EXPECT_TRUE(best.starts_with("# the owlet of the foyer\n")) << best;
  EXPECT_NE(best.find("name: drawer motor"), std::string::npos) << best;
}

TEST(BatchFit, TheRigThatIsReadIsNotWrittenOver) {
  const Folder folder;
  const std::string text = sample_with("quick-newt", "rig: 1", "rig: 1");
  folder.write("newt.rig.yaml", text);
  folder.write("walk.csv", "0,0,0\n1,10,0\n");
  const std::string rig = folder.path("newt.rig.yaml"), same = folder.path("./newt.rig.yaml");
  for (const auto& arguments : {std::vector<std::string>{"fit", rig, "--save", same},
                                {"track", rig, "--path", folder.path("walk.csv"), "--save", same},
                                {"travel", rig, "--out", same},
                                {"sheet", rig, "--out", same}}) {
    const Ran ran = run_batch(arguments);
    EXPECT_EQ(ran.status, 2) << arguments[0];
    EXPECT_EQ(ran.out, "");
    EXPECT_NE(ran.err.find(" names the rig file itself: "), std::string::npos) << ran.err;
    EXPECT_EQ(bytes_of(rig), text) << arguments[0];
  }
}

TEST(BatchFit, TheTableOfNumbersHasARowForEachAndAsManyAsAskedFor) {
  const Ran ran = run_batch({"fit", kNewt, "--csv", "--most", "7"});
  ASSERT_EQ(ran.status, 0) << ran.err;
  const auto lines = lines_of(ran.out);
  ASSERT_EQ(lines.size(), 8u);
  EXPECT_EQ(fields_of(lines[0]).front(), "rank");
}

TEST(BatchFit, WithoutAnInputNamesIt) {
  const std::string text = sample_with("quick-newt", "pan_move: 40 deg, ", "");
  const Ran ran = run_batch({"fit", "-"}, text);
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_NE(ran.err.find("it needs task.pan_move"), std::string::npos) << ran.err;
}

/// One run tells all that two axes lack, each where it is to be written.
TEST(BatchFit, NamesAllThatIsMissingOfBothAxesWithItsPlace) {
  const Folder folder;
  folder.write("shy.rig.yaml", R"(rig: 1
title: shy
supply: {voltage: 24 V, current_limit: 10 A}
pan:
  drive: {control_rate: 8 kHz}
  friction:
    coulomb: 18 mN.m
    viscous: 1 mN.m.s/rad
tilt:
  friction: {coulomb: null}
on_tilt:
  - {name: camera, mass: 48 g, centre: [38 mm, 0 mm, 2 mm]}
task: {pan_move: 40 deg}
)");
  const std::string file = folder.path("shy.rig.yaml");
  const Ran ran = run_batch({"fit", file});
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  const auto says = [&](const std::string& text) {
    EXPECT_NE(ran.err.find(text), std::string::npos) << text << "\nin\n" << ran.err;
  };
  says(file +
       ":5:10: error: Current limit (pan.drive.current_limit) is missing\n"
       "  fix: add current_limit to pan.drive, in A, usually 5 A to 100 A\n");
  says(file + ":10:23: error: Coulomb friction (tilt.friction.coulomb) is missing\n");
  says(file + ":10:3: error: Current limit (tilt.drive.current_limit) is missing\n");
  says(file + ":13:7: error: Tilt move (task.tilt_move) is missing\n");
  says(file + ":1:1: error: on_pan is missing\n  fix: list its bodies, for example on_pan: [{");
  says(file +
       ":12:5: error: Moment of inertia (on_tilt[0].shape.inertia) is missing\n  fix: say its ");
  says(": warning: ");
  for (const char* path : {"pan.drive.current_limit", "tilt.drive.current_limit"})
    EXPECT_EQ(ran.err.find(path), ran.err.rfind(path, ran.err.find('\n'))) << path;
}

}  // namespace
}  // namespace gazewright::test
