#include "core/rig/usual.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

struct Row {
  std::string_view path;  ///< on pan for both axes
  double least, most;
  std::string_view unit;
  std::string_view least_unit = {};  ///< where it is another one
  double factor = 10;                ///< common practice, no source; less where more harm is done
};

// The numbers of the help texts; a test compares them. Gains are left out: they follow from the
// other values, over many decades.
constexpr Row kRows[]{
    {"pan.motor.speed_constant", 30, 1000, "rpm/V", {}, 2.5},
    {"pan.motor.phase_resistance", 20, 10, "ohm", "mohm"},
    {"pan.motor.phase_inductance", 5, 5000, "uH"},
    {"pan.motor.pole_pairs", 4, 21, "1"},
    {"pan.motor.rotor_inertia", 5, 2000, "g.cm2"},
    {"pan.motor.mass", 30, 1000, "g"},
    {"pan.motor.thermal_resistance", 1, 15, "K/W"},
    {"pan.motor.thermal_time", 3, 40, "min"},
    {"pan.motor.winding_time", 5, 60, "s"},
    {"pan.motor.housing_to_mount", 0.5, 5, "K/W"},
    {"pan.drive.current_limit", 5, 100, "A"},
    {"pan.drive.control_rate", 1, 20, "kHz"},
    {"pan.drive.current_bandwidth", 0.3, 3, "kHz"},
    {"pan.drive.idle_power", 0.5, 5, "W"},
    {"pan.gearbox.ratio", 1, 60, "1", {}, 5},
    {"pan.gearbox.inertia", 1, 100, "g.cm2"},
    {"pan.gearbox.backlash", 3, 120, "arcmin"},
    {"pan.gearbox.stiffness", 100, 5000, "N.m/rad"},
    {"pan.gearbox.damping", 0.05, 2, "N.m.s/rad"},
    {"pan.gearbox.drag", 2, 50, "mN.m"},
    {"pan.gearbox.viscous", 5, 200, "uN.m.s/rad"},
    {"pan.gearbox.input_speed_limit", 4000, 10000, "rpm"},
    {"pan.gearbox.mass", 50, 1500, "g"},
    {"pan.gearbox.overhung_load", 50, 2000, "N"},
    {"pan.gearbox.load_at", 10, 120, "mm"},
    {"pan.encoder.error", 0.02, 1, "deg"},
    {"pan.encoder.magnet_offset", 0.05, 0.3, "mm"},
    {"pan.encoder.magnet_gap", 0.8, 3, "mm"},
    {"pan.encoder.magnet_diameter", 4, 10, "mm"},
    {"pan.encoder.magnet_thickness", 2, 4, "mm"},
    {"pan.encoder.field_least", 20, 40, "mT"},
    {"pan.encoder.field_most", 70, 100, "mT"},
    {"pan.friction.coulomb", 10, 200, "mN.m"},
    {"pan.friction.viscous", 0, 20, "mN.m.s/rad"},
    {"pan.friction.stribeck_speed", 0.1, 5, "deg/s"},
    {"pan.stops.tab_width", 4, 20, "mm"},
    {"pan.stops.post_width", 4, 20, "mm"},
    {"pan.stops.radius", 15, 80, "mm"},
    {"pan.stops.soft_inset", 3, 10, "deg"},
    {"pan.stops.stiffness", 100, 5000, "N.m/rad"},
    {"pan.stops.trailer_width", 4, 20, "mm"},
    {"pan.stops.bumper_travel", 0.5, 5, "deg"},
    {"pan.stops.hard_stiffness", 1000, 20000, "N.m/rad"},
    {"pan.stops.tab_height", 4, 15, "mm"},
    {"pan.stops.tab_thickness", 4, 12, "mm"},
    {"pan.stops.tab_strength", 20, 60, "MPa"},
    {"pan.cable.outer_diameter", 2, 8, "mm"},
    {"pan.cable.free_length", 100, 600, "mm"},
    {"pan.cable.twist_rating", 180, 1080, "deg/m"},
    {"pan.cable.slack", 2, 20, "mm"},
    {"pan.cable.hub_radius", 10, 40, "mm"},
    {"pan.cable.wall_radius", 25, 80, "mm"},
    {"pan.cable.anchor_radius", 20, 150, "mm"},
    {"pan.cable.moving_radius", 20, 100, "mm"},
    {"pan.homing.speed", 10, 60, "deg/s"},
    {"pan.homing.flag_error", 0.2, 1, "deg"},
    {"pan.homing.second_error", 0.2, 2, "deg"},
    {"pan.loop.speed_limit", 200, 1500, "deg/s"},
    {"pan.loop.estimator_bandwidth", 50, 1000, "Hz"},
    {"pan.loop.acceleration_limit", 2000, 50000, "deg/s2"},
    {"pan.bearing.dynamic_rating", 300, 10000, "N"},
    {"pan.bearing.static_rating", 100, 10000, "N"},
    {"pan.bearing.moment_rating", 2, 500, "N.m"},
    {"pan.bearing.spacing", 10, 120, "mm"},
    {"pan.bearing.pitch_diameter", 10, 150, "mm"},
    {"pan.bearing.life", 5000, 40000, "hour"},
    {"pan.joint.screws", 4, 8, "1"},
    {"pan.joint.circle_diameter", 16, 80, "mm"},
    {"pan.joint.pull_out", 200, 1500, "N"},
    {"pan.joint.shaft_diameter", 4, 20, "mm"},
    {"pan.joint.shaft_length", 8, 30, "mm"},
    {"pan.joint.clamp_force", 1000, 10000, "N"},
    {"pan.balance.counterweight_arm", 20, 120, "mm"},
    {"pan.bracket.stiffness", 100, 20000, "N.m/rad"},
    {"supply.voltage", 12, 48, "V"},
    {"supply.current_limit", 3, 40, "A"},
    {"supply.bus_capacitance", 0.2, 10, "mF"},
    {"supply.brake_resistor", 1, 20, "ohm"},
    {"supply.lead_length", 0.3, 5, "m"},
    {"supply.fuse", 5, 40, "A"},
    {"supply.brake_power", 5, 200, "W"},
    {"stand.mass", 1, 20, "kg"},
    {"stand.half_width", 60, 300, "mm"},
    {"stand.height", 50, 1500, "mm"},
    {"stand.sway_stiffness", 200, 20000, "N.m/rad"},
    {"arm.length", 60, 250, "mm"},
    {"arm.width", 20, 60, "mm"},
    {"arm.height", 6, 25, "mm"},
    {"arm.wall", 1.6, 4, "mm"},
    {"camera.columns", 640, 4096, "1"},
    {"camera.rows", 480, 3072, "1"},
    {"camera.horizontal_view", 20, 120, "deg"},
    {"camera.exposure", 1, 20, "ms"},
    {"camera.frame_rate", 30, 120, "Hz"},
    {"camera.delay", 20, 150, "ms"},
    {"task.pan_move", 10, 90, "deg"},
    {"task.tilt_move", 10, 60, "deg"},
    {"task.within", 40, 200, "ms", {}, 100},
    {"task.target_distance", 0.5, 10, "m", {}, 100},
    {"tracking.passing_distance", 0.5, 10, "m", {}, 100},
    {"detectors[0].frame_rate", 5, 120, "Hz"},
    {"detectors[0].delay", 20, 300, "ms"},
};

