#include <gtest/gtest.h>

#include <algorithm>
#include <chrono>
#include <cmath>

#include "core/analysis/analysis.h"
#include "core/rig/fields.h"
#include "core/units/angle.h"
#include "tests/support/finding.h"
#include "tests/support/owl_rig.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::finding;

constexpr AnalyseOptions kQuick{.remedies = false};

Analysis of(const std::string& tracking) {
  return analyse(tests::rig_of(tests::kOwl + tracking), kQuick);
}
double value(const Analysis& analysis, const char* id) {
  return analysis.value(id).value_or(std::nan(""));
}
TEST(Tracking, APlainRigFollowsAWalkWithItsCamerasOwnPictures) {
  const Analysis analysis = analyse(tests::owl(), kQuick);
  EXPECT_EQ(analysis.tracking.because, "");
  ASSERT_EQ(analysis.tracking.detectors.size(), 1u);
  // 45 ms, half of 1/60 s and the speed loop's lag.
  const double dead_s = 45e-3 + 0.5 / 60 + 1 / value(analysis, "pan.loop.crossover");
  EXPECT_NEAR(value(analysis, "pan.tracking.dead_time"), dead_s, tol(1e-12));
  EXPECT_NEAR(value(analysis, "pan.tracking.gain"), 0.5 / dead_s, tol(1e-9));
  EXPECT_NEAR(value(analysis, "pan.tracking.gain_ceiling"), M_PI / 4 / dead_s, tol(1e-9));
  EXPECT_NEAR(value(analysis, "pan.tracking.target_speed"), 1.4 / 2.5, tol(1e-12));
  EXPECT_NEAR(value(analysis, "pan.tracking.ramp_lag"), 1.4 / 2.5 * dead_s / 0.5, tol(1e-9));
  // The walk is slower than its peak but for a moment: the error stays below the lag of the ramp.
  const double lag = value(analysis, "pan.tracking.ramp_lag");
  EXPECT_LT(value(analysis, "pan.tracking.error_rms"), lag);
  EXPECT_GT(value(analysis, "pan.tracking.error_rms"), 0.4 * lag);
  EXPECT_EQ(value(analysis, "tilt.tracking.error_rms"), 0);
  EXPECT_EQ(value(analysis, "tracking.in_middle"), 1);
  EXPECT_EQ(value(analysis, "tracking.skew_px"), 0);
  EXPECT_TRUE(analysis.figure("tracking.best_detector")->is_aside);
  EXPECT_EQ(finding(analysis, "pan.tracking.in_picture")->verdict, Verdict::holds);
  EXPECT_EQ(finding(analysis, "pan.tracking.gain")->verdict, Verdict::holds);
}

TEST(Tracking, SpeedFedForwardTakesMostOfTheErrorAway) {
  const Analysis analysis = of("tracking: {feed_forward: 1}\n");
  const double fed = value(analysis, "pan.tracking.error_rms_fed");
  EXPECT_LT(fed, 0.35 * value(analysis, "pan.tracking.error_rms_unfed"));
  EXPECT_EQ(fed, value(analysis, "pan.tracking.error_rms"));
  EXPECT_EQ(value(analysis, "pan.tracking.ramp_lag"), 0);
}

TEST(Tracking, ActingOnTheAngleTakesThePositionGainAndStaysBehindByTheDelay) {
  const Analysis analysis = of("tracking: {acts_on: angle}\n");
  EXPECT_EQ(value(analysis, "pan.tracking.gain"), 30);
  EXPECT_NEAR(value(analysis, "pan.tracking.ramp_lag"), 1.4 / 2.5 * (1.0 / 30 + 45e-3 + 0.5 / 60),
              tol(1e-12));
}

