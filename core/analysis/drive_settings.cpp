#include "core/analysis/drive_settings.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

#include "core/analysis/say.h"
#include "core/analysis/setting_groups.h"
#include "core/travel/homing.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr SettingUnit kAmpere{"A", "A"}, kOutputSpeed{"rad/s", "deg/s"},
    kMotorSpeed{"rad/s", "rpm"}, kAngle{"rad", "deg"}, kTurns{"rad", "turn"}, kCount{"1", "1"};

// Between the trip and the winding's limit; common practice, no source: 5 to 15.
constexpr double kBelowLimit_K = 10;

void motor(SettingRows& s) {
  s.group("Motor");
  s.plain("pole_pairs", "<axis>.motor.pole_pairs");
  remark(s.plain("speed_constant", "<axis>.motor.speed_constant"),
         words("no-load speed per volt of line-to-line back-EMF amplitude"));
  const Known constant = s.figure("<axis>.motor.torque_constant");
  const SettingUnit unit{"N.m/A", "mN.m/A"};
  remark(s.add("torque_constant", "Torque constant, per ampere of amplitude", unit, constant,
               "(√3/2)/KV"),
         words("phase current counted as its amplitude (peak), as all currents here"));
  remark(s.add("torque_constant_rms", "Torque constant, per ampere RMS", unit,
               constant.times(std::numbers::sqrt2), "√2·Kt"),
         words("for a drive that counts RMS: its current limits are then those here over √2"));
  const std::string between_leads = words("of one phase; a meter between two leads shows twice it");
  remark(s.plain("phase_resistance", "<axis>.motor.phase_resistance"), between_leads);
  remark(s.plain("phase_inductance", "<axis>.motor.phase_inductance"), between_leads);
  remark(s.add("thermal_trip", "Thermal trip of the winding", {"K", "degC"},
               s.derived({"<axis>.motor.winding_limit"},
                         s.value("<axis>.motor.winding_limit") - kBelowLimit_K),
               "winding's limit − 10 K"),
         words("what a sensor or a model in the drive sees is cooler than the hottest spot"));
}

/// The least of drive, motor and what the gearbox's teeth bear.
Known current_limit(const SettingRows& s) {
  const double through = s.value("<axis>.gearbox.efficiency") * s.value("<axis>.gearbox.ratio") *
                         s.figure("<axis>.motor.torque_constant").value.value_or(kNotEntered);
  const Known all[]{s.field("<axis>.drive.current_limit"), s.field("<axis>.motor.peak_current"),
                    s.derived({"<axis>.gearbox.peak_torque", "<axis>.gearbox.efficiency",
                               "<axis>.gearbox.ratio", "<axis>.motor.speed_constant"},
                              s.value("<axis>.gearbox.peak_torque") / through)};
  const Known* least = all;
  for (const Known& known : all) {
    if (!known.value) return known;
    if (*known.value < *least->value) least = &known;
  }
  Known limit = *least;
  limit.is_default = false;
  return limit;
}

void currents(SettingRows& s) {
  const Known limit = current_limit(s);
  DriveSetting& peak = s.add("current_limit", "Current limit, peak", kAmpere, limit,
                             "min(drive, motor's peak, gearbox's peak torque/(η·N·Kt))");
  begin_with(peak, kFirstPart);
  const std::optional<double> first = peak.first;
  remark(peak, words("amplitude; what drive, motor and the gearbox's peak torque all bear"));
  const Known friction = s.figure("<axis>.homing.current_least");
  if (first && friction.value && *friction.value > *first)
    remark(peak, words("friction and weight alone may take %1: raise the first in small steps",
                       say(*friction.value, "A", "A")));
  Known lasting = s.figure("<axis>.heat.continuous_current");
  const bool is_capped = lasting.value && limit.value && *limit.value < *lasting.value;
  const std::optional<double> heat = lasting.value;
  if (is_capped) lasting = limit;
  const Known standing = s.figure("<axis>.heat.stall_current");
  const std::optional<double> turning = lasting.value;
  const bool is_standing_less = turning && standing.value && *standing.value < *turning;
  if (is_standing_less) lasting = standing;  // the drive does not know whether the motor turns
  DriveSetting& row = s.add("lasting_current", "Current limit, lasting", kAmpere, lasting,
                            "what heat allows, turning and standing still, at most the peak limit");
  if (row.value && first && *first < *row.value) row.first = first;
  if (is_capped && heat) remark(row, words("heat would allow %1", say(*heat, "A", "A")));
  if (is_standing_less)
    remark(row, words("the worst winding, standing still, bears no more; turning, %1 would do",
                      say(*turning, "A", "A")));
}

void speeds(SettingRows& s) {
  const double ratio = s.value("<axis>.gearbox.ratio");
  Known least = s.field("<axis>.loop.speed_limit");
  for (const Known& other : {s.field("<axis>.drive.speed_limit"),
                             s.derived({"<axis>.gearbox.input_speed_limit", "<axis>.gearbox.ratio"},
                                       s.value("<axis>.gearbox.input_speed_limit") / ratio)}) {
    if (!other.value) {
      least = other;
      break;
    }
    if (*other.value < least.value.value_or(kInfinity)) least = other;
  }
  least.is_default = false;
  DriveSetting& output = s.add("speed_limit", "Speed limit, at the output", kOutputSpeed, least,
                               "min(loop, drive, gearbox's input/N)");
  begin_with(output, kFirstPart);
  const Known top = s.figure("<axis>.output.speed_top");
  if (!output.value && least.value && top.value)
    output.text = words("none is entered; it reaches %1", say(*top.value, "rad/s", "deg/s"));
  begin_with(s.add("speed_limit_motor", "Speed limit, at the motor", kMotorSpeed,
                   least.times(ratio), "N·ω"),
             kFirstPart);
}

