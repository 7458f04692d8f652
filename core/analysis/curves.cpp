#include "core/analysis/curves.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/heat_values.h"
#include "core/analysis/inputs.h"
#include "core/heat/copper.h"

namespace gazewright {
namespace {

constexpr int kEnvelopePoints = 121;
constexpr auto kSpeedOverTravel = joined(joined(kRigidTrain, kTopSpeed), kSoft);

EnvelopeCurve envelope_of(const AxisModel& model) {
  EnvelopeCurve curve;
  const MotorDrive& drive = model.drive;
  const double free_speed = 1.5 * drive.phase_voltage_V() / drive.torque_constant_NmpA;
  for (int i = 0; i < kEnvelopePoints; ++i) {
    const double motor_speed = free_speed * i / (kEnvelopePoints - 1);
    const double kt = drive.torque_constant_NmpA;
    const double driving = kt * driving_current_A(drive, motor_speed);
    const double braking = kt * braking_current_A(drive, motor_speed);
    curve.speed_radps.push_back(motor_speed / model.gear.ratio);
    curve.driving_Nm.push_back(output_torque_Nm(model, driving, motor_speed));
    curve.braking_Nm.push_back(-output_torque_Nm(model, -braking, motor_speed));
  }
  return curve;
}

void add_heat(AxisCurves& curves, Context& context, Axis axis) {
  const auto knows = [&](const auto& inputs) { return context.missing(inputs, axis).empty(); };
  if (!knows(kWindingLimit)) return;
  const AxisModel& model = context.model(axis);
  const double limit_K = context.rig().axis(axis).motor.winding_limit_K.value();
  if (!context.is_quick()) {
    curves.winding_limit_K = limit_K;
    curves.hot_envelope = envelope_of(with_winding_at(model, limit_K));
  }
  if (!knows(kLasting) || !why_no_thermal(context, axis).empty()) return;
  const double loss_W = lasting_copper20_W(motor_thermal(context, axis), limit_K);
  const double lasting_A =
      std::sqrt(std::max(loss_W, 0.0) / (1.5 * model.drive.phase_resistance_ohm));
  curves.lasting_torque_Nm =
      output_torque_Nm(model, model.drive.torque_constant_NmpA * lasting_A, 0);
}

std::vector<double> output_torque_of(const AxisModel& model, const Trace& trace) {
  std::vector<double> torque(trace.time_s.size());
  for (std::size_t i = 0; i < torque.size(); ++i) {
    torque[i] = output_torque_Nm(model, trace.current_A[i] * model.drive.torque_constant_NmpA,
                                 trace.speed_radps[i] * model.gear.ratio);
  }
  return torque;
}

}  // namespace

AxisModel with_winding_at(AxisModel model, double winding_K) {
  model.drive.phase_resistance_ohm *= resistance_ratio(kTwentyCelsius_K, winding_K);
  return model;
}

double output_torque_Nm(const AxisModel& model, double motor_torque_Nm, double motor_speed_radps) {
  const GearTrain& gear = model.gear;
  const double peak = gear.peak_torque_Nm;
  if (motor_torque_Nm * motor_speed_radps >= 0) {
    return std::clamp(gear.efficiency * gear.ratio * motor_torque_Nm, -peak, peak);
  }
  // A gear that the load can hardly drive back holds with its own friction: only its peak limits.
  const double efficiency = std::max(gear.back_efficiency, 1e-3);
  return std::clamp(gear.ratio * motor_torque_Nm / efficiency, -peak, peak);
}

AxisCurves curves_of(Context& context, Axis axis) {
  AxisCurves curves;
  curves.travel = context.travel(axis);
  curves.move_rad = context.missing(std::array{InputPath("task.<axis>_move")}, axis).empty()
                        ? context.move_rad(axis)
                        : 0;
  if (context.missing(kToPixels, axis).empty()) curves.band_rad = context.band_rad();
  if (context.missing(kRigidMove, axis).empty()) {
    curves.envelope = envelope_of(context.model(axis));
    add_heat(curves, context, axis);
    if (auto path = fastest_move_path(context.model(axis), context.move_rad(axis))) {
      curves.fastest = std::move(*path);
    }
  }
  if (context.missing(kSpeedOverTravel, axis).empty()) {
    curves.speed_over_travel = speed_over_travel(context.model(axis), curves.travel);
  }
  if (context.missing(kStep, axis).empty()) {
    curves.step = context.step(axis).trace;
    curves.step_output_torque_Nm = output_torque_of(context.model(axis), curves.step);
    if (context.missing(kToPixels, axis).empty())
      curves.camera_rad = context.step_at_camera(axis).angle_rad;
  }
  return curves;
}

}  // namespace gazewright
