#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr QuantityRow<Supply> kSupply[]{
    {field("voltage", "Voltage", {"V", "V"}, kPositive,
           "Voltage at the drives' input under load; usually 12 to 48 V. On the supply's label."),
     &Supply::voltage_V},
    {defaults_to(
         kInfinity,
         or_none(field(
             "current_limit", "Current limit", {"A", "A"}, kPositive,
             "Current that the supply gives for seconds before it folds back or trips; usually "
             "3 to 40 A, or none for no limit. On the supply's label."))),
     &Supply::current_limit_A},
    {defaults_to(0, field("absorbs", "Absorbs", {"A", "A"}, kNotNegative,
                          "Current that may flow back into the supply while braking: 0 A for a "
                          "mains supply, the "
                          "charging limit for a battery.")),
     &Supply::absorbs_A},
    {field("bus_capacitance", "Bus capacitance", {"F", "mF"}, kNotNegative,
           "Capacitors between the supply and the drives, added up; usually 0.2 to 10 mF. In the "
           "drives' data sheets."),
     &Supply::bus_capacitance_F},
    {field("trip_voltage", "Trip voltage", {"V", "V"}, kPositive,
           "Voltage at which the first drive or the supply switches off; 10 to 50 % above the "
           "supply. In the drives' "
           "data sheets."),
     &Supply::trip_voltage_V},
    {defaults_to(
         kInfinity,
         or_none(field(
             "brake_resistor", "Brake resistor", {"ohm", "ohm"}, kPositive,
             "Resistor that a chopper puts across the bus while braking; usually 1 to 20 ohm, or "
             "none where there is none."))),
     &Supply::brake_resistor_ohm},
    {detail(field("source_resistance", "Source resistance", {"ohm", "mohm"}, kNotNegative,
                  "Inside the source, without the leads: how far its voltage sags per ampere; "
                  "usually 5 to 100 mohm for a battery, near 0 for a mains supply.")),
     &Supply::source_resistance_ohm},
    {detail(field("lead_length", "Lead length", {"m", "m"}, kNotNegative,
                  "From the source to the drives, one way; usually 0.3 to 5 m.")),
     &Supply::lead_length_m},
    {detail(field("lead_conductor", "Lead copper diameter", kMillimetre, kPositive,
                  "Of one lead's copper, as a diameter or as a gauge such as 16 AWG.")),
     &Supply::lead_conductor_m},
    {detail(field("fuse", "Fuse", {"A", "A"}, kPositive,
                  "Rated current of the fuse at the source; usually 5 to 40 A.")),
     &Supply::fuse_A},
    {default_follows("90 % of the trip voltage",
                     detail(field("brake_voltage", "Brake chopper voltage", {"V", "V"}, kPositive,
                                  "Bus voltage above which the chopper puts the brake resistor "
                                  "across the bus. In the drives' settings."))),
     &Supply::brake_voltage_V},
    {detail(field("brake_power", "Brake resistor power", {"W", "W"}, kPositive,
                  "Lasting power that the brake resistor bears as mounted; usually 5 to 200 W.")),
     &Supply::brake_power_W},
};

constexpr QuantityRow<Surroundings> kSurroundings[]{
    {defaults_to(
         kZeroCelsius_K + 25,
         field("temperature", "Temperature", kCelsius, {kZeroCelsius_K - 100, kZeroCelsius_K + 150},
               "Air around the rig on the hottest day it must work; usually 20 to 40 degC.")),
     &Surroundings::temperature_K},
};

constexpr QuantityRow<Stand> kStand[]{
    {defaults_to(
         0,
         field("lean", "Lean", kDegrees, {-90 * kDegree_rad, 90 * kDegree_rad},
               "How far the pan axis leans forwards from the plumb line; 0 deg on a level table.")),
     &Stand::lean_rad},
    {field("mass", "Mass", {"kg", "kg"}, kPositive,
           "Stand and base with everything that does not turn; usually 1 to 20 kg. Put it on a "
           "scale."),
     &Stand::mass_kg},
    {field("half_width", "Half width", kMillimetre, kPositive,
           "From the pan axis to the nearest tipping edge of the foot; usually 60 to 300 mm."),
     &Stand::half_width_m},
    {field("height", "Height", kMillimetre, kNotNegative,
           "From the foot to the mounting plane of the pan axis; usually 50 to 1500 mm."),
     &Stand::height_m},
    {field("sway_stiffness", "Sway stiffness", kStiffness, kPositive,
           "Turning moment that bends the stand by an angle; usually 200 to 20 000 N.m/rad. Pull "
           "sideways with a "
           "spring scale and measure the lean."),
     &Stand::sway_stiffness_Nmprad},
    {defaults_to(0.03, detail(field("sway_damping", "Sway damping", kNumber, {0, 1},
                                    "Damping ratio of the stand's swaying; usually 0.01 to "
                                    "0.1."))),
     &Stand::sway_damping},
    {or_none(detail(field("grip", "Grip of the feet", kNumber, kPositive,
                          "Friction coefficient of the feet on their ground: 0.3 plastic on wood, "
                          "0.7 rubber; none where it is screwed down."))),
     &Stand::grip},
};

constexpr PartTable<Supply> kSupplyTable{{}, kSupply, {}};
constexpr PartTable<Surroundings> kSurroundingsTable{{}, kSurroundings, {}};
constexpr PartTable<Stand> kStandTable{{}, kStand, {}};
}  // namespace

template <>
const PartTable<Supply>& table_of<Supply>() {
  return kSupplyTable;
}
template <>
const PartTable<Surroundings>& table_of<Surroundings>() {
  return kSurroundingsTable;
}
template <>
const PartTable<Stand>& table_of<Stand>() {
  return kStandTable;
}

}  // namespace gazewright
