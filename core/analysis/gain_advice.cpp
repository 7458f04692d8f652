#include "core/analysis/gain_advice.h"

#include <cmath>
#include <numbers>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"

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
    return "the speed estimator's, " + say(lags.estimator_s, "s", "ms") + " of " +
           say(lags.sum_s(), "s", "ms");
  if (lags.sampling_s >= lags.current_s)
    return "that of sampling and computing, " + say(lags.sampling_s, "s", "ms") + " of " +
           say(lags.sum_s(), "s", "ms");
  return "the current loop's, " + say(lags.current_s, "s", "ms") + " of " +
         say(lags.sum_s(), "s", "ms");
}

double inertia_ratio(const AxisModel& model) {
  return model.load.inertia_kgm2 / model.reflected_inertia_kgm2();
}

std::string limit_in_words(const Tuning& tuning) {
  const std::string at =
      tuning.limit_at_radps > 0 ? ", at " + hertz(tuning.limit_at_radps) : std::string();
  switch (tuning.limited_by) {
    case Ceiling::wanted:
      return "the wanted bandwidth";
    case Ceiling::resonance:
      return "the resonance" + at;
    case Ceiling::lags:
      return "the lags of the loop" + at;
    case Ceiling::gap:
      return "the gap of the gearbox" + at;
    case Ceiling::ripple:
      return "the steps of the encoder";
  }
  return {};
}

std::string why_not_higher(const AxisModel& model, const Tuning& tuning) {
  switch (tuning.limited_by) {
    case Ceiling::wanted:
      return "Higher gains would hold too: the wanted bandwidth sets them.";
    case Ceiling::resonance:
      return "Higher, load and motor would ring against each other: antiresonance " +
             hertz(antiresonance_radps(model)) + ", resonance " + hertz(resonance_radps(model)) +
             ", the limit is met at " + hertz(tuning.limit_at_radps) +
             ". A stiffer gearbox moves it up.";
    case Ceiling::lags:
      return "Higher, the lags would use up the margin at " + hertz(tuning.limit_at_radps) +
             ". The largest is " + largest_lag(small_lags(model.control)) + ".";
    case Ceiling::gap:
      if (tuning.swings_in_gap)
        return "Even so it keeps swinging in the gap of the gearbox: less backlash, or the encoder "
               "at the motor.";
      if (tuning.limit_at_radps > 0)
        return "Higher, it would buzz in the gap of the gearbox: there the motor turns alone and "
               "its loop is " +
               say(1 + inertia_ratio(model), "1", "1") + " times as quick.";
      return "Higher, it would keep swinging in the gap of the gearbox.";
    case Ceiling::ripple:
      return "Higher, every count of the encoder would be felt. More bits, or a lower bandwidth of "
             "the speed estimator, raise the limit.";
  }
  return {};
}

std::string speed_sentence(const Tuning& tuning, const LoopStudy& study,
                           const std::optional<double>& wanted_radps) {
  std::string text = "Speed gain " + speed_gain(tuning.gains.speed_gain_Nmsprad) +
                     ": the speed loop crosses at " + hertz(tuning.crossover_radps);
  if (wanted_radps && tuning.limited_by != Ceiling::wanted)
    text += " (" + hertz(*wanted_radps) + " is wanted and not sound)";
  if (study.speed.phase_margin_rad)
    text += " and keeps " + say(*study.speed.phase_margin_rad, "rad", "deg");
  if (study.speed.gain_margin)
    text += " and a factor of " + say(*study.speed.gain_margin, "1", "1");
  return text + ".";
}

std::string integral_sentence(const Tuning& tuning) {
  const double gain = tuning.gains.speed_integral_gain_Nmprad;
  return "Speed integral gain " + integral_gain(gain) +
         (gain > 0 ? ": it takes over below a quarter of that crossover."
                   : ": with any, the axis would hunt in the gap of the gearbox.");
}

std::string position_sentence(const Tuning& tuning, const LoopStudy& study) {
  std::string text =
      "Position gain " + say(tuning.gains.position_gain_1ps, "1/s", "1/s") + ": the angle follows";
  if (study.bandwidth_radps) text += " up to " + hertz(*study.bandwidth_radps);
  if (study.position.phase_margin_rad)
    text += ", " + say(*study.position.phase_margin_rad, "rad", "deg") + " left";
  return text + ", without a peak to speak of.";
}

std::string textbook_sentence(const AxisModel& model, double crossover_radps) {
  const double inertia = model.load.inertia_kgm2 + model.reflected_inertia_kgm2();
  const PiGains optimum = symmetrical_optimum(inertia, small_lags(model.control).sum_s(), 2);
  return "For comparison: without gap and resonance the symmetrical optimum would be " +
         speed_gain(optimum.gain_Nmsprad) + " and " + integral_gain(optimum.integral_gain_Nmprad) +
         ", the modulus optimum of the position loop " +
         say(modulus_optimum_1ps(1 / crossover_radps), "1/s", "1/s") + ".";
}

std::string ripple_sentence(const AxisModel& model, const Tuning& tuning) {
  return "One count of the encoder asks for " + torque(tuning.ripple_Nm) + ", " +
         say(tuning.ripple_Nm / stall_torque_Nm(model), "1", "%") + " of the stall torque.";
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
    advice.sentences.push_back("Gains cannot be advised: " + say_needs(missing) + ".");
    return advice;
  }
  const AxisModel& model = c.model(a);
  const Loop& loop = c.rig().axis(a).loop;
  TuningGoal goal;
  goal.margin_rad = loop.wanted_margin_rad.value();
  if (loop.wanted_bandwidth_Hz.si) goal.crossover_radps = kTwoPi * *loop.wanted_bandwidth_Hz.si;
  goal.most_ripple_Nm = kMostRipple * stall_torque_Nm(model);
  advice.tuning = tuned(model, c.loop_points(a), goal);
  if (!advice.tuning) {
    advice.sentences.push_back(
        "No gains hold " + say(goal.margin_rad, "rad", "deg") + ": the resonance at " +
        hertz(resonance_radps(model)) +
        " is hardly damped. More damping in the gearbox, or the encoder at the motor.");
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
                      "The load has " + say(inertia_ratio(model), "1", "1") +
                          " times the inertia of the motor as seen at the output.",
                      textbook_sentence(model, tuning.crossover_radps)};
  return advice;
}

std::string gains_in_words(const GainAdvice& advice, Axis axis) {
  if (!advice.tuning) return {};
  const LoopGains& gains = advice.tuning->gains;
  return std::string(name_of(axis)) + " gains " + say(gains.position_gain_1ps, "1/s", "1/s") +
         ", " + speed_gain(gains.speed_gain_Nmsprad) + " and " +
         integral_gain(gains.speed_integral_gain_Nmprad);
}

}  // namespace gazewright
