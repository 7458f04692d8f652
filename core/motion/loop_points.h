#pragma once

#include <complex>
#include <vector>

#include "core/motion/axis_model.h"

/// The linear model of the loops at single frequencies, apart from the gains: the same points serve
/// margins, the gap's swing and the search for gains. Derivation: resources/handbook/loops.md.
namespace gazewright {

/// At s = jω and z = exp(s·dt), gear wound tight. Everything at the output, so that the ratio is in
/// the rotor alone: torque N·T moves an inertia N²·J_m by φ_m/N.
struct LoopPoint {
  using Complex = std::complex<double>;

  double w_radps = 0;
  Complex rotor, load, coupling;   ///< torque per angle: rotor alone, load alone, the gear's spring
  Complex numerator, determinant;  ///< of the measured angle per torque
  Complex lag;                     ///< computing delay, hold and current loop
  Complex estimator;               ///< ω_meas per measured angle
  Complex integral;                ///< of the speed error, summed once a sample

  /// Torque command per speed error.
  Complex controller(const AxisControl& control) const {
    return control.speed_gain_Nmsprad + control.speed_integral_gain_Nmprad * integral;
  }
};
/// Valid up to half the control rate; beyond it gives the image that sampling folds back.
LoopPoint loop_point(const AxisModel& model, double w_radps);

/// A logarithmic grid from 1e-4 of half the control rate up to it, dense about the train's
/// resonances: a peak of little damping is narrower than the grid.
std::vector<LoopPoint> loop_points(const AxisModel& model);
/// The same, dense about these frequencies too.
std::vector<LoopPoint> with_points_about(const AxisModel& model, std::vector<LoopPoint> points,
                                         const std::vector<double>& at_radps);

}  // namespace gazewright
