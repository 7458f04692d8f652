#include "core/motion/gap_swing.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/units/angle.h"

namespace gazewright {
namespace {

using Complex = LoopPoint::Complex;
constexpr double kApart = 1.15;                            // between frequencies
constexpr double kLeast = 0.003, kMost = 300, kTimes = 2;  // amplitudes, of half the gap
constexpr double kSmall = 9 * kPi * kPi / 128;             // of the dead zone just past its edge
constexpr double kSlowest = 1e-4;                          // of half the control rate

/// The amplitude of which a dead zone lets `y` through, Newton on a convex function.
double amplitude_that_passes(double y, int steps) {
  double a = y < 0.3 ? 1 + std::cbrt(kSmall * y * y) : y + 4 / kPi;
  for (int i = 0; i < steps; ++i) {
    const double part = 1 / a, root = std::sqrt(1 - part * part), angle = std::asin(part);
    const double slope = 1 - 2 / kPi * (angle - part * root);
    if (!(slope > 0)) return a;
    a = std::max(a - (a - 2 / kPi * (a * angle + root) - y) / slope, 1 + 1e-12);
  }
  return a;
}

/// Amplitude of the part of level·sat(speed/width) that is in phase with a sine of the speed.
double friction_Nm(double level_Nm, double width_radps, double speed_radps) {
  if (speed_radps <= width_radps) return level_Nm * speed_radps / width_radps;
  return level_Nm * speed_radps / width_radps * (1 - dead_zone_gain(speed_radps / width_radps));
}

double size_of(Complex value) { return std::sqrt(std::norm(value)); }

/// The equations of motor and load for a sine of the load with amplitude Φ.
class SwingBalance {
 public:
  explicit SwingBalance(const AxisModel& model)
      : model_(model),
        half_gap_rad_(model.gear.backlash_rad / 2),
        driving_loss_(1 / model.gear.efficiency - 1),
        back_driving_loss_(1 - model.gear.back_efficiency) {}

  /// What does not depend on amplitudes.
  struct Terms {
    double w_radps;
    Complex load, rotor, per_coupling;
    Complex held;  ///< torque of the loops per measured angle
    double stiffness;
  };
  Terms terms(const LoopPoint& point) const {
    const AxisControl& control = model_.control;
    return {point.w_radps,
            point.load,
            point.rotor,
            1.0 / point.coupling,
            point.controller(control) * point.lag * (point.estimator + control.position_gain_1ps),
            size_of(point.coupling)};
  }

  struct Found {
    Complex rest;  ///< 0 where the balance holds, of the order of 1 elsewhere
    GapSwing swing;
  };
  Found at(const Terms& terms, double amplitude_rad, int newton_steps) const {
    const double n = model_.gear.ratio, w = terms.w_radps;
    const Complex torque =
        terms.load * amplitude_rad +
        Complex(0, friction_Nm(model_.load.coulomb_Nm, kLoadSlope_radps, w * amplitude_rad));
    const double torque_Nm = size_of(torque);
    const double y = torque_Nm / (terms.stiffness * half_gap_rad_);
    const double a = amplitude_that_passes(y, newton_steps);
    const Complex motor = amplitude_rad + torque * terms.per_coupling * (a / y);
    const double motor_rad = size_of(motor);
    const Complex rubbed =
        motor / motor_rad * rubbed_Nm(torque, torque_Nm, motor, n * w * motor_rad);
    const Complex held =
        terms.held * (model_.control.encoder_at_output ? Complex(amplitude_rad) : motor);
    const Complex moved = terms.rotor * motor;
    const double scale = size_of(held) + size_of(moved) + torque_Nm;
    return {(held + moved + rubbed + torque) / scale,
            {amplitude_rad, w, a * half_gap_rad_, torque_Nm}};
  }

  /// From a place near it; empty where Newton's steps lead away.
  std::optional<GapSwing> refined(double w_radps, double amplitude_rad) const {
    double lw = std::log(w_radps), la = std::log(amplitude_rad);
    constexpr double kStep = 1e-6;
    const auto found = [&](double x, double y) {
      return at(terms(loop_point(model_, std::exp(x))), std::exp(y), 12);
    };
    for (int i = 0; i < 30; ++i) {
      const Complex f = found(lw, la).rest;
      const Complex fw = (found(lw + kStep, la).rest - f) / kStep;
      const Complex fa = (found(lw, la + kStep).rest - f) / kStep;
      const double det = fa.real() * fw.imag() - fa.imag() * fw.real();
      double dw = -(fa.real() * f.imag() - fa.imag() * f.real()) / det;
      double da = -(f.real() * fw.imag() - f.imag() * fw.real()) / det;
      if (!std::isfinite(dw + da)) return {};
      const double much = std::max(std::abs(dw), std::abs(da)) / 0.2;
      if (much > 1) dw /= much, da /= much;
      lw += dw, la += da;
      if (std::max(std::abs(dw), std::abs(da)) > 1e-8) continue;
      // Larger swings die down and smaller ones grow (Loeb's criterion).
      const bool near = std::abs(lw - std::log(w_radps)) < 0.5;
      return det > 0 && near ? std::optional(found(lw, la).swing) : std::nullopt;
    }
    return {};
  }

