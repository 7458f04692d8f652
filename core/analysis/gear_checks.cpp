#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/figures.h"
#include "core/analysis/gear_load.h"
#include "core/analysis/heat_values.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

constexpr auto kInputSpeed = joined(kTopSpeed, std::array<InputPath, 1>{"<axis>.loop.speed_limit"});
constexpr auto kRated = joined(kDutyMoves, std::array<InputPath, 1>{"<axis>.gearbox.rated_torque"});
constexpr auto kGap = joined(kToPixels, std::array<InputPath, 1>{"<axis>.gearbox.backlash"});
constexpr auto kCount =
    joined(kToPixels, std::array<InputPath, 2>{"<axis>.encoder.bits", "<axis>.gearbox.ratio"});

Compared peak_torque(Context& c, Axis a) {
  AxisModel uncapped = c.model(a);
  const double peak = uncapped.gear.peak_torque_Nm;
  uncapped.gear.peak_torque_Nm = kInfinity;
  return {stall_torque_Nm(uncapped), peak,
          words("motor at its current limit, standing still; the figures assume the drive is held "
                "below the gearbox's peak")};
}

Compared step_torque(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  if (step_runs_away(c, a))
    return {std::nullopt, model.gear.peak_torque_Nm, why_never_settles(c, a),
            Compared::Outcome::impossible};
  const ToothPeak& peak = step_tooth_peak(c, a);
  return {peak.torque_Nm, model.gear.peak_torque_Nm,
          words("in the simulated step, at %1; the motor standing gives %2, and one that comes "
                "through the gap brings its speed along",
                say(peak.at_s, "s", "ms"), say(stall_torque_Nm(model), "N.m", "N.m"))};
}

Compared mean_torque(Context& c, Axis a) {
  const double rated = c.rig().axis(a).gearbox.rated_torque_Nm.value();
  const DutyTooth& tooth = duty_tooth(c, a);
  if (!tooth.because.empty()) return {std::nullopt, rated, tooth.because};
  return {tooth.mean_Nm, rated,
          words("root mean cube over the duty's moves, by the angle turned; what the teeth hold at "
                "rest does not wear them")};
}

/// What the step really reaches: the loop's limit is one of its command.
double step_input_radps(Context& c, Axis a) {
  if (!c.missing(kWholeStep, a).empty() || step_runs_away(c, a)) return 0;
  return step_tooth_peak(c, a).input_radps;
}

Compared input_speed(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const MotorDrive& drive = model.drive;
  const double free_speed = 1.5 * drive.phase_voltage_V() / drive.torque_constant_NmpA;
  const double commanded =
      std::min(model.control.speed_limit_radps, model.drive_speed_limit_radps) * model.gear.ratio;
  const double allowed = std::min(free_speed, commanded), reached = step_input_radps(c, a);
  const std::string fastest =
      words("the fastest that bus voltage and speed limits let the motor turn");
  return {allowed, model.gear.input_speed_limit_radps,
          reached > allowed ? words("%1; in the simulated step it overshoots to %2 for a moment",
                                    fastest, say(reached, "rad/s", "rpm"))
                            : fastest};
}

Compared gap(Context& c, Axis a) {
  return {c.model(a).gear.backlash_rad / 2 * c.pixels_per_radian(),
          c.rig().task.settle_band_px.value(),
          words("the load rests anywhere in the gap; the band is ± as wide")};
}

Compared encoder_count(Context& c, Axis a) {
  return {count_rad(c.model(a)) * c.pixels_per_radian(), c.rig().task.settle_band_px.value(),
          words("one encoder count seen in the picture")};
}

constexpr Lever kPeakLevers[] = {{"<axis>.drive.current_limit", Way::down, 20},
                                 {"<axis>.gearbox.ratio", Way::down, 10}};
constexpr Lever kStepLevers[] = {{"<axis>.gearbox.backlash", Way::down, 20},
                                 {"<axis>.drive.current_limit", Way::down, 10},
                                 {"<axis>.loop.speed_gain", Way::down, 20}};
constexpr Lever kMeanLevers[] = {{"<axis>.drive.current_limit", Way::down, 10},
                                 {"<axis>.loop.position_gain", Way::down, 6}};
constexpr Lever kSpeedLevers[] = {{"<axis>.loop.speed_limit", Way::down, 100},
                                  {"<axis>.gearbox.ratio", Way::down, 10}};
constexpr Lever kGapLevers[] = {{"<axis>.gearbox.backlash", Way::down, 100}};
constexpr Lever kCountLevers[] = {{"<axis>.encoder.bits", Way::up, 3}};

constexpr Check kGearChecks[] = {
    {"<axis>.gearbox.peak", "Motor torque through the gearbox",
     "would stay below the gearbox's peak", "<axis>.gearbox", "N.m", "N.m", kStall, peak_torque,
     kPeakLevers},
    {"<axis>.gearbox.step_torque", "Gear torque in the step against the peak",
     "would spare the teeth in the step", "<axis>.gearbox", "N.m", "N.m", kStep, step_torque,
     kStepLevers},
    {"<axis>.gearbox.mean_torque", "Mean gear torque over the duty against the rating",
     "would let the gearbox live its whole life", "<axis>.gearbox", "N.m", "N.m", kRated,
     mean_torque, kMeanLevers, nullptr, "<axis>.gearbox.rated_torque",
     [](Context& c, Axis) { return !c.is_quick(); }},
    {"<axis>.gearbox.input_speed", "Gearbox input speed", "would keep the input slow enough",
     "<axis>.gearbox", "rad/s", "rpm", kInputSpeed, input_speed, kSpeedLevers},
    {"<axis>.pointing.gap", "Gap in the picture", "would bring the gap inside the band",
     "<axis>.gearbox", "1", "px", kGap, gap, kGapLevers},
    {"<axis>.encoder.count", "Encoder count in the picture",
     "would make a count finer than the band", "<axis>.encoder", "1", "px", kCount, encoder_count,
     kCountLevers},
};

}  // namespace

std::span<const Check> gear_checks() { return kGearChecks; }

}  // namespace gazewright