TEST(Tracking, ComparesDetectors) {
  const Analysis analysis =
      of("tracking: {target: sine, amplitude: 15 deg, frequency: 0.5 Hz}\n"
         "detectors:\n"
         "  - {name: slow, frame_rate: 10 Hz, delay: 150 ms, noise: 1}\n"
         "  - {name: fast, frame_rate: 60 Hz, delay: 20 ms, noise: 6, drop_outs: 0.1}\n");
  const auto& detectors = analysis.tracking.detectors;
  ASSERT_EQ(detectors.size(), 2u);
  EXPECT_EQ(detectors[1].name, "fast");
  EXPECT_LT(detectors[1].rms_px, 0.5 * detectors[0].rms_px);
  EXPECT_GT(detectors[1].in_middle, detectors[0].in_middle);
  EXPECT_EQ(value(analysis, "tracking.best_detector"), 2);
}

TEST(Tracking, FailsWhereTheGainIsAboveItsCeilingAndOffersALowerOne) {
  const Analysis analysis =
      analyse(tests::rig_of(std::string(tests::kOwl) + "tracking: {gain: 40 1/s}\n"));
  const Finding* found = finding(analysis, "pan.tracking.gain");
  EXPECT_EQ(found->verdict, Verdict::fails);
  ASSERT_FALSE(found->remedies.empty());
  EXPECT_EQ(found->remedies.front().path, "tracking.gain");
}

TEST(Tracking, LosesATargetThatJumpsOutOfThePicture) {
  const Analysis analysis = of("tracking: {target: jump, jump: 40 deg}\n");
  // 40° up is beyond half of the picture's height, 18.7°; across it would just fit at that tilt.
  EXPECT_EQ(finding(analysis, "tilt.tracking.in_picture")->verdict, Verdict::fails);
  EXPECT_TRUE(analysis.figure("pan.tracking.ramp_lag")->is_aside);
}

TEST(Tracking, StaysWithinTheSoftLimitsAndSaysForHowLongTheyHoldIt) {
  Rig rig = tests::owl();
  const Analysis wide = analyse(rig, kQuick);
  EXPECT_EQ(value(wide, "pan.tracking.at_limit"), 0);
  // The walk comes and goes at 60° of pan; the stops are at 160°, so this leaves 40° each way.
  rig.pan.stops.soft_inset_rad = si_quantity(120 * kDegree_rad);
  const Analysis narrow = analyse(rig, kQuick);
  const double end = *narrow.of(Axis::pan).travel.soft_rad / 2;
  const auto& angle = narrow.tracking.detectors.front().angle_rad[0];
  EXPECT_EQ(std::ranges::max(angle), end);
  EXPECT_EQ(std::ranges::min(angle), -end);
  // Beyond it for 2·(tan 60° − tan(end))·d/v of the 2·tan 60°·d/v of the walk.
  const double beyond = 1 - std::tan(end) / std::tan(60 * kDegree_rad);
  EXPECT_NEAR(value(narrow, "pan.tracking.at_limit"), beyond, tol(0.04)) << "a lag late";
  EXPECT_EQ(value(narrow, "tilt.tracking.at_limit"), 0);
  EXPECT_NE(finding(narrow, "pan.tracking.in_picture")->because.find("holds the axis for"),
            std::string::npos)
      << finding(narrow, "pan.tracking.in_picture")->because;
  rig.pan.stops.soft_inset_rad = {};  // the hard stops are wide enough
  EXPECT_EQ(value(analyse(rig, kQuick), "pan.tracking.at_limit"), 0);
  rig.pan.stops = {};
  EXPECT_EQ(analyse(rig, kQuick).figure("pan.tracking.at_limit")->because, "needs pan.stops");
  rig.pan.stops.presence = Presence::none;
  EXPECT_EQ(value(analyse(rig, kQuick), "pan.tracking.at_limit"), 0);
}

