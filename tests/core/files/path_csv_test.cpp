#include "core/files/path_csv.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/files/text_check.h"

namespace gazewright {
namespace {

std::string problem(const std::string& text) {
  const auto read = read_path_csv(text, "walk.csv");
  const auto* found = std::get_if<Diagnostic>(&read);
  return found == nullptr ? "" : to_text(*found);
}

TEST(PathCsv, ReadsSecondsAndDegreesWithOrWithoutAHeader) {
  for (const char* header : {"", "time_s,pan_deg,tilt_deg\r\n", "\xEF\xBB\xBFt,p,q\n\n"}) {
    const auto read =
        read_path_csv(std::string(header) + "0, -20, 0\r\n 1.5,25,4.25\n\n", "walk.csv");
    const auto* points = std::get_if<std::vector<PathPoint>>(&read);
    ASSERT_NE(points, nullptr) << header;
    ASSERT_EQ(points->size(), 2u);
    EXPECT_DOUBLE_EQ((*points)[1].time_s.value(), 1.5);
    EXPECT_DOUBLE_EQ((*points)[1].tilt_rad.value(), 4.25 * M_PI / 180);
    EXPECT_EQ((*points)[0].pan_rad.written, "-20 deg");
  }
}

TEST(PathCsv, SaysLineProblemAndMend) {
  const std::string fix =
      "\n  fix: write time in seconds, pan and tilt in degrees with commas between them: 0.5,-20,4";
  EXPECT_EQ(problem("0,1\n"), "walk.csv:1:1: error: the line does not hold three values" + fix);
  EXPECT_EQ(problem("t,p,q\n0,1,2\n1,2,nan\n"), "walk.csv:3:1: error: \"nan\" is no number" + fix);
  EXPECT_EQ(problem("0,1,2\n0,1,2\n"),
            "walk.csv:2:1: error: the time is not after that of the point before it\n"
            "  fix: sort the lines by their times");
  EXPECT_EQ(problem("t,p,q\n0,1,2\n"),
            "walk.csv:2:1: error: there are fewer than two points; nothing moves" + fix);
  EXPECT_NE(problem("0,99999,2\n"), "") << "beyond ten turns";
}

TEST(PathCsv, RefusesMorePointsThanARigHolds) {
  std::string text;
  for (std::size_t i = 0; i <= kMostPathPoints; ++i) text += std::to_string(i) + ",0,0\n";
  EXPECT_TRUE(problem(text).ends_with("fix: leave out every second line")) << problem(text);
}

TEST(PathCsv, RefusesAFileOfMoreThanAMebibyteAndReadsOneThatJustFits) {
  std::string text = "0,0,0\n1,0,0\n";
  text.resize(kLargestFile_bytes, '\n');
  EXPECT_EQ(problem(text), "");
  EXPECT_EQ(problem(text + '\n'),
            "walk.csv: error: the file is larger than 1 MiB\n  fix: leave out lines");
}

}  // namespace
}  // namespace gazewright
