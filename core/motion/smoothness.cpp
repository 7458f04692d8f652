#include "core/motion/smoothness.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "core/motion/loop_value.h"
#include "core/units/angle.h"

// Derivation: resources/handbook/smoothness.md.
namespace gazewright {
namespace {

using Complex = std::complex<double>;
constexpr double kLowest = 1e-5;  // of half the sample rate
constexpr int kGridPoints = 300;
constexpr int kBisections = 40;

/// What both closed loops divide by: (1 + speed loop)·(1 + position loop).
Complex closing(const AxisModel& model, const LoopPoint& point) {
  return (1.0 + speed_value(point, model.control).value()) *
         (1.0 + position_value(point, model.control).value());
}

/// From half the sample rate down, dense about the closed loops' poles: a peak is as wide as its
/// pole decays.
std::vector<double> grid_down_radps(const AxisModel& model) {
  const double half_rate = kPi * model.control.control_rate_Hz;
  std::vector<double> grid;
  grid.reserve(2 * kGridPoints);
  for (int i = 0; i < kGridPoints; ++i)
    grid.push_back(half_rate * std::pow(kLowest, double(i) / (kGridPoints - 1)));
  for (const std::complex<double>& pole : loop_poles_1ps(model)) {
    for (const double part : {0.0, 0.1, 0.2, 0.4, 0.7, 1.0, 1.5, 2.5, 4.0, 8.0, 16.0}) {
      for (const double w : {pole.imag() - part * pole.real(), pole.imag() + part * pole.real()})
        if (w > half_rate * kLowest && w < half_rate) grid.push_back(w);
    }
  }
  std::ranges::sort(grid, std::greater<>());
  return grid;
}

/// The highest frequency at which `size` is at least `level`; 0 where it is below everywhere.
template <class Size>
double highest_reaching(const Size& size, double level, const std::vector<double>& grid) {
  for (std::size_t i = 0; i < grid.size(); ++i) {
    if (!(size(grid[i]) >= level)) continue;
    if (i == 0) return grid[0];
    double inside = grid[i], outside = grid[i - 1];
    for (int k = 0; k < kBisections; ++k) {
      const double middle = std::sqrt(inside * outside);
      (size(middle) >= level ? inside : outside) = middle;
    }
    return inside;
  }
  return 0;
}

/// Cogging periods per radian of the output.
double periods_per_rad(const AxisModel& model, const SlowParts& parts) {
  return parts.cogging_per_turn * model.gear.ratio;
}

double cogging_limit_radps(const AxisModel& model, const SlowParts& parts,
                           const std::vector<double>& grid_down) {
  if (!(parts.cogging_Nm > 0)) return 0;
  const double per_rad = periods_per_rad(model, parts);
  const auto ripple = [&](double w) { return std::abs(compliance_radpNm(model, w)); };
  return highest_reaching(ripple, 1 / (per_rad * parts.cogging_Nm), grid_down) / per_rad;
}

double encoder_limit_radps(const AxisModel& model, const std::vector<double>& grid_down) {
  const auto gain = [&](double w) { return std::abs(reading_gain(model, w)); };
  return highest_reaching(gain, 0.5, grid_down) * count_rad(model) / (2 * kPi);
}

/// Where the friction falls as steeply as the loops just stand: on the far side of its steepest
/// place, v = stribeck/√2.
double friction_limit_radps(const AxisModel& model, const SlowParts& parts) {
  if (!(parts.falling_Nm > 0)) return 0;
  const double scale = parts.falling_Nm / parts.stribeck_radps;  // slope = scale·2x·exp(−x²)
  const auto fall = [](double x) { return 2 * x * std::exp(-x * x); };
  double held = 0, lost = scale * fall(std::numbers::sqrt2 / 2);
  if (is_steady(model, -lost)) return 0;
  for (int i = 0; i < kBisections / 2; ++i) {
    const double middle = (held + lost) / 2;
    (is_steady(model, -middle) ? held : lost) = middle;
  }
  double near = std::numbers::sqrt2 / 2, far = 10;
  for (int i = 0; i < kBisections; ++i) {
    const double middle = (near + far) / 2;
    (scale * fall(middle) > lost ? near : far) = middle;
  }
  return far * parts.stribeck_radps;
}

}  // namespace

SlowParts slow_parts(const Rig& rig, Axis axis) {
  const AxisParts& parts = rig.axis(axis);
  return {.cogging_Nm = parts.motor.cogging_torque_Nm.value(),
          .cogging_per_turn = parts.motor.cogging_per_turn.value(),
          .falling_Nm = std::max(
              0.0, parts.friction.breakaway_Nm.value() - parts.friction.coulomb_Nm.value()),
          .stribeck_radps = parts.friction.stribeck_speed_radps.value()};
}

double stribeck_friction_Nm(double coulomb_Nm, double falling_Nm, double stribeck_radps,
                            double speed_radps) {
  const double x = speed_radps / stribeck_radps;
  return coulomb_Nm + falling_Nm * std::exp(-x * x);
}

std::complex<double> compliance_radpNm(const AxisModel& model, double w_radps) {
  const LoopPoint point = loop_point(model, w_radps);
  return model.gear.ratio * point.coupling / point.determinant / closing(model, point);
}

std::complex<double> reading_gain(const AxisModel& model, double w_radps) {
  const LoopPoint point = loop_point(model, w_radps);
  const Complex closed = 1.0 - 1.0 / closing(model, point);
  if (model.control.encoder_at_output) return closed;
  return closed * point.coupling / (point.load + point.coupling);
}

double SlowLimits::lowest_radps() const {
  return std::max({friction_radps, cogging_radps, encoder_radps});
}

std::optional<SlowLimits> slow_limits(const AxisModel& model, const SlowParts& parts) {
  if (!is_steady(model, 0)) return std::nullopt;
  const std::vector<double> grid_down = grid_down_radps(model);
  return SlowLimits{friction_limit_radps(model, parts),
                    cogging_limit_radps(model, parts, grid_down),
                    encoder_limit_radps(model, grid_down)};
}

double speed_resolution_radps(const AxisModel& model) {
  return model.control.estimator_blend() * count_rad(model) * model.control.control_rate_Hz;
}

double cogging_ripple_rad(const AxisModel& model, const SlowParts& parts, double speed_radps) {
  if (!(parts.cogging_Nm > 0)) return 0;
  const double w = periods_per_rad(model, parts) * speed_radps;
  return parts.cogging_Nm * std::abs(compliance_radpNm(model, w));
}

double encoder_ripple_rad(const AxisModel& model, double speed_radps) {
  const double count = count_rad(model);
  return count / kPi * std::abs(reading_gain(model, 2 * kPi * speed_radps / count));
}

WorstRipple worst_cogging(const AxisModel& model, const SlowParts& parts) {
  WorstRipple worst;
  if (!(parts.cogging_Nm > 0)) return worst;
  double at = 0;
  const auto look = [&](double w) {
    const double ripple = parts.cogging_Nm * std::abs(compliance_radpNm(model, w));
    if (ripple > worst.ripple_rad) worst.ripple_rad = ripple, at = w;
  };
  const double half_rate = kPi * model.control.control_rate_Hz;
  for (const double w : grid_down_radps(model)) look(w);
  // The grid's own steps, then finer ones about the best.
  for (double step = -std::log(kLowest) / kGridPoints; step > 1e-6; step /= 2) {
    const double centre = at;
    for (const double w : {centre * std::exp(-step), centre * std::exp(step)})
      if (w < half_rate) look(w);
  }
  worst.speed_radps = at / periods_per_rad(model, parts);
  return worst;
}

double stick_slip_jump_rad(const AxisModel& model, const SlowParts& parts) {
  const AxisControl& control = model.control;
  const double loops =
      control.speed_gain_Nmsprad * control.position_gain_1ps + control.speed_integral_gain_Nmprad;
  return 2 * parts.falling_Nm * (1 / loops + 1 / model.gear.stiffness_Nmprad);
}

}  // namespace gazewright