void accelerations(SettingRows& s) {
  const Known limit = s.field("<axis>.loop.acceleration_limit");
  const Known peak = s.figure("<axis>.output.acceleration_peak");
  DriveSetting& output =
      s.add("acceleration_limit", "Acceleration limit, at the output", {"rad/s2", "deg/s2"}, limit);
  begin_with(output, kFirstPart);
  if (!limit.value) {
    if (peak.value)
      output.text =
          words("not entered; the axis can do %1 at most", say(*peak.value, "rad/s2", "deg/s2"));
    return;
  }
  const Known ratio = s.field("<axis>.gearbox.ratio");
  begin_with(s.add("acceleration_limit_motor", "Acceleration limit, at the motor",
                   {"rad/s2", "turn/s2"}, ratio.value ? limit.times(*ratio.value) : ratio, "N·α"),
             kFirstPart);
}

void encoder(SettingRows& s, bool at_output) {
  s.group("Gear and encoder");
  remark(s.plain("ratio", "<axis>.gearbox.ratio"),
         words("turns of the motor for one of the output"));
  s.say("direction", "Positive direction",
        s.axis() == Axis::pan
            ? words("to the left, seen from above; turn the sign where the gearbox reverses")
            : words("camera upwards; turn the sign where the gearbox reverses"));
  s.say("encoder_at", "Encoder", at_output ? words("at the output") : words("at the motor"),
        "<axis>.encoder.at");
  s.plain("encoder_bits", "<axis>.encoder.bits");
  const double counts = std::exp2(s.value("<axis>.encoder.bits"));
  s.add("encoder_counts", "Counts per turn of the encoder", kCount,
        s.derived({"<axis>.encoder.bits"}, counts), "2^bits");
  s.add("encoder_counts_output", "Counts per turn of the output", kCount,
        at_output ? s.derived({"<axis>.encoder.bits"}, counts)
                  : s.derived({"<axis>.encoder.bits", "<axis>.gearbox.ratio"},
                              counts * s.value("<axis>.gearbox.ratio")),
        at_output ? "2^bits" : "N·2^bits");
}

void travel(SettingRows& s) {
  s.group("Travel and homing");
  const Travel& travel = s.analysis().of(s.axis()).travel;
  const double ratio = s.value("<axis>.gearbox.ratio");
  for (const End end : kEnds) {
    Known limit = s.figure("<axis>.travel.soft");
    if (travel.soft_rad) limit.value = end_angle_rad(travel, *travel.soft_rad, end);
    const bool least = end == End::least;
    s.add(least ? "soft_limit_least" : "soft_limit_most",
          least ? "Soft limit, least angle" : "Soft limit, greatest angle", kAngle, limit,
          least ? "centre − soft travel/2" : "centre + soft travel/2");
    Known turns = limit.times(ratio);
    if (const Known known = s.field("<axis>.gearbox.ratio"); !known.value) turns = known;
    s.add(least ? "soft_limit_least_motor" : "soft_limit_most_motor",
          least ? "Soft limit, least, in motor turns" : "Soft limit, greatest, in motor turns",
          kTurns, turns, "N·φ/2π, from the output's zero");
  }
}

}  // namespace

double gain_at_motor(double gain_at_output, double ratio) {
  return gain_at_output / (ratio * ratio);
}

std::vector<DriveSetting> drive_settings(const Rig& rig, const Analysis& analysis, Axis axis) {
  SettingRows rows(rig, analysis, axis);
  const bool at_output = rig.axis(axis).encoder.at.value == "output";
  motor(rows);
  rows.group("Limits");
  currents(rows);
  speeds(rows);
  accelerations(rows);
  encoder(rows, at_output);
  loop_settings(rows, at_output);
  travel(rows);
  homing_settings(rows, rig.axis(axis).homing, at_output);
  bus_settings(rows);
  return std::move(rows).taken();
}

std::vector<SettingPair> paired_settings(const Rig& rig, const Analysis& analysis) {
  std::vector<SettingPair> pairs;
  pairs.reserve(48);
  for (const Axis axis : kAxes) {
    for (DriveSetting& row : drive_settings(rig, analysis, axis)) {
      const auto is_same = [&](const SettingPair& pair) { return pair.any().key == row.key; };
      auto at = std::ranges::find_if(pairs, is_same);
      if (at == pairs.end()) {  // after the last of its group
        const auto in_group = [&](const SettingPair& pair) {
          return pair.any().group == row.group;
        };
        const auto last = std::find_if(pairs.rbegin(), pairs.rend(), in_group);
        at = pairs.insert(last == pairs.rend() ? pairs.end() : last.base(), SettingPair{});
      }
      at->of[static_cast<std::size_t>(axis)] = std::move(row);
    }
  }
  return pairs;
}

std::string first_power_caution() {
  return words(
      "First power-up with the first set: the arm off the stops and free to turn, the stand "
      "clamped, nobody in reach, a current-limited supply and a hand at the switch that cuts the "
      "motor power. Check by hand that torque, encoder and command agree in sign before a loop is "
      "closed, then raise current, speed and gains step by step. A fifth of current, speed and "
      "acceleration, a quarter of the gains and no integral are common practice, no source. The "
      "drive's own manual comes first, and local rules and licensed practitioners have the last "
      "word.");
}

std::string settings_conventions() {
  return words(
      "Currents are amplitudes of a phase, resistance and inductance are of one phase to the star "
      "point, a turn is 2π rad. Compare these, and amplitude or RMS, with the drive's manual "
      "before a value is entered: a wrong convention is off by 1.41, 2 or 6.28.");
}

}  // namespace gazewright
