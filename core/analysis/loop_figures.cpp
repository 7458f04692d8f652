#include <algorithm>
#include <cmath>

#include "core/analysis/arm_values.h"
#include "core/analysis/figures.h"
#include "core/analysis/gain_effect.h"
#include "core/analysis/inputs.h"
#include "core/analysis/left_out.h"
#include "core/words/words.h"

/// Closed loops, the swing in the gap and the advised gains. Method: resources/handbook/loops.md.
namespace gazewright {
namespace {

constexpr const char* kLinearSource = "linear model wound tight; handbook: loops";
constexpr const char* kBalanceSource =
    "harmonic balance; Gelb & Vander Velde 1968 (memory); handbook: loops";
constexpr const char* kAdviceSource = "searched in the linear model; handbook: loops";
constexpr const char* kNoCrossing = "the loop never crosses unit gain below half the sample rate";
constexpr const char* kUnstable = "the loops are unstable: there is no steady answer";
constexpr auto kSwingPixels = joined(kGapSwing, kScale);

std::optional<double> of_swing(Context& c, Axis a, double GapSwing::*value) {
  const auto& swing = c.gap_swing(a);
  return swing ? std::optional((*swing).*value) : std::nullopt;
}

Answer swing(Context& c, Axis a, double GapSwing::*value, double factor = 1) {
  const auto found = of_swing(c, a, value);
  if (found) return factor * *found;
  const AxisModel& model = c.model(a);
  if (!(model.gear.backlash_rad > 0)) return Answer::aside(words("there is no gap"));
  if (!c.loops(a).is_stable) return Answer::none(kUnstable);
  return Answer::none(words("it comes to rest: the gap keeps no swing going"));
}

Answer advised(Context& c, Axis a, double LoopGains::*gain) {
  const GainAdvice& advice = c.advice(a);
  if (c.is_quick()) return left_out_of_drag();
  if (!advice.tuning) return Answer::none(advice.sentences.front());
  return advice.tuning->gains.*gain;
}

/// Up to where the train of two inertias and the current loop as one lag stand for the rig.
Answer model_end(Context& c, Axis a) {
  double end_Hz = c.model(a).control.current_bandwidth_Hz;
  if (!c.missing(kArmSize, a).empty()) return end_Hz;
  const ArmValues& arm = arm_values(c);
  if (arm.because.empty()) end_Hz = std::min(end_Hz, arm.used().modes.of(a));
  return end_Hz;
}

const FigureRow kLoopFigures[] = {
    {{"<axis>.loop.delay_margin", "Speed loop delay margin", "s", "ms",
      "phase margin/ω, least of all crossings", kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.speed_margins(a).delay_margin_s, kNoCrossing};
     }},
    {{"<axis>.loop.position_delay_margin", "Position loop delay margin", "s", "ms",
      "phase margin/ω, least of all crossings", kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.position_margins(a).delay_margin_s, kNoCrossing};
     }},
    {{"<axis>.loop.bandwidth", "Bandwidth of the closed position loop", "rad/s", "Hz",
      "|angle/command| first passes 1/√2", kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       const LoopStudy& loops = c.loops(a);
       return {loops.bandwidth_radps,
               loops.is_stable ? words("follows beyond half the sample rate, or not at all")
                               : kUnstable};
     }},
    {{"<axis>.loop.position_peak", "Peak of the closed position loop", "1", "1",
      "largest |angle/command|", kLinearSource, kLoops},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return {c.loops(a).peak, kUnstable};
     }},
    {{"<axis>.loop.model_end", "Model of the loops holds up to", "Hz", "Hz",
      "the least of the current loop's bandwidth and, where the arm is described, its mode",
      "what the model leaves out; handbook: loops", kLoops},
     Axes::both,
     model_end},
    {{"<axis>.gap.limit_cycle_amplitude", "Swing in the gap", "rad", "deg",
      "harmonic balance of dead zone, friction and loops, each way", kBalanceSource, kGapSwing},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return swing(c, a, &GapSwing::amplitude_rad); }},
    {{"<axis>.gap.limit_cycle_frequency", "Frequency of the swing in the gap", "rad/s", "Hz",
      "harmonic balance of dead zone, friction and loops", kBalanceSource, kGapSwing},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return swing(c, a, &GapSwing::frequency_radps); }},
    {{"<axis>.gap.limit_cycle_px", "Swing in the gap in the picture", "1", "1",
      "swing·pixels per radian", kBalanceSource, kSwingPixels},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return swing(c, a, &GapSwing::amplitude_rad, c.pixels_per_radian());
     }},
    {{"<axis>.advice.position_gain", "Advised position gain", "1/s", "1/s",
      "highest with margins and without a peak above 1.05", kAdviceSource, kAdvice},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return advised(c, a, &LoopGains::position_gain_1ps); }},
    {{"<axis>.advice.speed_gain", "Advised speed gain", "N.m.s/rad", "N.m.s/rad",
      "highest with the wanted margin, or for the wanted bandwidth", kAdviceSource, kAdvice},
     Axes::both,
     [](Context& c, Axis a) -> Answer { return advised(c, a, &LoopGains::speed_gain_Nmsprad); }},
    {{"<axis>.advice.speed_integral_gain", "Advised speed integral gain", "N.m/rad", "N.m/rad",
      "speed gain²/(4·inertia)", kAdviceSource, kAdvice},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       return advised(c, a, &LoopGains::speed_integral_gain_Nmprad);
     }},
    {{"<axis>.advice.crossover", "Speed loop crossover with the advised gains", "rad/s", "Hz",
      "first |L| = 1", kAdviceSource, kAdvice},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       const GainAdvice& advice = c.advice(a);
       if (c.is_quick()) return left_out_of_drag();
       if (!advice.tuning) return Answer::none(advice.sentences.front());
       return advice.tuning->crossover_radps;
     }},
    {{"<axis>.advice.settle_time", "Settle time with the advised gains", "s", "ms",
      "simulated as the settle time", "simulated; handbook: loops", kAdvisedSettle},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       if (c.is_quick()) return left_out_of_drag();
       if (!c.advice(a).tuning) return Answer::none(c.advice(a).sentences.front());
       return {outcome_advised(c, a).settle_s, words("never settles with the advised gains")};
     }},
    {{"<axis>.advice.phase_margin", "Phase margin with the advised gains", "rad", "deg",
      "the smaller of both loops", kLinearSource, kAdvice},
     Axes::both,
     [](Context& c, Axis a) -> Answer {
       if (c.is_quick()) return left_out_of_drag();
       if (!c.advice(a).tuning) return Answer::none(c.advice(a).sentences.front());
       return {outcome_advised(c, a).phase_rad, kNoCrossing};
     }},
};

}  // namespace

std::span<const FigureRow> loop_figures() { return kLoopFigures; }

}  // namespace gazewright
