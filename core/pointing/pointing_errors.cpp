#include "core/pointing/pointing_errors.h"

#include <cmath>
#include <numbers>

#include "core/pointing/uncertainty.h"

namespace gazewright {

double ReadingError::deviation_rad() const {
  return std::hypot(standard_deviation(Distribution::arcsine, error_rad),
                    standard_deviation(Distribution::rectangular, half_count_rad));
}

ReadingError reading_error(const AxisModel& model, double error_rad, bool at_output) {
  const double through = at_output ? 1 : model.gear.ratio;
  return {error_rad / through, std::numbers::pi / model.control.encoder_counts / through};
}

double pair_tilt_rad(double play_m, double spacing_m) { return std::atan(play_m / spacing_m); }

double ring_tilt_rad(double axial_play_m, double pitch_diameter_m) {
  return std::atan(axial_play_m / pitch_diameter_m);
}

FrictionError friction_error(const AxisModel& model, double falling_Nm) {
  const AxisControl& control = model.control;
  const double breakaway_Nm = model.load.coulomb_Nm + falling_Nm;
  const double proportional = control.speed_gain_Nmsprad * control.position_gain_1ps;
  const double loops = proportional + control.speed_integral_gain_Nmprad;
  const double stiffness = model.gear.stiffness_Nmprad;
  return {.windup_rad = breakaway_Nm / stiffness,
          .stuck_rad = control.speed_integral_gain_Nmprad > 0
                           ? falling_Nm * (1 / loops + 1 / stiffness)
                           : breakaway_Nm / proportional};
}

double loop_droop_rad(const AxisModel& model, double torque_Nm) {
  const AxisControl& control = model.control;
  if (control.speed_integral_gain_Nmprad > 0) return 0;
  return torque_Nm / (control.speed_gain_Nmsprad * control.position_gain_1ps);
}

PullRange pull_range(const AxisLoad& load, double least_rad, double most_rad) {
  const double away_rad = std::max(std::abs(least_rad - load.cable_centre_rad),
                                   std::abs(most_rad - load.cable_centre_rad));
  const double bound_Nm = std::hypot(load.gravity.cos_Nm, load.gravity.sin_Nm) +
                          std::abs(load.gravity.constant_Nm) +
                          load.cable_stiffness_Nmprad * away_rad;
  // Lifted until it has one sign everywhere, the largest magnitude is the largest value.
  AxisLoad lifted = load, lowered = load;
  lifted.gravity.constant_Nm += bound_Nm;
  lowered.gravity.constant_Nm -= bound_Nm;
  return {bound_Nm - lowered.largest_pull_Nm(least_rad, most_rad),
          lifted.largest_pull_Nm(least_rad, most_rad) - bound_Nm};
}

}  // namespace gazewright
