#pragma once

#include <Eigen/Core>
#include <cmath>

namespace gazewright {

/// Angles, speeds or accelerations of motor and output. Two plain numbers, because this is the
/// innermost arithmetic of a simulated step: matrix expressions cost the checked builds their time.
struct MotorAndLoad {
  double motor = 0, load = 0;

  static MotorAndLoad from(const Eigen::Vector2d& v) { return {v[0], v[1]}; }
  Eigen::Vector2d as_vector() const { return {motor, load}; }
};

inline MotorAndLoad operator+(MotorAndLoad a, MotorAndLoad b) {
  return {a.motor + b.motor, a.load + b.load};
}
inline MotorAndLoad operator-(MotorAndLoad a, MotorAndLoad b) {
  return {a.motor - b.motor, a.load - b.load};
}
inline MotorAndLoad operator*(double x, MotorAndLoad a) { return {x * a.motor, x * a.load}; }
inline bool is_finite(MotorAndLoad a) { return std::isfinite(a.motor + a.load); }

}  // namespace gazewright
