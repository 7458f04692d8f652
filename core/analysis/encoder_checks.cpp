#include <cmath>
#include <numbers>

#include "core/analysis/checks.h"
#include "core/analysis/commutation.h"
#include "core/analysis/magnet_values.h"
#include "core/analysis/say.h"
#include "core/units/angle.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kLeast = joined(kMagnet, std::array<InputPath, 1>{"<axis>.encoder.field_least"});
constexpr auto kMost = joined(kMagnet, std::array<InputPath, 1>{"<axis>.encoder.field_most"});
constexpr auto kError =
    joined(kMagnet, std::array<InputPath, 3>{"<axis>.encoder.magnet_offset",
                                             "<axis>.encoder.magnet_tilt", "<axis>.encoder.error"});

std::string at_gap(Context& c, Axis a) {
  return words("on the magnet's axis, %1 off its face",
               say(c.rig().axis(a).encoder.magnet_gap_m.value(), "m", "mm"));
}

Compared field_least(Context& c, Axis a) {
  return {c.rig().axis(a).encoder.field_least_T.value(), magnet_field_at_sensor_T(c, a),
          at_gap(c, a)};
}

Compared field_most(Context& c, Axis a) {
  return {magnet_field_at_sensor_T(c, a), c.rig().axis(a).encoder.field_most_T.value(),
          at_gap(c, a)};
}

Compared error(Context& c, Axis a) {
  const double stated = c.rig().axis(a).encoder.error_rad.value();
  const auto error = magnet_error_rad(c, a);
  if (!error)
    return {std::nullopt, stated,
            words("the sensor is more than half the magnet's radius off its axis"),
            Compared::Outcome::impossible};
  return {*error, stated,
          words("what offset and tilt bend the reading by, against the encoder's error")};
}

// cos 30° leaves 87 % of the torque: common practice, no source.
constexpr double kMostCommutationError_rad = 30 * kDegree_rad;

Compared commutation(Context& c, Axis a) {
  const CommutationError error = commutation_error(c, a);
  if (error.has_own_sensor) return moot(error.because);
  if (!error.electrical_rad) return {std::nullopt, kMostCommutationError_rad, error.because};
  const double off_rad = *error.electrical_rad;
  std::string text = off_rad < std::numbers::pi / 2
                         ? words("the motor gives %1 of its torque in the worst place",
                                 say_percent(std::cos(off_rad)))
                         : words("the motor may push the wrong way");
  if (off_rad <= kMostCommutationError_rad || !c.model(a).control.encoder_at_output)
    return {off_rad, kMostCommutationError_rad, std::move(text)};
  text += words(
      "; it is read through the gear's gap and spring: a drive that commutates by it "
      "wants a sensor at the motor, entered as its motor sensor");
  if (c.rig().axis(a).encoder.motor_sensor.value == "unstated")
    return {std::nullopt, std::nullopt, std::move(text), Compared::Outcome::doubtful};
  return {off_rad, kMostCommutationError_rad, std::move(text)};
}

constexpr Lever kCommutationLevers[] = {{"<axis>.encoder.error", Way::down, 20},
                                        {"<axis>.encoder.bits", Way::up, 3}};
constexpr Lever kLeastLevers[] = {{"<axis>.encoder.magnet_gap", Way::down, 10},
                                  {"<axis>.encoder.magnet_thickness", Way::up, 4}};
constexpr Lever kMostLevers[] = {{"<axis>.encoder.magnet_gap", Way::up, 10},
                                 {"<axis>.encoder.magnet_thickness", Way::down, 4}};
constexpr Lever kErrorLevers[] = {{"<axis>.encoder.magnet_offset", Way::down, 100},
                                  {"<axis>.encoder.magnet_tilt", Way::down, 100},
                                  {"<axis>.encoder.magnet_diameter", Way::up, 4},
                                  {"<axis>.encoder.error", Way::up, 20}};

const Check kEncoderChecks[] = {
    {.id = "<axis>.encoder.commutation",
     .what = "Encoder good enough to commutate by",
     .goal = "would let the drive commutate by it",
     .part = "<axis>.encoder",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kCommutation,
     .compare = commutation,
     .levers = kCommutationLevers},
    {.id = "<axis>.encoder.field_least",
     .what = "Field strong enough for the encoder",
     .goal = "would make the field strong enough",
     .part = "<axis>.encoder",
     .si_unit = "T",
     .unit = "mT",
     .inputs = kLeast,
     .compare = field_least,
     .levers = kLeastLevers,
     .asked_by = "<axis>.encoder.field_least"},
    {.id = "<axis>.encoder.field_most",
     .what = "Field weak enough for the encoder",
     .goal = "would make the field weak enough",
     .part = "<axis>.encoder",
     .si_unit = "T",
     .unit = "mT",
     .inputs = kMost,
     .compare = field_most,
     .levers = kMostLevers,
     .asked_by = "<axis>.encoder.field_most"},
    {.id = "<axis>.encoder.magnet",
     .what = "Magnet centred within the encoder's error",
     .goal = "would keep the magnet within the encoder's error",
     .part = "<axis>.encoder",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kError,
     .compare = error,
     .levers = kErrorLevers,
     .asked_by = "<axis>.encoder.magnet_offset"},
};

}  // namespace

std::span<const Check> encoder_checks() { return kEncoderChecks; }

}  // namespace gazewright
