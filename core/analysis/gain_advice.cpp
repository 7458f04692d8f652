#include "core/analysis/gain_advice.h"

#include <cmath>
#include <numbers>

#include "core/analysis/bracket_mode.h"
#include "core/analysis/context.h"
#include "core/analysis/crossover.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

// Method: resources/handbook/loops.md.
namespace gazewright {
namespace {

constexpr double kTwoPi = 2 * std::numbers::pi;
/// Part of the stall torque that one count of the encoder may ask for: common practice, no source.
constexpr double kMostRipple = 0.1;

std::string hertz(double w_radps) { return say(w_radps / kTwoPi, "Hz", "Hz"); }
std::string torque(double value_Nm) { return say(value_Nm, "N.m", "N.m"); }
std::string speed_gain(double value) { return say(value, "N.m.s/rad", "N.m.s/rad"); }
std::string integral_gain(double value) { return say(value, "N.m/rad", "N.m/rad"); }

/// The lag that costs the most phase, and what would shorten it.
std::string largest_lag(const SmallLags& lags) {
  if (lags.estimator_s >= lags.sampling_s && lags.estimator_s >= lags.current_s)
    return words("the speed estimator's, %1 of %2", say(lags.estimator_s, "s", "ms"),
                 say(lags.sum_s(), "s", "ms"));
  if (lags.sampling_s >= lags.current_s)
    return words("that of sampling and computing, %1 of %2", say(lags.sampling_s, "s", "ms"),
                 say(lags.sum_s(), "s", "ms"));
  return words("the current loop's, %1 of %2", say(lags.current_s, "s", "ms"),
               say(lags.sum_s(), "s", "ms"));
}

double inertia_ratio(const AxisModel& model) {
  return model.load.inertia_kgm2 / model.reflected_inertia_kgm2();
}

std::string limit_in_words(const Tuning& tuning) {
  const std::string at =
      tuning.limit_at_radps > 0 ? words(", at %1", hertz(tuning.limit_at_radps)) : std::string();
  switch (tuning.limited_by) {
    case Ceiling::wanted:
      return words("the wanted bandwidth");
    case Ceiling::resonance:
      return words("the resonance%1", at);
    case Ceiling::lags:
      return words("the lags of the loop%1", at);
    case Ceiling::gap:
      return words("the gap of the gearbox%1", at);
    case Ceiling::ripple:
      return words("the steps of the encoder");
    case Ceiling::bracket:
      return words("the bracket");
  }
  return {};
}

std::string why_not_higher(const AxisModel& model, const Tuning& tuning) {
  switch (tuning.limited_by) {
    case Ceiling::wanted:
      return words("Higher gains would hold too: the wanted bandwidth sets them.");
    case Ceiling::resonance:
      return words(
          "Higher, load and motor would ring against each other: antiresonance %1, resonance %2, "
          "the limit is met at %3. A stiffer gearbox moves it up.",
          hertz(antiresonance_radps(model)), hertz(resonance_radps(model)),
          hertz(tuning.limit_at_radps));
    case Ceiling::lags:
      return words("Higher, the lags would use up the margin at %1. The largest is %2.",
                   hertz(tuning.limit_at_radps), largest_lag(small_lags(model.control)));
    case Ceiling::gap:
      if (tuning.swings_in_gap)
        return words(
            "Even so it keeps swinging in the gap of the gearbox: less backlash, or the encoder at "
            "the motor.");
      if (tuning.limit_at_radps > 0)
        return words(
            "Higher, it would buzz in the gap of the gearbox: there the motor turns alone and its "
            "loop is %1 times as quick.",
            say(1 + inertia_ratio(model), "1", "1"));
      return words("Higher, it would keep swinging in the gap of the gearbox.");
    case Ceiling::ripple:
      return words(
          "Higher, every count of the encoder would be felt. More bits, or a lower bandwidth of "
          "the speed estimator, raise the limit.");
    case Ceiling::bracket:
      return words(
          "Higher, it would come too near to the swing of the camera on its bracket. A stiffer "
          "bracket raises the limit.");
  }
  return {};
}

std::string speed_sentence(const Tuning& tuning, const LoopStudy& study,
                           const std::optional<double>& wanted_radps) {
  std::string text =
      words("Speed gain %1: the speed loop crosses at %2",
            speed_gain(tuning.gains.speed_gain_Nmsprad), hertz(tuning.crossover_radps));
  if (wanted_radps && tuning.limited_by != Ceiling::wanted)
    text += words(" (%1 is wanted and not sound)", hertz(*wanted_radps));
  if (study.speed.phase_margin_rad)
    text += words(" and keeps %1", say(*study.speed.phase_margin_rad, "rad", "deg"));
  if (study.speed.gain_margin)
    text += words(" and a factor of %1", say(*study.speed.gain_margin, "1", "1"));
  return text + ".";
}

std::string integral_sentence(const Tuning& tuning) {
  const double gain = tuning.gains.speed_integral_gain_Nmprad;
  return words("Speed integral gain %1%2", integral_gain(gain),
               gain > 0 ? words(": it takes over below a quarter of that crossover.")
                        : words(": with any, the axis would hunt in the gap of the gearbox."));
}

std::string position_sentence(const Tuning& tuning, const LoopStudy& study) {
  std::string text = words("Position gain %1: the angle follows",
                           say(tuning.gains.position_gain_1ps, "1/s", "1/s"));
  if (study.bandwidth_radps) text += words(" up to %1", hertz(*study.bandwidth_radps));
  if (study.position.phase_margin_rad)
    text += words(", %1 left", say(*study.position.phase_margin_rad, "rad", "deg"));
  return words("%1, without a peak to speak of.", text);
}

std::string textbook_sentence(const AxisModel& model, double crossover_radps) {
  const double inertia = model.load.inertia_kgm2 + model.reflected_inertia_kgm2();
  const PiGains optimum = symmetrical_optimum(inertia, small_lags(model.control).sum_s(), 2);
  return words(
      "For comparison: without gap and resonance the symmetrical optimum would be %1 and %2, the "
      "modulus optimum of the position loop %3.",
      speed_gain(optimum.gain_Nmsprad), integral_gain(optimum.integral_gain_Nmprad),
      say(modulus_optimum_1ps(1 / crossover_radps), "1/s", "1/s"));
}

std::string ripple_sentence(const AxisModel& model, const Tuning& tuning) {
  return words("One count of the encoder asks for %1, %2 of the stall torque.",
               torque(tuning.ripple_Nm), say(tuning.ripple_Nm / stall_torque_Nm(model), "1", "%"));
}

std::vector<FieldValue> field_values(const LoopGains& gains, Axis axis) {
  const std::string loop = std::string(name_of(axis)) + ".loop.";
  return {{loop + "speed_gain", gains.speed_gain_Nmsprad},
          {loop + "speed_integral_gain", gains.speed_integral_gain_Nmprad},
          {loop + "position_gain", gains.position_gain_1ps}};
}

}  // namespace

GainAdvice gain_advice(Context& c, Axis a) {
  GainAdvice advice;
  if (const auto missing = c.missing(kAdvice, a); !missing.empty()) {
    advice.sentences.push_back(words("Gains cannot be advised: %1.", say_needs(missing)));
    return advice;
  }
  const AxisModel& model = c.model(a);
  const Loop& loop = c.rig().axis(a).loop;
  TuningGoal goal;
  goal.margin_rad = loop.wanted_margin_rad.value();
  if (loop.wanted_bandwidth_Hz.si) goal.crossover_radps = kTwoPi * *loop.wanted_bandwidth_Hz.si;
  const auto mode = bracket_mode_radps(c, a);
  if (mode) goal.most_crossover_radps = *mode / kModeAboveLoop;
  goal.most_ripple_Nm = kMostRipple * stall_torque_Nm(model);
  advice.tuning = tuned(model, c.loop_points(a), goal);
  if (!advice.tuning) {
    advice.sentences.push_back(
        words("No gains hold %1: the resonance at %2 is hardly damped. More damping in the "
              "gearbox, or the encoder at the motor.",
              say(goal.margin_rad, "rad", "deg"), hertz(resonance_radps(model))));
    return advice;
  }
  const Tuning& tuning = *advice.tuning;
  const LoopStudy study = study_loops(with_gains(model, tuning.gains), c.loop_points(a));
  advice.limited_by = limit_in_words(tuning);
  advice.values = field_values(tuning.gains, a);
  advice.sentences = {speed_sentence(tuning, study, goal.crossover_radps),
                      why_not_higher(model, tuning),
                      integral_sentence(tuning),
                      position_sentence(tuning, study),
                      ripple_sentence(model, tuning),
                      words("The load has %1 times the inertia of the motor as seen at the output.",
                            say(inertia_ratio(model), "1", "1")),
                      textbook_sentence(model, tuning.crossover_radps)};
  if (mode)
    advice.sentences.push_back(
        words("The margins do not include the bracket, on which the camera swings at %1: three "
              "times the crossover stays below that.",
              hertz(*mode)));
  return advice;
}

std::string gains_in_words(const GainAdvice& advice, Axis axis) {
  if (!advice.tuning) return {};
  const LoopGains& gains = advice.tuning->gains;
  return words("%1 gains %2, %3 and %4", words(name_of(axis)),
               say(gains.position_gain_1ps, "1/s", "1/s"), speed_gain(gains.speed_gain_Nmsprad),
               integral_gain(gains.speed_integral_gain_Nmprad));
}

}  // namespace gazewright
