#include "core/motion/runaway.h"

#include "core/motion/ramp.h"

namespace gazewright {
namespace {

constexpr double kTolerance = 1e-6;

}  // namespace

double runaway_speed_radps(const AxisModel& model, double way_rad) {
  AxisModel loose = model;
  loose.load.gravity = {};
  loose.load.cable_stiffness_Nmprad = 0;
  Ramp ramp(loose, way_rad, Ramp::Way::speeding_up, kTolerance);
  if (!ramp.can_start()) return 0;
  while (ramp.last().angle_rad < way_rad)
    if (!ramp.extend()) return ramp.last().speed_radps;  // as fast as it gets
  return ramp.at_angle(way_rad).speed_radps;
}

}  // namespace gazewright
