#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/analysis/analysis.h"

/// What to set in the drive of an axis, in the units that drives ask for. Formulas:
/// resources/handbook/settings.md.
namespace gazewright {

/// One thing to set.
struct DriveSetting {
  std::string_view key;         ///< the same for every rig: "speed_gain_motor"
  std::string_view group;       ///< plain English: "Limits"
  std::string_view label;       ///< plain English: "Speed gain, at the motor"
  std::string_view si_unit;     ///< of the values; "1" for plain numbers
  std::string_view unit;        ///< shown in
  std::optional<double> value;  ///< SI, finite
  std::optional<double> first;  ///< SI, for the first power-up; empty: the same
  std::string text;  ///< in place of a value, "none" or "needs pan.motor.pole_pairs"; else a remark
  std::string from;  ///< path of the field or id of the figure that it comes from; may be empty
  std::string_view formula;  ///< empty: as entered
};

/// Part of the final current, speed and acceleration to begin with: common practice, no source.
inline constexpr double kFirstPart = 0.2;
/// Part of the final position and speed gain to begin with, without integral and feed-forward:
/// common practice, no source.
inline constexpr double kFirstGain = 0.25;

/// A torque per angle or speed of the output, as torque of the motor per angle or speed of the
/// motor: K/N², for T_motor = T/N and ω_motor = N·ω. [N·m/rad or N·m·s/rad]
double gain_at_motor(double gain_at_output, double ratio);

/// All settings of an axis, group by group. A value whose inputs are missing is empty and says what
/// it needs. @pre the analysis is that of the rig
std::vector<DriveSetting> drive_settings(const Rig& rig, const Analysis& analysis, Axis axis);

/// The same thing of both axes; one may lack it (only one is homed by a push).
struct SettingPair {
  std::array<std::optional<DriveSetting>, 2> of;  ///< by Axis; at least one is there

  const DriveSetting& any() const { return of[0] ? *of[0] : *of[1]; }
};
/// Settings of both axes side by side, in the order of the groups.
std::vector<SettingPair> paired_settings(const Rig& rig, const Analysis& analysis);

/// How to go about the first power-up, and what has the last word.
std::string first_power_caution();
/// What currents, resistances and angles mean, to be compared with the drive's own manual.
std::string settings_conventions();

}  // namespace gazewright
