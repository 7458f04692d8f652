#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

using Way = Lever::Way;
constexpr auto kHomingTurn = joined(
    kResonance, std::array<InputPath, 5>{"<axis>.friction.coulomb", "<axis>.gearbox.drag",
                                         "<axis>.gearbox.backlash", "<axis>.gearbox.efficiency",
                                         "<axis>.stops.stiffness"});

/// Pushing gently into a stop tells where the output is within the gap and the wind-up of friction;
/// encoder readings repeat every turn of the motor.
Compared homing_turn(Context& c, Axis a) {
  if (has_no_stops(c, a)) return moot("there are no stops to home against");
  const AxisModel& model = c.model(a);
  if (model.control.encoder_at_output) return moot("the encoder reads the output");
  const double push =
      model.load.coulomb_Nm + model.gear.efficiency * model.gear.ratio * model.gear.drag_Nm;
  const double stiffness = c.rig().axis(a).stops.stiffness_Nmprad.value();
  const double unsure =
      model.gear.backlash_rad / 2 + push * (1 / stiffness + 1 / model.gear.stiffness_Nmprad);
  return {unsure, M_PI / model.gear.ratio,
          "a stop found with just more torque than friction, against half the " +
              say(2 * M_PI / model.gear.ratio, "rad", "deg") + " between equal readings"};
}

constexpr Lever kHomingLevers[] = {{"<axis>.stops.stiffness", Way::up, 100},
                                   {"<axis>.gearbox.backlash", Way::down, 100},
                                   {"<axis>.gearbox.ratio", Way::down, 50}};

constexpr Check kChecks[] = {
    {"<axis>.homing.turn", "A stop tells the motor's turns apart", "would tell the turns apart",
     "<axis>.encoder", "rad", "deg", kHomingTurn, homing_turn, kHomingLevers},
};

}  // namespace

std::span<const Check> homing_checks() { return kChecks; }

}  // namespace gazewright
