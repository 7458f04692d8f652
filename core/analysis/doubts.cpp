#include "core/analysis/doubts.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/doubt_runs.h"
#include "core/analysis/doubt_words.h"
#include "core/analysis/doubted_figure.h"
#include "core/analysis/open_verdicts.h"

namespace gazewright {
namespace {

constexpr int kThreads = 2;
/// Figures that are off by less than this part of themselves do not count.
constexpr double kNotable = 1e-3;
/// What takes less than 1 % off a figure's doubt is not worth measuring: knowing an input with a
/// share s of the variance leaves √(1 − s) of it.
constexpr double kNotableShare = 1 - 0.99 * 0.99;

/// A shorter course stays where it ended: it has settled.
double angle_at(const std::vector<double>& angles, std::size_t sample) {
  return sample < angles.size() ? angles[sample] : angles.back();
}

/// Empty where the step is, and where an end has none or runs away: no band would be wide enough.
StepBand band_of(const DoubtRuns& runs, const Trace& step, Axis axis) {
  const auto a = static_cast<std::size_t>(axis);
  const auto has_course = [a](const Outcome& outcome) {
    return !outcome.step_rad[a].empty() && !outcome.runs_away[a];
  };
  if (runs.low.empty() || step.time_s.empty() || !has_course(runs.nominal) ||
      !std::ranges::all_of(runs.low, has_course) || !std::ranges::all_of(runs.high, has_course))
    return {};
  std::vector<double> squares(step.time_s.size());
  for (std::size_t u = 0; u < runs.low.size(); ++u) {
    for (std::size_t i = 0; i < squares.size(); ++i) {
      const double nominal = angle_at(runs.nominal.step_rad[a], i);
      squares[i] += mean_square(angle_at(runs.low[u].step_rad[a], i) - nominal,
                                angle_at(runs.high[u].step_rad[a], i) - nominal);
    }
  }
  StepBand band{step.time_s, step.angle_rad, step.angle_rad};
  for (std::size_t i = 0; i < squares.size(); ++i) {
    band.low_rad[i] -= expanded(squares[i]);
    band.high_rad[i] += expanded(squares[i]);
  }
  return band;
}

bool is_notable(const DoubtedFigure& figure) {
  return !figure.is_known_whole || figure.uncertainty_si >= kNotable * std::abs(figure.value);
}

/// The unknowns that matter, the one most worth measuring first.
std::vector<Doubts::Worth> worth_of(const Doubts& doubts, const std::vector<FoundUnknown>& unknowns,
                                    const Analysis& analysis) {
  const auto notable = static_cast<double>(std::ranges::count_if(doubts.figures, is_notable));
  std::vector<Doubts::Worth> all;
  for (std::size_t u = 0; u < unknowns.size(); ++u) {
    Doubts::Worth worth{u, 0, {}, {}};
    double most = 0;
    for (const DoubtedFigure& figure : doubts.figures) {
      if (!is_notable(figure)) continue;
      const auto shift = std::ranges::find(figure.shifts, u, &Shift::unknown);
      if (shift == figure.shifts.end()) continue;
      worth.share += shift->share / notable;
      if (shift->share <= most) continue;
      most = shift->share;
      worth.most_of = figure.id;
      worth.text =
          say_worth(unknowns[u].measuring, figure, *shift, *analysis.figure(figure.id)->info);
    }
    if (most >= kNotableShare) all.push_back(std::move(worth));
  }
  std::ranges::stable_sort(all, std::ranges::greater(), &Doubts::Worth::share);
  return all;
}

}  // namespace

const DoubtedFigure* Doubts::figure(std::string_view id) const {
  const auto at = std::ranges::find(figures, id, &DoubtedFigure::id);
  return at == figures.end() ? nullptr : &*at;
}

Doubts doubts_with(const Rig& rig, const Analysis& analysis, int threads,
                   const std::stop_token& stop) {
  const std::vector<FoundUnknown> unknowns = unknowns_of(rig);
  const auto runs = run_doubts(rig, unknowns, threads, stop);
  if (!runs) return {};
  Doubts doubts;
  doubts.exact = exact_inputs(rig);
  for (const FoundUnknown& found : unknowns) doubts.unknowns.push_back(found.unknown);
  const std::vector<std::string> ids = doubted_ids();
  for (std::size_t f = 0; f < ids.size(); ++f) {
    const std::optional<double> value = analysis.value(ids[f]);
    if (!value || !runs->nominal.values[f]) continue;
    if (auto figure = doubted_figure(*runs, f, ids[f], *value))
      doubts.figures.push_back(std::move(*figure));
  }
  for (const Axis axis : kAxes)
    doubts.step[static_cast<std::size_t>(axis)] = band_of(*runs, analysis.of(axis).step, axis);
  doubts.worth = worth_of(doubts, unknowns, analysis);
  rank_by_verdicts(doubts.worth, analysis, doubts);
  return doubts;
}

Doubts doubts_of(const Rig& rig, const Analysis& analysis, const std::stop_token& stop) {
  return doubts_with(rig, analysis, kThreads, stop);
}

}  // namespace gazewright
