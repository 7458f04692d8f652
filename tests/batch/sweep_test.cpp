#include <gtest/gtest.h>

#include <cmath>

#include "tests/batch/json_reader.h"
#include "tests/batch/program.h"

/// The verb `sweep`: one axis against its gear ratio.
namespace gazewright::test {
namespace {

constexpr const char* kHeader =
    "ratio,shortest_time_s,settle_time_s,peak_torque_Nm,top_speed_rad_s,acceleration_rad_s2";

TEST(BatchSweep, RatiosAreAsAPersonWouldWriteThem) {
  const auto lines =
      lines_of(run_batch({"sweep", kNewt, "--axis", "pan", "--ratio", "4:4.5:0.1"}).out);
  ASSERT_EQ(lines.size(), 7u);
  EXPECT_EQ(lines[0], kHeader);
  const char* expected[] = {"4", "4.1", "4.2", "4.3", "4.4", "4.5"};
  for (std::size_t i = 0; i < 6; ++i) EXPECT_EQ(fields_of(lines[i + 1])[0], expected[i]);
}

TEST(BatchSweep, EndsBeforeTheLastWhereTheStepDoesNotMeetIt) {
  const auto lines = lines_of(run_batch({"sweep", kNewt, "--axis", "pan", "--ratio", "5:9:3"}).out);
  ASSERT_EQ(lines.size(), 3u);
  EXPECT_EQ(fields_of(lines[2])[0], "8");
  EXPECT_EQ(lines_of(run_batch({"sweep", kNewt, "--axis", "pan", "--ratio", "8:8:1"}).out).size(),
            2u);
}

TEST(BatchSweep, AtTheRigsOwnRatioAgreesWithTheFigures) {
  const auto json = read_json(run_batch({"figures", "--json", kNewt}).out);
  ASSERT_TRUE(json);
  const auto value = [&](const char* id) { return json->at("figures").at(id).number(); };
  const auto lines = lines_of(run_batch({"sweep", kNewt, "--axis", "pan", "--ratio", "8:8:1"}).out);
  ASSERT_EQ(lines.size(), 2u);
  const auto row = fields_of(lines[1]);
  EXPECT_EQ(std::stod(row[1]), value("pan.move.shortest_time"));
  EXPECT_NEAR(std::stod(row[2]), value("pan.step.settle_time"), 1e-9);
  EXPECT_EQ(std::stod(row[3]), value("pan.output.torque_stall"));
  EXPECT_EQ(std::stod(row[4]), value("pan.output.speed_top"));
  EXPECT_EQ(std::stod(row[5]), value("pan.output.acceleration_peak"));
}

TEST(BatchSweep, TorqueGrowsWithTheRatioAndSpeedFalls) {
  // Source: Kt = 8.27/KV per ampere of phase amplitude, definition of KV over line-to-line
  // amplitude; T = η·N·Kt·i, top speed m·V·KV/N or the drive's limit.
  const double kt_NmpA = std::sqrt(3) / 2 * 60 / (2 * M_PI * 300);
  const double limit_radps = 1250 * M_PI / 180;
  const auto lines =
      lines_of(run_batch({"sweep", kNewt, "--axis", "pan", "--ratio", "2:60:2"}).out);
  ASSERT_EQ(lines.size(), 31u);
  for (std::size_t i = 1; i < lines.size(); ++i) {
    const auto row = fields_of(lines[i]);
    const double ratio = std::stod(row[0]);
    EXPECT_NEAR(std::stod(row[3]), std::min(12.0, 0.94 * ratio * kt_NmpA * 14), 1e-9) << ratio;
    const double free_radps = 0.95 * 24 * 300 * M_PI / 30 / ratio;
    const double gear_radps = 8000 * M_PI / 30 / ratio;
    EXPECT_NEAR(std::stod(row[4]), std::min({limit_radps, free_radps, gear_radps}), 1e-9) << ratio;
  }
}

TEST(BatchSweep, AnAxisThatCannotMoveLeavesItsTimesEmpty) {
  const std::string text =
      sample_with("quick-newt", "friction: {coulomb: 18 mN.m", "friction: {coulomb: 50 N.m");
  const Ran ran = run_batch({"sweep", "-", "--axis", "pan", "--ratio", "4:6:1"}, text);
  EXPECT_EQ(ran.status, 0) << ran.err;
  const auto lines = lines_of(ran.out);
  ASSERT_EQ(lines.size(), 4u);
  for (std::size_t i = 1; i < 4; ++i) {
    const auto row = fields_of(lines[i]);
    EXPECT_EQ(row[1], "");
    EXPECT_EQ(row[2], "");
    EXPECT_LT(std::stod(row[5]), 0);
  }
}

TEST(BatchSweep, WithoutAnInputNamesIt) {
  const std::string text = sample_with("quick-newt", "    pole_pairs: 7\n", "");
  const Ran ran = run_batch({"sweep", "-", "--axis", "pan", "--ratio", "4:6:1"}, text);
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(ran.err,
            "gazewright-batch: the rig cannot give a sweep of pan: it needs pan.motor.pole_pairs\n"
            "  fix: add the missing values to the rig file\n"
            "standard input:23:5: error: Pole pairs (pan.motor.pole_pairs) is missing\n"
            "  fix: add pole_pairs to pan.motor, a number, usually 4 to 21\n");
}

}  // namespace
}  // namespace gazewright::test
