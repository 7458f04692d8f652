#pragma once

#include <numbers>

namespace gazewright {

inline constexpr double kPi = std::numbers::pi;
inline constexpr double kDegree_rad = std::numbers::pi / 180;
inline constexpr double kDegPerRad = 180 / std::numbers::pi;

}  // namespace gazewright
