#include "core/analysis/balance.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/balance_values.h"
#include "core/analysis/context.h"
#include "core/analysis/power_off.h"
#include "core/analysis/worst_pose.h"
#include "core/travel/power_off.h"

namespace gazewright {
namespace {

constexpr int kPoints = 91;
constexpr InputPath kLoad[]{"<load>", "on_pan", "tilt.axis_at"};

}  // namespace

const WorstGravity& worst_gravity(Context& context, Axis axis) {
  return context.kept<WorstGravity>(axis, [&] {
    WorstGravity worst;
    worst.own = usable_or_turn(context, axis);
    const Interval other = usable_or_turn(context, axis == Axis::pan ? Axis::tilt : Axis::pan);
    double most = -1;
    for (const double pose : telling_poses_rad(context.bodies(), axis, other.least, other.most)) {
      const GravityCurve curve = gravity_curve(context.bodies(), axis, pose);
      const double largest = curve.largest_Nm(worst.own.least, worst.own.most);
      if (largest <= most) continue;
      most = largest;
      worst.curve = curve;
      worst.other_rad = pose;
    }
    worst.torque_Nm = std::max(0.0, most);
    worst.at_rad = worst.own.least;
    const auto take = [&](double angle) {
      if (std::abs(worst.curve.at(angle)) > std::abs(worst.curve.at(worst.at_rad)))
        worst.at_rad = angle;
    };
    take(worst.own.most);
    // The sinusoid's peaks of either sign, wherever the travel lies.
    const double peak = std::atan2(worst.curve.sin_Nm, worst.curve.cos_Nm);
    const int first = static_cast<int>(std::ceil((worst.own.least - peak) / M_PI));
    const int last = static_cast<int>(std::floor((worst.own.most - peak) / M_PI));
    for (int k = first; k <= last; ++k) take(peak + k * M_PI);
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
  const double step = (worst.own.most - worst.own.least) / (kPoints - 1);
  for (std::size_t i = 0; i < kPoints; ++i) {
    over.angle_rad[i] = worst.own.least + step * static_cast<double>(i);
    over.torque_Nm[i] = worst.curve.at(over.angle_rad[i]);
  }
  return over;
}

}  // namespace gazewright
