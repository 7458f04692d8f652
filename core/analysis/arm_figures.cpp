#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/analysis/arm_values.h"
#include "core/analysis/figures.h"
#include "core/analysis/say.h"
#include "core/loads/beam.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr const char* kBeam =
    "cantilever, Bansal, Strength of Materials, ch. 13; handbook: structure";
constexpr const char* kFrequency =
    "Rayleigh, 33/140 of the beam's mass (Blevins, from memory); handbook: structure";
constexpr const char* kModes =
    "rigid load on a beam element, all directions coupled; handbook: structure";
constexpr const char* kBodies = "statics of rigid bodies; handbook: structure";
constexpr const char* kThird = "a third of the arm's mode: common practice, no source";

constexpr std::array<InputPath, 4> kLoadAndRotors{
    "<load>", "<axis>.gearbox.ratio", "<axis>.motor.rotor_inertia", "<axis>.gearbox.inertia"};

/// A number of the support that the rig has, of one or the other.
template <double compute(const ArmCase&)>
Answer of_used(Context& c, Axis) {
  const ArmValues& values = arm_values(c);
  return values.because.empty() ? Answer(compute(values.used())) : Answer::none(values.because);
}
template <double compute(const ArmCase&), bool fork>
Answer of_either(Context& c, Axis) {
  const ArmValues& values = arm_values(c);
  if (!values.because.empty()) return Answer::none(values.because);
  return compute(fork ? values.fork : values.side);
}

double arms(const ArmCase& arm) { return arm.beam.is_fork ? 2 : 1; }
double mass_kg(const ArmCase& arm) { return arm.beam.mass_kg(); }
double carried_kg(const ArmCase& arm) { return arm.load.mass_kg; }
double overhang_m(const ArmCase& arm) { return std::abs(arm.load.p_OC_m.y()); }
double sink_m(const ArmCase& arm) { return arm.droop.sink_m; }
double angle_rad(const ArmCase& arm) { return arm.droop.angle_rad; }
double sideways_m(const ArmCase& arm) { return arm.droop.sideways_m; }
double first_Hz(const ArmCase& arm) { return arm.modes.first_Hz; }
double inertia_kgm2(const ArmCase& arm) { return arm.inertia_kgm2; }

double bending_Hz(const ArmCase& arm) {
  const SectionValues& s = arm.beam.values;
  const double EI = arm.beam.modulus_Pa * std::min(s.width_m4, s.height_m4) * arms(arm);
  return bending_frequency_Hz(EI, arm.beam.length_m, arm.load.mass_kg, arm.beam.mass_kg());
}

Answer torsion_Hz(Context& c, Axis) {
  const ArmValues& values = arm_values(c);
  if (!values.because.empty()) return Answer::none(values.because);
  if (values.is_fork) return Answer::aside(words("the arms of a fork bend instead of twisting"));
  const ArmBeam& beam = values.side.beam;
  const double w = beam.section.width_m, h = beam.section.height_m;
  return torsion_frequency_Hz(beam.shear_modulus_Pa() * beam.values.torsion_m4, beam.length_m,
                              values.side.load.I_O_kgm2(2, 2),
                              beam.arm_kg() * (w * w + h * h) / 12);
}

Answer stress(Context& c, Axis) {
  const ArmValues& values = arm_values(c);
  if (!values.because.empty()) return Answer::none(values.because);
  if (std::string needs = needs_of_both(c, kRigidTrain); !needs.empty())
    return Answer::none(std::move(needs));
  return arm_stress_Pa(c, values.used());
}

Answer mode_Hz(Context& c, Axis a, double part) {
  const ArmValues& values = arm_values(c);
  if (!values.because.empty()) return Answer::none(values.because);
  return part * values.used().modes.of(a);
}

Answer gain_ceiling(Context& c, Axis a) {
  const ArmValues& values = arm_values(c);
  if (!values.because.empty()) return Answer::none(values.because);
  if (const auto missing = c.missing(kLoadAndRotors, a); !missing.empty())
    return Answer::none(say_needs(missing));
  const AxisModel& model = c.model(a);
  return (model.load.inertia_kgm2 + model.reflected_inertia_kgm2()) * 2 * std::numbers::pi *
         values.used().modes.of(a) / 3;
}

