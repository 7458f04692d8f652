#pragma once

#include <numbers>

#include "core/rig/fields.h"
#include "core/units/angle.h"

/// How the rows of the field tables are written. Used by the tables only.
namespace gazewright::rows {

inline constexpr double kRpm_radps = std::numbers::pi / 30;
inline constexpr double kZeroCelsius_K = 273.15;

/// What a value may be, SI.
struct Allowed {
  double least = -kInfinity, most = kInfinity;
  bool above_least = false;
};
inline constexpr Allowed kAny{};
inline constexpr Allowed kPositive{0, kInfinity, true};
inline constexpr Allowed kNotNegative{0, kInfinity, false};

struct Unit {
  std::string_view si_unit, unit;
};

constexpr FieldInfo field(std::string_view key, std::string_view label, Unit unit, Allowed allowed,
                          std::string_view help) {
  FieldInfo info{};
  info.key = key;
  info.label = label;
  info.si_unit = unit.si_unit;
  info.unit = unit.unit;
  info.least = allowed.least;
  info.most = allowed.most;
  info.above_least = allowed.above_least;
  info.help = help;
  return info;
}
constexpr FieldInfo whole(FieldInfo info) {
  info.whole = true;
  return info;
}
/// A field for a closer look, which nobody has to enter.
constexpr FieldInfo detail(FieldInfo info) {
  info.detail = true;
  return info;
}
constexpr FieldInfo or_none(FieldInfo info) {
  info.may_be_none = true;
  return info;
}
constexpr FieldInfo defaults_to(double value_si, FieldInfo info) {
  info.fallback = value_si;
  return info;
}
/// For a default that follows from other fields; with_defaults works it out.
constexpr FieldInfo default_follows(std::string_view how, FieldInfo info) {
  info.fallback_text = how;
  return info;
}

inline constexpr Unit kNumber{"1", "1"};
inline constexpr Unit kPixels{"1", "px"};
inline constexpr Unit kMillimetre{"m", "mm"};
inline constexpr Unit kGram{"kg", "g"};
inline constexpr Unit kInertia{"kg.m2", "g.cm2"};
inline constexpr Unit kTorque{"N.m", "N.m"};
inline constexpr Unit kSmallTorque{"N.m", "mN.m"};
inline constexpr Unit kStiffness{"N.m/rad", "N.m/rad"};
inline constexpr Unit kDamping{"N.m.s/rad", "N.m.s/rad"};
inline constexpr Unit kDegrees{"rad", "deg"};
inline constexpr Unit kDegreesPerSecond{"rad/s", "deg/s"};
inline constexpr Unit kCelsius{"K", "degC"};

}  // namespace gazewright::rows
