#include "app/plots/inertia_shares.h"

#include <algorithm>
#include <cmath>

#include "app/plots/text.h"
#include "core/bodies/bodies.h"
#include "core/rig/fields.h"

namespace gazewright {
namespace {

/// The rig with one body and no other, so that core says what that body adds.
Rig with_only(const Rig& rig, bool on_tilt, const Body& body) {
  Rig alone = rig;
  alone.on_pan.clear();
  alone.on_tilt.clear();
  (on_tilt ? alone.on_tilt : alone.on_pan).push_back(body);
  return alone;
}

double body_inertia_kgm2(const Rig& rig, Axis axis, bool on_tilt, const Body& body) {
  const int i = axis == Axis::pan ? 0 : 1;
  return mass_matrix_kgm2(rig_bodies(with_only(rig, on_tilt, body)), 0)(i, i);
}

bool all_given(const Rig& rig, std::string_view prefix) {
  Rig copy = rig;
  const auto fields = fields_under(copy, prefix);
  return std::all_of(fields.begin(), fields.end(), [](const FieldRef& field) {
    const auto* quantity = std::get_if<QuantityRef>(&field);
    return quantity == nullptr || quantity->quantity->has_value();
  });
}

}  // namespace

std::optional<std::vector<InertiaShare>> inertia_shares(const Rig& rig, Axis axis) {
  const AxisParts& parts = rig.axis(axis);
  const double ratio = parts.gearbox.ratio.value();
  const double rotor = parts.motor.rotor_inertia_kgm2.value();
  const double gear = parts.gearbox.inertia_kgm2.value();
  if (!std::isfinite(ratio + rotor + gear)) return {};
  for (const char* prefix : {"on_pan", "on_tilt", "tilt.axis_at"}) {
    if (!all_given(rig, prefix)) return {};
  }
  if (!rig.stand.lean_rad.has_value()) return {};
  std::vector<InertiaShare> shares;
  const auto add = [&](bool on_tilt, const Body& body) {
    shares.push_back(
        {QString::fromStdString(body.name), body_inertia_kgm2(rig, axis, on_tilt, body), false});
  };
  if (axis == Axis::pan) {
    for (const Body& body : rig.on_pan) add(false, body);
  }
  for (const Body& body : rig.on_tilt) add(true, body);
  shares.push_back({Plots::tr("rotor × N²"), ratio * ratio * rotor, true});
  shares.push_back({Plots::tr("gearbox × N²"), ratio * ratio * gear, true});
  std::stable_sort(shares.begin(), shares.end(), [](const InertiaShare& a, const InertiaShare& b) {
    return a.inertia_kgm2 > b.inertia_kgm2;
  });
  return shares;
}

}  // namespace gazewright
