#include "core/analysis/figures.h"
#include "core/analysis/joint_case.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kBlow = "energy balance of the blow; handbook: loads";
constexpr const char* kScrew = "T = K·d·F; handbook: loads";
constexpr const char* kIso898 = "ISO 898-1, von Mises; handbook: loads";
constexpr const char* kCoulomb = "Coulomb friction; handbook: loads";

Answer torque(Context& c, Axis a) {
  JointTorque most = joint_torque(c, a);
  return {most.Nm, std::move(most.because)};
}

template <double ScrewCase::*part>
Answer of_screw(Context& c, Axis a) {
  const ScrewCase screw = screw_case(c, a);
  return screw ? Answer(screw.*part) : Answer::aside(screw.because);
}

Answer slip_torque(Context& c, Axis a) {
  const ScrewCase screw = screw_case(c, a);
  if (!screw) return Answer::aside(screw.because);
  const Joint& joint = c.rig().axis(a).joint;
  return slip_torque_Nm(joint.face_friction.value(), joint.screws.value(), screw.least_N,
                        joint.circle_diameter_m.value());
}

Answer advised_torque(Context& c, Axis a) {
  const Joint& joint = c.rig().axis(a).joint;
  const auto advised = advised_torque_Nm(joint);
  if (advised) return *advised;
  const bool has_thread = find_thread(joint.thread.value) != nullptr;
  const char* what = has_thread ? "<axis>.joint.pull_out" : "<axis>.joint.thread";
  return Answer::aside(for_axis(words("needs %1", what), a));
}

Answer engagement(Context& c, Axis a) {
  const Joint& joint = c.rig().axis(a).joint;
  const Thread* thread = find_thread(joint.thread.value);
  if (thread == nullptr)
    return Answer::aside(for_axis(words("needs %1", "<axis>.joint.thread"), a));
  if (joint.holds_in.value != "metal")
    return Answer::aside(words("the thread is not cut into metal"));
  return thread_engagement_m(*thread);
}

Answer pull(Context& c, Axis a) {
  if (carrier_of(c.rig().axis(a)) != Carrier::gearbox)
    return Answer::aside(words("bearings of its own carry the load"));
  return screw_pull_N(c, a);
}

Answer shaft_torque(Context& c, Axis a) {
  return has_shaft(c, a) ? shaft_hold_Nm(c, a)
                         : Answer::aside(words("the load does not sit on a shaft"));
}

const FigureRow kJointFigures[] = {
    {{"<axis>.joint.torque", "Largest torque that reverses in the joint", "N.m", "N.m",
      "the largest of torque_stall, the stop's blow through the gear, and what slows the load in "
      "it",
      kBlow, kSprungBlow},
     Axes::both,
     torque},
    {{"<axis>.joint.preload", "Preload of a screw as tightened", "N", "N",
      "tightening_torque/(K·d), K = (0.159·P + 0.578·d2·µ + head/2·µ)/d", kScrew, kTightened},
     Axes::both,
     of_screw<&ScrewCase::preload_N>,
     true},
    {{"<axis>.joint.preload_least", "Preload of a screw to count on", "N", "N",
      "preload less 35 % of scatter, half of that in plastic; as shipped, data file joints",
      "SAND2008-0371; handbook: loads", kTightened},
     Axes::both,
     of_screw<&ScrewCase::least_N>,
     true},
    {{"<axis>.joint.preload_most", "Largest preload of a screw", "N", "N",
      "preload and 35 % of scatter; as shipped, data file joints", "SAND2008-0371; handbook: loads",
      kTightened},
     Axes::both,
     of_screw<&ScrewCase::most_N>,
     true},
    {{"<axis>.joint.screw_stress", "Stress in a screw while tightening", "Pa", "MPa",
      "√(σ² + 3τ²), σ = preload/As, τ of the thread's part of the torque", kIso898, kTightened},
     Axes::both,
     of_screw<&ScrewCase::stress_Pa>,
     true},
    {{"<axis>.joint.slip_torque", "Torque at which the screwed joint slips", "N.m", "N.m",
      "face_friction·screws·preload_least·circle_diameter/2", kCoulomb, kScrews},
     Axes::both,
     slip_torque,
     true},
    {{"<axis>.joint.advised_torque",
      "Advised tightening torque",
      "N.m",
      "N.m",
      "to 80 % of the proof stress, in plastic to half of the pull-out force at most",
      "common practice, no source; handbook: loads",
      {}},
     Axes::both,
     advised_torque,
     true},
    {{"<axis>.joint.engagement",
      "Engagement for a thread as strong as the screw",
      "m",
      "mm",
      "2·As/(0.5·π·(d − 0.6495·P)), same material",
      "FED-STD-H28, simplified; from memory",
      {}},
     Axes::both,
     engagement,
     true},
    {{"<axis>.joint.screw_pull", "Pull of the load on the worst screw", "N", "N",
      "4·(radial·load_at + moment)/(screws·circle_diameter) + axial/screws",
      "statics; handbook: loads", kPull},
     Axes::both,
     pull,
     true},
    {{"<axis>.joint.shaft_torque", "Torque that the shaft's hold passes on", "N.m", "N.m",
      "clamp µ·F·d; flat p·L·(0.6·d)²/12; key p·L·d²/16", "statics; handbook: loads", kShaft},
     Axes::both,
     shaft_torque,
     true},
};

}  // namespace

std::span<const FigureRow> joint_figures() { return kJointFigures; }

}  // namespace gazewright
