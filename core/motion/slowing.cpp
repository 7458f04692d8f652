#include "core/motion/slowing.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/motion/ramp.h"

// Derivation: resources/handbook/travel.md.
namespace gazewright {
namespace {

constexpr double kJustTurning_radps = 1e-12;
constexpr int kSpeedParts = 128, kRoomParts = 32;
/// Gauss's rule of three points on −1…1.
constexpr std::array<double, 3> kNodes{-0.7745966692414834, 0, 0.7745966692414834};
constexpr std::array<double, 3> kWeights{5.0 / 9, 8.0 / 9, 5.0 / 9};

double motor_torque_Nm(const AxisModel& model, Slowing by, double speed_radps) {
  switch (by) {
    case Slowing::braking:
      return braking_torque_Nm(model, speed_radps);
    case Slowing::shorted:
      return -shorted_torque_Nm(model.drive, speed_radps * model.gear.ratio);
    case Slowing::open:
      break;
  }
  return 0;
}

}  // namespace

double shorted_torque_Nm(const MotorDrive& drive, double motor_speed_radps) {
  const double speed = std::abs(motor_speed_radps);
  const double e_V = drive.torque_constant_NmpA * speed / 1.5;
  const double R_ohm = drive.phase_resistance_ohm;
  const double X_ohm = drive.pole_pairs * speed * drive.phase_inductance_H;
  const double impedance_ohm2 = R_ohm * R_ohm + X_ohm * X_ohm;
  return impedance_ohm2 == 0 ? 0 : drive.torque_constant_NmpA * e_V * R_ohm / impedance_ohm2;
}

double slowing_radps2(const AxisModel& model, Slowing by, double speed_radps, double pushing_Nm) {
  // At rest nothing tells which way the gear would turn: just turning.
  const double speed = std::max(speed_radps, kJustTurning_radps);
  return -train_acceleration_radps2(model, motor_torque_Nm(model, by, speed), speed, pushing_Nm, 1,
                                    1);
}

double largest_acceleration_radps2(const AxisModel& model) {
  const double pull_Nm = std::abs(model.load.gravity.at(0));
  return std::max(
      {0.0, peak_acceleration_radps2(model), slowing_radps2(model, Slowing::braking, 0, -pull_Nm)});
}

std::optional<double> stopping_angle_rad(const AxisModel& model, Slowing by, double speed_radps,
                                         double pushing_Nm) {
  if (!(slowing_radps2(model, by, 0, pushing_Nm) >= 0)) return std::nullopt;
  const double half = speed_radps / kSpeedParts / 2;
  double sum = 0;
  for (int part = 0; part < kSpeedParts; ++part) {
    for (std::size_t k = 0; k < kNodes.size(); ++k) {
      const double speed = half * (2 * part + 1 + kNodes[k]);
      const double slowing = slowing_radps2(model, by, speed, pushing_Nm);
      if (!(slowing > 0) && speed > 0) return std::nullopt;
      if (speed > 0) sum += kWeights[k] * speed / slowing;
    }
  }
  return sum * half;
}

double speed_left_radps(const AxisModel& model, Slowing by, double speed_radps, double room_rad,
                        double pushing_Nm) {
  const auto needed = stopping_angle_rad(model, by, speed_radps, pushing_Nm);
  if (needed && *needed <= room_rad) return 0;
  double squared = speed_radps * speed_radps;
  for (int part = 0; part < kRoomParts; ++part) {
    squared = squared_speed_after(squared, room_rad / kRoomParts, [&](double at, double) {
      return -2 * slowing_radps2(model, by, std::sqrt(at), pushing_Nm);
    });
  }
  return std::sqrt(squared);
}

std::optional<double> sinking_speed_radps(const AxisModel& model, Slowing by, double pushing_Nm,
                                          double most_radps) {
  const auto slows = [&](double speed) {
    return slowing_radps2(model, by, speed, pushing_Nm) >= 0;
  };
  if (slows(0)) return std::nullopt;
  double slow = 0, fast = most_radps / 1024;  // the least speed that is not left lies between
  while (!slows(fast)) {
    if (fast >= most_radps) return std::nullopt;
    slow = fast;
    fast *= 2;
  }
  for (int i = 0; i < 40; ++i) {
    const double middle = (slow + fast) / 2;
    (slows(middle) ? fast : slow) = middle;
  }
  return fast;
}

}  // namespace gazewright
