#pragma once

#include "core/analysis/checks.h"

/// The speed loop against modes that its model does not know: of a bracket, of the arm.
namespace gazewright {

/// How far above the speed loop's crossover such a mode has to lie, as a factor: what the loop
/// excites less than that far below it rings along. Common practice, no source.
inline constexpr double kModeAboveLoop = 3;

/// "speed loop: gain above 1 up to half the sample rate, which no sampled loop can hold".
/// @param loop  "speed" or "position"
std::string say_never_below_1(const char* loop);

/// A mode against a speed loop whose gain crosses 1 nowhere below half the sample rate: moot, as
/// `stays_below` says, where it is below 1 there, else impossible.
/// @param mode  the capacity
Compared without_crossover(Context& c, Axis a, double mode, std::string stays_below);

}  // namespace gazewright
