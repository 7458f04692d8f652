#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/motion/axis_model.h"
#include "core/motion/profile.h"

/// The sampled controller of design section 5.
namespace gazewright {

class StepControl {
 public:
  StepControl(const AxisModel& model, double target_rad)
      : control_(model.control),
        target_rad_(target_rad),
        sample_s_(1 / model.control.control_rate_Hz),
        count_rad_(2 * std::numbers::pi / model.control.encoder_counts),
        ratio_(model.gear.ratio),
        inertia_kgm2_(model.load.inertia_kgm2 + model.reflected_inertia_kgm2()),
        blend_(model.control.estimator_blend()),
        most_Nm_(model.gear.ratio *
                 std::min(model.drive.torque_constant_NmpA * model.drive.current_limit_A,
                          model.gear_torque_limit_Nm())) {}

  /// Begins as a loop that has long held this torque at the output at this place. [N·m]
  void hold(double motor_rad, double angle_rad, double torque_Nm) {
    target_rad_ = last_rad_ = reading_rad(motor_rad, angle_rad);
    integral_Nm_ = torque_Nm;
    first_ = false;
  }

  /// What to follow in the next sample, with both feed-forwards. Never called for a step.
  void follow(const ProfilePoint& to) {
    target_rad_ = to.angle_rad;
    ahead_radps_ = control_.speed_feed_forward * to.speed_radps;
    ahead_Nm_ = control_.acceleration_feed_forward * inertia_kgm2_ * to.acceleration_radps2;
  }

  /// Takes one sample and gives the motor torque that it commands. [N·m]
  double torque_command_Nm(double motor_rad, double angle_rad) {
    const double measured_rad = reading_rad(motor_rad, angle_rad);
    if (!first_) speed_radps_ += blend_ * ((measured_rad - last_rad_) / sample_s_ - speed_radps_);
    first_ = false;
    last_rad_ = measured_rad;
    const double asked_radps =
        control_.position_gain_1ps * (target_rad_ - measured_rad) + ahead_radps_;
    const double wanted_radps =
        std::clamp(asked_radps, -control_.speed_limit_radps, control_.speed_limit_radps);
    speed_limited_ = wanted_radps != asked_radps;
    const double error_radps = wanted_radps - speed_radps_;
    const double free_Nm = control_.speed_gain_Nmsprad * error_radps + integral_Nm_ + ahead_Nm_;
    const double torque_Nm = std::clamp(free_Nm, -most_Nm_, most_Nm_);
    torque_limited_ = torque_Nm != free_Nm;
    const bool further_out =
        (free_Nm > most_Nm_ && error_radps > 0) || (free_Nm < -most_Nm_ && error_radps < 0);
    if (!further_out) integral_Nm_ += control_.speed_integral_gain_Nmprad * error_radps * sample_s_;
    return torque_Nm / ratio_;
  }
  /// Whether the last command ran into the limit of torque (current or gearbox), and of speed.
  bool torque_limited() const { return torque_limited_; }
  bool speed_limited() const { return speed_limited_; }

 private:
  /// The encoder's angle, rounded down to a count, as an output angle.
  double reading_rad(double motor_rad, double angle_rad) const {
    const double shaft_rad = control_.encoder_at_output ? angle_rad : motor_rad;
    const double read_rad = std::floor(shaft_rad / count_rad_) * count_rad_;
    return control_.encoder_at_output ? read_rad : read_rad / ratio_;
  }

  AxisControl control_;
  double target_rad_, sample_s_, count_rad_, ratio_, inertia_kgm2_, blend_, most_Nm_;
  double ahead_radps_ = 0, ahead_Nm_ = 0;
  double last_rad_ = 0, speed_radps_ = 0, integral_Nm_ = 0;
  bool first_ = true, torque_limited_ = false, speed_limited_ = false;
};

}  // namespace gazewright
