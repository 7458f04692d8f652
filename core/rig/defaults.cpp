#include <algorithm>

#include "core/heat/limits.h"
#include "core/rig/field_walk.h"
#include "core/supply/supply_rules.h"
#include "core/travel/bend_rule.h"
#include "core/travel/cable_twist.h"

namespace gazewright {
namespace {

void fill_default(const FieldRef& field) {
  if (const auto* quantity = std::get_if<QuantityRef>(&field)) {
    if (quantity->quantity->has_value() || !quantity->info->fallback) return;
    *quantity->quantity = si_quantity(*quantity->info->fallback, Source::by_default);
  } else if (const auto* choice = std::get_if<ChoiceRef>(&field)) {
    if (choice->choice->value.empty()) choice->choice->value = choice->info->options.front();
  }
}

void fill_with(Quantity& quantity, const std::optional<double>& value_si) {
  if (!quantity.has_value() && value_si) quantity = si_quantity(*value_si, Source::by_default);
}

/// Defaults that follow from other fields.
void fill_following(AxisParts& axis) {
  if (const auto& efficiency = axis.gearbox.efficiency.si)
    fill_with(axis.gearbox.back_efficiency, std::max(0.0, 2 - 1 / *efficiency));
  if (const auto& outer_m = axis.cable.outer_diameter_m.si) {
    fill_with(axis.cable.thickness_m, *outer_m);
    const double bent_m = std::min(*outer_m, *axis.cable.thickness_m.si);
    fill_with(axis.cable.bend_radius_m, bend_rule(bent_m < *outer_m).lasting * bent_m);
    fill_with(axis.cable.lay_radius_m, packed_lay_radius_m(axis.cable.count.value(), *outer_m));
  }
  fill_with(axis.homing.park_rad, axis.homing.home_rad.si);
  fill_with(axis.friction.breakaway_Nm, axis.friction.coulomb_Nm.si);
  fill_with(axis.motor.winding_limit_K, insulation_limit_K(axis.motor.insulation.value));
}

void fill_following(Rig& rig) {
  if (const auto& trip_V = rig.supply.trip_voltage_V.si)
    fill_with(rig.supply.brake_voltage_V, supply_rules().chopper_of_trip * *trip_V);
  fill_with(rig.tracking.passing_distance_m, rig.task.target_distance_m.si);
  for (Detector& detector : rig.detectors) {
    fill_with(detector.frame_rate_Hz, rig.camera.frame_rate_Hz.si);
    fill_with(detector.delay_s, rig.camera.delay_s.si);
  }
}

}  // namespace

Rig with_defaults(const Rig& rig) {
  Rig filled = rig;
  FieldWalk fields{{}, false};
  add_all(fields, filled);
  for (const FieldRef& field : fields.found) fill_default(field);
  for (Axis axis : kAxes) fill_following(filled.axis(axis));
  fill_following(filled);
  return filled;
}

}  // namespace gazewright
