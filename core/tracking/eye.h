#pragma once

#include "core/units/angle.h"

/// What a human eye does: a benchmark, not a limit.
namespace gazewright {

/// Duration of a saccade, 2.2 ms/° · size + 21 ms. People scatter by 20 %.
/// Source: Carpenter, Movements of the Eyes, 1988 (attribution from memory).
double saccade_time_s(double move_rad);
/// Another fit, 2.7 ms/° · size + 23 ms.
/// Source: Collewijn, Erkelens & Steinman, Journal of Physiology 404 (1988).
double longer_saccade_time_s(double move_rad);
/// Peak speed of a saccade, 551°/s · (1 − exp(−size/14°)). [rad/s]
/// Source: Baloh, Sills, Kumley & Honrubia, Neurology 25 (1975), coefficients from memory.
double saccade_peak_radps(double move_rad);

/// Up to here an eye follows smoothly: comfortably, and at the most. [rad/s]
/// Lecture notes: about 30 and 100°/s, orders of magnitude.
inline constexpr double kComfortablePursuit_radps = 30 * kDegree_rad;
inline constexpr double kPursuitLimit_radps = 100 * kDegree_rad;

}  // namespace gazewright
