#include "core/motion/loop.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/motion/loop_value.h"
#include "core/motion/search.h"
#include "core/units/angle.h"

// Derivation: resources/handbook/loops.md.
namespace gazewright {
namespace {

using Complex = LoopPoint::Complex;
using ValueAt = LoopValue (*)(const LoopPoint&, const AxisControl&);
constexpr int kMostHalvings = 50;
constexpr double kNarrow_rad = 0.6;  // a closed loop with less margin has a peak that is narrow

/// Where f changes its sign between two frequencies, searched on the logarithm.
template <class Function>
double zero_between(const Function& f, double low, double high) {
  const double sign = f(low) > 0 ? -1 : 1, from = std::log(low), to = std::log(high);
  return std::exp(where_zero([&](double x) { return sign * f(std::exp(x)); }, from, to,
                             1e-14 * std::max(1.0, std::abs(to))));
}

bool keep_least(std::optional<double>& least, double value) {
  const bool is_less = !least || value < *least;
  if (is_less) least = value;
  return is_less;
}

/// Follows one loop along the grid and takes down its margins.
class Follower {
 public:
  Follower(const AxisModel& model, ValueAt value_at) : model_(model), value_at_(value_at) {}

  void take(const LoopPoint& point) {
    const LoopValue now = value_at_(point, model_.control);
    const double gain = now.gain();
    double phase = phase_;
    if (gains_.empty()) {
      phase = first_phase_rad(now);
    } else {
      phase += turn_rad(before_, now);
      if ((gains_.back() >= 1) != (gain >= 1)) add_crossover(point.w_radps);
      if (passes_half_turn(phase_, phase)) add_gain_margin(point.w_radps, phase);
    }
    gains_.push_back(gain);
    phases_.push_back(phase);
    before_ = now;
    before_w_ = point.w_radps;
    phase_ = phase;
  }

  const LoopMargins& margins() const { return margins_; }
  bool is_stable() const {
    if (gains_.empty() || (!margins_.crossover_radps && gains_.back() >= 1)) return false;
    return margins_.phase_margin_rad.value_or(1) > 0 && margins_.gain_margin.value_or(2) > 1;
  }
  void reserve(std::size_t count) { gains_.reserve(count), phases_.reserve(count); }
  std::vector<double> gains_, phases_;
  std::vector<double> narrow_radps_;  ///< crossings with so little margin

 private:
  LoopValue value(double w) const { return value_at_(loop_point(model_, w), model_.control); }

  void add_crossover(double w) {
    const double at =
        zero_between([&](double x) { return std::log(value(x).gain()); }, before_w_, w);
    const double margin = kPi + phase_ + turn_rad(before_, value(at));
    if (!margins_.crossover_radps) margins_.crossover_radps = at;
    keep_least(margins_.phase_margin_rad, margin);
    keep_least(margins_.delay_margin_s, margin / at);
    if (std::abs(margin) < kNarrow_rad) narrow_radps_.push_back(at);
  }

  void add_gain_margin(double w, double phase) {
    const double at = half_turn_radps(w, phase);
    const double margin = 1 / value(at).gain();
    if (keep_least(margins_.gain_margin, std::isnan(margin) ? 0 : margin))
      margins_.gain_margin_at_radps = at;
  }

  /// Where the phase passes −180° within the step up to `w`. The step is halved as long as the
  /// phase turns far in it: a peak or a notch is narrower.
  double half_turn_radps(double w, double phase) const {
    double low = before_w_, high = w, low_phase = phase_;
    LoopValue from = before_;
    for (int i = 0; i < kMostHalvings && std::abs(phase - low_phase) > kPi / 2; ++i) {
      const double middle = std::sqrt(low * high);
      const LoopValue there = value(middle);
      const double there_phase = low_phase + turn_rad(from, there);
      if (passes_half_turn(low_phase, there_phase)) {
        high = middle, phase = there_phase;
      } else {
        low = middle, low_phase = there_phase, from = there;
      }
    }
    if (std::abs(phase - low_phase) > kPi / 2) return std::sqrt(low * high);
    return zero_between([&](double x) { return value(x).value().imag(); }, low, high);
  }

