#pragma once

#include <Eigen/Core>
#include <Eigen/LU>
#include <algorithm>
#include <array>
#include <cmath>

/// One step of an L-stable Rosenbrock method for p' = v, v' = a(t, p, v), for stiff rates.
namespace gazewright {

/// Derivatives of a at the start of the step.
template <int D>
struct AccelerationSlopes {
  Eigen::Matrix<double, D, D> by_position, by_speed;
  Eigen::Matrix<double, D, 1> by_time;
};

template <int D>
struct StepResult {
  Eigen::Matrix<double, D, 1> position, speed, position_error, speed_error;
};

/// Factor for the next step after an error in tolerances that goes with the step to the fourth.
inline double step_factor(double error) {
  return std::clamp(0.85 / std::sqrt(std::sqrt(std::max(error, 1e-8))), 0.1, 4.0);
}

/// Order 4 with an embedded solution of order 3, stiffly accurate: the method RODAS.
/// `acceleration(c, p, v)` is a at the fraction c of the step. Linear in its slopes it costs six
/// evaluations and one inverse of D × D, as the positions are eliminated.
/// Source: Hairer & Wanner, Solving Ordinary Differential Equations II, Springer 1996, ch. IV.7
/// (coefficients in the transformed variables; from memory, order proved by step_test.cpp).
template <int D, class Acceleration>
StepResult<D> rosenbrock_step(const Acceleration& acceleration, const AccelerationSlopes<D>& slopes,
                              const Eigen::Matrix<double, D, 1>& position,
                              const Eigen::Matrix<double, D, 1>& speed, double step_s) {
  using Vector = Eigen::Matrix<double, D, 1>;
  using Matrix = Eigen::Matrix<double, D, D>;
  constexpr double gamma = 0.25;
  static constexpr std::array<double, 6> c{0, 0.386, 0.21, 0.63, 1, 1};
  static constexpr std::array<double, 6> time{0.25, -0.1043, 0.1035, -0.0362, 0, 0};
  static constexpr double a[6][5] = {
      {},
      {1.544},
      {0.9466785280815826, 0.2557011698983284},
      {3.314825187068521, 2.896124015972201, 0.9986419139977817},
      {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950},
      {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1}};
  static constexpr double k[6][5] = {
      {},
      {-5.6688},
      {-2.430093356833875, -0.2063599157091915},
      {-0.1073529058151375, -9.594562251023355, -20.47028614809616},
      {7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160},
      {8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136,
       -6.058818238834054}};

  const double g = 1 / (gamma * step_s), per_step = 1 / step_s, gamma_step = gamma * step_s;
  Matrix system = -slopes.by_speed - slopes.by_position * gamma_step;
  system.diagonal().array() += g;
  const Matrix solve = system.inverse();

  std::array<Vector, 6> up, uv;
  Vector p = position, v = speed;
  for (int i = 0; i < 6; ++i) {
    p = position;
    v = speed;
    Vector rp = Vector::Zero(), rv = step_s * time[i] * slopes.by_time;
    for (int j = 0; j < i; ++j) {
      p += a[i][j] * up[j];
      v += a[i][j] * uv[j];
      rp += per_step * k[i][j] * up[j];
      rv += per_step * k[i][j] * uv[j];
    }
    rp += v;
    rv += acceleration(c[i], p, v);
    uv[i] = solve * (rv + slopes.by_position * (rp * gamma_step));
    up[i] = (rp + uv[i]) * gamma_step;
  }
  return {p + up[5], v + uv[5], up[5], uv[5]};
}

}  // namespace gazewright
