#pragma once

#include <algorithm>
#include <cmath>

#include "core/drive/current_limits.h"
#include "core/motion/drive_train.h"
#include "core/motion/rosenbrock.h"

/// The equations of motion of design section 5 with their constants worked out beforehand.
namespace gazewright {

/// Motor torque within the torque-speed envelope and the gearbox's peak torque.
template <class Number>
class ActingTorqueOf {
 public:
  ActingTorqueOf() = default;
  explicit ActingTorqueOf(const AxisModel& model) requires(kIsOne<Number>)
      : most_A_(std::min(model.drive.current_limit_A,
                         model.gear_torque_limit_Nm() / model.drive.torque_constant_NmpA)),
        current_limit_A_(model.drive.current_limit_A),
        per_most_A_(1 / most_A_),
        phase_V_(model.drive.phase_voltage_V()),
        phase_V2_(phase_V_ * phase_V_),
        per_phase_V2_(1 / phase_V2_),
        supply_W_(model.drive.bus_voltage_V * model.drive.supply_current_limit_A / 1.5),
        per_supply_W_(1 / supply_W_),
        emf_Vsprad_(model.drive.torque_constant_NmpA / 1.5),
        resistance_ohm_(model.drive.phase_resistance_ohm),
        reactance_ohmsprad_(model.drive.pole_pairs * model.drive.phase_inductance_H),
        torque_constant_NmpA_(model.drive.torque_constant_NmpA),
        per_torque_constant_(1 / model.drive.torque_constant_NmpA) {}

  /// Takes the constants of one motor into a lane.
  void set(int lane, const ActingTorqueOf<double>& one) {
    set_lane(most_A_, lane, one.most_A_);
    set_lane(current_limit_A_, lane, one.current_limit_A_);
    set_lane(per_most_A_, lane, one.per_most_A_);
    set_lane(phase_V_, lane, one.phase_V_);
    set_lane(phase_V2_, lane, one.phase_V2_);
    set_lane(per_phase_V2_, lane, one.per_phase_V2_);
    set_lane(supply_W_, lane, one.supply_W_);
    set_lane(per_supply_W_, lane, one.per_supply_W_);
    set_lane(emf_Vsprad_, lane, one.emf_Vsprad_);
    set_lane(resistance_ohm_, lane, one.resistance_ohm_);
    set_lane(reactance_ohmsprad_, lane, one.reactance_ohmsprad_);
    set_lane(torque_constant_NmpA_, lane, one.torque_constant_NmpA_);
    set_lane(per_torque_constant_, lane, one.per_torque_constant_);
  }

  /// The torque nearest to `wanted_Nm` that may act. Most calls end without a square root: the
  /// wanted current is tried in the voltage and power limits first.
  [[gnu::always_inline]] Number at(Number wanted_Nm, Number motor_radps) const {
    const Number wanted_A = magnitude(wanted_Nm) * per_torque_constant_;
    const Number current_A = least_of(wanted_A, most_A_);
    const Number w = magnitude(motor_radps);
    const auto driving = wanted_Nm * motor_radps >= 0;
    const Number e_V = emf_Vsprad_ * w;
    const Number in_phase_V = resistance_ohm_ * current_A + select(driving, e_V, -e_V);
    const Number quadrature_V = reactance_ohmsprad_ * w * current_A;
    const auto allowed = (in_phase_V * in_phase_V + quadrature_V * quadrature_V <= phase_V2_) &
                         ((!driving) | (current_A * in_phase_V <= supply_W_));
    const auto free = allowed & (current_A == wanted_A);
    if (all_of(free)) return wanted_Nm;
    const Number least_A =
        all_of(allowed) ? current_A
                        : select(allowed, current_A, least_of(current_A, limit_A(driving, w, e_V)));
    return select(free, wanted_Nm, with_sign(torque_constant_NmpA_ * least_A, wanted_Nm));
  }

  /// Above zero where the wanted torque may act, below where it is limited.
  Number room(Number wanted_Nm, Number motor_radps) const {
    const Number current_A = magnitude(wanted_Nm) * per_torque_constant_;
    const Number w = magnitude(motor_radps), e_V = emf_Vsprad_ * w;
    const auto driving = wanted_Nm * motor_radps >= 0;
    const Number in_phase_V = resistance_ohm_ * current_A + select(driving, e_V, -e_V);
    const Number quadrature_V = reactance_ohmsprad_ * w * current_A;
    const Number voltage =
        1 - (in_phase_V * in_phase_V + quadrature_V * quadrature_V) * per_phase_V2_;
    const Number power = 1 - current_A * in_phase_V * per_supply_W_;
    return least_of(least_of(1 - current_A * per_most_A_, voltage),
                    select(driving, power, all<Number>(1)));
  }

