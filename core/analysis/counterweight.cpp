#include "core/analysis/counterweight.h"

#include <cmath>
#include <numbers>

#include "core/analysis/context.h"
#include "core/analysis/inputs.h"
#include "core/analysis/say.h"
#include "core/analysis/swap.h"
#include "core/rig/fields.h"
#include "core/units/units.h"

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

std::optional<Remedy> counterweight_remedy(Context& context, Axis axis) {
  if (!context.missing(kPlace, axis).empty()) return std::nullopt;
  const auto body = counterweight_of(context.rig(), context.bodies(), axis);
  if (!body) return std::nullopt;
  const double arm = context.rig().axis(axis).balance.counterweight_arm_m.value();
  return Remedy{"a counterweight of " + say(body->mass_kg.value(), "kg", "g") + " at " +
                    say(arm, "m", "mm") + " opposite to the centre of mass",
                counterweight_path(axis), body->mass_kg.value()};
}

}  // namespace gazewright
