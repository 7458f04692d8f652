#include "core/pointing/uncertainty.h"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

#include "tests/support/tol.h"

/// Error combination against numbers in print. GUM is JCGM 100:2008.
namespace gazewright {
namespace {

TEST(ErrorCombination, FitsTheShaftPowerOfATextbook) {
  // Source: Doebelin & Manik, Measurement Systems, example 3.2, p. 62: W = 2πRFL/t with errors
  // of 1, 0.18, 0.00127 and 0.5: 22.075 by root-sum-square, 36.80 at worst. To its last digits.
  constexpr double kTurns = 1202, kForce = 45, kArm = 0.397, kTime = 60;
  const double per_turn = 2 * std::numbers::pi * kForce * kArm / kTime;
  const double power = per_turn * kTurns;
  const std::array<double, 4> parts{per_turn * 1, power / kForce * 0.18, power / kArm * 0.00127,
                                    -power / kTime * 0.5};
  EXPECT_NEAR(power / kForce, 49.97, tol(0.005));
  EXPECT_NEAR(combined(parts), 22.075, tol(5e-4));
  EXPECT_NEAR(worst_case(parts), 36.80, tol(5e-3));
}

TEST(ErrorCombination, FitsTheEndGaugeOfTheGuide) {
  // Source: GUM annex H.1: combined standard uncertainty 32 nm (31.66).
  constexpr double kLength_nm = 5e7;
  const double offset_nm =
      kLength_nm * 11.5e-6 * standard_deviation(Distribution::rectangular, 0.05);
  const double expansion_nm =
      kLength_nm * 0.1 * standard_deviation(Distribution::rectangular, 1e-6);
  EXPECT_NEAR(offset_nm, 16.599, tol(1e-3));
  EXPECT_NEAR(expansion_nm, 2.8868, tol(1e-4));
  EXPECT_NEAR(combined(std::array{25.0, offset_nm, 6.7, 5.8, 3.9, expansion_nm}), 31.66, tol(0.05));
}

TEST(ErrorCombination, FitsTheCorrelatedInputsOfTheGuide) {
  // Source: GUM annex H.2: R = 127.732(70), X = 219.85(30), Z = 254.26(24) ohm.
  constexpr double kV = 4.999, kI = 19.661e-3, kPhi = 1.04446;
  constexpr double kUv = 3.2e-3, kUi = 9.5e-6, kUphi = 7.5e-4;
  const std::array<Correlation, 3> together{{{0, 1, -0.36}, {0, 2, 0.86}, {1, 2, -0.65}}};
  const double impedance = kV / kI;
  const double resistance = impedance * std::cos(kPhi), reactance = impedance * std::sin(kPhi);
  EXPECT_NEAR(resistance, 127.732, tol(5e-4));
  const auto u = [&](double value, double per_phi) {
    return combined(std::array{value / kV * kUv, -value / kI * kUi, per_phi * kUphi}, together);
  };
  // The uncertainties are given to two digits: 3 %.
  EXPECT_NEAR(u(resistance, -reactance), 0.070, tol(0.03 * 0.070));
  EXPECT_NEAR(u(reactance, resistance), 0.30, tol(0.03 * 0.30));
  EXPECT_NEAR(u(impedance, 0), 0.24, tol(0.03 * 0.24));
}

TEST(ErrorCombination, FitsTheVoltmeterOfTheGuide) {
  // Source: GUM 4.3.7 examples 1 and 2, 5.1.5 (from memory): 0.23e-6; a = 15 µV, u = 8.7 µV, with
  // 12 µV of the readings 15 µV.
  EXPECT_NEAR(standard_deviation(Distribution::rectangular, 0.40e-6), 0.2309e-6, tol(1e-10));
  const double limit_uV = 14e-6 * 0.928571e6 + 2;
  const double deviation_uV = standard_deviation(Distribution::rectangular, limit_uV);
  EXPECT_NEAR(limit_uV, 15.0, tol(0.05));
  EXPECT_NEAR(deviation_uV, 8.66, tol(0.005));
  EXPECT_NEAR(combined(std::array{12.0, deviation_uV}), 14.8, tol(0.05));
}

TEST(ErrorCombination, HasTheGuidesDeviationsOfTheDistributions) {
  // Source: GUM 4.3.9 (triangular), H.1.3.4 (arcsine: ±0.5 °C have 0.35 °C), table G.1 (normal: 3
  // deviations hold 99.73 %).
  EXPECT_NEAR(standard_deviation(Distribution::triangular, 0.5), 0.204124, tol(1e-6));
  EXPECT_NEAR(standard_deviation(Distribution::arcsine, 0.5), 0.353553, tol(1e-6));
  EXPECT_NEAR(std::erf(kNormalReach / std::numbers::sqrt2), 0.9973, tol(5e-5));
  EXPECT_NEAR(std::erf(kCoverage / std::numbers::sqrt2), 0.9545, tol(5e-5));
}

}  // namespace
}  // namespace gazewright
