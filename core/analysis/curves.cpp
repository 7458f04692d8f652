#include "core/analysis/curves.h"

#include <algorithm>
#include <cmath>

#include "core/analysis/inputs.h"

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

std::vector<double> output_torque_of(const AxisModel& model, const Trace& trace) {
  std::vector<double> torque(trace.time_s.size());
  for (std::size_t i = 0; i < torque.size(); ++i) {
    torque[i] = output_torque_Nm(model, trace.current_A[i] * model.drive.torque_constant_NmpA,
                                 trace.speed_radps[i] * model.gear.ratio);
  }
  return torque;
}

}  // namespace

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
  if (context.missing(kPixels, axis).empty()) curves.band_rad = context.band_rad();
  if (context.missing(kRigidMove, axis).empty()) {
    curves.envelope = envelope_of(context.model(axis));
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
  }
  return curves;
}

}  // namespace gazewright
