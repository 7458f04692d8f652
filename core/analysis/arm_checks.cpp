#include <numbers>

#include "core/analysis/arm_values.h"
#include "core/analysis/checks.h"
#include "core/analysis/crossover.h"
#include "core/analysis/say.h"
#include "core/data/materials.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

// Of the static strength, for a load that comes back with every move: common practice, no source.
constexpr double kLastingShare = 1.0 / 3;
constexpr auto kCrossover = joined(kArmCarries, kLoops);
constexpr InputPath kName[]{"surroundings.temperature"};

std::string compared_supports(const ArmValues& values, Axis axis) {
  const ArmCase& other = values.is_fork ? values.side : values.fork;
  return words("%1 would have %2 and %3 of droop at %4 instead of %5 of pan inertia",
               values.is_fork ? words("; a single arm") : words("; a fork"),
               say(other.modes.of(axis), "Hz", "Hz"), say(other.droop.sink_m, "m", "mm"),
               say(other.inertia_kgm2, "kg.m2", "g.m2"),
               say(values.used().inertia_kgm2, "kg.m2", "g.m2"));
}

Compared strength(Context& c, Axis) {
  const ArmValues& values = arm_values(c);
  if (!values.because.empty()) return {std::nullopt, std::nullopt, values.because};
  if (std::string needs = needs_of_both(c, kRigidTrain); !needs.empty())
    return {std::nullopt, std::nullopt, std::move(needs)};
  const double stress = arm_stress_Pa(c, values.used());
  if (!values.strength_because.empty()) return {stress, std::nullopt, values.strength_because};
  return {
      stress, kLastingShare * values.strength_Pa,
      words(
          "weight and the largest accelerations of both axes at once, against a third of %1's "
          "least strength, %2, because it comes back with every move (common practice, no source)",
          c.rig().arm.material, say(values.strength_Pa, "Pa", "MPa"))};
}

Compared crossover(Context& c, Axis a) {
  const ArmValues& values = arm_values(c);
  if (!values.because.empty()) return {std::nullopt, std::nullopt, values.because};
  const double mode_Hz = values.used().modes.of(a);
  const auto& crossover = c.loops(a).speed.crossover_radps;
  if (!crossover)
    return without_crossover(
        c, a, mode_Hz,
        words("the gain of the speed loop stays below 1: it does not shake the arm"));
  const double crossover_Hz = *crossover / (2 * std::numbers::pi);
  return {kModeAboveLoop * crossover_Hz, mode_Hz,
          words("the speed loop crosses 1 at %1; three times that should lie below the arm's first "
                "mode about this axis (common practice, no source)%2",
                say(crossover_Hz, "Hz", "Hz"), compared_supports(values, a))};
}

Compared material(Context& c, Axis) {
  std::string problem = material_problem(c.rig(), c.rig().arm.material);
  if (problem.empty()) return moot(words("the material is known"));
  return {std::nullopt, std::nullopt, std::move(problem), Compared::Outcome::impossible};
}

bool once(Context&, Axis axis) { return axis == Axis::pan; }
bool is_unknown(Context& c, Axis axis) {
  return once(c, axis) && !material_problem(c.rig(), c.rig().arm.material).empty();
}

constexpr Lever kStrengthLevers[] = {{"arm.height", Way::up, 4},
                                     {"arm.width", Way::up, 4},
                                     {"arm.wall", Way::up, 6},
                                     {"pan.drive.current_limit", Way::down, 10}};
constexpr Lever kCrossoverLevers[] = {{"arm.height", Way::up, 4},
                                      {"arm.length", Way::down, 3},
                                      {"arm.width", Way::up, 4},
                                      {"<axis>.loop.speed_gain", Way::down, 20}};

constexpr Check kArmChecks[] = {
    {.id = "arm.strength",
     .what = "Arm bears the largest acceleration",
     .goal = "would spare the arm",
     .part = "arm",
     .si_unit = "Pa",
     .unit = "MPa",
     .inputs = kArmCarries,
     .compare = strength,
     .levers = kStrengthLevers,
     .asked_by = "arm.length",
     .asked_when = once},
    {.id = "<axis>.arm.crossover",
     .what = "Speed loop stays below the arm's first mode",
     .goal = "would keep the loop off the arm's first mode",
     .part = "arm",
     .si_unit = "Hz",
     .unit = "Hz",
     .inputs = kCrossover,
     .compare = crossover,
     .levers = kCrossoverLevers,
     .asked_by = "arm.length"},
    {.id = "arm.material",
     .what = "Arm's material is known",
     .goal = "would give it its values",
     .part = "arm",
     .si_unit = "1",
     .unit = "1",
     .inputs = kName,
     .compare = material,
     .levers = {},
     .asked_when = is_unknown},
};

}  // namespace

std::span<const Check> arm_checks() { return kArmChecks; }

}  // namespace gazewright
