#pragma once

/// One copper wire. Diameters are those of the copper; a stranded one counts as a solid wire of its
/// gauge.
namespace gazewright {

/// Annealed copper at 20 °C, 1/58 Ω·mm²/m, and its rise with temperature. Source: IEC 60028, 100 %
/// IACS.
inline constexpr double kCopper_ohmm = 1e-6 / 58, kCopper_1pK = 0.00393;
inline constexpr double kCopperReference_K = 293.15;

/// ρ·(1 + α·(T − 20 °C))/A. [Ω/m]
double wire_resistance_ohmpm(double copper_diameter_m, double temperature_K = kCopperReference_K);
/// Out and back, 2·I·R'·L. [V]
double wire_drop_V(double current_A, double resistance_ohmpm, double one_way_m);
/// 700 circular mil an ampere: cautious, for wires in a bundle; one in free air carries about six
/// times that. Source: Handbook of Electronic Tables and Formulas. [A]
double wire_rating_A(double copper_diameter_m);

}  // namespace gazewright
