#include "core/shelf/fit.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cmath>
#include <numbers>

#include "core/analysis/analysis.h"
#include "tests/support/owl_rig.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

Rig newt() {
  return load_rig(GAZEWRIGHT_SOURCE_DIR "/sample-rigs/quick-newt.rig.yaml").rig.value();
}

/// The first of each kind, so that trying them all out takes little time.
Shelf small_shelf(std::size_t motors, std::size_t gearboxes) {
  const Shelf all = built_in_shelf();
  Shelf shelf;
  for (const auto& [kind, most] :
       {std::pair{PartKind::motor, motors}, std::pair{PartKind::gearbox, gearboxes}}) {
    const auto of_kind = all.of(kind);
    for (std::size_t i = 0; i < std::min(most, of_kind.size()); ++i)
      shelf.entries.push_back(all.entries[of_kind[i]]);
  }
  return shelf;
}

/// The rig with a row's parts, without the values that go with them.
Rig with_parts_of(const Rig& rig, const Shelf& shelf, FitRow row) {
  row.values.clear();
  return with_fit(rig, shelf, row);
}

TEST(Fit, CountsEveryCombinationOfBothAxes) {
  const Shelf shelf = small_shelf(3, 4);
  const Fits fits = rank_fits(newt(), shelf, {.most = 1000, .simulated = 0});
  EXPECT_EQ(fits.because, "");
  EXPECT_EQ(fits.combinations, 144u);
  EXPECT_EQ(fits.fitting + fits.failing + fits.lacking, 144u);
  EXPECT_EQ(fits.lacking, 0u);
  ASSERT_EQ(fits.rows.size(), 144u);
  std::size_t failing = 0;
  for (const std::size_t count : fits.failing_by) failing += count;
  EXPECT_EQ(failing, fits.failing);
  for (std::size_t i = 0; i < fits.rows.size(); ++i) {
    EXPECT_EQ(fits.rows[i].rank, i + 1);
    EXPECT_EQ(fits.rows[i].fits, i < fits.fitting);
    EXPECT_FALSE(fits.rows[i].reason.empty());
  }
}

// Every combination by itself, as analyse() has it, against the search: the load of each axis with
// the masses of both, and with it the time. No limit of speed cuts the move here.
TEST(Fit, TimesAreThoseOfAnAnalysisOfEachCombination) {
  Rig rig = newt();
  for (const Axis axis : kAxes) {
    rig.axis(axis).drive.speed_limit_radps = si_quantity(kInfinity);
    rig.axis(axis).loop.speed_limit_radps = si_quantity(1e4);
  }
  Shelf shelf = small_shelf(3, 3);
  for (ShelfEntry& entry : shelf.entries)
    if (auto* gearbox = std::get_if<Gearbox>(&entry.part.fields))
      gearbox->input_speed_limit_radps = si_quantity(kInfinity);
  const Fits fits = rank_fits(rig, shelf, {.most = 1000, .simulated = 0});
  ASSERT_EQ(fits.rows.size(), 81u);
  int compared = 0;
  for (const FitRow& row : fits.rows) {
    const Analysis analysis =
        analyse(with_parts_of(rig, shelf, row), {.remedies = false, .quick = true});
    for (const Axis axis : kAxes) {
      const auto shortest = analysis.value(std::string(name_of(axis)) + ".move.shortest_time");
      const double time_s = row.time_s[static_cast<std::size_t>(axis)];
      ASSERT_EQ(shortest.has_value(), std::isfinite(time_s)) << row.reason;
      if (!shortest) continue;
      // The ramps of a move are cut into steps by an error of 1e-6 of the move in each
      // (core/motion/rigid_move.cpp), and loads that differ in their last digits may be cut
      // otherwise.
      EXPECT_NEAR(time_s, *shortest, tol(1e-6) * *shortest) << row.reason;
      ++compared;
    }
  }
  EXPECT_GT(compared, 140);
}

TEST(Fit, TheOrderIsThatOfTheTimesAmongThoseThatFit) {
  const Shelf shelf = small_shelf(10, 10);
  const Fits fits = rank_fits(newt(), shelf, {.most = 200, .simulated = 0});
  ASSERT_GT(fits.fitting, 5u);
  const auto slower_ms = [](const FitRow& row) {
    return std::llround(1000 * std::max(row.time_s[0], row.time_s[1]));
  };
  for (std::size_t i = 1; i < std::min(fits.fitting, fits.rows.size()); ++i)
    EXPECT_LE(slower_ms(fits.rows[i - 1]), slower_ms(fits.rows[i]));
}

