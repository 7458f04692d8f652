#include "core/shelf/part_keys.h"

#include <array>

namespace gazewright {
namespace {

using Key = std::string_view;

constexpr Key kMotorPlace[]{"mount_material", "mount_limit", "housing_to_mount"};
constexpr Key kMotorTelling[]{"speed_constant", "peak_current", "mass"};
constexpr Key kGearboxPlace[]{"load_at"};
constexpr Key kGearboxTelling[]{"ratio", "backlash", "peak_torque"};
constexpr Key kDrivePlace[]{"speed_limit"};
constexpr Key kDriveTelling[]{"current_limit", "control_rate"};
constexpr Key kBearingPlace[]{"kind", "spacing", "overhang", "preload", "life"};
constexpr Key kBearingTelling[]{"dynamic_rating", "pitch_diameter"};
constexpr Key kCablePlace[]{"routing",       "count",      "free_length",  "lay_radius",
                            "slack",         "hub_radius", "wall_radius",  "anchor_radius",
                            "moving_radius", "current",    "supply_length"};
constexpr Key kCableTelling[]{"outer_diameter", "twist_rating", "ring_circuits"};
constexpr Key kCameraPlace[]{"exposure"};
constexpr Key kCameraTelling[]{"columns", "horizontal_view", "frame_rate"};
constexpr Key kSupplyPlace[]{"bus_capacitance", "trip_voltage", "brake_resistor", "brake_voltage",
                             "brake_power",     "lead_length",  "lead_conductor", "fuse"};
constexpr Key kSupplyTelling[]{"voltage", "current_limit"};

/// In the order of PartKind.
constexpr std::array<PartKeys, kPartKinds.size()> kKeys{
    {{"motor", kMotorPlace, kMotorTelling},
     {"gearbox", kGearboxPlace, kGearboxTelling},
     {"drive", kDrivePlace, kDriveTelling},
     {"bearing", kBearingPlace, kBearingTelling},
     {"cable", kCablePlace, kCableTelling},
     {"camera", kCameraPlace, kCameraTelling},
     {"supply", kSupplyPlace, kSupplyTelling}}};

}  // namespace

const PartKeys& keys_of(PartKind kind) { return kKeys[static_cast<std::size_t>(kind)]; }

const char* name_of(PartKind kind) { return keys_of(kind).name; }

}  // namespace gazewright
