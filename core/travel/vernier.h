#pragma once

#include <cstdint>
#include <optional>

/// Two encoders that turn differently often per turn of the output tell its turns apart.
namespace gazewright {

struct Fraction {
  std::int64_t numerator = 0, denominator = 1;
};
/// The fraction with the smallest denominator that is the value but for rounding (1e-9 of it);
/// empty: none with a denominator up to 1000.
/// Source: continued fractions give the best approximations; Hardy & Wright, ch. 10 (from memory).
std::optional<Fraction> fraction_of(double value);

/// Output angle after which both readings come again together. [rad] For fractions a/q and b/q of
/// turns per output turn it is q/gcd(a, b) turns; where a ratio is no such fraction, the range of
/// the difference of both readings, 1/|a − b| turns (infinite where they are the same).
/// @pre both above 0
double vernier_range_rad(double turns, double second_turns);

/// How near the second encoder's readings come at output angles within `travel_rad` of each other
/// at which the first reads the same. [rad] of the second encoder's own shaft, at most π; 0 where
/// two of them cannot be told apart at all; empty where the first encoder alone is enough.
/// @pre travel_rad finite and >= 0, turns above 0
std::optional<double> vernier_separation_rad(double turns, double second_turns, double travel_rad);

/// Largest difference between the second reading and the one that the first foretells: its own
/// error and the first one's through both gears. [rad] of the second encoder's shaft.
double vernier_error_rad(double turns, double second_turns, double error_rad,
                         double second_error_rad);

}  // namespace gazewright
