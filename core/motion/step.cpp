#include "core/motion/step.h"

#include <array>
#include <cmath>

#include "core/motion/step_advance.h"
#include "core/motion/step_control.h"

// Model, method and sources: resources/handbook/motion.md.
namespace gazewright {
namespace {

/// A step that can be carried on to a later time.
class StepRun {
 public:
  StepRun(const AxisModel& model, double move_rad)
      : drive_(model.drive),
        rate_Hz_(model.control.control_rate_Hz),
        far_rad_(far_rad(move_rad)),
        control_(model, move_rad),
        advance_(AxisDynamics(model, move_rad), sample_scale(model, move_rad)) {
    trace_.sample_time_s = 1 / rate_Hz_;
    add_row();
  }

  /// @pre outlives the run.
  void follow(const Profile& profile) { profile_ = &profile; }

  void run_to(double time_s, const std::stop_token& stop) {
    const auto rows = step_rows(time_s, rate_Hz_);
    reserve(rows);
    while (!ended_ && trace_.time_s.size() < rows) {
      if (trace_.time_s.size() % 256 == 0 && stop.stop_requested()) return;
      if (profile_ != nullptr) control_.follow(profile_->at(trace_.time_s.back()));
      const double next_Nm =
          control_.torque_command_Nm(state_.angle_rad.motor, state_.angle_rad.load);
      advance_.advance(state_, command_Nm_);
      command_Nm_ = next_Nm;
      ended_ = !(std::abs(state_.angle_rad.load) < far_rad_) ||
               !is_finite(state_.speed_radps + state_.angle_rad);
      if (!ended_) add_row();
    }
  }

  bool ended_early() const { return ended_; }
  const Trace& trace() const { return trace_; }
  Trace take() { return std::move(trace_); }

 private:
  void reserve(std::size_t rows) {
    for (auto* column :
         {&trace_.time_s, &trace_.angle_rad, &trace_.speed_radps, &trace_.motor_angle_rad,
          &trace_.current_A, &trace_.bus_A, &trace_.motor_speed_radps})
      column->reserve(rows);
  }

  void add_row() {
    const double motor_radps = state_.speed_radps.motor;
    const double torque_Nm = advance_.dynamics().acting_torque.at(state_.torque_Nm, motor_radps);
    const double current_A = torque_Nm / drive_.torque_constant_NmpA;
    trace_.time_s.push_back(static_cast<double>(trace_.time_s.size()) / rate_Hz_);
    trace_.angle_rad.push_back(state_.angle_rad.load);
    trace_.speed_radps.push_back(state_.speed_radps.load);
    trace_.motor_angle_rad.push_back(state_.angle_rad.motor);
    trace_.current_A.push_back(current_A);
    trace_.bus_A.push_back(bus_power_W(drive_, current_A, motor_radps) / drive_.bus_voltage_V);
    trace_.motor_speed_radps.push_back(motor_radps);
  }

  MotorDrive drive_;
  double rate_Hz_, far_rad_;
  StepControl control_;
  SampleAdvance<AxisDynamics> advance_;
  const Profile* profile_ = nullptr;  // null: a step
  AxisState state_;
  double command_Nm_ = 0;  // acts in the next sample: the computing delay
  bool ended_ = false;
  Trace trace_;
};

}  // namespace

double far_rad(double move_rad) { return kRunaway * std::max(std::abs(move_rad), 1e-3); }

std::size_t step_rows(double duration_s, double rate_Hz) {
  return static_cast<std::size_t>(std::floor(duration_s * rate_Hz + 1e-6)) + 1;
}

Trace simulate_step(const AxisModel& model, double move_rad, double duration_s,
                    const std::stop_token& stop) {
  StepRun run(model, move_rad);
  run.run_to(duration_s, stop);
  return run.take();
}

SettledStep simulate_until_settled(const AxisModel& model, double move_rad, double band_rad,
                                   const std::stop_token& stop, double most_s) {
  return simulate_until_settled(model, {ProfileKind::step, move_rad, 0, {}}, band_rad, stop,
                                most_s);
}

SettledStep simulate_until_settled(const AxisModel& model, const Profile& profile, double band_rad,
                                   const std::stop_token& stop, double most_s) {
  const double move_rad = profile.move_rad;
  StepRun run(model, move_rad);
  if (profile.kind != ProfileKind::step) run.follow(profile);
  StepFigures figures;
  for (const double horizon_s : kSettleHorizons_s) {
    run.run_to(profile.time_s + horizon_s, stop);
    figures = step_figures(run.trace(), move_rad, band_rad);
    const bool is_enough = figures.settle_time_s || profile.time_s + horizon_s > most_s;
    if (is_enough || run.ended_early() || stop.stop_requested()) break;
  }
  return {run.take(), figures};
}

}  // namespace gazewright
