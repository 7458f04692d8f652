#include "core/motion/step_advance.h"

#include <numbers>

#include "core/motion/coupled_dynamics.h"

namespace gazewright {
namespace {

constexpr double kRelative = 3e-9;       // of a speed
constexpr double kPositionPart = 3e-10;  // of the move, in one step
constexpr double kSpeedPart_1ps = 3e-7;
constexpr double kShortestCut = 1e-6;  // of a sample
constexpr double kLeastStep = 1e-15;   // of a sample: from zero no step would grow again
constexpr double kHopeless = 1e6;      // error, in tolerances, at which a step shows nothing
constexpr double kSenseless = 1e12;    // error of a step that gives no numbers
constexpr double kWorthCutting = 0.1;  // error from which a change of region is sought
constexpr int kMostStiffSteps = 400;
constexpr double kWorthWhile = 50;  // evaluations in a sample from which the stiff method is tried
constexpr double kExplicitCost = 6, kStiffCost = 12;  // of a step, in evaluations

}  // namespace

SampleScale<double> sample_scale(const AxisModel& model, double move_rad) {
  return {1 / model.control.control_rate_Hz,
          2 * std::numbers::pi * model.control.current_bandwidth_Hz, move_rad, model.gear.ratio};
}

template <class Dynamics>
SampleAdvance<Dynamics>::SampleAdvance(const Dynamics& dynamics, const SampleScale<Number>& scale)
    : dynamics_(dynamics),
      sample_s_(scale.sample_s),
      lag_1ps_(scale.lag_1ps),
      whole_(lag_1ps_, sample_s_),
      most_steps_(static_cast<int>(std::clamp(3e6 * sample_s_, 200.0, 4000.0))),
      step_s_{sample_s_, sample_s_} {
  const Number move_rad = magnitude(scale.move_rad), least_rad = Number{} + 1e-6;
  const Number size_rad = select(move_rad > least_rad, move_rad, least_rad);
  const Pair sizes{size_rad * scale.ratio, size_rad};
  angle_tolerance_rad_ = kPositionPart * sizes;
  speed_tolerance_radps_ = kSpeedPart_1ps * sizes;
}

template <class Dynamics>
void SampleAdvance<Dynamics>::set_sample(double sample_s) {
  if (sample_s == sample_s_) return;
  sample_s_ = sample_s;
  whole_ = LagParts<Number>(lag_1ps_, sample_s);
}

template <class Dynamics>
double SampleAdvance<Dynamics>::error_of(const MotionStep<Number>& step, const State& from) const {
  const auto part = [](Number error, Number tolerance, Number speed) {
    return largest_of(magnitude(error) / (tolerance + kRelative * magnitude(speed)));
  };
  const double worst = std::max(
      {part(step.speed_error_radps.motor, speed_tolerance_radps_.motor, from.speed_radps.motor),
       part(step.speed_error_radps.load, speed_tolerance_radps_.load, from.speed_radps.load),
       part(step.angle_error_rad.motor, angle_tolerance_rad_.motor, Number{}),
       part(step.angle_error_rad.load, angle_tolerance_rad_.load, Number{})});
  // Neither an error nor a state that is no number counts as good.
  return is_finite(step.speed_radps + step.angle_rad) && worst < kSenseless ? worst : kSenseless;
}

template <class Dynamics>
void SampleAdvance<Dynamics>::advance(State& state, Number command_Nm) {
  const TorqueLag<Number> lag{command_Nm, state.torque_Nm - command_Nm, lag_1ps_};
  dynamics_.centre(state.angle_rad.load);
  if (method_ == kStiff || !explicit_sample(state, lag)) stiff_sample(state, lag);
  state.torque_Nm = command_Nm + lag.gap_Nm * whole_.end();
}

/// How far into a step the region changes, just past the change: bisection on the cubic through
/// both ends.
template <class Dynamics>
double SampleAdvance<Dynamics>::cut_s(const State& from, const MotionStep<Number>& to, Pair last,
                                      const TorqueLag<Number>& lag, double done_s,
                                      double step_s) const {
  const auto between = [step_s](double x, Pair y0, Pair d0, Pair y1, Pair d1) -> Pair {
    const double u = 1 - x;
    return u * u * ((1 + 2 * x) * y0 + x * step_s * d0) +
           x * x * ((1 + 2 * u) * y1 - u * step_s * d1);
  };
  double same = 0, other = 1;
  while (other - same > 1e-6 * other) {
    const double x = (same + other) / 2;
    const Pair p = between(x, from.angle_rad, from.speed_radps, to.angle_rad, to.speed_radps);
    const Pair v = between(x, from.speed_radps, start_.acceleration, to.speed_radps, last);
    const bool changed = dynamics_.region(lag.at(done_s + x * step_s), p, v) != start_.region;
    (changed ? other : same) = x;
    if (other * step_s < kShortestCut * sample_s_) break;
  }
  return std::max(other * step_s, kShortestCut * sample_s_);
}

/// False, with the state as it was, where it takes too many steps.
template <class Dynamics>
bool SampleAdvance<Dynamics>::explicit_sample(State& state, const TorqueLag<Number>& lag) {
  State at = state;
  if (!start_.known)
    start_ = {dynamics_.acceleration(at.torque_Nm, at.angle_rad, at.speed_radps),
              dynamics_.region(at.torque_Nm, at.angle_rad, at.speed_radps), true};
  double done_s = 0, h = std::min(step_s_[kExplicit], sample_s_), uncut_s = 0;
  Number gap_Nm = lag.gap_Nm;
  Pair last;
  for (int steps = 1; steps <= most_steps_; ++steps) {
    const bool whole = done_s == 0 && h >= sample_s_, ends = done_s + h >= sample_s_ * (1 - 1e-12);
    if (ends) h = sample_s_ - done_s;
    const LagParts<Number> parts = whole ? whole_ : LagParts<Number>(lag.rate_1ps, h);
    const auto acceleration = [&](int stage, Pair p, Pair v) {
      return dynamics_.acceleration(lag.command_Nm + gap_Nm * parts.stage[stage], p, v);
    };
    const Number end_Nm = lag.command_Nm + gap_Nm * parts.end();
    const MotionStep<Number> to = explicit_step(acceleration, at, start_.acceleration, h, last);
    const double error = error_of(to, at);
    const unsigned region = dynamics_.region(end_Nm, to.angle_rad, to.speed_radps);
    if (region != start_.region && error > kWorthCutting && error < kHopeless) {
      const double cut = cut_s(at, to, last, lag, done_s, h);
      if (h - cut > kShortestCut * sample_s_) {
        uncut_s = std::max(uncut_s, h);
        h = cut;
        continue;
      }
    }
    if (error > 1 && h > kShortestCut * sample_s_) {
      h *= step_factor(error);
      continue;
    }
    at.angle_rad = to.angle_rad;
    at.speed_radps = to.speed_radps;
    start_.acceleration = last;
    start_.region = region;
    done_s += h;
    gap_Nm *= parts.end();
    if (ends) {  // a step cut short says little about the next one
      const double next_s = whole ? h : h * step_factor(error);
      step_s_[kExplicit] = std::max({next_s, step_s_[kExplicit], uncut_s});
      settle_costs(kExplicit, kExplicitCost * steps);
      state = at;
      return true;
    }
    h = step_s_[kExplicit] = std::max(h * step_factor(error), uncut_s);
    uncut_s = 0;
  }
  start_.known = false;
  settle_costs(kExplicit, kExplicitCost * most_steps_);
  return false;
}

/// After its most steps the tolerance grows with each further one, so that it always ends.
template <class Dynamics>
void SampleAdvance<Dynamics>::stiff_sample(State& state, const TorqueLag<Number>& lag) {
  start_.known = false;
  double done_s = 0, h = std::min(step_s_[kStiff], sample_s_), allowed = 1;
  int steps = 0;
  for (bool ends = false; !ends;) {
    if (++steps > kMostStiffSteps) allowed *= 3;
    ends = done_s + h >= sample_s_ * (1 - 1e-12);
    if (ends) h = sample_s_ - done_s;
    const auto acceleration = [&](double c, const typename Pair::Vector& p,
                                  const typename Pair::Vector& v) {
      return dynamics_.acceleration(lag.at(done_s + c * h), Pair::from(p), Pair::from(v))
          .as_vector();
    };
    const Number start_Nm = lag.at(done_s);
    const auto slopes = dynamics_.slopes(start_Nm, lag.rate_1ps * (lag.command_Nm - start_Nm),
                                         state.angle_rad, state.speed_radps);
    const auto result = rosenbrock_step<Pair::kRows>(
        acceleration, slopes, state.angle_rad.as_vector(), state.speed_radps.as_vector(), h);
    const MotionStep<Number> to{Pair::from(result.position), Pair::from(result.speed),
                                Pair::from(result.position_error), Pair::from(result.speed_error)};
    const double error = error_of(to, state) / allowed;
    const double next_s = std::max(h * step_factor(error), kLeastStep * sample_s_);
    if (error > 1) {
      h = next_s;
      ends = false;
      continue;
    }
    state.angle_rad = to.angle_rad;
    state.speed_radps = to.speed_radps;
    done_s += h;
    h = next_s;
    step_s_[kStiff] = ends ? std::max(next_s, step_s_[kStiff]) : next_s;
  }
  settle_costs(kStiff, kStiffCost * steps);
}

/// Remembers what samples took, forgets slowly what the other method took, takes the cheaper.
template <class Dynamics>
void SampleAdvance<Dynamics>::settle_costs(Method used, double cost) {
  cost_[used] = (cost_[used] + cost) / 2;
  double& other = cost_[used == kExplicit ? kStiff : kExplicit];
  other *= 0.98;
  method_ = cost_[kExplicit] <= std::max(cost_[kStiff], kWorthWhile) ? kExplicit : kStiff;
}

template class SampleAdvance<AxisDynamics>;
template class SampleAdvance<CoupledDynamics>;

}  // namespace gazewright
