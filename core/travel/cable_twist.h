#pragma once

#include <optional>

/// A cable, or a bundle of equal ones, along the axis that takes up the turning by twisting.
/// `free_length_m` is measured along the cable, `twist_rad` from end to end.
namespace gazewright {

/// From the axis to the centres of the outermost of n equal round cables in a bundle: a ring up to
/// six (d/2, d/√3, d/√2, 0.851·d, d), one in the middle with a ring about it, or the n places of a
/// hexagonal lattice nearest the axis, whichever is smaller. Up to 9 none packs closer; above that
/// it is an upper bound (the best known packings of 10 to 19 lie up to 17 % further in).
double packed_lay_radius_m(double count, double outer_diameter_m);

/// √(1 + (rφ/L)²) − 1: what a cable at lay radius r is stretched by where the clamps leave no
/// slack. Source: a helix unrolled is the hypotenuse.
double helix_strain(double lay_radius_m, double twist_rad, double free_length_m);
/// L − √(L² − (rφ)²): by how much the twist draws the clamps together, or the slack that it needs;
/// empty where rφ > L, a cable wound flat.
std::optional<double> helix_shortening_m(double lay_radius_m, double twist_rad,
                                         double free_length_m);
/// L²/(rφ²), which is r·(1 + (h/rφ)²) of a helix h high whose cable is L long; +infinity for a
/// cable on the axis. Source: curvature of a helix.
double helix_bend_radius_m(double lay_radius_m, double twist_rad, double free_length_m);

}  // namespace gazewright
