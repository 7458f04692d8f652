#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "tests/batch/json_reader.h"
#include "tests/batch/program.h"

/// The verb `travel`: which poses can be reached.
namespace gazewright::test {
namespace {

TEST(BatchTravel, HasARowForEveryPose) {
  const auto lines = lines_of(run_batch({"travel", kNewt, "--step", "10deg"}).out);
  // Pan and tilt of -180 ... 180 and -90 ... 90 deg, widened to what stops and cable allow.
  ASSERT_GT(lines.size(), 37u * 19);
  EXPECT_EQ(lines[0], "pan_rad,tilt_rad,reach,limit");
  int reached = 0;
  for (std::size_t i = 1; i < lines.size(); ++i) {
    const auto row = fields_of(lines[i]);
    ASSERT_EQ(row.size(), 4u) << lines[i];
    EXPECT_EQ(row[2] == "1", row[3] == "none") << lines[i];
    reached += row[2] == "1" ? 1 : 0;
  }
  EXPECT_GT(reached, 0);
}

TEST(BatchTravel, EndsWhereTheFiguresSayThatTheTravelEnds) {
  const auto json = read_json(run_batch({"figures", "--json", kNewt}).out);
  ASSERT_TRUE(json);
  const auto value = [&](const char* id) { return json->at("figures").at(id).number(); };
  const double pan = value("pan.travel.usable") / 2, tilt = value("tilt.travel.usable") / 2;
  for (const std::string& line : lines_of(run_batch({"travel", kNewt, "--step", "5deg"}).out)) {
    const auto row = fields_of(line);
    if (row[0] == "pan_rad") continue;
    const bool inside = std::abs(std::stod(row[0])) <= pan && std::abs(std::stod(row[1])) <= tilt;
    EXPECT_EQ(row[2] == "1", inside) << line;
  }
}

TEST(BatchTravel, NamesTheKeepOut) {
  const std::string text =
      sample_with("quick-newt", "camera: {",
                  "keep_outs:\n  - {pan: [30 deg, 50 deg], tilt: [-5 deg, 15 deg]}\ncamera: {");
  std::map<std::string, int> count;
  for (const std::string& line : lines_of(run_batch({"travel", "-", "--step", "5deg"}, text).out))
    ++count[fields_of(line)[3]];
  // Poses 5 deg apart strictly inside: pan 35, 40, 45; tilt 0, 5, 10.
  EXPECT_EQ(count["keep-out"], 9);
}

TEST(BatchTravel, WritesTheSameIntoAFile) {
  const Folder folder;
  const std::string out = folder.path("reach.csv");
  const Ran ran = run_batch({"travel", kNewt, "--step", "15deg", "--out", out});
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(bytes_of(out), run_batch({"travel", kNewt, "--step", "15deg"}).out);
  EXPECT_EQ(run_batch({"travel", kNewt, "--out", folder.path("no/such/x.csv")}).status, 4);
}

TEST(BatchTravel, WithoutAnInputNamesIt) {
  const Ran ran =
      run_batch({"travel", "-"}, sample_with("quick-newt", "axis_at: [0 mm, 0 mm, 92 mm]", "x: 1"));
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_NE(ran.err.find("gazewright-batch: the rig cannot give its travel: it needs tilt.axis_at\n"
                         "  fix: add the missing values to the rig file\n"
                         "standard input:84:3: error: Tilt axis at (tilt.axis_at) is missing\n"
                         "  fix: say where the tilt axis is, for example axis_at: [0 mm, "),
            std::string::npos)
      << ran.err;
}

TEST(BatchTravel, RefusesAStepThatIsNone) {
  for (const std::string step :
       {"0deg", "-2deg", "31deg", "0.1deg", "soon", "", "nan deg", "2 mm"}) {
    const Ran ran = run_batch({"travel", kNewt, "--step", step});
    EXPECT_EQ(ran.status, 2) << step;
    EXPECT_EQ(ran.out, "") << step;
    EXPECT_TRUE(ran.err.starts_with("gazewright-batch: --step " + step + ": ")) << ran.err;
  }
}

}  // namespace
}  // namespace gazewright::test
