#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/figures.h"
#include "core/analysis/heat_values.h"
#include "core/analysis/say.h"
#include "core/data/materials.h"
#include "core/heat/limits.h"
#include "core/rig/fields.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

using Outcome = Compared::Outcome;

constexpr auto kWinding = joined(kDutyHeat, kWindingLimit);
constexpr auto kHold = joined(kHoldHeat, kWindingLimit);
constexpr std::array<InputPath, 1> kHousingPart{"<axis>.motor.winding_to_housing"};
constexpr std::array<InputPath, 1> kMagnetLimit{"<axis>.motor.magnet_limit"};
constexpr std::array<InputPath, 1> kBearingLimit{"<axis>.motor.bearing_limit"};
constexpr auto kMagnets = joined(kDutyHeat, kMagnetLimit);
constexpr auto kBearings = joined(kDutyHeat, kBearingLimit);
constexpr std::array<InputPath, 2> kPace{kWholeStep[0], "task.duty.moves_per_minute"};
constexpr std::array<InputPath, 1> kDutyList{"duty"};
constexpr auto kDutyInTravel = joined(kUsable, kDutyList);

std::string celsius(double temperature_K) { return say(temperature_K, "K", "degC"); }

/// Rises over the air: temperatures themselves have no meaningful ratio. No rise is less than a
/// thermometer shows, so that a margin stays a ratio.
Compared rises(Context& c, Axis a, double at_K, double limit_K, std::string because) {
  constexpr double kLeastRise_K = 1e-3;
  const double air_K = motor_thermal(c, a).air_K;
  Compared compared{std::max(at_K - air_K, kLeastRise_K), limit_K - air_K, std::move(because)};
  if (!(limit_K > air_K)) compared.outcome = Outcome::impossible;
  return compared;
}
Compared runaway(const std::string& what) {
  return {std::nullopt, std::nullopt,
          words("thermal runaway %1: the copper's loss outgrows the cooling, there is no steady "
                "temperature",
                what),
          Outcome::impossible};
}

/// A comparison where the duty has temperatures; else why it has none.
template <class Compare>
Compared by_duty(Context& c, Axis a, Compare compare) {
  if (std::string why = why_no_thermal(c, a); !why.empty()) return {{}, {}, why};
  const DutyHeat& duty = duty_heat(c, a);
  if (!duty.because.empty()) {
    const Outcome outcome =
        begins_as("needs %1", duty.because) ? Outcome::by_numbers : Outcome::impossible;
    return {{}, {}, duty.because, outcome};
  }
  const auto& at = duty_temperatures(c, a);
  return at ? compare(duty, at->hottest) : runaway(words("over the duty"));
}

Compared winding(Context& c, Axis a) {
  return by_duty(c, a, [&](const DutyHeat& duty, const Temperatures& hottest) {
    const double limit_K = c.rig().axis(a).motor.winding_limit_K.value();
    std::string text = words("%1 at %2 RMS over the duty, %3, air %4, limit %5",
                             celsius(hottest.winding_K), say(duty.rms_current_A, "A", "A"),
                             duty_type(duty), celsius(motor_thermal(c, a).air_K), celsius(limit_K));
    if (!duty.settles)
      text += words("; a move never settles: what still swings at its end goes on until the next");
    if (duty.estimated > 0)
      text += words("; %1 moves are scaled from the task's", std::to_string(duty.estimated));
    return rises(c, a, hottest.winding_K, limit_K, std::move(text));
  });
}

Compared hold(Context& c, Axis a) {
  if (std::string why = why_no_thermal(c, a); !why.empty()) return {{}, {}, why};
  const HoldHeat& held = hold_heat(c, a);
  const double limit_K = c.rig().axis(a).motor.winding_limit_K.value();
  std::string holding = words("holding %1 with %2 in one winding", say(held.pull_Nm, "N.m", "N.m"),
                              say(held.current_A, "A", "A"));
  if (!held.at) return runaway(holding);
  if (held.wanted_A > held.current_A)
    holding += words(", all that the current limit leaves of %1", say(held.wanted_A, "A", "A"));
  return rises(c, a, held.at->winding_K, limit_K,
               words("%1 %2, limit %3", celsius(held.at->winding_K), holding, celsius(limit_K)));
}

std::string material_word(const Motor& motor) {
  return motor.mount_material.empty() ? words("the bracket") : motor.mount_material;
}

std::string why_no_mount_limit(const Rig& rig, const std::string& material) {
  std::string problem = material_problem(rig, material);
  if (problem.empty())
    problem = words("no softening temperature is entered for the material “%1”", material);
  return words("%1; or enter motor.mount_limit", problem);
}

