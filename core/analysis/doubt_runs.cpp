#include "core/analysis/doubt_runs.h"

#include <atomic>
#include <cmath>
#include <thread>

#include "core/analysis/compare.h"
#include "core/analysis/context.h"

namespace gazewright {
namespace {

/// A step that has left its move so far behind goes on to do so.
constexpr double kRunsAway = 100;

Outcome outcome_of(const Rig& rig, const std::vector<std::string>& ids,
                   const std::stop_token& stop) {
  const Analysis analysis = analyse(rig, {.remedies = false, .quick = true}, stop);
  Outcome outcome;
  for (const std::string& id : ids) {
    const Figure* figure = analysis.figure(id);
    outcome.values.push_back(figure == nullptr ? std::nullopt : figure->value);
    outcome.because.push_back(figure == nullptr ? std::string() : figure->because);
  }
  for (const Axis axis : kAxes) {
    const auto a = static_cast<std::size_t>(axis);
    const AxisCurves& curves = analysis.of(axis);
    outcome.step_rad[a] = curves.step.angle_rad;
    outcome.runs_away[a] =
        !curves.step.angle_rad.empty() &&
        std::abs(curves.step.angle_rad.back()) > kRunsAway * std::abs(curves.move_rad);
  }
  return outcome;
}

Rig with_value(Rig rig, const std::string& path, double value_si) {
  Quantity& quantity = *find_quantity(rig, path);
  quantity.si = value_si;  // with its spread, which some figures count with
  quantity.written.clear();
  return rig;
}

}  // namespace

std::vector<std::string> doubted_ids() {
  std::vector<std::string> ids;
  for (const HeadlineFigure& headline : headline_figures()) {
    for (const Axis axis : kAxes)
      if (axis == Axis::pan || headline.id.starts_with('<'))
        ids.push_back(for_axis(headline.id, axis));
  }
  return ids;
}

std::optional<DoubtRuns> run_doubts(const Rig& rig, const std::vector<FoundUnknown>& unknowns,
                                    int threads, const std::stop_token& stop) {
  Rig bare = rig;
  bare.variants.clear();
  const std::vector<std::string> ids = doubted_ids();
  DoubtRuns runs{{}, std::vector<Outcome>(unknowns.size()), std::vector<Outcome>(unknowns.size())};
  std::atomic<std::size_t> next = 0;
  const auto work = [&] {
    for (std::size_t i = next++; i <= 2 * unknowns.size() && !stop.stop_requested(); i = next++) {
      if (i == 0) {
        runs.nominal = outcome_of(bare, ids, stop);
        continue;
      }
      const FoundUnknown& found = unknowns[(i - 1) / 2];
      const bool is_low = i % 2 == 1;
      (is_low ? runs.low : runs.high)[(i - 1) / 2] =
          outcome_of(with_value(bare, found.at, is_low ? found.low : found.high), ids, stop);
    }
  };
  {
    std::vector<std::jthread> others;
    for (int i = 1; i < threads; ++i) others.emplace_back(work);
    work();
  }
  if (stop.stop_requested()) return std::nullopt;
  return runs;
}

}  // namespace gazewright
