#include "core/data/prepared.h"
#include "core/rig/field_rows.h"
#include "core/rig/listed_choices.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr TextRow<Motor> kMotorTexts[]{
    {{"name", "Name", "What you call the motor, for the sheet and the shopping list."},
     &Motor::name},
    {{"mount_material", "Bracket material",
      "Of the part that holds the motor: pla, petg, asa, nylon, polycarbonate, aluminium, steel, "
      "or one of the rig's own materials."},
     &Motor::mount_material},
};

constexpr std::string_view kInsulation[]{"unstated"};  // and the rows of insulation.yaml
constexpr ChoiceRow<Motor> kMotorChoices[]{
    {{"insulation", "Insulation class", kInsulation,
      "Thermal class of the winding; gives its limit where none is entered: A 105, E 120, B 130, F "
      "155, H 180, N 200 degC."},
     &Motor::insulation},
};

constexpr QuantityRow<Motor> kMotor[]{
    {field("speed_constant", "Speed constant (KV)", {"rad/s/V", "rpm/V"}, kPositive,
           "No-load speed per volt of line-to-line back-EMF amplitude; usually 30 to 1000 rpm/V. "
           "On the motor's label "
           "as KV."),
     &Motor::speed_constant_radpsV},
    {field("phase_resistance", "Phase resistance", {"ohm", "mohm"}, kPositive,
           "Resistance of one phase to the star point at 20 degC, half of what a meter shows "
           "between two leads; usually "
           "20 mohm to 10 ohm."),
     &Motor::phase_resistance_ohm},
    {field("phase_inductance", "Phase inductance", {"H", "uH"}, kNotNegative,
           "Inductance of one phase, half of what a meter shows between two leads; usually 5 to "
           "5000 uH."),
     &Motor::phase_inductance_H},
    {whole(field("pole_pairs", "Pole pairs", kNumber, {1, 200},
                 "Magnets of the rotor divided by two; usually 4 to 21. Count the magnets.")),
     &Motor::pole_pairs},
    {field("rotor_inertia", "Rotor inertia", kInertia, kPositive,
           "Inertia of everything that turns at motor speed, without the gearbox; usually 5 to "
           "2000 g.cm2. In the "
           "data sheet, or from the mass and radius of the bell."),
     &Motor::rotor_inertia_kgm2},
    {field("peak_current", "Peak current", {"A", "A"}, kPositive,
           "Largest phase-current amplitude for a second or less; usually two to five times the "
           "lasting one. In the "
           "data sheet."),
     &Motor::peak_current_A},
    {field("mass", "Mass", kGram, kPositive,
           "Mass of the motor; usually 30 to 1000 g. Put it on a scale."),
     &Motor::mass_kg},
    {field("thermal_resistance", "Thermal resistance", {"K/W", "K/W"}, kPositive,
           "How much hotter than the air the winding gets per watt of lasting loss, as mounted; "
           "usually 1 to 15 K/W."),
     &Motor::thermal_resistance_KpW},
    {field("thermal_time", "Thermal time constant", {"s", "min"}, kPositive,
           "Time in which a steady loss brings the winding 63 % of the way to its end temperature; "
           "usually 3 to 40 min."),
     &Motor::thermal_time_s},
    {default_follows(
         "that of the insulation class, where it is stated",
         field("winding_limit", "Winding limit", kCelsius, {kZeroCelsius_K, kZeroCelsius_K + 400},
               "Hottest lasting temperature of the winding's insulation; usually 80 to "
               "155 degC. In the data sheet.")),
     &Motor::winding_limit_K},
    {detail(field("winding_to_housing", "Winding to housing", {"K/W", "K/W"}, kPositive,
                  "Part of the thermal resistance that lies between the winding and the housing; "
                  "usually 10 to 40 % of it.")),
     &Motor::winding_to_housing_KpW},
    {detail(field("winding_time", "Winding time constant", {"s", "s"}, kPositive,
                  "Time in which the winding follows the housing; usually 5 to 60 s.")),
     &Motor::winding_time_s},
    {detail(field("housing_to_mount", "Housing to bracket", {"K/W", "K/W"}, kNotNegative,
                  "How much cooler than the housing the bracket is per watt that flows into it; "
                  "usually 0.5 to 5 K/W. Left out, the bracket is as hot as the housing.")),
     &Motor::housing_to_mount_KpW},
    {detail(field("magnet_limit", "Magnet limit", kCelsius, {kZeroCelsius_K, kZeroCelsius_K + 400},
                  "Hottest temperature of the magnets; usually 80 to 150 degC.")),
     &Motor::magnet_limit_K},
    {detail(field("bearing_limit", "Bearing limit", kCelsius,
                  {kZeroCelsius_K, kZeroCelsius_K + 400},
                  "Hottest temperature of the bearings' grease; usually 90 to 120 degC.")),
     &Motor::bearing_limit_K},
    {detail(field("mount_limit", "Bracket softens at", kCelsius,
                  {kZeroCelsius_K, kZeroCelsius_K + 1500},
                  "Where the part that holds the motor gives way, instead of its material's "
                  "value; usually 50 to 110 degC.")),
     &Motor::mount_limit_K},
    {defaults_to(0, detail(field("cogging_torque", "Cogging torque", kSmallTorque, kNotNegative,
                                 "Amplitude of the unpowered rotor's pull to its rest places; "
                                 "usually 1 to 5 % of the lasting torque. Hang weights on a lever "
                                 "until it snaps over."))),
     &Motor::cogging_torque_Nm},
    {whole(detail(field("cogging_per_turn", "Cogging periods a turn", kNumber, {1, 2000},
                        "Rest places in one turn of the rotor: least common multiple of slots and "
                        "poles."))),
     &Motor::cogging_per_turn},
};

