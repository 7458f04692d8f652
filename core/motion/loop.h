#pragma once

#include <complex>
#include <optional>

#include "core/motion/axis_model.h"

/// The linear model of the loops, gear wound tight, the load on the cables' spring: crossovers,
/// margins, resonance. Friction that is not viscous and tooth losses are left out.
namespace gazewright {

/// Of the gear's spring alone, cables left out: √(k/J_L) and √(k(1/J_L + 1/(N²J_m))).
double antiresonance_radps(const AxisModel& model);
double resonance_radps(const AxisModel& model);

/// Open loop at ω, sampling and computing delay, hold, estimator and current loop included. Valid
/// up to half the sample rate.
std::complex<double> speed_loop(const AxisModel& model, double w_radps);
std::complex<double> position_loop(const AxisModel& model, double w_radps);

/// Margins over all crossings up to half the sample rate: the smallest of each; the crossover is
/// the first one.
struct LoopMargins {
  std::optional<double> crossover_radps, phase_margin_rad, gain_margin;
};
struct BothMargins {
  LoopMargins speed, position;
};
BothMargins loop_margins(const AxisModel& model);
LoopMargins speed_loop_margins(const AxisModel& model);
LoopMargins position_loop_margins(const AxisModel& model);

}  // namespace gazewright
