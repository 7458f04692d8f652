#include "core/motion/shared_supply.h"

namespace gazewright {
namespace {

AxisModel without_supply_limit(AxisModel model) {
  model.drive.supply_current_limit_A = kInfinity;
  return model;
}

}  // namespace

SharedTorque::SharedTorque(const AxisModel& pan, const AxisModel& tilt)
    : pan_(without_supply_limit(pan)),
      tilt_(without_supply_limit(tilt)),
      supply_W_(pan.drive.bus_voltage_V * pan.drive.supply_current_limit_A / 1.5) {
  const auto of_both = [&](const auto& of) { return BothAxes{of(pan), of(tilt)}; };
  torque_constant_NmpA_ = of_both([](const AxisModel& m) { return m.drive.torque_constant_NmpA; });
  per_torque_constant_ = 1 / torque_constant_NmpA_;
  resistance_ohm_ = of_both([](const AxisModel& m) { return m.drive.phase_resistance_ohm; });
  emf_Vsprad_ = torque_constant_NmpA_ / 1.5;
  reactance_ohmsprad_ =
      of_both([](const AxisModel& m) { return m.drive.pole_pairs * m.drive.phase_inductance_H; });
  phase_V2_ = of_both(
      [](const AxisModel& m) { return m.drive.phase_voltage_V() * m.drive.phase_voltage_V(); });
  most_A_ = of_both([](const AxisModel& m) {
    return std::min(m.drive.current_limit_A,
                    m.gear_torque_limit_Nm() / m.drive.torque_constant_NmpA);
  });
}

BothAxes SharedTorque::drawn_W(BothAxes torque_Nm, BothAxes motor_radps) const {
  const BothAxes current_A = torque_Nm * per_torque_constant_;
  return current_A * (resistance_ohm_ * current_A + emf_Vsprad_ * motor_radps);
}

BothAxes SharedTorque::within_envelopes_Nm(BothAxes wanted_Nm, BothAxes motor_radps) const {
  return BothAxes{pan_.at(wanted_Nm[0], motor_radps[0]), tilt_.at(wanted_Nm[1], motor_radps[1])};
}

double SharedTorque::part_of(BothAxes drawn_W) const {
  const double drawing_W = std::max(drawn_W[0], 0.0) + std::max(drawn_W[1], 0.0);
  const double there_W = supply_W_ - std::min(drawn_W[0], 0.0) - std::min(drawn_W[1], 0.0);
  return drawing_W <= there_W ? 1 : std::max(there_W, 0.0) / drawing_W;
}

double SharedTorque::part(BothAxes wanted_Nm, BothAxes motor_radps) const {
  return part_of(drawn_W(within_envelopes_Nm(wanted_Nm, motor_radps), motor_radps));
}

/// A drive whose power is cut takes the current i with i·(R·i ± e) = part·P; the root is written
/// without a difference of like numbers.
BothAxes SharedTorque::limited_Nm(BothAxes wanted_Nm, BothAxes motor_radps) const {
  BothAxes torque_Nm = within_envelopes_Nm(wanted_Nm, motor_radps);
  const BothAxes drawn = drawn_W(torque_Nm, motor_radps);
  const double part = part_of(drawn);
  if (part == 1) return torque_Nm;
  for (int lane = 0; lane < 2; ++lane) {
    if (!(drawn[lane] > 0)) continue;
    const double R_ohm = resistance_ohm_[lane], power_W = part * drawn[lane];
    const double e_V =
        std::copysign(emf_Vsprad_[lane] * motor_radps[lane], motor_radps[lane] * torque_Nm[lane]);
    const double root_V = std::sqrt(e_V * e_V + 4 * R_ohm * power_W);
    const double below_V = e_V + root_V;
    const double current_A = e_V < 0       ? (root_V - e_V) / (2 * R_ohm)
                             : below_V > 0 ? 2 * power_W / below_V
                                           : 0;
    torque_Nm[lane] = std::copysign(torque_constant_NmpA_[lane] * current_A, torque_Nm[lane]);
  }
  return torque_Nm;
}

}  // namespace gazewright
