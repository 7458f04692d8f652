#include "core/analysis/move_back.h"

#include <cmath>

#include "core/analysis/context.h"
#include "core/analysis/profiles.h"

namespace gazewright {
namespace {

constexpr double kFeltShareOfStall = 0.01;

}  // namespace

MoveBack move_back_within(Context& c, Axis a, double within_s) {
  const AxisModel& model = c.model(a);
  if (std::abs(model.load.pull_Nm(0)) < kFeltShareOfStall * stall_torque_Nm(model)) return {};
  const double move_rad = -c.move_rad(a);
  const SettledStep run = simulate_until_settled(model, move_rad, c.band_rad(), c.stop(), within_s);
  return {true, camera_still(c, a, run, move_rad, 0).settle_s};
}

}  // namespace gazewright
