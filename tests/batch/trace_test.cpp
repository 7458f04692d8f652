#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>

#include "tests/batch/json_reader.h"
#include "tests/batch/program.h"

/// The verb `trace`: the step response as CSV.
namespace gazewright::test {
namespace {

constexpr const char* kHeader = "time_s,angle_rad,speed_rad_s,motor_angle_rad,current_A,bus_A";

using Rows = std::vector<std::vector<double>>;
Rows rows_of(const std::string& csv) {
  Rows rows;
  const auto lines = lines_of(csv);
  EXPECT_FALSE(lines.empty());
  if (lines.empty()) return rows;
  EXPECT_EQ(lines[0], kHeader);
  for (std::size_t i = 1; i < lines.size(); ++i) {
    rows.emplace_back();
    for (const std::string& field : fields_of(lines[i]))
      rows.back().push_back(std::strtod(field.c_str(), nullptr));
    EXPECT_EQ(rows.back().size(), 6u);
  }
  return rows;
}

double figure(const std::string& rig, const std::string& id) {
  const auto json = read_json(run_batch({"figures", "--json", rig}).out);
  return json ? json->at("figures").at(id).number() : NAN;
}

TEST(BatchTrace, HasARowPerControlSampleFromRest) {
  const Ran ran = run_batch({"trace", kNewt, "--axis", "pan"});
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_EQ(ran.err, "");
  const Rows rows = rows_of(ran.out);
  ASSERT_EQ(rows.size(), 4801u) << "0.6 s at 8 kHz, both ends";
  for (std::size_t i = 0; i < rows.size(); ++i) EXPECT_NEAR(rows[i][0], double(i) / 8000, 1e-12);
  for (std::size_t column = 1; column < 6; ++column) EXPECT_EQ(rows[0][column], 0);
}

TEST(BatchTrace, EndsAtTheTaskMoveAndAgreesWithTheFigures) {
  for (const std::string axis : {"pan", "tilt"}) {
    const Rows rows = rows_of(run_batch({"trace", kNewt, "--axis", axis}).out);
    const double move = (axis == "pan" ? 40 : 25) * M_PI / 180;
    // 4 px of 1280 columns over 70°: pinhole camera.
    const double band = 4 / (640 / std::tan(35 * M_PI / 180));
    double settled = 0, peak_current = 0, peak_speed = 0;
    for (const auto& row : rows) {
      if (std::abs(row[1] - move) > band) settled = row[0];
      peak_current = std::max(peak_current, std::abs(row[4]));
      peak_speed = std::max(peak_speed, std::abs(row[2]));
    }
    EXPECT_NEAR(rows.back()[1], move, band);
    EXPECT_NEAR(figure(kNewt, axis + ".step.settle_time"), settled, 1.01 / 8000) << "one sample";
    EXPECT_DOUBLE_EQ(figure(kNewt, axis + ".step.peak_current"), peak_current);
    EXPECT_DOUBLE_EQ(figure(kNewt, axis + ".step.peak_speed"), peak_speed);
  }
}

TEST(BatchTrace, KeepsToTheCurrentLimitAndTheRatio) {
  const Rows rows = rows_of(run_batch({"trace", kNewt, "--axis", "pan"}).out);
  const double half_gap = 4.5 / 60 * M_PI / 180, ratio = 8;
  for (const auto& row : rows) {
    EXPECT_LE(std::abs(row[4]), 14 + 1e-9) << "drive.current_limit at " << row[0] << " s";
    // The largest torque that can wind the gear, its peak of 12 N·m over 750 N·m/rad.
    EXPECT_LE(std::abs(row[3] / ratio - row[1]), half_gap + 12.0 / 750) << row[0];
  }
}

TEST(BatchTrace, TakesTheTimeAsSecondsOrWithItsUnit) {
  const std::string seconds = run_batch({"trace", kNewt, "--axis", "tilt", "--for", "0.05"}).out;
  EXPECT_EQ(lines_of(seconds).size(), 402u);
  EXPECT_EQ(run_batch({"trace", kNewt, "--axis", "tilt", "--for", "50 ms"}).out, seconds);
  EXPECT_EQ(run_batch({"trace", kNewt, "--axis", "tilt", "--for", "5e-2 s"}).out, seconds);
}

TEST(BatchTrace, FollowsAPlannedMoveAndAgreesWithTheFiguresOfItsProfile) {
  const std::string step = run_batch({"trace", kNewt, "--axis", "pan"}).out;
  EXPECT_EQ(run_batch({"trace", kNewt, "--axis", "pan", "--profile", "step"}).out, step);
  for (const std::string word : {"trapezoid", "jerk-limited", "minimum-jerk", "minimum-time"}) {
    const Ran ran = run_batch({"trace", kNewt, "--axis", "pan", "--profile", word});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const Rows rows = rows_of(ran.out);
    ASSERT_EQ(rows.size(), 4801u) << word;
    const double band = 4 / (640 / std::tan(35 * M_PI / 180));
    double settled = 0, peak_current = 0;
    for (const auto& row : rows) {
      if (std::abs(row[1] - 40 * M_PI / 180) > band) settled = row[0];
      peak_current = std::max(peak_current, std::abs(row[4]));
    }
    std::string id = "pan.profile." + word;
    std::ranges::replace(id, '-', '_');
    EXPECT_NEAR(figure(kNewt, id + ".settle_time"), settled, 1.01 / 8000) << word;
    EXPECT_DOUBLE_EQ(figure(kNewt, id + ".peak_current"), peak_current) << word;
    const std::string brief =
        run_batch({"trace", kNewt, "--axis", "pan", "--profile", word, "--for", "20 ms"}).out;
    EXPECT_EQ(lines_of(brief).size(), 162u) << word;
    EXPECT_EQ(ran.out.substr(0, brief.size()), brief) << word << ": the same, cut off";
    const auto longer = rows_of(
        run_batch({"trace", kNewt, "--axis", "pan", "--profile", word, "--for", "1.5"}).out);
    ASSERT_EQ(longer.size(), 12001u) << word;
    EXPECT_NEAR(longer.back()[1], 40 * M_PI / 180, band) << word << ": held at the target";
  }
}

TEST(BatchTrace, SaysWhichProfilesThereAreAndThatTheyAreForOneAxis) {
  EXPECT_EQ(run_batch({"trace", kNewt, "--axis", "pan", "--profile", "quick"}).err,
            "gazewright-batch: there is no profile \"quick\"\n  fix: the profiles are step, "
            "trapezoid, jerk-limited, minimum-jerk, minimum-time\n");
  const Ran both = run_batch({"trace", kNewt, "--both", "--profile", "trapezoid"});
  EXPECT_EQ(both.status, 2);
  EXPECT_EQ(
      both.err,
      "gazewright-batch: --profile belongs to a trace of one axis\n  fix: give --axis instead "
      "of --both\n");
}

TEST(BatchTrace, AnAxisThatCannotMoveHasNoPlan) {
  const std::string text =
      sample_with("quick-newt", "friction: {coulomb: 18 mN.m", "friction: {coulomb: 50 N.m");
  const Ran ran = run_batch({"trace", "-", "--axis", "pan", "--profile", "minimum-time"}, text);
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_NE(ran.err.find("pan has no minimum-time move: torque below friction"), std::string::npos)
      << ran.err;
}

/// The columns of a trace by their names.
std::map<std::string, std::vector<double>> columns_of(const std::string& csv) {
  std::map<std::string, std::vector<double>> columns;
  const auto lines = lines_of(csv);
  const auto names = fields_of(lines.at(0));
  for (std::size_t i = 1; i < lines.size(); ++i) {
    const auto fields = fields_of(lines[i]);
    for (std::size_t k = 0; k < names.size(); ++k)
      columns[names[k]].push_back(std::strtod(fields.at(k).c_str(), nullptr));
  }
  return columns;
}

TEST(BatchTrace, OfBothAxesHasTheColumnsOfEachAndTheSumOfTheSupply) {
  const Ran ran = run_batch({"trace", kNewt, "--both"});
  EXPECT_EQ(ran.status, 0) << ran.err;
  EXPECT_EQ(lines_of(ran.out)[0],
            "time_s,pan_angle_rad,pan_speed_rad_s,pan_motor_angle_rad,pan_current_A,"
            "tilt_angle_rad,tilt_speed_rad_s,tilt_motor_angle_rad,tilt_current_A,bus_A");
  const auto columns = columns_of(ran.out);
  ASSERT_EQ(columns.at("bus_A").size(), 4801u);
  const double band = 4 / (640 / std::tan(35 * M_PI / 180));
  EXPECT_NEAR(columns.at("pan_angle_rad").back(), 40 * M_PI / 180, band);
  EXPECT_NEAR(columns.at("tilt_angle_rad").back(), 25 * M_PI / 180, band);
  EXPECT_DOUBLE_EQ(figure(kNewt, "both.peak_bus_current"), std::ranges::max(columns.at("bus_A")));
}

TEST(BatchTrace, OfBothAxesWithOneThatHoldsShowsItsDisturbance) {
  const auto columns = columns_of(run_batch({"trace", kNewt, "--both", "--hold", "tilt"}).out);
  double most = 0;
  for (const double angle : columns.at("tilt_angle_rad")) most = std::max(most, std::abs(angle));
  EXPECT_GT(most, 0);
  EXPECT_DOUBLE_EQ(figure(kNewt, "tilt.coupling.disturbance"), most);
  EXPECT_GT(columns.at("pan_angle_rad").back(), 0.6);
}

TEST(BatchTrace, OfBothAxesAndOneAxisExcludeEachOther) {
  EXPECT_EQ(run_batch({"trace", kNewt, "--both", "--axis", "pan"}).err,
            "gazewright-batch: --axis and --both exclude each other\n  fix: give one of the two\n");
  EXPECT_EQ(run_batch({"trace", kNewt, "--axis", "pan", "--hold", "tilt"}).err,
            "gazewright-batch: --hold belongs to a trace of both axes\n  fix: add --both\n");
}

TEST(BatchTrace, WithoutAnInputNamesItAndPrintsNothing) {
  const std::string text = sample_with("quick-newt", "    stiffness: 750 N.m/rad\n", "");
  const Ran ran = run_batch({"trace", "-", "--axis", "pan"}, text);
  EXPECT_EQ(ran.status, 3);
  EXPECT_EQ(ran.out, "");
  EXPECT_EQ(ran.err,
            "gazewright-batch: the rig cannot give a trace of pan: it needs pan.gearbox.stiffness\n"
            "  fix: add the missing values to the rig file\n"
            "standard input:40:5: error: Torsional stiffness (pan.gearbox.stiffness) is missing\n"
            "  fix: add stiffness to pan.gearbox, in N.m/rad, usually 100 N.m/rad to 5000 "
            "N.m/rad\n");
  EXPECT_EQ(run_batch({"trace", "-", "--axis", "tilt"}, text).status, 0) << "tilt lacks nothing";
}

TEST(BatchTrace, OfBothNamesWhatBothLack) {
  const std::string text =
      "rig: 1\ntask: {pan_move: 40 deg, tilt_move: 20 deg}\npan: {drive: {current_limit: 14 A}}\n";
  const Ran ran = run_batch({"trace", "-", "--both"}, text);
  EXPECT_EQ(ran.status, 3);
  EXPECT_NE(ran.err.find("the rig cannot give a trace of pan and tilt: it needs "),
            std::string::npos)
      << ran.err;
  EXPECT_NE(ran.err.find("3:6: error: Pole pairs (pan.motor.pole_pairs) is missing\n"),
            std::string::npos)
      << ran.err;
  EXPECT_NE(ran.err.find("1:1: error: Pole pairs (tilt.motor.pole_pairs) is missing\n"),
            std::string::npos)
      << ran.err;
}

TEST(BatchTrace, AnAxisThatCannotMoveIsAnAnswer) {
  const std::string text =
      sample_with("quick-newt", "friction: {coulomb: 18 mN.m", "friction: {coulomb: 50 N.m");
  const Ran ran = run_batch({"trace", "-", "--axis", "pan"}, text);
  EXPECT_EQ(ran.status, 0) << ran.err;
  const Rows rows = rows_of(ran.out);
  ASSERT_EQ(rows.size(), 4801u);
  EXPECT_LT(std::abs(rows.back()[1]), 0.1 * 40 * M_PI / 180);
}

}  // namespace
}  // namespace gazewright::test
