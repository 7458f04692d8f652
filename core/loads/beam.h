#pragma once

/// A straight cantilever, held at one end; small deflections, no shear. EI in N·m², lengths in m.
/// Sources: R. K. Bansal, Strength of Materials, ch. 13; handbook tables of beams.
namespace gazewright {

struct Bend {
  double deflection_m = 0, slope_rad = 0;  ///< of the free end
};
/// Force across the beam at a distance from where it is held; beyond it the beam stays straight.
Bend bend_by_force(double EI_Nm2, double length_m, double force_N, double at_m);
Bend bend_by_moment(double EI_Nm2, double length_m, double moment_Nm);
/// Force spread evenly over the length; `force_N` is all of it.
Bend bend_by_own_weight(double EI_Nm2, double length_m, double force_N);

/// Part of the beam's mass that swings with its end, 33/140. Source: Rayleigh; Blevins, Formulas
/// for Natural Frequency and Mode Shape, from memory. 1.5 % too high in frequency without an end
/// mass.
inline constexpr double kSwingingShare = 33.0 / 140;
/// Lowest bending frequency with a mass at the end: √(3EI/(L³(M + 33/140·m)))/2π. [Hz]
double bending_frequency_Hz(double EI_Nm2, double length_m, double end_kg, double beam_kg);
/// Lowest torsional frequency with an inertia at the end: √(GJ/(L(I + I_beam/3)))/2π. [Hz]
double torsion_frequency_Hz(double GJ_Nm2, double length_m, double end_kgm2, double beam_kgm2);

}  // namespace gazewright
