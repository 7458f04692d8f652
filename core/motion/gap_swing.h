#pragma once

#include <optional>
#include <vector>

#include "core/motion/loop_points.h"

/// Whether an axis keeps swinging in the gap of its gearbox, by describing functions: the harmonic
/// balance of dead zone, Coulomb friction and the loops. Derivation and limits:
/// resources/handbook/loops.md.
namespace gazewright {

/// Of a dead zone of ±1 with slope 1 behind it, for a sine of amplitude `a`: 0 up to 1.
/// Source: Gelb & Vander Velde, Multiple-Input Describing Functions, 1968 (formula from memory).
double dead_zone_gain(double a);

struct GapSwing {
  double amplitude_rad = 0;  ///< at the output, each way
  double frequency_radps = 0;
  double twist_rad = 0;        ///< amplitude of φ_m/N − φ
  double tooth_torque_Nm = 0;  ///< amplitude
};
/// The largest swing that keeps itself up: smaller ones grow to it, larger ones die down to it.
/// Empty where the balance has no such solution. Gravity, counts and limits are left out, drag and
/// tooth losses are in. `points` are the grid of the same model.
std::optional<GapSwing> gap_swing(const AxisModel& model, const std::vector<LoopPoint>& points);

/// Whether the encoder sees it: it swings by a count or more from end to end.
bool is_read(const GapSwing& swing, const AxisModel& model);
/// Whether weight and cable at the rest pose hold the teeth together all the while.
bool is_held_together(const GapSwing& swing, const AxisModel& model);

}  // namespace gazewright