Compared mount(Context& c, Axis a) {
  const Motor& motor = c.rig().axis(a).motor;
  const auto limit_K = mount_limit_K(c.rig(), a);
  if (!limit_K) return {{}, {}, why_no_mount_limit(c.rig(), motor.mount_material)};
  return by_duty(c, a, [&](const DutyHeat&, const Temperatures& hottest) {
    double at_K = mount_K(c, a, hottest.housing_K);
    std::string when = words("over the duty");
    if (c.missing(kHoldHeat, a).empty()) {
      const auto& held = hold_heat(c, a).at;
      if (!held) return runaway(words("holding the worst angle"));
      if (const double hold_K = mount_K(c, a, held->housing_K); hold_K > at_K) {
        at_K = hold_K;
        when = words("holding the worst angle");
      }
    }
    std::string text = words("%1 at the motor %2, %3 gives way at %4", celsius(at_K), when,
                             material_word(motor), celsius(*limit_K));
    if (!motor_thermal(c, a).has_two_nodes())
      text +=
          words("; without winding_to_housing the bracket is taken to be as hot as the winding");
    return rises(c, a, at_K, *limit_K, std::move(text));
  });
}

Compared magnets(Context& c, Axis a) {
  return by_duty(c, a, [&](const DutyHeat&, const Temperatures& hottest) {
    const double limit_K = c.rig().axis(a).motor.magnet_limit_K.value();
    return rises(
        c, a, magnet_K(hottest), limit_K,
        words("%1, between winding and housing, limit %2; above it they lose strength for good",
              celsius(magnet_K(hottest)), celsius(limit_K)));
  });
}

Compared bearings(Context& c, Axis a) {
  return by_duty(c, a, [&](const DutyHeat&, const Temperatures& hottest) {
    const double limit_K = c.rig().axis(a).motor.bearing_limit_K.value();
    return rises(
        c, a, hottest.housing_K, limit_K,
        words("%1, as hot as the housing, limit %2", celsius(hottest.housing_K), celsius(limit_K)));
  });
}

/// A limit entered above that of the insulation's class.
Compared insulation(Context& c, Axis a) {
  const Motor& motor = c.rig().axis(a).motor;
  const double class_K = insulation_limit_K(motor.insulation.value).value_or(kInfinity);
  const double limit_K = motor.winding_limit_K.value();
  return rises(c, a, limit_K, class_K,
               words("winding limit %1 against %2 of class %3", celsius(limit_K), celsius(class_K),
                     motor.insulation.value));
}
bool has_both_limits(Context& c, Axis a) {
  const Motor& motor = c.rig().axis(a).motor;
  return insulation_limit_K(motor.insulation.value) &&
         motor.winding_limit_K.source != Source::by_default && motor.winding_limit_K.si &&
         c.rig().surroundings.temperature_K.si;
}

Compared pace(Context& c, Axis a) {
  const DutyHeat& duty = duty_heat(c, a);
  if (!duty.because.empty()) return {{}, {}, duty.because, Outcome::impossible};
  if (duty.pace_s == 0) return moot(words("the task asks for no moves"));
  if (!duty.settles)
    return {{},
            {},
            words("it never settles after the task's move, so the picture is steady at no pace"),
            Outcome::impossible};
  const std::string move = say(duty.move_s, "s", "ms"), due = say(duty.pace_s, "s", "s");
  return {duty.move_s, duty.pace_s,
          duty.is_waited_for
              ? words("both axes move and settle in %1, a move is due every %2", move, due)
              : words("it moves and settles in %1, a move is due every %2; the other axis never "
                      "settles",
                      move, due)};
}

Compared in_travel(Context& c, Axis a) {
  const Travel& travel = c.travel(a);
  if (!travel.usable_rad) return {{}, {}, words("the usable travel is not known")};
  double farthest = 0;
  for (const DutyMove& move : c.rig().duty) {
    const double to = (a == Axis::pan ? move.pan_rad : move.tilt_rad).value();
    farthest = std::max(farthest, std::abs(to - travel.centre_rad));
  }
  return {farthest, *travel.usable_rad / 2,
          words("farthest angle of the duty from the middle of the usable travel")};
}

/// The rests of all moves made longer by the same factor, so that the winding just stays cool
/// enough.
std::optional<Remedy> longer_rests(Context& c, Axis a) {
  const Rig& rig = c.rig();
  if (rig.duty.empty()) return std::nullopt;
  const auto holds = [&](double factor) {
    Rig trial = rig;
    for (DutyMove& move : trial.duty) move.dwell_s.si = factor * move.dwell_s.value();
    Context rested(trial, c.stop());
    lend_moves(c, rested);
    return verdict_of(winding(rested, a)) != Verdict::fails;
  };
  constexpr double kMostFactor = 64;
  constexpr int kSteps = 8;
  double bad = 1, good = 2;
  while (good <= kMostFactor && !holds(good)) bad = good, good *= 2;
  if (good > kMostFactor || c.stop().stop_requested()) return std::nullopt;
  for (int i = 0; i < kSteps; ++i) {
    const double middle = std::sqrt(bad * good);
    (holds(middle) ? good : bad) = middle;
  }
  const double factor = std::ceil(10 * good) / 10;
  Remedy remedy{words("rests %1 times as long", say(factor, "1", "1")), "", 0, {}};
  for (std::size_t i = 0; i < rig.duty.size(); ++i) {
    const double dwell_s = factor * rig.duty[i].dwell_s.value();
    if (!(dwell_s > 0)) continue;
    std::string path = "duty[" + std::to_string(i) + "].dwell";
    if (remedy.path.empty()) {
      remedy.path = std::move(path);
      remedy.value_si = dwell_s;
    } else {
      remedy.also.push_back({std::move(path), dwell_s});
    }
  }
  return remedy.path.empty() ? std::nullopt : std::optional(std::move(remedy));
}

