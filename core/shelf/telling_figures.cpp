#include <algorithm>
#include <span>

#include "core/analysis/say.h"
#include "core/rig/fields.h"
#include "core/shelf/part_place.h"
#include "core/shelf/shelf.h"

namespace gazewright {
namespace {

/// The fields that tell one part of a kind from another, by the keys of its table.
std::span<const std::string_view> telling_keys(PartKind kind) {
  static constexpr std::string_view kMotor[]{"speed_constant", "peak_current", "mass"};
  static constexpr std::string_view kGearbox[]{"ratio", "backlash", "peak_torque"};
  static constexpr std::string_view kDrive[]{"current_limit", "control_rate"};
  static constexpr std::string_view kBearing[]{"dynamic_rating", "pitch_diameter"};
  static constexpr std::string_view kCable[]{"outer_diameter", "twist_rating", "ring_circuits"};
  static constexpr std::string_view kCamera[]{"columns", "horizontal_view", "frame_rate"};
  static constexpr std::string_view kSupply[]{"voltage", "current_limit"};
  switch (kind) {
    case PartKind::motor:
      return kMotor;
    case PartKind::gearbox:
      return kGearbox;
    case PartKind::drive:
      return kDrive;
    case PartKind::bearing:
      return kBearing;
    case PartKind::cable:
      return kCable;
    case PartKind::camera:
      return kCamera;
    case PartKind::supply:
      return kSupply;
  }
  return {};
}

std::string said(const FieldInfo& info, double value_si) {
  const std::string text = say(value_si, info.si_unit, info.unit);
  if (info.key == "ratio") return text + " : 1";
  return info.is_plain_number() && info.unit == "1" ? std::string(info.label) + " " + text : text;
}

}  // namespace

std::vector<std::string> telling_figures(const ShelfPart& part) {
  std::vector<std::string> figures;
  const auto keys = telling_keys(part.kind());
  std::visit(
      [&]<class Fields>(const Fields& fields) {
        for (const std::string_view key : keys)
          for (const auto& row : table_of<Fields>().quantities)
            if (row.info.key == key && (fields.*row.at).has_value())
              figures.push_back(said(row.info, *(fields.*row.at).si));
      },
      part.fields);
  return figures;
}

std::vector<std::string_view> telling_labels(PartKind kind) {
  std::vector<std::string_view> labels;
  const auto keys = telling_keys(kind);
  std::visit(
      [&]<class Fields>(const Fields&) {
        for (const std::string_view key : keys)
          for (const auto& row : table_of<Fields>().quantities)
            if (row.info.key == key) labels.push_back(row.info.label);
      },
      fields_of(kind));
  return labels;
}

}  // namespace gazewright
