#include "core/motion/loop_trial.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "core/motion/loop_value.h"
#include "core/units/angle.h"

namespace gazewright {

LoopTrial::LoopTrial(std::vector<Complex> plant, std::vector<double> phase_rad,
                     const std::vector<LoopPoint>& points)
    : plant_(std::move(plant)), phase_rad_(std::move(phase_rad)), points_(points) {}

bool LoopTrial::crossing_holds(std::size_t k, double p, double i, double before2, double now2,
                               const Demand& demand, Outcome& outcome) const {
  const double part = std::log(before2) / (std::log(before2) - std::log(now2));
  const double w =
      points_[k - 1].w_radps * std::pow(points_[k].w_radps / points_[k - 1].w_radps, part);
  if (outcome.crossover_radps == 0) outcome.crossover_radps = w;
  const double before = phase_rad_[k - 1] + std::arg(p + i * points_[k - 1].integral);
  const double now = phase_rad_[k] + std::arg(p + i * points_[k].integral);
  outcome.at_radps = w;
  return kPi + before + part * (now - before) >= demand.phase_rad;
}

LoopTrial::Outcome LoopTrial::with(double p, double i, const Demand& demand) const {
  Outcome outcome;
  const double least2 = 1 / (demand.gain * demand.gain);
  Complex before;
  double before2 = 0;
  for (std::size_t k = 0; k < points_.size(); ++k) {
    const Complex c = p + i * points_[k].integral;
    const Complex now(plant_[k].real() * c.real() - plant_[k].imag() * c.imag(),
                      plant_[k].real() * c.imag() + plant_[k].imag() * c.real());
    const double now2 = std::norm(now);
    if (k > 0) {
      outcome.holds =
          (before2 >= 1) == (now2 >= 1) || crossing_holds(k, p, i, before2, now2, demand, outcome);
      const double turn = std::abs(phase_rad_[k] - phase_rad_[k - 1]);
      const bool left =
          before.real() < 0 && now.real() < 0 && (before.imag() < 0) != (now.imag() < 0);
      const bool passes =
          left ? turn < kPi / 2
               : turn >= kPi / 2 &&
                     passes_half_turn(phase_rad_[k - 1] + std::arg(c), phase_rad_[k] + std::arg(c));
      if (passes && std::max(before2, now2) > least2) {
        outcome.at_radps = points_[k].w_radps;
        outcome.holds = false;
      }
      if (!outcome.holds) return outcome;
    }
    before = now;
    before2 = now2;
  }
  if (before2 >= 1) outcome.holds = false, outcome.at_radps = points_.back().w_radps;
  return outcome;
}

}  // namespace gazewright
