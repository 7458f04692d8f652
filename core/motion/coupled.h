#pragma once

#include "core/bodies/two_axis.h"
#include "core/motion/step.h"

/// Both axes at once: the rigid two-axis rig of bodies.md behind both drive trains of design
/// section 5, which share one supply. Equations and rules: resources/handbook/motion.md.
namespace gazewright {

struct CoupledModel {
  std::array<AxisModel, 2> axis;  ///< by Axis; inertia and gravity come from the bodies instead
  RigBodies bodies;
};
/// @param rig  with defaults (see with_defaults).
CoupledModel coupled_model(const Rig& rig);

/// Angular accelerations of pan and tilt under torques at their outputs, nothing between them:
/// M(q)q̈ = torque + gravity − C(q, q̇)q̇. Rotors, friction and gears are left out. [rad/s²]
Eigen::Vector2d rigid_acceleration_radps2(const RigBodies& bodies, const Eigen::Vector2d& angle_rad,
                                          const Eigen::Vector2d& rate_radps,
                                          const Eigen::Vector2d& torque_Nm);

/// The same carried over a time with the torques held: one Runge-Kutta step of order 4.
struct RigidState {
  PanTilt angle_rad, rate_radps;
};
RigidState rigid_step(const TwoAxisEquations& equations, const RigidState& from, PanTilt torque_Nm,
                      double step_s);

/// What both axes do from rest, a row for each control sample of the quicker drive.
struct CoupledTrace {
  std::array<Trace, 2> axis;  ///< by Axis; of the same rows
  std::vector<double> bus_A;  ///< of both together
  bool ran_away = false;      ///< ended before its time, at 1e6 times the move
  double short_s = 0;         ///< time in which the supply could not give what both drives wanted

  const Trace& of(Axis a) const { return axis[static_cast<std::size_t>(a)]; }
};

/// What both axes are told to do. Angles of a trace count from where its axis began.
struct BothMoves {
  PanTilt from_rad;  ///< from the rest pose
  PanTilt move_rad;
  PanTilt begin_s{};  ///< until then an axis holds its place
};
/// Each move centred on the rest pose, an axis without one at rest; both begun at once.
BothMoves centred(PanTilt move_rad);

/// Simulates them. An axis whose move is 0 or comes later holds its place: it begins with its
/// teeth and its torque against gravity and cable, as if it had stood there for long. One that
/// moves at once begins as in simulate_step.
CoupledTrace simulate_moves(const CoupledModel& model, const BothMoves& moves, double duration_s,
                            const std::stop_token& stop = {});
/// The task's kind: centred moves.
CoupledTrace simulate_both(const CoupledModel& model, PanTilt move_rad, double duration_s,
                           const std::stop_token& stop = {});

/// As long as it takes to see those that move settle: 0.6 s, then 2 s, then 6 s.
struct SettledMoves {
  CoupledTrace trace;
  std::array<StepFigures, 2> figures;   ///< of an axis that moves
  std::optional<double> settle_time_s;  ///< of all that move; empty: not within the horizon
};
SettledMoves simulate_moves_until_settled(const CoupledModel& model, const BothMoves& moves,
                                          double band_rad, const std::stop_token& stop = {});
SettledMoves simulate_both_until_settled(const CoupledModel& model, PanTilt move_rad,
                                         double band_rad, const std::stop_token& stop = {});

}  // namespace gazewright
