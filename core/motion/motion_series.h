#pragma once

#include "core/motion/step_parts.h"

/// One axis as a power series in time while it stays in one branch of the model's case
/// distinctions. There its equations are linear but for the envelope, gravity and the loss of teeth
/// at a slow motor, so that each term follows from those before: no further evaluations.
namespace gazewright {

inline constexpr int kTerms = 8;
static_assert(kTerms == 8);  // see MotionSeries::sum
inline constexpr double kPerTerm[kTerms] = {1,       1.0 / 2, 1.0 / 3, 1.0 / 4,
                                            1.0 / 5, 1.0 / 6, 1.0 / 7, 1.0 / 8};

/// Gravity is taken straight where the load turns less than this in a step.
inline constexpr double kStraight_rad = 5e-3;

/// The torque that acts in the motor: the lagging one, or the envelope as a parabola of the speed.
template <class Number>
struct ActingSeries {
  Number wanted_Nm{}, start_Nm{};  ///< of the lag, and what acts of it
  MaskOf<Number> is_limited{};     ///< those differ
  Number gap_Nm{}, lag{};          ///< free: what the lag still has to go; −rate·time
  Number by_speed{}, by_square{};  ///< limited: of the speed that was gained
};

/// Terms over the part of a time h that has gone, 0 to 1.
template <class Number>
struct MotionSeries {
  using Pair = MotorAndLoadOf<Number>;
  using Terms = Number[kTerms + 1];

  Terms motor_radps, load_radps, motor_rad, load_rad;
  Terms twist_rad;  ///< from where the teeth touch
  ActingSeries<Number> acting;

  /// By pairs of pairs, so that few operations wait for each other.
  static Number sum(const Terms& t, Number x) {
    const Number x2 = x * x, x4 = x2 * x2;
    const Number low = (t[0] + x * t[1]) + x2 * (t[2] + x * t[3]);
    const Number high = (t[4] + x * t[5]) + x2 * (t[6] + x * t[7]);
    return low + x4 * (high + x4 * t[8]);
  }
  /// The same bits as at 1.
  static Number sum(const Terms& t) {
    const Number low = (t[0] + t[1]) + (t[2] + t[3]), high = (t[4] + t[5]) + (t[6] + t[7]);
    return low + (high + t[8]);
  }
  Pair speed(Number x) const { return {sum(motor_radps, x), sum(load_radps, x)}; }
  Pair angle(Number x) const { return {sum(motor_rad, x), sum(load_rad, x)}; }
  Pair end_speed() const { return {sum(motor_radps), sum(load_radps)}; }
  Pair end_angle() const { return {sum(motor_rad), sum(load_rad)}; }
  Pair start_speed() const { return {motor_radps[0], load_radps[0]}; }
  Pair start_angle() const { return {motor_rad[0], load_rad[0]}; }
  /// The last terms as the errors of a step over the whole time.
  MotionStep<Number> last() const {
    return {start_angle(),
            start_speed(),
            {motor_rad[kTerms], load_rad[kTerms]},
            {motor_radps[kTerms], load_radps[kTerms]}};
  }
};

/// The envelope about the speeds that a motor goes through: its value now, half way and then.
template <class Number>
[[gnu::noinline]] void follow_envelope(ActingSeries<Number>& acting,
                                       const ActingTorqueOf<Number>& envelope, Number radps,
                                       Number gain_radps) {
  const Number least = all<Number>(1e-3) + 1e-4 * magnitude(radps);
  const Number step =
      select(magnitude(gain_radps) > least, gain_radps, with_sign(least, gain_radps));
  const Number far_Nm = 4 * acting.wanted_Nm, per_step = 1 / step;
  const Number half_Nm = envelope.at(far_Nm, radps + 0.5 * step) - acting.start_Nm;
  const Number whole_Nm = envelope.at(far_Nm, radps + step) - acting.start_Nm;
  const Number slope = (4 * half_Nm - whole_Nm) * per_step;
  const Number square = (2 * whole_Nm - 4 * half_Nm) * (per_step * per_step);
  acting.by_speed = select(acting.is_limited, slope, Number{});
  acting.by_square = select(acting.is_limited, square, Number{});
  acting.gap_Nm = select(acting.is_limited, Number{}, acting.gap_Nm);
}

/// Both equations of motion as rates over the time h, per speed and twist.
template <class Number>
struct SeriesRates {
  Number motor_by_motor, motor_by_load, motor_by_twist, load_by_motor, load_by_load, load_by_twist;