constexpr QuantityRow<Drive> kDrive[]{
    {field("current_limit", "Current limit", {"A", "A"}, kPositive,
           "Largest phase-current amplitude that the drive is set to or can give; usually 5 to 100 "
           "A."),
     &Drive::current_limit_A},
    {defaults_to(
         8000,
         field("control_rate", "Control rate", {"Hz", "kHz"}, {100, 100e3},
               "How often the speed and position loops run; usually 1 to 20 kHz. In the drive's "
               "settings.")),
     &Drive::control_rate_Hz},
    {defaults_to(
         1000,
         field("current_bandwidth", "Current bandwidth", {"Hz", "kHz"}, kPositive,
               "Frequency up to which the torque follows its command; usually 0.3 to 3 kHz. In the "
               "drive's settings.")),
     &Drive::current_bandwidth_Hz},
    {defaults_to(0.95, field("modulation_limit", "Modulation limit", kNumber, {0, 1.15, true},
                             "Part of the bus voltage that the drive can use, 1 being the largest "
                             "undistorted sine; "
                             "usually 0.85 to 1.")),
     &Drive::modulation_limit},
    {defaults_to(kInfinity,
                 or_none(field("speed_limit", "Speed limit", kDegreesPerSecond, kPositive,
                               "Output speed that the drive never commands beyond, or none. In the "
                               "drive's settings."))),
     &Drive::speed_limit_radps},
    {defaults_to(0, detail(field("idle_power", "Idle power", {"W", "W"}, kNotNegative,
                                 "What the drive and its fans take while nothing moves; usually "
                                 "0.5 to 5 W."))),
     &Drive::idle_power_W},
};

constexpr PartTable<Motor> kMotorTable{kMotorTexts, kMotor, kMotorChoices};
constexpr PartTable<Drive> kDriveTable{{}, kDrive, {}};
}  // namespace

template <>
const PartTable<Motor>& table_of<Motor>() {
  static Prepared<ListedTable<Motor>> listed([] { return with_listed_choices(kMotorTable); });
  return listed.get().table;
}
template <>
const PartTable<Drive>& table_of<Drive>() {
  return kDriveTable;
}

}  // namespace gazewright
