#pragma once

#include <Eigen/Core>
#include <cmath>

#include "core/motion/both_axes.h"

namespace gazewright {

/// Angles, speeds or accelerations of motor and output, of one axis or of both side by side. Plain
/// numbers, because this is the innermost arithmetic of a simulated step: matrix expressions cost
/// the checked builds their time.
template <class Number>
struct MotorAndLoadOf {
  static constexpr int kRows = 2 * kLanes<Number>;
  using Vector = Eigen::Matrix<double, kRows, 1>;
  Number motor{}, load{};

  /// Motors first, then loads.
  static MotorAndLoadOf from(const Vector& v) {
    MotorAndLoadOf out;
    for (int lane = 0; lane < kLanes<Number>; ++lane) {
      set_lane(out.motor, lane, v[lane]);
      set_lane(out.load, lane, v[lane + kLanes<Number>]);
    }
    return out;
  }
  Vector as_vector() const {
    Vector v;
    for (int lane = 0; lane < kLanes<Number>; ++lane) {
      v[lane] = lane_of(motor, lane);
      v[lane + kLanes<Number>] = lane_of(load, lane);
    }
    return v;
  }
};
using MotorAndLoad = MotorAndLoadOf<double>;

template <class Number>
MotorAndLoadOf<Number> operator+(MotorAndLoadOf<Number> a, MotorAndLoadOf<Number> b) {
  return {a.motor + b.motor, a.load + b.load};
}
template <class Number>
MotorAndLoadOf<Number> operator-(MotorAndLoadOf<Number> a, MotorAndLoadOf<Number> b) {
  return {a.motor - b.motor, a.load - b.load};
}
template <class Number>
MotorAndLoadOf<Number> operator*(double x, MotorAndLoadOf<Number> a) {
  return {x * a.motor, x * a.load};
}
template <class Number>
bool is_finite(MotorAndLoadOf<Number> a) {
  return std::isfinite(sum_of(a.motor + a.load));
}

}  // namespace gazewright
