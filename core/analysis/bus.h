#pragma once

#include <vector>

/// What the moves of both axes take from the supply and give back.
namespace gazewright {

/// Both axes moving at once. All vectors have the same length; empty where inputs are missing, and
/// in a quick analysis.
struct BusCurve {
  std::vector<double> time_s, current_A, voltage_V, power_W;
  double trip_V = 0, limit_A = 0;  ///< 0: not known; limit_A may be infinite
};

class Context;
BusCurve bus_curve(Context& context);

}  // namespace gazewright
