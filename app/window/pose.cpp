#include "app/window/pose.h"

#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

double angle_at(const AxisCurves& curves, double time_s) {
  const Trace& step = curves.step;
  if (step.time_s.empty() || std::isnan(time_s)) return 0;
  const auto at = std::lower_bound(step.time_s.begin(), step.time_s.end(), time_s);
  const auto i =
      std::min(static_cast<std::size_t>(at - step.time_s.begin()), step.angle_rad.size() - 1);
  return step.angle_rad[i] - curves.move_rad / 2;
}

}  // namespace

Pose pose_at(const Analysis& analysis, double time_s) {
  return {angle_at(analysis.of(Axis::pan), time_s), angle_at(analysis.of(Axis::tilt), time_s)};
}

}  // namespace gazewright
