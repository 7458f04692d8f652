#pragma once

#include <cmath>
#include <numbers>

#include "core/motion/loop_points.h"

namespace gazewright {

/// An open loop at one frequency, in factors of which the phase can be followed by itself. Zeros
/// and poles of the train lie to the left of the imaginary axis or, without any damping, on it:
/// their phase can only rise, and passes one on the axis by half a turn up. So the loop's phase
/// falls at a resonance however narrow it is.
struct LoopValue {
  using Complex = LoopPoint::Complex;

  Complex smooth, zeros, poles;  ///< the loop is smooth·zeros/poles
  bool poles_rise = true;        ///< else they move with the gains, anywhere

  Complex value() const { return smooth * zeros / poles; }
  double gain() const { return std::sqrt(std::norm(smooth) * std::norm(zeros) / std::norm(poles)); }
};

inline LoopValue speed_value(const LoopPoint& point, const AxisControl& control) {
  return {point.controller(control) * point.estimator * point.lag, point.numerator,
          point.determinant, true};
}
inline LoopValue position_value(const LoopPoint& point, const AxisControl& control) {
  const auto forward = point.controller(control) * point.lag;
  return {control.position_gain_1ps * forward, point.numerator,
          point.determinant + forward * point.numerator * point.estimator, false};
}

inline double turn_rad(LoopValue::Complex from, LoopValue::Complex to) {
  return std::arg(to * std::conj(from));
}
/// A turn that is known to go up, but for rounding.
inline double rise_rad(LoopValue::Complex from, LoopValue::Complex to) {
  const double turn = turn_rad(from, to);
  return turn < -0.5 ? turn + 2 * std::numbers::pi : turn;
}
/// How far the loop's phase turns between two neighbouring frequencies.
inline double turn_rad(const LoopValue& from, const LoopValue& to) {
  const double poles =
      from.poles_rise ? rise_rad(from.poles, to.poles) : turn_rad(from.poles, to.poles);
  return turn_rad(from.smooth, to.smooth) + rise_rad(from.zeros, to.zeros) - poles;
}
/// Phase of the lowest frequency. Two integrators and a delay lie just past −180°.
inline double first_phase_rad(const LoopValue& value) {
  const double phase = std::arg(value.value());
  return phase > std::numbers::pi / 2 ? phase - 2 * std::numbers::pi : phase;
}
/// Whether an odd multiple of 180° lies between two phases.
inline bool passes_half_turn(double from_rad, double to_rad) {
  const auto turns = [](double phase) { return std::floor((phase / std::numbers::pi + 1) / 2); };
  return turns(from_rad) != turns(to_rad);
}

}  // namespace gazewright
