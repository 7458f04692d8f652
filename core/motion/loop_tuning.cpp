#include "core/motion/loop_tuning.h"

#include <algorithm>
#include <cmath>

#include "core/motion/gap_swing.h"
#include "core/motion/loop.h"
#include "core/motion/loop_trial.h"
#include "core/motion/loop_value.h"
#include "core/motion/smoothness.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

using Complex = LoopPoint::Complex;
constexpr double kGuard = 1.03;      // in gain, and
constexpr double kGuard_rad = 0.01;  // for what lies between the grid's points
constexpr double kGainMargin = 2.1;  // 2 is asked for, common practice
constexpr double kCorner = 4;        // crossover over the integrator's corner: a of the optimum
constexpr double kLoosePart = 0.5;   // of the margin that the rotor alone keeps in the gap
constexpr double kLooseGain = 1.3;
constexpr double kMostPeak = 1.05;   // of the closed position loop
constexpr double kMostLoadPeak = 2;  // of the load's speed, closed speed loop
constexpr double kStride = 1.3;
constexpr int kMostDown = 50, kMostUp = 14, kHalvings = 5;
constexpr LoopTrial::Demand kAnything{-1e3, 1e-9};  // no demand at all
constexpr int kGapTrials = 4;
constexpr double kGapStep = 0.6;

/// Speed loop without controller: of the whole train, or of the rotor alone in the gap.
LoopTrial speed_trial(const std::vector<LoopPoint>& points, bool loose) {
  std::vector<Complex> plant;
  std::vector<double> phase_rad;
  plant.reserve(points.size()), phase_rad.reserve(points.size());
  LoopValue before;
  for (const LoopPoint& point : points) {
    const LoopValue now{point.estimator * point.lag, loose ? Complex(1) : point.numerator,
                        loose ? point.rotor : point.determinant, true};
    const double phase =
        plant.empty() ? first_phase_rad(now) : phase_rad.back() + turn_rad(before, now);
    plant.push_back(now.value());
    phase_rad.push_back(phase);
    before = now;
  }
  return {std::move(plant), std::move(phase_rad), points};
}

/// The highest gain up to which it holds, from a first guess on; where none holds, a tiny one.
template <class Holds>
double highest_gain(double good, const Holds& holds) {
  double bad = 0;
  for (int i = 0; i < kMostDown && !holds(good); ++i) bad = good, good /= kStride;
  for (int i = 0; i < kMostUp && bad == 0; ++i)
    holds(good * kStride) ? good *= kStride : bad = good * kStride;
  for (int i = 0; i < kHalvings && bad > 0; ++i) {
    const double middle = std::sqrt(good * bad);
    (holds(middle) ? good : bad) = middle;
  }
  return good;
}

/// Searches the speed gain; the integral gain keeps the integrator's corner below the crossover.
class SpeedSearch {
 public:
  SpeedSearch(const AxisModel& model, const std::vector<LoopPoint>& points, const TuningGoal& goal)
      : model_(model),
        goal_(goal),
        points_(points),
        above_radps_(std::sqrt(antiresonance_radps(model) * resonance_radps(model))),
        tight_(speed_trial(points, false)),
        has_gap_(model.gear.backlash_rad > 0 && !model.control.encoder_at_output),
        loose_(has_gap_ ? std::optional(speed_trial(points, true)) : std::nullopt),
        inertia_kgm2_(model.load.inertia_kgm2 + model.reflected_inertia_kgm2()) {
    for (const LoopPoint& point : points) {
      load_.push_back(point.lag * point.coupling * point.w_radps);
      back_.push_back(point.lag * point.numerator * point.estimator);
    }
  }