const FigureRow kArmFigures[] = {
    {{"arm.carried", "Mass that the arm's end carries", "kg", "g",
      "on_tilt and the bodies of on_pan in the last quarter of the arm's height", kBodies,
      kArmSize},
     Axes::rig,
     of_used<carried_kg>,
     true},
    {{"arm.mass", "Mass of the arm", "kg", "g", "density·area·length, two arms of a fork", kBodies,
      kArmSize},
     Axes::rig,
     of_used<mass_kg>,
     true},
    {{"arm.overhang", "Load beside the arm", "m", "mm",
      "from the arm's middle to the load's centre, along the tilt axis", kBodies, kArmSize},
     Axes::rig,
     of_used<overhang_m>,
     true},
    {{"arm.droop", "Droop of the load", "m", "mm",
      "side: (m·g·e·L/EI)·e + m·g·L/EA; fork: m·g·L/2EA", kBeam, kArmSize},
     Axes::rig,
     of_used<sink_m>,
     true},
    {{"arm.droop_angle", "Tilt axis out of the level", "rad", "deg",
      "side: m·g·(e·cos λ·L/EI + sin λ·L²/2EI) + own weight; fork: by its pressed arms", kBeam,
      kArmSize},
     Axes::rig,
     of_used<angle_rad>,
     true},
    {{"arm.sideways", "Arm's end to the side", "m", "mm",
      "side: M·L²/2EI + F·L³/3EI + own weight; fork: F·L³/6EI", kBeam, kArmSize},
     Axes::rig,
     of_used<sideways_m>,
     true},
    {{"arm.bending_mode", "Bending, load as a point", "Hz", "Hz",
      "√(3EI/(L³(M + 33/140·m)))/2π, the weaker direction", kFrequency, kArmSize},
     Axes::rig,
     of_used<bending_Hz>,
     true},
    {{"arm.torsion_mode", "Torsion, arm's end held in place", "Hz", "Hz",
      "√(GJ/(L(I + I_arm/3)))/2π", kFrequency, kArmSize},
     Axes::rig,
     torsion_Hz,
     true},
    {{"arm.first_mode", "First mode of the arm", "Hz", "Hz", "lowest of det(K − ω²M) = 0, 6 by 6",
      kModes, kArmSize},
     Axes::rig,
     of_used<first_Hz>,
     true},
    {{"<axis>.arm.mode", "First mode that the axis' drive shakes", "Hz", "Hz",
      "lowest with 5 % of the inertia about the axis", kModes, kArmSize},
     Axes::both,
     [](Context& c, Axis a) { return mode_Hz(c, a, 1); },
     true},
    {{"<axis>.arm.crossover_ceiling", "Speed loop crosses 1 below", "Hz", "Hz", "mode/3", kThird,
      kArmSize},
     Axes::both,
     [](Context& c, Axis a) { return mode_Hz(c, a, 1.0 / 3); },
     true},
    {{"<axis>.arm.speed_gain_ceiling", "Speed gain that the arm bears", "N.m.s/rad", "N.m.s/rad",
      "(load + rotor_reflected)·2π·mode/3", kThird, kArmSize},
     Axes::both,
     gain_ceiling,
     true},
    {{"arm.stress", "Largest stress where the arm is held", "Pa", "MPa",
      "√(σ² + 3τ²): weight, both axes' largest accelerations at once",
      "beam theory, von Mises; handbook: structure", kArmSize},
     Axes::rig,
     stress,
     true},
    {{"arm.side.droop", "Droop with one arm", "m", "mm", "as arm.droop, support side", kBeam,
      kArmSize},
     Axes::rig,
     of_either<sink_m, false>,
     true},
    {{"arm.fork.droop", "Droop with a fork", "m", "mm", "as arm.droop, support fork", kBeam,
      kArmSize},
     Axes::rig,
     of_either<sink_m, true>,
     true},
    {{"arm.side.first_mode", "First mode with one arm", "Hz", "Hz", "as arm.first_mode", kModes,
      kArmSize},
     Axes::rig,
     of_either<first_Hz, false>,
     true},
    {{"arm.fork.first_mode", "First mode with a fork", "Hz", "Hz", "as arm.first_mode", kModes,
      kArmSize},
     Axes::rig,
     of_either<first_Hz, true>,
     true},
    {{"arm.side.inertia", "Pan inertia of one arm", "kg.m2", "g.m2", "m·(x² + y² + (w² + h²)/12)",
      "parallel-axis theorem; handbook: structure", kArmSize},
     Axes::rig,
     of_either<inertia_kgm2, false>,
     true},
    {{"arm.fork.inertia", "Pan inertia of a fork's arms", "kg.m2", "g.m2",
      "m·(x² + y² + (w² + h²)/12) of both", "parallel-axis theorem; handbook: structure", kArmSize},
     Axes::rig,
     of_either<inertia_kgm2, true>,
     true},
};

}  // namespace

std::span<const FigureRow> arm_figures() { return kArmFigures; }

}  // namespace gazewright
