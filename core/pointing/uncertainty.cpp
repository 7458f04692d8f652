#include "core/pointing/uncertainty.h"

#include <algorithm>
#include <cmath>

#include "core/words/words.h"

// Derivation and examples: resources/handbook/pointing.md.
namespace gazewright {

std::string name_of(Distribution distribution) {
  switch (distribution) {
    case Distribution::rectangular:
      return words("rectangular");
    case Distribution::triangular:
      return words("triangular");
    case Distribution::arcsine:
      return words("arcsine");
    case Distribution::normal:
      return words("normal");
  }
  return words("rectangular");
}

double standard_deviation(Distribution distribution, double half_width) {
  switch (distribution) {
    case Distribution::rectangular:
      return half_width / std::sqrt(3);
    case Distribution::triangular:
      return half_width / std::sqrt(6);
    case Distribution::arcsine:
      return half_width / std::sqrt(2);
    case Distribution::normal:
      return half_width / kNormalReach;
  }
  return half_width;
}

double combined(std::span<const double> parts, std::span<const Correlation> together) {
  double squares = 0;
  for (const double part : parts) squares += part * part;
  for (const Correlation& pair : together)
    squares += 2 * pair.coefficient * parts[pair.first] * parts[pair.second];
  return std::sqrt(std::max(0.0, squares));
}

double worst_case(std::span<const double> parts) {
  double sum = 0;
  for (const double part : parts) sum += std::abs(part);
  return sum;
}

}  // namespace gazewright
