#include "core/analysis/gain_effect.h"

#include <algorithm>

#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

/// Two settle times that differ by less than this part are the same.
constexpr double kSame = 0.01;

/// Kept by its type, see Context::kept().
struct AdvisedOutcome {
  GainOutcome outcome;
};

std::optional<double> smaller(const std::optional<double>& a, const std::optional<double>& b) {
  if (!a || !b) return a ? a : b;
  return std::min(*a, *b);
}

void add_margins(GainOutcome& outcome, const LoopStudy& study) {
  outcome.phase_rad = smaller(study.speed.phase_margin_rad, study.position.phase_margin_rad);
  outcome.gain_factor = smaller(study.speed.gain_margin, study.position.gain_margin);
}

GainOutcome advised(Context& c, Axis a) {
  GainOutcome outcome;
  const GainAdvice& advice = c.advice(a);
  if (!advice.tuning) return outcome;
  const AxisModel model = with_gains(c.model(a), advice.tuning->gains);
  add_margins(outcome, study_loops(model, c.loop_points(a)));
  if (!c.missing(kAdvisedSettle, a).empty()) return outcome;
  outcome.is_simulated = true;
  outcome.settle_s = simulate_until_settled(model, c.move_rad(a), c.step_band_rad(a), c.stop())
                         .figures.settle_time_s;
  return outcome;
}

std::string seconds(const std::optional<double>& time_s) { return say(*time_s, "s", "ms"); }

std::string settling(const GainOutcome& then, const GainOutcome& now) {
  if (!then.is_simulated) return {};
  if (!now.is_simulated)
    return then.settle_s ? words("With these gains the move settles in %1", seconds(then.settle_s))
                         : words("With these gains the move never settles");
  if (!then.settle_s)
    return now.settle_s
               ? words("With these gains the move never settles, with today's in %1",
                       seconds(now.settle_s))
               : words("The move never settles, neither with these gains nor with today's");
  if (!now.settle_s)
    return words("With these gains the move settles in %1, with today's it never does",
                 seconds(then.settle_s));
  if (settles_slower(then, now))
    return words("With these gains the move settles slower, in %1 instead of %2",
                 seconds(then.settle_s), seconds(now.settle_s));
  if (*then.settle_s > *now.settle_s * (1 - kSame))
    return words("With these gains the move settles in %1, as with today's",
                 seconds(then.settle_s));
  return words("With these gains the move settles in %1 instead of %2", seconds(then.settle_s),
               seconds(now.settle_s));
}

std::string phase(double margin_rad) { return say(margin_rad, "rad", "deg"); }
std::string factor(double margin) { return say(margin, "1", "1"); }

/// Of what is known of the advised gains, beside today's where that is known too.
std::string margins(const GainOutcome& then, const GainOutcome& now) {
  std::string text;
  if (then.phase_rad)
    text = now.phase_rad ? words("phase margin %1 instead of %2", phase(*then.phase_rad),
                                 phase(*now.phase_rad))
                         : words("phase margin %1", phase(*then.phase_rad));
  if (!then.gain_factor) return text;
  if (!text.empty()) text += ", ";
  return text + (now.gain_factor ? words("gain margin %1 instead of %2", factor(*then.gain_factor),
                                         factor(*now.gain_factor))
                                 : words("gain margin %1", factor(*then.gain_factor)));
}

bool buys_margin(const GainOutcome& then, const GainOutcome& now) {
  const auto is_more = [](const std::optional<double>& a, const std::optional<double>& b) {
    return a && b && *a > *b * (1 + kSame);
  };
  return is_more(then.phase_rad, now.phase_rad) || is_more(then.gain_factor, now.gain_factor);
}

}  // namespace

GainOutcome outcome_today(Context& c, Axis a) {
  GainOutcome outcome;
  if (c.missing(kLoops, a).empty()) add_margins(outcome, c.loops(a));
  if (!c.missing(kSettle, a).empty()) return outcome;
  outcome.is_simulated = true;
  outcome.settle_s = c.step(a).figures.settle_time_s;
  return outcome;
}

const GainOutcome& outcome_advised(Context& c, Axis a) {
  return c.kept<AdvisedOutcome>(a, [&] { return AdvisedOutcome{advised(c, a)}; }).outcome;
}

bool settles_slower(const GainOutcome& then, const GainOutcome& now) {
  if (!then.is_simulated || !now.settle_s) return false;
  return !then.settle_s || *then.settle_s > *now.settle_s * (1 + kSame);
}

std::string gain_effect(Context& c, Axis a) {
  const GainOutcome then = outcome_advised(c, a), now = outcome_today(c, a);
  const std::string moves = settling(then, now), kept = margins(then, now);
  if (moves.empty() && kept.empty()) return {};
  if (kept.empty()) return moves + '.';
  if (moves.empty()) return words("These gains leave %1.", kept);
  if (!settles_slower(then, now)) return words("%1: %2.", moves, kept);
  return buys_margin(then, now) ? words("%1. That buys margin: %2.", moves, kept)
                                : words("%1, and they buy no margin: %2.", moves, kept);
}

GainAdvice advice_with_effect(Context& c, Axis a) {
  GainAdvice advice = c.advice(a);
  if (!advice.tuning) return advice;
  if (std::string effect = gain_effect(c, a); !effect.empty())
    advice.sentences.insert(advice.sentences.begin(), std::move(effect));
  return advice;
}

}  // namespace gazewright
