#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr TextRow<Gearbox> kGearboxTexts[]{
    {{"name", "Name", "What you call the gearbox, for the sheet and the shopping list."},
     &Gearbox::name},
};

constexpr QuantityRow<Gearbox> kGearbox[]{
    {field("ratio", "Ratio", kNumber, {0.01, 1000},
           "Motor speed over output speed; 3 to 10 for one planetary stage, 12 to 60 for two, 1 "
           "without a gearbox."),
     &Gearbox::ratio},
    {defaults_to(0.85, field("efficiency", "Efficiency", kNumber, {0, 1, true},
                             "Power out over power in while the motor drives; 0.95 to 0.97 a metal "
                             "stage, 0.8 to 0.9 "
                             "a printed one.")),
     &Gearbox::efficiency},
    {default_follows(
         "2 - 1 / efficiency",
         field(
             "back_efficiency", "Back-driving efficiency", kNumber, {0, 1},
             "Power that reaches the motor over power of the load while the load drives; near 2 - "
             "1/efficiency. 0 means that the gear locks itself.")),
     &Gearbox::back_efficiency},
    {field(
         "inertia", "Inertia at the input", kInertia, kNotNegative,
         "Inertia of the gears as the motor feels it; usually 1 to 100 g.cm2. In the data sheet."),
     &Gearbox::inertia_kgm2},
    {field("backlash", "Backlash", {"rad", "arcmin"}, {0, 90 * kDegree_rad},
           "Free play at the output from flank to flank; 3 to 20 arcmin for metal, 20 to 120 for "
           "printed gears. Hold "
           "the motor and rock the output."),
     &Gearbox::backlash_rad},
    {field("stiffness", "Torsional stiffness", kStiffness, kPositive,
           "Torque that winds the output by an angle with the motor held, past the play; usually "
           "100 to 5000 N.m/rad."),
     &Gearbox::stiffness_Nmprad},
    {defaults_to(0, field("damping", "Torsional damping", kDamping, kNotNegative,
                          "Damping across the gear's spring; usually 0.05 to 2 N.m.s/rad. 0 is the "
                          "cautious side.")),
     &Gearbox::damping_Nmsprad},
    {field("drag", "Drag at the input", kSmallTorque, kNotNegative,
           "Torque at the input that keeps the unloaded gearbox just turning; usually 2 to 50 "
           "mN.m. Measure with a "
           "lever and a small weight."),
     &Gearbox::drag_Nm},
    {defaults_to(
         0,
         field("viscous", "Viscous drag at the input", {"N.m.s/rad", "uN.m.s/rad"}, kNotNegative,
               "Part of the drag that grows with the input's speed; usually 5 to 200 uN.m.s/rad.")),
     &Gearbox::viscous_Nmsprad},
    {or_none(field("rated_torque", "Rated torque", kTorque, kPositive,
                   "Output torque that the teeth carry for the whole life, or none for no limit. "
                   "In the data sheet.")),
     &Gearbox::rated_torque_Nm},
    {or_none(field("peak_torque", "Peak torque", kTorque, kPositive,
                   "Output torque that the teeth carry for short starts and stops, often twice the "
                   "rated one, or none "
                   "for no limit. In the data sheet.")),
     &Gearbox::peak_torque_Nm},
    {defaults_to(kInfinity, or_none(field("input_speed_limit", "Input speed limit",
                                          {"rad/s", "rpm"}, kPositive,
                                          "Fastest speed at the input; usually 4000 to 10 000 rpm, "
                                          "or none. In the data sheet."))),
     &Gearbox::input_speed_limit_radps},
    {field("mass", "Mass", kGram, kPositive,
           "Mass of the gearbox without the motor; usually 50 to 1500 g. Put it on a scale."),
     &Gearbox::mass_kg},
    {detail(field("overhung_load", "Overhung load", {"N", "N"}, kPositive,
                  "Radial force that the output shaft bears; usually 50 to 2000 N. In the data "
                  "sheet.")),
     &Gearbox::overhung_load_N},
    {defaults_to(0, detail(field("overhung_at", "Overhung load at", kMillimetre, kNotNegative,
                                 "How far from the output's face the data sheet has it act."))),
     &Gearbox::overhung_at_m},
    {detail(field("axial_load", "Axial load", {"N", "N"}, kPositive,
                  "Force along the output shaft that it bears. In the data sheet.")),
     &Gearbox::axial_load_N},
    {detail(field("load_at", "Load at", kMillimetre, kNotNegative,
                  "From the output's face to the centre of what hangs on it, along the axis; "
                  "usually 10 to 120 mm.")),
     &Gearbox::load_at_m},
};