  struct Trial {
    bool holds = false;
    Ceiling fails = Ceiling::lags;
    double at_radps = 0, crossover_radps = 0;
  };
  Trial with(double gain) const { return with(gain, integral(gain)); }
  Trial with(double gain, double i) const {
    const auto tight =
        tight_.with(kGuard * gain, kGuard * i, {goal_.margin_rad + kGuard_rad, kGainMargin});
    const double crossover = tight_.with(gain, i, kAnything).crossover_radps;
    Trial trial{tight.holds, Ceiling::lags, tight.at_radps, crossover};
    if (!tight.holds) {
      const bool rings = tight.at_radps > 0.5 * antiresonance_radps(model_) &&
                         tight.at_radps > 1.5 * gain / inertia_kgm2_;
      trial.fails = rings ? Ceiling::resonance : Ceiling::lags;
    } else if (!load_follows(gain, i, &trial.at_radps)) {
      trial.holds = false, trial.fails = Ceiling::resonance;
    } else if (goal_.crossover_radps && crossover > *goal_.crossover_radps) {
      trial = {false, Ceiling::wanted, 0, crossover};
    } else if (crossover > goal_.most_crossover_radps) {
      trial = {false, Ceiling::bracket, 0, crossover};
    } else if (ripple_Nm(gain) > goal_.most_ripple_Nm) {
      trial = {false, Ceiling::ripple, 0, crossover};
    } else if (has_gap_) {
      const auto loose = loose_->with(gain, i, {kLoosePart * goal_.margin_rad, kLooseGain});
      if (!loose.holds) trial = {false, Ceiling::gap, loose.at_radps, crossover};
    }
    return trial;
  }
  /// Whether the load's speed stays within twice the commanded one at every frequency: a motor that
  /// is held too stiffly leaves the load swinging on the gear's spring.
  bool load_follows(double gain, double i, double* at_radps) const {
    for (std::size_t k = 0; k < points_.size() && points_[k].w_radps < above_radps_; ++k) {
      const Complex c = gain + i * points_[k].integral;
      if (std::norm(c * load_[k]) <=
          kMostLoadPeak * kMostLoadPeak * std::norm(points_[k].determinant + c * back_[k]))
        continue;
      *at_radps = points_[k].w_radps;
      return false;
    }
    return true;
  }
  double integral(double gain) const { return gain * gain / inertia_kgm2_ / kCorner; }

  /// The highest gain up to which all hold, from the symmetrical optimum's on, and what fails
  /// above.
  std::optional<Tuning> highest() const {
    Trial at_good, at_bad;
    const auto holds = [&](double gain) {
      const Trial trial = with(gain);
      (trial.holds ? at_good : at_bad) = trial;
      return trial.holds;
    };
    const double lag_s = small_lags(model_.control).sum_s();
    const double gain =
        highest_gain(symmetrical_optimum(inertia_kgm2_, lag_s, kCorner).gain_Nmsprad, holds);
    if (!at_good.holds) return std::nullopt;
    Tuning tuning;
    tuning.gains = {0, gain, integral(gain)};
    tuning.crossover_radps = at_good.crossover_radps;
    tuning.limited_by = at_bad.fails;
    tuning.limit_at_radps = at_bad.at_radps;
    return tuning;
  }

 private:
  double ripple_Nm(double gain) const {
    return count_ripple_Nm(model_, {gain / inertia_kgm2_ / kCorner, gain, 0});
  }

  const AxisModel& model_;
  const TuningGoal& goal_;
  const std::vector<LoopPoint>& points_;
  double above_radps_;  ///< from here on motor and load swing against each other
  LoopTrial tight_;
  std::vector<Complex> load_, back_;
  bool has_gap_;
  std::optional<LoopTrial> loose_;
  double inertia_kgm2_;
};

