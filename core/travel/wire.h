#pragma once

/// One copper wire. Diameters are those of the copper; a stranded one counts as a solid wire of its
/// gauge.
namespace gazewright {

/// Copper, wires and fuses, with their sources in resources/data/wires.yaml.
struct WireRules {
  double copper_ohmm, copper_1pK;   ///< at 20 °C, and its rise with the temperature
  double circular_mil_per_A;        ///< cross-section that a wire needs
  double most_drop;                 ///< of the supply's voltage, out and back
  double fuse_lasting, fuse_short;  ///< of a fuse's rating: for ever, for seconds
  double fuse_circular_mil_per_A;   ///< cross-section that a fuse still protects
};
const WireRules& wire_rules();
inline constexpr double kCopperReference_K = 293.15;

/// ρ·(1 + α·(T − 20 °C))/A. [Ω/m]
double wire_resistance_ohmpm(double copper_diameter_m, double temperature_K = kCopperReference_K);
/// Out and back, 2·I·R'·L. [V]
double wire_drop_V(double current_A, double resistance_ohmpm, double one_way_m);
/// By WireRules::circular_mil_per_A, 700 unless the user changed it: cautious, for wires in a
/// bundle; one in free air carries about six times that. [A]
double wire_rating_A(double copper_diameter_m);
/// The largest fuse that keeps the wire's insulation whole, by WireRules::fuse_circular_mil_per_A.
/// [A]
double largest_fuse_A(double copper_diameter_m);

}  // namespace gazewright
