#include "app/window/card_groups.h"

#include <QCoreApplication>
#include <algorithm>
#include <iterator>

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
    {"supply", 1, QT_TRANSLATE_NOOP("CardGroups", "Braking"), false,
     " absorbs bus_capacitance trip_voltage brake_resistor brake_voltage brake_power "},
    {"supply", 2, QT_TRANSLATE_NOOP("CardGroups", "Source, leads and fuse"), true,
     " source_resistance lead_length lead_conductor fuse "},
    {"encoder", 1, QT_TRANSLATE_NOOP("CardGroups", "Magnet"), true,
     " magnet_offset magnet_tilt magnet_gap magnet_diameter magnet_thickness magnet_remanence "
     "field_least field_most "},
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
    {"homing", " stop ", " current "},
    {"homing", " stop flag ", " speed "},
    {"homing", " flag ", " flag_error "},
    {"homing", " second_encoder ", " second_ratio second_error "},
};

/// Keys of tracking that matter only for some targets.
constexpr CaseRow kTargets[]{
    {"tracking", " walk ", " height "},
    {"tracking", " sine ", " amplitude frequency "},
    {"tracking", " jump ", " jump "},
};

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

bool suits_target(const Rig& rig, std::string_view key) {
  const std::string& target = rig.tracking.target.value;
  return std::ranges::none_of(kTargets, [&](const CaseRow& row) {
    return lists(row.keys, key) && !lists(row.values, target.empty() ? "walk" : target);
  });
}

}  // namespace

bool field_applies(const Rig& rig, std::string_view path) {
  constexpr std::string_view kTracking = "tracking.";
  if (path.starts_with(kTracking)) return suits_target(rig, path.substr(kTracking.size()));
  const auto axis = axis_of_part(path);
  const Place place = place_of(path);
  if (!axis || place.key.empty()) return true;
  return std::ranges::none_of(kCases, [&](const CaseRow& row) {
    return row.part == place.part && lists(row.keys, place.key) &&
           !lists(row.values, choice_of(rig.axis(*axis), row.part));
  });
}

}  // namespace gazewright
