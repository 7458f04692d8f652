#include "core/travel/cable_twist.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <vector>

namespace gazewright {
namespace {

/// Radius, in diameters, of the ring on which n ≥ 2 circles of diameter 1 touch.
double ring(int count) { return 1 / (2 * std::sin(std::numbers::pi / count)); }

/// Distance from the middle of a hexagonal lattice of spacing 1 to its n-th nearest place, n ≥ 8.
double lattice(int count) {
  const int reach = static_cast<int>(std::ceil(std::sqrt(count)));
  std::vector<int> squares;
  for (int a = -reach; a <= reach; ++a)
    for (int b = -reach; b <= reach; ++b) squares.push_back(a * a + a * b + b * b);
  const auto nth = squares.begin() + (count - 1);
  std::nth_element(squares.begin(), nth, squares.end());
  return std::sqrt(*nth);
}

}  // namespace

double packed_lay_radius_m(double count, double outer_diameter_m) {
  const int n = static_cast<int>(count);
  if (n <= 1) return 0;
  const double diameters = n <= 5 ? ring(n) : n <= 7 ? 1 : std::min(ring(n - 1), lattice(n));
  return diameters * outer_diameter_m;
}

double helix_strain(double lay_radius_m, double twist_rad, double free_length_m) {
  const double slope = lay_radius_m * twist_rad / free_length_m;
  return slope * slope / (1 + std::hypot(1, slope));
}

std::optional<double> helix_shortening_m(double lay_radius_m, double twist_rad,
                                         double free_length_m) {
  const double round_m = lay_radius_m * twist_rad;
  if (!(round_m <= free_length_m)) return std::nullopt;
  const double height_m = std::sqrt((free_length_m - round_m) * (free_length_m + round_m));
  return round_m * round_m / (free_length_m + height_m);
}

double helix_bend_radius_m(double lay_radius_m, double twist_rad, double free_length_m) {
  const double curving = lay_radius_m * twist_rad * twist_rad;
  if (!(curving > 0)) return std::numeric_limits<double>::infinity();
  return free_length_m * free_length_m / curving;
}

}  // namespace gazewright