using Ranges = std::map<const FieldInfo*, UsualRange>;

Ranges read_rows() {
  Ranges ranges;
  for (const Row& row : kRows) {
    const FieldInfo* info = find_info(row.path);
    if (info == nullptr) continue;  // a test sees to it that there is none
    const std::string_view least_unit = row.least_unit.empty() ? row.unit : row.least_unit;
    ranges.emplace(info, UsualRange{to_si(row.least, info->si_unit, least_unit),
                                    to_si(row.most, info->si_unit, row.unit), row.factor,
                                    least_unit, row.unit});
  }
  return ranges;
}

}  // namespace

const UsualRange* usual_range(const FieldInfo& info) {
  // A column of a data file is no row of the tables, and these may just be waiting for that file.
  if (info.help.empty()) return nullptr;
  static const Ranges ranges = read_rows();
  const auto found = ranges.find(&info);
  return found == ranges.end() ? nullptr : &found->second;
}

double times_outside(const UsualRange& usual, double value_si) {
  const double size = std::abs(value_si);
  if (size == 0 || std::isinf(size)) return 1;
  return std::max({1.0, usual.least / size, size / usual.most});
}

std::string usual_words(const FieldInfo& info) {
  const UsualRange* usual = usual_range(info);
  if (usual == nullptr) return "";
  return words("usually %1 to %2", written_quantity(usual->least, info, usual->least_unit),
               written_quantity(usual->most, info, usual->most_unit));
}

std::string unusual_words(const FieldInfo& info, double value_si) {
  const UsualRange* usual = usual_range(info);
  if (usual == nullptr || times_outside(*usual, value_si) <= usual->factor) return "";
  return usual_words(info);
}

}  // namespace gazewright
