#include "core/rig/field_rows.h"

namespace gazewright {
using namespace rows;

namespace {
constexpr std::string_view kWays[]{"stop", "flag", "output", "second_encoder"};
constexpr std::string_view kNoOrYes[]{"no", "yes"};
constexpr ChoiceRow<Homing> kChoices[]{
    {{"by", "Homing by", kWays,
      "How the output angle is found after power-up: push to a stop (stop), pass a flag (flag), "
      "read "
      "an encoder at the output, or compare with a second encoder (second_encoder) of another "
      "ratio."},
     &Homing::by},
    {{"keeps_count", "Keeps count", kNoOrYes,
      "Whether the drive still knows the motor's turns after a restart."},
     &Homing::keeps_count},
};
constexpr QuantityRow<Homing> kHoming[]{
    {detail(field(
         "current", "Homing current", {"A", "A"}, kPositive,
         "Phase current amplitude with which it pushes to the stop; enough to beat friction, too "
         "little to hurt the gears.")),
     &Homing::current_A},
    {detail(field("speed", "Homing speed", kDegreesPerSecond, kPositive,
                  "Output speed while it looks for its stop or flag; usually 10 to 60 deg/s.")),
     &Homing::speed_radps},
    {detail(field("flag_error", "Flag error", kDegrees, kNotNegative,
                  "How far off the flag may be found, at the output; usually 0.2 to 1 deg.")),
     &Homing::flag_error_rad},
    {detail(field(
         "second_ratio", "Second encoder ratio", kNumber, kPositive,
         "Turns of the second encoder per turn of the output, for instance 17 beside a gearbox of "
         "18.")),
     &Homing::second_ratio},
    {detail(field("second_error", "Second encoder error", kDegrees, kNotNegative,
                  "Error of the second encoder in its own turns, gear play included; usually 0.2 "
                  "to 2 deg.")),
     &Homing::second_error_rad},
    {defaults_to(0,
                 detail(field("home", "Home", kDegrees, {-3600 * kDegree_rad, 3600 * kDegree_rad},
                              "Axis angle that it goes to once it knows where it is."))),
     &Homing::home_rad},
    {default_follows(
         "the home angle",
         detail(field("park", "Park", kDegrees, {-3600 * kDegree_rad, 3600 * kDegree_rad},
                      "Axis angle at which it is left when powered off."))),
     &Homing::park_rad},
};
constexpr PartTable<Homing> kTable{{}, kHoming, kChoices};
}  // namespace

template <>
const PartTable<Homing>& table_of<Homing>() {
  return kTable;
}

}  // namespace gazewright
