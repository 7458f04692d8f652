#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <complex>
#include <utility>

#include "core/motion/loop_tuning.h"
#include "tests/support/tol.h"

/// Symmetrical and modulus optimum. Published rows: Kessler 1958; Leonhard, Control of Electrical
/// Drives; Schröder (43.4 %, 8.1 %, 4.3 % and the times of the modulus optimum recalled; the other
/// times from a simulation of the textbook's closed loop).
namespace gazewright {
namespace {

struct Step {
  double overshoot = 0, first_full_s = 0, settled_s = 0;
};

/// Step of an inertia behind a lag, under given gains, by RK4. `prefilter_s` smooths the command.
/// States: command, integral, torque, speed.
template <class Torque>
Step step_of(double lag_s, double inertia, double prefilter_s, double integral_rate,
             Torque torque) {
  using State = std::array<double, 4>;
  const auto rate = [&](const State& x) -> State {
    const double command = prefilter_s > 0 ? x[0] : 1, error = command - x[3];
    return {prefilter_s > 0 ? (1 - x[0]) / prefilter_s : 0, integral_rate * error,
            (torque(error, x[1]) - x[2]) / lag_s, x[2] / inertia};
  };
  const auto plus = [](const State& a, const State& b, double f) {
    State sum{};
    for (std::size_t i = 0; i < 4; ++i) sum[i] = a[i] + f * b[i];
    return sum;
  };
  const double dt = lag_s / 2000;
  State x{};
  Step step;
  for (int i = 0; i < 80'000; ++i) {
    const State a = rate(x), b = rate(plus(x, a, dt / 2)), c = rate(plus(x, b, dt / 2)),
                d = rate(plus(x, c, dt));
    for (std::size_t k = 0; k < 4; ++k) x[k] += dt / 6 * (a[k] + 2 * b[k] + 2 * c[k] + d[k]);
    const double t = (i + 1) * dt;
    step.overshoot = std::max(step.overshoot, x[3] - 1);
    if (step.first_full_s == 0 && x[3] >= 1) step.first_full_s = t;
    if (std::abs(x[3] - 1) > 0.02) step.settled_s = t;
  }
  return step;
}

Step with_symmetrical_optimum(double prefilter_in_lags) {
  constexpr double kLag = 3e-3, kInertia = 0.02;
  const PiGains gains = symmetrical_optimum(kInertia, kLag, 2);
  const Step step = step_of(kLag, kInertia, prefilter_in_lags * kLag, gains.integral_gain_Nmprad,
                            [&](double e, double i) { return gains.gain_Nmsprad * e + i; });
  return {step.overshoot, step.first_full_s / kLag, step.settled_s / kLag};
}

// Row PI-1. Overshoot to 3 digits, times to the digits published.
TEST(SymmetricalOptimum, OvershootsAsPublished) {
  const Step step = with_symmetrical_optimum(0);
  EXPECT_NEAR(step.overshoot, 0.434, tol(0.0005));
  EXPECT_NEAR(step.first_full_s, 3.1, tol(0.05));
  EXPECT_NEAR(step.settled_s, 16.5, tol(0.05 + 1e-3));  // half a digit and two steps of time
}

// Row PI-2.
TEST(SymmetricalOptimum, OvershootsLittleWithASmoothedCommand) {
  const Step step = with_symmetrical_optimum(4);
  EXPECT_NEAR(step.overshoot, 0.081, tol(0.0005));
  EXPECT_NEAR(step.first_full_s, 7.6, tol(0.05));
  EXPECT_NEAR(step.settled_s, 13.3, tol(0.05));
}

// Row PI-3: 1/(1 + 2σs + 2σ²s²), an integrator behind a lag under a proportional gain.
TEST(ModulusOptimum, OvershootsAsPublished) {
  constexpr double kLag = 5e-3;
  const double gain = modulus_optimum_1ps(kLag);
  const Step step = step_of(kLag, 1, 0, 0, [&](double e, double) { return gain * e; });
  EXPECT_NEAR(step.overshoot, 0.043, tol(0.0005));
  EXPECT_NEAR(step.first_full_s / kLag, 4.7, tol(0.05));
  EXPECT_NEAR(step.settled_s / kLag, 8.4, tol(0.05));
}

// Row PI-4: atan(a) − atan(1/a), from the loop that the gains close.
TEST(SymmetricalOptimum, HasThePublishedPhaseMargin) {
  for (const auto& [a, degrees] : {std::pair{2.0, 36.87}, std::pair{4.0, 61.93}}) {
    const double lag_s = 1e-3;
    const PiGains gains = symmetrical_optimum(0.5, lag_s, a);
    const std::complex<double> s(0, gains.crossover_radps);
    const auto loop =
        (gains.gain_Nmsprad + gains.integral_gain_Nmprad / s) / (0.5 * s * (1.0 + lag_s * s));
    EXPECT_NEAR(std::abs(loop), 1, tol(1e-12));
    EXPECT_NEAR(std::arg(-loop) * 180 / M_PI, degrees, tol(0.005));
  }
}

}  // namespace
}  // namespace gazewright
