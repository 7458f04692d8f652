#include "core/motion/loop.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

// Derivation: resources/handbook/motion.md.
namespace gazewright {
namespace {

using Complex = std::complex<double>;
constexpr int kGridPoints = 600;
constexpr double kLowest = 1e-4;  // of half the sample rate
constexpr double kPi = std::numbers::pi;

/// Motor angle (as output angle) and load angle per motor torque at s = jω, gear wound tight.
struct Plant {
  Complex motor, load;
};
Plant plant(const AxisModel& model, double w) {
  const GearTrain& gear = model.gear;
  const Complex s(0, w);
  const double n = gear.ratio;
  const Complex coupling = gear.stiffness_Nmprad + gear.damping_Nmsprad * s;
  // Everything at the output: rotor N²·J_m turned by φ_m/N under N·T.
  const Complex rotor = s * (s * n * n * gear.rotor_inertia_kgm2 + n * n * gear.viscous_Nmsprad);
  const Complex load = s * (s * model.load.inertia_kgm2 + model.load.viscous_Nmsprad) +
                       model.load.cable_stiffness_Nmprad;
  const Complex determinant = rotor * load + coupling * (rotor + load);
  return {n * (load + coupling) / determinant, n * coupling / determinant};
}

/// The difference equations of section 5 at z = exp(jω·dt), and what lies between command and
/// measured angle.
struct LoopTerms {
  Complex controller;  ///< motor torque command per speed error
  Complex estimator;   ///< ω_meas per measured angle
  Complex angle;       ///< measured angle per torque command: delay, hold, current loop, train
};
LoopTerms terms(const AxisModel& model, double w) {
  const AxisControl& control = model.control;
  const double dt = 1 / control.control_rate_Hz;
  const Complex s(0, w), back = std::exp(-s * dt);  // z⁻¹
  const double a = -std::expm1(-2 * kPi * control.estimator_bandwidth_Hz * dt);
  // ω += a·(Δφ/dt − ω): ω/φ = a·(1 − z⁻¹)/dt / (1 − (1 − a)·z⁻¹).
  const Complex estimator = a * (1.0 - back) / dt / (1.0 - (1 - a) * back);
  // u uses I before its update: I/e = Ki·dt·z⁻¹/(1 − z⁻¹).
  const Complex controller =
      (control.speed_gain_Nmsprad + control.speed_integral_gain_Nmprad * dt * back / (1.0 - back)) /
      model.gear.ratio;
  const Complex hold = (1.0 - back) / (s * dt);
  const Complex current = 1.0 / (1.0 + s / (2 * kPi * control.current_bandwidth_Hz));
  const Plant p = plant(model, w);
  return {controller, estimator,
          back * hold * current * (control.encoder_at_output ? p.load : p.motor)};
}

template <class Loop>
double bisected(Loop&& crosses, double low, double high) {
  for (int i = 0; i < 60; ++i) {
    const double middle = std::sqrt(low * high);
    (crosses(middle) ? high : low) = middle;
  }
  return std::sqrt(low * high);
}

void keep_least(std::optional<double>& least, double value) {
  if (!least || value < *least) least = value;
}

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

/// A logarithmic grid up to half the sample rate, dense about the resonances: a peak of little
/// damping is narrower than the grid.
std::vector<double> grid_radps(const AxisModel& model) {
  const double half_rate = kPi * model.control.control_rate_Hz;
  std::vector<double> grid;
  grid.reserve(kGridPoints + 100);
  for (int i = 0; i < kGridPoints; ++i)
    grid.push_back(half_rate * std::pow(kLowest, 1 - double(i) / (kGridPoints - 1)));
  for (const double peak : peaks_radps(model)) {
    for (double apart = 1.0 / 32; apart > 1e-7; apart /= 2) {
      grid.push_back(peak * (1 - apart));
      grid.push_back(peak * (1 + apart));
    }
  }
  std::erase_if(grid, [&](double w) { return !(w >= half_rate * kLowest && w <= half_rate); });
  std::sort(grid.begin(), grid.end());
  return grid;
}

Complex speed_loop(const LoopTerms& t) { return t.controller * t.angle * t.estimator; }

Complex position_loop(const AxisModel& model, const LoopTerms& t) {
  return model.control.position_gain_1ps * t.controller * t.angle / (1.0 + speed_loop(t));
}

/// Margins of an open loop whose gains over the grid are known, crossings refined by bisection. The
/// phase is followed from the lowest frequency on, so that a lead above a resonance is not taken
/// for a lag of nearly a turn.
template <class Loop>
LoopMargins margins(Loop&& loop, const std::vector<double>& grid,
                    const std::vector<Complex>& gains) {
  LoopMargins margins;
  if (grid.empty()) return margins;
  double before_w = grid.front();
  Complex before = gains.front();
  double phase = std::arg(before);
  if (phase > kPi / 2) phase -= 2 * kPi;  // two integrators and a delay: just past −180°
  for (std::size_t i = 0; i < grid.size(); ++i) {
    const double w = grid[i];
    const Complex now = gains[i];
    const bool was_above = std::abs(before) >= 1, is_above = std::abs(now) >= 1;
    if (was_above != is_above) {
      const double at =
          bisected([&](double x) { return (std::abs(loop(x)) >= 1) == is_above; }, before_w, w);
      if (!margins.crossover_radps) margins.crossover_radps = at;
      keep_least(margins.phase_margin_rad, kPi + phase + std::arg(loop(at) / before));
    }
    // Phase passes −180°: the imaginary part changes sign left of the origin.
    const bool passes =
        (before.imag() < 0) != (now.imag() < 0) && before.real() < 0 && now.real() < 0;
    if (passes) {
      const bool sign = now.imag() < 0;
      const double at =
          bisected([&](double x) { return (loop(x).imag() < 0) == sign; }, before_w, w);
      const double gain = 1 / std::abs(loop(at));
      keep_least(margins.gain_margin, gain);
    }
    phase += std::arg(now / before);
    before = now;
    before_w = w;
  }
  return margins;
}

}  // namespace

double antiresonance_radps(const AxisModel& model) {
  return std::sqrt(model.gear.stiffness_Nmprad / model.load.inertia_kgm2);
}

double resonance_radps(const AxisModel& model) {
  return std::sqrt(model.gear.stiffness_Nmprad *
                   (1 / model.load.inertia_kgm2 + 1 / model.reflected_inertia_kgm2()));
}

std::complex<double> speed_loop(const AxisModel& model, double w_radps) {
  return speed_loop(terms(model, w_radps));
}

std::complex<double> position_loop(const AxisModel& model, double w_radps) {
  return position_loop(model, terms(model, w_radps));
}

BothMargins loop_margins(const AxisModel& model) {
  const std::vector<double> grid = grid_radps(model);
  std::vector<Complex> speed, position;
  speed.reserve(grid.size());
  position.reserve(grid.size());
  for (const double w : grid) {
    const LoopTerms t = terms(model, w);
    speed.push_back(speed_loop(t));
    position.push_back(position_loop(model, t));
  }
  return {margins([&](double w) { return speed_loop(model, w); }, grid, speed),
          margins([&](double w) { return position_loop(model, w); }, grid, position)};
}

LoopMargins speed_loop_margins(const AxisModel& model) { return loop_margins(model).speed; }

LoopMargins position_loop_margins(const AxisModel& model) { return loop_margins(model).position; }

}  // namespace gazewright
