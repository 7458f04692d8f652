#include "core/analysis/sweep.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/motion/step.h"
#include "core/motion/step_lanes.h"

namespace gazewright {
namespace {

constexpr double kFlatBand = 1.05;

void resize(RatioSweep& sweep, const std::vector<double>& ratios) {
  sweep.ratio = ratios;
  const std::size_t n = ratios.size();
  sweep.shortest_time_s.resize(n);
  sweep.settle_time_s.resize(n);
  sweep.peak_torque_Nm.resize(n);
  sweep.top_speed_radps.resize(n);
  sweep.peak_acceleration_radps2.resize(n);
}

/// All but the settling times.
void compute_points(AxisModel model, double move_rad, RatioSweep& sweep,
                    const std::stop_token& stop) {
  for (std::size_t i = 0; i < sweep.ratio.size() && !stop.stop_requested(); ++i) {
    model.gear.ratio = sweep.ratio[i];
    sweep.peak_torque_Nm[i] = stall_torque_Nm(model);
    sweep.top_speed_radps[i] = top_speed_radps(model);
    sweep.peak_acceleration_radps2[i] = peak_acceleration_radps2(model);
    if (const auto move = fastest_move(model, move_rad)) sweep.shortest_time_s[i] = move->time_s;
  }
}

/// As step.settle_time finds it, every ratio watched longer until it has settled.
void compute_whole_settling(const AxisModel& model, const LaneOptions& options, RatioSweep& sweep,
                            const std::stop_token& stop) {
  for (const double horizon_s : kSettleHorizons_s) {
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < sweep.ratio.size(); ++i)
      if (!sweep.settle_time_s[i]) open.push_back(i);
    if (open.empty() || stop.stop_requested()) return;
    std::vector<double> ratios(open.size());
    std::ranges::transform(open, ratios.begin(), [&](std::size_t i) { return sweep.ratio[i]; });
    LaneOptions longer = options;
    longer.horizon_s = horizon_s;
    const LaneResults steps = step_lanes(model, ratios, longer, stop);
    for (std::size_t k = 0; k < open.size(); ++k)
      sweep.settle_time_s[open[k]] = steps.settle_time_s[k];
  }
}

/// Inside the band only in the last tenth of the horizon is not yet seen to have settled.
void compute_settling(const AxisModel& model, const LaneOptions& options, RatioSweep& sweep,
                      const std::stop_token& stop) {
  const LaneResults steps = step_lanes(model, sweep.ratio, options, stop);
  for (std::size_t i = 0; i < sweep.ratio.size(); ++i) {
    const auto& settle_s = steps.settle_time_s[i];
    if (settle_s && *settle_s < 0.9 * options.horizon_s) sweep.settle_time_s[i] = settle_s;
  }
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
  const AxisModel model = context.model(axis);
  const double move_rad = context.move_rad(axis);
  compute_points(model, move_rad, sweep, stop);
  if (options.settle && can_settle) {
    const LaneOptions lanes{.move_rad = move_rad,
                            .band_rad = context.band_rad(),
                            .horizon_s = std::max(options.horizon_s, 2 * within),
                            .threads = options.threads};
    (options.is_whole ? compute_whole_settling : compute_settling)(model, lanes, sweep, stop);
  }
  if (const auto best = least(sweep.shortest_time_s)) sweep.best_time_ratio = ratios[*best];
  if (const auto best = least(sweep.settle_time_s)) sweep.best_settle_ratio = ratios[*best];
  mark_flat_band(sweep);
  return sweep;
}

}  // namespace gazewright
