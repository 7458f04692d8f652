#pragma once

#include "core/bodies/two_axis.h"
#include "core/motion/coupled.h"
#include "core/motion/shared_supply.h"

/// The equations of motion of both axes at once: the rigid two-axis rig behind two drive trains.
namespace gazewright {

class CoupledDynamics {
 public:
  using Number = BothAxes;
  using Pair = MotorAndLoadOf<BothAxes>;
  using Slopes = SlopesInRows<4>;

  /// @param from_rad  where φ = 0 lies, from the rest pose
  CoupledDynamics(const CoupledModel& model, PanTilt from_rad);

  /// Prepares the series of cosines and sines about these angles.
  void centre(BothAxes angle_rad) {
    const BothAxes off = magnitude(angle_rad - centre_rad_);
    if (off[0] < 2e-3 && off[1] < 2e-3) return;
    centre_rad_ = angle_rad;
    pan_ = Turn::of(angle_rad[0] + at_rad_[0]);
    tilt_ = Turn::of(angle_rad[1] + at_rad_[1]);
  }

  /// Accelerations of both loads under the torques that their trains give them. [rad/s²]
  [[gnu::always_inline]] BothAxes load_radps2(BothAxes moving_Nm, BothAxes angle_rad,
                                              BothAxes speed_radps) const {
    const BothAxes x = angle_rad - centre_rad_;
    const Turn pan = equations_.leans() ? pan_.by(x[0]) : Turn{};
    const BothAxes torque_Nm = moving_Nm + cable_Nm(angle_rad);
    const PanTilt radps2 = equations_.accelerations_radps2(
        pan, tilt_.by(x[1]), {speed_radps[0], speed_radps[1]}, {torque_Nm[0], torque_Nm[1]});
    return BothAxes{radps2.pan, radps2.tilt};
  }

  [[gnu::always_inline]] Pair acceleration(BothAxes torque_Nm, Pair angle, Pair speed) const {
    const BothAxes tooth = train_.tooth_torque_Nm(angle, speed);
    const BothAxes acting = acting_torque.at(torque_Nm, speed.motor);
    return {train_.motor_radps2(acting, tooth, speed.motor),
            load_radps2(train_.moving_Nm(tooth, speed.load), angle.load, speed.load)};
  }

  unsigned region(BothAxes torque_Nm, Pair angle, Pair speed) const {
    unsigned bits = train_.region(angle, speed);
    add_bit(bits, acting_torque.at(torque_Nm, speed.motor) != torque_Nm);
    return bits;
  }

  Slopes slopes(BothAxes torque_Nm, BothAxes torque_slope_Nmps, Pair angle, Pair speed) const;

  const DriveTrain<BothAxes>& train() const { return train_; }

  /// Torque of gravity and cables at these angles. [N·m]
  BothAxes pull_Nm(BothAxes angle_rad) const;

  SharedTorque acting_torque;

 private:
  BothAxes cable_Nm(BothAxes angle_rad) const {
    return -cable_stiffness_Nmprad_ * (angle_rad - untwisted_rad_);
  }

  DriveTrain<BothAxes> train_;
  TwoAxisEquations equations_;
  BothAxes at_rad_, untwisted_rad_, cable_stiffness_Nmprad_;
  BothAxes centre_rad_{kInfinity, kInfinity};
  Turn pan_, tilt_;
};

}  // namespace gazewright
