#include "core/loads/rolling.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>
#include <vector>

#include "core/data/prepared.h"

namespace gazewright {
namespace {

constexpr double kRadPerDeg = 3.14159265358979323846 / 180;

/// By relative axial load, of one contact angle.
struct FactorRow {
  double f0Fa_per_C0, e, X, Y;
};
struct AngleRow {
  double degrees, e, X, Y;
};
struct StaticRow {
  double degrees, X0, Y0;
};
/// resources/data/bearings.yaml by what each row is for, sorted.
struct Tables {
  std::vector<FactorRow> deep_groove, fifteen_degrees;
  std::vector<AngleRow> angles;
  std::vector<StaticRow> still;
  double ball_safety = 0, roller_safety = 0;
};

/// A row's contact angle, without what is rounded on the way to radians and back.
double degrees_of(const DataRow& row) {
  return std::round(row.si("angle") / kRadPerDeg * 1e6) / 1e6;
}

/// In the order of the key, one row for each of its values.
template <class Row>
void put_in_order(std::vector<Row>& rows, double Row::*key) {
  std::ranges::stable_sort(rows, {}, key);
  const auto is_doubled = [key](const Row& a, const Row& b) { return a.*key == b.*key; };
  rows.erase(std::unique(rows.begin(), rows.end(), is_doubled), rows.end());
}

Tables read_tables() {
  Tables tables;
  for (const DataRow& row : data_table("bearings").rows) {
    if (row.find("x0") != nullptr)
      tables.still.push_back({degrees_of(row), row.si("x0"), row.si("y0")});
    else if (row.find("load") != nullptr)
      (degrees_of(row) < 7.5 ? tables.deep_groove : tables.fifteen_degrees)
          .push_back({row.si("load"), row.si("e"), row.si("x"), row.si("y")});
    else if (row.find("angle") != nullptr)
      tables.angles.push_back({degrees_of(row), row.si("e"), row.si("x"), row.si("y")});
  }
  put_in_order(tables.deep_groove, &FactorRow::f0Fa_per_C0);
  put_in_order(tables.fifteen_degrees, &FactorRow::f0Fa_per_C0);
  put_in_order(tables.angles, &AngleRow::degrees);
  put_in_order(tables.still, &StaticRow::degrees);
  tables.ball_safety = data_table("bearings").find("ball")->si("static_safety");
  tables.roller_safety = data_table("bearings").find("roller")->si("static_safety");
  return tables;
}

const Tables& tables() {
  static Prepared<Tables> prepared(read_tables);
  return prepared.get();
}

double mix(double a, double b, double part) { return a + part * (b - a); }

/// The rows about `x` and how far it lies between them, 0 to 1; the end rows beyond the ends.
/// @pre there is a row
template <class Row>
struct Between {
  const Row &low, &high;
  double part;
};
template <class Row>
Between<Row> between(std::span<const Row> rows, double Row::*key, double x) {
  if (rows.size() == 1) return {rows[0], rows[0], 0};
  std::size_t i = 1;
  while (i + 1 < rows.size() && rows[i].*key < x) ++i;
  const Row &low = rows[i - 1], &high = rows[i];
  return {low, high, std::clamp((x - low.*key) / (high.*key - low.*key), 0.0, 1.0)};
}

AxialFactors by_load(std::span<const FactorRow> rows, double load) {
  const auto [low, high, part] = between(rows, &FactorRow::f0Fa_per_C0, load);
  return {mix(low.e, high.e, part), mix(low.X, high.X, part), mix(low.Y, high.Y, part)};
}

AxialFactors mixed(const AxialFactors& a, const AxialFactors& b, double part) {
  return {mix(a.e, b.e, part), mix(a.X, b.X, part), mix(a.Y, b.Y, part)};
}

double dynamic_load_N(const AxialFactors& f, double radial_N, double axial_N) {
  return axial_N <= f.e * radial_N ? radial_N : f.X * radial_N + f.Y * axial_N;
}

double static_ball_load_N(double contact_angle_rad, double radial_N, double axial_N) {
  const auto [low, high, part] = between(std::span<const StaticRow>(tables().still),
                                         &StaticRow::degrees, contact_angle_rad / kRadPerDeg);
  return std::max(radial_N,
                  mix(low.X0, high.X0, part) * radial_N + mix(low.Y0, high.Y0, part) * axial_N);
}

}  // namespace

AxialFactors ball_factors(double contact_angle_rad, double f0Fa_per_C0) {
  const double degrees = contact_angle_rad / kRadPerDeg;
  const Tables& all = tables();
  const AxialFactors fifteen = by_load(all.fifteen_degrees, f0Fa_per_C0);
  if (degrees <= 15) return mixed(by_load(all.deep_groove, f0Fa_per_C0), fifteen, degrees / 15);
  const AngleRow& first = all.angles.front();
  if (degrees < first.degrees)
    return mixed(fifteen, {first.e, first.X, first.Y}, (degrees - 15) / (first.degrees - 15));
  const auto [low, high, part] =
      between(std::span<const AngleRow>(all.angles), &AngleRow::degrees, degrees);
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

double wanted_static_safety(Rolling rolling) {
  return rolling == Rolling::ball ? tables().ball_safety : tables().roller_safety;
}

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