  const AxisModel& model_;
  ValueAt value_at_;
  LoopMargins margins_;
  LoopValue before_;
  double before_w_ = 0, phase_ = 0;
};

double closed_gain(const LoopValue& open) {
  const Complex forward = open.smooth * open.zeros;
  return std::abs(forward / (open.poles + forward));
}
double error_gain(const LoopValue& open) {
  return std::abs(open.poles / (open.poles + open.smooth * open.zeros));
}

/// The largest gain, between the neighbours of the grid's largest by golden section.
double refined_peak(const AxisModel& model, const FrequencyResponse& response) {
  const auto& gains = response.closed_gain;
  const auto top =
      static_cast<std::size_t>(std::max_element(gains.begin(), gains.end()) - gains.begin());
  if (top == 0 || top + 1 == gains.size()) return gains[top];
  const auto at = [&](double w) {
    return closed_gain(position_value(loop_point(model, w), model.control));
  };
  constexpr double kGolden = 0.6180339887498949;
  double low = response.w_radps[top - 1], high = response.w_radps[top + 1];
  for (int i = 0; i < 16; ++i) {
    const double a = high - kGolden * (high - low), b = low + kGolden * (high - low);
    const bool is_left = at(a) > at(b);
    (is_left ? high : low) = is_left ? b : a;
  }
  return std::max(gains[top], at((low + high) / 2));
}

void close_position_loop(const AxisModel& model, LoopStudy& study) {
  const FrequencyResponse& response = study.response;
  const auto& gains = response.closed_gain;
  study.peak = refined_peak(model, response);
  const auto below = std::find_if(gains.begin(), gains.end(),
                                  [](double gain) { return gain < std::numbers::sqrt2 / 2; });
  if (below == gains.begin() || below == gains.end()) return;
  const auto i = static_cast<std::size_t>(below - gains.begin());
  study.bandwidth_radps = zero_between(
      [&](double w) {
        return std::log(closed_gain(position_value(loop_point(model, w), model.control)) *
                        std::numbers::sqrt2);
      },
      response.w_radps[i - 1], response.w_radps[i]);
}

/// Crossings of the speed loop with so little margin go to `narrow_radps`.
LoopStudy study_over(const AxisModel& model, const std::vector<LoopPoint>& points,
                     std::vector<double>* narrow_radps) {
  LoopStudy study;
  FrequencyResponse& response = study.response;
  Follower speed(model, speed_value), position(model, position_value);
  for (auto* loop : {&speed, &position}) loop->reserve(points.size());
  for (auto* column : {&response.w_radps, &response.closed_gain, &response.error_gain})
    column->reserve(points.size());
  for (const LoopPoint& point : points) {
    speed.take(point);
    position.take(point);
    const LoopValue open = position_value(point, model.control);
    response.w_radps.push_back(point.w_radps);
    response.closed_gain.push_back(closed_gain(open));
    response.error_gain.push_back(error_gain(open));
  }
  *narrow_radps = speed.narrow_radps_;
  study.speed = speed.margins();
  study.position = position.margins();
  response.speed_gain_margin_at_radps = study.speed.gain_margin_at_radps;
  response.position_gain_margin_at_radps = study.position.gain_margin_at_radps;
  study.is_stable = speed.is_stable() && position.is_stable();
  response.speed_gain = std::move(speed.gains_);
  response.speed_phase_rad = std::move(speed.phases_);
  response.position_gain = std::move(position.gains_);
  response.position_phase_rad = std::move(position.phases_);
  return study;
}

}  // namespace

double antiresonance_radps(const AxisModel& model) {
  return std::sqrt(model.gear.stiffness_Nmprad / model.load.inertia_kgm2);
}

double resonance_radps(const AxisModel& model) {
  return std::sqrt(model.gear.stiffness_Nmprad *
                   (1 / model.load.inertia_kgm2 + 1 / model.reflected_inertia_kgm2()));
}

std::complex<double> speed_loop(const AxisModel& model, double w_radps) {
  return speed_value(loop_point(model, w_radps), model.control).value();
}

std::complex<double> position_loop(const AxisModel& model, double w_radps) {
  return position_value(loop_point(model, w_radps), model.control).value();
}

LoopMargins speed_loop_margins(const AxisModel& model) {
  return study_loops(model, loop_points(model)).speed;
}
LoopMargins position_loop_margins(const AxisModel& model) {
  return study_loops(model, loop_points(model)).position;
}

LoopStudy study_loops(const AxisModel& model, const std::vector<LoopPoint>& points) {
  std::vector<double> narrow_radps;
  LoopStudy study = study_over(model, points, &narrow_radps);
  // The position loop sees the closed speed loop's narrow peaks.
  if (!narrow_radps.empty())
    study = study_over(model, with_points_about(model, points, narrow_radps), &narrow_radps);
  if (study.is_stable) close_position_loop(model, study);
  return study;
}

}  // namespace gazewright
