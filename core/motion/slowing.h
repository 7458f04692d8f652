#pragma once

#include <optional>

#include "core/motion/axis_model.h"

/// How the rigid train of design section 5 loses its speed, with and without the drive.
namespace gazewright {

/// What the motor does meanwhile: brakes at the end of its envelope, turns with its phases open, or
/// turns with its phases shorted.
enum class Slowing { braking, open, shorted };

/// Torque of a turning motor whose phases are joined, a magnitude: Kt·i with the part of the phase
/// current that is in step with the back-EMF, i = e·R/(R² + X²), e = Kt·ω_m/1.5, X = p·ω_m·L. The
/// currents of a steady speed; the surge right after the joining is left out. [N·m]
/// Source: steady short circuit of a round synchronous machine, from memory.
double shorted_torque_Nm(const MotorDrive& drive, double motor_speed_radps);

/// Speed lost per time at an output speed ω ≥ 0; negative: it gains speed. Friction acts in full at
/// standstill. @param pushing_Nm  gravity and cables along the motion. [rad/s²]
double slowing_radps2(const AxisModel& model, Slowing by, double speed_radps, double pushing_Nm);

/// Largest angular acceleration of either sign that the axis makes: starting, or braking from next
/// to no speed with the help of friction, losses and gravity at the rest pose. Never below 0.
/// [rad/s²]
double largest_acceleration_radps2(const AxisModel& model);

/// ∫ ω/slowing dω from rest to `speed_radps` with the push held still; Gauss's rule over speed.
/// Empty where some speed on the way down is never left. [rad]
std::optional<double> stopping_angle_rad(const AxisModel& model, Slowing by, double speed_radps,
                                         double pushing_Nm);

/// Speed that is left after `room_rad`, the push held still; 0 where it has come to rest before.
/// Greater than at the start where the push outweighs what slows it. [rad/s]
double speed_left_radps(const AxisModel& model, Slowing by, double speed_radps, double room_rad,
                        double pushing_Nm);

/// The speed at which what slows it just balances the push, from there on it sinks steadily; empty
/// where it comes to rest, or where it gains speed even at `most_radps`. [rad/s]
std::optional<double> sinking_speed_radps(const AxisModel& model, Slowing by, double pushing_Nm,
                                          double most_radps);

/// One step of d(ω²)/dx = rate(ω²) over `length` by Runge and Kutta's rule; never below zero.
template <class Rate>
double squared_speed_after(double squared, double length, Rate rate) {
  const auto at = [](double value) { return value > 0 ? value : 0.0; };
  const double a = rate(at(squared), 0.0);
  const double b = rate(at(squared + a * length / 2), 0.5);
  const double c = rate(at(squared + b * length / 2), 0.5);
  const double d = rate(at(squared + c * length), 1.0);
  return at(squared + length / 6 * (a + 2 * b + 2 * c + d));
}

}  // namespace gazewright
