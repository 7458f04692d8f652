#include <gtest/gtest.h>

#include <cmath>

#include "tests/batch/program.h"

/// The verb `track`: the target in the picture over time.
namespace gazewright::test {
namespace {

TEST(BatchTrack, HasFourColumnsForEachDetectorAndARowForEveryStep) {
  const auto lines = lines_of(run_batch({"track", kNewt}).out);
  ASSERT_GT(lines.size(), 500u);
  EXPECT_EQ(lines[0],
            "time_s,target_pan_rad,target_tilt_rad,pan_rad_1,tilt_rad_1,pan_error_px_1,"
            "tilt_error_px_1,pan_rad_2,tilt_rad_2,pan_error_px_2,tilt_error_px_2");
  for (const std::string& line : lines) EXPECT_EQ(fields_of(line).size(), 11u) << line;
  // It begins where the target is.
  const auto first = fields_of(lines[1]);
  EXPECT_EQ(first[1], first[3]);
  EXPECT_EQ(first[5], "0");
}

TEST(BatchTrack, PutsAPathFromCsvIntoTheRig) {
  const Folder folder;
  const std::string csv = folder.write("walk.csv", "time_s,pan_deg,tilt_deg\n0,-20,0\n2,20,5\n");
  const std::string saved = folder.path("walk.rig.yaml");
  const Ran ran = run_batch({"track", kNewt, "--path", csv, "--save", saved});
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_EQ(run_batch({"track", saved}).out, ran.out);
  const auto last = fields_of(lines_of(ran.out).back());
  EXPECT_NEAR(std::stod(last[0]), 2, 1e-9);
  EXPECT_NEAR(std::stod(last[1]), 20 * M_PI / 180, 1e-9);
}

TEST(BatchTrack, SaysWhatIsWrongWithAPath) {
  const Folder folder;
  const Ran missing = run_batch({"track", kNewt, "--path", folder.path("none.csv")});
  EXPECT_EQ(missing.status, 3);
  EXPECT_EQ(missing.out, "");
  EXPECT_NE(missing.err.find("none.csv cannot be read"), std::string::npos) << missing.err;
  const std::string bad = folder.write("bad.csv", "0,1,2\n1,x,2\n");
  const Ran ran = run_batch({"track", kNewt, "--path", bad});
  EXPECT_EQ(ran.status, 3);
  EXPECT_NE(ran.err.find("bad.csv:2:1: error: \"x\" is no number"), std::string::npos) << ran.err;
}

TEST(BatchTrack, NamesWhatTheRigLacks) {
  const Folder folder;
  const std::string rig = folder.write("bare.rig.yaml", "rig: 1\ntitle: bare\n");
  const Ran ran = run_batch({"track", rig});
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_NE(ran.err.find("it needs camera.columns"), std::string::npos) << ran.err;
}

}  // namespace
}  // namespace gazewright::test
