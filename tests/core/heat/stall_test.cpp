#include "core/heat/stall.h"

#include <gtest/gtest.h>

#include <cmath>

#include "core/heat/copper.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

MotorThermal motor(double copper_perK) {
  return {.to_housing_KpW = 1,
          .to_air_KpW = 3,
          .winding_time_s = 20,
          .housing_time_s = 600,
          .air_K = 303.15,
          .copper_perK = copper_perK};
}

TEST(Stall, TheLossIsThatOfATurningMotorButHalfMoreOfItInOneWinding) {
  const PhaseLosses stalled = stalled_losses(0.2, 5), turning = turning_losses(0.2, 5);
  EXPECT_DOUBLE_EQ(stalled.worst_W + 2 * stalled.other_W, 1.5 * 0.2 * 25);
  EXPECT_DOUBLE_EQ(turning.worst_W + 2 * turning.other_W, 1.5 * 0.2 * 25);
  EXPECT_DOUBLE_EQ(stalled.worst_W, 2 * turning.worst_W);
}

TEST(Stall, TheWorstWindingRisesTwiceAsFarOverTheHousing) {
  // Without feedback: 7.5 W through 3 K/W to the air, and 5 W through 3·1 K/W to the housing.
  const auto at = steady_windings(motor(0), stalled_losses(0.2, 5));
  EXPECT_NEAR(at->housing_K, 303.15 + 22.5, tol(1e-10));
  EXPECT_NEAR(at->winding_K - at->housing_K, 15, tol(1e-10));
  EXPECT_NEAR(steady_windings(motor(0), turning_losses(0.2, 5))->winding_K - at->housing_K, 7.5,
              tol(1e-10));
}

TEST(Stall, TurningIsTheModelOfTwoNodes) {
  const auto windings = steady_windings(motor(kCopper_perK), turning_losses(0.2, 8));
  const auto nodes = steady_temperatures(motor(kCopper_perK), {1.5 * 0.2 * 64, 0});
  EXPECT_NEAR(windings->winding_K, nodes->winding_K, tol(1e-9));
  EXPECT_NEAR(windings->housing_K, nodes->housing_K, tol(1e-9));
}

TEST(Stall, TheLastingCurrentHeatsTheWorstWindingJustToItsLimit) {
  const double current_A = lasting_stall_current_A(motor(kCopper_perK), 0.2, 393.15);
  const auto at = steady_windings(motor(kCopper_perK), stalled_losses(0.2, current_A));
  EXPECT_NEAR(at->winding_K, 393.15, tol(1e-9));
  EXPECT_EQ(lasting_stall_current_A(motor(kCopper_perK), 0.2, 300), 0);
}

TEST(Stall, TheTimeToTheLimitIsThatOfTheFirstOrderWhereOneCapacityRules) {
  // A housing that stays cold, no feedback: 3·1 K/W, τ 20 s, so 32 W in the worst winding end 96 K
  // over the air and are at 60 K after 20·ln(96/36) s.
  MotorThermal cold = motor(0);
  cold.to_air_KpW = 1e-9;
  const auto time_s = time_to_limit_s(cold, {32, 8}, {303.15, 303.15}, 363.15);
  EXPECT_NEAR(time_s.value_or(0), 20 * std::log(96.0 / 36), tol(1e-5));
}

TEST(Stall, TheTimeToTheLimitIsWhereTheFlowArrives) {
  const MotorThermal hot = motor(kCopper_perK);
  const PhaseLosses turning = turning_losses(0.2, 30);
  const auto time_s = time_to_limit_s(hot, turning, {303.15, 303.15}, 393.15);
  ASSERT_TRUE(time_s);
  const Eigen::Vector2d at = thermal_rate(hot, {1.5 * 0.2 * 900, 0}).over(*time_s).after({10, 10});
  EXPECT_NEAR(at[0] + 293.15, 393.15, tol(1e-8));
  EXPECT_LT(*time_to_limit_s(hot, stalled_losses(0.2, 30), {303.15, 303.15}, 393.15), *time_s);
  EXPECT_LT(*time_to_limit_s(hot, turning, {340, 330}, 393.15), *time_s);
}

TEST(Stall, NeverArrivesBelowTheLastingCurrentAndIsThereWhereItBegins) {
  const MotorThermal hot = motor(kCopper_perK);
  const double lasting_A = std::sqrt(lasting_copper20_W(hot, 393.15) / 0.3);
  EXPECT_FALSE(time_to_limit_s(hot, turning_losses(0.2, 0.99 * lasting_A), {303, 303}, 393.15));
  EXPECT_TRUE(time_to_limit_s(hot, turning_losses(0.2, 1.01 * lasting_A), {303, 303}, 393.15));
  EXPECT_EQ(time_to_limit_s(hot, turning_losses(0.2, 30), {400, 390}, 393.15), 0);
}

TEST(Stall, OneNodeIsSplitAsSaid) {
  const MotorThermal one{.to_air_KpW = 5, .housing_time_s = 600, .air_K = 303.15};
  const MotorThermal two = with_two_nodes(one, 0.4, 5);
  EXPECT_DOUBLE_EQ(two.to_housing_KpW, 2);
  EXPECT_DOUBLE_EQ(two.to_air_KpW, 3);
  EXPECT_DOUBLE_EQ(two.winding_time_s, 5);
  EXPECT_DOUBLE_EQ(with_two_nodes(motor(0), 0.4, 5).to_housing_KpW, 1);
}

}  // namespace
}  // namespace gazewright
