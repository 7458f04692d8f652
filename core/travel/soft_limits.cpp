#include "core/travel/soft_limits.h"

#include <algorithm>
#include <cmath>

#include "core/motion/slowing.h"

namespace gazewright {
namespace {

constexpr int kBoundParts = 60;

/// Backwards from the limit: d(ω²)/dx = 2·slowing over the way x = span·u², in even steps of u,
/// in which ω is smooth at the limit.
SpeedBound bound_of(const AxisModel& model, double limit_rad, double from_rad, End end) {
  constexpr double kStep = 1.0 / kBoundParts;
  const double sign = sign_of(end), span = sign * (limit_rad - from_rad);
  const double top = top_speed_radps(model);
  SpeedBound bound;
  bound.angle_rad.push_back(limit_rad);
  bound.speed_radps.push_back(0);
  double squared = 0;
  for (int i = 0; i < kBoundParts; ++i) {
    squared = squared_speed_after(squared, kStep, [&](double at, double along) {
      const double u = (i + along) * kStep;
      const double pushing = sign * model.load.pull_Nm(limit_rad - sign * span * u * u);
      return 4 * span * u * slowing_radps2(model, Slowing::braking, std::sqrt(at), pushing);
    });
    squared = std::min(squared, top * top);
    const double u = (i + 1) * kStep;
    bound.angle_rad.push_back(limit_rad - sign * span * u * u);
    bound.speed_radps.push_back(std::sqrt(squared));
  }
  if (end == End::most) {
    std::reverse(bound.angle_rad.begin(), bound.angle_rad.end());
    std::reverse(bound.speed_radps.begin(), bound.speed_radps.end());
  }
  return bound;
}

}  // namespace

double end_angle_rad(const Travel& travel, double span_rad, End end) {
  return travel.centre_rad + sign_of(end) * span_rad / 2;
}

double worst_pull_Nm(const AxisLoad& load, const Travel& travel) {
  double span = travel.stops_rad.value_or(kInfinity);
  if (std::isinf(span)) {
    const double cable = travel.cable_rad.value_or(0);
    span = std::max(2 * M_PI, std::isinf(cable) ? 0 : cable);
  }
  return load.largest_pull_Nm(end_angle_rad(travel, span, End::least),
                              end_angle_rad(travel, span, End::most));
}

double fastest_asked_radps(const AxisModel& model) {
  return std::min(top_speed_radps(model), model.control.speed_limit_radps);
}

double unbraked_angle_rad(const AxisModel& model, double speed_radps) {
  return speed_radps *
         (2 / model.control.control_rate_Hz + 1 / (2 * M_PI * model.control.current_bandwidth_Hz));
}

SpeedOverTravel speed_over_travel(const AxisModel& model, const Travel& travel) {
  SpeedOverTravel speeds;
  const double stops = travel.stops_rad.value_or(0), soft = travel.soft_rad.value_or(0);
  if (!(stops > 0) || std::isinf(stops) || !(soft > 0)) return speeds;
  for (const End end : kEnds) {
    const auto at = static_cast<std::size_t>(end);
    const double from = end_angle_rad(travel, stops, end == End::most ? End::least : End::most);
    speeds.to_soft[at] = bound_of(model, end_angle_rad(travel, soft, end), from, end);
    speeds.to_stop[at] = bound_of(model, end_angle_rad(travel, stops, end), from, end);
  }
  return speeds;
}

double bound_at_radps(const SpeedBound& bound, double angle_rad) {
  const auto& angle = bound.angle_rad;
  const auto after = std::lower_bound(angle.begin(), angle.end(), angle_rad);
  if (after == angle.begin()) return bound.speed_radps.front();
  if (after == angle.end()) return bound.speed_radps.back();
  const auto i = static_cast<std::size_t>(after - angle.begin());
  const double part = (angle_rad - angle[i - 1]) / (angle[i] - angle[i - 1]);
  return std::lerp(bound.speed_radps[i - 1], bound.speed_radps[i], part);
}

}  // namespace gazewright
