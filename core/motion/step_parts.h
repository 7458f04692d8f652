#pragma once

#include "core/motion/explicit_step.h"
#include "core/motion/step_dynamics.h"

/// The parts of a step within a control sample that one axis, both axes and lanes share: the lag
/// of the torque, the error in tolerances, and where a step leaves its region.
namespace gazewright {

inline constexpr double kShortestCut = 1e-6;  // of a sample
inline constexpr double kLeastStep = 1e-15;   // of a sample: from zero no step would grow again
inline constexpr double kHopeless = 1e6;      // error, in tolerances, at which a step shows nothing
inline constexpr double kSenseless = 1e12;    // error of a step that gives no numbers
inline constexpr double kWorthCutting = 0.1;  // error from which a change of region is sought
inline constexpr double kAllButAll = 1 - 1e-12;  // of a sample: from there it is over
inline constexpr int kMostStiffSteps = 400;
inline constexpr double kWorthWhile =
    100;  // evaluations in a sample that make the stiff method try
inline constexpr double kExplicitCost = 6, kStiffCost = 12;  // of a step, in evaluations
inline constexpr double kForgetting = 0.98;  // of what the other method took, in a sample

/// T_e within a sample: the lag of first order in closed form.
template <class Number>
struct TorqueLag {
  Number command_Nm, gap_Nm, rate_1ps;
  Number at(TimeOf<Number> time_s) const {
    return command_Nm + gap_Nm * decay_of(rate_1ps * time_s);
  }
};

/// What is left of the lag's gap at the stages of an explicit step, as parts of the gap at its
/// start.
template <class Number>
struct LagParts {
  Number stage[5];  ///< at 1/5, 3/10, 4/5, 8/9 and the end of the step

  LagParts() = default;
  LagParts(Number rate_1ps, TimeOf<Number> step_s) {
    const Number tenth = decay_of(rate_1ps * (step_s * (1.0 / 10)));
    stage[0] = tenth * tenth;
    stage[1] = stage[0] * tenth;
    const Number four = stage[0] * stage[0];
    stage[2] = four * four;
    stage[3] = decay_of(rate_1ps * (step_s * (8.0 / 9)));
    stage[4] = stage[2] * stage[0];
  }
  Number end() const { return stage[4]; }
};

/// Errors that a step may have. A part of the move, and of a speed.
template <class Number>
struct StepTolerance {
  MotorAndLoadOf<Number> per_angle_rad, speed_radps;

  StepTolerance() = default;
  StepTolerance(Number move_rad, Number ratio) {
    constexpr double kPositionPart = 3e-10, kSpeedPart_1ps = 3e-7;
    const Number size_rad = most_of(magnitude(move_rad), all<Number>(1e-6));
    const MotorAndLoadOf<Number> sizes{size_rad * ratio, size_rad};
    per_angle_rad = {1 / (kPositionPart * sizes.motor), 1 / (kPositionPart * sizes.load)};
    speed_radps = kSpeedPart_1ps * sizes;
  }

  /// Whether no error is larger than its tolerance.
  MaskOf<Number> allows(const MotionStep<Number>& step,
                        const MotorAndLoadOf<Number>& from_radps) const {
    const Number one = all<Number>(1);
    return (magnitude(step.speed_error_radps.motor) <=
            of_speed(speed_radps.motor, from_radps.motor)) &
           (magnitude(step.speed_error_radps.load) <= of_speed(speed_radps.load, from_radps.load)) &
           (magnitude(step.angle_error_rad.motor) * per_angle_rad.motor <= one) &
           (magnitude(step.angle_error_rad.load) * per_angle_rad.load <= one);
  }
  /// Tolerances in an error of the motor's speed, each. [s/rad]
  Number per_motor_speed(Number from_radps) const {
    return 1 / of_speed(speed_radps.motor, from_radps);
  }

