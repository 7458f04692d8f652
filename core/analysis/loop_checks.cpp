#include <algorithm>
#include <cmath>

#include "core/analysis/bracket_mode.h"
#include "core/analysis/checks.h"
#include "core/analysis/crossover.h"
#include "core/analysis/gain_effect.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

// Common practice, no source.
constexpr double kSamplesPerPeriod = 4, kHarmlessImage = 0.5;

/// The speed loop's largest gain at the resonance while that is up to a tenth off, as the stiffness
/// is not known better: just at a multiple of the rate the sampled loop has zeros, which no real
/// train stays on.
double gain_about(const AxisModel& model) {
  double most = 0;
  for (int step = -4; step <= 4; ++step) {
    AxisModel moved = model;
    const double factor = 1 + 0.025 * step;
    moved.gear.stiffness_Nmprad *= factor * factor;
    moved.gear.damping_Nmsprad *= factor;
    most = std::max(most, std::abs(speed_loop(moved, resonance_radps(moved))));
  }
  return most;
}

/// What sampling makes of the resonance: nothing to speak of where the loop's gain is small there.
Compared control_rate(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const double resonance = resonance_radps(model), rate = model.control.control_rate_Hz;
  const double least_Hz = kSamplesPerPeriod * resonance / (2 * M_PI);
  const double gain = gain_about(model);
  const std::string of =
      words("the resonance of motor and load at %1", say(resonance / (2 * M_PI), "Hz", "Hz"));
  if (gain < kHarmlessImage && rate < least_Hz)
    return moot(
        words("%1 is too fast for the control rate, but the speed loop's gain there is only %2", of,
              say(gain, "1", "1")));
  return {least_Hz, rate,
          words("four samples a period of %1; the speed loop's gain there is %2", of,
                say(gain, "1", "1"))};
}

/// The loops' model does not know the bracket: it has to swing well above them.
Compared bracket_above_loop(Context& c, Axis a) {
  const double mode = *bracket_mode_radps(c, a);
  const auto& crossover = c.speed_margins(a).crossover_radps;
  if (!crossover)
    return without_crossover(
        c, a, mode, words("the gain of the speed loop stays below 1: it moves no bracket"));
  return {kModeAboveLoop * *crossover, mode,
          words("the camera swings on its bracket at %1, %2 times the speed loop's crossover of "
                "%3; three times is common practice",
                say(mode, "rad/s", "Hz"), say(mode / *crossover, "1", "1"),
                say(*crossover, "rad/s", "Hz"))};
}

Compared gap_swing_against_band(Context& c, Axis a) {
  const auto& swing = c.gap_swing(a);
  if (!swing) return moot(words("the gap keeps no swing going"));
  return {
      swing->amplitude_rad, c.band_rad(),
      words("keeps swinging by ±%1 at %2, teeth from side to side",
            say(swing->amplitude_rad, "rad", "deg"), say(swing->frequency_radps, "rad/s", "Hz"))};
}

bool has_gap(Context& c, Axis a) { return c.rig().axis(a).gearbox.backlash_rad.si.value_or(1) > 0; }

constexpr auto kLoopsOnBracket =
    joined(kLoops, std::array<InputPath, 1>{"<axis>.bracket.stiffness"});
constexpr Lever kBracketLevers[] = {{"<axis>.bracket.stiffness", Way::up, 30},
                                    {"<axis>.loop.speed_gain", Way::down, 30}};
constexpr auto kSwingAndBand = joined(kGapSwing, kToPixels);
constexpr Lever kRateLevers[] = {{"<axis>.drive.control_rate", Way::up, 20},
                                 {"<axis>.loop.speed_gain", Way::down, 100}};
constexpr Lever kSwingLevers[] = {{"<axis>.gearbox.backlash", Way::down, 30},
                                  {"<axis>.loop.speed_gain", Way::down, 30},
                                  {"<axis>.loop.speed_integral_gain", Way::down, 100}};

constexpr Check kLoopChecks[] = {
    {.id = "<axis>.loop.rate",
     .what = "Control rate against the resonance",
     .goal = "would be quick enough for the resonance",
     .part = "<axis>.drive",
     .si_unit = "Hz",
     .unit = "Hz",
     .inputs = kLoops,
     .compare = control_rate,
     .levers = kRateLevers,
     .offer = advised_gains},
    {.id = "<axis>.loop.bracket",
     .what = "Bracket stiff enough for the loop",
     .goal = "would keep the bracket's swing three times above the loop",
     .part = "<axis>.bracket",
     .si_unit = "rad/s",
     .unit = "Hz",
     .inputs = kLoopsOnBracket,
     .compare = bracket_above_loop,
     .levers = kBracketLevers,
     .asked_by = "<axis>.bracket.stiffness",
     .offer = advised_gains},
    {.id = "<axis>.gap.limit_cycle",
     .what = "Swing in the gap against the settle band",
     .goal = "would end the swing in the gap",
     .part = "<axis>.gearbox",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kSwingAndBand,
     .compare = gap_swing_against_band,
     .levers = kSwingLevers,
     .asked_when = has_gap,
     .offer = advised_gains},
};

}  // namespace

std::span<const Check> loop_checks() { return kLoopChecks; }

std::optional<Remedy> advised_gains(Context& c, Axis a) {
  const GainAdvice& advice = c.advice(a);
  if (advice.values.empty()) return std::nullopt;
  const GainOutcome then = outcome_advised(c, a), now = outcome_today(c, a);
  std::string text = words("the advised %1", gains_in_words(advice, a));
  if (settles_slower(then, now))
    text = then.settle_s ? words("%1 (settling slower: in %2 instead of %3)", text,
                                 say(*then.settle_s, "s", "ms"), say(*now.settle_s, "s", "ms"))
                         : words("%1 (which never settle, today's do in %2)", text,
                                 say(*now.settle_s, "s", "ms"));
  Remedy remedy{std::move(text), advice.values.front().path, advice.values.front().value_si, {}};
  remedy.also.assign(advice.values.begin() + 1, advice.values.end());
  return remedy;
}

}  // namespace gazewright