TEST(Fit, TheAnswerIsTheSameOnOneThreadAndOnThree) {
  const Shelf shelf = small_shelf(5, 5);
  const Fits one = rank_fits(newt(), shelf, {.most = 50, .simulated = 0, .threads = 1});
  const Fits three = rank_fits(newt(), shelf, {.most = 50, .simulated = 0, .threads = 3});
  ASSERT_EQ(one.rows.size(), three.rows.size());
  for (std::size_t i = 0; i < one.rows.size(); ++i) {
    EXPECT_EQ(one.rows[i].parts, three.rows[i].parts) << i;
    EXPECT_EQ(one.rows[i].reason, three.rows[i].reason) << i;
  }
}

TEST(Fit, TheBestAreSimulatedInFullWithTheirGains) {
  const Rig rig = newt();
  const Shelf shelf = small_shelf(10, 10);
  const Fits fits = rank_fits(rig, shelf, {.most = 12, .simulated = 5});
  ASSERT_GE(fits.rows.size(), 5u);
  for (std::size_t i = 0; i < 5; ++i) {
    const FitRow& row = fits.rows[i];
    ASSERT_TRUE(row.simulated);
    EXPECT_EQ(row.rank, i + 1);  // numbered as they stand
    const Analysis analysis = analyse(with_fit(rig, shelf, row), {.remedies = false});
    for (const Axis axis : kAxes)
      EXPECT_EQ(row.simulated->settle_s[static_cast<std::size_t>(axis)],
                analysis.value(std::string(name_of(axis)) + ".step.settle_time"));
    const auto fails = std::ranges::count(analysis.findings, Verdict::fails, &Finding::verdict);
    EXPECT_EQ(row.simulated->fails, fails);
    for (const Finding& finding : analysis.findings) {
      const bool is_held =
          finding.id.ends_with("gearbox.peak") || finding.id.ends_with("gearbox.input_speed");
      EXPECT_FALSE(is_held && finding.verdict == Verdict::fails) << finding.because << row.reason;
    }
    if (i == 0) continue;
    EXPECT_LE(fits.rows[i - 1].simulated->slower_s().value_or(kInfinity),
              row.simulated->slower_s().value_or(kInfinity));
  }
  EXPECT_FALSE(fits.rows[5].simulated);
  EXPECT_EQ(fits.compared, 10u);
  EXPECT_LE(fits.same_order, fits.compared);
}

// The closed forms leave the loops out, so the order need not be that of the simulation. Over all
// combinations of a small shelf it mostly is.
TEST(Fit, TheOrderMostlyAgreesWithTheSimulation) {
  const Shelf shelf = small_shelf(4, 4);
  const Fits fits = rank_fits(newt(), shelf, {.most = 12, .simulated = 12});
  ASSERT_EQ(fits.compared, 66u);
  const double share = static_cast<double>(fits.same_order) / static_cast<double>(fits.compared);
  RecordProperty("same_order_percent", static_cast<int>(100 * share));
  EXPECT_GT(share, 0.6);
}

TEST(Fit, AMissingValueNamesThePartAndIsNeverRanked) {
  Shelf shelf = small_shelf(3, 3);
  std::get<Motor>(shelf.entries[1].part.fields).rotor_inertia_kgm2 = {};
  std::get<Gearbox>(shelf.entries[3].part.fields).mass_kg = {};
  const Fits fits = rank_fits(newt(), shelf, {.most = 100, .simulated = 0});
  // 2 of 3 motors with 2 of 3 gearboxes are whole on each axis.
  EXPECT_EQ(fits.combinations, 81u);
  EXPECT_EQ(fits.lacking, 81u - 16u);
  EXPECT_EQ(fits.rows.size(), 16u);
  for (const FitRow& row : fits.rows)
    for (const FitParts& parts : row.parts) {
      EXPECT_NE(parts.motor, 1u);
      EXPECT_NE(parts.gearbox, 3u);
    }
  ASSERT_EQ(fits.needs.size(), 2u);
  EXPECT_EQ(fits.needs[0].entry, 1u);
  EXPECT_EQ(fits.needs[0].fields, std::vector<std::string>{"motor.rotor_inertia"});
  EXPECT_EQ(fits.needs[1].fields, std::vector<std::string>{"gearbox.mass"});
}

