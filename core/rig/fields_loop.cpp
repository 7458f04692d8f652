#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
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
    {defaults_to(0, detail(field("speed_feed_forward", "Speed feed-forward", kNumber, {0, 1.5},
                                 "Part of a planned move's speed that is added to the speed "
                                 "command; 1 is all of it."))),
     &Loop::speed_feed_forward},
    {defaults_to(0, detail(field("acceleration_feed_forward", "Acceleration feed-forward", kNumber,
                                 {0, 1.5},
                                 "Part of the torque that a planned move needs for its "
                                 "acceleration and that is added to the torque command; 1 is all "
                                 "of it."))),
     &Loop::acceleration_feed_forward},
    {default_follows(
         "80 % of what the axis can do",
         detail(field("acceleration_limit", "Acceleration limit", {"rad/s2", "deg/s2"}, kPositive,
                      "Largest acceleration of a planned move, at the output; usually "
                      "2000 to 50 000 deg/s2."))),
     &Loop::acceleration_limit_radps2},
    {default_follows("so that the jerk takes a quarter of the time of speeding up",
                     detail(field("jerk_limit", "Jerk limit", {"rad/s3", "deg/s3"}, kPositive,
                                  "Fastest change of a planned move's acceleration, at the "
                                  "output; usually 1e5 to 1e7 deg/s3."))),
     &Loop::jerk_limit_radps3},
    {detail(field("wanted_bandwidth", "Wanted bandwidth", {"Hz", "Hz"}, kPositive,
                  "Crossover of the speed loop that the advised gains aim at; left out they aim "
                  "as high as is sound.")),
     &Loop::wanted_bandwidth_Hz},
    {defaults_to(
         45 * kDegree_rad,
         detail(field("wanted_margin", "Wanted phase margin", kDegrees, {0, 90 * kDegree_rad, true},
                      "Phase margin that the advised gains keep; usually 40 to 60 deg."))),
     &Loop::wanted_margin_rad},
};

constexpr QuantityRow<Bracket> kBracket[]{
    {detail(field("stiffness", "Bracket stiffness", kStiffness, kPositive,
                  "Torque that bends the arm between the output and the camera by an angle; "
                  "usually 100 to 20 000 N.m/rad. Hold the output and pull at the camera.")),
     &Bracket::stiffness_Nmprad},
    {defaults_to(0.02, detail(field("damping_ratio", "Bracket damping", kNumber, {0, 1},
                                    "Damping ratio of its swinging; 0.01 to 0.02 for metal, 0.02 "
                                    "to 0.05 for prints."))),
     &Bracket::damping_ratio},
};

constexpr PartTable<Loop> kLoopTable{{}, kLoop, {}};
constexpr PartTable<Bracket> kBracketTable{{}, kBracket, {}};
}  // namespace

template <>
const PartTable<Loop>& table_of<Loop>() {
  return kLoopTable;
}
template <>
const PartTable<Bracket>& table_of<Bracket>() {
  return kBracketTable;
}

}  // namespace gazewright
