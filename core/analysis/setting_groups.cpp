#include "core/analysis/setting_groups.h"

#include <algorithm>

#include "core/analysis/say.h"
#include "core/travel/homing.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

/// A gain that is not entered names the advised one.
void name_advised(const SettingRows& s, DriveSetting& row) {
  if (row.value) return;
  const auto& values = s.analysis().advice[static_cast<std::size_t>(s.axis())].values;
  const auto advised = std::ranges::find(values, row.from, &FieldValue::path);
  if (advised != values.end())
    row.text = words("%1; advised: %2", row.text, say(advised->value_si, row.si_unit, row.unit));
}

struct Gain {
  std::string_view path;
  std::string_view key, key_motor, key_current;
  std::string_view label, label_motor, label_current;
  SettingUnit output, motor, current;
  double first;
  std::string_view letter_motor, letter_current;  ///< formulas
};
constexpr Gain kSpeed{"<axis>.loop.speed_gain",
                      "speed_gain",
                      "speed_gain_motor",
                      "speed_gain_current",
                      "Speed gain, at the output",
                      "Speed gain, at the motor",
                      "Speed gain, as current at the motor",
                      {"N.m.s/rad", "N.m.s/rad"},
                      {"N.m.s/rad", "N.m.s/turn"},
                      {"A.s/rad", "A.s/rad"},
                      kFirstGain,
                      "K/N²; N·m per turn/s",
                      "K/(N²·Kt); A per rad/s"};
constexpr Gain kIntegral{"<axis>.loop.speed_integral_gain",
                         "speed_integral_gain",
                         "speed_integral_gain_motor",
                         "speed_integral_gain_current",
                         "Speed integral gain, at the output",
                         "Speed integral gain, at the motor",
                         "Speed integral gain, as current at the motor",
                         {"N.m/rad", "N.m/rad"},
                         {"N.m/rad", "N.m/turn"},
                         {"A/rad", "A/rad"},
                         0,
                         "K/N²; N·m a second per turn/s",
                         "K/(N²·Kt); A a second per rad/s"};

void in_three_units(SettingRows& s, const Gain& gain, bool encoder_at_output) {
  DriveSetting& output = s.add(gain.key, gain.label, gain.output, s.field(gain.path));
  begin_with(output, gain.first);
  name_advised(s, output);
  const double ratio = s.value("<axis>.gearbox.ratio"), at_output = s.value(gain.path);
  const double at_motor = gain_at_motor(at_output, ratio);
  DriveSetting& motor =
      s.add(gain.key_motor, gain.label_motor, gain.motor,
            s.derived({gain.path, "<axis>.gearbox.ratio"}, at_motor), gain.letter_motor);
  begin_with(motor, gain.first);
  if (encoder_at_output)
    remark(motor, words("for a drive that reads its speed at the output: %1",
                        say(at_output / ratio, gain.output.si, gain.motor.shown)));
  const double per_ampere = s.figure("<axis>.motor.torque_constant").value.value_or(kNotEntered);
  begin_with(s.add(gain.key_current, gain.label_current, gain.current,
                   s.derived({gain.path, "<axis>.gearbox.ratio", "<axis>.motor.speed_constant"},
                             at_motor / per_ampere),
                   gain.letter_current),
             gain.first);
}

/// Which currents would do, in place of one that nobody entered.
std::string window_of(const SettingRows& s) {
  const Known least = s.figure("<axis>.homing.current_least"),
              most = s.figure("<axis>.homing.current_most");
  if (!least.value || !most.value || *most.value < *least.value) return {};
  return words("%1 to %2 would do", say(*least.value, "A", "A"), say(*most.value, "A", "A"));
}

}  // namespace

void loop_settings(SettingRows& s, bool encoder_at_output) {
  s.group("Loops");
  s.plain("control_rate", "<axis>.drive.control_rate");
  s.plain("current_bandwidth", "<axis>.drive.current_bandwidth");
  s.plain("estimator_bandwidth", "<axis>.loop.estimator_bandwidth");
  DriveSetting& position = s.plain("position_gain", "<axis>.loop.position_gain");
  begin_with(position, kFirstGain);
  name_advised(s, position);
  remark(position, words("the same at output and motor"));
  in_three_units(s, kSpeed, encoder_at_output);
  in_three_units(s, kIntegral, encoder_at_output);
  begin_with(s.plain("speed_feed_forward", "<axis>.loop.speed_feed_forward"), 0);
  begin_with(s.plain("acceleration_feed_forward", "<axis>.loop.acceleration_feed_forward"), 0);
}

void homing_settings(SettingRows& s, const Homing& homing, bool encoder_at_output) {
  const std::string by = encoder_at_output         ? "output"
                         : homing.by.value.empty() ? "stop"
                                                   : homing.by.value;
  s.say("homing_by", "Homing",
        by == "stop"     ? words("push to a stop")
        : by == "flag"   ? words("pass a flag")
        : by == "output" ? words("read the encoder at the output")
                         : words("compare two encoders"),
        "<axis>.homing.by");
  if (by != "stop" && by != "flag") return;
  DriveSetting& current = s.plain("homing_current", "<axis>.homing.current");
  if (const std::string window = window_of(s); !window.empty()) {
    if (current.value)
      remark(current, window);
    else
      current.text += "; " + window;
  }
  Known speed = s.field("<axis>.homing.speed");
  if (!speed.value) {
    speed.value = kUsualHomingSpeed_radps;
    speed.is_default = true;
  }
  s.add("homing_speed", "Homing speed", {"rad/s", "deg/s"}, speed);
  const Known ratio = s.field("<axis>.gearbox.ratio");
  s.add("homing_speed_motor", "Homing speed, at the motor", {"rad/s", "rpm"},
        ratio.value ? speed.times(*ratio.value) : ratio, "N·ω");
}

void bus_settings(SettingRows& s) {
  s.group("Bus");
  s.plain("bus_voltage", "supply.voltage", "Bus voltage");
  s.plain("over_voltage_trip", "supply.trip_voltage", "Over-voltage trip");
  const Known voltage = s.field("supply.voltage"), sag = s.figure("supply.sag");
  s.say("under_voltage_trip", "Under-voltage trip",
        !voltage.value ? voltage.why
        : sag.value    ? words("not entered: lower than %1, to which the task's moves pull the bus",
                               say(*voltage.value - *sag.value, "V", "V"))
                       : words("not entered: lower than %1 less what is lost under load",
                               say(*voltage.value, "V", "V")),
        "supply.voltage");
  s.plain("bus_current_limit", "supply.current_limit", "Current that may be drawn");
  s.plain("bus_current_back", "supply.absorbs", "Current that may flow back");
  if (const DriveSetting& resistor =
          s.plain("brake_resistor", "supply.brake_resistor", "Brake resistor");
      !resistor.value)
    return;
  s.plain("brake_voltage", "supply.brake_voltage");
  s.plain("brake_power", "supply.brake_power");
}

}  // namespace gazewright