TEST(Fit, WhatOneMeasureLacksIsSaidInTheReason) {
  Shelf shelf = small_shelf(1, 1);
  std::get<Motor>(shelf.entries[0].part.fields).thermal_resistance_KpW = {};
  const Fits fits = rank_fits(newt(), shelf, {.simulated = 0});
  ASSERT_EQ(fits.rows.size(), 1u);
  EXPECT_NE(fits.rows[0].reason.find("needs pan.motor.thermal_resistance"), std::string::npos)
      << fits.rows[0].reason;
}

TEST(Fit, WhatTheRigLacksIsAReasonAndNoAnswer) {
  Rig rig = newt();
  rig.task.pan_move_rad = {};
  const Fits fits = rank_fits(rig, small_shelf(2, 2));
  EXPECT_EQ(fits.because, "needs task.pan_move");
  EXPECT_TRUE(fits.rows.empty());
  EXPECT_EQ(rank_fits(newt(), small_shelf(2, 0)).because, "needs a gearbox on the shelf");
}

TEST(Fit, AllThatIsMissingOfBothAxesIsNamedAtOnce) {
  Rig rig = newt();
  rig.pan.drive.current_limit_A = {};
  rig.tilt.drive.current_limit_A = {};
  rig.tilt.friction.coulomb_Nm = {};
  rig.task.tilt_move_rad = {};
  rig.tilt.loop.estimator_bandwidth_Hz = {};
  rig.tilt.loop.speed_gain_Nmsprad = {};  // an advised gain takes its place
  rig.camera.columns = {};
  const Fits fits = rank_fits(rig, small_shelf(2, 2));
  EXPECT_EQ(fits.missing,
            (std::vector<std::string>{"pan.drive.current_limit", "tilt.drive.current_limit",
                                      "tilt.friction.coulomb", "task.tilt_move"}));
  EXPECT_EQ(fits.because,
            "needs pan.drive.current_limit, tilt.drive.current_limit, tilt.friction.coulomb, "
            "task.tilt_move");
  EXPECT_EQ(fits.also_missing,
            (std::vector<std::string>{"camera.columns", "tilt.loop.estimator_bandwidth"}));
  EXPECT_EQ(rank_fits(newt(), small_shelf(0, 0)).because,
            "needs a motor on the shelf, a gearbox on the shelf");
  const Fits whole = rank_fits(newt(), small_shelf(1, 1), {.simulated = 0});
  EXPECT_TRUE(whole.missing.empty());
  EXPECT_TRUE(whole.also_missing.empty()) << whole.also_missing.front();
}

TEST(Fit, ARigWithoutMotorsOfItsOwnIsFittedAllTheSame) {
  Rig rig = newt();
  for (const Axis axis : kAxes) rig.axis(axis).motor = {}, rig.axis(axis).gearbox = {};
  const Fits fits = rank_fits(rig, small_shelf(2, 2), {.simulated = 0});
  EXPECT_EQ(fits.because, "");
  EXPECT_EQ(fits.rows.size(), 16u);
}

TEST(Fit, WithDrivesEveryDriveIsTriedToo) {
  Shelf shelf = small_shelf(2, 2);
  const Shelf all = built_in_shelf();
  for (const std::size_t drive : all.of(PartKind::drive))
    shelf.entries.push_back(all.entries[drive]);
  const Fits fits = rank_fits(newt(), shelf, {.drives = true, .most = 3, .simulated = 0});
  EXPECT_EQ(fits.combinations, 16u * 16u);
  EXPECT_TRUE(fits.rows.at(0).parts[0].drive.has_value());
}

