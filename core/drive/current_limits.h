#pragma once

#include "core/motion/lanes.h"

/// The limits of the phase current at one speed, for one motor or for several side by side.
/// Derivation of every formula: resources/handbook/drive.md.
namespace gazewright {

/// Largest i with (R·i + e)² + (X·i)² ≤ Vp²; the root is written without a difference of like
/// numbers. [A]
template <class Number>
Number driving_bus_A(Number R_ohm, Number X_ohm, Number e_V, Number phase_V) {
  const Number room_V2 = (phase_V - e_V) * (phase_V + e_V);
  const Number below_V2 =
      R_ohm * e_V + root_of(R_ohm * R_ohm * phase_V * phase_V + X_ohm * X_ohm * room_V2);
  const Number limit_A = select(below_V2 > 0, room_V2 / below_V2, all<Number>(__builtin_inf()));
  return select(e_V >= phase_V, Number{}, limit_A);
}

/// Larger root of (R·i − e)² + (X·i)² = Vp², at most `most_A`. [A]
template <class Number>
Number braking_bus_A(Number R_ohm, Number X_ohm, Number e_V, Number phase_V, Number most_A) {
  const Number room_V2 = (phase_V - e_V) * (phase_V + e_V);  // negative above the no-load speed
  const Number impedance_ohm2 = R_ohm * R_ohm + X_ohm * X_ohm;
  const Number under_root_V4 = R_ohm * R_ohm * phase_V * phase_V + X_ohm * X_ohm * room_V2;
  const Number limit_A = (R_ohm * e_V + root_of(under_root_V4)) / impedance_ohm2;
  return select(impedance_ohm2 == 0, select(room_V2 >= 0, most_A, Number{}),
                select(under_root_V4 < 0, Number{}, least_of(limit_A, most_A)));
}

/// Largest i with 1.5·i·(R·i + e) ≤ V·I_supply. @param room_W  V·I_supply/1.5. [A]
template <class Number>
Number supply_A(Number R_ohm, Number e_V, Number room_W) {
  const Number infinite = all<Number>(__builtin_inf());
  const Number below_V = e_V + root_of(e_V * e_V + 4 * R_ohm * room_W);
  // Below nothing there is no power to give, or none needed.
  const Number limit_A =
      select(below_V > 0, 2 * room_W / below_V, select(R_ohm > 0, Number{}, infinite));
  return select(room_W == infinite, infinite, limit_A);
}

}  // namespace gazewright
