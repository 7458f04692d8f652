#pragma once

#include <array>

#include "core/motion/axis_model.h"
#include "core/motion/motor_and_load.h"

/// Motor, gear with its gap, and friction of design section 5 with their constants worked out
/// beforehand; for one axis or for both side by side.
namespace gazewright {

/// Slopes of torques by angles and speeds of motor and load; of the motor's torque, then the
/// load's.
template <class Number>
struct TrainSlopes {
  MotorAndLoadOf<Number> motor_by_angle, load_by_angle, motor_by_speed, load_by_speed;
};

template <class Number>
class DriveTrain {
 public:
  using Pair = MotorAndLoadOf<Number>;

  explicit DriveTrain(const std::array<const AxisModel*, kLanes<Number>>& models) {
    for (int lane = 0; lane < kLanes<Number>; ++lane) {
      const GearTrain& gear = models[lane]->gear;
      const AxisLoad& load = models[lane]->load;
      set_lane(stiffness_Nmprad_, lane, gear.stiffness_Nmprad);
      set_lane(damping_Nmsprad_, lane, gear.damping_Nmsprad);
      set_lane(drag_Nm_, lane, gear.drag_Nm);
      set_lane(viscous_Nmsprad_, lane, gear.viscous_Nmsprad);
      set_lane(half_gap_rad_, lane, gear.backlash_rad / 2);
      set_lane(per_ratio_, lane, 1 / gear.ratio);
      set_lane(driving_loss_, lane, 1 / gear.efficiency - 1);
      set_lane(back_driving_loss_, lane, 1 - gear.back_efficiency);
      set_lane(per_rotor_, lane, 1 / gear.rotor_inertia_kgm2);
      set_lane(coulomb_Nm_, lane, load.coulomb_Nm);
      set_lane(load_viscous_Nmsprad_, lane, load.viscous_Nmsprad);
    }
  }

  /// Torque of the teeth on the load. They push and never pull. [N·m]
  Number tooth_torque_Nm(Pair angle, Pair speed) const {
    const Number twist = angle.motor * per_ratio_ - angle.load;
    const auto touches = magnitude(twist) > half_gap_rad_;
    if (bits_of(touches) == 0) return Number{};
    const Number windup = twist - with_sign(half_gap_rad_, twist);
    const Number torque =
        stiffness_Nmprad_ * windup + damping_Nmsprad_ * (speed.motor * per_ratio_ - speed.load);
    return select(touches, select(torque * twist > 0, torque, Number{}), Number{});
  }

  /// dω_m/dt under the torque that acts in the motor. [rad/s²]
  Number motor_radps2(Number acting_Nm, Number tooth_Nm, Number motor_radps) const {
    const Number at_input = tooth_Nm * per_ratio_;
    const Number loss = magnitude(at_input) *
                        select(tooth_Nm * motor_radps >= 0, driving_loss_, back_driving_loss_);
    return (acting_Nm - (drag_Nm_ + loss) * saturated(kPerMotorSlope_sprad * motor_radps) -
            viscous_Nmsprad_ * motor_radps - at_input) *
           per_rotor_;
  }

  /// What teeth and friction give the load. [N·m]
  Number moving_Nm(Number tooth_Nm, Number load_radps) const {
    return tooth_Nm - coulomb_Nm_ * saturated(kPerLoadSlope_sprad * load_radps) -
           load_viscous_Nmsprad_ * load_radps;
  }

  /// A number for the branch of each case distinction: gap, teeth in touch, friction, direction of
  /// the motor. Between changes of it the torques are smooth.
  static constexpr unsigned kRegionBits = 7 * kLanes<Number>;
  unsigned region(Pair angle, Pair speed) const {
    const Number twist = angle.motor * per_ratio_ - angle.load;
    unsigned bits = 0;
    const auto add = [&bits](auto is) { bits = bits << kLanes<Number> | bits_of(is); };
    add(twist > half_gap_rad_);
    add(twist < -half_gap_rad_);
    add(tooth_torque_Nm(angle, speed) != 0);
    add(speed.motor > 0);
    add(magnitude(speed.motor) > kMotorSlope_radps);
    add(speed.load > 0);
    add(magnitude(speed.load) > kLoadSlope_radps);
    return bits;
  }

  TrainSlopes<Number> slopes(Pair angle, Pair speed) const {
    const Number tooth = tooth_torque_Nm(angle, speed);
    const Number stiffness = select(tooth == 0, Number{}, stiffness_Nmprad_);
    const Number damping = select(tooth == 0, Number{}, damping_Nmsprad_);
    const Number sat = saturated(kPerMotorSlope_sprad * speed.motor);
    const Number loss = select(tooth * speed.motor >= 0, driving_loss_, back_driving_loss_);
    // Motor torque per tooth torque, loss included.
    const Number tooth_on_motor = -per_ratio_ * (1 + with_sign(loss, tooth) * sat);
    const Number friction =
        select(magnitude(speed.motor) < kMotorSlope_radps,
               kPerMotorSlope_sprad * (drag_Nm_ + magnitude(tooth) * per_ratio_ * loss), Number{});
    const Number rubbing = select(magnitude(speed.load) < kLoadSlope_radps,
                                  kPerLoadSlope_sprad * coulomb_Nm_, Number{});
    return {{tooth_on_motor * stiffness * per_ratio_, -tooth_on_motor * stiffness},
            {stiffness * per_ratio_, -stiffness},
            {tooth_on_motor * damping * per_ratio_ - friction - viscous_Nmsprad_,
             -tooth_on_motor * damping},
            {damping * per_ratio_, -damping - rubbing - load_viscous_Nmsprad_}};
  }

  Number per_rotor() const { return per_rotor_; }

 private:
  static constexpr double kPerMotorSlope_sprad = 1 / kMotorSlope_radps,
                          kPerLoadSlope_sprad = 1 / kLoadSlope_radps;  // 2 and 100, exactly

  Number stiffness_Nmprad_{}, damping_Nmsprad_{}, drag_Nm_{}, viscous_Nmsprad_{}, half_gap_rad_{},
      per_ratio_{}, driving_loss_{}, back_driving_loss_{}, per_rotor_{}, coulomb_Nm_{},
      load_viscous_Nmsprad_{};
};

}  // namespace gazewright
