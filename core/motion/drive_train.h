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

/// Distances from the edges of a region: 1, N·m, rad/s, rad/s.
template <class Number>
struct TrainDistances {
  Number twist, tooth, motor, load;
};

/// Both equations of motion within one region, where they are linear but for the loss of teeth at
/// a motor that turns slowly.
template <class Number>
struct TrainTerms {
  Number stiffness_Nmprad, damping_Nmsprad;  ///< of the teeth; 0 where they are apart
  Number windup_rad;                         ///< twist from where the teeth touch
  Number motor_Nm, motor_viscous_Nmsprad;    ///< friction: of a size, and with the speed
  Number per_tooth;        ///< motor torque that a tooth torque takes, loss included
  Number slow_loss_sprad;  ///< the same per speed, of a motor that turns slowly
  Number load_Nm, load_viscous_Nmsprad;
};

template <class Number>
class DriveTrain {
 public:
  using Pair = MotorAndLoadOf<Number>;

  DriveTrain() = default;
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

  /// Takes the constants of one axis into a lane.
  void set(int lane, const DriveTrain<double>& one) {
    set_lane(stiffness_Nmprad_, lane, one.stiffness_Nmprad_);
    set_lane(damping_Nmsprad_, lane, one.damping_Nmsprad_);
    set_lane(drag_Nm_, lane, one.drag_Nm_);
    set_lane(viscous_Nmsprad_, lane, one.viscous_Nmsprad_);
    set_lane(half_gap_rad_, lane, one.half_gap_rad_);
    set_lane(per_ratio_, lane, one.per_ratio_);
    set_lane(driving_loss_, lane, one.driving_loss_);
    set_lane(back_driving_loss_, lane, one.back_driving_loss_);
    set_lane(per_rotor_, lane, one.per_rotor_);
    set_lane(coulomb_Nm_, lane, one.coulomb_Nm_);
    set_lane(load_viscous_Nmsprad_, lane, one.load_viscous_Nmsprad_);
  }

