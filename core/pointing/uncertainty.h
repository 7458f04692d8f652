#pragma once

#include <cstddef>
#include <span>
#include <string>

/// How errors add up, by the Guide to the Expression of Uncertainty in Measurement, JCGM 100:2008
/// (GUM).
namespace gazewright {

/// What is known of an error besides its largest size: rectangular, anywhere within; triangular,
/// rather near 0; arcsine, a wave that is met at any phase; normal, known by its standard
/// deviation.
enum class Distribution { rectangular, triangular, arcsine, normal };
std::string name_of(Distribution distribution);

/// An error with a normal distribution has no largest size: 3 standard deviations are taken, within
/// which 99.73 % of it lies (GUM table G.1).
inline constexpr double kNormalReach = 3;
/// Coverage factor of the expanded uncertainty: about 95 % of the errors lie within (GUM 6.3.3).
inline constexpr double kCoverage = 2;

/// Standard deviation of an error of this largest size each way: a/√3, a/√6, a/√2, a/3.
/// Source: GUM 4.3.7 (rectangular), 4.3.9 (triangular), H.1.3.4 (arcsine). @pre half_width >= 0
double standard_deviation(Distribution distribution, double half_width);

/// Two errors that depend on each other.
struct Correlation {
  std::size_t first, second;
  double coefficient;  ///< −1 to 1
};
/// √(Σx² + 2·Σr·x·x'): parts that are independent, but for the pairs named. Each pair at most once.
/// Source: GUM 5.1.2 eq. 10, 5.2.2 eq. 16, with x = c·u. @returns 0 where the correlations named
/// cannot all be and the sum is below 0
double combined(std::span<const double> parts, std::span<const Correlation> together = {});
/// Σ|x|: all at their largest at once.
double worst_case(std::span<const double> parts);

}  // namespace gazewright
