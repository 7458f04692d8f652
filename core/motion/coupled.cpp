#include "core/motion/coupled.h"

#include <cmath>

#include "core/motion/coupled_dynamics.h"
#include "core/motion/step_advance.h"
#include "core/motion/step_control.h"

// Model, sharing of the supply and sources: resources/handbook/motion.md.
namespace gazewright {
namespace {

constexpr double kSameTime = 1e-6;  // of a row: samples of both drives closer than this coincide

double of(PanTilt both, int lane) { return lane == 0 ? both.pan : both.tilt; }

SampleScale<BothAxes> both_scales(const CoupledModel& model, PanTilt move_rad) {
  // An axis that holds is measured by the other's move.
  const double larger_rad = std::max(std::abs(move_rad.pan), std::abs(move_rad.tilt));
  SampleScale<BothAxes> scale{kInfinity, {}, {}, {}};
  for (int lane = 0; lane < 2; ++lane) {
    const double own_rad = of(move_rad, lane);
    const SampleScale<double> one = sample_scale(model.axis[static_cast<std::size_t>(lane)],
                                                 own_rad == 0 ? larger_rad : own_rad);
    scale.sample_s = std::min(scale.sample_s, one.sample_s);
    scale.lag_1ps[lane] = one.lag_1ps;
    scale.move_rad[lane] = one.move_rad;
    scale.ratio[lane] = one.ratio;
  }
  return scale;
}

/// Both moves, which can be carried on to a later time.
class BothRun {
 public:
  BothRun(const CoupledModel& model, const BothMoves& moves)
      : model_(model),
        moves_(moves),
        far_rad_(far_rad(std::max(std::abs(moves.move_rad.pan), std::abs(moves.move_rad.tilt)))),
        sample_s_{1 / model.axis[0].control.control_rate_Hz,
                  1 / model.axis[1].control.control_rate_Hz},
        row_s_(std::min(sample_s_[0], sample_s_[1])),
        control_{StepControl(model.axis[0], moves.move_rad.pan),
                 StepControl(model.axis[1], moves.move_rad.tilt)},
        advance_(CoupledDynamics(model, moves.from_rad), both_scales(model, moves.move_rad)) {
    const BothAxes pull_Nm = advance_.dynamics().pull_Nm(BothAxes{});
    for (int lane = 0; lane < 2; ++lane) {
      waits_[lane] = of(moves.begin_s, lane) > 0 && of(moves.move_rad, lane) != 0;
      if (waits_[lane] || of(moves.move_rad, lane) == 0) hold(lane, pull_Nm[lane]);
    }
    trace_.axis[0].sample_time_s = trace_.axis[1].sample_time_s = row_s_;
    add_row();
  }

  void run_to(double time_s, const std::stop_token& stop) {
    const auto rows = static_cast<std::size_t>(std::floor(time_s / row_s_ + 1e-6)) + 1;
    reserve(rows);
    while (!trace_.ran_away && trace_.bus_A.size() < rows) {
      if (trace_.bus_A.size() % 256 == 0 && stop.stop_requested()) return;
      advance_one_row();
      trace_.ran_away = !is_finite(state_.speed_radps + state_.angle_rad) ||
                        !(largest_of(magnitude(state_.angle_rad.load)) < far_rad_);
      if (!trace_.ran_away) add_row();
    }
  }

  const CoupledTrace& trace() const { return trace_; }
  CoupledTrace take() { return std::move(trace_); }

 private:
  /// Teeth and torque carry what pulls, and the loop is at rest there.
  void hold(int lane, double pull_Nm) {
    const auto k = static_cast<std::size_t>(lane);
    const GearTrain& gear = model_.axis[k].gear;
    const double twist_rad = pull_Nm == 0 ? 0
                                          : -pull_Nm / gear.stiffness_Nmprad -
                                                std::copysign(gear.backlash_rad / 2, pull_Nm);
    state_.angle_rad.motor[lane] = gear.ratio * twist_rad;
    state_.torque_Nm[lane] = command_Nm_[lane] = waiting_Nm_[lane] = -pull_Nm / gear.ratio;
    control_[lane].hold(state_.angle_rad.motor[lane], 0, -pull_Nm);
  }

