#include "core/analysis/heat_values.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/say.h"
#include "core/data/materials.h"
#include "core/heat/copper.h"
#include "core/heat/limits.h"
#include "core/travel/soft_limits.h"
#include "core/words/words.h"

namespace gazewright {

std::string why_no_thermal(Context& c, Axis a) {
  const Motor& motor = c.rig().axis(a).motor;
  if (motor.winding_to_housing_KpW.si &&
      !(*motor.winding_to_housing_KpW.si < motor.thermal_resistance_KpW.value()))
    return words(
        "winding to housing is not below the whole thermal resistance, of which it is a part");
  return {};
}

MotorThermal motor_thermal(Context& c, Axis a) {
  const Motor& motor = c.rig().axis(a).motor;
  const Quantity& air = c.rig().surroundings.temperature_K;
  const double to_housing = motor.winding_to_housing_KpW.si.value_or(0);
  return {.to_housing_KpW = to_housing,
          .to_air_KpW = motor.thermal_resistance_KpW.value() - to_housing,
          .winding_time_s = motor.winding_time_s.si.value_or(motor_habits().winding_time_s),
          .housing_time_s = motor.thermal_time_s.value(),
          .air_K = air.value() + air.spread_si,
          .copper_perK = kCopper_perK};
}

MotorThermal stall_thermal(Context& c, Axis a) {
  return with_two_nodes(motor_thermal(c, a), motor_habits().winding_part,
                        motor_habits().winding_time_s);
}

const std::optional<DutyTemperatures>& duty_temperatures(Context& c, Axis a) {
  return c.kept<std::optional<DutyTemperatures>>(
      a, [&] { return steady_duty(motor_thermal(c, a), duty_heat(c, a).pieces); });
}

double holding_current_A(Context& c, Axis a, double pull_Nm) {
  const AxisModel& model = c.model(a);
  return std::min(std::abs(pull_Nm) / (model.gear.ratio * model.drive.torque_constant_NmpA),
                  model.drive.current_limit_A);
}

namespace {

/// Gravity and cables at the worst angle between the stops and the worst pose of the other axis.
double worst_hold_Nm(Context& c, Axis a) {
  const Travel& other = c.travel(a == Axis::pan ? Axis::tilt : Axis::pan);
  const double reach =
      other.stops_rad && std::isfinite(*other.stops_rad) ? *other.stops_rad / 2 : M_PI;
  AxisLoad load = c.model(a).load;
  double worst = 0;
  for (const double pose :
       telling_poses_rad(c.bodies(), a, other.centre_rad - reach, other.centre_rad + reach)) {
    load.gravity = gravity_curve(c.bodies(), a, pose);
    worst = std::max(worst, worst_pull_Nm(load, c.travel(a)));
  }
  return worst;
}

}  // namespace

const HoldHeat& hold_heat(Context& c, Axis a) {
  return c.kept<HoldHeat>(a, [&] {
    HoldHeat hold;
    const AxisModel& model = c.model(a);
    hold.pull_Nm = worst_hold_Nm(c, a);
    hold.wanted_A = hold.pull_Nm / (model.gear.ratio * model.drive.torque_constant_NmpA);
    hold.current_A = holding_current_A(c, a, hold.pull_Nm);
    hold.at = steady_windings(stall_thermal(c, a),
                              stalled_losses(model.drive.phase_resistance_ohm, hold.current_A));
    return hold;
  });
}

double mount_K(Context& c, Axis a, double housing_K) {
  const MotorThermal thermal = motor_thermal(c, a);
  const double drop_KpW = c.rig().axis(a).motor.housing_to_mount_KpW.si.value_or(0);
  const double heat_W = (housing_K - thermal.air_K) / thermal.to_air_KpW;
  return std::max(housing_K - drop_KpW * motor_habits().part_into_mount * heat_W, thermal.air_K);
}

std::optional<double> mount_limit_K(const Rig& rig, Axis axis) {
  const Motor& motor = rig.axis(axis).motor;
  if (motor.mount_limit_K.si) return motor.mount_limit_K.si;
  const auto material = find_material(rig, motor.mount_material);
  if (!material || !material->softening_K.has_value()) return std::nullopt;
  return least_of(material->softening_K);
}

double magnet_K(const Temperatures& at) { return (at.winding_K + at.housing_K) / 2; }

std::string duty_type(const DutyHeat& duty) {
  const double factor = duty.duty_factor();
  if (factor >= 0.995) return words("duty type S1, continuous");
  return words("duty type S3 %1, cycle %2", say_percent(factor), say(duty.cycle_s, "s", "s"));
}

}  // namespace gazewright
