#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/motion/axis_model.h"
#include "core/motion/lanes.h"
#include "core/motion/profile.h"

/// The sampled controller of design section 5.
namespace gazewright {

/// Of one axis, or of several of the same encoder side by side.
template <class Number>
class StepControlOf {
 public:
  using Mask = MaskOf<Number>;

  StepControlOf() = default;
  StepControlOf(const AxisModel& model, double target_rad) requires(kIsOne<Number>)
      : at_output_(model.control.encoder_at_output),
        position_gain_1ps_(model.control.position_gain_1ps),
        speed_gain_Nmsprad_(model.control.speed_gain_Nmsprad),
        integral_gain_Nmprad_(model.control.speed_integral_gain_Nmprad),
        speed_limit_radps_(model.control.speed_limit_radps),
        target_rad_(target_rad),
        sample_s_(1 / model.control.control_rate_Hz),
        rate_Hz_(model.control.control_rate_Hz),
        count_rad_(2 * std::numbers::pi / model.control.encoder_counts),
        per_count_(1 / count_rad_),
        per_ratio_(1 / model.gear.ratio),
        blend_(model.control.estimator_blend()),
        most_Nm_(model.gear.ratio *
                 std::min(model.drive.torque_constant_NmpA * model.drive.current_limit_A,
                          model.gear_torque_limit_Nm())),
        speed_ahead_(model.control.speed_feed_forward),
        inertia_ahead_kgm2_(model.control.acceleration_feed_forward *
                            (model.load.inertia_kgm2 + model.reflected_inertia_kgm2())) {}

  /// Takes the loop of one axis, as it is at the start of a step, into a lane.
  void set(int lane, const StepControlOf<double>& one) {
    at_output_ = one.at_output_;
    set_lane(position_gain_1ps_, lane, one.position_gain_1ps_);
    set_lane(speed_gain_Nmsprad_, lane, one.speed_gain_Nmsprad_);
    set_lane(integral_gain_Nmprad_, lane, one.integral_gain_Nmprad_);
    set_lane(speed_limit_radps_, lane, one.speed_limit_radps_);
    set_lane(target_rad_, lane, one.target_rad_);
    set_lane(sample_s_, lane, one.sample_s_);
    set_lane(rate_Hz_, lane, one.rate_Hz_);
    set_lane(count_rad_, lane, one.count_rad_);
    set_lane(per_count_, lane, one.per_count_);
    set_lane(per_ratio_, lane, one.per_ratio_);
    set_lane(blend_, lane, one.blend_);
    set_lane(most_Nm_, lane, one.most_Nm_);
    set_lane(last_rad_, lane, one.last_rad_);
    set_lane(speed_radps_, lane, one.speed_radps_);
    set_lane(integral_Nm_, lane, one.integral_Nm_);
  }

  /// Begins as a loop that has long held this torque at the output at this place. [N·m]
  void hold(double motor_rad, double angle_rad, double torque_Nm) {
    target_rad_ = last_rad_ = reading_rad(motor_rad, angle_rad);
    integral_Nm_ = torque_Nm;
  }

  /// What to follow in the next sample, with both feed-forwards. Never called for a step.
  void follow(const ProfilePoint& to) {
    target_rad_ = to.angle_rad;
    ahead_radps_ = speed_ahead_ * to.speed_radps;
    ahead_Nm_ = inertia_ahead_kgm2_ * to.acceleration_radps2;
  }

  /// Takes one sample and gives the motor torque that it commands. The first is taken at rest at
  /// angle 0, or after hold(). @param at  the lanes that take one; the others' result means
  /// nothing. [N·m]
  Number torque_command_Nm(Number motor_rad, Number angle_rad, Mask at = Number{} == Number{}) {
    const Number measured_rad = reading_rad(motor_rad, angle_rad);
    const Number speed_radps =
        speed_radps_ + blend_ * ((measured_rad - last_rad_) * rate_Hz_ - speed_radps_);
    const Number asked_radps = position_gain_1ps_ * (target_rad_ - measured_rad) + ahead_radps_;
    const Number wanted_radps = within(asked_radps, speed_limit_radps_);
    const Number error_radps = wanted_radps - speed_radps;
    const Number free_Nm = speed_gain_Nmsprad_ * error_radps + integral_Nm_ + ahead_Nm_;
    const Number torque_Nm = within(free_Nm, most_Nm_);
    const auto further_out =
        ((free_Nm > most_Nm_) & (error_radps > 0)) | ((free_Nm < -most_Nm_) & (error_radps < 0));
    const Number integral_Nm = integral_Nm_ + integral_gain_Nmprad_ * error_radps * sample_s_;
    integral_Nm_ = select(at & !further_out, integral_Nm, integral_Nm_);
    speed_radps_ = select(at, speed_radps, speed_radps_);
    last_rad_ = select(at, measured_rad, last_rad_);
    speed_limited_ = wanted_radps != asked_radps;
    torque_limited_ = torque_Nm != free_Nm;
    return torque_Nm * per_ratio_;
  }
  /// Whether the last command ran into the limit of torque (current or gearbox), and of speed.
  Mask torque_limited() const { return torque_limited_; }
  Mask speed_limited() const { return speed_limited_; }

 private:
  template <class Other>
  friend class StepControlOf;

  /// The encoder's angle, rounded down to a count, as an output angle.
  Number reading_rad(Number motor_rad, Number angle_rad) const {
    const Number shaft_rad = at_output_ ? angle_rad : motor_rad;
    const Number read_rad = floor_of(shaft_rad * per_count_) * count_rad_;
    return at_output_ ? read_rad : read_rad * per_ratio_;
  }
  /// Within ±most.
  static Number within(Number x, Number most) {
    return select(x < -most, -most, select(most < x, most, x));
  }

  bool at_output_ = false;
  Number position_gain_1ps_{}, speed_gain_Nmsprad_{}, integral_gain_Nmprad_{}, speed_limit_radps_{};
  Number target_rad_{}, sample_s_{}, rate_Hz_{}, count_rad_{}, per_count_{}, per_ratio_{};
  Number blend_{}, most_Nm_{};
  Number speed_ahead_{}, inertia_ahead_kgm2_{};
  Number ahead_radps_{}, ahead_Nm_{};
  Number last_rad_{}, speed_radps_{}, integral_Nm_{};
  Mask torque_limited_{}, speed_limited_{};
};
using StepControl = StepControlOf<double>;

}  // namespace gazewright
