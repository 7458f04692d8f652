#include "core/motion/ramp.h"

#include <algorithm>
#include <cmath>

#include "core/motion/rosenbrock.h"

namespace gazewright {
namespace {

constexpr std::size_t kMostSteps = 1000;
constexpr double kFirstPart = 1e-3;  // of the time the move would take at the first acceleration

double hermite(double y0, double slope0, double y1, double slope1, double h, double u) {
  const double u2 = u * u, u3 = u2 * u;
  return y0 * (2 * u3 - 3 * u2 + 1) + slope0 * h * (u3 - 2 * u2 + u) + y1 * (3 * u2 - 2 * u3) +
         slope1 * h * (u3 - u2);
}

double hermite_slope(double y0, double slope0, double y1, double slope1, double h, double u) {
  return 6 * u * (1 - u) * (y1 - y0) +
         h * ((1 - u) * (1 - 3 * u) * slope0 + u * (3 * u - 2) * slope1);
}

double within_gear(const AxisModel& model, double torque_Nm) {
  const double most = model.gear_torque_limit_Nm();
  return std::clamp(torque_Nm, -most, most);
}

}  // namespace

double train_acceleration_radps2(const AxisModel& model, double motor_torque_Nm, double speed_radps,
                                 double pull_Nm, double slip, double friction) {
  const GearTrain& gear = model.gear;
  const double motor_radps = gear.ratio * speed_radps;
  // N·J_m·a = at_input − τ/N·(1 + sign(τ)·share·slip) and J_L·a = τ + on_load.
  const double at_input =
      motor_torque_Nm - gear.drag_Nm * slip - gear.viscous_Nmsprad * motor_radps;
  const double on_load =
      pull_Nm - model.load.coulomb_Nm * friction - model.load.viscous_Nmsprad * speed_radps;
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

Ramp::Ramp(const AxisModel& model, double move_rad, Way way, double tolerance)
    : model_(model), move_rad_(move_rad), way_(way), tolerance_(tolerance) {
  points_.reserve(64);
  if (!can_start()) return;
  points_.front().slope_radps2 = slope_radps2(0, 0);
  const double time_s = std::sqrt(2 * move_rad_ / points_.front().slope_radps2);
  usual_radps_ = move_rad_ / time_s;
  step_s_ = kFirstPart * time_s;
}

bool Ramp::can_start() const {
  const double start = slope_radps2(0, 0, true);
  return start > 0 && std::isfinite(start);
}

double Ramp::torque_Nm(double speed_radps) const {
  return way_ == Way::speeding_up ? driving_torque_Nm(model_, speed_radps)
                                  : braking_torque_Nm(model_, speed_radps);
}

double Ramp::slope_radps2(double angle_rad, double speed_radps, bool full_friction) const {
  const bool rising = way_ == Way::speeding_up;
  const double from_rest = rising ? angle_rad - move_rad_ / 2 : move_rad_ / 2 - angle_rad;
  const auto sat = [&](double x) { return full_friction ? 1.0 : std::clamp(x, -1.0, 1.0); };
  const double acceleration = train_acceleration_radps2(
      model_, torque_Nm(speed_radps), speed_radps, model_.load.pull_Nm(from_rest),
      sat(speed_radps * model_.gear.ratio / kMotorSlope_radps),
      sat(speed_radps / kLoadSlope_radps));
  return rising ? acceleration : -acceleration;
}

bool Ramp::extend() {
  using One = Eigen::Matrix<double, 1, 1>;
  const RampPoint p = points_.back();
  const auto slope = [this](double, const One& angle, const One& speed) {
    return One(slope_radps2(angle[0], speed[0]));
  };
  const double here = p.slope_radps2;
  const double da = 1e-7 * move_rad_, dv = 1e-7 * (p.speed_radps + 1e-3);
  const SlopesInRows<1> slopes{One((slope_radps2(p.angle_rad + da, p.speed_radps) - here) / da),
                               One((slope_radps2(p.angle_rad, p.speed_radps + dv) - here) / dv),
                               One(0)};
  for (; points_.size() < kMostSteps && step_s_ > 0; ++tries_) {
    if (tries_ > kMostSteps) return false;
    const double h = step_s_;
    const auto to = rosenbrock_step(slope, slopes, One(p.angle_rad), One(p.speed_radps), h);
    const double wanted_radps = std::max(p.speed_radps, usual_radps_);
    const double error = std::max(std::abs(to.position_error[0]) / move_rad_,
                                  std::abs(to.speed_error[0]) / wanted_radps) /
                         tolerance_;
    const bool good = error <= 1;  // false where not a number
    step_s_ = h * (std::isfinite(error) ? step_factor(error) : 0.1);
    if (!good) continue;
    if (!(to.speed[0] > 0) || !(to.position[0] > p.angle_rad)) return false;
    points_.push_back(
        {p.time_s + h, to.position[0], to.speed[0], slope_radps2(to.position[0], to.speed[0])});
    return true;
  }
  return false;
}

RampPoint Ramp::between(const RampPoint& a, const RampPoint& b, double part) const {
  const double h = b.time_s - a.time_s;
  return {a.time_s + part * h,
          hermite(a.angle_rad, a.speed_radps, b.angle_rad, b.speed_radps, h, part),
          hermite(a.speed_radps, a.slope_radps2, b.speed_radps, b.slope_radps2, h, part)};
}

RampPoint Ramp::at_angle(double angle_rad) const {
  if (points_.size() < 2) return points_.front();
  const auto next =
      std::lower_bound(points_.begin() + 1, points_.end() - 1, angle_rad,
                       [](const RampPoint& p, double angle) { return p.angle_rad < angle; });
  const RampPoint &a = *(next - 1), &b = *next;
  const double h = b.time_s - a.time_s;
  double low = 0, high = 1, part = (angle_rad - a.angle_rad) / (b.angle_rad - a.angle_rad);
  for (int i = 0; i < 40; ++i) {  // Newton's method, halving where it leaves the bracket
    const double off =
        hermite(a.angle_rad, a.speed_radps, b.angle_rad, b.speed_radps, h, part) - angle_rad;
    if (std::abs(off) <= 1e-13 * move_rad_) break;
    (off < 0 ? low : high) = part;
    const double slope =
        hermite_slope(a.angle_rad, a.speed_radps, b.angle_rad, b.speed_radps, h, part);
    const double better = part - off / slope;
    part = better > low && better < high ? better : (low + high) / 2;
  }
  RampPoint point = between(a, b, part);
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
