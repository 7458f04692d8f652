#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/travel_words.h"

namespace gazewright {
namespace {

using Way = Lever::Way;
constexpr auto kImpact =
    joined(joined(kStall, kRotors),
           joined(kTopSpeed, std::array<InputPath, 2>{"<load>", "<axis>.stops.stiffness"}));

Compared impact(Context& c, Axis a) {
  if (has_no_stops(c, a)) return moot("there are no stops");
  const AxisModel& model = c.model(a);
  const double inertia = model.load.inertia_kgm2 + model.reflected_inertia_kgm2();
  const double top = top_speed_radps(model);
  const double stiffness = c.rig().axis(a).stops.stiffness_Nmprad.value();
  return {stop_torque_Nm(inertia, top, stiffness, stall_torque_Nm(model)),
          model.gear.peak_torque_Nm,
          "hitting the stop at " + say(top, "rad/s", "deg/s") + ", the drive still pushing; " +
              say(100 * model.reflected_inertia_kgm2() / inertia, "1", "1") +
              " % of the energy is the rotor's"};
}

constexpr Lever kImpactLevers[] = {{"<axis>.drive.speed_limit", Way::down, 20},
                                   {"<axis>.stops.stiffness", Way::down, 30}};

constexpr Check kChecks[] = {
    {"<axis>.stop.torque", "Stop torque at top speed against gearbox peak",
     "would spare the gearbox", "<axis>.stops", "N.m", "N.m", kImpact, impact, kImpactLevers},
};

}  // namespace

std::span<const Check> stop_checks() { return kChecks; }

}  // namespace gazewright