  /// The largest error in tolerances.
  TimeOf<Number> error_of(const MotionStep<Number>& step,
                          const MotorAndLoadOf<Number>& from_radps) const {
    using Time = TimeOf<Number>;
    const Number motor_radps = of_speed(speed_radps.motor, from_radps.motor);
    const Number load_radps = of_speed(speed_radps.load, from_radps.load);
    // The larger of both quotients, by one division.
    const Number speeds = most_of(magnitude(step.speed_error_radps.motor) * load_radps,
                                  magnitude(step.speed_error_radps.load) * motor_radps) /
                          (motor_radps * load_radps);
    const Number angles = most_of(magnitude(step.angle_error_rad.motor) * per_angle_rad.motor,
                                  magnitude(step.angle_error_rad.load) * per_angle_rad.load);
    const Time worst = largest_of(most_of(speeds, angles));
    // Neither an error nor a state that is no number counts as good.
    const auto sense = is_finite(step.speed_radps + step.angle_rad) & (worst < kSenseless);
    return select(sense, worst, all<Time>(kSenseless));
  }

 private:
  static Number of_speed(Number least_radps, Number from_radps) {
    constexpr double kRelative = 3e-9;
    return least_radps + kRelative * magnitude(from_radps);
  }
};

/// One step of the stiff method, with slopes of motor and load or, for both axes, in rows.
template <class Number, class Time, class Acceleration>
[[gnu::always_inline]] inline MotionStep<Number> stiff_step(const Acceleration& acceleration,
                                                            const AxisSlopes<Number>& slopes,
                                                            MotorAndLoadOf<Number> angle_rad,
                                                            MotorAndLoadOf<Number> speed_radps,
                                                            Time h) {
  const auto to = rosenbrock_step(acceleration, slopes, angle_rad, speed_radps, h);
  return {to.position, to.speed, to.position_error, to.speed_error};
}
template <class Acceleration>
MotionStep<BothAxes> stiff_step(const Acceleration& acceleration, const SlopesInRows<4>& slopes,
                                MotorAndLoadOf<BothAxes> angle_rad,
                                MotorAndLoadOf<BothAxes> speed_radps, double h) {
  using Pair = MotorAndLoadOf<BothAxes>;
  const auto in_rows = [&](double c, const Pair::Vector& p, const Pair::Vector& v) {
    return acceleration(c, Pair::from(p), Pair::from(v)).as_vector();
  };
  const auto to =
      rosenbrock_step(in_rows, slopes, angle_rad.as_vector(), speed_radps.as_vector(), h);
  return {Pair::from(to.position), Pair::from(to.speed), Pair::from(to.position_error),
          Pair::from(to.speed_error)};
}

/// An explicit step from its start to its end, which lies in another region.
template <class Number>
struct LeavingStep {
  MotorAndLoadOf<Number> angle_rad, speed_radps, radps2;  ///< at its start
  Number gap_Nm;                                          ///< of the lag, at its start
  MotorAndLoadOf<Number> to_rad, to_radps, to_radps2;     ///< at its end
  Number command_Nm, rate_1ps, end_part;  ///< of the lag; what the step leaves of it
};

/// The cubic through the values and slopes at both ends of a step, over what it loses on the way;
/// 2 throughout where it keeps its sign.
template <class Number>
struct CubicLoss {
  Number from, slope, to, to_slope;

  CubicLoss(Number at_start, Number start_slope, Number at_end, Number end_slope) {
    const auto changes = (at_start > 0) != (at_end > 0);
    const Number by = select(changes, 1 / (at_start - at_end), Number{});
    from = select(changes, at_start * by, all<Number>(2));
    to = select(changes, at_end * by, all<Number>(2));
    slope = start_slope * by, to_slope = end_slope * by;
  }
};

/// Weights of the values and slopes at both ends for a place in between.
template <class Time>
struct CubicWeights {
  Time from, slope, to, to_slope;

