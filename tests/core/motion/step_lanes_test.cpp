#include "core/motion/step_lanes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "core/motion/lanes.h"
#include "core/motion/step.h"
#include "tests/core/motion/small_axis.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

using tests::linear_axis;
using tests::small_axis;

TEST(Lanes, TheirExponentialIsThatOfTheLibrary) {
  for (const double x :
       {0.0, 1e-300, 1e-9, 0.1, 0.3465, 0.3467, 0.785, 1.0, 7.3, 40.0, 300.0, 699.9})
    EXPECT_NEAR(decay_of(x) / std::exp(-x), 1, tol(2e-14)) << x;
  EXPECT_EQ(decay_of(0.0), 1);
  EXPECT_EQ(decay_of(700.0), 0);
  EXPECT_EQ(decay_of(kInfinity), 0);
  EXPECT_TRUE(std::isnan(decay_of(std::nan(""))));
  const BothAxes both = decay_of(BothAxes{0.3, 12.0});
  EXPECT_EQ(both[0], decay_of(0.3));
  EXPECT_EQ(both[1], decay_of(12.0));
}

TEST(Lanes, TheirFourthRootIsNearEnoughForTheNextStep) {
  for (double x = 1e-8; x < 1e12; x *= 1.037)
    EXPECT_NEAR(per_fourth_root_of(x) * std::pow(x, 0.25), 1, tol(0.02)) << x;
}

/// The kinds of registers that this machine has, besides none.
std::vector<int> kinds() {
  std::vector<int> kinds;
  for (const int lanes : {4, 8})
    if (lanes <= widest_lanes()) kinds.push_back(lanes);
  return kinds;
}

struct Compared {
  int runs = 0, differ = 0, settle = 0, ended_early = 0;
  double worst = 0;  ///< of the move
};

/// Every sample of every ratio, in each kind of registers, with simulate_step().
void compare(Compared& out, const AxisModel& axis, double move_rad,
             const std::vector<double>& ratios, double horizon_s) {
  const LaneOptions options{.move_rad = move_rad, .band_rad = 0.01, .horizon_s = horizon_s};
  std::vector<LaneResults> shown, plain;
  for (const int lanes : kinds()) {
    LaneOptions wide = options;
    wide.widest = lanes;
    plain.push_back(step_lanes(axis, ratios, wide));
    wide.show = true;
    shown.push_back(step_lanes(axis, ratios, wide));
  }
  for (std::size_t i = 0; i < ratios.size(); ++i) {
    AxisModel one = axis;
    one.gear.ratio = ratios[i];
    const Trace trace = simulate_step(one, move_rad, horizon_s);
    const auto settle_s = step_figures(trace, move_rad, 0.01).settle_time_s;
    out.ended_early += trace.time_s.size() < static_cast<std::size_t>(horizon_s * 8000);
    out.settle += settle_s.has_value();
    for (std::size_t kind = 0; kind < shown.size(); ++kind) {
      const std::vector<double>& angle_rad = shown[kind].angle_rad[i];
      ++out.runs;
      out.differ += angle_rad != trace.angle_rad;
      ASSERT_EQ(angle_rad.size(), trace.angle_rad.size()) << "ratio " << ratios[i];
      for (std::size_t k = 0; k < angle_rad.size(); ++k)
        out.worst =
            std::max(out.worst, std::abs(angle_rad[k] - trace.angle_rad[k]) / std::abs(move_rad));
      EXPECT_EQ(shown[kind].settle_time_s[i], settle_s) << "ratio " << ratios[i];
      EXPECT_EQ(plain[kind].settle_time_s[i], settle_s) << "ratio " << ratios[i];
    }
  }
}

/// A millionth of the move is what is promised; the bits are in fact the same.
void expect_equal(const Compared& all) {
  EXPECT_LE(all.worst, tol(1e-6));
  EXPECT_EQ(all.differ, 0) << "of " << all.runs;
  EXPECT_EQ(all.runs > 0, widest_lanes() > 1);
}