 private:
  template <class Other>
  friend class ActingTorqueOf;

  template <class Mask>
  [[gnu::noinline]] Number limit_A(Mask driving, Number w, Number e_V) const {
    const Number X_ohm = reactance_ohmsprad_ * w;
    Number by_drive_A = current_limit_A_, by_brake_A = current_limit_A_;
    if (any_of(driving))
      by_drive_A =
          least_of(current_limit_A_, least_of(driving_bus_A(resistance_ohm_, X_ohm, e_V, phase_V_),
                                              supply_A(resistance_ohm_, e_V, supply_W_)));
    if (!all_of(driving))
      by_brake_A = braking_bus_A(resistance_ohm_, X_ohm, e_V, phase_V_, current_limit_A_);
    return select(driving, by_drive_A, by_brake_A);
  }

  Number most_A_{}, current_limit_A_{}, per_most_A_{}, phase_V_{}, phase_V2_{}, per_phase_V2_{},
      supply_W_{}, per_supply_W_{}, emf_Vsprad_{}, resistance_ohm_{}, reactance_ohmsprad_{},
      torque_constant_NmpA_{}, per_torque_constant_{};
};
using ActingTorque = ActingTorqueOf<double>;

/// Motor and load with the gear between them, of one axis or of several of the same weight side by
/// side. A step starts at φ = 0, so gravity and cables are taken at φ − move/2.
template <class Num>
class AxisDynamicsOf {
 public:
  using Number = Num;
  using Pair = MotorAndLoadOf<Number>;
  using Slopes = AxisSlopes<Number>;

  AxisDynamicsOf() = default;
  AxisDynamicsOf(const AxisModel& model, double move_rad) requires(kIsOne<Number>)
      : acting_torque(model),
        train_({&model}),
        gravity_(model.load.gravity),
        per_load_(1 / model.load.inertia_kgm2),
        cable_stiffness_Nmprad_(model.load.cable_stiffness_Nmprad),
        gravity_at_rad_(-move_rad / 2),
        untwisted_rad_(model.load.cable_centre_rad + move_rad / 2),
        weighs_(model.load.gravity.cos_Nm != 0 || model.load.gravity.sin_Nm != 0) {
    centre(0);
  }

  /// Takes one axis into a lane. @pre all lanes have the same gravity and move
  void set(int lane, const AxisDynamicsOf<double>& one) {
    acting_torque.set(lane, one.acting_torque);
    train_.set(lane, one.train_);
    gravity_ = one.gravity_;
    gravity_at_rad_ = one.gravity_at_rad_;
    weighs_ = one.weighs_;
    set_lane(per_load_, lane, one.per_load_);
    set_lane(cable_stiffness_Nmprad_, lane, one.cable_stiffness_Nmprad_);
    set_lane(untwisted_rad_, lane, one.untwisted_rad_);
    set_lane(centre_rad_, lane, one.centre_rad_);
    set_lane(gravity_Nm_, lane, one.gravity_Nm_);
    set_lane(gravity_slope_Nmprad_, lane, one.gravity_slope_Nmprad_);
  }

  /// Prepares the series of gravity about this angle; it is exact to 1e-11 of itself within 0.04
  /// rad.
  void centre(Number angle_rad) {
    const auto off = !(magnitude(angle_rad - centre_rad_) < 1e-2);
    if (!any_of(off)) return;
    centre_rad_ = select(off, angle_rad, centre_rad_);
    if (!weighs_) return;
    for (int lane = 0; lane < kLanes<Number>; ++lane) {
      if ((bits_of(off) >> lane & 1) == 0) continue;
      const double q = lane_of(centre_rad_, lane) + gravity_at_rad_;
      const double c = __builtin_cos(q), s = __builtin_sin(q);
      set_lane(gravity_Nm_, lane, gravity_.cos_Nm * c + gravity_.sin_Nm * s);
      set_lane(gravity_slope_Nmprad_, lane, gravity_.sin_Nm * c - gravity_.cos_Nm * s);
    }
  }

  Number centre_rad() const { return centre_rad_; }

