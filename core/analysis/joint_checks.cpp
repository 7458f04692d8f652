#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/field_value.h"
#include "core/analysis/joint_case.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kPulledOut = joined(kTightened, std::array<InputPath, 1>{"<axis>.joint.pull_out"});

bool is_screwed(Context& c, Axis a) {
  return c.rig().axis(a).joint.tightening_torque_Nm.si.has_value();
}
bool holds_in_plastic(Context& c, Axis a) {
  return is_screwed(c, a) && is_in_plastic(c.rig().axis(a).joint);
}
bool hangs_on_the_screws(Context& c, Axis a) {
  const AxisParts& parts = c.rig().axis(a);
  return carrier_of(parts) == Carrier::gearbox && parts.gearbox.load_at_m.si.has_value();
}

std::string say_torque(Context& c, Axis a, const JointTorque& torque) {
  if (torque.is_of_the_stop) return words("hitting the stop at top speed");
  return words("the motor at its limit, %1 either way",
               say(stall_torque_Nm(c.model(a)), "N.m", "N.m"));
}

std::string say_advice(const Joint& joint) {
  const auto advised = advised_torque_Nm(joint);
  return advised ? words("; advised is a tightening torque of %1", say(*advised, "N.m", "N.m"))
                 : std::string();
}

Compared slip(Context& c, Axis a) {
  const Joint& joint = c.rig().axis(a).joint;
  const JointTorque torque = joint_torque(c, a);
  const ScrewCase screw = screw_case(c, a);
  if (!screw) return {torque.Nm, std::nullopt, screw.because};
  const double holds = slip_torque_Nm(joint.face_friction.value(), joint.screws.value(),
                                      screw.least_N, joint.circle_diameter_m.value());
  if (!torque.Nm) return {std::nullopt, holds, torque.because};
  return {*torque.Nm, holds,
          words("%1; %2 of preload a screw to count on%3%4", say_torque(c, a, torque),
                say(screw.least_N, "N", "N"),
                is_in_plastic(joint) ? words(", as plastic creeps") : "", say_advice(joint))};
}

Compared stress(Context& c, Axis a) {
  const ScrewCase screw = screw_case(c, a);
  if (!screw) return {std::nullopt, std::nullopt, screw.because};
  return {screw.stress_Pa, screw.strength->proof_Pa,
          words("pull and twist together at %1 of preload%2", say(screw.preload_N, "N", "N"),
                say_advice(c.rig().axis(a).joint))};
}

Compared pull_out(Context& c, Axis a) {
  const Joint& joint = c.rig().axis(a).joint;
  const ScrewCase screw = screw_case(c, a);
  const double bears = joint.pull_out_N.value();
  if (!screw) return {std::nullopt, bears, screw.because};
  return {screw.most_N, bears,
          words("the largest preload that this torque may give, %1 above the mean%2",
                say_percent(joint_rules().preload_scatter), say_advice(joint))};
}

Compared lift(Context& c, Axis a) {
  const ScrewCase screw = screw_case(c, a);
  const Answer pull_N = screw_pull_N(c, a);
  if (!screw) return {pull_N.value, std::nullopt, screw.because};
  if (!pull_N.value) return {std::nullopt, screw.least_N, pull_N.because};
  return {
      pull_N.value, screw.least_N,
      words("what hangs on the joint pulls at its screws; beyond their preload the faces part")};
}

Compared shaft(Context& c, Axis a) {
  const JointTorque torque = joint_torque(c, a);
  const Answer hold_Nm = shaft_hold_Nm(c, a);
  if (!hold_Nm.value) return {torque.Nm, std::nullopt, hold_Nm.because};
  if (!torque.Nm) return {std::nullopt, hold_Nm.value, torque.because};
  return {torque.Nm, hold_Nm.value, say_torque(c, a, torque)};
}

/// As tight as the screws bear.
std::optional<Remedy> tighten(Context& c, Axis a) {
  const Joint& joint = c.rig().axis(a).joint;
  const auto advised = advised_torque_Nm(joint);
  if (!advised || *advised <= joint.tightening_torque_Nm.value()) return std::nullopt;
  const std::string path = for_axis("<axis>.joint.tightening_torque", a);
  const FieldInfo* info = find_info(path);
  const double torque_Nm = rounded_value(*info, *advised, false, 3);
  return Remedy{say_field(path, *info, torque_Nm), path, torque_Nm, {}};
}

constexpr Lever kSlipLevers[] = {
    {"<axis>.joint.screws", Way::up, 6},         {"<axis>.joint.circle_diameter", Way::up, 5},
    {"<axis>.joint.face_friction", Way::up, 5},  {"<axis>.stops.stiffness", Way::down, 30},
    {"<axis>.drive.speed_limit", Way::down, 20}, {"<axis>.drive.current_limit", Way::down, 20}};
constexpr Lever kTorqueLevers[] = {{"<axis>.joint.tightening_torque", Way::down, 20}};
constexpr Lever kPullOutLevers[] = {{"<axis>.joint.tightening_torque", Way::down, 20},
                                    {"<axis>.joint.pull_out", Way::up, 10}};
constexpr Lever kLiftLevers[] = {{"<axis>.joint.circle_diameter", Way::up, 5},
                                 {"<axis>.joint.screws", Way::up, 6},
                                 {"<axis>.gearbox.load_at", Way::down, 20}};
constexpr Lever kShaftLevers[] = {
    {"<axis>.joint.clamp_force", Way::up, 10},   {"<axis>.joint.shaft_length", Way::up, 6},
    {"<axis>.joint.shaft_pressure", Way::up, 6}, {"<axis>.joint.shaft_diameter", Way::up, 5},
    {"<axis>.stops.stiffness", Way::down, 30},   {"<axis>.drive.speed_limit", Way::down, 20}};

constexpr Check kJointChecks[] = {
    {"<axis>.joint.slip", "The screwed joint holds the largest torque",
     "would keep the joint from slipping", "<axis>.joint", "N.m", "N.m", kSlip, slip, kSlipLevers,
     nullptr, "<axis>.joint.screws", nullptr, tighten},
    {"<axis>.joint.stress",
     "Stress in the screws while tightening",
     "would spare the screws",
     "<axis>.joint",
     "Pa",
     "MPa",
     kTightened,
     stress,
     kTorqueLevers,
     nullptr,
     {},
     is_screwed},
    {"<axis>.joint.pull_out",
     "Preload against pulling the thread out",
     "would keep the thread in its hole",
     "<axis>.joint",
     "N",
     "N",
     kPulledOut,
     pull_out,
     kPullOutLevers,
     nullptr,
     {},
     holds_in_plastic},
    {"<axis>.joint.lift", "The joint's faces stay together", "would keep the faces together",
     "<axis>.joint", "N", "N", kPull, lift, kLiftLevers, nullptr, "<axis>.joint.screws",
     hangs_on_the_screws, tighten},
    {"<axis>.joint.shaft",
     "The shaft's hold bears the largest torque",
     "would keep the shaft from turning in its hold",
     "<axis>.joint",
     "N.m",
     "N.m",
     kShaftSlip,
     shaft,
     kShaftLevers,
     nullptr,
     {},
     has_shaft},
};

}  // namespace

std::span<const Check> joint_checks() { return kJointChecks; }

}  // namespace gazewright
