#include "core/analysis/worst_pose.h"

#include <algorithm>
#include <numbers>

#include "core/analysis/say.h"
#include "core/analysis/usable_travel.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

// What is less changes no figure that somebody reads.
constexpr double kHeavier = 1.001;

Axis other_than(Axis axis) { return axis == Axis::pan ? Axis::tilt : Axis::pan; }

void take_largest_load(Context& c, WorstPose& worst) {
  const RigBodies& bodies = c.bodies();
  const auto inertia_kgm2 = [&](double tilt_rad) {
    return mass_matrix_kgm2(bodies, tilt_rad)(0, 0);
  };
  const double at_rest = worst.model.load.inertia_kgm2;
  const Place most = place_of_largest(usable_or_turn(c, Axis::tilt), inertia_kgm2);
  worst.is_heavier = most.value > kHeavier * at_rest;
  if (!worst.is_heavier) return;
  worst.model.load.inertia_kgm2 = most.value;
  worst.load_at_rad = most.at;
}

}  // namespace

Interval usable_or_turn(Context& context, Axis axis) {
  const double centre_rad = context.travel(axis).centre_rad;
  return usable_interval(context, axis)
      .value_or(Interval{centre_rad - std::numbers::pi, centre_rad + std::numbers::pi});
}

const WorstPose& worst_pose(Context& context, Axis axis) {
  return context.kept<WorstPose>(axis, [&] {
    WorstPose worst{.model = context.model(axis)};
    if (axis == Axis::pan) take_largest_load(context, worst);
    AxisLoad load = worst.model.load;
    double most = worst_pull_Nm(load, context.travel(axis));
    const Interval other = usable_or_turn(context, other_than(axis));
    for (const double pose : telling_poses_rad(context.bodies(), axis, other.least, other.most)) {
      load.gravity = gravity_curve(context.bodies(), axis, pose);
      const double pull = worst_pull_Nm(load, context.travel(axis));
      if (!(pull > most)) continue;
      most = pull;
      worst.model.load.gravity = load.gravity;
      worst.pull_at_rad = pose;
    }
    return worst;
  });
}

double worst_pull_Nm(Context& context, Axis axis) {
  return worst_pull_Nm(worst_pose(context, axis).model.load, context.travel(axis));
}

std::string say_worst_load(Context& context, Axis axis) {
  const WorstPose& worst = worst_pose(context, axis);
  if (!worst.is_heavier) return {};
  return words("; with tilt at %1, where its load is largest: %2",
               say(worst.load_at_rad, "rad", "deg"),
               say(worst.model.load.inertia_kgm2, "kg.m2", "g.m2"));
}

}  // namespace gazewright