  SeriesRates(const TrainTerms<Number>& terms, Number per_ratio, Number per_motor,
              Number per_load) {
    const Number by_tooth = per_motor * terms.per_tooth, rubs = per_load * terms.damping_Nmsprad;
    motor_by_load = by_tooth * terms.damping_Nmsprad;
    motor_by_motor = per_motor * terms.motor_viscous_Nmsprad + motor_by_load * per_ratio;
    motor_by_twist = by_tooth * terms.stiffness_Nmprad;
    load_by_motor = rubs * per_ratio;
    load_by_load = per_load * terms.load_viscous_Nmsprad + rubs;
    load_by_twist = per_load * terms.stiffness_Nmprad;
  }
};

/// What acts at the start; a limited torque is not followed yet.
template <class Number>
ActingSeries<Number> acting_series(const ActingTorqueOf<Number>& envelope, Number motor_radps,
                                   const TorqueLag<Number>& lag, Number h) {
  ActingSeries<Number> acting;
  acting.wanted_Nm = lag.command_Nm + lag.gap_Nm;
  acting.start_Nm = envelope.at(acting.wanted_Nm, motor_radps);
  acting.is_limited = acting.start_Nm != acting.wanted_Nm;
  acting.gap_Nm = lag.gap_Nm;
  acting.lag = -(lag.rate_1ps * h);
  return acting;
}

/// A term of the product of two series, each without its first terms.
template <class Number>
[[gnu::always_inline]] inline Number product_term(const Number* a, const Number* b, int term,
                                                  int first) {
  Number sum{};
#pragma GCC unroll 8
  for (int j = first; j <= term - first; ++j) sum += a[j] * b[term - j];
  return sum;
}

/// The series from a state over a time h under a lag that began `gap_Nm` off its command.
template <class Number>
[[gnu::always_inline]] inline MotionSeries<Number> motion_series(
    const AxisDynamicsOf<Number>& dynamics, MotorAndLoadOf<Number> angle,
    MotorAndLoadOf<Number> speed, const TorqueLag<Number>& lag, Number h) {
  const DriveTrain<Number>& train = dynamics.train();
  const TrainTerms<Number> terms = train.terms(angle, speed);
  const Number per_ratio = train.per_ratio();
  const Number per_motor = h * train.per_rotor(), per_load = h * dynamics.per_load();
  const SeriesRates<Number> rates(terms, per_ratio, per_motor, per_load);
  MotionSeries<Number> out;
  ActingSeries<Number>& acting = out.acting;
  acting = acting_series(dynamics.acting_torque, speed.motor, lag, h);
  const bool limited = any_of(acting.is_limited), slow = any_of(terms.slow_loss_sprad != 0);
  Number push = per_motor * (acting.start_Nm + terms.motor_Nm);
  if (limited)
    follow_envelope(acting, dynamics.acting_torque, speed.motor,
                    push - rates.motor_by_twist * terms.windup_rad +
                        rates.motor_by_load * speed.load - rates.motor_by_motor * speed.motor);
  const auto pull = dynamics.pull(angle.load);
  Number pulls = per_load * (terms.load_Nm + pull.torque_Nm), lags = per_motor * acting.gap_Nm;
  const Number pull_slope = per_load * pull.slope_Nmprad;
  const Number curve = select(magnitude(h * speed.load) > all<Number>(kStraight_rad),
                              per_load * pull.curve_Nmprad2, Number{});
  const bool curved = any_of(curve != 0);
  const Number slow_loss = per_motor * terms.slow_loss_sprad;
  out.motor_rad[0] = angle.motor, out.load_rad[0] = angle.load;
  out.motor_radps[0] = speed.motor, out.load_radps[0] = speed.load;
  out.twist_rad[0] = terms.windup_rad;
  Number tooth_Nm[kTerms];
#pragma GCC unroll 8
  for (int k = 0; k < kTerms; ++k) {
    const Number vm = out.motor_radps[k], vl = out.load_radps[k], twist = out.twist_rad[k];
    Number motor = ((push - rates.motor_by_twist * twist) + rates.motor_by_load * vl) -
                   rates.motor_by_motor * vm;
    if (slow) {
      tooth_Nm[k] = terms.stiffness_Nmprad * twist + terms.damping_Nmsprad * (per_ratio * vm - vl);
      motor -= slow_loss * product_term(tooth_Nm, out.motor_radps, k, 0);
    }
    if (limited && k > 0)
      motor +=
          per_motor * (acting.by_speed * vm +
                       acting.by_square * product_term(out.motor_radps, out.motor_radps, k, 1));
    const Number t = h * kPerTerm[k];
    out.motor_radps[k + 1] = kPerTerm[k] * motor;
    out.load_radps[k + 1] =
        kPerTerm[k] * (((pulls + rates.load_by_twist * twist) + rates.load_by_motor * vm) -
                       rates.load_by_load * vl);
    out.motor_rad[k + 1] = t * vm;
    out.load_rad[k + 1] = t * vl;
    out.twist_rad[k + 1] = per_ratio * out.motor_rad[k + 1] - out.load_rad[k + 1];
    lags = lags * (acting.lag * kPerTerm[k]);
    push = lags;
    pulls = pull_slope * out.load_rad[k + 1];
    if (curved) pulls += curve * product_term(out.load_rad, out.load_rad, k + 1, 1);
  }
  return out;
}

}  // namespace gazewright