constexpr std::string_view kEncoderPlaces[]{"motor", "output"};
constexpr std::string_view kMotorSensor[]{"unstated", "no", "yes"};
constexpr QuantityRow<Encoder> kEncoder[]{
    {whole(field("bits", "Bits", kNumber, {1, 32},
                 "Resolution: 2 to this power steps a turn; usually 12 to 21. In the data sheet.")),
     &Encoder::bits},
    {field("error", "Error", kDegrees, {0, 90 * kDegree_rad},
           "Largest difference between reading and true angle of the encoder's own shaft; usually "
           "0.02 to 1 deg. In "
           "the data sheet as nonlinearity."),
     &Encoder::error_rad},
    {detail(field("magnet_offset", "Magnet offset", kMillimetre, kNotNegative,
                  "From the magnet's axis to the shaft's; usually 0.05 to 0.3 mm.")),
     &Encoder::magnet_offset_m},
    {detail(field("magnet_tilt", "Magnet tilt", kDegrees, {0, 45 * kDegree_rad},
                  "Between the magnet's face and the sensor's; usually 0.5 to 3 deg.")),
     &Encoder::magnet_tilt_rad},
    {detail(field(
         "magnet_gap", "Magnet gap", kMillimetre, kPositive,
         "From the magnet's face to the sensing plane inside the chip; usually 0.8 to 3 mm.")),
     &Encoder::magnet_gap_m},
    {detail(field("magnet_diameter", "Magnet diameter", kMillimetre, kPositive,
                  "Of the disc magnetised across its diameter; usually 4 to 10 mm.")),
     &Encoder::magnet_diameter_m},
    {detail(field("magnet_thickness", "Magnet thickness", kMillimetre, kPositive,
                  "Usually 2 to 4 mm.")),
     &Encoder::magnet_thickness_m},
    {defaults_to(
         1.2,
         detail(field("magnet_remanence", "Magnet remanence", {"T", "T"}, kPositive,
                      "About 1.2 T for a neodymium magnet of usual grade, 0.4 T for ferrite."))),
     &Encoder::magnet_remanence_T},
    {detail(field(
         "field_least", "Least field", {"T", "mT"}, kPositive,
         "Weakest field that the sensor works with; usually 20 to 40 mT. In its data sheet.")),
     &Encoder::field_least_T},
    {detail(field(
         "field_most", "Most field", {"T", "mT"}, kPositive,
         "Strongest field that the sensor works with; usually 70 to 100 mT. In its data sheet.")),
     &Encoder::field_most_T},
};
constexpr ChoiceRow<Encoder> kEncoderChoices[]{
    {{"at", "Mounted at", kEncoderPlaces,
      "Whether the encoder reads the motor's shaft (before the play and the spring of the gear) or "
      "the output."},
     &Encoder::at},
    {{"motor_sensor", "Motor sensor", kMotorSensor,
      "Whether the drive commutates by a sensor of the motor's own, halls or a second encoder; "
      "asked where the encoder is at the output, behind the play and the spring of the gear."},
     &Encoder::motor_sensor},
};

constexpr QuantityRow<Friction> kFriction[]{
    {field("coulomb", "Coulomb friction", kSmallTorque, kNotNegative,
           "Torque at the output that keeps the load just turning, bearings and cables without the "
           "gearbox; usually 10 "
           "to 200 mN.m. Pull with a spring scale on a lever."),
     &Friction::coulomb_Nm},
    {defaults_to(
         0,
         field("viscous", "Viscous friction", {"N.m.s/rad", "mN.m.s/rad"}, kNotNegative,
               "Part of the output's friction that grows with speed; usually 0 to 20 mN.m.s/rad.")),
     &Friction::viscous_Nmsprad},
    {default_follows("the Coulomb friction",
                     detail(field("breakaway", "Breakaway torque", kSmallTorque, kNotNegative,
                                  "Torque at the output that starts the load from rest; usually "
                                  "1.1 to 2 times the Coulomb friction."))),
     &Friction::breakaway_Nm},
    {defaults_to(0.5 * kDegree_rad,
                 detail(field("stribeck_speed", "Stribeck speed", kDegreesPerSecond, kPositive,
                              "Output speed at which the friction has fallen from breakaway 63 % "
                              "of the way to Coulomb's; usually 0.1 to 5 deg/s."))),
     &Friction::stribeck_speed_radps},
};

constexpr PartTable<Gearbox> kGearboxTable{kGearboxTexts, kGearbox, {}};
constexpr PartTable<Encoder> kEncoderTable{{}, kEncoder, kEncoderChoices};
constexpr PartTable<Friction> kFrictionTable{{}, kFriction, {}};
}  // namespace

template <>
const PartTable<Gearbox>& table_of<Gearbox>() {
  return kGearboxTable;
}
template <>
const PartTable<Encoder>& table_of<Encoder>() {
  return kEncoderTable;
}
template <>
const PartTable<Friction>& table_of<Friction>() {
  return kFrictionTable;
}

}  // namespace gazewright