 private:
  /// Drag and tooth losses per unit of the motor's angle: j in phase with the speed. The loss is a
  /// part of |torque| against the motion, another while the load drives.
  Complex rubbed_Nm(Complex torque, double torque_Nm, Complex motor, double speed_radps) const {
    const double full = friction_Nm(1, kMotorSlope_radps, speed_radps);  // 4/π well above the slope
    const double n = model_.gear.ratio;
    // The torque lags the motor's speed by δ.
    const double delta = -std::arg(torque * std::conj(motor) * Complex(0, -1));
    const double lag = std::abs(delta), c = std::cos(lag), s = std::sin(lag);
    const double in_phase =
        driving_loss_ * ((kPi - lag) * c + s) + back_driving_loss_ * (s - lag * c);
    const double across = s * (driving_loss_ * (kPi - lag) - back_driving_loss_ * lag);
    const double part = torque_Nm / kPi * full * kPi / 4;
    return Complex(0, n * model_.gear.drag_Nm * full + part * in_phase) +
           Complex(part * (delta < 0 ? -across : across), 0);
  }

  const AxisModel& model_;
  double half_gap_rad_, driving_loss_, back_driving_loss_;
};

/// Every so many points of the grid.
std::vector<SwingBalance::Terms> thinned(const SwingBalance& balance,
                                         const std::vector<LoopPoint>& points) {
  std::vector<SwingBalance::Terms> few;
  for (const LoopPoint& point : points) {
    const double least =
        few.empty() ? points.back().w_radps * kSlowest : few.back().w_radps * kApart;
    if (point.w_radps >= least) few.push_back(balance.terms(point));
  }
  return few;
}

/// Turns of f about 0 along the corners of a cell: not 0 where a solution lies inside.
int turns(const std::array<Complex, 4>& corners) {
  const auto sides = [&](auto part) {
    const bool first = part(corners[0]) > 0;
    return std::ranges::any_of(corners, [&](const Complex& f) { return (part(f) > 0) != first; });
  };
  if (!sides([](const Complex& f) { return f.real(); }) ||
      !sides([](const Complex& f) { return f.imag(); }))
    return 0;
  double sum = 0;
  for (std::size_t i = 0; i < 4; ++i) sum += std::arg(corners[(i + 1) % 4] * std::conj(corners[i]));
  return static_cast<int>(std::lround(sum / (2 * kPi)));
}

}  // namespace

double dead_zone_gain(double a) {
  if (!(a > 1)) return 0;
  const double part = 1 / a;
  return 1 - 2 / kPi * (std::asin(part) + part * std::sqrt(1 - part * part));
}

std::optional<GapSwing> gap_swing(const AxisModel& model, const std::vector<LoopPoint>& points) {
  if (!(model.gear.backlash_rad > 0) || points.empty()) return {};
  const SwingBalance balance(model);
  const auto few = thinned(balance, points);
  const double half_gap_rad = model.gear.backlash_rad / 2;
  std::vector<Complex> above(few.size()), here(few.size());
  // From large swings down: the first that holds is the largest.
  for (double part = kMost; part > kLeast; part /= kTimes) {
    for (std::size_t i = 0; i < few.size(); ++i)
      here[i] = balance.at(few[i], part * half_gap_rad, 2).rest;
    for (std::size_t i = 0; part < kMost && i + 1 < few.size(); ++i) {
      // Corners in the order amplitude, then frequency.
      if (turns({here[i], above[i], above[i + 1], here[i + 1]}) == 0) continue;
      const auto found = balance.refined(std::sqrt(few[i].w_radps * few[i + 1].w_radps),
                                         part * std::sqrt(kTimes) * half_gap_rad);
      if (found) return found;
    }
    std::swap(above, here);
  }
  return {};
}

bool is_read(const GapSwing& swing, const AxisModel& model) {
  const bool at_output = model.control.encoder_at_output;
  return 2 * (at_output ? swing.amplitude_rad : swing.twist_rad) >= count_rad(model);
}

bool is_held_together(const GapSwing& swing, const AxisModel& model) {
  return std::abs(model.load.pull_Nm(0)) >= swing.tooth_torque_Nm;
}

}  // namespace gazewright
