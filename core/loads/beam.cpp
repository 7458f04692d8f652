#include "core/loads/beam.h"

#include <cmath>
#include <numbers>

namespace gazewright {

Bend bend_by_force(double EI_Nm2, double length_m, double force_N, double at_m) {
  const double slope = force_N * at_m * at_m / (2 * EI_Nm2);
  return {force_N * at_m * at_m * at_m / (3 * EI_Nm2) + slope * (length_m - at_m), slope};
}

Bend bend_by_moment(double EI_Nm2, double length_m, double moment_Nm) {
  const double slope = moment_Nm * length_m / EI_Nm2;
  return {slope * length_m / 2, slope};
}

Bend bend_by_own_weight(double EI_Nm2, double length_m, double force_N) {
  const double square_m2 = length_m * length_m;
  return {force_N * square_m2 * length_m / (8 * EI_Nm2), force_N * square_m2 / (6 * EI_Nm2)};
}

double bending_frequency_Hz(double EI_Nm2, double length_m, double end_kg, double beam_kg) {
  const double cube_m3 = length_m * length_m * length_m;
  return std::sqrt(3 * EI_Nm2 / (cube_m3 * (end_kg + kSwingingShare * beam_kg))) /
         (2 * std::numbers::pi);
}

double torsion_frequency_Hz(double GJ_Nm2, double length_m, double end_kgm2, double beam_kgm2) {
  return std::sqrt(GJ_Nm2 / (length_m * (end_kgm2 + beam_kgm2 / 3))) / (2 * std::numbers::pi);
}

}  // namespace gazewright
