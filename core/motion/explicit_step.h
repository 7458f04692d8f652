#pragma once

#include "core/motion/motor_and_load.h"

namespace gazewright {

template <class Number>
struct AxisStateOf {
  MotorAndLoadOf<Number> angle_rad, speed_radps;
  Number torque_Nm{};  ///< T_e: lags the command, not yet clamped to the envelope
};
using AxisState = AxisStateOf<double>;

/// End of one step of a method, and its error.
template <class Number>
struct MotionStep {
  MotorAndLoadOf<Number> angle_rad, speed_radps, angle_error_rad, speed_error_radps;
};

/// Step of order 5 with an embedded one of order 4, whose last stage is the next step's first.
/// Source: Dormand & Prince, J. Comput. Appl. Math. 6 (1980) 19 (coefficients from memory; a wrong
/// one would show in step_test.cpp and in the comparison with SciPy).
template <class Number, class Time, class Acceleration>
[[gnu::always_inline]] inline MotionStep<Number> explicit_step(const Acceleration& acceleration,
                                                               const AxisStateOf<Number>& from,
                                                               MotorAndLoadOf<Number> a1, Time h,
                                                               MotorAndLoadOf<Number>& last) {
  using Pair = MotorAndLoadOf<Number>;
  const Pair p = from.angle_rad, v1 = from.speed_radps;
  const Pair v2 = v1 + h * (1.0 / 5 * a1);
  const Pair a2 = acceleration(0, p + h * (1.0 / 5 * v1), v2);
  const Pair v3 = v1 + h * (3.0 / 40 * a1 + 9.0 / 40 * a2);
  const Pair a3 = acceleration(1, p + h * (3.0 / 40 * v1 + 9.0 / 40 * v2), v3);
  const auto fourth = [h](Pair y, Pair k1, Pair k2, Pair k3) {
    return y + h * (44.0 / 45 * k1 - 56.0 / 15 * k2 + 32.0 / 9 * k3);
  };
  const Pair v4 = fourth(v1, a1, a2, a3);
  const Pair a4 = acceleration(2, fourth(p, v1, v2, v3), v4);
  const auto fifth = [h](Pair y, Pair k1, Pair k2, Pair k3, Pair k4) {
    return y +
           h * (19372.0 / 6561 * k1 - 25360.0 / 2187 * k2 + 64448.0 / 6561 * k3 - 212.0 / 729 * k4);
  };
  const Pair v5 = fifth(v1, a1, a2, a3, a4);
  const Pair a5 = acceleration(3, fifth(p, v1, v2, v3, v4), v5);
  const auto sixth = [h](Pair y, Pair k1, Pair k2, Pair k3, Pair k4, Pair k5) {
    return y + h * (9017.0 / 3168 * k1 - 355.0 / 33 * k2 + 46732.0 / 5247 * k3 + 49.0 / 176 * k4 -
                    5103.0 / 18656 * k5);
  };
  const Pair v6 = sixth(v1, a1, a2, a3, a4, a5);
  const Pair a6 = acceleration(4, sixth(p, v1, v2, v3, v4, v5), v6);
  const auto end = [h](Pair y, Pair k1, Pair k3, Pair k4, Pair k5, Pair k6) {
    return y + h * (35.0 / 384 * k1 + 500.0 / 1113 * k3 + 125.0 / 192 * k4 - 2187.0 / 6784 * k5 +
                    11.0 / 84 * k6);
  };
  const auto error = [h](Pair k1, Pair k3, Pair k4, Pair k5, Pair k6, Pair k7) {
    return h * (71.0 / 57600 * k1 - 71.0 / 16695 * k3 + 71.0 / 1920 * k4 - 17253.0 / 339200 * k5 +
                22.0 / 525 * k6 - 1.0 / 40 * k7);
  };
  MotionStep<Number> to;
  to.angle_rad = end(p, v1, v3, v4, v5, v6);
  to.speed_radps = end(v1, a1, a3, a4, a5, a6);
  last = acceleration(4, to.angle_rad, to.speed_radps);
  to.angle_error_rad = error(v1, v3, v4, v5, v6, to.speed_radps);
  to.speed_error_radps = error(a1, a3, a4, a5, a6, last);
  return to;
}

}  // namespace gazewright