TEST(Tracking, SaysWhatItNeeds) {
  Rig rig = tests::owl();
  rig.camera.delay_s = {};
  rig.task.target_distance_m = {};
  Analysis analysis = analyse(rig, kQuick);
  EXPECT_EQ(analysis.tracking.because, "needs camera.delay, tracking.passing_distance");
  EXPECT_EQ(analysis.figure("tracking.in_middle")->because, analysis.tracking.because);
  EXPECT_EQ(finding(analysis, "pan.tracking.gain")->because, analysis.tracking.because);
  rig.tracking.target.value = "path";
  rig.detectors.resize(1);
  rig.detectors[0].delay_s = si_quantity(0.02);
  EXPECT_EQ(analyse(rig, kQuick).tracking.because, "needs tracking.path");
}

TEST(Tracking, TheBlindConeGrowsWithSpeedAndNearness) {
  const Analysis analysis = of("tracking: {speed: 3 m/s, passing_distance: 1 m}\n");
  const double most = std::min(value(analysis, "pan.output.speed_top"), 900 * kDegree_rad);
  const double most_radps2 = value(analysis, "pan.output.acceleration_peak");
  // Straight past at r: pan = atan(v·t/r); its peak acceleration found by looking.
  double steepest = 0;
  for (int i = -20000; i <= 20000; ++i) {
    const double u = i * 1e-4;
    steepest = std::max(steepest, 2 * std::abs(u) / std::pow(1 + u * u, 2));
  }
  const double nearest_m = 3 * std::max(1 / most, std::sqrt(steepest / most_radps2));
  // The scan misses the peak by up to (5e-5)² of itself.
  EXPECT_NEAR(value(analysis, "pan.tracking.blind_cone"), std::asin(nearest_m), tol(1e-8));
}

TEST(EyeBenchmark, HasMovesOfAllSizesAndIsLeftOutOfQuickAnalyses) {
  const Analysis analysis = analyse(tests::owl());
  for (const auto& moves : analysis.eye) {
    ASSERT_EQ(moves.size(), 7u);
    for (const EyeMove& move : moves) {
      ASSERT_TRUE(move.shortest_s && move.settle_s);
      EXPECT_LT(*move.shortest_s, *move.settle_s);
    }
  }
  // 40° is the task's own move.
  EXPECT_EQ(analysis.eye[0][5].settle_s, analysis.value("pan.step.settle_time"));
  EXPECT_TRUE(analyse(tests::owl(), kQuick).eye[0].empty());
}

TEST(Tracking, EndsInTimeWithFiniteOrExplainedFiguresForRandomRigs) {
  tests::Random random(77);
  const auto begin = std::chrono::steady_clock::now();
  constexpr int kRigs = 30;
  for (int number = 0; number < kRigs; ++number) {
    Rig rig = tests::owl();
    rig.detectors.resize(static_cast<std::size_t>(random.below(4)));
    for (const FieldRef& field : all_fields(rig)) {
      const std::string& path = path_of(field);
      if (!path.starts_with("tracking") && !path.starts_with("detectors") &&
          !path.starts_with("camera"))
        continue;
      if (const auto* choice = std::get_if<ChoiceRef>(&field))
        choice->choice->value = choice->info->options[static_cast<std::size_t>(
            random.below(static_cast<int>(choice->info->options.size())))];
      const auto* quantity = std::get_if<QuantityRef>(&field);
      if (quantity == nullptr || random.chance(0.3)) continue;
      const FieldInfo& info = *quantity->info;
      const double most = std::isfinite(info.most) ? info.most : 1e6;
      const double si = std::max(info.least, most * random.log_uniform(1e-9, 1));
      *quantity->quantity = si_quantity(info.whole ? std::ceil(si) : si);
    }
    for (const Figure& figure : analyse(rig, kQuick).figures) {
      if (figure.id.find("tracking") == std::string::npos) continue;
      EXPECT_TRUE(figure.value ? std::isfinite(*figure.value) : !figure.because.empty())
          << number << ' ' << figure.id;
    }
  }
  const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begin;
  // A rig takes 0.1 s, thirty times that under a sanitizer; a hang is what this is to find.
  EXPECT_LT(took.count() / kRigs, 10.0);
}

}  // namespace
}  // namespace gazewright