  [[gnu::always_inline]] Number gravity_Nm(Number angle_rad) const {
    if (!weighs_) return all<Number>(gravity_.constant_Nm);
    const Number x = angle_rad - centre_rad_, x2 = x * x;
    const Number series = gravity_.constant_Nm +
                          gravity_Nm_ * (1 - x2 * (1.0 / 2) * (1 - x2 * (1.0 / 12))) +
                          gravity_slope_Nmprad_ * x * (1 - x2 * (1.0 / 6) * (1 - x2 * (1.0 / 20)));
    const auto far = x2 > 1.6e-3;
    return any_of(far) ? far_gravity_Nm(angle_rad, series, bits_of(far)) : series;
  }

  /// Torque of the cables' twist, untwisted at their centre. [N·m]
  Number cable_Nm(Number angle_rad) const {
    return -cable_stiffness_Nmprad_ * (angle_rad - untwisted_rad_);
  }

  /// (dω_m/dt, dω/dt) with the torque T_e that the current loop would give. [rad/s²]
  [[gnu::always_inline]] Pair acceleration(Number torque_Nm, Pair angle, Pair speed) const {
    const Number tooth = train_.tooth_torque_Nm(angle, speed);
    const Number acting = acting_torque.at(torque_Nm, speed.motor);
    const Number load =
        train_.moving_Nm(tooth, speed.load) + gravity_Nm(angle.load) + cable_Nm(angle.load);
    return {train_.motor_radps2(acting, tooth, speed.motor), load * per_load_};
  }

  /// Torque of gravity and cables about an angle: its value, slope and half its curvature.
  struct Pull {
    Number torque_Nm, slope_Nmprad, curve_Nmprad2;
  };
  Pull pull(Number angle_rad) const {
    const Number gravity = gravity_Nm(angle_rad);
    Pull out{gravity + cable_Nm(angle_rad), -cable_stiffness_Nmprad_, Number{}};
    if (!weighs_) return out;
    const Number x = angle_rad - centre_rad_, x2 = x * x;
    out.slope_Nmprad +=
        gravity_slope_Nmprad_ * (1 - x2 * (1.0 / 2)) - gravity_Nm_ * x * (1 - x2 * (1.0 / 6));
    out.curve_Nmprad2 = -0.5 * (gravity - gravity_.constant_Nm);
    return out;
  }
  Number per_load() const { return per_load_; }

  Slopes slopes(Number torque_Nm, Number torque_slope_Nmps, Pair angle, Pair speed) const {
    const TrainSlopes<Number> train = train_.slopes(angle, speed);
    const Number drift = 1e-6 * most_of(all<Number>(1), magnitude(speed.motor));
    const Number acting = acting_torque.at(torque_Nm, speed.motor);
    const Number envelope = (acting_torque.at(torque_Nm, speed.motor + drift) - acting) / drift;
    Slopes out{{train.motor_by_angle, train.load_by_angle},
               {train.motor_by_speed, train.load_by_speed},
               {select(acting == torque_Nm, torque_slope_Nmps, Number{}), Number{}}};
    out.by_position.load.load +=
        (weighs_ ? gravity_slope_Nmprad_ : Number{}) - cable_stiffness_Nmprad_;
    out.by_speed.motor.motor += least_of(envelope, Number{});
    const Number per_rotor = train_.per_rotor();
    out.by_position = {per_rotor * out.by_position.motor, per_load_ * out.by_position.load};
    out.by_speed = {per_rotor * out.by_speed.motor, per_load_ * out.by_speed.load};
    out.by_time.motor *= per_rotor;
    return out;
  }

  const DriveTrain<Number>& train() const { return train_; }

  ActingTorqueOf<Number> acting_torque;

 private:
  template <class Other>
  friend class AxisDynamicsOf;

  [[gnu::noinline]] Number far_gravity_Nm(Number angle_rad, Number near, unsigned far) const {
    for (int lane = 0; lane < kLanes<Number>; ++lane) {
      if ((far >> lane & 1) != 0)
        set_lane(near, lane, gravity_.at(lane_of(angle_rad, lane) + gravity_at_rad_));
    }
    return near;
  }

  DriveTrain<Number> train_;
  GravityCurve gravity_;
  Number per_load_{}, cable_stiffness_Nmprad_{};
  double gravity_at_rad_ = 0;
  Number untwisted_rad_{};
  bool weighs_ = false;
  Number centre_rad_ = all<Number>(1e9), gravity_Nm_{}, gravity_slope_Nmprad_{};
};
using AxisDynamics = AxisDynamicsOf<double>;

}  // namespace gazewright
