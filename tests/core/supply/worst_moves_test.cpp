#include "core/supply/worst_moves.h"

#include <gtest/gtest.h>

#include <cmath>

#include "tests/core/motion/coupled_rigs.h"
#include "tests/support/random_bodies.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

WorstSearch search_of(const CoupledModel& model) {
  return {.model = model,
          .span = {MoveSpan{-2, 2}, MoveSpan{-0.8, 1.2}},
          .task_rad = {0.7, 0.4},
          .idle_W = 2,
          .bus = {.voltage_V = 24, .capacitance_F = 1.5e-3}};
}

/// The same bus under any moves.
std::pair<double, double> most_of(const WorstSearch& search, const BothMoves& moves,
                                  double speed_part) {
  CoupledModel model = search.model;
  for (AxisModel& axis : model.axis) axis.control.speed_limit_radps *= speed_part;
  const CoupledTrace trace = simulate_moves(model, moves, 0.9);
  std::vector<double> power_W;
  for (const double bus_A : trace.bus_A) power_W.push_back(24 * bus_A + search.idle_W);
  const BusRun run = run_bus(search.bus, power_W, trace.axis[0].sample_time_s);
  return {run.most_A, run.most_V};
}

TEST(WorstMoves, AreNotBeatenByRandomOnes) {
  CoupledModel model = tests::tied_axes();
  for (AxisModel& axis : model.axis) axis.drive.supply_current_limit_A = kInfinity;
  const WorstSearch search = search_of(model);
  const WorstMoves worst = worst_moves(search);
  ASSERT_FALSE(worst.tried.empty());
  tests::Random random(77);
  double most_A = 0, most_V = 0;
  for (int round = 0; round < 60; ++round) {
    BothMoves moves;
    const auto choose = [&](const MoveSpan& span, double& from_rad, double& move_rad) {
      from_rad = random.uniform(span.least_rad, span.most_rad);
      move_rad = random.uniform(span.least_rad, span.most_rad) - from_rad;
    };
    choose(search.span[0], moves.from_rad.pan, moves.move_rad.pan);
    choose(search.span[1], moves.from_rad.tilt, moves.move_rad.tilt);
    if (random.chance(0.7)) {
      (random.chance(0.5) ? moves.begin_s.pan : moves.begin_s.tilt) = random.uniform(0, 0.2);
    }
    const auto [A, V] = most_of(search, moves, random.uniform(0.3, 1));
    most_A = std::max(most_A, A), most_V = std::max(most_V, V);
  }
  // The search keeps to a few sizes and speeds: 60 others may find 3 % more of what is above 24 V.
  EXPECT_GE(worst.by_current().most_A, most_A * 0.97);
  EXPECT_GE(worst.by_voltage().most_V - 24, (most_V - 24) * 0.97);
  EXPECT_GT(most_V, 24.05) << "something is returned at all";
}

TEST(WorstMoves, OfBothTogetherAreWorseThanOfEitherAlone) {
  const WorstMoves worst = worst_moves(search_of(tests::tied_axes()));
  ASSERT_FALSE(worst.tried.empty());
  double alone_V = 0;
  for (const BusMoves& run : worst.tried) {
    if (run.moves.move_rad.pan == 0 || run.moves.move_rad.tilt == 0)
      alone_V = std::max(alone_V, run.most_V);
    EXPECT_LE(run.most_A, (15 + 2.0 / 24) * (1 + 1e-9)) << "the supply's limit, and idle power";
    for (const double end_rad :
         {run.moves.from_rad.pan, run.moves.from_rad.pan + run.moves.move_rad.pan})
      EXPECT_LE(std::abs(end_rad), 2 + 1e-9);
  }
  EXPECT_GT(alone_V, 24);
  EXPECT_GT(worst.by_voltage().most_V, alone_V);
  EXPECT_NE(worst.by_voltage().moves.move_rad.pan * worst.by_voltage().moves.move_rad.tilt, 0);
}

TEST(WorstMoves, GiveTheSameAnswerEachTime) {
  const WorstMoves a = worst_moves(search_of(tests::tied_axes()));
  const WorstMoves b = worst_moves(search_of(tests::tied_axes()));
  ASSERT_EQ(a.tried.size(), b.tried.size());
  EXPECT_EQ(a.by_voltage().most_V, b.by_voltage().most_V);
  EXPECT_EQ(a.by_current().power_W, b.by_current().power_W);
}

TEST(WorstMoves, StopWhenAsked) {
  std::stop_source source;
  source.request_stop();
  EXPECT_TRUE(worst_moves(search_of(tests::tied_axes()), source.get_token()).tried.empty());
}

TEST(WorstMoves, OfAnAxisThatCannotMoveAreThoseOfTheOther) {
  WorstSearch search = search_of(tests::tied_axes());
  search.span[1] = {0, 0};
  search.task_rad.tilt = 0;
  const WorstMoves worst = worst_moves(search);
  ASSERT_FALSE(worst.tried.empty());
  for (const BusMoves& run : worst.tried) EXPECT_EQ(run.moves.move_rad.tilt, 0);
}

}  // namespace
}  // namespace gazewright