  /// Torque of the teeth on the load. They push and never pull. [N·m]
  Number tooth_torque_Nm(Pair angle, Pair speed) const {
    const Number twist = twist_of(angle);
    const auto touches = magnitude(twist) > half_gap_rad_;
    if (!any_of(touches)) return Number{};
    const Number windup = twist - with_sign(half_gap_rad_, twist);
    const Number torque = stiffness_Nmprad_ * windup + damping_Nmsprad_ * twist_of(speed);
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

  /// A bit for the branch of each case distinction: gap, teeth in touch, friction, direction of
  /// the motor. Between changes of it the torques are smooth.
  RegionOf<Number> region(Pair angle, Pair speed) const {
    const Number twist = twist_of(angle);
    RegionOf<Number> bits{};
    add_bit(bits, twist > half_gap_rad_);
    add_bit(bits, twist < -half_gap_rad_);
    add_bit(bits, tooth_torque_Nm(angle, speed) != 0);
    add_bit(bits, speed.motor > 0);
    add_bit(bits, magnitude(speed.motor) > kMotorSlope_radps);
    add_bit(bits, speed.load > 0);
    add_bit(bits, magnitude(speed.load) > kLoadSlope_radps);
    return bits;
  }

  /// The same of what a series of the motion depends on: a speed of zero within the slope of its
  /// friction is no change.
  RegionOf<Number> branch(Pair angle, Pair speed) const {
    const Number twist = twist_of(angle);
    const auto touches = tooth_torque_Nm(angle, speed) != 0;
    const auto slides = magnitude(speed.motor) > kMotorSlope_radps;
    const auto rubs = magnitude(speed.load) > kLoadSlope_radps;
    RegionOf<Number> bits{};
    add_bit(bits, twist > half_gap_rad_);
    add_bit(bits, twist < -half_gap_rad_);
    add_bit(bits, touches);
    add_bit(bits, slides);
    add_bit(bits, (slides | touches) & (speed.motor > 0));
    add_bit(bits, rubs);
    add_bit(bits, rubs & (speed.load > 0));
    return bits;
  }
  TrainTerms<Number> terms(Pair angle, Pair speed) const {
    const Number twist = twist_of(angle), tooth = tooth_torque_Nm(angle, speed), zero{};
    const Number one = all<Number>(1);
    const auto touches = tooth != 0;
    const auto slides = magnitude(speed.motor) > kMotorSlope_radps;
    const auto rubs = magnitude(speed.load) > kLoadSlope_radps;
    const Number loss =
        with_sign(select(tooth * speed.motor >= 0, driving_loss_, back_driving_loss_), tooth);
    const Number way = with_sign(one, speed.motor);
    return {.stiffness_Nmprad = select(touches, stiffness_Nmprad_, zero),
            .damping_Nmsprad = select(touches, damping_Nmsprad_, zero),
            .windup_rad = twist - with_sign(half_gap_rad_, twist),
            .motor_Nm = select(slides, -way * drag_Nm_, zero),
            .motor_viscous_Nmsprad =
                viscous_Nmsprad_ + select(slides, zero, kPerMotorSlope_sprad * drag_Nm_),
            .per_tooth = per_ratio_ * (one + select(slides, loss * way, zero)),
            .slow_loss_sprad = select(slides, zero, kPerMotorSlope_sprad * per_ratio_ * loss),
            .load_Nm = select(rubs, with_sign(coulomb_Nm_, -speed.load), zero),
            .load_viscous_Nmsprad =
                load_viscous_Nmsprad_ + select(rubs, zero, kPerLoadSlope_sprad * coulomb_Nm_)};
  }

  /// What changes its sign where the region changes between two states: twist and speeds less the
  /// limit that is met first, and the torque of teeth that touch as if they could pull. Linear in
  /// the states.
  struct Edges {
    Number twist, motor, load, at_touch, stiffness_Nmprad, damping_Nmsprad;
  };
  Edges edges(Pair from_angle, Pair from_speed, Pair to_angle, Pair to_speed) const {
    const Number twist = twist_of(from_angle), half = half_gap_rad_;
    const auto unwinds = twist_of(to_angle) < twist;
    Edges edges;
    edges.twist =
        select(unwinds, select(twist > half, half, -half), select(twist < -half, -half, half));
    edges.motor = met_first(from_speed.motor, to_speed.motor, kMotorSlope_radps);
    edges.load = met_first(from_speed.load, to_speed.load, kLoadSlope_radps);
    const auto touches = magnitude(twist) > half;
    edges.at_touch = with_sign(half, twist);
    edges.stiffness_Nmprad = select(touches, stiffness_Nmprad_, Number{});
    edges.damping_Nmsprad = select(touches, damping_Nmsprad_, Number{});
    return edges;
  }
  TrainDistances<Number> distances(const Edges& edges, Pair angle, Pair speed) const {
    return distances(edges, twist_of(angle), speed);
  }
  TrainDistances<Number> distances(const Edges& edges, Number twist, Pair speed) const {
    return {
        twist - edges.twist,
        edges.stiffness_Nmprad * (twist - edges.at_touch) + edges.damping_Nmsprad * twist_of(speed),
        speed.motor - edges.motor, speed.load - edges.load};
  }
  /// How the distances grow. [1/s]
  TrainDistances<Number> rates(const Edges& edges, Pair speed, Pair acceleration) const {
    return {
        twist_of(speed),
        edges.stiffness_Nmprad * twist_of(speed) + edges.damping_Nmsprad * twist_of(acceleration),
        acceleration.motor, acceleration.load};
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
  Number per_ratio() const { return per_ratio_; }
  Number half_gap_rad() const { return half_gap_rad_; }
  Number twist_of(Pair pair) const { return pair.motor * per_ratio_ - pair.load; }

 private:
  static constexpr double kPerMotorSlope_sprad = 1 / kMotorSlope_radps,
                          kPerLoadSlope_sprad = 1 / kLoadSlope_radps;  // 2 and 100, exactly

  template <class Other>
  friend class DriveTrain;

  /// Of the limits −x, 0 and x of a speed the one that is met first.
  static Number met_first(Number from, Number to, double x) {
    const Number most = all<Number>(x), zero{};
    return select(to < from, select(from > most, most, select(from > zero, zero, -most)),
                  select(from <= -most, -most, select(from <= zero, zero, most)));
  }

  Number stiffness_Nmprad_{}, damping_Nmsprad_{}, drag_Nm_{}, viscous_Nmsprad_{}, half_gap_rad_{},
      per_ratio_{}, driving_loss_{}, back_driving_loss_{}, per_rotor_{}, coulomb_Nm_{},
      load_viscous_Nmsprad_{};
};

}  // namespace gazewright
