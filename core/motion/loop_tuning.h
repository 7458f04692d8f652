#pragma once

#include <optional>
#include <vector>

#include "core/motion/axis_model.h"
#include "core/motion/loop_points.h"

/// Gains worked out from the loops themselves. Method: resources/handbook/loops.md.
namespace gazewright {

struct LoopGains {
  double position_gain_1ps = 0, speed_gain_Nmsprad = 0, speed_integral_gain_Nmprad = 0;
};
AxisModel with_gains(AxisModel model, const LoopGains& gains);

/// Small lags of the speed loop as one: computing delay T, hold T/2, differences T/2, the
/// estimator's and the current loop's time constants. [s]
struct SmallLags {
  double sampling_s = 0, estimator_s = 0, current_s = 0;
  double sum_s() const { return sampling_s + estimator_s + current_s; }
};
SmallLags small_lags(const AxisControl& control);

/// PI gains for an inertia behind a small lag σ: crossover 1/(aσ), integral time a²σ, phase margin
/// atan(a) − atan(1/a). Source: Kessler 1958, Leonhard (memory).
struct PiGains {
  double gain_Nmsprad = 0, integral_gain_Nmprad = 0, crossover_radps = 0;
};
PiGains symmetrical_optimum(double inertia_kgm2, double lag_s, double a);
/// Gain of an integrator's loop behind a small lag, 1/(2σ): 4.3 % overshoot. Source: Kessler
/// (memory).
double modulus_optimum_1ps(double lag_s);

/// What keeps the gains from being higher.
enum class Ceiling { wanted, resonance, lags, gap, ripple, bracket };

struct TuningGoal {
  double margin_rad = 0;                    ///< phase margin of both loops
  std::optional<double> crossover_radps;    ///< of the speed loop; empty: as fast as is sound
  double most_ripple_Nm = kInfinity;        ///< what one count of the encoder may ask of the motor
  double most_crossover_radps = kInfinity;  ///< of the speed loop, as a bracket behind it bears
};
struct Tuning {
  LoopGains gains;
  double crossover_radps = 0;  ///< of the speed loop
  Ceiling limited_by = Ceiling::lags;
  double limit_at_radps = 0;   ///< where the margin is used up; 0 for wanted, ripple and bracket
  double ripple_Nm = 0;        ///< of one count, at the output
  bool swings_in_gap = false;  ///< even with the least gains that were tried
};
/// Empty where no speed gain holds: an undamped resonance seen from the output. The model's own
/// gains are not used. `points` are the grid of the model.
std::optional<Tuning> tuned(const AxisModel& model, const std::vector<LoopPoint>& points,
                            const TuningGoal& goal);

/// Torque at the output that one count of the encoder asks for, through the speed estimator and the
/// position loop. [N·m]
double count_ripple_Nm(const AxisModel& model, const LoopGains& gains);

}  // namespace gazewright
