#include "core/analysis/heat.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/heat_values.h"

namespace gazewright {
namespace {

constexpr int kPoints = 320;
constexpr double kTimeConstants = 5;   ///< shown, of the slower one: 99 % of the way
constexpr double kBeyondLimit_K = 60;  ///< a run ends so far above the winding's limit
constexpr double kWithoutLimit_K = 273.15 + 300;
constexpr std::array kMultiples{1.0, 1.5, 2.0, 3.0};
constexpr auto kCurve = joined(kDutyHeat, kLimitCurrent);

TimeAtCurrent times_at(Context& c, Axis a, double current_A, double lasting_A, double limit_K) {
  const MotorThermal motor = stall_thermal(c, a);
  const double ohm = c.rig().axis(a).motor.phase_resistance_ohm.value();
  const Temperatures air{motor.air_K, motor.air_K};
  const PhaseLosses turning = turning_losses(ohm, current_A);
  const auto& duty = duty_temperatures(c, a);
  const bool lasts = current_A <= lasting_A;
  TimeAtCurrent times{.of_lasting = current_A / lasting_A, .current_A = current_A};
  if (!lasts) times.turning_s = time_to_limit_s(motor, turning, air, limit_K);
  if (duty && !lasts) times.warm_s = time_to_limit_s(motor, turning, duty->hottest, limit_K);
  times.stalled_s = time_to_limit_s(motor, stalled_losses(ohm, current_A), air, limit_K);
  return times;
}

/// At multiples of the lasting current, and at the drive's limit.
std::vector<TimeAtCurrent> times_of(Context& c, Axis a, double limit_K) {
  std::vector<TimeAtCurrent> times;
  const double ohm = c.rig().axis(a).motor.phase_resistance_ohm.value();
  const double loss_W = lasting_copper20_W(motor_thermal(c, a), limit_K);
  if (!(loss_W > 0)) return times;
  const double lasting_A = std::sqrt(loss_W / (1.5 * ohm));
  for (const double multiple : kMultiples)
    times.push_back(times_at(c, a, multiple * lasting_A, lasting_A, limit_K));
  times.push_back(times_at(c, a, c.model(a).drive.current_limit_A, lasting_A, limit_K));
  std::ranges::stable_sort(times, {}, &TimeAtCurrent::current_A);
  return times;
}

}  // namespace

HeatCurve heat_curve(Context& c, Axis a) {
  HeatCurve curve;
  const Motor& parts = c.rig().axis(a).motor;
  curve.winding_limit_K = parts.winding_limit_K.si.value_or(0);
  curve.mount_limit_K = mount_limit_K(c.rig(), a).value_or(0);
  if (c.is_quick() || !c.missing(kCurve, a).empty() || !why_no_thermal(c, a).empty()) return curve;
  const DutyHeat& duty = duty_heat(c, a);
  if (!duty.because.empty()) return curve;
  const MotorThermal motor = motor_thermal(c, a);
  const double most_K = curve.winding_limit_K > 0
                            ? std::max(curve.winding_limit_K, motor.air_K) + kBeyondLimit_K
                            : kWithoutLimit_K;
  curve.runs_away = !duty_temperatures(c, a);
  curve.has_housing = motor.has_two_nodes();
  curve.duty = duty_type(duty);
  TemperatureRun run = run_duty(motor, duty.pieces, {motor.air_K, motor.air_K},
                                kTimeConstants * motor.housing_time_s, kPoints, most_K);
  if (!std::isfinite(run.winding_K.back())) {
    for (auto* column : {&run.time_s, &run.winding_K, &run.housing_K}) column->pop_back();
  }
  for (const double housing_K : run.housing_K) curve.mount_K.push_back(mount_K(c, a, housing_K));
  curve.time_s = std::move(run.time_s);
  curve.winding_K = std::move(run.winding_K);
  curve.housing_K = std::move(run.housing_K);
  if (curve.winding_limit_K > 0) curve.times = times_of(c, a, curve.winding_limit_K);
  return curve;
}

}  // namespace gazewright
