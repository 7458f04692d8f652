#include "core/analysis/commutation.h"

#include <numbers>

#include "core/analysis/say.h"
#include "core/pointing/pointing_errors.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kBehindGear =
    joined(kStall, std::array<InputPath, 2>{"<axis>.gearbox.backlash", "<axis>.gearbox.stiffness"});

}  // namespace

CommutationError commutation_error(Context& c, Axis a) {
  const Encoder& encoder = c.rig().axis(a).encoder;
  const AxisModel& model = c.model(a);
  const bool at_output = model.control.encoder_at_output;
  if (at_output && encoder.motor_sensor.value == "yes")
    return {{}, words("the motor has a sensor of its own"), true};
  double off_rad = reading_error(model, encoder.error_rad.value(), at_output).half_width_rad();
  if (at_output) {
    if (const auto missing = c.missing(kBehindGear, a); !missing.empty())
      return {{}, say_needs(missing), false};
    off_rad += model.gear.backlash_rad / 2 + stall_torque_Nm(model) / model.gear.stiffness_Nmprad;
  }
  return {model.drive.pole_pairs * model.gear.ratio * off_rad, {}, false};
}

double samples_per_electrical_turn(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const double field_radps = model.drive.pole_pairs * model.gear.ratio * top_speed_radps(model);
  return 2 * std::numbers::pi * model.control.control_rate_Hz / field_radps;
}

}  // namespace gazewright
