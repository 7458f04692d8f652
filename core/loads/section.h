#pragma once

/// Sections of beams. Lengths in m, the section's width lies across the tilt axis, its height along
/// it. Formulas and sources: resources/handbook/structure.md.
namespace gazewright {

struct Section {
  double width_m = 0, height_m = 0;
  double wall_m = 0;  ///< of a box; 0: a bar
  double fill = 0;    ///< part of the inside that is filled, 0 to 1; of a bar 0 means full
};

/// What of a section bends, twists and weighs. An inside that is filled to a part f has f² of the
/// full one's stiffness (Gibson & Ashby, Cellular Solids, open cells; from memory).
struct SectionValues {
  double area_m2 = 0;         ///< that carries along the beam
  double weight_area_m2 = 0;  ///< full area that would weigh as much
  double width_m4 = 0;        ///< bends along the width: h·w³/12 of a bar
  double height_m4 = 0;       ///< bends along the height: w·h³/12 of a bar
  double torsion_m4 = 0;      ///< torsion constant
};
/// A box whose walls leave no inside is a bar.
SectionValues values_of(const Section& section);

/// Torsion constant of a rectangle, within 0.3 % of the exact series. Source: Roark's Formulas for
/// Stress and Strain, table 10.1, case 4. [m⁴]
double rectangle_torsion_m4(double side_m, double other_m);
/// Of a thin closed tube, wall t, line of its middle with area A and length s: 4A²t/s. [m⁴]
double tube_torsion_m4(double width_m, double height_m, double wall_m);

/// Largest shear stress under a torque: of a rectangle by Roark's polynomial (same case), of a box
/// T/(2At), Bredt. The inside's filling is left out. [Pa]
double torsion_stress_Pa(const Section& section, double torque_Nm);

}  // namespace gazewright
