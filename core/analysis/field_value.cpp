#include "core/analysis/field_value.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>

#include "core/analysis/input_names.h"
#include "core/analysis/say.h"
#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {

double rounded_value(const FieldInfo& info, double value_si, bool up, int digits) {
  const double scale = info.is_plain_number() ? 1 : from_si(1, info.si_unit, info.unit);
  const double shown = value_si * scale;
  const double step = std::pow(10, std::floor(std::log10(shown)) - (digits - 1));
  const double steps = up ? std::ceil(shown / step - 1e-9) : std::floor(shown / step + 1e-9);
  return steps * step / scale;
}

std::string say_field(const std::string& path, const FieldInfo& info, double value_si) {
  return field_words(path, info.label) + " " + say(value_si, info.si_unit, info.unit);
}

namespace {

/// Values that come with a part: who wants another one takes another part.
struct Bought {
  std::string_view field;  ///< of an axis without the axis
  std::string_view part;   ///< "another motor for %1", the axis in the hole
  std::optional<Change> only{};
};
constexpr std::string_view kMotor = "another motor for %1";
constexpr std::string_view kGearbox = "another gearbox for %1";
constexpr std::string_view kEncoder = "another encoder for %1";
constexpr std::string_view kMagnet = "another magnet for the encoder of %1";
constexpr std::string_view kBearings = "other bearings for %1";
constexpr std::string_view kCable = "another cable for %1";
constexpr std::string_view kSlipRing = "another slip ring for %1";
constexpr std::string_view kSupply = "another supply, or another setting of it";
constexpr Bought kBought[]{
    {"motor.thermal_resistance", "another motor for %1, or better cooling"},
    {"motor.peak_current", kMotor},
    {"motor.cogging_torque", kMotor},
    {"motor.mount_limit", "another material for the motor bracket of %1"},
    {"gearbox.backlash", kGearbox},
    {"gearbox.stiffness", kGearbox},
    {"gearbox.peak_torque", kGearbox},
    {"gearbox.overhung_load", kGearbox},
    {"gearbox.axial_load", kGearbox},
    // Who has stated too small an error states a larger one.
    {"encoder.error", "another encoder for %1, or a calibration of it", Change::or_less},
    {"encoder.bits", kEncoder},
    {"encoder.magnet_diameter", kMagnet},
    {"encoder.magnet_thickness", kMagnet},
    {"homing.second_error", "another second encoder for %1"},
    {"homing.flag_error", "another flag sensor for %1"},
    {"drive.control_rate", "another drive for %1, or another setting of it"},
    {"bearing.dynamic_rating", kBearings},
    {"bearing.static_rating", kBearings},
    {"bearing.moment_rating", kBearings},
    {"bearing.pitch_diameter", kBearings},
    {"bearing.radial_play", kBearings},
    {"bearing.axial_play", kBearings},
    {"cable.twist_rating", kCable},
    {"cable.outer_diameter", kCable},
    {"cable.conductor", kCable},
    {"cable.ring_circuits", kSlipRing},
    {"cable.ring_current", kSlipRing},
    {"cable.ring_bandwidth", kSlipRing},
    {"friction.breakaway", "bearings, seals and cables of %1 that stick less"},
    {"friction.coulomb", "a brake on %1", Change::or_more},
    {"supply.voltage", kSupply},
    {"supply.current_limit", kSupply},
    {"supply.source_resistance", "another supply"},
    {"supply.brake_power", "another brake resistor"},
    {"camera.frame_rate", "another camera, or another mode of it"},
};

std::optional<Axis> axis_of(std::string_view path) {
  for (const Axis axis : kAxes)
    if (path.starts_with(std::string(name_of(axis)) + '.')) return axis;
  return std::nullopt;
}

const Bought* bought_at(std::string_view path, Change change) {
  const auto axis = axis_of(path);
  if (axis) path.remove_prefix(std::string_view(name_of(*axis)).size() + 1);
  const auto* found = std::ranges::find(kBought, path, &Bought::field);
  if (found == std::end(kBought)) return nullptr;
  const bool is_meant = !found->only || change == Change::to || change == *found->only;
  return is_meant ? found : nullptr;
}

std::string with_side(const std::string& said, Change change) {
  switch (change) {
    case Change::to:
      break;
    case Change::or_more:
      return words("%1 or more", said);
    case Change::or_less:
      return words("%1 or less", said);
    case Change::or_nearer_to_0:
      return words("%1 or nearer to 0", said);
  }
  return said;
}

}  // namespace

bool is_bought(const std::string& path, Change change) {
  return bought_at(path, change) != nullptr;
}

std::string say_change(const std::string& path, const FieldInfo& info, double value_si,
                       Change change) {
  const Bought* bought = bought_at(path, change);
  if (bought == nullptr) return with_side(say_field(path, info, value_si), change);
  const auto axis = axis_of(path);
  const std::string part = words(bought->part, axis ? words(name_of(*axis)) : std::string());
  const std::string value = in_sentence(info.label) + " " + say(value_si, info.si_unit, info.unit);
  return part + " (" + with_side(value, change) + ")";
}

}  // namespace gazewright