  /// To the next row. Samples of the slower drive are taken at their own times.
  void advance_one_row() {
    const double begin_s = time_s_, end_s = static_cast<double>(trace_.bus_A.size()) * row_s_;
    do {
      double until_s = end_s;
      for (int lane = 0; lane < 2; ++lane) {
        if (next_s(lane) <= time_s_ + kSameTime * row_s_) sample(lane);
        if (next_s(lane) < end_s - kSameTime * row_s_) until_s = std::min(until_s, next_s(lane));
      }
      const bool whole = time_s_ == begin_s && until_s == end_s;
      advance_.set_sample(whole ? row_s_ : until_s - time_s_);
      advance_.advance(state_, command_Nm_);
      time_s_ = until_s;
    } while (time_s_ < end_s);
  }

  double next_s(int lane) const { return static_cast<double>(taken_[lane]) * sample_s_[lane]; }

  /// The command of the last sample begins to act: the computing delay.
  void sample(int lane) {
    if (waits_[lane] && time_s_ >= of(moves_.begin_s, lane)) {
      control_[lane].follow({.angle_rad = of(moves_.move_rad, lane)});
      waits_[lane] = false;
    }
    command_Nm_[lane] = waiting_Nm_[lane];
    waiting_Nm_[lane] =
        control_[lane].torque_command_Nm(state_.angle_rad.motor[lane], state_.angle_rad.load[lane]);
    ++taken_[lane];
  }

  void reserve(std::size_t rows) {
    trace_.bus_A.reserve(rows);
    for (Trace& trace : trace_.axis) {
      for (auto* column :
           {&trace.time_s, &trace.angle_rad, &trace.speed_radps, &trace.motor_angle_rad,
            &trace.motor_speed_radps, &trace.current_A, &trace.bus_A})
        column->reserve(rows);
    }
  }

  void add_row() {
    const SharedTorque& acting = advance_.dynamics().acting_torque;
    const BothAxes motor_radps = state_.speed_radps.motor;
    const BothAxes torque_Nm = acting.at(state_.torque_Nm, motor_radps);
    const double time_s = static_cast<double>(trace_.bus_A.size()) * row_s_;
    double bus_A = 0;
    for (int lane = 0; lane < 2; ++lane) {
      const auto k = static_cast<std::size_t>(lane);
      const MotorDrive& drive = model_.axis[k].drive;
      Trace& trace = trace_.axis[k];
      const double current_A = torque_Nm[lane] / drive.torque_constant_NmpA;
      trace.time_s.push_back(time_s);
      trace.angle_rad.push_back(state_.angle_rad.load[lane]);
      trace.speed_radps.push_back(state_.speed_radps.load[lane]);
      trace.motor_angle_rad.push_back(state_.angle_rad.motor[lane]);
      trace.motor_speed_radps.push_back(motor_radps[lane]);
      trace.current_A.push_back(current_A);
      trace.bus_A.push_back(bus_power_W(drive, current_A, motor_radps[lane]) / drive.bus_voltage_V);
      bus_A += trace.bus_A.back();
    }
    trace_.bus_A.push_back(bus_A);
    if (bits_of(torque_Nm != state_.torque_Nm) != 0 &&
        acting.part(state_.torque_Nm, motor_radps) < 1)
      trace_.short_s += row_s_;
  }

