#include "core/analysis/stand_values.h"

#include <algorithm>
#include <cmath>

#include "core/motion/slowing.h"
#include "core/travel/soft_limits.h"

namespace gazewright {
namespace {

/// Sideways acceleration of a place at 1 m of the axis: starting or braking, and the fastest speed.
double shaking_radps2(const AxisModel& model) {
  const double speed = fastest_asked_radps(model);
  return std::hypot(largest_acceleration_radps2(model), speed * speed);
}

/// Torque of reaction that the stand feels: what speeds up the load and, through the motor, the
/// rotor.
double reaction_kgm2(const AxisModel& model) {
  return model.load.inertia_kgm2 + model.gear.ratio * model.gear.rotor_inertia_kgm2;
}

SwaySpring spring_of(Context& context, Axis axis) {
  const Stand& stand = context.rig().stand;
  const double inertia = axis == Axis::pan
                             ? context.model(Axis::pan).load.inertia_kgm2
                             : sway_inertia(stand_body(context.rig()), context.bodies()).pitch_kgm2;
  return {inertia, stand.sway_stiffness_Nmprad.value(), stand.sway_damping.value()};
}

/// Moment about the foot per angular acceleration of the axis, tilt at 0.
double moment_kgm2(Context& context, Axis axis) {
  const double own = reaction_kgm2(context.model(axis));
  if (axis == Axis::pan) return own;
  const RigBodies& bodies = context.bodies();
  const double up = context.rig().stand.height_m.value() + bodies.p_PT_m.z();
  return own + bodies.on_tilt.mass_kg *
                   (up * bodies.on_tilt.p_OC_m.z() + bodies.p_PT_m.x() * bodies.on_tilt.p_OC_m.x());
}

Swayed sway_by_step(Context& context, Axis axis) {
  const SettledStep& step = context.step(axis);
  const std::vector<double>& speed = step.trace.speed_radps;
  if (speed.size() < 2) return {};
  const double sample_s = step.trace.sample_time_s, inertia = moment_kgm2(context, axis);
  std::vector<double> torque_Nm(speed.size() - 1);
  for (std::size_t i = 0; i < torque_Nm.size(); ++i)
    torque_Nm[i] = inertia * (speed[i + 1] - speed[i]) / sample_s;
  return swayed_by(spring_of(context, axis), torque_Nm, sample_s,
                   step.figures.settle_time_s.value_or(kInfinity));
}

}  // namespace

StandBody stand_body(const Rig& rig) {
  return {rig.stand.mass_kg.value(), rig.stand.half_width_m.value(), rig.stand.height_m.value()};
}

Tipping tipping(Context& context) {
  const StandBody stand = stand_body(context.rig());
  return tipping_of(stand, carried_by(stand, context.bodies()),
                    context.rig().stand.lean_rad.value());
}

StandPush push_of(Context& context) {
  const RigBodies& bodies = context.bodies();
  const StandBody stand = stand_body(context.rig());
  const CarriedByStand carried = carried_by(stand, bodies);
  const double offset = std::hypot(bodies.on_tilt.p_OC_m.x(), bodies.on_tilt.p_OC_m.z());
  const AxisModel &pan = context.model(Axis::pan), &tilt = context.model(Axis::tilt);
  const double by_pan_N = carried.mass_kg * carried.aside_m * shaking_radps2(pan);
  const double by_tilt_N = bodies.on_tilt.mass_kg * offset * shaking_radps2(tilt);
  return {reaction_kgm2(pan) * largest_acceleration_radps2(pan), by_pan_N + by_tilt_N,
          reaction_kgm2(tilt) * largest_acceleration_radps2(tilt) +
              by_pan_N * carried.above_foot_m + by_tilt_N * (stand.height_m + bodies.p_PT_m.z())};
}

FeetPull pull_at_feet(Context& context) {
  const StandBody stand = stand_body(context.rig());
  const double weight_N =
      kStandardGravity_mps2 * (stand.mass_kg + carried_by(stand, context.bodies()).mass_kg);
  const double lean_rad = context.rig().stand.lean_rad.value();
  const StandPush push = push_of(context);
  return {push.pan_Nm / stand.half_width_m, push.force_N, weight_N * std::abs(std::sin(lean_rad)),
          weight_N * std::cos(lean_rad)};
}

const Swayed& stand_swayed(Context& context, Axis axis) {
  return context.kept<Swayed>(axis, [&] { return sway_by_step(context, axis); });
}

double stand_first_mode_Hz(Context& context) {
  SwaySpring spring = spring_of(context, Axis::tilt);
  spring.inertia_kgm2 = sway_inertia(stand_body(context.rig()), context.bodies()).most_kgm2;
  return spring.frequency_Hz();
}

}  // namespace gazewright
