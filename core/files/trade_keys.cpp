#include "core/files/trade_keys.h"

#include <algorithm>

#include "core/files/spelling.h"

namespace gazewright {
namespace {

// Abbreviations as data sheets have them: common practice, no source.
constexpr TradeKey kKeys[]{
    {"kv", "speed_constant"},
    {"motorkv", "speed_constant"},
    {"velocityconstant", "speed_constant"},
    {"ke", "speed_constant", "1 over it"},
    {"kt", "speed_constant", "in rpm/V it is 8.27 over N.m per ampere of amplitude"},
    {"torqueconstant", "speed_constant", "in rpm/V it is 8.27 over N.m per ampere of amplitude"},
    {"r", "phase_resistance"},
    {"rm", "phase_resistance"},
    {"rphase", "phase_resistance"},
    {"resistance", "phase_resistance", "half of what is measured between two leads"},
    {"l", "phase_inductance"},
    {"lphase", "phase_inductance"},
    {"inductance", "phase_inductance", "half of what is measured between two leads"},
    {"poles", "pole_pairs", "half of the magnets"},
    {"magnets", "pole_pairs", "half of the magnets"},
    {"polecount", "pole_pairs", "half of the magnets"},
    {"j", "rotor_inertia"},
    {"jm", "rotor_inertia"},
    {"inertia", "rotor_inertia"},
    {"imax", "peak_current"},
    {"maxcurrent", "peak_current"},
    {"maxcurrent", "current_limit"},
    {"maximumcurrent", "peak_current"},
    {"maximumcurrent", "current_limit"},
    {"current", "current_limit"},
    {"imax", "current_limit"},
    {"weight", "mass"},
    {"rth", "thermal_resistance"},
    {"thermaltimeconstant", "thermal_time"},
    {"maxtemperature", "winding_limit"},
    {"tmax", "winding_limit"},
    {"looprate", "control_rate"},
    {"samplerate", "control_rate"},
    {"reduction", "ratio"},
    {"gearratio", "ratio"},
    {"transmission", "ratio"},
    {"gear", "gearbox"},
    {"gearhead", "gearbox"},
    {"reducer", "gearbox"},
    {"controller", "drive"},
    {"driver", "drive"},
    {"esc", "drive"},
    {"gears", "gearbox"},
    {"n", "ratio"},
    {"i", "ratio"},
    {"eta", "efficiency"},
    {"play", "backlash"},
    {"lash", "backlash"},
    {"rigidity", "stiffness"},
    {"nominaltorque", "rated_torque"},
    {"torque", "rated_torque"},
    {"maxtorque", "peak_torque"},
    {"maxinputspeed", "input_speed_limit"},
    {"maxspeed", "input_speed_limit"},
    {"maxspeed", "speed_limit"},
    {"accuracy", "error"},
    {"nonlinearity", "error"},
    {"cpr", "bits", "the power of two that gives as many steps"},
    {"counts", "bits", "the power of two that gives as many steps"},
    {"resolution", "bits", "the power of two that gives as many steps"},
    {"static", "breakaway"},
    {"stiction", "breakaway"},
    {"dry", "coulomb"},
    {"kp", "position_gain"},
    {"ki", "speed_integral_gain"},
    {"fov", "horizontal_view"},
    {"hfov", "horizontal_view"},
    {"fieldofview", "horizontal_view"},
    {"view", "horizontal_view"},
    {"width", "columns"},
    {"height", "rows"},
    {"fps", "frame_rate"},
    {"framerate", "frame_rate"},
    {"latency", "delay"},
    {"shutter", "exposure"},
    {"volts", "voltage"},
    {"u", "voltage"},
    {"v", "voltage"},
    {"capacitance", "bus_capacitance"},
    {"capacitor", "bus_capacitance"},
    {"distance", "target_distance"},
    {"time", "within"},
    {"center", "centre"},
    {"position", "centre"},
    {"com", "centre"},
    {"od", "outer_diameter"},
    {"diameter", "outer_diameter"},
    {"ambient", "temperature"},
    {"ambienttemperature", "temperature"},
    {"base", "stand"},
    {"tripod", "stand"},
    {"environment", "surroundings"},
    {"battery", "supply"},
    {"power", "supply"},
};

/// Small letters and figures only.
std::string bare(std::string_view word) {
  std::string letters = in_small_letters(word);
  std::erase_if(letters, [](char c) { return c == '_' || c == '-' || c == ' ' || c == '.'; });
  return letters;
}

}  // namespace

std::span<const TradeKey> trade_keys() { return kKeys; }

const TradeKey* trade_key(std::string_view word, std::span<const std::string> known) {
  const std::string asked = bare(word);
  const auto found = std::ranges::find_if(kKeys, [&](const TradeKey& row) {
    return row.word == asked && std::ranges::find(known, row.key) != known.end();
  });
  return found == std::end(kKeys) ? nullptr : found;
}

}  // namespace gazewright
