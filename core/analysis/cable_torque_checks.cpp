#include <algorithm>

#include "core/analysis/cable_load.h"
#include "core/analysis/checks.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kCableAndMotor =
    joined(joined(kStall, kCableTorque),
           std::array<InputPath, 3>{"<load>", "<axis>.friction.coulomb", "<axis>.gearbox.drag"});

Compared cable_torque(Context& c, Axis a) {
  const double rubs = cable_friction_Nm(c.rig().axis(a).cable);
  const double others = held_back(c.model(a)).sum_Nm() - rubs;
  const double left = std::max(0.0, stall_torque_Nm(c.model(a)) - others);
  const auto wound = cable_wound_Nm(c, a);
  if (!wound) return {std::nullopt, left, kWindsUnknown};
  return {*wound + rubs, left,
          words("wound up %1, rubbing %2; friction, gravity and drag take %3 of the motor's; "
                "cables can be several times as stiff in the cold",
                say(*wound, "N.m", "N.m"), say(rubs, "N.m", "N.m"), say(others, "N.m", "N.m"))};
}

constexpr Lever kLevers[] = {{"<axis>.cable.free_length", Way::up, 20},
                             {"<axis>.gearbox.ratio", Way::up, 20},
                             {"<axis>.drive.current_limit", Way::up, 10}};

constexpr Check kCableTorqueChecks[] = {
    {"<axis>.cable.torque",
     "Torque left for the cable",
     "would leave the torque for the cable",
     "<axis>.cable",
     "N.m",
     "N.m",
     kCableAndMotor,
     cable_torque,
     kLevers,
     nullptr,
     {},
     has_cable_torque},
};

}  // namespace

std::span<const Check> cable_torque_checks() { return kCableTorqueChecks; }

}  // namespace gazewright
