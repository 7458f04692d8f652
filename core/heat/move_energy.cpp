#include "core/heat/move_energy.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/motion/drive_train.h"

namespace gazewright {
namespace {

/// Powers at one row. [W]
struct Powers {
  double current2_A2 = 0, shaft = 0, gear = 0, teeth = 0, friction = 0, lifting = 0;
};

/// Means over one sample. The current follows its command with the current loop's lag, so it bends
/// within a sample: exponential from end to end while the speed changes evenly. Where the envelope
/// holds it at both ends it follows that, nearly straight.
class Sample {
 public:
  Sample(const AxisModel& model, double sample_s)
      : drive_(model.drive),
        lags_(2 * std::numbers::pi * model.control.current_bandwidth_Hz * sample_s),
        left_(std::exp(-lags_)),
        mean_(-std::expm1(-lags_) / lags_),
        mean_late_((1 - left_ * (1 + lags_)) / (lags_ * lags_)),
        mean_square_(-std::expm1(-2 * lags_) / (2 * lags_)) {}

  /// Of i² and of i·ω.
  struct Means {
    double square, product;
  };
  Means means(double i0, double w0, double i1, double w1) const {
    const double command = (i1 - i0 * left_) / (1 - left_), off = i0 - command;
    if (!(lags_ > 0) || !std::isfinite(command) || (is_limited(i0, w0) && is_limited(i1, w1)))
      return {(i0 * i0 + i1 * i1) / 2, (i0 * w0 + i1 * w1) / 2};
    return {command * command + 2 * command * off * mean_ + off * off * mean_square_,
            command * (w0 + w1) / 2 + off * (w0 * mean_ + (w1 - w0) * mean_late_)};
  }

 private:
  bool is_limited(double current_A, double motor_radps) const {
    const double most_A = current_A * motor_radps >= 0
                              ? driving_current_A(drive_, std::abs(motor_radps))
                              : braking_current_A(drive_, std::abs(motor_radps));
    return std::abs(current_A) >= most_A * (1 - 1e-9);
  }

  const MotorDrive& drive_;
  double lags_, left_, mean_, mean_late_, mean_square_;
};

class Rows {
 public:
  Rows(const AxisModel& model, const Trace& trace, double move_rad)
      : model_(model), trace_(trace), train_({&model}), half_move_rad_(move_rad / 2) {}

  Powers at(std::size_t k) const {
    const GearTrain& gear = model_.gear;
    const AxisLoad& load = model_.load;
    const double motor_radps = trace_.motor_speed_radps[k], load_radps = trace_.speed_radps[k];
    const double angle_rad = trace_.angle_rad[k], current_A = trace_.current_A[k];
    const double tooth_Nm =
        train_.tooth_torque_Nm({trace_.motor_angle_rad[k], angle_rad}, {motor_radps, load_radps});
    const double part =
        tooth_Nm * motor_radps >= 0 ? 1 / gear.efficiency - 1 : 1 - gear.back_efficiency;
    const double rubbing_Nm = gear.drag_Nm + part * std::abs(tooth_Nm) / gear.ratio;
    return {.current2_A2 = current_A * current_A,
            .shaft = model_.drive.torque_constant_NmpA * current_A * motor_radps,
            .gear = rubbing_Nm * saturated(motor_radps / kMotorSlope_radps) * motor_radps +
                    gear.viscous_Nmsprad * motor_radps * motor_radps,
            .teeth = tooth_Nm * (motor_radps / gear.ratio - load_radps),
            .friction = load.coulomb_Nm * saturated(load_radps / kLoadSlope_radps) * load_radps +
                        load.viscous_Nmsprad * load_radps * load_radps,
            .lifting = -load.pull_Nm(angle_rad - half_move_rad_) * load_radps};
  }

  double spring_J(std::size_t k) const {
    const double twist = trace_.motor_angle_rad[k] / model_.gear.ratio - trace_.angle_rad[k];
    const double windup = std::max(std::abs(twist) - model_.gear.backlash_rad / 2, 0.0);
    return model_.gear.stiffness_Nmprad * windup * windup / 2;
  }
  double kinetic_J(std::size_t k) const {
    const double motor = trace_.motor_speed_radps[k], load = trace_.speed_radps[k];
    return (model_.gear.rotor_inertia_kgm2 * motor * motor +
            model_.load.inertia_kgm2 * load * load) /
           2;
  }

 private:
  const AxisModel& model_;
  const Trace& trace_;
  DriveTrain<double> train_;
  double half_move_rad_;
};

}  // namespace

MoveEnergy energy_of(const AxisModel& model, const Trace& trace, double move_rad, double until_s) {
  MoveEnergy energy;
  const auto rows = static_cast<std::size_t>(
      std::upper_bound(trace.time_s.begin(), trace.time_s.end(), until_s * (1 + 1e-12)) -
      trace.time_s.begin());
  if (rows < 2) return energy;
  const Rows row(model, trace, move_rad);
  const Sample sample(model, trace.sample_time_s);
  double shaft_J = 0, teeth_J = 0;
  Powers before = row.at(0);
  std::size_t last = 0;
  while (last + 1 < rows) {
    const std::size_t k = last + 1;
    const Powers now = row.at(k);
    const double half_s = (trace.time_s[k] - trace.time_s[last]) / 2;
    const Sample::Means means = sample.means(trace.current_A[last], trace.motor_speed_radps[last],
                                             trace.current_A[k], trace.motor_speed_radps[k]);
    energy.current2_A2s += 2 * half_s * means.square;
    shaft_J += 2 * half_s * model.drive.torque_constant_NmpA * means.product;
    energy.gear_J += half_s * (before.gear + now.gear);
    teeth_J += half_s * (before.teeth + now.teeth);
    energy.friction_J += half_s * (before.friction + now.friction);
    energy.lifted_J += half_s * (before.lifting + now.lifting);
    before = now;
    last = k;
  }
  energy.time_s = trace.time_s[last];
  energy.copper_J = 1.5 * model.drive.phase_resistance_ohm * energy.current2_A2s;
  energy.electrical_J = energy.copper_J + shaft_J;
  // What goes into the teeth and is not in their spring is damped.
  energy.gear_J += teeth_J - row.spring_J(last) + row.spring_J(0);
  energy.stored_J = row.kinetic_J(last) + row.spring_J(last) - row.kinetic_J(0) - row.spring_J(0);
  return energy;
}

}  // namespace gazewright
