#include <algorithm>
#include <cmath>

#include "core/analysis/checks.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

using Way = Lever::Way;
constexpr auto kInputSpeed = joined(kTopSpeed, std::array<InputPath, 1>{"<axis>.loop.speed_limit"});
constexpr auto kGap = joined(kPixels, std::array<InputPath, 1>{"<axis>.gearbox.backlash"});
constexpr auto kCount =
    joined(kPixels, std::array<InputPath, 2>{"<axis>.encoder.bits", "<axis>.gearbox.ratio"});

Compared peak_torque(Context& c, Axis a) {
  AxisModel uncapped = c.model(a);
  const double peak = uncapped.gear.peak_torque_Nm;
  uncapped.gear.peak_torque_Nm = kInfinity;
  return {stall_torque_Nm(uncapped), peak,
          words("motor at its current limit, standing still; the figures assume the drive is held "
                "below the gearbox's peak")};
}

Compared input_speed(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const MotorDrive& drive = model.drive;
  const double free_speed = 1.5 * drive.phase_voltage_V() / drive.torque_constant_NmpA;
  const double commanded =
      std::min(model.control.speed_limit_radps, model.drive_speed_limit_radps) * model.gear.ratio;
  return {std::min(free_speed, commanded), model.gear.input_speed_limit_radps,
          words("the fastest that bus voltage and speed limits let the motor turn")};
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
constexpr Lever kSpeedLevers[] = {{"<axis>.loop.speed_limit", Way::down, 100},
                                  {"<axis>.gearbox.ratio", Way::down, 10}};
constexpr Lever kGapLevers[] = {{"<axis>.gearbox.backlash", Way::down, 100}};
constexpr Lever kCountLevers[] = {{"<axis>.encoder.bits", Way::up, 3}};

constexpr Check kChecks[] = {
    {"<axis>.gearbox.peak", "Motor torque through the gearbox",
     "would stay below the gearbox's peak", "<axis>.gearbox", "N.m", "N.m", kStall, peak_torque,
     kPeakLevers},
    {"<axis>.gearbox.input_speed", "Gearbox input speed", "would keep the input slow enough",
     "<axis>.gearbox", "rad/s", "rpm", kInputSpeed, input_speed, kSpeedLevers},
    {"<axis>.pointing.gap", "Gap in the picture", "would bring the gap inside the band",
     "<axis>.gearbox", "1", "px", kGap, gap, kGapLevers},
    {"<axis>.encoder.count", "Encoder count in the picture",
     "would make a count finer than the band", "<axis>.encoder", "1", "px", kCount, encoder_count,
     kCountLevers},
};

}  // namespace

std::span<const Check> gear_checks() { return kChecks; }

}  // namespace gazewright
