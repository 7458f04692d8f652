#include "core/analysis/balance.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/balance_values.h"
#include "core/analysis/context.h"
#include "core/analysis/power_off.h"
#include "core/travel/power_off.h"

namespace gazewright {
namespace {

constexpr int kPoints = 91;
constexpr InputPath kLoad[]{"<load>", "on_pan", "tilt.axis_at"};

/// The usable travel, a turn at most; a whole turn where it is not known.
AngleSpan span_of(Context& context, Axis axis) {
  const Travel& travel = context.travel(axis);
  const double half = std::min(travel.usable_rad.value_or(2 * M_PI), 2 * M_PI) / 2;
  return {travel.centre_rad - half, travel.centre_rad + half};
}

}  // namespace

const WorstGravity& worst_gravity(Context& context, Axis axis) {
  return context.kept<WorstGravity>(axis, [&] {
    WorstGravity worst;
    worst.own = span_of(context, axis);
    const AngleSpan other = span_of(context, axis == Axis::pan ? Axis::tilt : Axis::pan);
    double most = -1;
    for (const double pose :
         telling_poses_rad(context.bodies(), axis, other.least_rad, other.most_rad)) {
      const GravityCurve curve = gravity_curve(context.bodies(), axis, pose);
      const double largest = curve.largest_Nm(worst.own.least_rad, worst.own.most_rad);
      if (largest <= most) continue;
      most = largest;
      worst.curve = curve;
      worst.other_rad = pose;
    }
    worst.torque_Nm = std::max(0.0, most);
    worst.at_rad = worst.own.least_rad;
    // Where the sinusoid has its peaks, or an end of the travel.
    const double peak = std::atan2(worst.curve.sin_Nm, worst.curve.cos_Nm);
    for (double angle : {worst.own.most_rad, peak - 2 * M_PI, peak - M_PI, peak, peak + M_PI}) {
      if (angle < worst.own.least_rad || angle > worst.own.most_rad) continue;
      if (std::abs(worst.curve.at(angle)) > std::abs(worst.curve.at(worst.at_rad)))
        worst.at_rad = angle;
    }
    return worst;
  });
}

GravityOverTravel gravity_over_travel(Context& context, Axis axis) {
  if (!context.missing(kLoad, axis).empty()) return {};
  const WorstGravity& worst = worst_gravity(context, axis);
  GravityOverTravel over;
  over.friction_Nm =
      context.missing(kHolds, axis).empty() ? friction_hold_Nm(context.model(axis)) : std::nan("");
  over.angle_rad.resize(kPoints);
  over.torque_Nm.resize(kPoints);
  const double step = (worst.own.most_rad - worst.own.least_rad) / (kPoints - 1);
  for (std::size_t i = 0; i < kPoints; ++i) {
    over.angle_rad[i] = worst.own.least_rad + step * static_cast<double>(i);
    over.torque_Nm[i] = worst.curve.at(over.angle_rad[i]);
  }
  return over;
}

}  // namespace gazewright
