#include "core/analysis/counterweight.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/analysis/balance_values.h"
#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/swap.h"
#include "core/files/spelling.h"
#include "core/rig/fields.h"
#include "core/units/units.h"
#include "core/words/words.h"

namespace gazewright {
namespace {

/// As somebody would write it: SI value with its text.
Quantity rounded(double value_si, const FieldInfo& info, double step_si) {
  Quantity quantity = si_quantity(step_si * std::round(value_si / step_si) + 0.0, Source::estimate);
  quantity.written = written_quantity(*quantity.si, info, info.unit);
  return quantity;
}

constexpr double kMassStep_kg = 1e-4, kPlaceStep_m = 1e-4, kSizeStep_m = 1e-4;
constexpr InputPath kPlace[]{"<axis>.balance.counterweight_arm", "<load>"};

}  // namespace

double OffAxis::size_kgm() const { return std::hypot(moment_kgm[0], moment_kgm[1]); }

OffAxis off_axis(const RigBodies& bodies, Axis axis) {
  const Eigen::Vector3d tilt = bodies.on_tilt.mass_kg * bodies.on_tilt.p_OC_m;
  if (axis == Axis::tilt) return {{tilt.x(), tilt.z()}, bodies.on_tilt.mass_kg, 0};
  const double mass = bodies.on_pan.mass_kg + bodies.on_tilt.mass_kg;
  const Eigen::Vector3d sum =
      bodies.on_pan.mass_kg * bodies.on_pan.p_OC_m + bodies.on_tilt.mass_kg * bodies.p_PT_m + tilt;
  return {{sum.x(), sum.y()}, mass, mass > 0 ? sum.z() / mass : 0};
}

std::optional<Body> counterweight_of(const Rig& rig, const RigBodies& bodies, Axis axis) {
  const OffAxis off = off_axis(bodies, axis);
  const Balance& balance = rig.axis(axis).balance;
  const double size = off.size_kgm();
  if (!balance.counterweight_arm_m.si || !(size > 0)) return std::nullopt;
  const double arm = *balance.counterweight_arm_m.si;
  Body body;
  body.name = "counterweight";
  const double mass = size / arm;
  if (!(mass >= kMassStep_kg)) return std::nullopt;
  body.mass_kg = rounded(mass, body_mass_info(), kMassStep_kg);
  const double first = -off.moment_kgm[0] / size * arm, second = -off.moment_kgm[1] / size * arm;
  const std::array<double, 3> place = axis == Axis::pan
                                          ? std::array<double, 3>{first, second, off.height_m}
                                          : std::array<double, 3>{first, 0, second};
  for (std::size_t i = 0; i < 3; ++i)
    body.centre_m[i] = rounded(place[i], body_centre_info(), kPlaceStep_m);
  const double volume = mass / balance.counterweight_density_kgpm3.value();
  body.shape = Ball{rounded(std::cbrt(6 * volume / std::numbers::pi),
                            table_of<Ball>().quantities[0].info, kSizeStep_m)};
  return body;
}

std::string counterweight_path(Axis axis) { return std::string("counterweight.") + name_of(axis); }

std::optional<Rig> with_whole_remedy(const Rig& rig, const Remedy& remedy) {
  if (remedy.path == "swap") return with_gearboxes_swapped(rig);
  for (const Axis axis : kAxes) {
    if (remedy.path != counterweight_path(axis)) continue;
    const Rig filled = with_defaults(rig);
    Rig balanced = rig;
    if (auto body = counterweight_of(filled, rig_bodies(filled), axis)) {
      (axis == Axis::pan ? balanced.on_pan : balanced.on_tilt).push_back(std::move(*body));
      if (axis == Axis::pan) balanced.on_pan_is_bare = false;
    }
    return balanced;
  }
  return std::nullopt;
}

namespace {

constexpr InputPath kLoad[]{"<load>", "on_pan", "tilt.axis_at"};
constexpr double kLeastArm_m = 0.04, kFirstMass_kg = 0.05;

std::vector<Body>& carried_by(Rig& rig, bool on_tilt) { return on_tilt ? rig.on_tilt : rig.on_pan; }

double reach_m(const std::vector<Body>& bodies, Axis axis) {
  double reach = kLeastArm_m;
  for (const Body& body : bodies) {
    const double other = body.centre_m[axis == Axis::pan ? 1 : 2].si.value_or(0);
    reach = std::max(reach, std::hypot(body.centre_m[0].si.value_or(0), other));
  }
  return reach;
}

Body first_counterweight(double arm_m, double density_kgpm3) {
  Body body;
  body.name = "counterweight";
  body.mass_kg = rounded(kFirstMass_kg, body_mass_info(), kMassStep_kg);
  for (std::size_t i = 0; i < 3; ++i)
    body.centre_m[i] = rounded(i == 0 ? -arm_m : 0, body_centre_info(), kPlaceStep_m);
  const double volume = kFirstMass_kg / density_kgpm3;
  body.shape = Ball{rounded(std::cbrt(6 * volume / std::numbers::pi),
                            table_of<Ball>().quantities[0].info, kSizeStep_m)};
  return body;
}

std::optional<double> gravity_left_Nm(const Rig& rig, Axis axis) {
  Context context(rig, {}, true);
  if (!context.missing(kLoad, axis).empty()) return std::nullopt;
  return worst_gravity(context, axis).torque_Nm;
}

}  // namespace

bool is_counterweight(const Body& body) {
  return in_small_letters(body.name).find("counterweight") != std::string::npos;
}

Rig with_new_counterweight(const Rig& rig, Axis axis) {
  Context context(rig, {}, true);
  Rig filled = context.rig();
  const bool on_tilt = axis == Axis::tilt;
  Quantity& arm = filled.axis(axis).balance.counterweight_arm_m;
  if (!arm.si) arm = si_quantity(reach_m(carried_by(filled, on_tilt), axis));
  std::optional<Body> body;
  if (context.missing(kLoad, axis).empty()) body = counterweight_of(filled, context.bodies(), axis);
  Rig balanced = rig;
  if (!on_tilt) balanced.on_pan_is_bare = false;
  carried_by(balanced, on_tilt)
      .push_back(body.value_or(first_counterweight(
          *arm.si, filled.axis(axis).balance.counterweight_density_kgpm3.value())));
  return balanced;
}

CounterweightEffect counterweight_effect(const Rig& rig, bool on_tilt, std::size_t index) {
  CounterweightEffect effect;
  effect.axis = on_tilt ? Axis::tilt : Axis::pan;
  effect.left_Nm = gravity_left_Nm(rig, effect.axis);
  Rig without = rig;
  std::vector<Body>& bodies = carried_by(without, on_tilt);
  const Body body = bodies[index];
  bodies.erase(bodies.begin() + static_cast<std::ptrdiff_t>(index));
  if (!on_tilt) without.on_pan_is_bare = bodies.empty();
  Context others(without, {}, true);
  const double first = body.centre_m[0].value(), second = body.centre_m[on_tilt ? 2 : 1].value();
  const double squared = first * first + second * second;
  if (!others.missing(kLoad, effect.axis).empty() || !(squared > 0)) return effect;
  const OffAxis off = off_axis(others.bodies(), effect.axis);
  const double mass = -(off.moment_kgm[0] * first + off.moment_kgm[1] * second) / squared;
  if (!(mass >= kMassStep_kg / 2)) return effect;
  effect.cancelling_kg = mass;
  Rig with = rig;
  carried_by(with, on_tilt)[index].mass_kg = si_quantity(mass);
  effect.then_left_Nm = gravity_left_Nm(with, effect.axis);
  return effect;
}

std::optional<Remedy> counterweight_remedy(Context& context, Axis axis) {
  if (!context.missing(kPlace, axis).empty()) return std::nullopt;
  const auto body = counterweight_of(context.rig(), context.bodies(), axis);
  if (!body) return std::nullopt;
  const double arm = context.rig().axis(axis).balance.counterweight_arm_m.value();
  return Remedy{words("a counterweight of %1 at %2 opposite to the centre of mass",
                      say(body->mass_kg.value(), "kg", "g"), say(arm, "m", "mm")),
                counterweight_path(axis), body->mass_kg.value()};
}

}  // namespace gazewright