/// The highest position gain at which the margins hold and the closed loop has no peak to speak of.
double highest_position_gain(const AxisModel& model, const std::vector<LoopPoint>& points,
                             const TuningGoal& goal, double crossover_radps) {
  AxisControl control = model.control;
  control.position_gain_1ps = 1;
  std::vector<Complex> plant, load;
  std::vector<double> phase_rad;
  LoopValue before;
  for (const LoopPoint& point : points) {
    const LoopValue now = position_value(point, control);
    load.push_back(now.smooth * point.coupling / now.poles);
    phase_rad.push_back(plant.empty() ? first_phase_rad(now)
                                      : phase_rad.back() + turn_rad(before, now));
    plant.push_back(now.value());
    before = now;
  }
  const LoopTrial trial(plant, phase_rad, points);
  const auto holds = [&](double gain) {
    if (!trial.with(kGuard * gain, 0, {goal.margin_rad + kGuard_rad, kGainMargin}).holds)
      return false;
    for (std::size_t k = 0; k < plant.size(); ++k) {
      const double most = kMostPeak * kMostPeak * std::norm(1.0 + gain * plant[k]);
      if (gain * gain * std::max(std::norm(plant[k]), std::norm(load[k])) > most) return false;
    }
    return true;
  };
  // From the modulus optimum of a closed speed loop with lag 1/crossover.
  return highest_gain(modulus_optimum_1ps(1 / crossover_radps), holds);
}

/// Three digits, rounded down: what holds keeps holding.
double rounded_down(double value) {
  if (!(value > 0)) return 0;
  const double step = std::pow(10, std::floor(std::log10(value)) - 2);
  return std::floor(value / step + 1e-9) * step;
}

}  // namespace

AxisModel with_gains(AxisModel model, const LoopGains& gains) {
  model.control.position_gain_1ps = gains.position_gain_1ps;
  model.control.speed_gain_Nmsprad = gains.speed_gain_Nmsprad;
  model.control.speed_integral_gain_Nmprad = gains.speed_integral_gain_Nmprad;
  return model;
}

SmallLags small_lags(const AxisControl& control) {
  const double dt = 1 / control.control_rate_Hz;
  const double a = control.estimator_blend();
  return {2 * dt, (1 - a) / a * dt, 1 / (2 * kPi * control.current_bandwidth_Hz)};
}

PiGains symmetrical_optimum(double inertia_kgm2, double lag_s, double a) {
  const double crossover = 1 / (a * lag_s), gain = inertia_kgm2 * crossover;
  return {gain, gain / (a * a * lag_s), crossover};
}

double modulus_optimum_1ps(double lag_s) { return 1 / (2 * lag_s); }

double count_ripple_Nm(const AxisModel& model, const LoopGains& gains) {
  return gains.speed_gain_Nmsprad *
         (speed_resolution_radps(model) + gains.position_gain_1ps * count_rad(model));
}

std::optional<Tuning> tuned(const AxisModel& model, const std::vector<LoopPoint>& points,
                            const TuningGoal& goal) {
  const SpeedSearch search(model, points, goal);
  auto tuning = search.highest();
  if (!tuning || tuning->crossover_radps == 0) return std::nullopt;
  LoopGains& gains = tuning->gains;
  for (int i = 0;; ++i) {
    gains.speed_gain_Nmsprad = rounded_down(gains.speed_gain_Nmsprad);
    tuning->crossover_radps = search.with(gains.speed_gain_Nmsprad).crossover_radps;
    for (const double part : {1.0, 0.0}) {
      if (part == 0 && !search.with(gains.speed_gain_Nmsprad, 0).holds) break;
      gains.speed_integral_gain_Nmprad =
          rounded_down(part * search.integral(gains.speed_gain_Nmsprad));
      gains.position_gain_1ps = rounded_down(
          highest_position_gain(with_gains(model, gains), points, goal, tuning->crossover_radps));
      const auto swing = gap_swing(with_gains(model, gains), points);
      tuning->swings_in_gap = swing && is_read(*swing, model);
      if (!tuning->swings_in_gap) break;
    }
    if (!tuning->swings_in_gap || i == kGapTrials) break;
    gains.speed_gain_Nmsprad *= kGapStep;
    tuning->limited_by = Ceiling::gap;
    tuning->limit_at_radps = 0;
  }
  tuning->crossover_radps =
      search.with(gains.speed_gain_Nmsprad, gains.speed_integral_gain_Nmprad).crossover_radps;
  tuning->ripple_Nm = count_ripple_Nm(model, gains);
  return tuning;
}

}  // namespace gazewright
