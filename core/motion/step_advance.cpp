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

/// Step of order 5 with an embedded one of order 4, whose last stage is the next step's first.
/// Source: Dormand & Prince, J. Comput. Appl. Math. 6 (1980) 19 (coefficients from memory; a wrong
/// one would show in step_test.cpp and in the comparison with SciPy).
template <class Acceleration>
StepResult<2> explicit_step(const Acceleration& acceleration, const AxisState& from,
                            const MotorAndLoad& a1, double h, MotorAndLoad& last) {
  const MotorAndLoad &p = from.angle_rad, &v1 = from.speed_radps;
  const MotorAndLoad v2 = v1 + h * (1.0 / 5 * a1);
  const MotorAndLoad a2 = acceleration(0, p + h * (1.0 / 5 * v1), v2);
  const MotorAndLoad v3 = v1 + h * (3.0 / 40 * a1 + 9.0 / 40 * a2);
  const MotorAndLoad a3 = acceleration(1, p + h * (3.0 / 40 * v1 + 9.0 / 40 * v2), v3);
  const auto fourth = [h](const auto& y, const auto& k1, const auto& k2, const auto& k3) {
    return MotorAndLoad(y + h * (44.0 / 45 * k1 - 56.0 / 15 * k2 + 32.0 / 9 * k3));
  };
  const MotorAndLoad v4 = fourth(v1, a1, a2, a3);
  const MotorAndLoad a4 = acceleration(2, fourth(p, v1, v2, v3), v4);
  const auto fifth = [h](const auto& y, const auto& k1, const auto& k2, const auto& k3,
                         const auto& k4) {
    return MotorAndLoad(y + h * (19372.0 / 6561 * k1 - 25360.0 / 2187 * k2 + 64448.0 / 6561 * k3 -
                                 212.0 / 729 * k4));
  };
  const MotorAndLoad v5 = fifth(v1, a1, a2, a3, a4);
  const MotorAndLoad a5 = acceleration(3, fifth(p, v1, v2, v3, v4), v5);
  const auto sixth = [h](const auto& y, const auto& k1, const auto& k2, const auto& k3,
                         const auto& k4, const auto& k5) {
    return MotorAndLoad(y + h * (9017.0 / 3168 * k1 - 355.0 / 33 * k2 + 46732.0 / 5247 * k3 +
                                 49.0 / 176 * k4 - 5103.0 / 18656 * k5));
  };
  const MotorAndLoad v6 = sixth(v1, a1, a2, a3, a4, a5);
  const MotorAndLoad a6 = acceleration(4, sixth(p, v1, v2, v3, v4, v5), v6);
  const auto end = [h](const auto& y, const auto& k1, const auto& k3, const auto& k4,
                       const auto& k5, const auto& k6) {
    return MotorAndLoad(y + h * (35.0 / 384 * k1 + 500.0 / 1113 * k3 + 125.0 / 192 * k4 -
                                 2187.0 / 6784 * k5 + 11.0 / 84 * k6));
  };
  const auto error = [h](const auto& k1, const auto& k3, const auto& k4, const auto& k5,
                         const auto& k6, const auto& k7) {
    return MotorAndLoad(h * (71.0 / 57600 * k1 - 71.0 / 16695 * k3 + 71.0 / 1920 * k4 -
                             17253.0 / 339200 * k5 + 22.0 / 525 * k6 - 1.0 / 40 * k7));
  };
  StepResult<2> to;
  to.position = end(p, v1, v3, v4, v5, v6);
  to.speed = end(v1, a1, a3, a4, a5, a6);
  last = acceleration(4, to.position, to.speed);
  to.position_error = error(v1, v3, v4, v5, v6, to.speed);
  to.speed_error = error(a1, a3, a4, a5, a6, last);
  return to;
}

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
  state.torque_Nm = command_Nm + lag.gap_Nm * whole_.stage.back();
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
  double done_s = 0, h = std::min(step_s_[kExplicit], sample_s_), uncut_s = 0, gap_Nm = lag.gap_Nm;
  MotorAndLoad last;
  for (int steps = 1; steps <= most_steps_; ++steps) {
    const bool whole = done_s == 0 && h >= sample_s_, ends = done_s + h >= sample_s_ * (1 - 1e-12);
    if (ends) h = sample_s_ - done_s;
    const LagParts parts = whole ? whole_ : LagParts(lag.rate_1ps, h);
    const auto acceleration = [&](std::size_t stage, const MotorAndLoad& p, const MotorAndLoad& v) {
      return dynamics_.acceleration(lag.command_Nm + gap_Nm * parts.stage[stage], p, v);
    };
    const double end_Nm = lag.command_Nm + gap_Nm * parts.stage.back();
    const StepResult<2> to = explicit_step(acceleration, at, start_.acceleration, h, last);
    const double error = error_of(to, at);
    const unsigned region = dynamics_.region(end_Nm, to.position, to.speed);
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
    at.angle_rad = to.position;
    at.speed_radps = to.speed;
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
    const auto acceleration = [&](double c, const MotorAndLoad& p, const MotorAndLoad& v) {
      return dynamics_.acceleration(lag.at(done_s + c * h), p, v);
    };
    const double start_Nm = lag.at(done_s);
    const auto slopes = dynamics_.slopes(start_Nm, lag.rate_1ps * (lag.command_Nm - start_Nm),
                                         state.angle_rad, state.speed_radps);
    const StepResult<2> to =
        rosenbrock_step<2>(acceleration, slopes, state.angle_rad, state.speed_radps, h);
    const double error = error_of(to, state) / allowed, next_s = h * step_factor(error);
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

/// Remembers what samples took, forgets slowly what the other method took, takes the cheaper.
void SampleAdvance::settle_costs(Method used, double cost) {
  cost_[used] = (cost_[used] + cost) / 2;
  double& other = cost_[used == kExplicit ? kStiff : kExplicit];
  other *= 0.98;
  method_ = cost_[kExplicit] <= std::max(cost_[kStiff], kWorthWhile) ? kExplicit : kStiff;
}

}  // namespace gazewright
