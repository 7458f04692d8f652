#include "core/analysis/joint_case.h"

#include <algorithm>

#include "core/analysis/travel_words.h"
#include "core/words/words.h"

namespace gazewright {
JointTorque joint_torque(Context& c, Axis a) {
  const double stall = stall_torque_Nm(c.model(a));
  if (has_no_stops(c, a)) return {stall, false, {}};
  if (std::string missing = missing_of_bumper(c, a); !missing.empty())
    return {{}, false, std::move(missing)};
  const StopCase stop = stop_case(c, a);
  const double blow = stop.worst().torque_Nm;
  const double gears = gear_torque_Nm(blow, stop.push_Nm, stop.load_kgm2, stop.rotor_kgm2);
  const auto& sprung = c.sprung_blow(a);
  // The tab sits on the load, and the joint carries what the gear does; or it sits on the output,
  // and the joint slows the load down.
  const double load = stop.load_kgm2 / stop.inertia_kgm2() * (blow - stop.push_Nm);
  const double most = std::max({gears, load, sprung ? sprung->gear_torque_Nm : 0});
  return {std::max(stall, most), most > stall, {}};
}

bool is_in_plastic(const Joint& joint) {
  return joint.holds_in.value == "insert" || joint.holds_in.value == "print";
}

ScrewCase screw_case(Context& c, Axis a) {
  const Joint& joint = c.rig().axis(a).joint;
  ScrewCase screw{.thread = find_thread(joint.thread.value),
                  .strength = find_screw_class(joint.property_class.value),
                  .friction = joint.thread_friction.value(),
                  .because = {}};
  if (!screw) {
    screw.because = for_axis(words("needs %1", "<axis>.joint.thread"), a);
    return screw;
  }
  const JointRules& rules = joint_rules();
  const double K = nut_factor(*screw.thread, screw.friction);
  screw.preload_N = preload_N(joint.tightening_torque_Nm.value(), K, screw.thread->diameter_m);
  screw.least_N = screw.preload_N * (1 - rules.preload_scatter) *
                  (is_in_plastic(joint) ? rules.left_in_plastic : 1);
  screw.most_N = screw.preload_N * (1 + rules.preload_scatter);
  screw.stress_Pa = tightening_stress_Pa(*screw.thread, screw.friction, screw.preload_N);
  return screw;
}

std::optional<double> advised_torque_Nm(const Joint& joint) {
  const Thread* thread = find_thread(joint.thread.value);
  const ScrewClass* strength = find_screw_class(joint.property_class.value);
  if (thread == nullptr || strength == nullptr) return std::nullopt;
  const double friction = joint.thread_friction.value();
  const double of_screw =
      torque_for_stress_Nm(*thread, friction, joint_rules().of_proof * strength->proof_Pa);
  if (!is_in_plastic(joint)) return of_screw;
  if (!joint.pull_out_N.si) return std::nullopt;
  return std::min(of_screw, nut_factor(*thread, friction) * thread->diameter_m *
                                joint_rules().of_pull_out * *joint.pull_out_N.si);
}

Answer screw_pull_N(Context& c, Axis a) {
  const Carried& on = carried_of(c, a);
  if (!on.load) return Answer::none(on.because);
  const AxisParts& parts = c.rig().axis(a);
  return worst_screw_pull_N(on.load->moment_at_Nm(parts.gearbox.load_at_m.value()),
                            on.load->axial_N, parts.joint.screws.value(),
                            parts.joint.circle_diameter_m.value());
}

Answer shaft_hold_Nm(Context& c, Axis a) {
  const Joint& joint = c.rig().axis(a).joint;
  const double d = joint.shaft_diameter_m.value();
  if (joint.shaft.value == "clamp") {
    if (!joint.clamp_force_N.si)
      return Answer::none(for_axis(words("needs %1", "<axis>.joint.clamp_force"), a));
    return clamp_torque_Nm(joint.face_friction.value(), *joint.clamp_force_N.si, d);
  }
  if (!joint.shaft_length_m.si)
    return Answer::none(for_axis(words("needs %1", "<axis>.joint.shaft_length"), a));
  if (!joint.shaft_pressure_Pa.si)
    return Answer::none(for_axis(words("needs %1", "<axis>.joint.shaft_pressure"), a));
  const auto torque = joint.shaft.value == "flat" ? flat_torque_Nm : key_torque_Nm;
  return torque(*joint.shaft_pressure_Pa.si, *joint.shaft_length_m.si, d);
}

}  // namespace gazewright
