#include "core/motion/step_advance.h"

#include <numbers>

namespace gazewright {
namespace {

constexpr double kRelative = 1e-8;      // of a speed
constexpr double kPositionPart = 1e-9;  // of the move, in one step
constexpr double kSpeedPart_1ps = 1e-6;
constexpr double kShortestCut = 1e-5;  // of a sample
constexpr double kHopeless = 1e6;      // error, in tolerances, at which a step shows nothing
constexpr int kMostStiffSteps = 400;
constexpr double kStiffCost = 12;  // of one stiff step, in evaluations

/// Classical step of order 4; the error is that of the embedded order 3, which needs the
/// acceleration at the end (`last`), the first one of the next step.
StepResult<2> explicit_step(const AxisDynamics& dynamics, double middle_Nm, double end_Nm,
                            const AxisState& from, const MotorAndLoad& first, double h,
                            MotorAndLoad& last) {
  const MotorAndLoad &p = from.angle_rad, &v = from.speed_radps;
  const MotorAndLoad v2 = v + h / 2 * first;
  const MotorAndLoad a2 = dynamics.acceleration(middle_Nm, p + h / 2 * v, v2);
  const MotorAndLoad v3 = v + h / 2 * a2;
  const MotorAndLoad a3 = dynamics.acceleration(middle_Nm, p + h / 2 * v2, v3);
  const MotorAndLoad v4 = v + h * a3;
  const MotorAndLoad a4 = dynamics.acceleration(end_Nm, p + h * v3, v4);
  StepResult<2> to;
  to.position = p + h / 6 * (v + 2 * v2 + 2 * v3 + v4);
  to.speed = v + h / 6 * (first + 2 * a2 + 2 * a3 + a4);
  last = dynamics.acceleration(end_Nm, to.position, to.speed);
  to.position_error = h / 6 * (v4 - to.speed);
  to.speed_error = h / 6 * (a4 - last);
  return to;
}

/// Factor for the next step of a method whose error estimate goes with h⁴.
double next_step(double error) {
  return std::clamp(0.85 / std::sqrt(std::sqrt(std::max(error, 1e-8))), 0.1, 4.0);
}

}  // namespace

SampleAdvance::SampleAdvance(const AxisModel& model, double move_rad)
    : dynamics_(model, move_rad),
      sample_s_(1 / model.control.control_rate_Hz),
      lag_1ps_(2 * std::numbers::pi * model.control.current_bandwidth_Hz),
      half_decay_(std::exp(-lag_1ps_ * sample_s_ / 2)),
      decay_(half_decay_ * half_decay_),
      most_steps_(static_cast<int>(std::clamp(3e6 * sample_s_, 200.0, 4000.0))),
      step_s_{sample_s_, sample_s_} {
  const double size_rad = std::max(std::abs(move_rad), 1e-6);
  const MotorAndLoad scale{model.gear.ratio, 1};
  position_tolerance_ = kPositionPart * size_rad * scale;
  speed_tolerance_ = kSpeedPart_1ps * size_rad * scale;
}

double SampleAdvance::error_of(const StepResult<2>& step, const AxisState& from) const {
  double worst = 0;
  for (int i = 0; i < 2; ++i) {
    const double speed_scale = speed_tolerance_[i] + kRelative * std::abs(from.speed_radps[i]);
    worst = std::max({worst, std::abs(step.speed_error[i]) / speed_scale,
                      std::abs(step.position_error[i]) / position_tolerance_[i]});
  }
  return std::isfinite(step.speed.sum() + step.position.sum()) ? worst : 1e12;
}

void SampleAdvance::advance(AxisState& state, double command_Nm) {
  const TorqueLag lag{command_Nm, state.torque_Nm - command_Nm, lag_1ps_};
  dynamics_.centre_gravity(state.angle_rad[1]);
  if (method_ == kStiff || !explicit_sample(state, lag)) stiff_sample(state, lag);
  state.torque_Nm = command_Nm + lag.gap_Nm * decay_;
}

/// How far into a step the region changes, just past the change: bisection on the cubic through
/// both ends.
double SampleAdvance::cut_s(const AxisState& from, const StepResult<2>& to,
                            const MotorAndLoad& last, const TorqueLag& lag, double done_s,
                            double step_s) const {
  const auto between = [step_s](double x, const MotorAndLoad& y0, const MotorAndLoad& d0,
                                const MotorAndLoad& y1, const MotorAndLoad& d1) -> MotorAndLoad {
    const double u = 1 - x;
    return u * u * ((1 + 2 * x) * y0 + x * step_s * d0) +
           x * x * ((1 + 2 * u) * y1 - u * step_s * d1);
  };
  double same = 0, other = 1;
  while (other - same > 1e-6 * other) {
    const double x = (same + other) / 2;
    const MotorAndLoad p = between(x, from.angle_rad, from.speed_radps, to.position, to.speed);
    const MotorAndLoad v = between(x, from.speed_radps, start_.acceleration, to.speed, last);
    const bool changed = dynamics_.region(lag.at(done_s + x * step_s), p, v) != start_.region;
    (changed ? other : same) = x;
    if (other * step_s < kShortestCut * sample_s_) break;
  }
  return std::max(other * step_s, kShortestCut * sample_s_);
}

/// False, with the state as it was, where it takes too many steps.
bool SampleAdvance::explicit_sample(AxisState& state, const TorqueLag& lag) {
  AxisState at = state;
  if (!start_.known)
    start_ = {dynamics_.acceleration(at.torque_Nm, at.angle_rad, at.speed_radps),
              dynamics_.region(at.torque_Nm, at.angle_rad, at.speed_radps), true};
  double done_s = 0, h = std::min(step_s_[kExplicit], sample_s_), uncut_s = 0;
  MotorAndLoad last;
  for (int steps = 1; steps <= most_steps_; ++steps) {
    const bool whole = h >= sample_s_, ends = done_s + h >= sample_s_ * (1 - 1e-12);
    if (ends) h = sample_s_ - done_s;
    const double middle_Nm =
        whole ? lag.command_Nm + lag.gap_Nm * half_decay_ : lag.at(done_s + h / 2);
    const double end_Nm = whole ? lag.command_Nm + lag.gap_Nm * decay_ : lag.at(done_s + h);
    const StepResult<2> to =
        explicit_step(dynamics_, middle_Nm, end_Nm, at, start_.acceleration, h, last);
    const double error = error_of(to, at);
    const unsigned region = dynamics_.region(end_Nm, to.position, to.speed);
    if (region != start_.region && error < kHopeless) {
      const double cut = cut_s(at, to, last, lag, done_s, h);
      if (h - cut > 1e-4 * h + kShortestCut * sample_s_) {
        uncut_s = std::max(uncut_s, h);
        h = cut;
        continue;
      }
    }
    if (error > 1 && h > kShortestCut * sample_s_) {
      h *= next_step(error);
      continue;
    }
    at.angle_rad = to.position;
    at.speed_radps = to.speed;
    start_.acceleration = last;
    start_.region = region;
    done_s += h;
    if (ends) {  // a step cut short says little about the next one
      const double next_s = whole ? h : h * next_step(error);
      step_s_[kExplicit] = std::max({next_s, step_s_[kExplicit], uncut_s});
      settle_costs(kExplicit, 4.0 * steps);
      state = at;
      return true;
    }
    h = step_s_[kExplicit] = std::max(h * next_step(error), uncut_s);
    uncut_s = 0;
  }
  start_.known = false;
  settle_costs(kExplicit, 4.0 * most_steps_);
  return false;
}

/// After its most steps the tolerance grows with each further one, so that it always ends.
void SampleAdvance::stiff_sample(AxisState& state, const TorqueLag& lag) {
  start_.known = false;
  double done_s = 0, h = std::min(step_s_[kStiff], sample_s_), allowed = 1;
  int steps = 0;
  for (bool ends = false; !ends;) {
    if (++steps > kMostStiffSteps) allowed *= 3;
    ends = done_s + h >= sample_s_ * (1 - 1e-12);
    if (ends) h = sample_s_ - done_s;
    const auto acceleration = [&](double c, const MotorAndLoad& p, const MotorAndLoad& v) {
      return dynamics_.acceleration(lag.at(done_s + c * h), p, v);
    };
    const double start_Nm = lag.at(done_s);
    const auto slopes = dynamics_.slopes(start_Nm, lag.rate_1ps * (lag.command_Nm - start_Nm),
                                         state.angle_rad, state.speed_radps);
    const StepResult<2> to =
        rosenbrock_step<2>(acceleration, slopes, state.angle_rad, state.speed_radps, h);
    const double error = error_of(to, state) / allowed, next_s = h * next_step(error);
    if (error > 1) {
      h = next_s;
      ends = false;
      continue;
    }
    state.angle_rad = to.position;
    state.speed_radps = to.speed;
    done_s += h;
    h = next_s;
    step_s_[kStiff] = ends ? std::max(next_s, step_s_[kStiff]) : next_s;
  }
  settle_costs(kStiff, kStiffCost * steps);
}

/// Remembers what the sample took, forgets slowly what the other method took, takes the cheaper.
void SampleAdvance::settle_costs(Method used, double cost) {
  cost_[used] = cost;
  double& other = cost_[used == kExplicit ? kStiff : kExplicit];
  other *= 0.98;
  method_ = cost_[kExplicit] <= std::max(cost_[kStiff], kStiffCost) ? kExplicit : kStiff;
}

}  // namespace gazewright