TEST(Fit, HeavierTiltMotorsMakePanSlower) {
  const Rig rig = newt();
  const Shelf all = built_in_shelf();
  Shelf shelf;
  for (const char* name :
       {"generic 28 mm outrunner, 900", "generic 86 mm", "generic 42 mm planetary, 7"})
    for (const ShelfEntry& entry : all.entries)
      if (entry.part.name.starts_with(name)) shelf.entries.push_back(entry);
  ASSERT_EQ(shelf.entries.size(), 3u);
  const Fits fits = rank_fits(rig, shelf, {.most = 10, .simulated = 0});
  const auto pan_time = [&](std::size_t pan_motor, std::size_t tilt_motor) {
    for (const FitRow& row : fits.rows)
      if (row.parts[0].motor == pan_motor && row.parts[1].motor == tilt_motor) return row.time_s[0];
    return -1.0;
  };
  EXPECT_GT(pan_time(0, 1), pan_time(0, 0) * 1.01);
  // Without a body that stands for the motor nothing carries it, and the answer says so.
  Rig unnamed = rig;
  for (Body& body : unnamed.on_pan) body.name = "part";
  const Fits uncounted = rank_fits(unnamed, shelf, {.most = 10, .simulated = 0});
  EXPECT_EQ(uncounted.remarks.at(0),
            "no body is called “tilt motor”: its mass does not count on pan");
}

TEST(Fit, ASettlingThatIsNotKnownIsNotOneThatNeverComes) {
  Rig rig = newt();
  rig.pan.loop.estimator_bandwidth_Hz = {};
  const Fits fits = rank_fits(rig, small_shelf(2, 2), {.most = 4, .simulated = 3});
  ASSERT_TRUE(fits.rows.at(0).simulated);
  const FitSimulated& simulated = *fits.rows[0].simulated;
  EXPECT_EQ(simulated.settle_needs, std::vector<std::string>{"pan.loop.estimator_bandwidth"});
  EXPECT_FALSE(simulated.slower_s());
  EXPECT_EQ(simulated.no_gains[0], "needs pan.loop.estimator_bandwidth");
  EXPECT_EQ(simulated.no_gains[1], "");
  EXPECT_EQ(fits.compared, 0u);  // an order of what is not known says nothing

  const Fits known = rank_fits(newt(), small_shelf(2, 2), {.most = 4, .simulated = 1});
  EXPECT_TRUE(known.rows.at(0).simulated->settle_needs.empty());
}

TEST(Fit, ASpeedHeldToTheGearboxsLimitDoesNotFailIt) {
  Rig rig = newt();
  for (const Axis axis : kAxes) {
    rig.axis(axis).drive.speed_limit_radps = si_quantity(kInfinity);
    rig.axis(axis).loop.speed_limit_radps = si_quantity(1e4);
  }
  Shelf shelf = small_shelf(1, 1);
  auto& gearbox = std::get<Gearbox>(shelf.entries[1].part.fields);
  int held = 0;
  for (int limit_rpm = 500; limit_rpm < 3000; limit_rpm += 20) {
    gearbox.input_speed_limit_radps = si_quantity(limit_rpm * std::numbers::pi / 30);
    const Fits fits = rank_fits(rig, shelf, {.most = 1, .simulated = 0});
    ASSERT_EQ(fits.rows.size(), 1u);
    const Analysis analysis =
        analyse(with_fit(rig, shelf, fits.rows[0]), {.remedies = false, .quick = true});
    for (const Finding& finding : analysis.findings) {
      if (!finding.id.ends_with("gearbox.input_speed")) continue;
      held += finding.demand > 0.99 * *finding.capacity;
      EXPECT_NE(finding.verdict, Verdict::fails) << limit_rpm << ' ' << *finding.margin;
      EXPECT_GE(*finding.margin, 0) << limit_rpm;
    }
  }
  EXPECT_GT(held, 40);
}

TEST(Fit, CancelEndsItSoonAndTellsSo) {
  std::stop_source stop;
  std::atomic<int> calls = 0;
  std::chrono::steady_clock::time_point stopped;
  const auto progress = [&](std::size_t done, std::size_t all) {
    EXPECT_LE(done, all);
    if (calls++ == 2) {
      stopped = std::chrono::steady_clock::now();
      stop.request_stop();
    }
  };
  const Fits fits = rank_fits(newt(), small_shelf(10, 10), {}, progress, stop.get_token());
  const auto waited = std::chrono::steady_clock::now() - stopped;
  EXPECT_TRUE(fits.is_stopped);
  EXPECT_LT(fits.fitting + fits.failing, fits.combinations - fits.lacking);
  EXPECT_LT(calls, 8);
  EXPECT_LT(std::chrono::duration<double>(waited).count(), 1.0);
}

}  // namespace
}  // namespace gazewright
