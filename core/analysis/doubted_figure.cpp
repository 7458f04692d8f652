#include "core/analysis/doubted_figure.h"

#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

constexpr double kCoverage = 2;
/// A change of a figure below this part of it is rounding.
constexpr double kRounding = 1e-9;
/// A doubt below this part of a figure is noise of searches and simulations, and none to anybody.
constexpr double kNoDoubt = 1e-6;

struct Effect {
  Shift shift;
  double square = 0;

  bool is_whole() const { return shift.low && shift.high; }
};

/// What one unknown does to a figure; empty where it changes nothing.
std::optional<Effect> effect_of(const DoubtRuns& runs, std::size_t unknown, std::size_t figure,
                                double value) {
  const double nominal = *runs.nominal.values[figure];
  const Outcome &low = runs.low[unknown], &high = runs.high[unknown];
  Effect effect;
  effect.shift.unknown = unknown;
  double low_change = 0, high_change = 0;
  if (const auto& at = low.values[figure]) {
    low_change = *at - nominal;
    effect.shift.low = *at + (value - nominal);
  } else {
    effect.shift.because = low.because[figure];
  }
  if (const auto& at = high.values[figure]) {
    high_change = *at - nominal;
    effect.shift.high = *at + (value - nominal);
  } else {
    effect.shift.because = high.because[figure];
  }
  if (!effect.shift.low) low_change = high_change;
  if (!effect.shift.high) high_change = low_change;
  effect.square = mean_square(low_change, high_change);
  const double least = kRounding * std::abs(nominal);
  if (effect.is_whole() && !(std::sqrt(effect.square) > least)) return std::nullopt;
  return effect;
}

}  // namespace

double mean_square(double low_change, double high_change) {
  return (low_change * low_change + high_change * high_change) / 2;
}

double expanded(double mean_square) { return kCoverage * std::sqrt(mean_square / 3); }

std::optional<DoubtedFigure> doubted_figure(const DoubtRuns& runs, std::size_t figure,
                                            const std::string& id, double value) {
  std::vector<Effect> effects;
  double sum = 0;
  for (std::size_t i = 0; i < runs.low.size(); ++i) {
    auto effect = effect_of(runs, i, figure, value);
    if (!effect) continue;
    sum += effect->square;
    effects.push_back(std::move(*effect));
  }
  if (effects.empty()) return std::nullopt;
  const auto lacking =
      std::ranges::count_if(effects, [](const Effect& e) { return !e.is_whole(); });
  if (lacking == 0 && expanded(sum) < kNoDoubt * std::abs(value)) return std::nullopt;
  for (Effect& effect : effects)
    effect.shift.share = lacking == 0        ? effect.square / sum
                         : effect.is_whole() ? 0
                                             : 1 / static_cast<double>(lacking);
  std::ranges::stable_sort(effects, [](const Effect& a, const Effect& b) {
    return std::pair(a.is_whole(), -a.square) < std::pair(b.is_whole(), -b.square);
  });
  DoubtedFigure doubted{id, value, expanded(sum), lacking == 0, {}};
  for (Effect& effect : effects) doubted.shifts.push_back(std::move(effect.shift));
  return doubted;
}

}  // namespace gazewright