  CoupledModel model_;
  BothMoves moves_;
  bool waits_[2] = {false, false};  // holds until its move begins
  double far_rad_, sample_s_[2], row_s_;
  StepControl control_[2];
  SampleAdvance<CoupledDynamics> advance_;
  AxisStateOf<BothAxes> state_;
  BothAxes command_Nm_{}, waiting_Nm_{};
  double time_s_ = 0;
  long taken_[2] = {0, 0};  // samples of each drive
  CoupledTrace trace_;
};

std::array<StepFigures, 2> figures_of(const CoupledTrace& trace, PanTilt move_rad,
                                      double band_rad) {
  return {step_figures(trace.axis[0], move_rad.pan, band_rad),
          step_figures(trace.axis[1], move_rad.tilt, band_rad)};
}

std::optional<double> settle_time_s(const std::array<StepFigures, 2>& figures, PanTilt move_rad) {
  double last_s = 0;
  for (int lane = 0; lane < 2; ++lane) {
    const auto& settle_s = figures[static_cast<std::size_t>(lane)].settle_time_s;
    if (of(move_rad, lane) == 0) continue;
    if (!settle_s) return {};
    last_s = std::max(last_s, *settle_s);
  }
  return last_s;
}

}  // namespace

CoupledModel coupled_model(const Rig& rig) {
  const RigBodies bodies = rig_bodies(rig);
  return {{axis_model(rig, bodies, Axis::pan), axis_model(rig, bodies, Axis::tilt)}, bodies};
}

Eigen::Vector2d rigid_acceleration_radps2(const RigBodies& bodies, const Eigen::Vector2d& angle_rad,
                                          const Eigen::Vector2d& rate_radps,
                                          const Eigen::Vector2d& torque_Nm) {
  const PanTilt result = TwoAxisEquations(bodies).accelerations_radps2(
      Turn::of(angle_rad[0]), Turn::of(angle_rad[1]), {rate_radps[0], rate_radps[1]},
      {torque_Nm[0], torque_Nm[1]});
  return {result.pan, result.tilt};
}

RigidState rigid_step(const TwoAxisEquations& equations, const RigidState& from, PanTilt torque_Nm,
                      double step_s) {
  const Turn pan = Turn::of(from.angle_rad.pan), tilt = Turn::of(from.angle_rad.tilt);
  const auto acceleration = [&](PanTilt off_rad, PanTilt rate) {
    return equations.accelerations_radps2(pan.by(off_rad.pan), tilt.by(off_rad.tilt), rate,
                                          torque_Nm);
  };
  const PanTilt v1 = from.rate_radps, a1 = acceleration({}, v1);
  const PanTilt v2 = v1 + step_s / 2 * a1, a2 = acceleration(step_s / 2 * v1, v2);
  const PanTilt v3 = v1 + step_s / 2 * a2, a3 = acceleration(step_s / 2 * v2, v3);
  const PanTilt v4 = v1 + step_s * a3, a4 = acceleration(step_s * v3, v4);
  return {from.angle_rad + step_s / 6 * (v1 + 2 * v2 + 2 * v3 + v4),
          v1 + step_s / 6 * (a1 + 2 * a2 + 2 * a3 + a4)};
}

BothMoves centred(PanTilt move_rad) { return {-0.5 * move_rad, move_rad}; }

CoupledTrace simulate_moves(const CoupledModel& model, const BothMoves& moves, double duration_s,
                            const std::stop_token& stop) {
  BothRun run(model, moves);
  run.run_to(duration_s, stop);
  return run.take();
}

CoupledTrace simulate_both(const CoupledModel& model, PanTilt move_rad, double duration_s,
                           const std::stop_token& stop) {
  return simulate_moves(model, centred(move_rad), duration_s, stop);
}

SettledMoves simulate_moves_until_settled(const CoupledModel& model, const BothMoves& both,
                                          double band_rad, const std::stop_token& stop) {
  const PanTilt move_rad = both.move_rad;
  BothRun run(model, both);
  SettledMoves moves;
  for (const double horizon_s : kSettleHorizons_s) {
    run.run_to(horizon_s, stop);
    moves.figures = figures_of(run.trace(), move_rad, band_rad);
    moves.settle_time_s = settle_time_s(moves.figures, move_rad);
    if (moves.settle_time_s || run.trace().ran_away || stop.stop_requested()) break;
  }
  moves.trace = run.take();
  return moves;
}

SettledMoves simulate_both_until_settled(const CoupledModel& model, PanTilt move_rad,
                                         double band_rad, const std::stop_token& stop) {
  return simulate_moves_until_settled(model, centred(move_rad), band_rad, stop);
}

}  // namespace gazewright
