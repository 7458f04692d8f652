#pragma once

#include <Eigen/Core>
#include <Eigen/LU>
#include <algorithm>

#include "core/motion/motor_and_load.h"

/// One step of an L-stable Rosenbrock method for p' = v, v' = a(t, p, v), for stiff rates.
namespace gazewright {

/// Derivatives of a at the start of the step.
template <class Matrix, class Vector>
struct AccelerationSlopes {
  Matrix by_position, by_speed;
  Vector by_time;
};
template <int D>
using SlopesInRows = AccelerationSlopes<Eigen::Matrix<double, D, D>, Eigen::Matrix<double, D, 1>>;
template <class Number>
using AxisSlopes = AccelerationSlopes<TwoByTwo<Number>, MotorAndLoadOf<Number>>;

template <class Vector>
struct StepResult {
  Vector position, speed, position_error, speed_error;
};

/// Factor for the next step after an error in tolerances that goes with the step to the fourth.
template <class Time>
Time step_factor(Time error) {
  const Time factor = 0.85 * per_fourth_root_of(most_of(error, all<Time>(1e-8)));
  return most_of(least_of(factor, all<Time>(4)), all<Time>(0.1));
}

/// (g − by_speed − t·by_position)⁻¹.
template <int D>
Eigen::Matrix<double, D, D> inverse_of_system(const SlopesInRows<D>& slopes, double g, double t_s) {
  Eigen::Matrix<double, D, D> system = -slopes.by_speed - slopes.by_position * t_s;
  system.diagonal().array() += g;
  return system.inverse();
}
template <class Number>
TwoByTwo<Number> inverse_of_system(const AxisSlopes<Number>& slopes, Number g, Number t_s) {
  const TwoByTwo<Number>&p = slopes.by_position, &v = slopes.by_speed;
  const Number mm = g - v.motor.motor - t_s * p.motor.motor;
  const Number ml = -v.motor.load - t_s * p.motor.load;
  const Number lm = -v.load.motor - t_s * p.load.motor;
  const Number ll = g - v.load.load - t_s * p.load.load;
  const Number per_determinant = 1 / (mm * ll - ml * lm);
  return {{ll * per_determinant, -ml * per_determinant},
          {-lm * per_determinant, mm * per_determinant}};
}

/// Order 4 with an embedded solution of order 3, stiffly accurate: the method RODAS.
/// `acceleration(c, p, v)` is a at the fraction c of the step. Linear in its slopes it costs six
/// evaluations and one inverse of D × D, as the positions are eliminated.
/// Source: Hairer & Wanner, Solving Ordinary Differential Equations II, Springer 1996, ch. IV.7
/// (coefficients in the transformed variables; from memory, order proved by step_test.cpp).
template <class Acceleration, class Matrix, class Vector, class Time>
StepResult<Vector> rosenbrock_step(const Acceleration& acceleration,
                                   const AccelerationSlopes<Matrix, Vector>& slopes,
                                   const Vector& position, const Vector& speed, Time step_s) {
  constexpr double gamma = 0.25;
  static constexpr double c[6] = {0, 0.386, 0.21, 0.63, 1, 1};
  static constexpr double time[6] = {0.25, -0.1043, 0.1035, -0.0362, 0, 0};
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

  const Time g = 1 / (gamma * step_s), per_step = 1 / step_s, gamma_step = gamma * step_s;
  const Matrix solve = inverse_of_system(slopes, g, gamma_step);

  Vector up[6], uv[6];
  Vector p = position, v = speed;
  for (int i = 0; i < 6; ++i) {
    p = position;
    v = speed;
    Vector rp = 0.0 * speed, rv = (step_s * time[i]) * slopes.by_time;
    for (int j = 0; j < i; ++j) {
      p += a[i][j] * up[j];
      v += a[i][j] * uv[j];
      rp += (per_step * k[i][j]) * up[j];
      rv += (per_step * k[i][j]) * uv[j];
    }
    rp += v;
    rv += acceleration(c[i], p, v);
    uv[i] = solve * (rv + slopes.by_position * (gamma_step * rp));
    up[i] = gamma_step * (rp + uv[i]);
  }
  return {p + up[5], v + uv[5], up[5], uv[5]};
}

}  // namespace gazewright
