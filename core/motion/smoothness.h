#pragma once

#include <complex>
#include <optional>
#include <vector>

#include "core/motion/axis_model.h"

/// Slow, steady turning: what friction, cogging and counts do to it, by the linear model of loop.h.
namespace gazewright {

/// What section 5 leaves out because it matters at low speed only.
struct SlowParts {
  double cogging_Nm = 0, cogging_per_turn = 0;  ///< amplitude and periods at the rotor
  double falling_Nm = 0;      ///< breakaway less Coulomb friction, at the output, ≥ 0
  double stribeck_radps = 0;  ///< > 0
};
SlowParts slow_parts(const Rig& rig, Axis axis);

/// Coulomb + falling·exp(−(speed/stribeck)²), speed ≥ 0, without the viscous part. [N·m]
/// Source: Armstrong-Hélouvry; Canudas de Wit et al., IEEE TAC 40 (1995) 419 (steady state).
double stribeck_friction_Nm(double coulomb_Nm, double falling_Nm, double stribeck_radps,
                            double speed_radps);

/// Output angle per torque on the rotor, both loops closed and at rest. [rad/(N·m)]
std::complex<double> compliance_radpNm(const AxisModel& model, double w_radps);
/// Output angle per error of the reading (the same angle), both loops closed; 1 at rest.
std::complex<double> reading_gain(const AxisModel& model, double w_radps);

/// Whether both sampled loops come to rest, gear wound tight, with this viscous friction more on
/// the load: all poles of the exactly sampled train inside the unit circle. [N·m·s/rad]
bool is_steady(const AxisModel& model, double more_viscous_Nmsprad);
/// The same poles as rates: −decay ± j·frequency; empty where they cannot be worked out. [1/s]
std::vector<std::complex<double>> loop_poles_1ps(const AxisModel& model,
                                                 double more_viscous_Nmsprad = 0);

/// The lowest speed at which the axis turns steadily, and what sets it. [rad/s]
struct SlowLimits {
  double friction_radps = 0;  ///< below it the falling friction makes it stick and slip
  double cogging_radps = 0;   ///< below it the cogging's ripple would stop it in each period
  double encoder_radps = 0;   ///< below it the counts' ripple would stop it in each count
  double lowest_radps() const;
};
/// Empty where the loops swing by themselves.
std::optional<SlowLimits> slow_limits(const AxisModel& model, const SlowParts& parts);

/// The speed that one count stands for in the estimate: the jump that one count in a sample makes.
double speed_resolution_radps(const AxisModel& model);

/// Amplitudes of the output's ripple at a speed. [rad]
double cogging_ripple_rad(const AxisModel& model, const SlowParts& parts, double speed_radps);
double encoder_ripple_rad(const AxisModel& model, double speed_radps);
/// The speed at which the cogging's ripple is largest.
struct WorstRipple {
  double speed_radps = 0, ripple_rad = 0;
};
WorstRipple worst_cogging(const AxisModel& model, const SlowParts& parts);

/// How far the output jumps when it breaks away from rest: 2·falling/stiffness, the loops' and the
/// gear's springs in series, nothing damped. [rad]
double stick_slip_jump_rad(const AxisModel& model, const SlowParts& parts);

}  // namespace gazewright
