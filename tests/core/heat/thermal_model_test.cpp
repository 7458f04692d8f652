#include "core/heat/thermal_model.h"

#include <gtest/gtest.h>

#include <Eigen/LU>
#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

#include "core/heat/copper.h"
#include "tests/support/tol.h"

namespace gazewright {
namespace {

constexpr MotorThermal kOneNode{
    .to_air_KpW = 4, .housing_time_s = 600, .air_K = 303.15, .copper_perK = kCopper_perK};
constexpr MotorThermal kTwoNodes{.to_housing_KpW = 1,
                                 .to_air_KpW = 3,
                                 .winding_time_s = 20,
                                 .housing_time_s = 600,
                                 .air_K = 303.15,
                                 .copper_perK = kCopper_perK};

TEST(ThermalModel, HeatsUpAsTheFirstOrderDoes) {
  MotorThermal motor = kOneNode;
  motor.copper_perK = 0;
  const auto flow = thermal_rate(motor, {10, 0}).over(400);
  // Closed form: 40 K · (1 − e^(−400/600)) over the air, from the air on (10 K over 20 °C).
  const Eigen::Vector2d x = flow.after({10, 10});
  EXPECT_NEAR(x[0], 10 + 40 * (1 - std::exp(-400.0 / 600)), tol(1e-12));
  EXPECT_NEAR(x[1], x[0], tol(1e-12));
}

TEST(ThermalModel, FeedsTheCopperBackIntoItsTimeConstant) {
  // θ' = (p(1 + αθ) + air/R − θ/R)/C: rate (1 − R·p·α)/τ, end (air + R·p)/(1 − R·p·α).
  const double fed = 1 - 4 * 20 * kCopper_perK, end = (10 + 80) / fed;
  const Eigen::Vector2d x = thermal_rate(kOneNode, {20, 0}).over(900).after({10, 10});
  EXPECT_NEAR(x[0], end + (10 - end) * std::exp(-fed * 900 / 600), tol(1e-11));
  EXPECT_NEAR(steady_temperatures(kOneNode, {20, 0})->winding_K - 293.15, end, tol(1e-11));
}

TEST(ThermalModel, HasTheEigenvaluesOfTwoCapacities) {
  // A = [−1/τw, 1/τw; R_ha/(R_wh·τh), −R_ha/(R_wh·τh) − 1/τh] by hand, without feedback.
  MotorThermal motor = kTwoNodes;
  motor.copper_perK = 0;
  const double a = 1.0 / 20, b = 3.0 / 600, c = 1.0 / 600;
  const double half = (a + b + c) / 2, root = std::sqrt(half * half - a * c);
  const Eigen::Matrix2d gain = thermal_rate(motor, {7, 0}).over(37).gain;
  EXPECT_NEAR(gain.trace(), std::exp(-(half - root) * 37) + std::exp(-(half + root) * 37),
              tol(1e-12));
  EXPECT_NEAR(gain.determinant(), std::exp(-2 * half * 37), tol(1e-12));
}

TEST(ThermalModel, EndsWhereHeatInIsHeatOut) {
  const auto end = steady_temperatures(kTwoNodes, {12, 3});
  ASSERT_TRUE(end);
  const double copper_W = 12 * (1 + kCopper_perK * (end->winding_K - 293.15));
  EXPECT_NEAR(end->winding_K - end->housing_K, 1 * copper_W, tol(1e-10));
  EXPECT_NEAR(end->housing_K - 303.15, 3 * (copper_W + 3), tol(1e-10));
  // A steady duty of one piece is the same, and a day from cold comes to it.
  const DutyPiece pieces[] = {{50, {12, 3}}};
  EXPECT_NEAR(steady_duty(kTwoNodes, pieces)->hottest.winding_K, end->winding_K, tol(1e-8));
  const Eigen::Vector2d day = thermal_rate(kTwoNodes, {12, 3}).over(86400).after({10, 10});
  EXPECT_NEAR(day[0] + 293.15, end->winding_K, tol(1e-8));
}

TEST(ThermalModel, TheLastingLossJustReachesTheLimit) {
  const double loss_W = lasting_copper20_W(kTwoNodes, 393.15, 2);
  EXPECT_NEAR(steady_temperatures(kTwoNodes, {loss_W, 2})->winding_K, 393.15, tol(1e-9));
  EXPECT_LE(lasting_copper20_W(kTwoNodes, 300, 0), 0);
}

TEST(ThermalModel, RunsAwayWhereCopperOutgrowsTheCooling) {
  // R·p·α = 1 at p = 255/4 W.
  EXPECT_NEAR(runaway_copper20_W(kTwoNodes), 255.0 / 4, tol(1e-12));
  for (const MotorThermal& motor : {kOneNode, kTwoNodes}) {
    EXPECT_TRUE(steady_temperatures(motor, {255.0 / 4 * 0.999, 0}));
    EXPECT_FALSE(steady_temperatures(motor, {255.0 / 4 * 1.001, 0}));
    const DutyPiece below[] = {{5, {255.0 / 4 * 0.999, 0}}},
                    above[] = {{5, {255.0 / 4 * 1.001, 0}}};
    EXPECT_TRUE(steady_duty(motor, below));
    EXPECT_FALSE(steady_duty(motor, above));
  }
}

TEST(ThermalModel, ADutyRepeatsItself) {
  const DutyPiece pieces[] = {{3, {60, 5}}, {9, {1, 0}}, {40, {15, 2}}};
  const auto duty = steady_duty(kTwoNodes, pieces);
  ASSERT_TRUE(duty);
  Eigen::Vector2d x{duty->start.winding_K - 293.15, duty->start.housing_K - 293.15};
  double in_J = 0, out_J = 0;  // by Simpson's rule in 2000 parts
  for (const DutyPiece& piece : pieces) {
    const int n = 2000;
    const double h = piece.time_s / n;
    const auto flow = thermal_rate(kTwoNodes, piece.losses).over(h / 2);
    const auto powers = [&](const Eigen::Vector2d& at) {
      return std::pair(piece.losses.copper20_W * (1 + kCopper_perK * at[0]) + piece.losses.gear_W,
                       (at[1] - 10) / 3);
    };
    for (int k = 0; k < n; ++k) {
      const Eigen::Vector2d middle = flow.after(x), end = flow.after(middle);
      const auto [i0, o0] = powers(x);
      const auto [i1, o1] = powers(middle);
      const auto [i2, o2] = powers(end);
      in_J += h / 6 * (i0 + 4 * i1 + i2);
      out_J += h / 6 * (o0 + 4 * o1 + o2);
      x = end;
    }
  }
  EXPECT_NEAR(x[0] + 293.15, duty->start.winding_K, tol(1e-9));
  EXPECT_NEAR(x[1] + 293.15, duty->start.housing_K, tol(1e-9));
  EXPECT_NEAR(in_J / out_J, 1, tol(1e-9));  // what the motor loses in a cycle it gives to the air
}

TEST(ThermalModel, ARunFromColdComesToTheSteadyDutyWhateverThePoints) {
  const std::vector<DutyPiece> quick{{0.4, {90, 5}}, {1.1, {1, 0}}},
      slow{{40, {30, 0}}, {200, {5, 0}}};
  for (const auto& pieces : {quick, slow}) {
    const auto duty = steady_duty(kTwoNodes, pieces);
    for (const int points : {50, 400, 8000}) {
      const TemperatureRun run = run_duty(kTwoNodes, pieces, {303.15, 303.15}, 40000, points, 1000);
      ASSERT_GT(run.time_s.size(), 40u);
      const std::size_t half = run.time_s.size() / 2;  // e^−20 of the rise is left there
      EXPECT_NEAR(*std::max_element(run.winding_K.begin() + long(half), run.winding_K.end()),
                  duty->hottest.winding_K, tol(1e-4))
          << points;
      EXPECT_EQ(run.winding_K.front(), 303.15);
    }
  }
}

TEST(ThermalModel, IsFiniteOrRunsAwayForMotorsOfAnyScale) {
  std::mt19937 random(7);
  std::uniform_real_distribution<double> exponent(-3, 3);
  const auto any = [&] { return std::pow(10, exponent(random)); };
  int steady = 0;
  for (int i = 0; i < 2000; ++i) {
    const MotorThermal motor{.to_housing_KpW = i % 2 == 0 ? 0 : any(),
                             .to_air_KpW = any(),
                             .winding_time_s = any(),
                             .housing_time_s = any(),
                             .air_K = 300,
                             .copper_perK = kCopper_perK};
    const DutyPiece pieces[] = {{any(), {any(), any()}}, {any(), {any(), 0}}};
    if (const auto duty = steady_duty(motor, pieces)) {
      ++steady;
      EXPECT_TRUE(std::isfinite(duty->hottest.winding_K)) << i;
      EXPECT_GE(duty->hottest.winding_K, 300 * (1 - 1e-9)) << i;
    }
  }
  EXPECT_GT(steady, 300);
}

}  // namespace
}  // namespace gazewright
