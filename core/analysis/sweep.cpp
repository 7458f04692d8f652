#include "core/analysis/sweep.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <thread>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"

namespace gazewright {
namespace {

constexpr double kFlatBand = 1.05;

struct SweepInputs {
  AxisModel model;
  double move_rad = 0, band_rad = 0, horizon_s = 0;
  bool settle = false;
};

void resize(RatioSweep& sweep, const std::vector<double>& ratios) {
  sweep.ratio = ratios;
  const std::size_t n = ratios.size();
  sweep.shortest_time_s.resize(n);
  sweep.settle_time_s.resize(n);
  sweep.peak_torque_Nm.resize(n);
  sweep.top_speed_radps.resize(n);
  sweep.peak_acceleration_radps2.resize(n);
}

void compute_point(const SweepInputs& inputs, RatioSweep& sweep, std::size_t i) {
  AxisModel model = inputs.model;
  model.gear.ratio = sweep.ratio[i];
  sweep.peak_torque_Nm[i] = stall_torque_Nm(model);
  sweep.top_speed_radps[i] = top_speed_radps(model);
  sweep.peak_acceleration_radps2[i] = peak_acceleration_radps2(model);
  if (const auto move = fastest_move(model, inputs.move_rad))
    sweep.shortest_time_s[i] = move->time_s;
  if (!inputs.settle) return;
  const Trace trace = simulate_step(model, inputs.move_rad, inputs.horizon_s);
  const auto settle = step_figures(trace, inputs.move_rad, inputs.band_rad).settle_time_s;
  // Inside the band only in the last tenth of the horizon is not yet seen to have settled.
  if (settle && *settle < 0.9 * inputs.horizon_s) sweep.settle_time_s[i] = settle;
}

void compute_points(const SweepInputs& inputs, RatioSweep& sweep, int threads,
                    const std::stop_token& stop) {
  std::atomic<std::size_t> next{0};
  const auto work = [&] {
    for (std::size_t i = next++; i < sweep.ratio.size() && !stop.stop_requested(); i = next++) {
      compute_point(inputs, sweep, i);
    }
  };
  const int wanted = threads > 0 ? threads : static_cast<int>(std::thread::hardware_concurrency());
  std::vector<std::jthread> helpers;
  for (int i = 1; i < wanted; ++i) helpers.emplace_back(work);
  work();
}

std::vector<InputPath> without_ratio(std::span<const InputPath> inputs) {
  std::vector<InputPath> needed(inputs.begin(), inputs.end());
  std::erase(needed, "<axis>.gearbox.ratio");
  return needed;
}

std::optional<std::size_t> least(const std::vector<std::optional<double>>& values) {
  std::optional<std::size_t> at;
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (values[i] && (!at || *values[i] < *values[*at])) at = i;
  }
  return at;
}

/// Ratio between points i and j where the time crosses `level`, straight in the logarithm of the
/// ratio.
double crossing(const RatioSweep& sweep, std::size_t inside, std::size_t outside, double level) {
  const auto& time = sweep.shortest_time_s;
  if (!time[outside]) return sweep.ratio[inside];
  const double part = (level - *time[inside]) / (*time[outside] - *time[inside]);
  return sweep.ratio[inside] * std::pow(sweep.ratio[outside] / sweep.ratio[inside], part);
}

void mark_flat_band(RatioSweep& sweep) {
  const auto best = least(sweep.shortest_time_s);
  if (!best) return;
  const auto& time = sweep.shortest_time_s;
  const double level = kFlatBand * *time[*best];
  std::size_t first = *best, last = *best;
  while (first > 0 && time[first - 1] && *time[first - 1] <= level) --first;
  while (last + 1 < time.size() && time[last + 1] && *time[last + 1] <= level) ++last;
  sweep.band_least = first > 0 ? crossing(sweep, first, first - 1, level) : sweep.ratio[first];
  sweep.band_most =
      last + 1 < time.size() ? crossing(sweep, last, last + 1, level) : sweep.ratio[last];
}

}  // namespace

std::vector<double> usual_ratios(int count) {
  std::vector<double> ratios(static_cast<std::size_t>(std::max(count, 2)));
  const double last = static_cast<double>(ratios.size() - 1);
  for (std::size_t i = 0; i < ratios.size(); ++i) {
    ratios[i] = std::pow(200.0, static_cast<double>(i) / last);
  }
  return ratios;
}

RatioSweep sweep_ratio(const Rig& rig, Axis axis, const std::vector<double>& ratios,
                       const SweepOptions& options, const std::stop_token& stop) {
  RatioSweep sweep;
  Context context(rig, stop);
  sweep.because = say_needs(context.missing(without_ratio(kRigidMove), axis));
  if (!sweep.because.empty()) return sweep;
  const bool can_settle = context.missing(without_ratio(kSettle), axis).empty();
  const double within = context.rig().task.within_s.si.value_or(0);
  resize(sweep, ratios);
  compute_points({context.model(axis), context.move_rad(axis), context.band_rad(),
                  std::max(options.horizon_s, 2 * within), options.settle && can_settle},
                 sweep, options.threads, stop);
  if (const auto best = least(sweep.shortest_time_s)) sweep.best_time_ratio = ratios[*best];
  if (const auto best = least(sweep.settle_time_s)) sweep.best_settle_ratio = ratios[*best];
  mark_flat_band(sweep);
  return sweep;
}

}  // namespace gazewright
