#include "core/motion/loop_points.h"

#include <algorithm>
#include <cmath>

#include "core/motion/loop.h"
#include "core/units/angle.h"

namespace gazewright {
namespace {

using Complex = LoopPoint::Complex;
constexpr int kGridPoints = 400;
constexpr double kLowest = 1e-4;  // of half the sample rate

/// Where the train's gain peaks or vanishes: the antiresonance and the resonance, both raised by
/// the cables, and that of all inertia on the cables.
std::vector<double> peaks_radps(const AxisModel& model) {
  const double cable = model.load.cable_stiffness_Nmprad, gear = model.gear.stiffness_Nmprad;
  if (!(cable > 0)) return {antiresonance_radps(model), resonance_radps(model)};
  const double per_load = 1 / model.load.inertia_kgm2,
               per_rotor = 1 / model.reflected_inertia_kgm2();
  // ω⁴ − b·ω² + c = 0.
  const double b = gear * per_rotor + (gear + cable) * per_load;
  const double c = gear * per_rotor * cable * per_load;
  const double upper = (b + std::sqrt(std::max(b * b - 4 * c, 0.0))) / 2;
  return {std::sqrt((gear + cable) * per_load), std::sqrt(upper), std::sqrt(c / upper)};
}

}  // namespace

LoopPoint loop_point(const AxisModel& model, double w) {
  const AxisControl& control = model.control;
  const GearTrain& gear = model.gear;
  const double dt = 1 / control.control_rate_Hz, n2 = gear.ratio * gear.ratio;
  const Complex s(0, w), back = std::polar(1.0, -w * dt);  // z⁻¹
  LoopPoint point;
  point.w_radps = w;
  point.coupling = {gear.stiffness_Nmprad, gear.damping_Nmsprad * w};
  point.rotor = {-w * w * n2 * gear.rotor_inertia_kgm2, w * n2 * gear.viscous_Nmsprad};
  point.load = {model.load.cable_stiffness_Nmprad - w * w * model.load.inertia_kgm2,
                w * model.load.viscous_Nmsprad};
  point.determinant = point.rotor * point.load + point.coupling * (point.rotor + point.load);
  point.numerator = control.encoder_at_output ? point.coupling : point.load + point.coupling;
  const double a = control.estimator_blend();
  // ω += a·(Δφ/dt − ω): ω/φ = a·(1 − z⁻¹)/dt / (1 − (1 − a)·z⁻¹).
  const Complex step = 1.0 - back;
  point.estimator = a / dt * step / (1.0 - (1 - a) * back);
  // u uses I before its update: I/e = Ki·dt·z⁻¹/(1 − z⁻¹).
  point.integral = dt * back / step;
  const Complex current = 1.0 + s / (2 * kPi * control.current_bandwidth_Hz);
  point.lag = back * step / (s * dt * current);
  return point;
}

std::vector<LoopPoint> loop_points(const AxisModel& model) {
  const double half_rate = kPi * model.control.control_rate_Hz;
  std::vector<double> grid;
  grid.reserve(kGridPoints + 100);
  for (int i = 0; i < kGridPoints; ++i)
    grid.push_back(half_rate * std::pow(kLowest, 1 - double(i) / (kGridPoints - 1)));
  for (const double peak : peaks_radps(model)) {
    for (double apart = 1.0 / 64; apart > 1e-7; apart /= 2) {
      grid.push_back(peak * (1 - apart));
      grid.push_back(peak * (1 + apart));
    }
  }
  std::erase_if(grid, [&](double w) { return !(w >= half_rate * kLowest && w <= half_rate); });
  std::sort(grid.begin(), grid.end());
  std::vector<LoopPoint> points;
  points.reserve(grid.size());
  for (const double w : grid) points.push_back(loop_point(model, w));
  return points;
}

std::vector<LoopPoint> with_points_about(const AxisModel& model, std::vector<LoopPoint> points,
                                         const std::vector<double>& at_radps) {
  const double lowest = points.front().w_radps, highest = points.back().w_radps;
  for (const double at : at_radps) {
    for (double apart = 1.0 / 32; apart > 1e-4; apart /= 1.5) {
      for (const double w : {at * (1 - apart), at * (1 + apart)})
        if (w > lowest && w < highest) points.push_back(loop_point(model, w));
    }
  }
  std::ranges::sort(points, {}, &LoopPoint::w_radps);
  return points;
}

}  // namespace gazewright
