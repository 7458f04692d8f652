#include "core/loads/rolling.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <span>

namespace gazewright {
namespace {

constexpr double kRadPerDeg = 3.14159265358979323846 / 180;

struct FactorRow {
  double f0Fa_per_C0, e, Y;
};
// ISO 281:2007 table 3, radial contact ball bearings, normal clearance; nine public catalogues and
// textbooks print these rows.
constexpr std::array<FactorRow, 9> kDeepGroove{{{0.172, 0.19, 2.30},
                                                {0.345, 0.22, 1.99},
                                                {0.689, 0.26, 1.71},
                                                {1.03, 0.28, 1.55},
                                                {1.38, 0.30, 1.45},
                                                {2.07, 0.34, 1.31},
                                                {3.45, 0.38, 1.15},
                                                {5.17, 0.42, 1.04},
                                                {6.89, 0.44, 1.00}}};
constexpr double kDeepGrooveX = 0.56;
// The same table, 15 deg; from memory.
constexpr std::array<FactorRow, 9> kFifteenDegrees{{{0.178, 0.38, 1.47},
                                                    {0.357, 0.40, 1.40},
                                                    {0.714, 0.43, 1.30},
                                                    {1.07, 0.46, 1.23},
                                                    {1.43, 0.47, 1.19},
                                                    {2.14, 0.50, 1.12},
                                                    {3.57, 0.55, 1.02},
                                                    {5.35, 0.56, 1.00},
                                                    {7.14, 0.56, 1.00}}};
constexpr double kFifteenDegreesX = 0.44;

struct AngleRow {
  double degrees, e, X, Y;
};
// The same table, single row, 20 deg and more; from memory.
constexpr std::array<AngleRow, 6> kAngles{{{20, 0.57, 0.43, 1.00},
                                           {25, 0.68, 0.41, 0.87},
                                           {30, 0.80, 0.39, 0.76},
                                           {35, 0.95, 0.37, 0.66},
                                           {40, 1.14, 0.35, 0.57},
                                           {45, 1.34, 0.33, 0.50}}};
struct StaticRow {
  double degrees, X0, Y0;
};
// ISO 76:2006, single row; 0 deg as public sources print it, the others from memory.
constexpr std::array<StaticRow, 8> kStatic{{{0, 0.6, 0.5},
                                            {15, 0.5, 0.46},
                                            {20, 0.5, 0.42},
                                            {25, 0.5, 0.38},
                                            {30, 0.5, 0.33},
                                            {35, 0.5, 0.29},
                                            {40, 0.5, 0.26},
                                            {45, 0.5, 0.22}}};

double mix(double a, double b, double part) { return a + part * (b - a); }

/// The rows about `x` and how far it lies between them, 0 to 1; the end rows beyond the ends.
template <class Row>
struct Between {
  const Row &low, &high;
  double part;
};
template <class Row>
Between<Row> between(std::span<const Row> rows, double Row::*key, double x) {
  std::size_t i = 1;
  while (i + 1 < rows.size() && rows[i].*key < x) ++i;
  const Row &low = rows[i - 1], &high = rows[i];
  return {low, high, std::clamp((x - low.*key) / (high.*key - low.*key), 0.0, 1.0)};
}

AxialFactors by_load(std::span<const FactorRow> rows, double X, double load) {
  const auto [low, high, part] = between(rows, &FactorRow::f0Fa_per_C0, load);
  return {mix(low.e, high.e, part), X, mix(low.Y, high.Y, part)};
}

AxialFactors mixed(const AxialFactors& a, const AxialFactors& b, double part) {
  return {mix(a.e, b.e, part), mix(a.X, b.X, part), mix(a.Y, b.Y, part)};
}

double dynamic_load_N(const AxialFactors& f, double radial_N, double axial_N) {
  return axial_N <= f.e * radial_N ? radial_N : f.X * radial_N + f.Y * axial_N;
}

double static_ball_load_N(double contact_angle_rad, double radial_N, double axial_N) {
  const auto [low, high, part] = between(std::span<const StaticRow>(kStatic), &StaticRow::degrees,
                                         contact_angle_rad / kRadPerDeg);
  return std::max(radial_N,
                  mix(low.X0, high.X0, part) * radial_N + mix(low.Y0, high.Y0, part) * axial_N);
}

}  // namespace

AxialFactors ball_factors(double contact_angle_rad, double f0Fa_per_C0) {
  const double degrees = contact_angle_rad / kRadPerDeg;
  const AxialFactors fifteen = by_load(kFifteenDegrees, kFifteenDegreesX, f0Fa_per_C0);
  if (degrees <= 15)
    return mixed(by_load(kDeepGroove, kDeepGrooveX, f0Fa_per_C0), fifteen, degrees / 15);
  const AngleRow& first = kAngles.front();
  if (degrees < first.degrees)
    return mixed(fifteen, {first.e, first.X, first.Y}, (degrees - 15) / (first.degrees - 15));
  const auto [low, high, part] =
      between(std::span<const AngleRow>(kAngles), &AngleRow::degrees, degrees);
  return mixed({low.e, low.X, low.Y}, {high.e, high.X, high.Y}, part);
}

std::optional<EquivalentLoad> equivalent_load(const RollingBearing& bearing, double radial_N,
                                              double axial_N) {
  const double angle = bearing.contact_angle_rad;
  if (bearing.rolling == Rolling::ball) {
    const double load = bearing.calculation_factor * axial_N / bearing.static_rating_N;
    return EquivalentLoad{dynamic_load_N(ball_factors(angle, load), radial_N, axial_N),
                          static_ball_load_N(angle, radial_N, axial_N)};
  }
  if (angle <= 0) {
    if (axial_N > 0) return std::nullopt;
    return EquivalentLoad{radial_N, radial_N};
  }
  const double cot = 1 / std::tan(angle);
  return EquivalentLoad{dynamic_load_N({1.5 / cot, 0.4, 0.4 * cot}, radial_N, axial_N),
                        std::max(radial_N, 0.5 * radial_N + 0.22 * cot * axial_N)};
}

std::optional<EquivalentLoad> equivalent_load_alone(const RollingBearing& bearing, double radial_N,
                                                    double axial_N, double moment_Nm,
                                                    double pitch_diameter_m) {
  const double F = radial_N + 2 * moment_Nm / pitch_diameter_m;
  if (bearing.rolling == Rolling::ball) return equivalent_load(bearing, F, axial_N);
  return EquivalentLoad{axial_N <= 1.5 * F ? F + 0.45 * axial_N : 0.67 * (F + axial_N),
                        F + 0.44 * axial_N};
}

double rating_life_turns(Rolling rolling, double dynamic_rating_N, double equivalent_N) {
  if (equivalent_N <= 0) return std::numeric_limits<double>::infinity();
  return 1e6 *
         std::pow(dynamic_rating_N / equivalent_N, rolling == Rolling::ball ? 3.0 : 10.0 / 3.0);
}

double thrust_of_radial_N(const RollingBearing& bearing, double radial_N) {
  const double half_loaded = bearing.rolling == Rolling::ball ? 1.216 : 1.260;
  return half_loaded * radial_N * std::tan(bearing.contact_angle_rad);
}

double wanted_static_safety(Rolling rolling) { return rolling == Rolling::ball ? 1.5 : 3; }

PairLoad pair_load(double radial_N, double moment_Nm, double spacing_m, double overhang_m) {
  const double arms = overhang_m / spacing_m, couple_N = moment_Nm / spacing_m;
  return {radial_N * std::abs(1 + arms) + couple_N, radial_N * std::abs(arms) + couple_N};
}

Play pair_play(double radial_play_m, double spacing_m, double arm_m) {
  return {2 * radial_play_m / spacing_m,
          radial_play_m * std::max(1.0, std::abs(1 + 2 * arm_m / spacing_m))};
}

Play single_play(double radial_play_m, double axial_play_m, double pitch_diameter_m, double arm_m) {
  const double tip = 2 * axial_play_m / pitch_diameter_m;
  return {tip, radial_play_m + tip * std::abs(arm_m)};
}

}  // namespace gazewright
