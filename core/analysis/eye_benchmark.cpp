#include "core/analysis/eye_benchmark.h"

#include <thread>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

constexpr std::array<double, 7> kSizes_deg{2, 5, 10, 20, 30, 40, 60};
constexpr std::array<double, 2> kHorizons_s{0.6, 2};  // an eye takes 0.2 s at the most

EyeMove eye_move(const AxisModel& model, double move_rad, double band_rad,
                 const std::stop_token& stop) {
  EyeMove move;
  move.move_rad = move_rad;
  if (const auto fastest = fastest_move(model, move_rad)) {
    move.shortest_s = fastest->time_s;
    move.shortest_peak_radps = fastest->peak_speed_radps;
  }
  for (const double horizon_s : kHorizons_s) {
    const Trace trace = simulate_step(model, move_rad, horizon_s, stop);
    const StepFigures step = step_figures(trace, move_rad, band_rad);
    const bool is_whole = !trace.time_s.empty() && trace.time_s.back() > 0.9 * horizon_s;
    if (!is_whole || stop.stop_requested()) return move;
    move.settle_s = step.settle_time_s;
    if (!move.settle_s) continue;
    move.step_peak_radps = step.peak_speed_radps;
    break;
  }
  return move;
}

}  // namespace

EyeBenchmark eye_benchmark(Context& context, const std::stop_token& stop) {
  EyeBenchmark moves;
  std::array<const AxisModel*, 2> models{};
  for (const Axis axis : kAxes)
    if (context.missing(kSettle, axis).empty())
      models[static_cast<std::size_t>(axis)] = &context.model(axis);
  const double band_rad = context.band_rad();
  const auto run = [&](std::size_t axis) {
    for (const double size_deg : kSizes_deg) {
      if (models[axis] == nullptr || stop.stop_requested()) return;
      moves[axis].push_back(eye_move(*models[axis], size_deg * kDegree_rad, band_rad, stop));
    }
  };
  const std::jthread tilt([&] { run(1); });
  run(0);
  return moves;
}

}  // namespace gazewright
