#include "core/travel/power_off.h"

#include <algorithm>
#include <cmath>

#include "core/motion/slowing.h"
#include "core/travel/soft_limits.h"

namespace gazewright {
namespace {

constexpr int kParts = 32;

/// Coasts along `length` from an angle; where `least` is given, power may also drop anywhere on
/// the way at that squared speed.
double coasted(const AxisModel& model, double squared, double from_rad, double length, double sign,
               double least = 0) {
  for (int part = 0; part < kParts; ++part) {
    const double step = length / kParts;
    squared = squared_speed_after(squared, step, [&](double at, double along) {
      const double angle = from_rad + sign * (part + along) * step;
      return -2 *
             slowing_radps2(model, Slowing::open, std::sqrt(at), sign * model.load.pull_Nm(angle));
    });
    squared = std::max(squared, least);
  }
  return squared;
}

}  // namespace

double friction_hold_Nm(const AxisModel& model) {
  if (model.gear.back_efficiency == 0) return kInfinity;
  return model.load.coulomb_Nm + model.gear.ratio * model.gear.drag_Nm / model.gear.back_efficiency;
}

double coasting_stop_speed_radps(const AxisModel& model, const Travel& travel) {
  return coasting_stop_speed_radps(model, travel, top_speed_radps(model));
}

double coasting_stop_speed_radps(const AxisModel& model, const Travel& travel, double from_radps) {
  const double soft = *travel.soft_rad, room = (*travel.stops_rad - soft) / 2;
  const double full = std::pow(from_radps, 2);
  const bool may_fall = worst_pull_Nm(model.load, travel) > friction_hold_Nm(model);
  double worst = 0;
  for (const End end : kEnds) {
    const double sign = sign_of(end), limit = end_angle_rad(travel, soft, end);
    const double at_limit =
        may_fall ? coasted(model, full, limit - sign * soft, soft, sign, full) : full;
    worst = std::max(worst, coasted(model, at_limit, limit, room, sign));
  }
  return std::sqrt(worst);
}

}  // namespace gazewright
