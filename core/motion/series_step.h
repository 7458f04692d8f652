#pragma once

#include "core/motion/motion_series.h"

/// How far a step goes along a series: for its error, and to where the branch changes.
namespace gazewright {

inline constexpr double kSeriesCost = 3;      // of a series, in evaluations
inline constexpr double kEnvelopePart = 0.1;  // of a parabola's error at its end, over the step

/// The most series in a sample.
inline int most_series(double sample_s) {
  return static_cast<int>(std::clamp(8e5 * sample_s, 100.0, 1000.0));
}

template <class Number>
struct SeriesPart {
  Number part, error;  ///< of the series; of all of it, in tolerances
  Number lag_part;     ///< what the lag still has to go there, of its start
  MotorAndLoadOf<Number> angle_rad, speed_radps;  ///< there
  MaskOf<Number> leaves;                          ///< another branch is there
};

/// Whether the teeth touch or part on a way there and back that ends where it began, and where it
/// turns.
template <class Number>
MaskOf<Number> turns_elsewhere(const DriveTrain<Number>& train, const MotionSeries<Number>& series,
                               const SeriesPart<Number>& to, Number& turn) {
  const Number rate = train.twist_of(series.start_speed()),
               to_rate = train.twist_of(to.speed_radps);
  const auto turns = rate * to_rate < 0;
  if (!any_of(turns)) return turns;
  turn = select(turns, to.part * (rate / (rate - to_rate)), to.part);
  const Number from = train.twist_of(series.start_angle()), half = train.half_gap_rad();
  const Number then = from + (series.sum(series.twist_rad, turn) - series.twist_rad[0]);
  return turns & (((then > half) != (from > half)) | ((then < -half) != (from < -half)));
}

/// @param end_part  what all of h leaves of the lag
template <class Number>
[[gnu::always_inline]] inline SeriesPart<Number> part_of_series(
    const AxisDynamicsOf<Number>& dynamics, const MotionSeries<Number>& series,
    const StepTolerance<Number>& tolerance, const TorqueLag<Number>& lag, Number h,
    Number end_part) {
  const DriveTrain<Number>& train = dynamics.train();
  const Number one = all<Number>(1);
  const auto from_angle = series.start_angle(), from_speed = series.start_speed();
  const auto whole = tolerance.allows(series.last(), from_speed);
  SeriesPart<Number> to{one, Number{}, end_part, {}, {}, {}};
  bool is_all = all_of(whole);
  if (!is_all) {
    to.error = select(whole, to.error, tolerance.error_of(series.last(), from_speed));
    to.part = select(whole, one, 0.9 * root_of(per_fourth_root_of(most_of(to.error, one))));
  }
  to.speed_radps = is_all ? series.end_speed() : series.speed(to.part);
  const ActingSeries<Number>& acting = series.acting;
  if (any_of(acting.is_limited)) {
    const Number gained = to.speed_radps.motor - from_speed.motor;
    const Number off_Nm = acting.start_Nm + gained * (acting.by_speed + gained * acting.by_square) -
                          dynamics.acting_torque.at(4 * acting.wanted_Nm, to.speed_radps.motor);
    const Number off = kEnvelopePart * magnitude(off_Nm) * train.per_rotor() * (h * to.part) *
                       tolerance.per_motor_speed(from_speed.motor);
    const auto bad = acting.is_limited & (off > one) & (off < kSenseless);
    if (any_of(bad)) {
      is_all = false;
      to.part = select(bad, to.part * (0.9 * per_fourth_root_of(most_of(off, one))), to.part);
      to.speed_radps = series.speed(to.part);
    }
  }
  to.angle_rad = is_all ? series.end_angle() : series.angle(to.part);
  if (!is_all)
    to.lag_part = select(to.part == one, end_part, decay_of(lag.rate_1ps * (h * to.part)));
  const Number end_Nm = lag.command_Nm + lag.gap_Nm * to.lag_part;
  const auto limited = dynamics.acting_torque.at(end_Nm, to.speed_radps.motor) != end_Nm;
  to.leaves = (train.branch(from_angle, from_speed) != train.branch(to.angle_rad, to.speed_radps)) |
              (limited != acting.is_limited);
  Number turn = to.part;
  const MaskOf<Number> elsewhere = turns_elsewhere(train, series, to, turn);
  to.part = select(elsewhere, turn, to.part);
  to.leaves = (to.leaves | elsewhere) & (to.error < kSenseless);
  return to;
}

/// A distance over what it loses on the way; 2 throughout where it keeps its sign.
template <class Number>
struct Loss {
  Number per, kept;
  Loss(Number at_start, Number at_end) {
    const auto changes = (at_start > 0) != (at_end > 0);
    per = select(changes, 1 / (at_start - at_end), Number{});
    kept = select(changes, Number{}, all<Number>(2));
  }
  Number of(Number distance) const { return distance * per + kept; }
};

/// Where the branch changes, just past the change, as a part of the series. @param until  a part at
/// which the branch is another
template <class Number>
[[gnu::always_inline]] inline Number part_within_branch(const AxisDynamicsOf<Number>& dynamics,
                                                        const MotionSeries<Number>& series,
                                                        const TorqueLag<Number>& lag, Number h,
                                                        Number until) {
  const DriveTrain<Number>& train = dynamics.train();
  const auto angle = series.start_angle(), speed = series.start_speed();
  const auto to_angle = series.angle(until), to_speed = series.speed(until);
  const auto edges = train.edges(angle, speed, to_angle, to_speed);
  const auto from = train.distances(edges, train.twist_of(angle), speed);
  const auto to = train.distances(edges, train.twist_of(to_angle), to_speed);
  const Loss<Number> twist(from.twist, to.twist), tooth(from.tooth, to.tooth);
  const Loss<Number> motor(from.motor, to.motor), load(from.load, to.load);
  const auto room_at = [&](Number x, Number radps) {
    return dynamics.acting_torque.room(lag.at(h * x), radps);
  };
  const Loss<Number> room(room_at(Number{}, speed.motor), room_at(until, to_speed.motor));
  const bool limits = any_of(room.per != 0);
  const Number untouched = train.twist_of(angle) - series.twist_rad[0];
  const auto ahead = [&](Number part) -> Number {
    const Number x = part * until;
    const auto radps = series.speed(x);
    const auto now = train.distances(edges, series.sum(series.twist_rad, x) + untouched, radps);
    Number least = least_of(least_of(twist.of(now.twist), tooth.of(now.tooth)),
                            least_of(motor.of(now.motor), load.of(now.load)));
    if (limits) least = least_of(least, room.of(room_at(x, radps.motor)));
    return least;
  };
  return most_of(until * first_zero<Number>(ahead, 1e-6), all<Number>(kShortestCut));
}

}  // namespace gazewright
