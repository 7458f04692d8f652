#include "core/analysis/homing_values.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/say.h"
#include "core/analysis/scan.h"
#include "core/analysis/travel_words.h"

namespace gazewright {

HomingBy homing_by(Context& c, Axis a) {
  if (c.model(a).control.encoder_at_output) return HomingBy::output;
  const std::string& by = c.rig().axis(a).homing.by.value;
  if (by == "flag") return HomingBy::flag;
  if (by == "output") return HomingBy::output;
  return by == "second_encoder" ? HomingBy::second_encoder : HomingBy::stop;
}

bool keeps_count(Context& c, Axis a) { return c.rig().axis(a).homing.keeps_count.value == "yes"; }

double encoder_turns(Context& c, Axis a) {
  return c.model(a).control.encoder_at_output ? 1 : c.model(a).gear.ratio;
}

double homing_speed_radps(Context& c, Axis a) {
  return c.rig().axis(a).homing.speed_radps.si.value_or(kUsualHomingSpeed_radps);
}

std::optional<double> searched_rad(Context& c, Axis a) {
  const auto& stops = c.travel(a).stops_rad;
  if (!stops) return std::nullopt;
  return std::isinf(*stops) ? 2 * M_PI : *stops;
}

double torque_per_ampere_NmpA(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  return model.gear.efficiency * model.gear.ratio * model.drive.torque_constant_NmpA;
}

namespace {

/// Between the stops; a turn about the centre where there are none or they are not known.
Interval between_stops(Context& c, Axis a) {
  const double reach = searched_rad(c, a).value_or(2 * M_PI) / 2, centre = c.travel(a).centre_rad;
  return {centre - reach, centre + reach};
}

/// Gravity and the cables' spring at the worst place of the search and the worst pose of the other
/// axis: after power-up that one may be anywhere.
double pull_in_search_Nm(Context& c, Axis a) {
  const Interval own = between_stops(c, a);
  const Interval other = between_stops(c, a == Axis::pan ? Axis::tilt : Axis::pan);
  AxisLoad load = c.model(a).load;
  double worst = 0;
  for (const double pose : telling_poses_rad(c.bodies(), a, other.least, other.most)) {
    load.gravity = gravity_curve(c.bodies(), a, pose);
    worst = std::max(worst, load.largest_pull_Nm(own.least, own.most));
  }
  return worst;
}

}  // namespace

double moving_torque_Nm(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const double through = model.gear.efficiency * model.gear.ratio;
  const Resistance resistance{
      .coulomb_Nm = model.load.coulomb_Nm,
      .pull_Nm = pull_in_search_Nm(c, a),
      .drag_Nm = through * model.gear.drag_Nm,
      .viscous_Nmsprad =
          model.load.viscous_Nmsprad + through * model.gear.ratio * model.gear.viscous_Nmsprad};
  return moving_torque_Nm(resistance, homing_speed_radps(c, a));
}

double stop_blow_Nm(Context& c, Axis a) {
  if (has_no_stops(c, a)) return 0;
  return stop_torque_Nm(moving_inertia_kgm2(c, a), homing_speed_radps(c, a),
                        c.rig().axis(a).stops.stiffness_Nmprad.value(), 0);
}

double gentle_torque_Nm(Context& c, Axis a) {
  const double peak = c.model(a).gear.peak_torque_Nm;
  return std::min(c.rig().axis(a).gearbox.rated_torque_Nm.si.value_or(peak), peak);
}

PushWindow push_window(Context& c, Axis a) {
  return push_window({.torque_per_ampere_NmpA = torque_per_ampere_NmpA(c, a),
                      .moving_Nm = moving_torque_Nm(c, a),
                      .blow_Nm = stop_blow_Nm(c, a),
                      .gentle_Nm = gentle_torque_Nm(c, a),
                      .current_A = c.model(a).drive.current_limit_A});
}

double stop_unsure_rad(Context& c, Axis a) {
  const AxisModel& model = c.model(a);
  const double push =
      model.load.coulomb_Nm + model.gear.efficiency * model.gear.ratio * model.gear.drag_Nm;
  const double stiffness = c.rig().axis(a).stops.stiffness_Nmprad.value();
  return model.gear.backlash_rad / 2 + push * (1 / stiffness + 1 / model.gear.stiffness_Nmprad);
}

double flag_unsure_rad(Context& c, Axis a) {
  return c.rig().axis(a).homing.flag_error_rad.value() + c.model(a).gear.backlash_rad / 2;
}

std::optional<Compared> lacking(Context& c, Axis a, std::span<const InputPath> inputs) {
  const auto missing = c.missing(inputs, a);
  if (missing.empty()) return std::nullopt;
  return Compared{std::nullopt, std::nullopt, say_needs(missing)};
}

}  // namespace gazewright
