#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr std::string_view kRoutings[]{"twist", "coil", "loop", "slip_ring"};
constexpr QuantityRow<Cable> kCable[]{
    {field("outer_diameter", "Outer diameter", kMillimetre, kPositive,
           "Outside of one cable; usually 2 to 8 mm. Measure with a calliper."),
     &Cable::outer_diameter_m},
    {defaults_to(1, whole(field("count", "Number of cables", kNumber, {1, 1000},
                                "How many such cables cross the axis."))),
     &Cable::count},
    {field("free_length", "Free length", kMillimetre, kPositive,
           "Length of cable between the two clamps that takes up the turning; usually 100 to 600 "
           "mm."),
     &Cable::free_length_m},
    {default_follows(
         "10 outer diameters (of a ribbon: thicknesses), NASA-STD-8739.4",
         field("bend_radius", "Bend radius", kMillimetre, kPositive,
               "Smallest radius for moving use; usually 7 to 10 outer diameters. In the cable's "
               "data sheet; how many bends it lives through is for its maker to say.")),
     &Cable::bend_radius_m},
    {field("twist_rating", "Twist rating", {"rad/m", "deg/m"}, kPositive,
           "Twist that the cable bears each way per metre of free length; usually 180 to 1080 "
           "deg/m. In the cable's data "
           "sheet."),
     &Cable::twist_rating_radpm},
    {default_follows(
         "how so many round cables pack about the axis",
         detail(field("lay_radius", "Lay radius", kMillimetre, kNotNegative,
                      "Twist: from the axis to the centre of the outermost cable; 0 for one "
                      "cable on the axis."))),
     &Cable::lay_radius_m},
    {detail(field("slack", "Slack", kMillimetre, kNotNegative,
                  "Twist: spare length that the clamps leave when untwisted; usually 2 to 20 mm.")),
     &Cable::slack_m},
    {detail(
         field("hub_radius", "Hub radius", kMillimetre, kPositive,
               "Coil: radius of the turning hub on which the cable winds; usually 10 to 40 mm.")),
     &Cable::hub_radius_m},
    {detail(field("wall_radius", "Wall radius", kMillimetre, kPositive,
                  "Coil: inside radius of the fixed wall round the coil; usually 25 to 80 mm.")),
     &Cable::wall_radius_m},
    {default_follows(
         "the outer diameter",
         detail(field("thickness", "Thickness in the coil", kMillimetre, kPositive,
                      "Coil: thickness of one layer; that of a ribbon is less than its width."))),
     &Cable::thickness_m},
    {detail(field("anchor_radius", "Fixed clamp radius", kMillimetre, kNotNegative,
                  "Loop: from the axis to the clamp that stands still; usually 20 to 150 mm.")),
     &Cable::anchor_radius_m},
    {detail(field("moving_radius", "Turning clamp radius", kMillimetre, kNotNegative,
                  "Loop: from the axis to the clamp that turns; usually 20 to 100 mm.")),
     &Cable::moving_radius_m},
    {defaults_to(
         0, detail(field("torsion_stiffness", "Torsional stiffness", {"N.m2/rad", "N.m2/rad"},
                         kNotNegative,
                         "Twist: torque times length per angle of one cable; usually 1e-4 to 5e-3 "
                         "N.m2/rad. Turn a metre of it by hand with a scale."))),
     &Cable::torsion_stiffness_Nm2prad},
    {defaults_to(
         0, detail(field("bending_stiffness", "Bending stiffness", {"N.m2", "N.m2"}, kNotNegative,
                         "Coil: moment per curvature of one cable; usually 1e-4 to 2e-2 N.m2."))),
     &Cable::bending_stiffness_Nm2},
    {defaults_to(
         0, detail(field("friction", "Friction", kSmallTorque, kNotNegative,
                         "Torque with which the cables rub or the slip ring brakes; a slip ring "
                         "usually has 5 to 50 mN.m."))),
     &Cable::friction_Nm},
    {whole(detail(field("conductors", "Conductors", kNumber, {1, 1000},
                        "Wires in one cable, supply and return counted apart."))),
     &Cable::conductors},
    {detail(field("conductor", "Copper diameter", kMillimetre, kPositive,
                  "Of one wire's copper, as a diameter or as a gauge such as 24 AWG.")),
     &Cable::conductor_m},
    {detail(field("current", "Current in a wire", {"A", "A"}, kNotNegative,
                  "Lasting current that one wire carries.")),
     &Cable::current_A},
    {detail(field("supply_length", "Length to the supply", kMillimetre, kPositive,
                  "Of the whole lead, one way, for its voltage drop.")),
     &Cable::supply_length_m},
    {detail(field(
         "signal_bandwidth", "Signal bandwidth", {"Hz", "MHz"}, kPositive,
         "Highest frequency that has to pass, about half the bit rate of the camera's link.")),
     &Cable::signal_bandwidth_Hz},
    {whole(detail(
         field("ring_circuits", "Slip ring circuits", kNumber, {1, 1000}, "Rings that it has."))),
     &Cable::ring_circuits},
    {detail(field("ring_current", "Slip ring current", {"A", "A"}, kPositive,
                  "Lasting current that one ring may carry.")),
     &Cable::ring_current_A},
    {detail(field("ring_bandwidth", "Slip ring bandwidth", {"Hz", "MHz"}, kPositive,
                  "Highest frequency that the ring passes. In its data sheet.")),
     &Cable::ring_bandwidth_Hz},
};
constexpr ChoiceRow<Cable> kCableChoices[]{
    {{"routing", "Routing", kRoutings,
      "How the cable takes up the turning: by a twist along the axis (twist), a clock spring coil "
      "(coil), a hanging loop (loop), or a slip ring (slip_ring), whose brushes turn without end."},
     &Cable::routing},
};

constexpr PartTable<Cable> kCableTable{{}, kCable, kCableChoices};
}  // namespace

template <>
const PartTable<Cable>& table_of<Cable>() {
  return kCableTable;
}

}  // namespace gazewright
