#pragma once

/// Closed forms of an outer loop: an integrator with dead time.
namespace gazewright {

/// Largest gain that leaves this phase margin: the loop K·exp(−s·T)/s has its crossover at K and a
/// phase margin of π/2 − K·T, so K = (π/2 − margin)/T. [1/s]
double gain_ceiling_1ps(double dead_time_s, double phase_margin_rad);

/// How far the axis stays behind a target of constant speed. A loop that acts on the error settles
/// where K·error is the speed, whatever its dead time; one that acts on an angle which is late
/// stays behind by what the target moves in that time as well. Feeding a part of the target's speed
/// forward takes off that part of both. [rad]
/// @param late_s  age of the angle that it acts on; 0 where it acts on the error
double ramp_lag_rad(double speed_radps, double gain_1ps, double late_s, double feed_forward);

/// Half angle of the cone straight up into which pan cannot follow a target that flies past at this
/// speed and distance: there the target's path on the ground is nearer than r, where pan needs
/// v/r of speed and (3√3/8)·(v/r)² of acceleration. π/2: it cannot follow anywhere. [rad]
double blind_cone_rad(double speed_mps, double distance_m, double most_radps, double most_radps2);

}  // namespace gazewright
