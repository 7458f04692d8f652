#include "core/motion/ramp.h"

#include <algorithm>
#include <cmath>

namespace gazewright {
namespace {

constexpr int kStepsPerMove = 48;  // error of the move's time below 1e-5, see the convergence test
constexpr std::size_t kMostSteps = 20000;

double hermite(double y0, double slope0, double y1, double slope1, double h, double u) {
  const double u2 = u * u, u3 = u2 * u;
  return y0 * (2 * u3 - 3 * u2 + 1) + slope0 * h * (u3 - 2 * u2 + u) + y1 * (3 * u2 - 2 * u3) +
         slope1 * h * (u3 - u2);
}

double within_gear(const AxisModel& model, double torque_Nm) {
  const double most = model.gear_torque_limit_Nm();
  return std::clamp(torque_Nm, -most, most);
}

}  // namespace

double train_acceleration_radps2(const AxisModel& model, double motor_torque_Nm, double speed_radps,
                                 double gravity_Nm, double slip, double friction) {
  const GearTrain& gear = model.gear;
  const double motor_radps = gear.ratio * speed_radps;
  // N·J_m·a = at_input − τ/N·(1 + sign(τ)·share·slip) and J_L·a = τ + on_load.
  const double at_input =
      motor_torque_Nm - gear.drag_Nm * slip - gear.viscous_Nmsprad * motor_radps;
  const double on_load =
      gravity_Nm - model.load.coulomb_Nm * friction - model.load.viscous_Nmsprad * speed_radps;
  const double rotor = gear.ratio * gear.rotor_inertia_kgm2, load = model.load.inertia_kgm2;
  // The teeth carry torque along +φ where the motor alone would outrun the load alone.
  const double tooth_sign = at_input * load >= on_load * rotor ? 1.0 : -1.0;
  const bool motor_drives = tooth_sign * motor_radps >= 0;
  const double share = motor_drives ? 1 / gear.efficiency - 1 : 1 - gear.back_efficiency;
  const double carried = (1 + tooth_sign * share * slip) / gear.ratio;
  return (at_input + carried * on_load) / (rotor + carried * load);
}

double braking_torque_Nm(const AxisModel& model, double speed_radps) {
  const double motor_radps = speed_radps * model.gear.ratio;
  return within_gear(
      model, -model.drive.torque_constant_NmpA * braking_current_A(model.drive, motor_radps));
}

double driving_torque_Nm(const AxisModel& model, double speed_radps) {
  const double motor_radps = speed_radps * model.gear.ratio;
  return within_gear(
      model, model.drive.torque_constant_NmpA * driving_current_A(model.drive, motor_radps));
}

Ramp::Ramp(const AxisModel& model, double move_rad, Way way)
    : model_(model), move_rad_(move_rad), way_(way) {
  points_.reserve(2 * kStepsPerMove);
  if (can_start()) step_s_ = std::sqrt(2 * move_rad_ / slope_radps2(0, 0)) / kStepsPerMove;
}

bool Ramp::can_start() const {
  const double start = slope_radps2(0, 0);
  return start > 0 && std::isfinite(start);
}

double Ramp::torque_Nm(double speed_radps) const {
  return way_ == Way::speeding_up ? driving_torque_Nm(model_, speed_radps)
                                  : braking_torque_Nm(model_, speed_radps);
}

double Ramp::slope_radps2(double angle_rad, double speed_radps) const {
  const bool rising = way_ == Way::speeding_up;
  const double from_rest = rising ? angle_rad - move_rad_ / 2 : move_rad_ / 2 - angle_rad;
  const double acceleration = train_acceleration_radps2(model_, torque_Nm(speed_radps), speed_radps,
                                                        model_.load.gravity.at(from_rest), 1, 1);
  return rising ? acceleration : -acceleration;
}

bool Ramp::extend() {
  if (points_.size() >= kMostSteps) return false;
  const RampPoint& p = points_.back();
  const double h = step_s_, v1 = p.speed_radps, a1 = slope_radps2(p.angle_rad, v1);
  const double v2 = v1 + h / 2 * a1, a2 = slope_radps2(p.angle_rad + h / 2 * v1, v2);
  const double v3 = v1 + h / 2 * a2, a3 = slope_radps2(p.angle_rad + h / 2 * v2, v3);
  const double v4 = v1 + h * a3, a4 = slope_radps2(p.angle_rad + h * v3, v4);
  const RampPoint next{p.time_s + h, p.angle_rad + h / 6 * (v1 + 2 * v2 + 2 * v3 + v4),
                       v1 + h / 6 * (a1 + 2 * a2 + 2 * a3 + a4)};
  if (!(next.speed_radps > 0) || !(next.angle_rad > p.angle_rad)) return false;
  points_.push_back(next);
  if (points_.size() % (4 * kStepsPerMove) == 0) step_s_ *= 2;  // coasting for long
  return true;
}

RampPoint Ramp::between(const RampPoint& a, const RampPoint& b, double part) const {
  const double h = b.time_s - a.time_s;
  return {a.time_s + part * h,
          hermite(a.angle_rad, a.speed_radps, b.angle_rad, b.speed_radps, h, part),
          hermite(a.speed_radps, slope_radps2(a.angle_rad, a.speed_radps), b.speed_radps,
                  slope_radps2(b.angle_rad, b.speed_radps), h, part)};
}

RampPoint Ramp::at_angle(double angle_rad) const {
  if (points_.size() < 2) return points_.front();
  const auto next =
      std::lower_bound(points_.begin() + 1, points_.end() - 1, angle_rad,
                       [](const RampPoint& p, double angle) { return p.angle_rad < angle; });
  const RampPoint &a = *(next - 1), &b = *next;
  const double h = b.time_s - a.time_s;
  double low = 0, high = 1;
  for (int i = 0; i < 45; ++i) {
    const double middle = (low + high) / 2;
    const double angle = hermite(a.angle_rad, a.speed_radps, b.angle_rad, b.speed_radps, h, middle);
    (angle < angle_rad ? low : high) = middle;
  }
  RampPoint point = between(a, b, (low + high) / 2);
  point.angle_rad = angle_rad;
  return point;
}

RampPoint Ramp::at_time(double time_s) const {
  if (points_.size() < 2) return points_.front();
  const auto next =
      std::lower_bound(points_.begin() + 1, points_.end() - 1, time_s,
                       [](const RampPoint& p, double time) { return p.time_s < time; });
  const RampPoint &a = *(next - 1), &b = *next;
  return between(a, b, std::clamp((time_s - a.time_s) / (b.time_s - a.time_s), 0.0, 1.0));
}

}  // namespace gazewright
