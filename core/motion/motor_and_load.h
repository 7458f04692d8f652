#pragma once

#include <Eigen/Core>
#include <cmath>

#include "core/motion/lanes.h"

namespace gazewright {

/// Angles, speeds or accelerations of motor and output, of one axis or of several side by side.
/// Plain numbers, because this is the innermost arithmetic of a simulated step: matrix expressions
/// cost the checked builds their time.
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
  MotorAndLoadOf& operator+=(MotorAndLoadOf b) { return *this = *this + b; }
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
/// @param x  a number, of each lane or of all
template <class Factor, class Number>
MotorAndLoadOf<Number> operator*(Factor x, MotorAndLoadOf<Number> a) {
  return {x * a.motor, x * a.load};
}
template <class Mask, class Number>
MotorAndLoadOf<Number> select(Mask is, MotorAndLoadOf<Number> yes, MotorAndLoadOf<Number> no) {
  return {select(is, yes.motor, no.motor), select(is, yes.load, no.load)};
}
/// Whether both are finite, in all lanes that share a time.
template <class Number>
auto is_finite(MotorAndLoadOf<Number> a) {
  const Number sum = a.motor + a.load;
  if constexpr (kHasOwnTimes<Number>)
    return is_finite<Number>(sum);
  else
    return is_finite<double>(sum_of(sum));
}

/// A matrix of two rows for motor and load.
template <class Number>
struct TwoByTwo {
  MotorAndLoadOf<Number> motor, load;  ///< its rows

  friend MotorAndLoadOf<Number> operator*(const TwoByTwo& m, MotorAndLoadOf<Number> v) {
    return {m.motor.motor * v.motor + m.motor.load * v.load,
            m.load.motor * v.motor + m.load.load * v.load};
  }
};

}  // namespace gazewright
