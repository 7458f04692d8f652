#include "core/travel/vernier.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <numeric>

namespace gazewright {
namespace {

constexpr double kTurn_rad = 2 * std::numbers::pi;
constexpr std::int64_t kMostDenominator = 1000;
constexpr double kRounding = 1e-9;
// Among so many readings two are as good as the same, 1/10 000 of a turn apart.
constexpr double kMostReadings = 1e4;

}  // namespace

std::optional<Fraction> fraction_of(double value) {
  if (!(value > 0) || value > 1e6) return std::nullopt;
  Fraction now{1, 0}, before{0, 1};
  double rest = value;
  while (true) {
    const double whole = std::floor(rest + kRounding);
    const auto step = static_cast<std::int64_t>(whole);
    const Fraction next{step * now.numerator + before.numerator,
                        step * now.denominator + before.denominator};
    if (next.denominator > kMostDenominator) return std::nullopt;
    const double is = static_cast<double>(next.numerator) / static_cast<double>(next.denominator);
    if (std::abs(is - value) <= kRounding * value) return next;
    before = now;
    now = next;
    rest = 1 / (rest - whole);
    if (!(rest < 1e9)) return std::nullopt;
  }
}

double vernier_range_rad(double turns, double second_turns) {
  const auto a = fraction_of(turns), b = fraction_of(second_turns);
  if (!a || !b) {
    const double difference = std::abs(turns - second_turns);
    return difference > kRounding * turns ? kTurn_rad / difference
                                          : std::numeric_limits<double>::infinity();
  }
  const std::int64_t common = std::lcm(a->denominator, b->denominator);
  const std::int64_t shared =
      std::gcd(a->numerator * (common / a->denominator), b->numerator * (common / b->denominator));
  return kTurn_rad * static_cast<double>(common) / static_cast<double>(shared);
}

std::optional<double> vernier_separation_rad(double turns, double second_turns, double travel_rad) {
  const double readings = std::floor(travel_rad / kTurn_rad * turns * (1 + kRounding));
  if (readings < 1) return std::nullopt;
  if (readings > kMostReadings) return 0;
  double least = 0.5;
  for (int i = 1; i <= static_cast<int>(readings); ++i) {
    least = std::min(least, std::abs(std::remainder(i * (second_turns / turns), 1.0)));
  }
  return least < kRounding * readings ? 0 : least * kTurn_rad;
}

double vernier_error_rad(double turns, double second_turns, double error_rad,
                         double second_error_rad) {
  return second_error_rad + error_rad * second_turns / turns;
}

}  // namespace gazewright
