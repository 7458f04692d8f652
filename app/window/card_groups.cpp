#include "app/window/card_groups.h"

#include <QCoreApplication>
#include <algorithm>
#include <iterator>
#include <span>

#include "app/window/parts.h"

namespace gazewright {
namespace {

struct GroupRow {
  std::string_view part;
  int rank;
  const char* heading;
  bool folds;
  std::string_view keys;  ///< a space before and after each
};
constexpr GroupRow kGroups[]{
    {"stops", 1, QT_TRANSLATE_NOOP("CardGroups", "Blow and bumper"), false,
     " stiffness bumper_travel hard_stiffness rebound "},
    {"stops", 2, QT_TRANSLATE_NOOP("CardGroups", "Strength of the tab"), true,
     " material tab_height tab_thickness tab_strength "},
    {"cable", 1, QT_TRANSLATE_NOOP("CardGroups", "Torque of the cable"), true,
     " torsion_stiffness bending_stiffness friction "},
    {"cable", 2, QT_TRANSLATE_NOOP("CardGroups", "Wires"), true,
     " conductors conductor current supply_length signal_bandwidth "},
    {"motor", 1, QT_TRANSLATE_NOOP("CardGroups", "Heat"), false,
     " thermal_resistance thermal_time winding_limit insulation "},
    {"motor", 2, QT_TRANSLATE_NOOP("CardGroups", "Housing, bracket, magnets"), true,
     " winding_to_housing winding_time housing_to_mount mount_material mount_limit magnet_limit "
     "bearing_limit "},
    {"motor", 3, QT_TRANSLATE_NOOP("CardGroups", "Cogging"), true,
     " cogging_torque cogging_per_turn "},
    {"supply", 1, QT_TRANSLATE_NOOP("CardGroups", "Braking"), false,
     " absorbs bus_capacitance trip_voltage brake_resistor brake_voltage brake_power "},
    {"supply", 2, QT_TRANSLATE_NOOP("CardGroups", "Source, leads and fuse"), true,
     " source_resistance lead_length lead_conductor fuse "},
    {"encoder", 1, QT_TRANSLATE_NOOP("CardGroups", "Magnet"), true,
     " magnet_offset magnet_tilt magnet_gap magnet_diameter magnet_thickness magnet_remanence "
     "field_least field_most "},
    {"gearbox", 1, QT_TRANSLATE_NOOP("CardGroups", "What its output bears"), true,
     " overhung_load overhung_at axial_load load_at "},
    {"bearing", 1, QT_TRANSLATE_NOOP("CardGroups", "Play and preload"), true,
     " preload radial_play axial_play "},
    {"bearing", 2, QT_TRANSLATE_NOOP("CardGroups", "Contact and wanted life"), true,
     " contact_angle calculation_factor life "},
    {"joint", 1, QT_TRANSLATE_NOOP("CardGroups", "Shaft"), true,
     " shaft shaft_diameter shaft_length clamp_force shaft_pressure "},
};

/// Keys that matter only for some values of the part's choice.
struct CaseRow {
  std::string_view part, values, keys;
};
constexpr CaseRow kCases[]{
    {"stops", " tab trailing ", " post_width "},
    {"stops", " trailing ", " trailers trailer_width "},
    {"stops", " window ", " window "},
    {"cable", " twist coil loop ", " free_length bend_radius "},
    {"cable", " twist ", " twist_rating lay_radius slack torsion_stiffness "},
    {"cable", " coil ", " hub_radius wall_radius thickness "},
    {"cable", " coil loop ", " bending_stiffness "},
    {"cable", " loop ", " anchor_radius moving_radius "},
    {"cable", " slip_ring ", " ring_circuits ring_current ring_bandwidth "},
    {"encoder", " output ", " motor_sensor "},
    {"homing", " stop ", " current "},
    {"homing", " stop flag ", " speed "},
    {"homing", " flag ", " flag_error "},
    {"homing", " second_encoder ", " second_ratio second_error "},
    {"bearing", " pair single ",
     " rolling dynamic_rating static_rating overhang contact_angle calculation_factor radial_play "
     "life "},
    {"bearing", " pair ", " spacing preload "},
    {"bearing", " single ", " moment_rating pitch_diameter axial_play "},
    {"joint", " clamp flat key ", " shaft_diameter "},
    {"joint", " clamp ", " clamp_force "},
    {"joint", " flat key ", " shaft_length shaft_pressure "},
};

/// Keys of tracking that matter only for some targets.
constexpr CaseRow kTargets[]{
    {"tracking", " walk ", " height "},
    {"tracking", " sine ", " amplitude frequency "},
    {"tracking", " jump ", " jump "},
};

/// Keys of the arm that matter only for some sections.
constexpr CaseRow kArmSections[]{{"arm", " box ", " wall "}};

bool lists(std::string_view words, std::string_view word) {
  return words.find(" " + std::string(word) + " ") != std::string_view::npos;
}

struct Place {
  std::string_view part, key;
};
Place place_of(std::string_view path) {
  const std::size_t first = path.find('.');
  if (first == std::string_view::npos) return {};
  const std::size_t second = path.find('.', first + 1);
  if (second == std::string_view::npos) return {path.substr(0, first), path.substr(first + 1)};
  return {path.substr(first + 1, second - first - 1), path.substr(second + 1)};
}

std::string choice_of(const AxisParts& parts, std::string_view part) {
  const auto or_first = [](const Choice& choice, const char* first) {
    return choice.value.empty() ? std::string(first) : choice.value;
  };
  if (part == "stops") return or_first(parts.stops.kind, "tab");
  if (part == "cable") return or_first(parts.cable.routing, "twist");
  if (part == "bearing") return or_first(parts.bearing.kind, "pair");
  if (part == "encoder") return or_first(parts.encoder.at, "motor");
  if (part == "joint") return or_first(parts.joint.shaft, "none");
  return or_first(parts.homing.by, "stop");
}

}  // namespace

FieldGroup group_of(std::string_view path) {
  const Place place = place_of(path);
  for (const GroupRow& row : kGroups) {
    if (row.part == place.part && lists(row.keys, place.key)) {
      return {row.rank, QCoreApplication::translate("CardGroups", row.heading), row.folds};
    }
  }
  return {};
}

namespace {

bool suits(std::span<const CaseRow> rows, std::string_view key, std::string_view value) {
  return std::ranges::none_of(
      rows, [&](const CaseRow& row) { return lists(row.keys, key) && !lists(row.values, value); });
}

std::string_view or_default(const Choice& choice, std::string_view usual) {
  return choice.value.empty() ? usual : std::string_view(choice.value);
}

}  // namespace

bool field_applies(const Rig& rig, std::string_view path) {
  constexpr std::string_view kTracking = "tracking.", kArm = "arm.";
  if (path.starts_with(kTracking))
    return suits(kTargets, path.substr(kTracking.size()), or_default(rig.tracking.target, "walk"));
  if (path.starts_with(kArm))
    return suits(kArmSections, path.substr(kArm.size()), or_default(rig.arm.section, "box"));
  const auto axis = axis_of_part(path);
  const Place place = place_of(path);
  if (!axis || place.key.empty()) return true;
  return std::ranges::none_of(kCases, [&](const CaseRow& row) {
    return row.part == place.part && lists(row.keys, place.key) &&
           !lists(row.values, choice_of(rig.axis(*axis), row.part));
  });
}

}  // namespace gazewright
