#pragma once

#include <vector>

/// Temperatures of the motors over the duty.
namespace gazewright {

/// From cold until steady, the duty repeated. All vectors have the same length; empty where inputs
/// are missing, and in a quick analysis.
struct HeatCurve {
  std::vector<double> time_s, winding_K, housing_K;
  double winding_limit_K = 0, mount_limit_K = 0;  ///< 0: not known
};

class Context;
enum class Axis;
HeatCurve heat_curve(Context& context, Axis axis);

}  // namespace gazewright
