#include "core/motion/step_advance.h"

#include <numbers>

#include "core/motion/coupled_dynamics.h"

namespace gazewright {
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
      most_steps_(most_explicit_steps(sample_s_)),
      tolerance_(scale.move_rad, scale.ratio),
      step_s_{sample_s_, sample_s_} {}

template <class Dynamics>
void SampleAdvance<Dynamics>::set_sample(double sample_s) {
  if (sample_s == sample_s_) return;
  sample_s_ = sample_s;
  whole_ = LagParts<Number>(lag_1ps_, sample_s);
}

template <class Dynamics>
void SampleAdvance<Dynamics>::advance(State& state, Number command_Nm) {
  const TorqueLag<Number> lag{command_Nm, state.torque_Nm - command_Nm, lag_1ps_};
  dynamics_.centre(state.angle_rad.load);
  if (method_ == kStiff || !explicit_sample(state, lag)) stiff_sample(state, lag);
  state.torque_Nm = command_Nm + lag.gap_Nm * whole_.end();
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
    const bool whole = done_s == 0 && h >= sample_s_, ends = done_s + h >= sample_s_ * kAllButAll;
    if (ends) h = sample_s_ - done_s;
    const LagParts<Number> parts = whole ? whole_ : LagParts<Number>(lag.rate_1ps, h);
    const auto acceleration = [&](int stage, Pair p, Pair v) {
      return dynamics_.acceleration(lag.command_Nm + gap_Nm * parts.stage[stage], p, v);
    };
    const Number end_Nm = lag.command_Nm + gap_Nm * parts.end();
    const MotionStep<Number> to = explicit_step(acceleration, at, start_.acceleration, h, last);
    const double error = tolerance_.error_of(to, at.speed_radps);
    const unsigned region = dynamics_.region(end_Nm, to.angle_rad, to.speed_radps);
    if (region != start_.region && error > kWorthCutting && error < kHopeless) {
      const LeavingStep<Number> leaving{
          at.angle_rad,   at.speed_radps, start_.acceleration, gap_Nm,       to.angle_rad,
          to.speed_radps, last,           lag.command_Nm,      lag.rate_1ps, parts.end()};
      const double cut =
          std::max(h * part_within_region(dynamics_, leaving, h), kShortestCut * sample_s_);
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
    ends = done_s + h >= sample_s_ * kAllButAll;
    if (ends) h = sample_s_ - done_s;
    const Number start_Nm = lag.at(done_s);
    const auto slopes = dynamics_.slopes(start_Nm, lag.rate_1ps * (lag.command_Nm - start_Nm),
                                         state.angle_rad, state.speed_radps);
    const auto acceleration = [&](double c, Pair p, Pair v) {
      return dynamics_.acceleration(lag.at(done_s + c * h), p, v);
    };
    const MotionStep<Number> to =
        stiff_step(acceleration, slopes, state.angle_rad, state.speed_radps, h);
    const double error = tolerance_.error_of(to, state.speed_radps) / allowed;
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
  other *= kForgetting;
  method_ = cost_[kExplicit] <= std::max(cost_[kStiff], kWorthWhile) ? kExplicit : kStiff;
}

template class SampleAdvance<AxisDynamics>;
template class SampleAdvance<CoupledDynamics>;

}  // namespace gazewright