constexpr Lever kDutyLevers[] = {{"task.duty.moves_per_minute", Way::down, 100},
                                 {"<axis>.motor.thermal_resistance", Way::down, 20},
                                 {"<axis>.gearbox.ratio", Way::up, 10},
                                 {"<axis>.gearbox.ratio", Way::down, 3}};
constexpr Lever kHoldLevers[] = {{"<axis>.gearbox.ratio", Way::up, 20},
                                 {"<axis>.motor.thermal_resistance", Way::down, 20},
                                 {"<axis>.drive.current_limit", Way::down, 100}};
constexpr Lever kMountLevers[] = {{"task.duty.moves_per_minute", Way::down, 100},
                                  {"<axis>.motor.thermal_resistance", Way::down, 20},
                                  {"<axis>.motor.mount_limit", Way::up, 3},
                                  {"<axis>.motor.housing_to_mount", Way::up, 20}};
constexpr Lever kPartLevers[] = {{"task.duty.moves_per_minute", Way::down, 100},
                                 {"<axis>.motor.thermal_resistance", Way::down, 20}};
constexpr Lever kInsulationLevers[] = {{"<axis>.motor.winding_limit", Way::down, 2}};
constexpr Lever kPaceLevers[] = {{"task.duty.moves_per_minute", Way::down, 100},
                                 {"<axis>.gearbox.backlash", Way::down, 20},
                                 {"<axis>.loop.speed_gain", Way::down, 6}};

const Check kHeatChecks[] = {
    {.id = "<axis>.heat.winding",
     .what = "Winding stays cool enough over the duty",
     .goal = "would keep the winding below its limit",
     .part = "<axis>.motor",
     .si_unit = "K",
     .unit = "K",
     .inputs = kWinding,
     .compare = winding,
     .levers = kDutyLevers,
     .offer = longer_rests,
     .lend = lend_duty},
    {.id = "<axis>.heat.hold",
     .what = "Winding stays cool enough holding still",
     .goal = "would let it hold the worst angle without end",
     .part = "<axis>.motor",
     .si_unit = "K",
     .unit = "K",
     .inputs = kHold,
     .compare = hold,
     .levers = kHoldLevers,
     .asked_by = "<axis>.motor.thermal_resistance"},
    {.id = "<axis>.heat.mount",
     .what = "Bracket at the motor stays firm",
     .goal = "would keep the bracket from softening",
     .part = "<axis>.motor",
     .si_unit = "K",
     .unit = "K",
     .inputs = kDutyHeat,
     .compare = mount,
     .levers = kMountLevers,
     .asked_when =
         [](Context& c, Axis a) {
           const Motor& motor = c.rig().axis(a).motor;
           return !motor.mount_material.empty() || motor.mount_limit_K.si.has_value();
         },
     .lend = lend_duty},
    {.id = "<axis>.heat.magnets",
     .what = "Magnets stay cool enough",
     .goal = "would keep the magnets below their limit",
     .part = "<axis>.motor",
     .si_unit = "K",
     .unit = "K",
     .inputs = kMagnets,
     .compare = magnets,
     .levers = kPartLevers,
     .asked_by = kMagnetLimit[0],
     .lend = lend_duty},
    {.id = "<axis>.heat.bearings",
     .what = "Motor bearings stay cool enough",
     .goal = "would keep the bearings below their limit",
     .part = "<axis>.motor",
     .si_unit = "K",
     .unit = "K",
     .inputs = kBearings,
     .compare = bearings,
     .levers = kPartLevers,
     .asked_by = kBearingLimit[0],
     .lend = lend_duty},
    {.id = "<axis>.heat.insulation",
     .what = "Winding limit within its insulation class",
     .goal = "would keep to the insulation's class",
     .part = "<axis>.motor",
     .si_unit = "K",
     .unit = "K",
     .inputs = kWindingLimit,
     .compare = insulation,
     .levers = kInsulationLevers,
     .asked_when = has_both_limits},
    {.id = "<axis>.duty.pace",
     .what = "Moves fit into the duty's pace",
     .goal = "would leave time for each move",
     .part = "task",
     .si_unit = "s",
     .unit = "s",
     .inputs = kPace,
     .compare = pace,
     .levers = kPaceLevers,
     .asked_when = [](Context& c, Axis) { return c.rig().duty.empty(); }},
    {.id = "<axis>.duty.travel",
     .what = "Duty stays within the travel",
     .goal = "would let it reach every angle of the duty",
     .part = "task",
     .si_unit = "rad",
     .unit = "deg",
     .inputs = kDutyInTravel,
     .compare = in_travel,
     .levers = {},
     .asked_when = [](Context& c, Axis) { return !c.rig().duty.empty(); }},
};

}  // namespace

std::span<const Check> heat_checks() { return kHeatChecks; }

}  // namespace gazewright
