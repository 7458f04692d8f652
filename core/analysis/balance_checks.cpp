#include <algorithm>
#include <array>
#include <cmath>

#include "core/analysis/balance_values.h"
#include "core/analysis/checks.h"
#include "core/analysis/counterweight.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr double kShareOfStall = 0.2;  // common practice, no source
constexpr auto kGravityAndStall =
    joined(kStall, std::array<InputPath, 4>{"<load>", "on_pan", "tilt.axis_at",
                                            "<axis>.balance.counterweight_arm"});

constexpr InputPath kTiltDrive[]{"tilt.motor.mass", "tilt.gearbox.mass", "on_pan", "on_tilt",
                                 "tilt.axis_at"};

Compared leaves_torque(Context& c, Axis a) {
  const WorstGravity& worst = worst_gravity(c, a);
  const double stall = stall_torque_Nm(c.model(a));
  std::string text =
      words("a fifth of the stall torque %1 (common practice, no source) against gravity at %2",
            say(stall, "N.m", "N.m"), say(worst.at_rad, "rad", "deg"));
  if (const auto body = counterweight_of(c.rig(), c.bodies(), a))
    text +=
        words("; a counterweight of %1 would take it away", say(body->mass_kg.value(), "kg", "g"));
  return {worst.torque_Nm, kShareOfStall * stall, std::move(text)};
}

double tilt_drive_kg(Context& c) {
  return c.rig().tilt.motor.mass_kg.value() + c.rig().tilt.gearbox.mass_kg.value();
}

/// Whether a body weighs about as much as the motor, the gearbox or both, and may be them.
bool may_be_drive(const Body& body, const AxisParts& tilt) {
  constexpr double kAbout = 0.2;
  const double motor_kg = tilt.motor.mass_kg.value(), gear_kg = tilt.gearbox.mass_kg.value();
  const double weighs_kg = body.mass_kg.value();
  return std::ranges::any_of(std::array{motor_kg, gear_kg, motor_kg + gear_kg},
                             [&](double kg) { return std::abs(weighs_kg - kg) <= kAbout * kg; });
}

/// Whether the bodies on pan weigh less than tilt's motor and gearbox, and neither rides on tilt.
/// Asked once.
bool lacks_tilt_drive(Context& c, Axis a) {
  if (a != Axis::pan || !c.missing(kTiltDrive, a).empty()) return false;
  const auto may_be = [&](const Body& body) { return may_be_drive(body, c.rig().tilt); };
  return c.bodies().on_pan.mass_kg < tilt_drive_kg(c) &&
         std::ranges::none_of(c.rig().on_tilt, may_be);
}

Compared carries_tilt_drive(Context& c, Axis) {
  return {
      std::nullopt, std::nullopt,
      words("tilt's motor and gearbox weigh %1 together, the bodies on pan %2: enter them among "
            "those, they are usually much of its inertia",
            say(tilt_drive_kg(c), "kg", "g"), say(c.bodies().on_pan.mass_kg, "kg", "g")),
      Compared::Outcome::doubtful};
}

constexpr Lever kLevers[] = {{"<axis>.gearbox.ratio", Way::up, 10},
                             {"<axis>.drive.current_limit", Way::up, 6}};
constexpr Check kBalanceChecks[] = {
    {.id = "<axis>.balance.torque",
     .what = "Gravity leaves the motor most of its torque",
     .goal = "would leave most of the torque",
     .part = "<axis>.balance",
     .si_unit = "N.m",
     .unit = "N.m",
     .inputs = kGravityAndStall,
     .compare = leaves_torque,
     .levers = kLevers,
     .asked_by = "<axis>.balance.counterweight_arm",
     .offer = counterweight_remedy},
    {.id = "mass.tilt_drive",
     .what = "Tilt's drive is among the bodies on pan",
     .goal = {},
     .part = "on_pan",
     .si_unit = "kg",
     .unit = "g",
     .inputs = kTiltDrive,
     .compare = carries_tilt_drive,
     .levers = {},
     .asked_when = lacks_tilt_drive},
};

}  // namespace

std::span<const Check> balance_checks() { return kBalanceChecks; }

}  // namespace gazewright
