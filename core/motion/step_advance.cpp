#include "core/motion/step_advance.h"

#include <numbers>

namespace gazewright {
namespace {

constexpr double kRelative = 3e-9;       // of a speed
constexpr double kPositionPart = 3e-10;  // of the move, in one step
constexpr double kSpeedPart_1ps = 3e-7;
constexpr double kShortestCut = 1e-6;  // of a sample
constexpr double kHopeless = 1e6;      // error, in tolerances, at which a step shows nothing
constexpr double kWorthCutting = 0.1;  // error from which a change of region is sought
constexpr int kMostStiffSteps = 400;
constexpr double kWorthWhile = 50;  // evaluations in a sample from which the stiff method is tried
constexpr double kExplicitCost = 6, kStiffCost = 12;  // of a step, in evaluations

}  // namespace

LagParts::LagParts(double rate_1ps, double step_s) {
  constexpr std::array<double, 5> at{1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1};
  for (std::size_t i = 0; i < at.size(); ++i) stage[i] = std::exp(-rate_1ps * step_s * at[i]);
}

SampleAdvance::SampleAdvance(const AxisModel& model, double move_rad)
    : dynamics_(model, move_rad),
      sample_s_(1 / model.control.control_rate_Hz),
      lag_1ps_(2 * std::numbers::pi * model.control.current_bandwidth_Hz),
      whole_(lag_1ps_, sample_s_),
      most_steps_(static_cast<int>(std::clamp(3e6 * sample_s_, 200.0, 4000.0))),
      step_s_{sample_s_, sample_s_} {
  const double size_rad = std::max(std::abs(move_rad), 1e-6);
  const MotorAndLoad scale{model.gear.ratio, 1};
  angle_tolerance_rad_ = kPositionPart * size_rad * scale;
  speed_tolerance_radps_ = kSpeedPart_1ps * size_rad * scale;
}

double SampleAdvance::error_of(const MotionStep& step, const AxisState& from) const {
  const auto part = [](double error, double tolerance, double speed) {
    return std::abs(error) / (tolerance + kRelative * std::abs(speed));
  };
  const double worst = std::max(
      {part(step.speed_error_radps.motor, speed_tolerance_radps_.motor, from.speed_radps.motor),
       part(step.speed_error_radps.load, speed_tolerance_radps_.load, from.speed_radps.load),
       part(step.angle_error_rad.motor, angle_tolerance_rad_.motor, 0),
       part(step.angle_error_rad.load, angle_tolerance_rad_.load, 0)});
  return is_finite(step.speed_radps + step.angle_rad) ? worst : 1e12;
}

void SampleAdvance::advance(AxisState& state, double command_Nm) {
  const TorqueLag lag{command_Nm, state.torque_Nm - command_Nm, lag_1ps_};
  dynamics_.centre_gravity(state.angle_rad.load);
  if (method_ == kStiff || !explicit_sample(state, lag)) stiff_sample(state, lag);
  state.torque_Nm = command_Nm + lag.gap_Nm * whole_.stage.back();
}

/// How far into a step the region changes, just past the change: bisection on the cubic through
/// both ends.
double SampleAdvance::cut_s(const AxisState& from, const MotionStep& to, MotorAndLoad last,
                            const TorqueLag& lag, double done_s, double step_s) const {
  const auto between = [step_s](double x, MotorAndLoad y0, MotorAndLoad d0, MotorAndLoad y1,
                                MotorAndLoad d1) -> MotorAndLoad {
    const double u = 1 - x;
    return u * u * ((1 + 2 * x) * y0 + x * step_s * d0) +
           x * x * ((1 + 2 * u) * y1 - u * step_s * d1);
  };
  double same = 0, other = 1;
  while (other - same > 1e-6 * other) {
    const double x = (same + other) / 2;
    const MotorAndLoad p =
        between(x, from.angle_rad, from.speed_radps, to.angle_rad, to.speed_radps);
    const MotorAndLoad v = between(x, from.speed_radps, start_.acceleration, to.speed_radps, last);
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
  double done_s = 0, h = std::min(step_s_[kExplicit], sample_s_), uncut_s = 0, gap_Nm = lag.gap_Nm;
  MotorAndLoad last;
  for (int steps = 1; steps <= most_steps_; ++steps) {
    const bool whole = done_s == 0 && h >= sample_s_, ends = done_s + h >= sample_s_ * (1 - 1e-12);
    if (ends) h = sample_s_ - done_s;
    const LagParts parts = whole ? whole_ : LagParts(lag.rate_1ps, h);
    const auto acceleration = [&](std::size_t stage, MotorAndLoad p, MotorAndLoad v) {
      return dynamics_.acceleration(lag.command_Nm + gap_Nm * parts.stage[stage], p, v);
    };
    const double end_Nm = lag.command_Nm + gap_Nm * parts.stage.back();
    const MotionStep to = explicit_step(acceleration, at, start_.acceleration, h, last);
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
    gap_Nm *= parts.stage.back();
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
void SampleAdvance::stiff_sample(AxisState& state, const TorqueLag& lag) {
  start_.known = false;
  double done_s = 0, h = std::min(step_s_[kStiff], sample_s_), allowed = 1;
  int steps = 0;
  for (bool ends = false; !ends;) {
    if (++steps > kMostStiffSteps) allowed *= 3;
    ends = done_s + h >= sample_s_ * (1 - 1e-12);
    if (ends) h = sample_s_ - done_s;
    const auto acceleration = [&](double c, const Eigen::Vector2d& p, const Eigen::Vector2d& v) {
      return dynamics_
          .acceleration(lag.at(done_s + c * h), MotorAndLoad::from(p), MotorAndLoad::from(v))
          .as_vector();
    };
    const double start_Nm = lag.at(done_s);
    const auto slopes = dynamics_.slopes(start_Nm, lag.rate_1ps * (lag.command_Nm - start_Nm),
                                         state.angle_rad, state.speed_radps);
    const auto result = rosenbrock_step<2>(acceleration, slopes, state.angle_rad.as_vector(),
                                           state.speed_radps.as_vector(), h);
    const MotionStep to{MotorAndLoad::from(result.position), MotorAndLoad::from(result.speed),
                        MotorAndLoad::from(result.position_error),
                        MotorAndLoad::from(result.speed_error)};
    const double error = error_of(to, state) / allowed, next_s = h * step_factor(error);
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
void SampleAdvance::settle_costs(Method used, double cost) {
  cost_[used] = (cost_[used] + cost) / 2;
  double& other = cost_[used == kExplicit ? kStiff : kExplicit];
  other *= 0.98;
  method_ = cost_[kExplicit] <= std::max(cost_[kStiff], kWorthWhile) ? kExplicit : kStiff;
}

}  // namespace gazewright
