#pragma once

#include <complex>
#include <optional>
#include <vector>

#include "core/motion/axis_model.h"
#include "core/motion/loop_points.h"

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
/// the first one. A resonance without any damping counts as one with next to none: the phase falls
/// by half a turn there, and a gain margin beyond it is 0.
struct LoopMargins {
  std::optional<double> crossover_radps, phase_margin_rad, gain_margin;
  std::optional<double> delay_margin_s;  ///< what more of delay would bring it to the edge
  double gain_margin_at_radps = 0;       ///< where that is
};
LoopMargins speed_loop_margins(const AxisModel& model);
LoopMargins position_loop_margins(const AxisModel& model);

/// A row per frequency, all of the same length.
struct FrequencyResponse {
  std::vector<double> w_radps;
  std::vector<double> speed_gain, speed_phase_rad;        ///< speed loop, open; phase followed
  std::vector<double> position_gain, position_phase_rad;  ///< position loop, open
  std::vector<double> closed_gain;                        ///< measured angle per commanded angle
  std::vector<double> error_gain;  ///< error per disturbance of the angle, 1/|1 + L|
  /// Where the gain margins are; 0 where there is none.
  double speed_gain_margin_at_radps = 0, position_gain_margin_at_radps = 0;
};
struct LoopStudy {
  FrequencyResponse response;
  LoopMargins speed, position;
  bool is_stable = false;                 ///< all margins are there and positive
  std::optional<double> bandwidth_radps;  ///< closed position loop's gain passes 1/√2; where stable
  std::optional<double> peak;             ///< its largest gain; where stable
};
LoopStudy study_loops(const AxisModel& model, const std::vector<LoopPoint>& points);

}  // namespace gazewright