  explicit CubicWeights(Time x) {
    const Time u = 1 - x, x2 = x * x, u2 = u * u;
    from = u2 * (1 + 2 * x), slope = u2 * x, to = x2 * (1 + 2 * u), to_slope = -(x2 * u);
  }
  template <class Number>
  Number of(Number at_start, Number start_slope, Number at_end, Number end_slope) const {
    return at_start * from + start_slope * slope + at_end * to + end_slope * to_slope;
  }
  template <class Number>
  Number of(const CubicLoss<Number>& cubic) const {
    return of(cubic.from, cubic.slope, cubic.to, cubic.to_slope);
  }
};

/// Where a function that is above zero at 0 and below it at 1 passes −`past`, within a tenth less
/// of it; 1 where it stays above. Regula falsi; an end that stays twice weighs half.
template <class Time, class Function>
[[gnu::always_inline]] inline Time first_zero(const Function& f, double past) {
  Time low{}, high = all<Time>(1), found = high, below = f(low) + past, above = f(high) + past;
  auto searching = above < 0, was_past = below < 0, was_short = was_past;
  for (int i = 0; i < 60 && any_of(searching); ++i) {
    const Time falsi = low + (high - low) * below / (below - above);
    const Time at = select((falsi > low) & (falsi < high), falsi, 0.5 * (low + high));
    const Time now = f(at) + past;
    const auto is_past = now < 0, is_short = !is_past;
    below = select(is_past, select(was_past, 0.5 * below, below), now);
    above = select(is_past, now, select(was_short, 0.5 * above, above));
    low = select(is_past, low, at);
    high = select(is_past, at, high);
    const auto hit = magnitude(now) < 0.9 * past;
    found = select(searching, select(hit, at, high), found);
    searching = searching & !hit & !(high - low < 1e-6 * high);
    was_past = is_past, was_short = is_short;
  }
  return found;
}

/// How far it goes into a step until the region changes, as a part of the step just past the
/// change; 1 where no change is found. What has another sign at both ends is taken along the cubics
/// through both.
template <class Dynamics, class Number>
[[gnu::always_inline]] inline TimeOf<Number> part_within_region(const Dynamics& dynamics,
                                                                const LeavingStep<Number>& step,
                                                                TimeOf<Number> h) {
  using Time = TimeOf<Number>;
  const DriveTrain<Number>& train = dynamics.train();
  const auto edges = train.edges(step.angle_rad, step.speed_radps, step.to_rad, step.to_radps);
  const auto from = train.distances(edges, step.angle_rad, step.speed_radps);
  const auto to = train.distances(edges, step.to_rad, step.to_radps);
  const auto slope = train.rates(edges, step.speed_radps, step.radps2);
  const auto to_slope = train.rates(edges, step.to_radps, step.to_radps2);
  const CubicLoss<Number> twist{from.twist, h * slope.twist, to.twist, h * to_slope.twist};
  const CubicLoss<Number> tooth{from.tooth, h * slope.tooth, to.tooth, h * to_slope.tooth};
  const CubicLoss<Number> motor{from.motor, h * slope.motor, to.motor, h * to_slope.motor};
  const CubicLoss<Number> load{from.load, h * slope.load, to.load, h * to_slope.load};

  const Number lag = step.rate_1ps * h, end_gap_Nm = step.gap_Nm * step.end_part;
  const auto room_at = [&](Number gap_Nm, Number radps) {
    return dynamics.acting_torque.room(step.command_Nm + gap_Nm, radps);
  };
  const Number room = room_at(step.gap_Nm, step.speed_radps.motor);
  const Number to_room = room_at(end_gap_Nm, step.to_radps.motor);
  const auto is_limited = (room > 0) != (to_room > 0);
  const Number per_room = 1 / (room - to_room);
  const bool limits = any_of(is_limited);

  const auto ahead = [&](Time x) -> Time {
    const CubicWeights<Time> at(x);
    Number least =
        least_of(least_of(at.of(twist), at.of(tooth)), least_of(at.of(motor), at.of(load)));
    if (limits) {
      const Number gap_Nm = at.of(step.gap_Nm, -lag * step.gap_Nm, end_gap_Nm, -lag * end_gap_Nm);
      const Number radps =
          at.of(step.speed_radps.motor, h * slope.motor, step.to_radps.motor, h * to_slope.motor);
      const Number now = room_at(gap_Nm, radps) * per_room;
      least = select(is_limited, least_of(least, now), least);
    }
    return smallest_of(least);
  };
  return first_zero<Time>(ahead, 1e-6);
}

}  // namespace gazewright
