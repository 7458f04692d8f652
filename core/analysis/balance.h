#pragma once

#include <vector>

/// Torque of gravity over the travel of an axis.
namespace gazewright {

/// Both vectors have the same length; empty where inputs are missing.
struct GravityOverTravel {
  std::vector<double> angle_rad, torque_Nm;  ///< along the axis' positive angle
  double friction_Nm = 0;                    ///< that holds it without power; NaN where unknown
};

class Context;
enum class Axis;
GravityOverTravel gravity_over_travel(Context& context, Axis axis);

}  // namespace gazewright
