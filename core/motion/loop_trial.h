#pragma once

#include <vector>

#include "core/motion/loop_points.h"

namespace gazewright {

/// A loop without its controller over a grid, its phase followed: margins of many gains in little
/// time. Between points of the grid, gain and phase are straight over the logarithms.
class LoopTrial {
 public:
  using Complex = LoopPoint::Complex;

  /// Phase of the plant at each point, as far as it is followed.
  LoopTrial(std::vector<Complex> plant, std::vector<double> phase_rad,
            const std::vector<LoopPoint>& points);

  struct Demand {
    double phase_rad, gain;
  };
  struct Outcome {
    bool holds = true;
    double at_radps = 0;         ///< the first frequency at which it does not hold
    double crossover_radps = 0;  ///< the first one; 0: none
  };
  /// With a controller p + i·integral.
  Outcome with(double p, double i, const Demand& demand) const;

 private:
  bool crossing_holds(std::size_t k, double p, double i, double before2, double now2,
                      const Demand& demand, Outcome& outcome) const;

  std::vector<Complex> plant_;
  std::vector<double> phase_rad_;
  const std::vector<LoopPoint>& points_;
};

}  // namespace gazewright