TEST(StepLanes, GoAsEachStepGoesAlone) {
  Compared all;
  std::vector<double> ratios;
  ratios.reserve(30);
  for (int i = 0; i < 30; ++i) ratios.push_back(std::pow(200.0, i / 29.0));
  AxisModel weak = small_axis();
  weak.load.cable_stiffness_Nmprad = 0.2;
  weak.drive.supply_current_limit_A = 2;
  weak.control.encoder_at_output = true;
  for (const AxisModel& axis : {small_axis(), weak, linear_axis()})
    compare(all, axis, 0.7, ratios, 0.4);
  expect_equal(all);
  EXPECT_GT(all.settle, 20);
}

TEST(StepLanes, OfAnyScaleGoAsEachStepGoesAlone) {
  std::mt19937_64 engine(23);
  const auto spread = [&](double value, double decades) {
    return value * std::pow(10, std::uniform_real_distribution(-decades, decades)(engine));
  };
  Compared all;
  for (int i = 0; i < 24; ++i) {
    AxisModel axis = small_axis();
    axis.gear.stiffness_Nmprad = spread(900, 3);
    axis.gear.damping_Nmsprad = spread(0.4, 3);
    axis.gear.rotor_inertia_kgm2 = spread(1e-5, 2);
    axis.gear.backlash_rad = i % 5 == 0 ? 0 : spread(1e-3, 2);
    axis.load.inertia_kgm2 = spread(1e-3, 2);
    axis.load.coulomb_Nm = spread(0.04, 2);
    axis.load.gravity = {.cos_Nm = i % 3 == 0 ? 0 : spread(0.05, 1), .sin_Nm = 0};
    axis.load.cable_stiffness_Nmprad = i % 3 == 1 ? spread(0.1, 1) : 0;
    axis.drive.supply_current_limit_A = i % 4 == 2 ? kInfinity : spread(6, 1);
    axis.control.encoder_at_output = i % 4 == 1;
    axis.control.speed_gain_Nmsprad = spread(0.9, 2);
    axis.control.current_bandwidth_Hz = spread(1000, 1);
    compare(all, axis, i % 2 == 0 ? spread(0.5, 1) : -spread(0.5, 1),
            {0.01, 0.3, spread(12, 1), spread(12, 1), spread(12, 1), 1000}, 0.05);
  }
  expect_equal(all);
}

TEST(StepLanes, ThatRunAwayEndWhereEachStepEndsAlone) {
  AxisModel axis = linear_axis();
  axis.control.speed_gain_Nmsprad = 400;
  Compared all;
  compare(all, axis, 0.1, {18, 25}, 2);
  expect_equal(all);
  EXPECT_GE(all.ended_early, 1);
}

TEST(StepLanes, AreTheSameAloneAndInCompanyAndOnTwoThreads) {
  const std::vector<double> ratios{1, 2.5, 4, 7, 11, 18, 30, 47, 80, 140, 200};
  const LaneOptions options{
      .move_rad = 0.7, .band_rad = 0.01, .horizon_s = 0.1, .threads = 1, .show = true};
  const LaneResults together = step_lanes(small_axis(), ratios, options);
  LaneOptions two = options;
  two.threads = 2;
  EXPECT_EQ(step_lanes(small_axis(), ratios, two).angle_rad, together.angle_rad);
  EXPECT_EQ(step_lanes(small_axis(), {ratios[3]}, two).angle_rad[0], together.angle_rad[3]);
  EXPECT_TRUE(step_lanes(small_axis(), {}, two).angle_rad.empty());
  for (std::size_t i = 0; i < ratios.size(); i += 3)
    EXPECT_EQ(step_lanes(small_axis(), {ratios[i]}, options).angle_rad[0], together.angle_rad[i]);
}

TEST(StepLanes, StopWhenAsked) {
  std::stop_source source;
  source.request_stop();
  const LaneResults results = step_lanes(
      small_axis(), {1, 18, 200},
      {.move_rad = 0.7, .band_rad = 0.01, .horizon_s = 1e3, .show = true}, source.get_token());
  for (const auto& angle_rad : results.angle_rad) EXPECT_LE(angle_rad.size(), 8000u);
}

}  // namespace
}  // namespace gazewright
