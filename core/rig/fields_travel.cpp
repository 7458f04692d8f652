#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr QuantityRow<Stops> kStops[]{
    {field("tab_width", "Tab width", kMillimetre, kPositive,
           "Width of the tab that turns with the axis and meets the post; usually 4 to 20 mm."),
     &Stops::tab_width_m},
    {field("post_width", "Post width", kMillimetre, kPositive,
           "Width of the fixed post, along the circle on which they meet; usually 4 to 20 mm."),
     &Stops::post_width_m},
    {field("radius", "Radius", kMillimetre, kPositive,
           "From the axis to where tab and post meet; usually 15 to 80 mm."),
     &Stops::radius_m},
    {defaults_to(
         0,
         field("centre", "Centre", kDegrees, {-360 * kDegree_rad, 360 * kDegree_rad},
               "Axis angle half-way between the two ends; 0 deg when the post is right behind.")),
     &Stops::centre_rad},
    {field("soft_inset", "Soft limit inset", kDegrees, {0, 180 * kDegree_rad},
           "How far before each hard stop the drive's soft limit lies; usually 3 to 10 deg."),
     &Stops::soft_inset_rad},
    {field("stiffness", "Stop stiffness", kStiffness, kPositive,
           "Torque that presses the axis into the stop by an angle; usually 100 to 5000 N.m/rad, "
           "less with rubber."),
     &Stops::stiffness_Nmprad},
};

constexpr std::string_view kRoutings[]{"twist", "coil", "loop"};
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
    {field("bend_radius", "Bend radius", kMillimetre, kPositive,
           "Smallest radius for moving use; usually 7 to 10 outer diameters. In the cable's data "
           "sheet."),
     &Cable::bend_radius_m},
    {field("twist_rating", "Twist rating", {"rad/m", "deg/m"}, kPositive,
           "Twist that the cable bears each way per metre of free length; usually 180 to 1080 "
           "deg/m. In the cable's data "
           "sheet."),
     &Cable::twist_rating_radpm},
};
constexpr ChoiceRow<Cable> kCableChoices[]{
    {{"routing", "Routing", kRoutings,
      "How the cable takes up the turning: twist (along the axis), coil (like a clock spring) or "
      "loop (a hanging bend)."},
     &Cable::routing},
};

constexpr QuantityRow<Loop> kLoop[]{
    {field("position_gain", "Position gain", {"1/s", "1/s"}, kPositive,
           "Commanded output speed per angle of error; usually 10 to 80 1/s. In the drive's "
           "settings."),
     &Loop::position_gain_1ps},
    {field("speed_gain", "Speed gain", kDamping, kPositive,
           "Commanded output torque per output speed error; usually 0.1 to 10 N.m.s/rad. In the "
           "drive's settings."),
     &Loop::speed_gain_Nmsprad},
    {defaults_to(0, field("speed_integral_gain", "Speed integral gain", kStiffness, kNotNegative,
                          "Output torque that a lasting speed error adds, per angle it has missed; "
                          "usually 0 to 100 "
                          "N.m/rad.")),
     &Loop::speed_integral_gain_Nmprad},
    {defaults_to(
         kInfinity,
         or_none(field(
             "speed_limit", "Speed limit", kDegreesPerSecond, kPositive,
             "Output speed that the position loop never asks beyond; usually 200 to 1500 deg/s, or "
             "none."))),
     &Loop::speed_limit_radps},
    {field("estimator_bandwidth", "Speed estimator bandwidth", {"Hz", "Hz"}, kPositive,
           "Frequency up to which the drive's speed reading follows the encoder; usually 50 to "
           "1000 Hz. In the drive's "
           "settings."),
     &Loop::estimator_bandwidth_Hz},
};

constexpr PartTable<Stops> kStopsTable{{}, kStops, {}};
constexpr PartTable<Cable> kCableTable{{}, kCable, kCableChoices};
constexpr PartTable<Loop> kLoopTable{{}, kLoop, {}};
}  // namespace

template <>
const PartTable<Stops>& table_of<Stops>() {
  return kStopsTable;
}
template <>
const PartTable<Cable>& table_of<Cable>() {
  return kCableTable;
}
template <>
const PartTable<Loop>& table_of<Loop>() {
  return kLoopTable;
}

}  // namespace gazewright
